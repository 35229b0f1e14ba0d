"""Finds the drawing of a state and draws portraits from scores, as SVG text."""
