"""The strip of the ledger: keys, drops and the corner for pictures of each finding."""

from PySide6.QtCore import QModelIndex, QPoint, Qt, Signal
from PySide6.QtGui import (
    QDragEnterEvent,
    QDragMoveEvent,
    QDropEvent,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
)
from PySide6.QtWidgets import QAbstractItemView, QListView, QStyleOptionViewItem

from idkey.app.bench.ledger_delegate import LedgerDelegate
from idkey.app.parts.arrivals import arrivals
from idkey.app.parts.desk import Desk


class LedgerList(QListView):
    """Findings side by side; Enter corrects, Delete withdraws, P is for pictures.

    Args:
        desk: Look, drawings, language.

    Signals:
        withdrawn(index: QModelIndex): The person wants that finding gone.
        pictures_asked(index: QModelIndex): The person wants to see its pictures, or to add one.
        pasted(index: QModelIndex): The person pastes onto it.
        arrived(index: QModelIndex, what: object): Pictures, as `Arrivals`, were dropped on it.
    """

    withdrawn = Signal(QModelIndex)
    pictures_asked = Signal(QModelIndex)
    pasted = Signal(QModelIndex)
    arrived = Signal(QModelIndex, object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._delegate = LedgerDelegate(desk)
        self.thumbs = self._delegate.thumbs
        self.setItemDelegate(self._delegate)
        self.setFlow(QListView.Flow.LeftToRight)
        self.setHorizontalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMouseTracking(True)
        self.setAcceptDrops(True)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)

    def picture_place(self, index: QModelIndex) -> QPoint:
        """The middle of the corner for pictures of a row, in the viewport."""
        return self._delegate.picture_box(self._option(index), index).center()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter, Delete, P and paste act on the current finding."""
        here, key = self.currentIndex(), event.key()
        if here.isValid() and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.activated.emit(here)
        elif here.isValid() and key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.withdrawn.emit(here)
        elif here.isValid() and event.matches(QKeySequence.StandardKey.Paste):
            self.pasted.emit(here)
        elif here.isValid() and key == Qt.Key.Key_P and not event.modifiers():
            self.pictures_asked.emit(here)
        else:
            super().keyPressEvent(event)

    def moveCursor(
        self, action: QAbstractItemView.CursorAction, modifiers: Qt.KeyboardModifier
    ) -> QModelIndex:
        """Arrow keys go the way they point, also where the strip runs from the right."""
        turned = {
            QAbstractItemView.CursorAction.MoveLeft: QAbstractItemView.CursorAction.MoveRight,
            QAbstractItemView.CursorAction.MoveRight: QAbstractItemView.CursorAction.MoveLeft,
        }
        if self.isRightToLeft():
            action = turned.get(action, action)
        return super().moveCursor(action, modifiers)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A press on the corner for pictures only makes the row current."""
        index = self._at_pictures(event)
        if index.isValid():
            self.setCurrentIndex(index)
        else:
            super().mousePressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A click on the corner for pictures is about them alone."""
        index = self._at_pictures(event)
        if index.isValid() and index == self.currentIndex():
            self.pictures_asked.emit(index)
        else:
            super().mouseReleaseEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A double click beside that corner corrects the finding."""
        if not self._at_pictures(event).isValid():
            super().mouseDoubleClickEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Pictures may be dropped here."""
        if arrivals(event.mimeData()).any:
            event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """The row under the pointer takes them; between rows nothing does."""
        index = self.indexAt(event.position().toPoint())
        if index.isValid():
            self.setCurrentIndex(index)
            event.acceptProposedAction()
        else:
            event.ignore()

    def dropEvent(self, event: QDropEvent) -> None:
        """Take pictures that are dropped on a row."""
        index, what = self.indexAt(event.position().toPoint()), arrivals(event.mimeData())
        if index.isValid() and what.any:
            event.acceptProposedAction()
            self.arrived.emit(index, what)

    def _at_pictures(self, event: QMouseEvent) -> QModelIndex:
        """The row whose corner for pictures lies under the pointer; none beside it."""
        place = event.position().toPoint()
        index = self.indexAt(place)
        if event.button() is not Qt.MouseButton.LeftButton or not index.isValid():
            return QModelIndex()
        box = self._delegate.picture_box(self._option(index), index)
        return index if box.contains(place) else QModelIndex()

    def _option(self, index: QModelIndex) -> QStyleOptionViewItem:
        option = QStyleOptionViewItem()
        self.initViewItemOption(option)
        option.rect = self.visualRect(index)
        return option
