"""Versions of keys that can be laid side by side: those here, those removed, and files."""

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QMenu, QSizePolicy, QVBoxLayout, QWidget

from idkey.app.library.flowing import LARGE
from idkey.app.library.intake import file_filter
from idkey.app.library.menu_button import MenuButton
from idkey.app.parts.captions import caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.key_library import KeyLibrary
from idkey.errors import IdKeyError
from idkey.formats.arrival import Arrival, read_arrival
from idkey.formats.folder import KeyEntry, list_keys
from idkey.model.key import Key

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class Edition:
    """A version of a key that can be read.

    Attributes:
        words: How it is told from others.
        place: File or folder.
    """

    words: str
    place: Path

    def read(self) -> Key:
        """The key.

        Raises:
            IdKeyError: It cannot be read, or is a sheet that says no whole key.
        """
        found = read_arrival(self.place)
        if isinstance(found, Arrival):
            return found.key
        raise IdKeyError(
            f"{self.place.name} is a spreadsheet that says no whole key.",
            "Make a key from it first.",
        )


def editions(keys: KeyLibrary) -> tuple[Edition, ...]:
    """Every version that is here: keys that can be used, then those that were removed."""
    here = (Edition(_words(one), one.folder) for one in keys.entries if not one.problem)
    gone = list_keys(keys.removed) if keys.removed is not None else ()
    word = translate("library", "removed")
    return (*here, *(Edition(f"{_words(one)} ({word}: {one.folder.name})", one.folder)
                     for one in gone if not one.problem))  # fmt: skip


def _words(entry: KeyEntry) -> str:
    return f"{entry.version} · {entry.title}"


class EditionChoice(QWidget):
    """Chooses a version.

    Args:
        name: What it is chosen for.
        desk: Look, drawings, language.

    Signals:
        chosen(): Another one is chosen.
    """

    chosen = Signal()

    def __init__(self, name: str, desk: Desk) -> None:
        super().__init__()
        self._editions: tuple[Edition, ...] = ()
        self._here: tuple[Edition, ...] = ()
        self._added: tuple[Edition, ...] = ()
        self.choice = Choice(name, desk.theme)
        self.choice.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        menu = QMenu(self)
        self.other = MenuButton(self.tr("From disk"), menu, desk.theme)
        self.other.setAccessibleName(self.tr("{name}: from a file or folder").format(name=name))
        menu.addAction(self.tr("A file…")).triggered.connect(self._on_file_asked)
        menu.addAction(self.tr("A folder…")).triggered.connect(self._on_folder_asked)
        label = caption(name, "overline")
        label.setBuddy(self.choice)
        row = QHBoxLayout()
        row.addWidget(self.choice, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(desk.theme.px(2))
        column.addWidget(label)
        column.addLayout(row)
        if desk.theme.scale < LARGE:
            row.addWidget(self.other)
        else:  # beside it the choice would show nothing
            column.addWidget(self.other)
        self.choice.currentIndexChanged.connect(self._on_index_changed)

    @property
    def edition(self) -> Edition | None:
        """The one that is chosen."""
        edition: Edition | None = self.choice.chosen
        return edition

    def offer(self, found: Iterable[Edition]) -> None:
        """Offer other versions; files that were looked up, and what is chosen, stay."""
        self._here = tuple(found)
        offered = (*self._here, *self._added)
        if offered == self._editions:
            return
        here = self.edition
        self._editions = offered
        self.choice.blockSignals(True)
        self.choice.offer((one.words, one) for one in offered)
        self.choice.choose(here)
        self.choice.blockSignals(False)

    def choose(self, edition: Edition) -> None:
        """Choose a version; one that is not on offer yet is put on offer."""
        if edition not in self._editions:
            self._added = (*self._added, edition)
            self.offer(self._here)
        self.choice.choose(edition)

    def choose_quietly(self, edition: Edition) -> None:
        """Choose a version without telling anybody."""
        self.choice.blockSignals(True)
        self.choose(edition)
        self.choice.blockSignals(False)

    def choose_file(self, place: Path) -> None:
        """Choose a file or folder."""
        self.choose(Edition(f"{place.name} ({place.parent})", place))

    @Slot()
    def _on_index_changed(self) -> None:
        self.chosen.emit()

    @Slot()
    def _on_file_asked(self) -> None:
        file, _ = QFileDialog.getOpenFileName(self, self.choice.toolTip(), "", file_filter())
        if file:
            self.choose_file(Path(file))

    @Slot()
    def _on_folder_asked(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, self.choice.toolTip())
        if folder:
            self.choose_file(Path(folder))
