"""The bench: one animal, one question at a time."""
