"""Above the question: what the person needs to know, and how to go through the key."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QWidget

from idkey.app.captions import caption
from idkey.app.choice import Choice
from idkey.app.desk import Desk
from idkey.app.segments import Segments
from idkey.app.session import Mode, Session
from idkey.app.words import aim_words, care_words, upper_first
from idkey.model.case import Aim, Care, Specimen
from idkey.model.character import Sex, Stage
from idkey.report.words import sex_words, stage_words


class BenchBar(QWidget):
    """Aim, animal and mode.

    Args:
        desk: Look, drawings, language.

    Signals:
        aim_chosen(aim: object): The person needs to know something else.
        mode_chosen(mode: object): Free choice or couplets.
        specimen_chosen(specimen: object): Sex and stage of the animal.
        care_chosen(care: object): How the looking is done.
    """

    aim_chosen = Signal(object)
    mode_chosen = Signal(object)
    specimen_chosen = Signal(object)
    care_chosen = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._aim = self._box(self.tr("What you need to know"), [(aim_words(a), a) for a in Aim])
        sexes = [(self._sex(sex), sex) for sex in (None, *Sex)]
        stages = [(self._stage(stage), stage) for stage in (None, *Stage)]
        self._sex_box = self._box(self.tr("Sex of the animal"), sexes)
        self._stage_box = self._box(self.tr("Stage of the animal"), stages)
        self._care = self._box(
            self.tr("How the looking is done"), [(care_words(c), c) for c in Care]
        )
        self._mode = Segments(self.tr("How to go through the key"), Mode, self._mode_words)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        self._lead = caption(self.tr("To find out"), "soft", wraps=False)
        row.addWidget(self._lead)
        row.addWidget(self._aim)
        row.addWidget(self._sex_box)
        row.addWidget(self._stage_box)
        row.addWidget(self._care)
        row.addStretch(1)
        row.addWidget(self._mode)
        self._aim.activated.connect(self._on_aim_activated)
        self._sex_box.activated.connect(self._on_specimen_activated)
        self._stage_box.activated.connect(self._on_specimen_activated)
        self._care.activated.connect(self._on_care_activated)
        self._mode.chosen.connect(self._on_mode_chosen)

    def show_session(self, session: Session) -> None:
        """Show what a session says."""
        case = session.case
        self._aim.choose(case.aim)
        self._sex_box.choose(case.specimen.sex)
        self._stage_box.choose(case.specimen.stage)
        self._care.choose(case.care)
        self._mode.set_value(session.mode)
        self._mode.setVisible(bool(session.key.couplets))

    def make_narrow(self, narrow: bool) -> None:
        """Leave out what is least needed where there is little room."""
        self._care.setVisible(not narrow)
        self._lead.setVisible(not narrow)

    def _box(self, name: str, items: list[tuple[str, object]]) -> Choice:
        box = Choice(name, self._desk.theme)
        for text, value in items:
            box.addItem(text, value)
        return box

    def _sex(self, sex: Sex | None) -> str:
        if sex is None:
            return self.tr("Any sex")
        return upper_first(sex_words(sex, self._desk.language))

    def _stage(self, stage: Stage | None) -> str:
        if stage is None:
            return self.tr("Any stage")
        return upper_first(stage_words(stage, self._desk.language))

    def _mode_words(self, mode: Mode) -> str:
        return self.tr("Free choice") if mode is Mode.FREE else self.tr("Couplets")

    @Slot(int)
    def _on_aim_activated(self, row: int) -> None:
        self.aim_chosen.emit(self._aim.itemData(row))

    @Slot(int)
    def _on_specimen_activated(self, row: int) -> None:
        sex, stage = self._sex_box.currentData(), self._stage_box.currentData()
        self.specimen_chosen.emit(Specimen(sex=sex, stage=stage))

    @Slot(int)
    def _on_care_activated(self, row: int) -> None:
        self.care_chosen.emit(self._care.itemData(row))

    @Slot(object)
    def _on_mode_chosen(self, mode: Mode) -> None:
        self.mode_chosen.emit(mode)
