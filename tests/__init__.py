"""The test suite; `python3 -m tests` sets itself up and runs it."""
