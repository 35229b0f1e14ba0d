"""Practice on specimens drawn from a key: what to see, when again, what somebody can tell apart."""
