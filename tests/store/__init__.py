"""The record book."""
