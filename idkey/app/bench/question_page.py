"""The question card, and the other questions below it or beside it."""

from PySide6.QtCore import Qt, QTimer, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QVBoxLayout, QWidget

from idkey.app.bench.others_view import OthersView
from idkey.app.bench.question_view import QuestionView
from idkey.app.bench.session import Session
from idkey.app.parts.captions import KeyButton
from idkey.app.parts.desk import Desk
from idkey.app.parts.scrolling import scrolled

BESIDE = 1160
"""From this width at 100 % text the other questions stand beside the card, in pixels."""

SHORT = 400
"""Below this height at 100 % text they are left to a page of their own, in pixels."""

LEAST = 110
"""Least height of the other questions at 100 % text: their head and one of them."""


class QuestionPage(QWidget):
    """Shares the room between the card and the other questions.

    Args:
        desk: Look, drawings, language.

    Signals:
        others_asked(): The person wants the other questions, for which there is no room.
    """

    others_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._crowded = self._ended = False
        self._shown = ""
        self.question = QuestionView(desk)
        self.others = OthersView(desk)
        self._more = KeyButton(self.tr("Other questions"), "Ctrl+F", desk.theme, "quiet")
        self._more.hide()
        self._split = QSplitter(Qt.Orientation.Vertical)
        self._lay_out()
        self._more.clicked.connect(self._on_more_clicked)

    @property
    def roomy(self) -> bool:
        """Whether the other questions are shown here."""
        return not self.others.isHidden()

    def show_session(self, session: Session, draft: str, *, crowded: bool) -> None:
        """Show the question of a session.

        Args:
            session: The session.
            draft: The answer that was not confirmed last time; empty when there is none.
            crowded: Whether something else needs the room of the other questions.
        """
        self._crowded = crowded
        self._ended = session.question is None and not session.reading
        self.question.show_session(session, draft)
        self.others.show_session(session)
        character = session.character.id if session.character else ""
        if character != self._shown:
            self._shown = character
            QTimer.singleShot(0, self, self._show_top)
        QTimer.singleShot(0, self, self._share)

    def focus_answer(self) -> None:
        """Put the focus where the answer is given, or where the next question is chosen."""
        if not self._ended:
            self.question.focus_answer()
        elif self.roomy:
            self.others.search.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self._more.setFocus(Qt.FocusReason.OtherFocusReason)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the new room."""
        super().resizeEvent(event)
        self._share()

    def _lay_out(self) -> None:
        inner = QWidget()
        card = QVBoxLayout(inner)
        card.setContentsMargins(0, 0, 0, 0)
        card.setSpacing(6)
        card.addWidget(self.question)
        card.addWidget(self._more, 0, Qt.AlignmentFlag.AlignLeft)
        card.addStretch(1)
        self._scroll = scrolled(inner)
        self._split.setHandleWidth(8)
        self._split.addWidget(self._scroll)
        self._split.addWidget(self.others)
        self._split.setCollapsible(0, False)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._split)

    @Slot()
    def _share(self) -> None:
        """Give the card the height it needs, and the other questions the rest."""
        px = self._desk.theme.px
        beside = self.width() >= px(BESIDE)
        short = not beside and (self._crowded or self.height() < px(SHORT))
        self.others.setVisible(not short)
        self._more.setVisible(short)
        if short:
            return
        way = Qt.Orientation
        self._split.setOrientation(way.Horizontal if beside else way.Vertical)
        if beside:
            self._split.setSizes([self.width() - px(360), px(360)])
            return
        whole = self.height()
        card = self.question.heightForWidth(self.question.width()) + 2
        wanted = min(max(card, px(LEAST)), max(whole - px(LEAST), px(LEAST)))
        self._split.setSizes([wanted, whole - wanted])

    @Slot()
    def _show_top(self) -> None:
        """Show a new question from its beginning, whatever has the focus."""
        self._scroll.verticalScrollBar().setValue(0)

    @Slot()
    def _on_more_clicked(self) -> None:
        self.others_asked.emit()
