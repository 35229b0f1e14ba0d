"""Tests of pictures as evidence."""
