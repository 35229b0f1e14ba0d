"""The buttons at the foot of a dialog."""

from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton


def dialog_foot(dialog: QDialog, leave: QPushButton, go: QPushButton) -> QHBoxLayout:
    """The way out, then what the dialog is for; Enter in a field does the latter.

    Args:
        dialog: The dialog; `leave` ends it, what `go` does is the dialog's own.
        leave: The way out; Enter on it leaves, whatever `go` would do.
        go: What the dialog is for.
    """
    leave.clicked.connect(dialog.reject)
    go.setDefault(True)
    row = QHBoxLayout()
    row.addStretch(1)
    row.addWidget(leave)
    row.addWidget(go)
    return row
