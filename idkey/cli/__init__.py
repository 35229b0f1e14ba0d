"""The command line and the key walked in text."""
