"""What an empty bench offers: what to do, a sample, the last cases."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
)

from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.model.key import Key
from idkey.store.record import CaseRow


class StartView(QFrame):
    """Says what to do with a new case.

    Args:
        desk: Look, drawings, language.

    Signals:
        unlabelled(): There is no label; the person wants to look at the animal.
        sample_asked(): The person wants to see a sample case.
        case_asked(case_id: str): The person goes on with an earlier case.
        key_chosen(key: str): The case is to use another key.
        drill_asked(): The person wants to practise what is due.
    """

    unlabelled = Signal()
    sample_asked = Signal()
    case_asked = Signal(str)
    key_chosen = Signal(str)
    drill_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.setProperty("pane", "card")
        self._keys = Choice(self.tr("Key in use"), desk.theme)
        self._scope = caption(rank="small")
        self._unlabelled = KeyButton(self.tr("There is no label"), "F3", desk.theme)
        self._sample = KeyButton(self.tr("Show me a sample case"), "F2", desk.theme)
        self._due = button("", "link")
        self._due.setObjectName("due")
        self._due.hide()
        self._recent_heading = caption(self.tr("Go on with"), "strong")
        self._recent = QVBoxLayout()
        self._recent.setSpacing(2)
        self._shown: list[QPushButton] = []
        self._lay_out()
        self._keys.activated.connect(self._on_keys_activated)
        self._unlabelled.clicked.connect(self._on_unlabelled_clicked)
        self._sample.clicked.connect(self._on_sample_clicked)
        self._due.clicked.connect(self._on_due_clicked)

    def show_keys(self, keys: tuple[tuple[str, str], ...], current: Key) -> None:
        """Show the keys that can be used, as (id, title)."""
        if self._keys.count() != len(keys):
            self._keys.offer((title, key_id) for key_id, title in keys)
        self._keys.choose(current.id)
        self._scope.setText(current.scope)

    def show_recent(self, rows: tuple[CaseRow, ...]) -> None:
        """Show the cases worked on last."""
        for old in self._shown:
            self._recent.removeWidget(old)
            old.deleteLater()
        self._shown = []
        self._recent_heading.setVisible(bool(rows))
        for row in rows:
            name = row.name or self.tr("no verdict yet")
            text = " · ".join(part for part in (row.label or "–", name, row.day) if part)
            one = button(text, "quiet")
            one.setObjectName(row.case_id)
            one.setStyleSheet("text-align: left;")
            one.setAccessibleName(self.tr("Go on with {case}").format(case=text))
            one.clicked.connect(self._on_recent_clicked)
            self._recent.addWidget(one)
            self._shown.append(one)

    def show_due(self, person: str, count: int) -> None:
        """Say how many drills are due for a person; nothing when none are."""
        words = self.tr("%n drill picture(s) due for {person}", "", count)
        self._due.setText(words.format(person=person))
        self._due.setVisible(bool(person and count))

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 20, 24, 20)
        column.setSpacing(10)
        column.addWidget(caption(self.tr("A new animal"), "title"))
        column.addWidget(
            caption(
                self.tr(
                    "Write what its label says on the tag above, word for word, and press "
                    "Enter. Leave the animal in its tub."
                )
            )
        )
        ways = FlowRow(gap=8)
        ways.add(self._unlabelled)
        ways.add(self._sample)
        column.addWidget(ways)
        column.addSpacing(8)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(caption(self.tr("Key"), "strong", wraps=False))
        self._keys.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self._keys.setMinimumContentsLength(14)  # a long title does not widen the window
        self._keys.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._keys.setMaximumWidth(self._desk.theme.px(420))
        row.addWidget(self._keys, 1)
        row.addStretch(0)
        column.addLayout(row)
        column.addWidget(self._scope)
        column.addSpacing(8)
        column.addWidget(self._recent_heading)
        column.addLayout(self._recent)
        column.addSpacing(8)
        column.addWidget(self._due, 0, Qt.AlignmentFlag.AlignLeading)
        column.addStretch(1)

    @Slot(int)
    def _on_keys_activated(self, row: int) -> None:
        self.key_chosen.emit(self._keys.value(row))

    @Slot()
    def _on_unlabelled_clicked(self) -> None:
        self.unlabelled.emit()

    @Slot()
    def _on_sample_clicked(self) -> None:
        self.sample_asked.emit()

    @Slot()
    def _on_due_clicked(self) -> None:
        self.drill_asked.emit()

    @Slot()
    def _on_recent_clicked(self) -> None:
        self.case_asked.emit(self.sender().objectName())
