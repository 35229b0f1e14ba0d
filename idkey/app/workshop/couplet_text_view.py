"""Couplets as text that can be edited: taken over as soon as it can be read, kept until then."""

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QSignalBlocker, Qt, QTimer, Slot
from PySide6.QtGui import QColor, QTextCursor, QTextFormat
from PySide6.QtWidgets import (
    QFrame,
    QListWidget,
    QPlainTextEdit,
    QTextEdit,
    QVBoxLayout,
    QWidget,
)

from idkey.app.parts.captions import button, caption
from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.workshop.couplet_reading import Mistake
from idkey.app.workshop.couplet_text import couplets_of_text, couplets_text
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_text_box import rewrite
from idkey.app.workshop.forms_unread import Place, unread_of
from idkey.app.workshop.state import WorkshopState
from idkey.model.couplet import Couplet

PAUSE_MS = 700
"""After so long without a key, the text is read."""


def text_place(folder: Path) -> Place:
    """Where the text of the couplets of a key folder is kept while it cannot be read."""
    return str(folder), "couplets", "text"


class CoupletText(QWidget):
    """The couplets as one text.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__()
        self._state, self._desk = state, desk
        self._unread = unread_of(state)
        self._folder = Path()
        self._shown: tuple[Couplet, ...] | None = None
        self.mistakes: tuple[Mistake, ...] = ()
        self.text = QPlainTextEdit()
        self.text.setAccessibleName(self.tr("Couplets as text"))
        self.text.setTabChangesFocus(True)
        self.text.setLineWrapMode(QPlainTextEdit.LineWrapMode.WidgetWidth)
        self.help = caption(
            self.tr(
                "A line for each lead: 1 a. What the animal shows -> 2. After the arrow stands "
                "the next couplet, or the taxa it ends in. Indented below it: sees: character = "
                "state, state; another = 10..20 and remark: … A note for the couplet: 1 note: …"
            ),
            "small",
        )
        self.banner = self._made_banner()
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Mistakes in the text"))
        self.list.setMaximumHeight(desk.theme.px(110))
        self.list.setWordWrap(True)
        airy(self.list, desk.theme)
        self.list.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        for part in (self.help, self.banner, self.text, self.list):
            column.addWidget(part, int(part is self.text))
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self.flush)
        self.text.textChanged.connect(self._on_text_changed)
        self.list.itemActivated.connect(self._on_list_activated)
        self.list.itemClicked.connect(self._on_list_activated)

    def show_editing(self, editing: Editing) -> None:
        """Show the couplets, unless the text says them already or cannot be read yet."""
        couplets = editing.key.couplets
        if editing.folder != self._folder:
            self._folder, self._shown = editing.folder, couplets
            kept = self._unread.text(text_place(editing.folder))
            self._write(couplets_text(couplets) if kept is None else kept)
            if kept is not None:
                self._say(couplets_of_text(kept, editing.key)[1])
            return
        if couplets == self._shown or self._pause.isActive() or self.mistakes:
            return
        self._shown = couplets
        self._write(couplets_text(couplets))

    def go_to(self, line: int) -> None:
        """Put the caret at the start of a line, counted from 1, and the focus into the text."""
        block = self.text.document().findBlockByNumber(line - 1)
        self.text.setTextCursor(QTextCursor(block))
        self.text.centerCursor()
        self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def line_of(self, start: str) -> int:
        """The first line that starts with a text, counted from 1; 0 when there is none."""
        lines = self.text.toPlainText().split("\n")
        return next((n for n, line in enumerate(lines, start=1) if line.startswith(start)), 0)

    @Slot()
    def flush(self) -> None:
        """Read what was typed: a step when it can be read, kept when not."""
        if not self._pause.isActive() and self.sender() is not self._pause:
            return
        self._pause.stop()
        editing = self._state.editing
        if editing is None or editing.folder != self._folder:
            return
        text = self.text.toPlainText()
        couplets, mistakes = couplets_of_text(text, editing.key)
        self._say(mistakes)
        if couplets is None:
            self._unread.keep(text_place(self._folder), text)
            return
        self._unread.drop(text_place(self._folder))
        self._shown = couplets
        words = self.tr("Couplets as text")
        self._state.change(replace(editing.key, couplets=couplets), words)

    def _made_banner(self) -> QFrame:
        frame = QFrame()
        frame.setProperty("pane", "doubt")
        self.said = caption()
        self.drop = button(self.tr("Put my text away, show the couplets as they are"))
        self.drop.clicked.connect(self._on_drop_clicked)
        column = QVBoxLayout(frame)
        column.setContentsMargins(12, 6, 12, 8)
        column.addWidget(self.said)
        column.addWidget(self.drop, 0, Qt.AlignmentFlag.AlignLeft)
        frame.hide()
        return frame

    def _say(self, mistakes: tuple[Mistake, ...]) -> None:
        self.mistakes = mistakes
        self.list.clear()
        for one in mistakes[:50]:
            text = self.tr("Line {line}: {problem} {remedy}")
            self.list.addItem(text.format(line=one.line, problem=one.problem, remedy=one.remedy))
        self.list.setVisible(bool(mistakes))
        self.banner.setVisible(bool(mistakes))
        self.said.setText(
            self.tr("Your text is kept, but not taken over before its mistakes are mended.")
        )
        self._underline()

    def _underline(self) -> None:
        marks = []
        for one in self.mistakes[:50]:
            mark = QTextEdit.ExtraSelection()
            mark.format.setBackground(QColor(self._desk.theme.colours.doubt_soft))
            mark.format.setProperty(QTextFormat.Property.FullWidthSelection, True)
            mark.cursor = QTextCursor(self.text.document().findBlockByNumber(one.line - 1))
            marks.append(mark)
        self.text.setExtraSelections(marks)

    def _write(self, text: str) -> None:
        if text == self.text.toPlainText():
            return
        with QSignalBlocker(self.text):
            rewrite(self.text, text)

    @Slot()
    def _on_text_changed(self) -> None:
        self._pause.start()

    @Slot()
    def _on_list_activated(self) -> None:
        row = self.list.currentRow()
        if 0 <= row < len(self.mistakes):
            self.go_to(self.mistakes[row].line)

    @Slot()
    def _on_drop_clicked(self) -> None:
        self._pause.stop()
        self._unread.drop(text_place(self._folder))
        self._say(())
        editing = self._state.editing
        if editing is not None:
            self._shown = editing.key.couplets
            self._write(couplets_text(editing.key.couplets))
            self.text.setFocus(Qt.FocusReason.OtherFocusReason)
