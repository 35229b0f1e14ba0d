"""The parts of the animal: drawn plates, and the characters seen on each part."""

from PySide6.QtCore import Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from idkey.app.bench.plate_buttons import EntryList
from idkey.app.bench.plate_canvas import PlateCanvas
from idkey.app.bench.plate_groups import (
    found_groups,
    named_part,
    part_groups,
    part_title,
    shown_name,
)
from idkey.app.bench.session import Session
from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import fit
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.segments import Segments
from idkey.app.parts.words import upper_first
from idkey.figures.plates import Plate

SIZE = (1040, 680)
"""Largest size at 100 % text, in pixels."""

LARGE = 125
"""From this text size on the name of the marked part is repeated below the plate, in per cent."""


class PlateView(QDialog):
    """Shows where the characters of a key are, and puts one of them on the card.

    Args:
        session: The session; its key says what can be looked at.
        desk: Look, drawings, language.
        parent: The window.

    Raises:
        IdKeyError: The list of plates is damaged.

    Signals:
        asked(character: str): The person wants this question on the card.
    """

    asked = Signal(str)

    def __init__(self, session: Session, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self._desk = desk
        self._plates = desk.pictures.plates(session.key)
        self._groups = part_groups(session, self._plates, desk.language)
        self.part = ""
        self.setWindowTitle(self.tr("Parts of the animal"))
        px = desk.theme.px
        fit(self, (px(SIZE[0]), px(SIZE[1])), parent)
        self.views = Segments(self.tr("View"), self._plates, self._plate_name)
        self.canvas = PlateCanvas(desk)
        self.name = caption(rank="strong")
        self.name.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.search = QLineEdit()
        self.search.setPlaceholderText(self.tr("Part or character"))
        self.search.setAccessibleName(self.tr("Find a part or a character"))
        self.search.setClearButtonEnabled(True)
        self.all = button(self.tr("Show all parts"), "link")
        self.all.setAutoDefault(False)
        self.list = EntryList(desk)
        self.empty = caption(rank="soft")
        self._close = button(self.tr("Back"))
        self._close.setAutoDefault(False)
        self._lay_out()
        self._connect()
        if self._plates:
            self.canvas.show_plate(self._plates[0])
        self.choose("")
        self.search.setFocus()

    @Slot(str)
    def choose(self, part: str) -> None:
        """List the characters of a part; empty lists all."""
        self.part = part
        self.search.clear()
        self._show_part(part)
        self._list()

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(8)
        left.addWidget(self.views, 0, Qt.AlignmentFlag.AlignLeft)
        left.addWidget(self.canvas, 1)
        left.addWidget(self.name)
        right = QVBoxLayout()
        right.setSpacing(6)
        right.addWidget(self.search)
        right.addWidget(self.all, 0, Qt.AlignmentFlag.AlignLeft)
        right.addWidget(self.empty)
        self._scroll = scrolled(self.list)
        right.addWidget(self._scroll, 1)
        foot = QHBoxLayout()
        hint = self.tr("Click a part, or reach it with the arrows and Enter.")
        foot.addWidget(caption(hint, "small"), 1)
        foot.addWidget(self._close)
        right.addLayout(foot)
        side = QWidget()
        side.setLayout(right)
        right.setContentsMargins(0, 0, 0, 0)
        side.setFixedWidth(min(self._desk.theme.px(330), self.width() // 2))
        row = QHBoxLayout(self)
        row.setContentsMargins(16, 12, 16, 12)
        row.setSpacing(16)
        row.addLayout(left, 1)
        row.addWidget(side)
        for part in (self.views, self.canvas):
            part.setVisible(bool(self._plates))
        # The names on the plate grow with the plate, not with the text.
        self.name.setVisible(bool(self._plates) and self._desk.theme.scale >= LARGE)

    def _connect(self) -> None:
        self.views.chosen.connect(self.canvas.show_plate)
        self.canvas.pointed.connect(self._on_canvas_pointed)
        self.canvas.chosen.connect(self.choose)
        self.canvas.entered.connect(self._enter_list)
        self.search.textEdited.connect(self._on_search_edited)
        self.search.returnPressed.connect(self._enter_list)
        self.all.clicked.connect(self._on_all_clicked)
        self.list.looked_at.connect(self._show_part)
        self.list.picked.connect(self._on_list_picked)
        self._close.clicked.connect(self.reject)

    def _plate_name(self, plate: Plate) -> str:
        return shown_name(plate, self._desk.language)

    @Slot(str)
    def _show_part(self, part: str) -> None:
        """Mark a part, on the plate that shows it."""
        here = self.canvas.plate
        if part and here is not None and here.part(part) is None:
            other = next((plate for plate in self._plates if plate.part(part)), None)
            if other is not None:
                self.views.set_value(other)
                self.canvas.show_plate(other)
        self._mark(part)
        focus = self.focusWidget()
        if focus in self.list.buttons:
            self._scroll.ensureWidgetVisible(focus)

    def _mark(self, part: str) -> None:
        self.canvas.mark(part)
        self.name.setText(upper_first(part_title(self._plates, part, self._desk.language)))

    def _list(self) -> None:
        search = self.search.text()
        groups = found_groups(self._groups, part=self.part, search=search)
        self.list.show_groups(groups)
        self.all.setVisible(bool(self.part))
        self.empty.setVisible(not groups)
        if search:
            named = groups[0].part if groups else named_part(self._plates, search)
            self._show_part(named)
            bare = bool(named)
        else:
            bare = bool(self.part)
        bare_text = self.tr("This key looks at nothing on this part.")
        self.empty.setText(bare_text if bare else self.tr("Nothing in this key is called that."))

    @Slot(str)
    def _on_canvas_pointed(self, part: str) -> None:
        self._mark(part or self.part)

    @Slot()
    def _on_search_edited(self) -> None:
        self.part = ""
        self._list()

    @Slot()
    def _on_all_clicked(self) -> None:
        self.choose("")
        self.search.setFocus()

    @Slot()
    def _enter_list(self) -> None:
        QTimer.singleShot(0, self, self._focus_first)  # new buttons are shown by then

    @Slot()
    def _focus_first(self) -> None:
        if self.list.buttons:
            self.list.buttons[0].setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(str)
    def _on_list_picked(self, character: str) -> None:
        self.accept()
        self.asked.emit(character)
