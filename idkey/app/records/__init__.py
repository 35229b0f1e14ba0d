"""The records: looking up cases, rates, lots."""
