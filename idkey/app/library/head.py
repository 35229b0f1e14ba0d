"""The head of the library: its pages, and the ways to take a key in or begin one."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QHBoxLayout, QMenu, QVBoxLayout, QWidget

from idkey.app.library.flowing import LARGE, flowing
from idkey.app.library.menu_button import MenuButton
from idkey.app.library.part import New, Part
from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.segments import Segments


class Head(QWidget):
    """Title, pages, "take a key in", "new key", and what is under way.

    Args:
        desk: Look, drawings, language.

    Signals:
        part_chosen(part: object): The person wants that `Part`.
        file_asked(): The person wants to take a file in.
        folder_asked(): The person wants to take a folder in.
        paste_asked(): The person wants to take in what was copied.
        new_asked(new: object): The person wants a `New` key.
    """

    part_chosen = Signal(object)
    file_asked = Signal()
    folder_asked = Signal()
    paste_asked = Signal()
    new_asked = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._parts = Segments(self.tr("Page of the library"), Part, self._part_title)
        self.take = MenuButton(self.tr("Take a key in"), self._take_menu(), desk.theme)
        self.new = MenuButton(self.tr("New key"), self._new_menu(), desk.theme)
        self._said = caption(rank="small", wraps=False)
        row = QHBoxLayout()
        row.setSpacing(desk.theme.px(8))
        row.addWidget(caption(self.tr("Library"), "title", wraps=False))
        row.addWidget(self._said, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(row)
        tools = (self._parts, self.take, self.new)
        if desk.theme.scale >= LARGE:
            column.addWidget(flowing(tools, desk.theme.px(8)))
        else:
            for tool in tools:
                row.addWidget(tool)
        self._parts.chosen.connect(self.part_chosen)

    @property
    def part(self) -> Part:
        """The page that is chosen."""
        return self._parts.value

    def set_part(self, part: Part) -> None:
        """Choose a page without telling anybody."""
        self._parts.set_value(part)

    def say(self, words: str) -> None:
        """Say what is under way; nothing when it is over."""
        self._said.setText(words)

    def _part_title(self, part: Part) -> str:
        return {
            Part.KEYS: self.tr("Keys here"),
            Part.VERSIONS: self.tr("Compare versions"),
            Part.JOIN: self.tr("Join two edits"),
        }[part]

    def _take_menu(self) -> QMenu:
        menu = QMenu(self)
        menu.addAction(self.tr("From a file… (Ctrl+O)")).triggered.connect(self.file_asked)
        menu.addAction(self.tr("From a folder…")).triggered.connect(self.folder_asked)
        menu.addAction(self.tr("What was copied (Ctrl+V)")).triggered.connect(self.paste_asked)
        return menu

    def _new_menu(self) -> QMenu:
        menu = QMenu(self)
        words = {
            New.SHEET: self.tr("From a spreadsheet…"),
            New.EMPTY: self.tr("An empty key…"),
            New.LEAVES: self.tr("From the small leaf key…"),
        }
        for new, text in words.items():
            action = QAction(text, self)
            action.setObjectName(new)
            action.triggered.connect(self._on_new_triggered)
            menu.addAction(action)
        return menu

    @Slot()
    def _on_new_triggered(self) -> None:
        self.new_asked.emit(New(self.sender().objectName()))
