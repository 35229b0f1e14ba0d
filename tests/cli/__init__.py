"""The command line and the walk in text, on the shipped keys."""
