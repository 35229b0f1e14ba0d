"""The bench: claim, verdict, question, line-up and ledger on one screen."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QSplitter, QStackedWidget, QVBoxLayout
from PySide6.QtWidgets import QWidget

from idkey.app.bench_bar import BenchBar
from idkey.app.bench_state import BenchState
from idkey.app.claim_view import ClaimView
from idkey.app.desk import Desk
from idkey.app.label_note import LabelNote
from idkey.app.ledger_view import LedgerView
from idkey.app.lineup_view import LineupView
from idkey.app.others_view import OthersView
from idkey.app.question_view import QuestionView
from idkey.app.session import Session
from idkey.app.verdict_view import VerdictView


class BenchView(QWidget):
    def __init__(self, state: BenchState, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self.state = state
        self.desk = desk
        self.claim = ClaimView(desk.theme)
        self.verdict = VerdictView(desk)
        self.bar = BenchBar(desk)
        self.note = LabelNote(desk)
        self.question = QuestionView(desk)
        self.others = OthersView(desk)
        self.lineup = LineupView(desk)
        self.ledger = LedgerView(desk)
        self._lay_out()
        self.question.observed.connect(state.observe)
        self.claim.typed.connect(state.type_label)
        self.claim.claimed.connect(state.claim)
        self.others.asked.connect(state.ask)
        self.ledger.asked.connect(state.ask)
        self.ledger.withdrawn.connect(state.withdraw)
        self.note.asked.connect(state.ask)
        state.changed.connect(self.show_session)
        self.show_session(state.session)

    @Slot(object)
    def show_session(self, s: Session) -> None:
        self.claim.show_claim(s.case.claim)
        self.claim.offer(tuple(m.text for m in s.matches))
        self.verdict.show_session(s)
        self.bar.show_session(s)
        self.note.show_session(s)
        self.question.show_session(s)
        self.others.show_session(s)
        self.lineup.show_session(s)
        self.ledger.show_session(s)

    def _lay_out(self):
        top = QHBoxLayout(); top.setSpacing(16)
        top.addWidget(self.claim); top.addWidget(self.verdict, 1)
        scroll = QScrollArea(); scroll.setWidgetResizable(True)
        inner = QWidget(); inner.setProperty('pane','clear')
        col = QVBoxLayout(inner); col.setContentsMargins(0,0,0,0); col.setSpacing(8)
        col.addWidget(self.note); col.addWidget(self.question); col.addStretch(1)
        scroll.setWidget(inner)
        split = QSplitter(Qt.Orientation.Vertical); split.addWidget(scroll); split.addWidget(self.others)
        split.setStretchFactor(0,3); split.setStretchFactor(1,1)
        mid = QVBoxLayout(); mid.setSpacing(8); mid.addWidget(self.bar); mid.addWidget(split,1)
        body = QHBoxLayout(); body.setSpacing(12); body.addLayout(mid,1); body.addWidget(self.lineup)
        self.lineup.setFixedWidth(self.desk.theme.px(288))
        whole = QVBoxLayout(self); whole.setContentsMargins(16,12,16,12); whole.setSpacing(12)
        whole.addLayout(top); whole.addLayout(body,1); whole.addWidget(self.ledger)
