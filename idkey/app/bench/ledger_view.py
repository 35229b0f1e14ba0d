"""The ledger: every finding, what it changed, to correct or to withdraw."""

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QModelIndex, QPoint, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QListView, QMenu, QPushButton, QVBoxLayout

from idkey.app.bench.ledger_delegate import LedgerDelegate, LedgerRow
from idkey.app.bench.session import Session
from idkey.app.parts.captions import button, caption, key_text
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.segments import Segments
from idkey.engine.result import Effect
from idkey.model.case import Finding
from idkey.report.words import effect_words, finding_words, seen_words


class Order(StrEnum):
    """How the ledger is ordered."""

    TIME = "time"
    EFFECT = "effect"


@dataclass(frozen=True, slots=True)
class _Entry:
    finding: Finding
    effect: Effect | None


class LedgerList(QListView):
    """The strip itself; Enter corrects, Delete withdraws.

    Signals:
        withdrawn(index: QModelIndex): The person wants that finding gone.
    """

    withdrawn = Signal(QModelIndex)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter and Delete act on the current finding."""
        here, key = self.currentIndex(), event.key()
        if here.isValid() and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.activated.emit(here)
        elif here.isValid() and key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.withdrawn.emit(here)
        else:
            super().keyPressEvent(event)


class LedgerView(QFrame):
    """Findings side by side, in the order made or by what they changed.

    Args:
        desk: Look, drawings, language.

    Signals:
        asked(character: str): The person wants to correct a finding.
        withdrawn(character: str): The person takes a finding back.
        undo_asked(): Take back the last step.
        redo_asked(): Do it again.
    """

    asked = Signal(str)
    withdrawn = Signal(str)
    undo_asked = Signal()
    redo_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._desk = desk
        self._session: Session | None = None
        role = Qt.ItemDataRole
        self.rows: RowsModel[LedgerRow] = RowsModel(
            {
                int(role.DisplayRole): lambda row: row.name,
                int(role.AccessibleTextRole): lambda row: row.spoken,
                int(role.ToolTipRole): lambda row: f"<p>{row.spoken}</p>",
            },
            parent=self,
        )
        self._build()

    def show_session(self, session: Session) -> None:
        """Show the findings of a session."""
        self._session = session
        entries = [_Entry(f, session.effect(f.character)) for f in session.case.findings]
        if self._order.value is Order.EFFECT:
            entries.sort(key=_weight, reverse=True)
        grown = len(entries) > len(self.rows.rows)
        self.rows.replace(tuple(self._row(session, entry) for entry in entries))
        self._empty.setVisible(not entries)
        self.list.setVisible(bool(entries))
        self._undo.setEnabled(session.undoable)
        self._redo.setEnabled(session.redoable)
        self._count.setText(self.tr("%n finding(s)", "", len(entries)) if entries else "")
        if grown and self._order.value is Order.TIME:
            self.list.scrollToBottom()

    def order_by_effect(self) -> None:
        """Show first what changed most."""
        self._order.set_value(Order.EFFECT)
        self._on_order_chosen(Order.EFFECT)

    def _build(self) -> None:
        self.list = LedgerList()
        self.list.setModel(self.rows)
        self.list.setItemDelegate(LedgerDelegate(self._desk))
        self.list.setAccessibleName(self.tr("Ledger of findings"))
        self.list.setFlow(QListView.Flow.LeftToRight)
        self.list.setHorizontalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.list.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setMouseTracking(True)
        self.list.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self._empty = caption(
            self.tr(
                "Nothing looked at yet. What you note appears here, with what it changed; "
                "Enter corrects it, Delete takes it back."
            ),
            "soft",
        )
        self._order = Segments(self.tr("Order of the ledger"), Order, self._order_words)
        self._undo = self._step_button("↶", self.tr("Undo"), "Ctrl+Z")
        self._redo = self._step_button("↷", self.tr("Redo"), "Ctrl+Shift+Z")
        self._count = caption(rank="small", wraps=False)
        row = QHBoxLayout(self)
        row.setContentsMargins(14, 8, 10, 4)
        row.setSpacing(12)
        row.addLayout(self._side())
        row.addWidget(self.list, 1)
        row.addWidget(self._empty, 1)
        self.setFixedHeight(self._desk.theme.px(66) + 34)
        self.list.activated.connect(self._on_list_activated)
        self.list.withdrawn.connect(self._on_list_withdrawn)
        self.list.customContextMenuRequested.connect(self._on_list_menu_requested)
        self._order.chosen.connect(self._on_order_chosen)
        self._undo.clicked.connect(self._on_undo_clicked)
        self._redo.clicked.connect(self._on_redo_clicked)

    def _side(self) -> QVBoxLayout:
        heading = QHBoxLayout()
        heading.setSpacing(8)
        heading.addWidget(caption(self.tr("Ledger"), "strong", wraps=False))
        heading.addWidget(self._count)
        heading.addStretch(1)
        heading.addWidget(self._undo)
        heading.addWidget(self._redo)
        side = QVBoxLayout()
        side.setSpacing(4)
        side.addLayout(heading)
        side.addWidget(self._order)
        return side

    def _step_button(self, sign: str, name: str, key: str) -> QPushButton:
        made = button(sign, "quiet")
        made.setAccessibleName(name)
        made.setToolTip(f"{name} ({key_text(key)})")
        return made

    def _order_words(self, order: Order) -> str:
        return self.tr("By time") if order is Order.TIME else self.tr("By effect")

    def _row(self, session: Session, entry: _Entry) -> LedgerRow:
        key, finding, language = session.key, entry.finding, self._desk.language
        known = key.character.get(finding.character)
        effect = "" if entry.effect is None else effect_words(key, entry.effect, language)
        spoken = f"{finding_words(key, finding, language)}. {effect} {finding.note}".strip()
        against = any(
            conflict.finding.character == finding.character
            for candidate in session.reasoned.assessment.standing[:1]
            for conflict in candidate.conflicts
        )
        return LedgerRow(
            character=finding.character,
            name=known.name if known else finding.character,
            seen=seen_words(key, finding, language),
            effect=self._effect(finding, entry.effect),
            certainty=finding.certainty,
            unseen=finding.unseen,
            noted=bool(finding.note),
            against=against,
            spoken=spoken,
        )

    def _effect(self, finding: Finding, effect: Effect | None) -> str:
        if finding.unseen:
            return self.tr("rules nothing out")
        if effect is None:
            return ""
        if effect.ruled_out:
            return self.tr("ruled out %n", "", len(effect.ruled_out))
        if effect.gain_bits <= -0.05:
            return self.tr("raised the doubt")
        if effect.gain_bits >= 0.4:
            return self.tr("helped a lot")
        return self.tr("helped") if effect.gain_bits >= 0.05 else self.tr("changed little")

    @Slot(QModelIndex)
    def _on_list_activated(self, index: QModelIndex) -> None:
        self.asked.emit(index.data(ROW_ROLE).character)

    @Slot(QModelIndex)
    def _on_list_withdrawn(self, index: QModelIndex) -> None:
        self.withdrawn.emit(index.data(ROW_ROLE).character)

    @Slot(QPoint)
    def _on_list_menu_requested(self, place: QPoint) -> None:
        index = self.list.indexAt(place)
        if index.isValid():
            character = index.data(ROW_ROLE).character
            menu = QMenu(self)
            menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
            correct = menu.addAction(self.tr("Correct"))
            withdraw = menu.addAction(self.tr("Withdraw"))
            correct.setData((self.asked, character))
            withdraw.setData((self.withdrawn, character))
            menu.triggered.connect(self._on_menu_triggered)
            menu.popup(self.list.viewport().mapToGlobal(place))

    @Slot(object)
    def _on_menu_triggered(self, action: object) -> None:
        signal, character = action.data()  # type: ignore[attr-defined]
        signal.emit(character)

    @Slot(object)
    def _on_order_chosen(self, order: Order) -> None:
        if self._session is not None:
            self.show_session(self._session)

    @Slot()
    def _on_undo_clicked(self) -> None:
        self.undo_asked.emit()

    @Slot()
    def _on_redo_clicked(self) -> None:
        self.redo_asked.emit()


def _weight(entry: _Entry) -> tuple[int, float]:
    effect = entry.effect
    return (0, 0.0) if effect is None else (len(effect.ruled_out), effect.gain_bits)
