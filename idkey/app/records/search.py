"""The search bar of the records: words, where they stand, verdict, days."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption, key_text
from idkey.app.parts.choice import Choice
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.theme import Theme
from idkey.app.records.page import kind_words
from idkey.engine.result import VerdictKind
from idkey.report.language import Language
from idkey.store.day import iso_day
from idkey.store.record import Query

MOST = 500
"""Cases shown at most; more than a person reads."""

FIELDS = ("text", "label", "name", "supplier")
"""Fields of a query that words can be looked for in."""


class RecordsSearch(QWidget):
    """Asks for cases as one types.

    Args:
        theme: The look.
        language: Language of the verdicts.

    Signals:
        asked(): Something else is looked for; see `query`.
    """

    asked = Signal()

    def __init__(self, theme: Theme, language: Language) -> None:
        super().__init__()
        self.words = QLineEdit()
        self.words.setAccessibleName(self.tr("Search the records"))
        self.words.setPlaceholderText(
            self.tr("Label, name, supplier, remark, sale number …  ({key})").format(
                key=key_text("Alt+F")
            )
        )
        self.words.setClearButtonEnabled(True)
        self.where = Choice(self.tr("Where the words stand"), theme)
        named = (self.tr("anywhere"), self.tr("label"), self.tr("name"), self.tr("supplier"))
        for name, words in zip(FIELDS, named, strict=True):
            self.where.addItem(words, name)
        self.verdict = Choice(self.tr("Verdict"), theme)
        self.verdict.addItem(self.tr("any verdict"), "")
        for kind in VerdictKind:
            self.verdict.addItem(kind_words(kind.value, language), kind.value)
        self.since = self._day_field(self.tr("from day"), self.tr("First day"), theme)
        self.until = self._day_field(self.tr("to day"), self.tr("Last day"), theme)
        self.said = caption(rank="small", tone="doubt")
        self.said.hide()
        self._lay_out()
        for field in (self.words, self.since, self.until):
            field.textChanged.connect(self._on_changed)
        for choice in (self.where, self.verdict):
            choice.currentIndexChanged.connect(self._on_changed)

    @property
    def query(self) -> Query:
        """What is looked for; a day that is none is left out."""
        words = {str(self.where.currentData()): self.words.text()}
        return Query(
            **words,
            verdict=str(self.verdict.currentData()),
            since=iso_day(self.since.text()) or "",
            until=iso_day(self.until.text()) or "",
            limit=MOST,
        )

    def _day_field(self, hint: str, name: str, theme: Theme) -> QLineEdit:
        field = QLineEdit()
        field.setPlaceholderText(hint)
        field.setAccessibleName(name)
        field.setToolTip(self.tr("{name}, such as 2026-03-12").format(name=name))
        field.setFixedWidth(theme.px(102))
        return field

    def _lay_out(self) -> None:
        row = FlowRow()
        for part in (self.where, self.verdict, self.since, self.until):
            row.add(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.words)
        column.addWidget(row)
        column.addWidget(self.said)

    @Slot()
    def _on_changed(self) -> None:
        odd = [f.text() for f in (self.since, self.until) if iso_day(f.text()) is None]
        text = self.tr("“{day}” is no day yet; write it as 2026-03-12.")
        self.said.setText(text.format(day=odd[0]) if odd else "")
        self.said.setVisible(bool(odd))
        self.asked.emit()
