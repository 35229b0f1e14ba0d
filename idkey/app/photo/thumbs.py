"""The pictures of a case as thumbnails; what is missing or damaged says so."""

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QIcon, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_doubt
from idkey.app.parts.rows import ROW_ROLE, Index, RowsModel
from idkey.app.photo.session import Entry, PhotoSession
from idkey.photo.shelf import Condition

SIDE = 76
"""Side of a thumbnail at 100 %, in pixels."""


class ThumbDelegate(QStyledItemDelegate):
    """A thumbnail with a frame: strong round the shown one.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the thumbnail."""
        icon = index.data(Qt.ItemDataRole.DecorationRole)
        side = self._desk.theme.px(SIDE)
        frame = QRectF(option.rect.x() + 5, option.rect.y() + 4, side, side)
        if isinstance(icon, QIcon):
            icon.paint(painter, frame.toRect())
        colour = self._desk.theme.colour
        shown = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.save()
        painter.setPen(QPen(colour("accent" if shown else "outline"), 3 if shown else 1))
        painter.drawRect(frame)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(colour("ink"), 1, Qt.PenStyle.DashLine))
            painter.drawRect(frame.adjusted(-3, -3, 3, 3))
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """The thumbnail and its frame."""
        side = self._desk.theme.px(SIDE)
        return QSize(side + 10, side + 9)


class Thumbs(QListView):
    """A column of thumbnails.

    Args:
        desk: Look, drawings, language.

    Signals:
        opened(picture: str): The person wants to see that picture.
    """

    opened = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._icons: dict[Entry, QIcon] = {}
        role = Qt.ItemDataRole
        self.rows: RowsModel[Entry] = RowsModel(
            {
                int(role.DecorationRole): self._icon,
                int(role.ToolTipRole): self._words,
                int(role.AccessibleTextRole): self._words,
            },
            parent=self,
        )
        self.setModel(self.rows)
        self._delegate = ThumbDelegate(desk)
        self.setItemDelegate(self._delegate)
        side = desk.theme.px(SIDE)
        self.setIconSize(QSize(side, side))
        self.setFixedWidth(side + desk.theme.px(22))
        self.setUniformItemSizes(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Pictures of this case"))
        self.selectionModel().currentChanged.connect(self._on_current_changed)

    def show_session(self, session: PhotoSession) -> None:
        """Show the pictures of a session."""
        self.setVisible(bool(session.entries))
        self.rows.replace(session.entries)
        if session.shown in session.ids:
            index = self.rows.index(session.ids.index(session.shown))
            if index != self.currentIndex():
                self.selectionModel().setCurrentIndex(
                    index, QItemSelectionModel.SelectionFlag.ClearAndSelect
                )

    def _words(self, entry: Entry) -> str:
        number = self.rows.rows.index(entry) + 1
        return {
            Condition.MISSING: self.tr("Picture {n}: its file is missing"),
            Condition.DAMAGED: self.tr("Picture {n}: its file is damaged"),
        }.get(entry.condition or Condition.WHOLE, self.tr("Picture {n}")).format(n=number)

    def _icon(self, entry: Entry) -> QIcon:
        if entry not in self._icons:
            self._icons[entry] = QIcon(self._drawn(entry))
        return self._icons[entry]

    def _drawn(self, entry: Entry) -> QPixmap:
        side, ratio = self._desk.theme.px(SIDE), self.devicePixelRatioF()
        made = QPixmap(round(side * ratio), round(side * ratio))
        made.setDevicePixelRatio(ratio)
        made.fill(self._desk.theme.colour("line"))
        painter = QPainter(made)
        small = QPixmap()
        if entry.thumbnail is not None and small.loadFromData(entry.thumbnail):
            keep = Qt.AspectRatioMode.KeepAspectRatioByExpanding
            smooth = Qt.TransformationMode.SmoothTransformation
            large = small.scaled(made.size(), keep, smooth)
            x, y = (large.width() - made.width()) // 2, (large.height() - made.height()) // 2
            painter.drawPixmap(
                QRectF(0, 0, side, side), large, QRectF(x, y, made.width(), made.height())
            )
        if entry.condition in (Condition.MISSING, Condition.DAMAGED):
            ground = self._desk.theme.colour("doubt_soft")
            ground.setAlpha(200)
            painter.fillRect(0, 0, side, side, ground)
            colour = self._desk.theme.colour
            box = QRectF(side * 0.3, side * 0.3, side * 0.4, side * 0.4)
            draw_doubt(painter, box, colour("doubt"), colour("raised"))
        painter.end()
        return made

    @Slot(QModelIndex)
    def _on_current_changed(self, index: QModelIndex) -> None:
        entry = index.data(ROW_ROLE)
        if isinstance(entry, Entry):
            self.opened.emit(entry.id)
