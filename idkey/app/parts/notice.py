"""A line at the foot of the window that says what went wrong and what to do."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout

from idkey.app.parts.captions import button, caption
from idkey.app.parts.messages import Message


class Notice(QFrame):
    """Shows the newest message until the person has read it.

    Signals:
        put_away(): The person has read it.
        taken(): The person wants what the message offers.
    """

    put_away = Signal()
    taken = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("pane", "doubt")
        self._text = caption()
        self._offer = button()
        self._offer.hide()
        close = button(self.tr("Understood"))
        row = QHBoxLayout(self)
        row.setContentsMargins(16, 8, 12, 8)
        row.addWidget(self._text, 1)
        row.addWidget(self._offer)
        row.addWidget(close)
        self._offer.clicked.connect(self._on_offer_clicked)
        close.clicked.connect(self._on_close_clicked)
        self.hide()

    @property
    def text(self) -> str:
        """What it says; empty while it is away."""
        return self._text.text() if self.isVisible() else ""

    def say(self, message: Message, *, offer: str = "") -> None:
        """Show a message in place of the one before; `offer` names what can be done about it."""
        self._offer.setText(offer)
        self._offer.setVisible(bool(offer))
        self._text.setText(f"{message.problem} {message.remedy}".strip())
        self.setAccessibleName(self._text.text())
        self.show()
        spoken = QAccessibleAnnouncementEvent(self, self._text.text())
        QAccessible.updateAccessibility(spoken)

    @Slot()
    def _on_offer_clicked(self) -> None:
        self.hide()
        self.taken.emit()

    @Slot()
    def _on_close_clicked(self) -> None:
        self.hide()
        self.put_away.emit()
