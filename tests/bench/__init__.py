"""Benches: run by hand, figures go into docs/."""
