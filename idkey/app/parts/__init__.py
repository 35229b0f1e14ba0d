"""What every place of the window uses: look, tiles, lists, jobs, messages."""
