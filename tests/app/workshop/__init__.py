"""Tests of this place of the window."""
