"""The chosen case of the records: what it says, and what can be done with it."""

from enum import StrEnum

from PySide6.QtCore import Qt, QUrl, Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFrame, QMenu, QVBoxLayout

from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.messages import Message
from idkey.app.parts.sheet import prose_page
from idkey.app.parts.theme import Theme


class Deed(StrEnum):
    """What can be done with the chosen case or cases."""

    OPEN = "open"
    WRITE = "write"
    LABEL = "label"
    PAPERS = "papers"
    COPY = "copy"
    SALE = "sale"
    OPINION = "opinion"
    EXPORT = "export"
    ERASE = "erase"


KEYS = {
    Deed.OPEN: "Alt+O",
    Deed.WRITE: "Alt+R",
    Deed.LABEL: "Alt+L",
    Deed.PAPERS: "Alt+P",
    Deed.COPY: "Alt+T",
    Deed.SALE: "Alt+S",
    Deed.OPINION: "Alt+2",
    Deed.EXPORT: "Alt+E",
    Deed.ERASE: "Alt+B",
}


FIRST = (Deed.OPEN, Deed.WRITE, Deed.LABEL, Deed.PAPERS)
"""Deeds with a button of their own; the others stand in a menu."""


class RecordsCase(QFrame):
    """Shows a case as a page, with buttons under it.

    Args:
        theme: The look.

    Signals:
        wanted(deed: object): Do it with the chosen case.
        linked(kind: str, name: str): A link of the page was followed.
    """

    wanted = Signal(object)
    linked = Signal(str, str)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self.page = prose_page(self.tr("The chosen case"), theme)
        self.page.anchorClicked.connect(self._on_page_anchor_clicked)
        self.said = caption(rank="soft")
        self.said.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.said.hide()
        self.buttons = {deed: self._button(deed, theme) for deed in FIRST}
        self.actions_more = {deed: self._action(deed) for deed in Deed if deed not in FIRST}
        self.more = button(self.tr("More …"))
        self.more.setAccessibleDescription(self.tr("What else can be done with the case"))
        self.more.setMenu(self._menu())
        row = FlowRow()
        for one in (*self.buttons.values(), self.more):
            row.add(one)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 12)
        column.setSpacing(8)
        column.addWidget(self.page, 1)
        column.addWidget(self.said)
        column.addWidget(row)

    def show_page(self, html: str) -> None:
        """Show another case."""
        self.page.setHtml(f"<body>{html}</body>")

    def say(self, text: str) -> None:
        """Say what was done, or what is to be done; empty takes it away."""
        self.said.setText(text)
        self.said.setVisible(bool(text))

    def show_message(self, message: Message) -> None:
        """Say what went wrong and what to do."""
        self.say(message.text)

    def allow(self, *, case: bool, busy: bool) -> None:
        """Let through what can be done: with a chosen case, and while nothing is under way."""
        for one in self.buttons.values():
            one.setEnabled(case and not busy)
        for deed, action in self.actions_more.items():
            action.setEnabled(not busy and (case or deed is Deed.ERASE))

    def _button(self, deed: Deed, theme: Theme) -> KeyButton:
        role = "main" if deed is Deed.OPEN else ""
        made = KeyButton(self._titles()[deed], KEYS[deed], theme, role)
        made.setObjectName(deed.value)
        made.setShortcut(KEYS[deed])
        made.setAutoDefault(True)  # Enter presses it, outside a dialog too
        made.setAccessibleName(self._titles()[deed])
        made.setToolTip(self._tips().get(deed, ""))
        made.setAccessibleDescription(self._tips().get(deed, ""))
        made.clicked.connect(self._on_button_clicked)
        return made

    def _action(self, deed: Deed) -> QAction:
        made = QAction(self._titles()[deed], self)
        made.setObjectName(deed.value)
        made.setShortcut(KEYS[deed])
        made.setShortcutContext(Qt.ShortcutContext.WindowShortcut)
        made.setToolTip(self._tips().get(deed, ""))
        made.triggered.connect(self._on_button_clicked)
        self.addAction(made)  # so that its key works while the menu is away
        return made

    def _menu(self) -> QMenu:
        menu = QMenu(self)
        menu.setToolTipsVisible(True)
        for one in self.actions_more.values():
            menu.addAction(one)
        return menu

    def _titles(self) -> dict[Deed, str]:
        return {
            Deed.OPEN: self.tr("Open at the bench"),
            Deed.WRITE: self.tr("Rationale again"),
            Deed.LABEL: self.tr("Shop label …"),
            Deed.PAPERS: self.tr("Papers …"),
            Deed.COPY: self.tr("Copy as text"),
            Deed.SALE: self.tr("Attach sale …"),
            Deed.OPINION: self.tr("Second opinion …"),
            Deed.EXPORT: self.tr("Export …"),
            Deed.ERASE: self.tr("Erase buyer …"),
        }

    def _tips(self) -> dict[Deed, str]:
        return {
            Deed.WRITE: self.tr("Write the rationale of this case again, as PDF and JSON"),
            Deed.LABEL: self.tr("Write the corrected shop labels of the selected cases as PDF"),
            Deed.PAPERS: self.tr("Note the permit fields of the animal, and see what is missing"),
            Deed.COPY: self.tr("Copy the verdict as plain text, for the notes of a till"),
            Deed.OPINION: self.tr("Have the same animal determined again, blind"),
            Deed.EXPORT: self.tr("Write the selected cases as a Darwin Core Archive"),
            Deed.ERASE: self.tr("Take a buyer's reference out of the whole book"),
        }

    @Slot(QUrl)
    def _on_page_anchor_clicked(self, url: QUrl) -> None:
        kind, _, name = url.toString().partition(":")
        self.linked.emit(kind, name)

    @Slot()
    def _on_button_clicked(self) -> None:
        self.wanted.emit(Deed(self.sender().objectName()))
