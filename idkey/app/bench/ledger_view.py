"""The ledger: every finding, what it changed, to correct or to withdraw."""

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QModelIndex, QPoint, Qt, Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFrame, QHBoxLayout, QMenu, QPushButton, QVBoxLayout

from idkey.app.bench.ledger_delegate import LedgerRow
from idkey.app.bench.ledger_list import LedgerList
from idkey.app.bench.session import Session
from idkey.app.parts.arrivals import Arrivals
from idkey.app.parts.captions import button, caption, key_text
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import HUGE
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


class LedgerView(QFrame):
    """Findings side by side, in the order made or by what they changed.

    Args:
        desk: Look, drawings, language.

    Signals:
        asked(character: str): The person wants to correct a finding.
        withdrawn(character: str): The person takes a finding back.
        undo_asked(): Take back the last step.
        redo_asked(): Do it again.
        pictures_asked(character: str): The person wants to see its pictures, or to add one.
        adding_asked(character: str): The person wants to add a picture from a file.
        pasted(character: str): The person pastes a picture onto the finding.
        arrived(character: str, what: object): Pictures, as `Arrivals`, were dropped on it.
    """

    asked = Signal(str)
    withdrawn = Signal(str)
    undo_asked = Signal()
    redo_asked = Signal()
    pictures_asked = Signal(str)
    adding_asked = Signal(str)
    pasted = Signal(str)
    arrived = Signal(str, object)

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
                int(role.ToolTipRole): lambda row: row.spoken,
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
        self.list.scheduleDelayedItemsLayout()  # a card with a picture is wider
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
        self.list = LedgerList(self._desk)
        self.list.setModel(self.rows)
        self.list.setAccessibleName(self.tr("Ledger of findings"))
        self.thumbs = self.list.thumbs
        self.thumbs.arrived.connect(self.list.viewport().update)
        said = self.tr("Nothing looked at yet. What you note appears here, with what it changed.")
        keys = self.tr("Enter corrects it, Delete takes it back, P adds a picture of it.")
        words = (said, keys) if self._desk.theme.scale < HUGE else (said,)
        self._empty = caption(" ".join(words), "soft")
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
        self.list.pictures_asked.connect(self._on_list_pictures_asked)
        self.list.pasted.connect(self._on_list_pasted)
        self.list.arrived.connect(self._on_list_arrived)
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
        shown = self.tr("%n picture(s)", "", len(finding.pictures)) if finding.pictures else ""
        said = (f"{finding_words(key, finding, language)}.", effect, finding.note, shown)
        spoken = " ".join(part for part in said if part)
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
            note=finding.note,
            against=against,
            spoken=spoken,
            pictures=finding.pictures,
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
            self.menu(index).popup(self.list.viewport().mapToGlobal(place))

    def menu(self, index: QModelIndex) -> QMenu:
        """What can be done with a finding; it deletes itself once it was closed."""
        row: LedgerRow = index.data(ROW_ROLE)
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        offers = [
            (self.tr("Correct"), "Return", self.asked),
            (self.tr("Withdraw"), "Del", self.withdrawn),
            (self.tr("Add a picture …"), "" if row.pictures else "P", self.adding_asked),
            (self.tr("Paste a picture"), "Ctrl+V", self.pasted),
        ]
        if row.pictures:
            offers.append((self.tr("Show the pictures"), "P", self.pictures_asked))
        for text, key, signal in offers:
            action = menu.addAction(f"{text}\t{key_text(key)}" if key else text)
            action.setData((signal, row.character))
        menu.triggered.connect(self._on_menu_triggered)
        return menu

    @Slot(object)
    def _on_menu_triggered(self, action: QAction) -> None:
        signal, character = action.data()
        signal.emit(character)

    @Slot(QModelIndex)
    def _on_list_pictures_asked(self, index: QModelIndex) -> None:
        self.pictures_asked.emit(index.data(ROW_ROLE).character)

    @Slot(QModelIndex)
    def _on_list_pasted(self, index: QModelIndex) -> None:
        self.pasted.emit(index.data(ROW_ROLE).character)

    @Slot(QModelIndex, object)
    def _on_list_arrived(self, index: QModelIndex, what: Arrivals) -> None:
        self.arrived.emit(index.data(ROW_ROLE).character, what)

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
