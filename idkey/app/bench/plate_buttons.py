"""The characters of the parts of an animal, as buttons under headings."""

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSize, Qt, Signal, Slot
from PySide6.QtGui import (
    QEnterEvent,
    QFocusEvent,
    QFontMetrics,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QVBoxLayout, QWidget

from idkey.app.bench.plate_groups import PartEntry, PartGroup
from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_tick
from idkey.app.parts.tips import tip

_WRAPPED = int(Qt.TextFlag.TextWordWrap)


class EntryButton(QAbstractButton):
    """One character: its name, and below it the question or what was seen.

    Args:
        entry: The character.
        part: The part it is seen on.
        desk: Look, drawings, language.

    Signals:
        looked_at(part: str): It has the focus or the mouse.
    """

    looked_at = Signal(str)

    def __init__(self, entry: PartEntry, part: str, desk: Desk) -> None:
        super().__init__()
        self.entry = entry
        self._part = part
        self._theme = desk.theme
        self.setText(entry.name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.setAccessibleName(entry.name)
        seen = self.tr("Seen: {what}").format(what=entry.line)
        self.setAccessibleDescription(seen if entry.answered else entry.line)
        self.setToolTip(tip(entry.line))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Room for the whole name at the width there is."""
        px = self._theme.px
        return QSize(px(220), self._name_box().height() + px(30))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may break the name into other lines."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter do what a click does."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        else:
            super().keyPressEvent(event)

    def enterEvent(self, event: QEnterEvent) -> None:
        """Say where it is seen."""
        super().enterEvent(event)
        self.looked_at.emit(self._part)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Say where it is seen."""
        super().focusInEvent(event)
        self.looked_at.emit(self._part)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the button."""
        px, colour = self._theme.px, self._theme.colour
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(colour("accent_soft" if self.underMouse() else "raised"))
        edge = QPen(colour("accent"), 2) if self.hasFocus() else QPen(colour("line"), 1)
        painter.setPen(edge)
        painter.drawRoundedRect(self.rect().adjusted(1, 1, -2, -2), 7, 7)
        name = self._name_box()
        painter.setPen(colour("ink"))
        painter.setFont(self._theme.font(13.5))
        painter.drawText(name, _WRAPPED, self.entry.name)
        small = self._theme.font(12)
        painter.setFont(small)
        painter.setPen(colour("accent" if self.entry.answered else "soft"))
        line = QRect(name.left(), name.bottom() + 1, name.width(), px(20))
        end = Qt.TextElideMode.ElideRight
        text = QFontMetrics(small).elidedText(self.entry.line, end, line.width())
        painter.drawText(line, Qt.AlignmentFlag.AlignVCenter, text)
        if self.entry.answered:
            side = px(16)
            box = QRect(self.width() - px(10) - side, (self.height() - side) // 2, side, side)
            draw_tick(painter, box.toRectF(), colour("accent"), colour("raised"))
        painter.end()

    def _name_box(self) -> QRect:
        px = self._theme.px
        wide = max(self.width() - px(20) - (px(24) if self.entry.answered else 0), px(80))
        metrics = QFontMetrics(self._theme.font(13.5))
        high = metrics.boundingRect(QRect(0, 0, wide, 999), _WRAPPED, self.entry.name).height()
        return QRect(px(10), px(5), wide, high)


class EntryList(QWidget):
    """Buttons under the names of the parts.

    Args:
        desk: Look, drawings, language.

    Signals:
        looked_at(part: str): A character of that part has the focus or the mouse.
        picked(character: str): The person wants this character on the card.
    """

    looked_at = Signal(str)
    picked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.buttons: tuple[EntryButton, ...] = ()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 6, 0)
        self._column.setSpacing(4)

    def show_groups(self, groups: Sequence[PartGroup]) -> None:
        """Show other characters."""
        while item := self._column.takeAt(0):
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        made = []
        for group in groups:
            self._column.addSpacing(2)
            self._column.addWidget(caption(group.title, "overline", wraps=False))
            for entry in group.entries:
                button = EntryButton(entry, group.part, self._desk)
                button.looked_at.connect(self.looked_at)
                button.clicked.connect(self._on_button_clicked)
                self._column.addWidget(button)
                made.append(button)
        self._column.addStretch(1)
        self.buttons = tuple(made)

    @Slot()
    def _on_button_clicked(self) -> None:
        button = self.sender()
        if isinstance(button, EntryButton):
            self.picked.emit(button.entry.character)
