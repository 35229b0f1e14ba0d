"""Practice on specimens."""
