"""What a key says and what a case holds: frozen values, nothing that computes."""
