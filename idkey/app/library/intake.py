"""Files and texts that are dragged onto the library, or pasted."""

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QMimeData

translate = QCoreApplication.translate

LONGEST_TEXT = 32 * 2**20
"""Signs of a pasted text that are looked at."""


@dataclass(frozen=True, slots=True)
class Intake:
    """What was dragged or pasted.

    Attributes:
        places: Files and folders.
        text: A text, when there are no files.
    """

    places: tuple[Path, ...] = ()
    text: str = ""

    @property
    def any(self) -> bool:
        """Whether there is anything that may be a key."""
        return bool(self.places or self.text.strip())


def intake(mime: QMimeData) -> Intake:
    """What a drag or the clipboard holds."""
    places = tuple(Path(url.toLocalFile()) for url in mime.urls() if url.isLocalFile())
    if places:
        return Intake(places)
    return Intake(text=mime.text()[:LONGEST_TEXT]) if mime.hasText() else Intake()


def file_filter() -> str:
    """What the file dialog offers."""
    words = translate("library", "Keys and spreadsheets")
    keys = "*.idkey *.json *.xml *.sdd *.nex *.nexus *.csv *.tsv *.txt *.xlsx *.ods *.yaml"
    return f"{words} ({keys});;*"
