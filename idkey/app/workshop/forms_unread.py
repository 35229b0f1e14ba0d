"""Texts that could not be read as a value: kept until they can, also over a new start."""

import contextlib
import json

from PySide6.QtCore import QObject

from idkey.places import data_folder, keep_private

FILE = "workshop-texts/fields.json"

MOST = 500
"""The text that was kept longest ago gives way."""

Place = tuple[str, str, str]
"""The entry, the path in it, and the name of the field."""


class Unread(QObject):
    """Unread texts by place; they outlive the views of a workshop.

    Args:
        parent: Owner.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._file = data_folder() / FILE
        self._texts: dict[Place, str] = {}
        with contextlib.suppress(OSError, ValueError, TypeError):
            said = json.loads(self._file.read_text("utf-8"))
            self._texts = {(str(o), str(p), str(n)): str(text) for o, p, n, text in said}

    def text(self, place: Place) -> str | None:
        """The text kept for a place; None when there is none."""
        return self._texts.get(place)

    def keep(self, place: Place, text: str) -> None:
        """Keep a text."""
        if self._texts.get(place) != text:
            self._texts[place] = text
            while len(self._texts) > MOST:
                del self._texts[next(iter(self._texts))]
            self._write()

    def drop(self, place: Place) -> None:
        """Let go of a text: it has been read, or is not wanted."""
        if self._texts.pop(place, None) is not None:
            self._write()

    def _write(self) -> None:
        said = [[*place, text] for place, text in self._texts.items()]
        with contextlib.suppress(OSError):  # a full disk is no reason to stop somebody who types
            keep_private(self._file, json.dumps(said, ensure_ascii=False).encode())


def unread_of(state: QObject) -> Unread:
    """The unread texts of a workshop."""
    found = state.findChild(Unread)
    return found if found is not None else Unread(state)
