"""The lot check: how many animals of a shipment to look at, and what a look has shown."""

from dataclasses import dataclass

from PySide6.QtCore import QObject, Slot
from PySide6.QtGui import QIntValidator
from PySide6.QtWidgets import QFrame, QGridLayout, QLineEdit, QVBoxLayout

from idkey.app.parts.captions import caption
from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.theme import Theme
from idkey.app.records.latest import Latest
from idkey.engine.intervals import animals_to_examine, most_wrong, unseen_chance
from idkey.report.language import Language

LARGEST = 1000
"""Animals in a lot; larger ones are counted in parts."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LotAnswer:
    """What the lot check says.

    Attributes:
        lot: Animals in the lot.
        allowed: Wrong animals one is ready to miss.
        examine: How many to look at.
        missed: Chance that so many show no wrong one although `allowed` + 1 are wrong.
        most: Most wrong animals the lot can hold after the look; None without a look.
    """

    lot: int
    allowed: int
    examine: int
    missed: float
    most: int | None = None


def lot_answer(
    lot: int, share: float, *, confidence: float, looked: int | None, found: int
) -> LotAnswer:
    """Work out the lot check; `looked` and `found` are what a look has shown so far.

    Raises:
        ValueError: The counts do not make sense.
    """
    examine = animals_to_examine(lot, share, confidence)
    allowed = min(lot, int(share * lot + 1e-9) + 1) - 1
    return LotAnswer(
        lot=lot,
        allowed=allowed,
        examine=examine,
        missed=unseen_chance(lot, allowed + 1, examine),
        most=None if looked is None else most_wrong(lot, looked, found, confidence),
    )


class LotPanel(QFrame):
    """A small calculator that explains its answer.

    Args:
        theme: The look.
        language: Language of the numbers.
        jobs: Where it is worked out.
    """

    def __init__(self, theme: Theme, language: Language, jobs: Jobs) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._language = language
        self._latest = Latest(jobs, self)
        self.lot = _number("40", LARGEST, self.tr("Animals in the lot"))
        self.share = _number("5", 99, self.tr("Wrong ones you are ready to miss, %"))
        self.sure = _number("95", 99, self.tr("How sure you want to be, %"))
        self.looked = _number("", LARGEST, self.tr("Looked at so far"))
        self.found = _number("", LARGEST, self.tr("Wrong among them"))
        self.answer = caption(rank="lead")
        self.why = caption()
        self.shown = caption()
        self._lay_out(theme)
        for field in self._fields:
            field.textChanged.connect(self._on_changed)
        self._latest.answered.connect(self._on_answered)
        self._latest.failed.connect(self._on_failed)
        self._on_changed()

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._latest.busy

    @property
    def _fields(self) -> tuple[QLineEdit, ...]:
        return (self.lot, self.share, self.sure, self.looked, self.found)

    def _lay_out(self, theme: Theme) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(10)
        grid.setVerticalSpacing(6)
        for row, field in enumerate(self._fields):
            field.setFixedWidth(theme.px(76))
            grid.addWidget(caption(field.accessibleName()), row, 0)
            grid.addWidget(field, row, 1)
        grid.setColumnStretch(0, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 14)
        column.setSpacing(8)
        column.addWidget(caption(self.tr("How many of a lot to look at"), "strong"))
        column.addLayout(grid)
        for part in (self.answer, self.why, self.shown):
            column.addWidget(part)
        column.addStretch(1)

    def _refuse(self, said: str) -> None:
        self._latest.drop()
        self.answer.setText("–")
        self.why.setText(said)
        self.shown.setText("")

    @Slot()
    def _on_changed(self) -> None:
        lot, share, sure = (_value(field) for field in (self.lot, self.share, self.sure))
        looked, found = _value(self.looked), _value(self.found) or 0
        if not lot or lot > LARGEST or share is None or not sure:
            said = self.tr("Write the size of the lot (1 to {most}) and both shares.")
            self._refuse(said.format(most=LARGEST))
        elif looked is not None and not found <= looked <= lot:
            self._refuse(
                self.tr("No more can be wrong than were looked at, nor looked at than there are.")
            )
        else:

            def work(_: Tick) -> LotAnswer:  # on a pool thread
                limits = {"confidence": sure / 100, "looked": looked, "found": found}
                return lot_answer(lot, share / 100, **limits)  # type: ignore[arg-type]

            self._latest.ask(work)

    @Slot(object)
    def _on_answered(self, told: LotAnswer) -> None:
        said = self.tr("Look at {n} of the {lot}.")
        self.answer.setText(said.format(n=told.examine, lot=told.lot))
        why = self.tr(
            "Pick them blindly, from the whole lot. If {wrong} or more of the {lot} were wrong, a "
            "look at {n} would miss them all in at most {chance} of such picks. So when all {n} "
            "are right, you may say with {sure} % confidence: no more than {allowed} are wrong."
        )
        chance = self._language.share(told.missed)
        self.why.setText(
            why.format(
                wrong=told.allowed + 1,
                lot=told.lot,
                n=told.examine,
                chance=chance,
                sure=self.sure.text(),
                allowed=told.allowed,
            )
        )
        self.shown.setText(self._shown(told))

    def _shown(self, told: LotAnswer) -> str:
        if told.most is None:
            return self.tr("After a look, write what it showed: it says what may be left.")
        said = self.tr(
            "{found} wrong among {looked}: with {sure} % confidence no more than {most} of the "
            "{lot} are wrong, those found included."
        )
        return said.format(
            found=_value(self.found) or 0,
            looked=_value(self.looked),
            sure=self.sure.text(),
            most=told.most,
            lot=told.lot,
        )

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self._refuse(message_for(error).problem)


def _number(text: str, most: int, name: str) -> QLineEdit:
    field = QLineEdit(text)
    field.setAccessibleName(name)
    owner: QObject = field
    field.setValidator(QIntValidator(0, most, owner))
    return field


def _value(field: QLineEdit) -> int | None:
    return int(field.text()) if field.text().isdecimal() else None
