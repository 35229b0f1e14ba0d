"""The drill: learning to see the difference."""
