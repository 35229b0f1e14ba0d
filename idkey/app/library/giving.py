"""Asks where a key that is handed out goes."""

from pathlib import Path

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QFileDialog, QWidget

from idkey.app.library.account import Account
from idkey.app.library.words import way_words
from idkey.formats.giving import Way

translate = QCoreApplication.translate


def ask_place(parent: QWidget, account: Account, way: Way) -> Path | None:
    """The file, or for a folder the new folder; None when the person thought better of it.

    Args:
        parent: Over which it is asked.
        account: The key.
        way: How it goes out.
    """
    if not way.ending:
        title = translate("library", "In which folder shall the key's folder lie?")
        chosen = QFileDialog.getExistingDirectory(parent, title)
        return Path(chosen) / account.entry.id if chosen else None
    title = translate("library", "Where to write")
    start = str(Path.home() / f"{account.entry.id}{way.ending}")
    kind = f"{way_words(way.id)} (*{way.ending})"
    chosen, _ = QFileDialog.getSaveFileName(parent, title, start, kind)
    if not chosen:
        return None
    file = Path(chosen)
    return file if file.suffix else file.with_name(file.name + way.ending)
