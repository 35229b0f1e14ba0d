"""What comes in from elsewhere: a key, and what was not understood on the way."""

import re
import unicodedata
from dataclasses import dataclass, replace
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.folder import check_values, digest
from idkey.formats.plain import canonical
from idkey.formats.problem import Severity
from idkey.model.key import Key
from idkey.model.taxon import Danger, Hazard

LOOKS_UNTOLD = (
    "The file does not say how each character is looked at; all were set to the hand lens, so "
    "that none is proposed for an animal that must not be handled. Set them in the workshop."
)

HAZARD_UNTOLD = (
    "The file does not say how dangerous each taxon is; all were set to medically significant, "
    "so that none is taken lightly. Set the danger and the permits in the workshop."
)

UNKNOWN_HAZARD = Hazard(level=Danger.SIGNIFICANT, note="Not told by the file this came from.")
"""What is assumed of a taxon as long as nobody has said how dangerous it is."""

_LONGEST_NAME = 60


@dataclass(frozen=True, slots=True)
class Imported:
    """A key from another format.

    Attributes:
        key: The key, in canonical order and with its digest.
        notes: What was left out, changed or guessed, as sentences.
    """

    key: Key
    notes: tuple[str, ...] = ()


def imported(key: Key, notes: tuple[str, ...], name: str) -> Imported:
    """The key as it may be used, once it has passed the checks of every key.

    Args:
        key: The key.
        notes: What to say about it.
        name: Name of its file.

    Raises:
        IdKeyError: It has errors.
    """
    errors = [p for p in check_values(key, Path(name)) if p.severity is Severity.ERROR]
    if errors:
        first = f"{errors[0].problem} {errors[0].remedy}"
        more = f" There are {len(errors) - 1} more mistakes." if len(errors) > 1 else ""
        raise IdKeyError(f"{name} cannot become a key: {first}{more}", "Mend it where it was made.")
    whole = canonical(key)
    return Imported(replace(whole, digest=digest(whole)), notes)


class Ids:
    """Makes ids from names, each used once."""

    def __init__(self, otherwise: str) -> None:
        self._otherwise = otherwise
        self._used: set[str] = set()
        self._numbers: dict[str, int] = {}

    def new(self, name: str) -> str:
        """An id like the name: lower case, blanks as underscores."""
        plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
        stem = re.sub(r"[^a-z0-9]+", "_", plain).strip("_")[:_LONGEST_NAME] or self._otherwise
        own, number = stem, self._numbers.get(stem, 2)
        while own in self._used:
            own, number = f"{stem}_{number}", number + 1
        self._numbers[stem] = number  # a sheet may hold one name a thousand times
        self._used.add(own)
        return own
