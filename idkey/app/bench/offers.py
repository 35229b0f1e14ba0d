"""What the typed label may mean: a list that hangs from the tag."""

from PySide6.QtCore import QModelIndex, QPoint, QStringListModel, Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QListView, QVBoxLayout, QWidget

from idkey.app.parts.theme import Theme


class Offers(QFrame):
    """Spellings of label entries; the field above keeps the focus and steers.

    Args:
        theme: The look.
        over: The widget it lies over.

    Signals:
        chosen(text: str): The label means that.
    """

    chosen = Signal(str)

    def __init__(self, theme: Theme, over: QWidget) -> None:
        super().__init__(over)
        self.setProperty("pane", "card")
        self._theme = theme
        self._over = over
        self._texts = QStringListModel(self)
        self.list = QListView()
        self.list.setModel(self._texts)
        self.list.setAccessibleName(self.tr("What the label may mean"))
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setSpacing(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 6, 6, 6)
        column.addWidget(self.list)
        self.list.clicked.connect(self._on_list_clicked)
        self.hide()

    @property
    def texts(self) -> tuple[str, ...]:
        """What is on offer."""
        return tuple(self._texts.stringList())

    @property
    def current(self) -> str:
        """The one the arrows stand on; empty when they stand on none."""
        index = self.list.currentIndex()
        return str(index.data()) if index.isValid() and not self.isHidden() else ""

    def show_texts(self, texts: tuple[str, ...]) -> None:
        """Offer other spellings."""
        if texts != self.texts:
            self._texts.setStringList(list(texts))

    def hang(self, field: QWidget) -> None:
        """Show below a field, or hide while there is nothing to offer."""
        if not self.texts:
            self.hide()
            return
        place = field.mapTo(self._over, QPoint(0, field.height() + 4))
        high = len(self.texts) * self._theme.px(28) + 18
        self.setGeometry(place.x(), place.y(), max(field.width(), self._theme.px(300)), high)
        self.list.setCurrentIndex(QModelIndex())
        self.show()
        self.raise_()

    def step(self, by: int) -> None:
        """Move the arrows' choice."""
        row = self.list.currentIndex().row() + by
        row = min(max(row, 0), len(self.texts) - 1)
        self.list.setCurrentIndex(self._texts.index(row))

    @Slot(QModelIndex)
    def _on_list_clicked(self, index: QModelIndex) -> None:
        self.hide()
        self.chosen.emit(str(index.data()))
