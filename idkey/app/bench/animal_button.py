"""What is known of the animal, and how it is looked at: one button, one menu."""

from typing import Any

from PySide6.QtCore import QSize, Signal, Slot
from PySide6.QtGui import QAction, QActionGroup, QPaintEvent
from PySide6.QtWidgets import QMenu, QPushButton

from idkey.app.parts.choice import draw_chevron
from idkey.app.parts.desk import Desk
from idkey.app.parts.words import care_words, upper_first
from idkey.model.case import Care, Case, Specimen
from idkey.model.character import Sex, Stage
from idkey.report.words import sex_words, stage_words


class AnimalButton(QPushButton):
    """Shows sex and stage; its menu changes them, and the care of looking.

    Args:
        desk: Look, drawings, language.

    Signals:
        described(specimen: object): Sex and stage of the animal.
        cared(care: object): How the looking is done.
    """

    described = Signal(object)
    cared = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._values: dict[QAction, Any] = {}  # as data, Qt would make strings of the enums
        menu = QMenu(self)
        self._sexes = self._group(menu, [(self._sex(s), s) for s in (None, *Sex)])
        self._stages = self._group(menu, [(self._stage(s), s) for s in (None, *Stage)])
        self._cares = self._group(menu, [(care_words(c), c) for c in Care])
        self._sexes.triggered.connect(self._on_specimen_triggered)
        self._stages.triggered.connect(self._on_specimen_triggered)
        self._cares.triggered.connect(self._on_cares_triggered)
        self.setMenu(menu)
        self.setToolTip(self.tr("Sex and stage of the animal, and how it is looked at"))

    def show_case(self, case: Case) -> None:
        """Show what a case says."""
        sex, stage = case.specimen.sex, case.specimen.stage
        for group, value in ((self._sexes, sex), (self._stages, stage), (self._cares, case.care)):
            for action in group.actions():
                action.setChecked(self._values[action] == value)
        known = [self._sex(sex)] if sex else []
        known += [stage_words(stage, self._desk.language)] if stage else []
        text = ", ".join(known) if known else self.tr("Sex and stage open")
        if text != self.text():
            self.setText(text)
            self.setAccessibleName(self.tr("Animal: {known}").format(known=text))

    def sizeHint(self) -> QSize:
        """The text, and room for the chevron."""
        hint = super().sizeHint()
        return QSize(hint.width() + self._desk.theme.px(14), hint.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the button, and a chevron."""
        super().paintEvent(event)
        draw_chevron(self, self._desk.theme)

    def _sex(self, sex: Sex | None) -> str:
        if sex is None:
            return self.tr("Any sex")
        return upper_first(sex_words(sex, self._desk.language))

    def _stage(self, stage: Stage | None) -> str:
        if stage is None:
            return self.tr("Any stage")
        return upper_first(stage_words(stage, self._desk.language))

    def _group(self, menu: QMenu, items: list[tuple[str, object]]) -> QActionGroup:
        if menu.actions():
            menu.addSeparator()
        group = QActionGroup(self)
        for text, value in items:
            action = QAction(text, self)
            action.setCheckable(True)
            self._values[action] = value
            group.addAction(action)
            menu.addAction(action)
        return group

    @Slot(QAction)
    def _on_specimen_triggered(self, _: QAction) -> None:
        sex = self._values[self._sexes.checkedAction()]
        stage = self._values[self._stages.checkedAction()]
        self.described.emit(Specimen(sex=sex, stage=stage))

    @Slot(QAction)
    def _on_cares_triggered(self, action: QAction) -> None:
        self.cared.emit(self._values[action])
