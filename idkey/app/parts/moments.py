"""Moments of the record book, as a person at this machine reads them."""

from datetime import datetime


def moment(at: str) -> str:
    """A moment in ISO 8601 as day and minute of this machine's time; anything else as it is."""
    try:
        told = datetime.fromisoformat(at)
    except ValueError:
        return at
    if told.tzinfo is None:
        return at
    return told.astimezone().strftime("%Y-%m-%d %H:%M")
