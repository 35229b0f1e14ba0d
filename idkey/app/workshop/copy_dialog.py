"""Asks for the id of an own copy of a key."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QDialog, QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.dialog_foot import dialog_foot
from idkey.app.parts.messages import message_for
from idkey.app.parts.theme import Theme
from idkey.app.workshop.shelf import Shelf


class CopyDialog(QDialog):
    """What the copy is to be called.

    Args:
        title: Title of the key to copy.
        wish: The id offered.
        shelf: Tells which ids are free.
        theme: The look.
        parent: Over which it stands.

    Signals:
        told(key_id: str): The person chose an id that is free.
    """

    told = Signal(str)

    def __init__(
        self, title: str, wish: str, *, shelf: Shelf, theme: Theme, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Your own copy"))
        self._shelf = shelf
        text = self.tr("A copy of “{title}”, comments and all, goes to your own keys.")
        said = caption(text.format(title=title))
        self.name = QLineEdit(wish)
        self.name.setAccessibleName(self.tr("Id of the copy"))
        label = caption(self.tr("Id of the copy, which is the name of its folder"), "strong")
        label.setBuddy(self.name)
        self.wrong = caption(tone="doubt")
        self.wrong.setMinimumHeight(theme.px(40))
        self.go = button(self.tr("Copy and work on it"), "main")
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 16)
        column.setSpacing(8)
        for part in (said, label, self.name, self.wrong):
            column.addWidget(part)
        column.addLayout(dialog_foot(self, button(self.tr("Cancel")), self.go))
        self.setMinimumWidth(theme.px(460))
        self.name.textChanged.connect(self._on_name_changed)
        self.go.clicked.connect(self._on_go_clicked)
        self._on_name_changed(wish)

    @Slot(str)
    def _on_name_changed(self, name: str) -> None:
        error = self._shelf.complaint(name)
        self.wrong.setText("" if error is None else message_for(error).text)
        self.go.setEnabled(error is None)

    @Slot()
    def _on_go_clicked(self) -> None:
        self.told.emit(self.name.text())
        self.accept()
