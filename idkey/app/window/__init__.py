"""The window itself: start, frame, rail, commands, and the way between the places."""
