"""The form of one state: its words, its colours, its picture."""

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFileDialog, QFrame, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.workshop.form_fields import Fields
from idkey.app.workshop.forms_form import Form, with_value
from idkey.app.workshop.forms_values import COLOURS
from idkey.app.workshop.state_form_chooser import FigureChooser
from idkey.app.workshop.state_form_picture import CREDIT, LICENCE, picture_file, take_in
from idkey.errors import IdKeyError
from idkey.formats.pictures import KINDS
from idkey.model.character import Character, State
from idkey.model.key import Key
from idkey.places import images_folder


class StateForm(QFrame):
    """A state with its picture.

    Args:
        fields: Makes fields.
        desk: Look, drawings, language.

    Signals:
        edited(state: object): The state is to be another value.
        renamed(old: str, new: str): It is to have another id everywhere.
        failed(error: object): A picture was refused.
    """

    edited = Signal(object)
    renamed = Signal(str, str)
    failed = Signal(object)

    def __init__(self, fields: Fields, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "quiet")
        self._state: State | None = None
        self._character: Character | None = None
        self._key: Key | None = None
        self._folder = Path()
        self.form = Form(desk.theme)
        self.form.column.setContentsMargins(0, 0, 0, 0)
        self.chooser = FigureChooser(desk)
        self._fill(fields)
        column = QVBoxLayout(self)
        px = desk.theme.px
        column.setContentsMargins(px(12), px(8), px(12), px(12))
        column.addWidget(self.form)
        self.form.edited.connect(self._on_form_edited)
        self.pick_one.clicked.connect(self._on_pick)
        self.own_one.clicked.connect(self._on_own)
        self.usual_one.clicked.connect(self._on_usual)
        self.chooser.chosen.connect(self._on_chosen)

    def show_key(self, key: Key, folder: Path) -> None:
        """Take the key whose pictures can be chosen."""
        self._key, self._folder = key, folder

    def show_state(self, character: Character, state: State) -> None:
        """Show a state."""
        if self._state is None or state.id != self._state.id:
            self.chooser.hide()
        self._character, self._state = character, state
        self.form.show_entry(state, f"{self._folder}/states/{character.id}/{state.id}")
        if state.figure:
            text = self.tr("Picture: {file}").format(file=state.figure)
        elif self._usual():
            text = self.tr("Picture: the usual one")
        else:
            text = self.tr("No picture yet")
        self.figure.setText(text)
        self.usual_one.setVisible(bool(state.figure))
        for path in ("figure_credit", "figure_licence"):
            self.form.fields[path].setVisible(bool(state.figure))

    def take_in(self, file: Path) -> None:
        """Take a person's picture for the state shown; a bad one is refused."""
        state, character = self._state, self._character
        if state is None or character is None:
            return
        try:
            figure = take_in(file, self._folder, character=character.id, state=state.id)
        except IdKeyError as err:
            self.failed.emit(err)
            return
        self.edited.emit(replace(state, figure=figure, figure_credit="", figure_licence=""))
        self.form.reach("figure_credit")

    def _fill(self, fields: Fields) -> None:
        form = self.form
        colours = self.tr("Reference colours, the typical one first")
        form.add(
            {
                "label": fields.line(self.tr("Words on the tile")),
                "detail": fields.line(self.tr("Second line")),
            },
            abreast=True,
        )
        form.add(
            {
                "colours": fields.typed(colours, COLOURS, "#1e1a18 #5a3a22"),
                "id": fields.id(self.tr("Id"), self._own_id, self._ids),
            },
            abreast=True,
        )
        form.column.addWidget(self._figure_row())
        form.column.addWidget(self.chooser)
        licence = self.tr("such as CC-BY-4.0")
        form.add(
            {
                "figure_credit": fields.line(self.tr("Who made the picture")),
                "figure_licence": fields.line(self.tr("How it may be used"), licence),
            },
            abreast=True,
        )

    def _figure_row(self) -> QWidget:
        self.figure = caption(rank="small")
        self.pick_one = button(self.tr("Choose a drawing …"))
        self.own_one = button(self.tr("A picture of your own …"))
        self.usual_one = button(self.tr("The usual one"))
        buttons = FlowRow(gap=5)
        for one in (self.pick_one, self.own_one, self.usual_one):
            buttons.add(one)
        frame = QWidget()
        column = QVBoxLayout(frame)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.figure)
        column.addWidget(buttons)
        return frame

    def _usual(self) -> bool:
        if self._key is None or self._state is None or self._character is None:
            return False
        found = picture_file(self._folder, self._key, self._character.id, self._state.id)
        return found is not None

    def _own_id(self) -> str:
        return self._state.id if self._state else ""

    def _ids(self) -> tuple[str, ...]:
        return self._character.state_ids if self._character else ()

    @Slot(str, object)
    def _on_form_edited(self, path: str, value: object) -> None:
        state = self._state
        if state is None:
            return
        if path == "id":
            self.renamed.emit(state.id, str(value))
        else:
            self.edited.emit(with_value(state, path, value))

    @Slot()
    def _on_pick(self) -> None:
        if self._key is not None and self._character is not None and self.chooser.isHidden():
            self.chooser.open(self._folder, self._key, self._character.id)
        else:
            self.chooser.hide()

    @Slot(str)
    def _on_chosen(self, figure: str) -> None:
        self.chooser.hide()
        if self._state is not None:
            ours = (images_folder() / figure).is_file()
            credit, licence = (CREDIT, LICENCE) if ours else ("", "")
            self.edited.emit(
                replace(self._state, figure=figure, figure_credit=credit, figure_licence=licence)
            )

    @Slot()
    def _on_own(self) -> None:
        kinds = self.tr("Pictures ({kinds})").format(kinds=" ".join(f"*{k}" for k in KINDS))
        file, _ = QFileDialog.getOpenFileName(self, self.own_one.text(), "", kinds)
        if file:
            self.take_in(Path(file))

    @Slot()
    def _on_usual(self) -> None:
        if self._state is not None:
            self.edited.emit(replace(self._state, figure="", figure_credit="", figure_licence=""))
