"""Tests of the key files and the formats in and out."""
