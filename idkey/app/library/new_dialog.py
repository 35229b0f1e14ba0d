"""Asks what a new key is called."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QDialog, QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.dialog_foot import dialog_foot
from idkey.app.parts.theme import Theme


class NewDialog(QDialog):
    """The title of the new key.

    Args:
        theme: The look.
        parent: Over which it stands.

    Signals:
        told(title: str): What it is called.
    """

    told = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("A new key"))
        self.title = QLineEdit()
        self.title.setAccessibleName(self.tr("Title of the key"))
        label = caption(self.tr("What is the key called?"), "strong")
        label.setBuddy(self.title)
        hint = caption(self.tr("The title can be changed later; the folder is named after it."))
        self.go = button(self.tr("Make the key"), "main")
        self.go.setEnabled(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.px(20), theme.px(16), theme.px(20), theme.px(16))
        column.setSpacing(theme.px(8))
        for part in (label, self.title, hint):
            column.addWidget(part)
        column.addLayout(dialog_foot(self, button(self.tr("Cancel")), self.go))
        self.setMinimumWidth(theme.px(440))
        self.title.textChanged.connect(self._on_title_changed)
        self.go.clicked.connect(self._on_go_clicked)
        self.title.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(str)
    def _on_title_changed(self, title: str) -> None:
        self.go.setEnabled(bool(title.strip()))

    @Slot()
    def _on_go_clicked(self) -> None:
        self.told.emit(" ".join(self.title.text().split()))
        self.accept()
