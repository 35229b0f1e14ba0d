"""The photo tool: measure, count, compare on a picture."""
