"""The window, piece by piece."""
