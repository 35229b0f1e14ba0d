"""For whom a score holds, what it rests on, and who says so."""

from dataclasses import replace

from PySide6.QtCore import QStringListModel, Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QCompleter, QGridLayout, QLabel, QLineEdit, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import Index
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.source import Basis
from idkey.report.terms import basis_words, sex_words, stage_words

PAUSE_MS = 900
"""Time without typing after which a note counts."""


class CellGrounds(QWidget):
    """Sex, stage, basis, sources and note of one score.

    Args:
        desk: Look, drawings, language.

    Signals:
        changed(score: Score): The person changed one of them.
        spread_asked(score: Score): All chosen cells shall rest on the same.
    """

    changed = Signal(object)
    spread_asked = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        language = desk.language
        self._score: Score | None = None
        self.sex = Choice(self.tr("Sex it holds for"), desk.theme)
        self.sex.offer(
            [(self.tr("both sexes"), None)] + [(sex_words(one, language), one) for one in Sex]
        )
        self.stage = Choice(self.tr("Stage it holds for"), desk.theme)
        self.stage.offer(
            [(self.tr("all stages"), None)] + [(stage_words(one, language), one) for one in Stage]
        )
        self.basis = Choice(self.tr("How the value reached the key"), desk.theme)
        self.basis.offer((self._basis_title(one, desk), one) for one in Basis)
        self.sources = QLineEdit()
        self.sources.setAccessibleName(self.tr("Sources, by their short names"))
        self.sources.setPlaceholderText(self.tr("short names, with commas"))
        self._names = QStringListModel(self)
        self._completer = _LastWord(self._names, self.sources)
        self.sources.setCompleter(self._completer)
        self.cited = caption(rank="small")
        self.note = QLineEdit()
        self.note.setAccessibleName(self.tr("Page or note"))
        self.note.setPlaceholderText(self.tr("page, or what sources disagree about"))
        self.spread = button("", "link")
        self.spread.setAutoDefault(True)
        self.spread.hide()
        self.spread.clicked.connect(self._on_spread_clicked)
        self._lay_out(desk)
        for choice in (self.sex, self.stage, self.basis):
            choice.activated.connect(self._on_activated)
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self._on_paused)
        for field in (self.sources, self.note):
            field.editingFinished.connect(self._on_edited)
            field.textEdited.connect(self._pause.start)

    def show_score(self, key: Key, score: Score) -> None:
        """Show what a score holds for and rests on."""
        self._score = score
        self.sex.choose(score.sex)
        self.stage.choose(score.stage)
        self.basis.choose(score.basis)
        names = [source.id for source in key.sources]
        if names != self._names.stringList():
            self._names.setStringList(names)
        text = ", ".join(score.sources)
        if not self.sources.hasFocus() or _words(self.sources.text()) != score.sources:
            self.sources.setText(text)
        if self.note.text().strip() != score.note:
            self.note.setText(score.note)
        unknown = self.tr("This key has no source “{name}” yet.")
        told = (
            key.source[name].citation if name in key.source else unknown.format(name=name)
            for name in score.sources
        )
        self.cited.setText("\n".join(told))
        self.cited.setVisible(bool(score.sources))

    def flush(self) -> None:
        """Tell what is typed, if it is something else."""
        self._told()

    def show_chosen(self, cells: int) -> None:
        """Offer to let all chosen cells rest on the same, when there are several."""
        text = self.tr("Same basis and sources for {n} chosen cells")
        self.spread.setText(text.format(n=cells))
        self.spread.setVisible(cells > 1)

    def _basis_title(self, basis: Basis, desk: Desk) -> str:
        return basis_words(basis, desk.language)

    def _lay_out(self, desk: Desk) -> None:
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setVerticalSpacing(desk.theme.px(4))
        grid.setColumnStretch(1, 1)
        rows: tuple[tuple[str, QWidget], ...] = (
            (self.tr("Sex"), self.sex),
            (self.tr("Stage"), self.stage),
            (self.tr("Rests on"), self.basis),
            (self.tr("Sources"), self.sources),
            (self.tr("Note"), self.note),
        )
        for row, (title, control) in enumerate(rows):
            label: QLabel = caption(title, "soft", wraps=False)
            label.setBuddy(control)
            grid.addWidget(label, row, 0)
            grid.addWidget(control, row, 1)
        grid.addWidget(self.cited, len(rows), 0, 1, 2)
        grid.addWidget(self.spread, len(rows) + 1, 0, 1, 2)

    def _told(self) -> None:
        self._pause.stop()
        if self._score is None or self.isHidden():
            return
        score = replace(
            self._score,
            sex=self.sex.chosen,
            stage=self.stage.chosen,
            basis=self.basis.chosen,
            sources=_words(self.sources.text()),
            note=self.note.text().strip(),
        )
        if score != self._score:
            self.changed.emit(score)

    @Slot()
    def _on_paused(self) -> None:
        """A short name that is half typed is none yet."""
        known = self._names.stringList()
        if all(name in known for name in _words(self.sources.text())):
            self._told()

    @Slot(int)
    def _on_activated(self, _: int) -> None:
        self._told()

    @Slot()
    def _on_spread_clicked(self) -> None:
        if self._score is not None:
            self.spread_asked.emit(self._score)

    @Slot()
    def _on_edited(self) -> None:
        self._told()


class _LastWord(QCompleter):
    """Completes the last of several names with commas between them."""

    def __init__(self, names: QStringListModel, parent: QWidget) -> None:
        super().__init__(names, parent)
        self.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.setFilterMode(Qt.MatchFlag.MatchContains)
        self._field = parent

    def splitPath(self, path: str) -> list[str]:
        """Look for what follows the last comma."""
        return [path.rpartition(",")[2].strip()]

    def pathFromIndex(self, index: Index) -> str:
        """Keep what stands before the last comma."""
        name = super().pathFromIndex(index)
        head = self._field.text().rpartition(",")[0] if isinstance(self._field, QLineEdit) else ""
        return f"{head}, {name}" if head else name


def _words(text: str) -> tuple[str, ...]:
    return tuple(dict.fromkeys(part for part in (p.strip() for p in text.split(",")) if part))
