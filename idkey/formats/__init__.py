"""Reads, checks and writes key files."""
