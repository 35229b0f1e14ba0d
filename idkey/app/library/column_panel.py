"""What one column of the sheet is: shown with the reason of the guess, and changed here."""

from dataclasses import replace

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import QFrame, QLabel, QLineEdit, QPlainTextEdit, QSizePolicy, QVBoxLayout

from idkey.app.library.sheet_words import kind_words, role_words
from idkey.app.parts.captions import caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.theme import Theme
from idkey.app.parts.worded import worded
from idkey.formats.sheet_guess import Column, Role, parted_heading
from idkey.model.character import Kind

PAUSE_MS = 400
"""Time without typing after which changed states count."""


class ColumnPanel(QFrame):
    """Shows a column and changes it.

    Args:
        theme: The look.

    Signals:
        changed(column: object): The person says that it is this `Column`.
    """

    changed = Signal(object)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._column: Column | None = None
        self._filling = False
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self.heading = caption(rank="lead")
        self.why = caption(rank="small")
        self.role = Choice(self.tr("What the column holds"), theme)
        self.role.offer((role_words(role), role) for role in Role)
        self.kind = Choice(self.tr("Kind of character"), theme)
        self.kind.offer((kind_words(kind), kind) for kind in Kind)
        for choice in (self.role, self.kind):
            choice.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.unit = QLineEdit()
        self.unit.setAccessibleName(self.tr("Unit"))
        self.unit.setPlaceholderText("mm")
        self.states = QPlainTextEdit()
        self.states.setAccessibleName(self.tr("States, one a line"))
        self.states.setTabChangesFocus(True)
        self._names: dict[str, QLabel] = {}
        self._lay_out(theme)
        self.role.currentIndexChanged.connect(self._on_changed)
        self.kind.currentIndexChanged.connect(self._on_changed)
        self.unit.editingFinished.connect(self._on_changed)
        self.states.textChanged.connect(self._on_typed)
        self._pause.timeout.connect(self._on_changed)

    def show_column(self, column: Column | None) -> None:
        """Show another column, or the same one as it is now; what is being typed stays."""
        if column == self._column and column is not None:
            return
        other = self._column is None or column is None or self._column.index != column.index
        self._column = column
        self.setEnabled(column is not None)
        if column is None:
            return
        self._filling = True
        self.heading.setText(column.heading or "–")
        self.why.setText(worded(column.why))
        self.why.setVisible(bool(column.why))
        self.role.choose(column.role)
        self.kind.choose(column.kind)
        if other or not self.unit.hasFocus():
            self.unit.setText(column.unit)
        if other or not self.states.hasFocus():
            self.states.setPlainText("\n".join(column.states))
        self._show_needed(column)
        self._filling = False

    def _lay_out(self, theme: Theme) -> None:
        px = theme.px
        column = QVBoxLayout(self)
        column.setContentsMargins(px(14), px(12), px(14), px(12))
        column.setSpacing(px(4))
        column.addWidget(self.heading)
        column.addWidget(self.why)
        column.addSpacing(px(4))
        named = {
            "role": (self.tr("What it holds"), self.role),
            "kind": (self.tr("Kind of character"), self.kind),
            "unit": (self.tr("Unit"), self.unit),
            "states": (self.tr("States in the order they should have, one a line"), self.states),
        }
        for name, (words, field) in named.items():
            label = caption(words, "overline")
            label.setBuddy(field)
            self._names[name] = label
            column.addWidget(label)
            column.addWidget(field, 1 if field is self.states else 0)
        column.addStretch(0)

    def _show_needed(self, column: Column) -> None:
        character = column.role is Role.CHARACTER
        needed = {
            "kind": (self.kind, character),
            "unit": (self.unit, character and column.kind.numeric),
            "states": (self.states, character and not column.kind.numeric),
        }
        for name, (field, visible) in needed.items():
            field.setVisible(visible)
            self._names[name].setVisible(visible)

    def _said(self, column: Column) -> Column:
        lines = (" ".join(line.split()) for line in self.states.toPlainText().splitlines())
        return replace(
            column,
            role=self.role.chosen,
            kind=self.kind.chosen,
            unit=self.unit.text().strip(),
            states=tuple(dict.fromkeys(filter(None, lines))),
        )

    @Slot()
    def _on_typed(self) -> None:
        if not self._filling:
            self._pause.start()

    @Slot()
    def _on_changed(self) -> None:
        if self._filling or self._column is None:
            return
        self._pause.stop()
        said = self._said(self._column)
        if said.kind is Kind.MEASUREMENT and not said.unit:
            _, unit = parted_heading(said.heading)
            said = replace(said, unit=unit)
            self.unit.setText(unit)
        if said != self._column:
            said = replace(said, why=self.tr("You said so."))
            self._column = said
            self.why.setText(said.why)
            self._show_needed(said)
            self.changed.emit(said)
