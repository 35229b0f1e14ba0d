"""The rail at the edge: the open cases, the menu."""

from dataclasses import dataclass

from PySide6.QtCore import (
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QFont, QFontMetrics, QKeyEvent, QPainter, QPainterPath, QPen, QTransform
from PySide6.QtWidgets import (
    QFrame,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QToolButton,
    QVBoxLayout,
)

from idkey.app.bench.session import Session
from idkey.app.parts.captions import caption, key_text
from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_cross, draw_doubt, draw_tick
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.engine.result import VerdictKind
from idkey.report.words import verdict_title

Index = QModelIndex | QPersistentModelIndex


LEAST_WIDTH = 62
"""Narrowest rail in pixels: with small text the names of the places still fit."""

MOST_WIDTH = 88
"""Widest rail in pixels: with large text it does not take the room of the bench."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TrayRow:
    """One open case.

    Attributes:
        case_id: The case.
        number: Its place in the tray, from 1.
        label: The label, verbatim.
        kind: The verdict about the label.
        findings: How many findings it has.
        here: Whether it is on the bench.
    """

    case_id: str
    number: int
    label: str
    kind: VerdictKind
    findings: int
    here: bool


def tray_rows(sessions: tuple[Session, ...], here: str) -> tuple[TrayRow, ...]:
    """The open cases as rows."""
    return tuple(
        TrayRow(
            case_id=session.case.id,
            number=number,
            label=session.case.claim.text,
            kind=session.reasoned.assessment.verdict.kind,
            findings=len(session.case.findings),
            here=session.case.id == here,
        )
        for number, session in enumerate(sessions, start=1)
    )


class TrayDelegate(QStyledItemDelegate):
    """A small tag with its number, and a mark for the verdict.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._theme = desk.theme

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """A tag."""
        return QSize(min(self._theme.px(56), MOST_WIDTH - 8), self._theme.px(44))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the tag."""
        row: TrayRow = index.data(ROW_ROLE)
        rect = QRect(option.rect)
        state = option.state
        px, colour = self._theme.px, self._theme.colour
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tag = QRectF(rect).adjusted(6, 5, -6, -5)
        focus = state & QStyle.StateFlag.State_HasFocus
        painter.setBrush(colour("paper"))
        strong = row.here or focus
        edge = "accent" if strong else "paper_soft"
        painter.setPen(QPen(colour(edge), 3 if strong else 1))
        painter.drawPath(_small_tag(tag, px(8), mirrored=self._theme.mirrored))
        painter.setPen(colour("paper_ink"))
        painter.setFont(self._theme.font(min(13, 20 / self._theme.scale * 100), bold=row.here))
        middle = Qt.AlignmentFlag.AlignVCenter
        side = min(px(15), round(tag.width() * 0.3))
        painter.drawText(tag.adjusted(px(9), 0, -px(9), 0), middle, str(row.number))
        end = tag.left() + px(10) if self._theme.mirrored else tag.right() - side - px(4)
        box = QRectF(end, tag.center().y() - side / 2, side, side)
        if row.kind is VerdictKind.HOLDS:
            draw_tick(painter, box, colour("paper_ink"), colour("paper"))
        elif row.kind is VerdictKind.CONTRADICTED:
            draw_cross(painter, box, colour("paper_ink"), colour("paper"))
        elif row.kind in (VerdictKind.TOO_BROAD, VerdictKind.OUTSIDE):
            draw_doubt(painter, box, colour("paper_ink"), colour("paper"))
        painter.restore()


class TrayList(QListView):
    """The tray; Enter puts a case on the bench."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter open the row on every platform."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.activated.emit(self.currentIndex())
            return
        super().keyPressEvent(event)


class Rail(QFrame):
    """Open cases, new case, palette, menu.

    Args:
        desk: Look, drawings, language.

    Signals:
        case_asked(case_id: str): The person wants that case on the bench.
        wanted(command: str): A command was asked for.
        menu_asked(): The person wants the menu.
    """

    case_asked = Signal(str)
    wanted = Signal(str)
    menu_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "surface")
        self._desk = desk
        self._wide = min(max(desk.theme.px(64), LEAST_WIDTH), MOST_WIDTH)
        self.setFixedWidth(self._wide)
        role = Qt.ItemDataRole
        self.rows: RowsModel[TrayRow] = RowsModel(
            {
                int(role.DisplayRole): lambda row: row.label,
                int(role.AccessibleTextRole): self._spoken,
                int(role.ToolTipRole): self._spoken,
            },
            parent=self,
        )
        self.list = TrayList()
        self.list.setModel(self.rows)
        self.list.setItemDelegate(TrayDelegate(desk))
        self.list.setAccessibleName(self.tr("Open cases"))
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._new = self._tool("+", self.tr("New case"), "Ctrl+N", "new_case")
        self._find = self._tool("⌕", self.tr("Find anything"), "Ctrl+K", "palette")
        self.menu = self._tool("☰", self.tr("Menu"), "F10", "")
        head = caption(self.tr("Cases"), "small", wraps=False)
        head.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 10, 4, 10)
        column.setSpacing(6)
        column.addWidget(head)
        column.addWidget(self._new)
        column.addWidget(self.list, 1)
        self._ways = self._places()
        for place in self._ways:
            column.addWidget(place)
        column.addWidget(self._find)
        column.addWidget(self.menu)
        self.list.clicked.connect(self._on_list_activated)
        self.list.activated.connect(self._on_list_activated)

    def show_tray(self, rows: tuple[TrayRow, ...]) -> None:
        """Show the open cases."""
        self.rows.replace(rows)

    def show_place(self, place: str) -> None:
        """Mark the way to the place that is in front.

        Args:
            place: Its command.
        """
        for way in self._ways:
            way.setChecked(way.objectName() == place)

    def _tool(self, sign: str, name: str, key: str, command: str) -> QToolButton:
        made = QToolButton()
        made.setText(sign)
        made.setFont(self._desk.theme.font(20))
        made.setAccessibleName(name)
        made.setToolTip(f"{name} ({key_text(key)})")
        made.setObjectName(command)
        made.setFixedSize(self._wide - 10, self._desk.theme.px(40))
        made.clicked.connect(self._on_tool_clicked)
        return made

    def _places(self) -> tuple[QToolButton, ...]:
        """The way to the other places, in words."""
        places = (
            (self.tr("Bench"), "Ctrl+1", "bench"),
            (self.tr("Records"), "Ctrl+2", "records"),
            (self.tr("Drill"), "Ctrl+3", "drill"),
            (self.tr("Workshop"), "Ctrl+4", "workshop"),
            (self.tr("Library"), "Ctrl+5", "library"),
        )
        found = []
        for word, key, command in places:
            made = self._tool(word, word, key, command)
            made.setFont(self._fitting(word))
            made.setStyleSheet("padding: 0px")
            made.setFixedHeight(self._desk.theme.px(28))
            made.setCheckable(True)
            found.append(made)
        return tuple(found)

    def _fitting(self, word: str) -> QFont:
        """The small font, or a smaller one where a word is too long for the rail."""
        theme = self._desk.theme
        font = theme.font(11)
        room = self._wide - 14
        while QFontMetrics(font).horizontalAdvance(word) > room and font.pixelSize() > 9:
            font.setPixelSize(font.pixelSize() - 1)
        return font

    def _spoken(self, row: TrayRow) -> str:
        label = row.label or self.tr("no label yet")
        verdict = verdict_title(row.kind, self._desk.language)
        return f"{row.number}. {label}: {verdict}"

    @Slot(QModelIndex)
    def _on_list_activated(self, index: QModelIndex) -> None:
        self.case_asked.emit(index.data(ROW_ROLE).case_id)

    @Slot()
    def _on_tool_clicked(self) -> None:
        tool = self.sender()
        command = tool.objectName()
        if tool in self._ways:  # it shows where one is, not that it was pressed
            tool.setChecked(not tool.isChecked())
        if command:
            self.wanted.emit(command)
        else:
            self.menu_asked.emit()


def _small_tag(box: QRectF, cut: float, *, mirrored: bool) -> QPainterPath:
    path = QPainterPath(QPointF(box.left() + cut, box.top()))
    path.lineTo(box.right(), box.top())
    path.lineTo(box.right(), box.bottom())
    path.lineTo(box.left() + cut, box.bottom())
    path.lineTo(box.left(), box.center().y())
    path.closeSubpath()
    about = QTransform(-1, 0, 0, 1, box.left() + box.right(), 0)
    return about.map(path) if mirrored else path
