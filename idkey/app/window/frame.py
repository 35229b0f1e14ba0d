"""The frame on the screen: there at once, with a tag to write on; the rest arrives behind it."""

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QByteArray, Signal
from PySide6.QtGui import QCloseEvent, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from idkey.app.parts.tag import Tag
from idkey.app.parts.theme import Theme
from idkey.app.window.memory import WindowMemory, remember

SIZE = (1280, 800)
"""First size in pixels, where the screen is large enough."""

LEAST = (1000, 700)
"""Smallest size in pixels."""

BORDERS = (16, 48)
"""What the borders and the title of a window may take of the screen, in pixels."""


def first_size(width: int, height: int) -> tuple[int, int]:
    """The size to begin with, given the free width and height of the screen in pixels.

    A screen that does not even hold the least size is not told from one that hides its size.
    """
    if width < LEAST[0] or height < LEAST[1]:
        return SIZE
    fits = (width - BORDERS[0], height - BORDERS[1])
    return (max(LEAST[0], min(SIZE[0], fits[0])), max(LEAST[1], min(SIZE[1], fits[1])))


class Frame(QWidget):
    """The top-level window. It shows the empty tag until `put` gives it its content.

    Args:
        theme: The look.
        memory: How it was left last time.
        folder: Where it remembers that.

    Signals:
        seen(): It was painted for the first time.
        closed(): The person closed it.
    """

    seen = Signal()
    closed = Signal()

    def __init__(self, theme: Theme, memory: WindowMemory, folder: Path) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self.setWindowTitle("idkey")
        self.memory = memory
        self._folder = folder
        self._content: QWidget | None = None
        self._painted = False
        self.setMinimumSize(*LEAST)
        free = self.screen().availableSize()
        self.resize(*first_size(free.width(), free.height()))
        if memory.geometry:
            self.restoreGeometry(QByteArray.fromBase64(memory.geometry.encode("ascii")))
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self.claim = Tag(theme)
        self._shell = self._made_shell(theme)
        self._row.addWidget(self._shell)
        self.claim.focus_label()

    @property
    def content(self) -> QWidget | None:
        """What it shows; None while that is not there yet."""
        return self._content

    def put(self, content: QWidget) -> None:
        """Show `content` in place of what was there."""
        old, self._content = self._content or self._shell, content
        self._row.addWidget(content)
        old.hide()
        self._row.removeWidget(old)
        old.deleteLater()

    def say(self, text: str) -> None:
        """Say something under the empty tag."""
        self._said.setText(text)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Tell once that it can be seen."""
        super().paintEvent(event)
        if not self._painted:
            self._painted = True
            self.seen.emit()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Remember size and place."""
        geometry = bytes(self.saveGeometry().toBase64().data()).decode("ascii")
        self.memory = replace(self.memory, geometry=geometry)
        self.keep()
        self.closed.emit()
        super().closeEvent(event)

    def keep(self) -> None:
        """Keep what is remembered."""
        remember(self._folder, self.memory)

    def _made_shell(self, theme: Theme) -> QWidget:
        shell = QWidget()
        self._said = QLabel(self.tr("Opening records and keys; you can write already."))
        self._said.setWordWrap(True)
        # Plain, since file names may look like markup; touching Qt.TextFormat would cost 20 ms.
        self._said.setProperty("textFormat", 0)
        self._said.setProperty("rank", "soft")
        self.claim.setFixedWidth(theme.px(360))
        top = QHBoxLayout()
        top.setSpacing(16)
        top.addWidget(self.claim)
        top.addWidget(self._said, 1)
        column = QVBoxLayout(shell)
        column.setContentsMargins(theme.px(64) + 16, 12, 16, 12)
        column.addLayout(top)
        column.addStretch(1)
        return shell
