"""What must not happen: network, code from data, markup from labels, lost work."""
