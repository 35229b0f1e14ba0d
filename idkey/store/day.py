"""A day as people write it."""

import re
from datetime import date

_DAY_FIRST = re.compile(r"(\d{1,2})[./](\d{1,2})[./](\d{4})")


def iso_day(text: str) -> str | None:
    """The day in ISO 8601 of ``2025-11-08``, ``8.11.2025`` or ``8/11/2025`` (day first).

    Returns:
        Empty for empty text; None when it is no such date.
    """
    if not text:
        return ""
    found = _DAY_FIRST.fullmatch(text.strip())
    try:
        if found is None:
            return date.fromisoformat(text.strip()[:10]).isoformat()
        day, month, year = map(int, found.groups())
        return date(year, month, day).isoformat()
    except ValueError:
        return None
