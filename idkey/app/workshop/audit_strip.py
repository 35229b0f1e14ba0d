"""The foot of the workshop: how the key stands, and the first thing to mend."""

from PySide6.QtCore import QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_tick
from idkey.app.parts.theme import Theme
from idkey.app.workshop.audit_delegate import draw_weight
from idkey.app.workshop.audit_rows import AuditRow, Weight, audit_rows
from idkey.app.workshop.audit_words import audit_counts
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.state import WorkshopState


class AuditStrip(QFrame):
    """One line that is always there, on every page of the workshop.

    Args:
        state: The workshop.
        desk: Look, drawings, language.

    Signals:
        opened(): The person wants to see all that was found.
    """

    opened = Signal()

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "quiet")
        self._state, self._desk = state, desk
        self._row: AuditRow | None = None
        self._mark = _Mark(desk.theme)
        self.counts = button(role="link")
        self.counts.setToolTip(self.tr("Show everything that was found"))
        self.first = caption(rank="soft", wraps=False)
        self.first.setMinimumWidth(1)
        self.go = button(self.tr("Go there"), "quiet")
        self.go.setAccessibleName(self.tr("Go to the first thing to mend"))
        row = QHBoxLayout(self)
        row.setContentsMargins(12, 3, 6, 3)
        row.setSpacing(8)
        for widget in (self._mark, self.counts):
            row.addWidget(widget)
        row.addWidget(self.first, 1)
        row.addWidget(self.go)
        self.counts.clicked.connect(self._on_counts_clicked)
        self.go.clicked.connect(self._on_go_clicked)
        state.changed.connect(self.show_editing)
        if state.editing is not None:
            self.show_editing(state.editing)

    @Slot(object)
    def show_editing(self, editing: Editing) -> None:
        """Show how the key stands now."""
        self.counts.setText(audit_counts(editing))
        self._row = next(audit_rows(editing, self._desk.language), None)
        mistaken = self._row is not None and self._row.weight is not Weight.REMARK
        self._mark.show_weight(self._row.weight if self._row else None)
        self.go.setVisible(mistaken)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Cut the first mistake to the room there is."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        row = self._row
        text = f"{row.what} {row.mend}" if row and row.weight is not Weight.REMARK else ""
        wide = max(self.first.width(), 1)
        shown = self.first.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, wide)
        self.first.setText(shown)
        self.first.setAccessibleName(text)

    @Slot()
    def _on_counts_clicked(self) -> None:
        self.opened.emit()

    @Slot()
    def _on_go_clicked(self) -> None:
        if self._row is not None:
            self._state.show_place(self._row.about)


class _Mark(QWidget):
    """The weight of the worst that was found; a tick where nothing was."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._weight: Weight | None = None
        self.setFixedSize(self.sizeHint())

    def show_weight(self, weight: Weight | None) -> None:
        """Show another weight."""
        self._weight = weight
        self.update()

    def sizeHint(self) -> QSize:
        """As high as a line."""
        return QSize(self._theme.px(15), self._theme.px(15))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect())
        if self._weight is None:
            draw_tick(painter, box, self._theme.colour("accent"), self._theme.colour("raised"))
        else:
            draw_weight(painter, box, self._weight, self._theme)
        painter.end()
