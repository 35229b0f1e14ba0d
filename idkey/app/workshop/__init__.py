"""The workshop: a key edited in place, with the checker running."""
