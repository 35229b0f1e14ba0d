"""Where a person was: the case on the bench, the tray, the question each case stood at."""

from collections.abc import Iterable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from typing import Any

from idkey.app.bench.session import Mode, Session
from idkey.errors import IdKeyError
from idkey.store.book import Store


@dataclass(frozen=True, slots=True, kw_only=True)
class Left:
    """How a case of the tray was left."""

    case: str
    asked: str = ""
    mode: Mode = Mode.FREE


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """Where a person was.

    Attributes:
        case: The case on the bench; empty the first time.
        key: Its key.
        tray: Every case of the tray.
    """

    case: str = ""
    key: str = ""
    tray: tuple[Left, ...] = ()


def place_of(session: Session, standing: Iterable[Session]) -> dict[str, Any]:
    """Where a person is, as JSON values.

    Args:
        session: The session on the bench.
        standing: Sessions that are open; those that are not in the tray do not matter.
    """
    known = {one.case.id: one for one in standing}
    return {
        "case": session.case.id,
        "key": session.key.id,
        "tray": [
            {"case": case_id, "asked": known[case_id].asked, "mode": known[case_id].mode.value}
            for case_id in session.open
            if case_id in known
        ],
    }


def kept_place(kept: Mapping[str, Any]) -> Place:
    """The place that JSON values stand for; what cannot be read is left out."""
    tray = kept.get("tray", ())
    return Place(
        case=str(kept.get("case", "")),
        key=str(kept.get("key", "")),
        tray=tuple(_left(one) for one in tray if isinstance(one, dict) and one.get("case"))
        if isinstance(tray, list)
        else (),
    )


def keys_left(kept: Mapping[str, Any], store: Store) -> frozenset[str]:  # on a pool thread
    """Ids of the keys that going back to a place needs; cases that cannot be had need none."""
    place = kept_place(kept)
    found = {place.key}
    for left in place.tray:
        with suppress(IdKeyError):
            found.add(store.case(left.case).case.key)
    return frozenset(found)


def _left(kept: Mapping[str, Any]) -> Left:
    mode = Mode.COUPLETS if kept.get("mode") == Mode.COUPLETS else Mode.FREE
    return Left(case=str(kept["case"]), asked=str(kept.get("asked", "")), mode=mode)
