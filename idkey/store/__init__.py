"""Keeps cases, revisions and sale records."""
