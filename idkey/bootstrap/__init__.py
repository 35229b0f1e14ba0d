"""Sets the program up on a bare machine: standard library only."""
