"""Written and built couplets side by side, in numbers."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from idkey.app.parts.captions import caption
from idkey.app.workshop.building import BuildResult, Measured
from idkey.report.language import Language


class BuildTable(QWidget):
    """A row for each measure, a column for each set of couplets.

    Args:
        language: Language of the numbers.
    """

    def __init__(self, language: Language) -> None:
        super().__init__()
        self._language = language
        self._cells: list[tuple[QLabel, QLabel]] = []
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(18)
        grid.setVerticalSpacing(3)
        for place, title in enumerate((self.tr("written"), self.tr("built")), start=1):
            grid.addWidget(caption(title, "overline", wraps=False), 0, place, _RIGHT)
        for row, (title, _) in enumerate(self._measures(), start=1):
            grid.addWidget(caption(title), row, 0)
            cells = (caption(wraps=False), caption(rank="strong", wraps=False))
            for place, cell in enumerate(cells, start=1):
                grid.addWidget(cell, row, place, _RIGHT)
            self._cells.append(cells)
        grid.setColumnStretch(0, 1)

    def show_result(self, found: BuildResult) -> None:
        """Show other couplets."""
        for (title, words), cells in zip(self._measures(), self._cells, strict=True):
            for cell, measured in zip(cells, (found.written, found.built), strict=True):
                cell.setText(words(measured) if measured else "–")
                cell.setAccessibleName(f"{title}: {cell.text()}")

    def _measures(self) -> tuple[tuple[str, Callable[[Measured], str]], ...]:
        def number(value: float) -> str:
            return f"{value:.1f}".replace(".", self._language.decimal)

        return (
            (self.tr("Couplets"), lambda one: str(one.couplets)),
            (self.tr("Questions, on average"), lambda one: number(one.cost.questions)),
            (self.tr("Questions, at worst"), lambda one: str(one.cost.most_questions)),
            (
                self.tr("No key with as many leads asks fewer, on average, than"),
                lambda one: number(one.cost.bound),
            ),
            (
                self.tr("Effort, on average (1 is a glance)"),
                lambda one: number(one.cost.effort),
            ),
            (self.tr("Effort, at worst"), lambda one: number(one.cost.most_effort)),
            (
                self.tr("Animals that come out under one name"),
                lambda one: self._language.share(one.named),
            ),
            (self.tr("Ends with more than one name"), lambda one: str(one.together)),
            (self.tr("Taxa nothing leads to"), lambda one: str(len(one.missing))),
        )


_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop
