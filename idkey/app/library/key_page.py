"""One key of the library: what it is, how full, what is weak, and what can be done with it."""

from enum import StrEnum

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QFrame, QMenu, QVBoxLayout, QWidget

from idkey.app.library.account import Account
from idkey.app.library.coverage_bar import CoverageView
from idkey.app.library.flowing import flowing
from idkey.app.library.key_html import key_html
from idkey.app.library.portrait_strip import PortraitStrip
from idkey.app.library.text_page import TextPage
from idkey.app.library.words import from_words, size_words, way_words
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.scrolling import scrolled
from idkey.formats.giving import WAYS, Way


class Deed(StrEnum):
    """What can be done with a key."""

    CASE = "case"
    EDIT = "edit"
    GIVE = "give"
    PRINT = "print"
    REMOVE = "remove"


KEYS = {Deed.CASE: "Alt+C", Deed.EDIT: "Alt+E", Deed.GIVE: "Alt+H", Deed.REMOVE: "Alt+R"}
"""The key of each deed."""


class KeyPage(QFrame):
    """Shows a key, or why it cannot be used.

    Args:
        desk: Look, drawings, language.

    Signals:
        wanted(deed: object): The person wants a `Deed`; handing out goes by `given`.
        given(way: object): The person wants it handed out that `Way`.
    """

    wanted = Signal(object)
    given = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._desk = desk
        self._ways: dict[str, Way] = {way.id: way for way in WAYS}
        self.pictures = PortraitStrip(desk)
        self.title = caption(rank="lead")
        self.about = caption(rank="soft")
        self.coverage = CoverageView(desk.theme)
        self.text = TextPage(desk.theme)
        self.buttons = {deed: self._button(deed) for deed in KEYS}
        self.menu = QMenu(self)
        self._fill_menu()
        self._lay_out()

    def show_account(self, one: Account | None) -> None:
        """Show a key; None clears the page."""
        self.setVisible(one is not None)
        if one is None:
            return
        self.pictures.show_key(one.key)
        self.title.setText(one.entry.title)
        words = (one.entry.id, one.entry.version, from_words(one), size_words(one))
        self.about.setText(" · ".join(filter(None, words)))
        self.coverage.setVisible(one.counts is not None)
        if one.counts is not None:
            self.coverage.show_coverage(one.counts.coverage)
        self.text.show_html(key_html(one))
        usable = one.key is not None and not one.broken
        self.buttons[Deed.CASE].setEnabled(usable)
        self.buttons[Deed.GIVE].setEnabled(one.key is not None)
        self.buttons[Deed.REMOVE].setVisible(one.entry.own)

    def _fill_menu(self) -> None:
        for way in WAYS:
            action = QAction(way_words(way.id), self)
            action.setObjectName(way.id)
            action.triggered.connect(self._on_way_triggered)
            self.menu.addAction(action)
        self.menu.addSeparator()
        printed = self.menu.addAction(self.tr("Printed couplets, in the workshop"))
        printed.triggered.connect(self._on_print_triggered)

    def _button(self, deed: Deed) -> KeyButton:
        words = {
            Deed.CASE: self.tr("Start a case"),
            Deed.EDIT: self.tr("Open in the workshop"),
            Deed.GIVE: self.tr("Hand on…"),
            Deed.REMOVE: self.tr("Take off the shelf"),
        }[deed]
        key = QKeySequence(KEYS[deed])
        native = key.toString(QKeySequence.SequenceFormat.NativeText)
        role = "main" if deed is Deed.CASE else ""
        made = KeyButton(words, native, self._desk.theme, role)
        made.setShortcut(key)
        made.setAccessibleName(words)
        made.setObjectName(deed)
        made.clicked.connect(self._on_button_clicked)
        return made

    def _lay_out(self) -> None:
        px = self._desk.theme.px
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(0, 0, px(6), 0)
        column.setSpacing(px(8))
        for part in (self.title, self.about, self.pictures, self.coverage, self.text):
            column.addWidget(part)
        column.addStretch(1)
        deeds = flowing(self.buttons.values(), px(8))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(18), px(14), px(12), px(12))
        whole.setSpacing(px(10))
        whole.addWidget(scrolled(inner), 1)
        whole.addWidget(deeds)

    @Slot()
    def _on_button_clicked(self) -> None:
        deed = Deed(self.sender().objectName())
        if deed is Deed.GIVE:
            button = self.buttons[deed]
            self.menu.popup(button.mapToGlobal(button.rect().bottomLeft()))
            return
        self.wanted.emit(deed)

    @Slot()
    def _on_print_triggered(self) -> None:
        self.wanted.emit(Deed.PRINT)

    @Slot()
    def _on_way_triggered(self) -> None:
        self.given.emit(self._ways[self.sender().objectName()])
