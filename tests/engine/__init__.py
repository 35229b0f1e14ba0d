"""Tests of the reasoning."""
