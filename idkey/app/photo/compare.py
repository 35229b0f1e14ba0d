"""A second picture, or a drawing, beside the first; zoom and place go together."""

from PySide6.QtCore import QSize, Signal, Slot
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.photo.canvas import PhotoCanvas
from idkey.app.photo.levels import Levels, levels_of, levels_of_pixmap
from idkey.app.photo.session import PhotoSession
from idkey.app.photo.sight import Sight
from idkey.errors import IdKeyError
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.photo.shelf import PictureShelf

DRAWN = 1400
"""Longest side at which drawings are rendered, in pixels."""


class CompareSide(QWidget):
    """The other side of a comparison.

    Args:
        key: The key.
        character: What is looked at; its drawings are on offer.
        desk: Look, drawings, language.
        shelf: Where pictures are kept.

    Signals:
        looked(sight: object): The person zoomed or panned here.
    """

    looked = Signal(object)

    def __init__(self, key: Key, character: Character, desk: Desk, *, shelf: PictureShelf) -> None:
        super().__init__()
        self._key = key
        self._character = character
        self._desk = desk
        self._shelf = shelf
        self._jobs = Jobs(threads=1, parent=self)
        self._wanted: object = None
        self.choice = Choice(self.tr("Compare with"), desk.theme)
        self.linked = QCheckBox(self.tr("Zoom together"))
        self.linked.setChecked(True)
        self.canvas = PhotoCanvas(desk.theme, draws=False)
        self.canvas.setAccessibleName(self.tr("Picture to compare with"))
        self.canvas.empty_words = self.tr("Choose a picture or a drawing above.")
        row = QHBoxLayout()
        row.addWidget(self.choice, 1)
        row.addWidget(self.linked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(row)
        column.addWidget(self.canvas, 1)
        self.choice.activated.connect(self._on_choice_activated)
        self.canvas.looked.connect(self._on_canvas_looked)

    @property
    def busy(self) -> bool:
        """Whether a picture is being read."""
        return self._jobs.busy

    def close_work(self) -> None:
        """Let go of work under way."""
        self._jobs.close()

    def offer(self, session: PhotoSession) -> None:
        """Offer the other pictures of the case, and the drawings of the character."""
        offers: list[tuple[str, object]] = [
            (self.tr("Picture {n}").format(n=number), picture_id)
            for number, picture_id in enumerate(session.ids, start=1)
            if picture_id != session.shown
        ]
        for state in self._character.states:
            if self._desk.pictures.has_tile(self._key, self._character, state):
                offers.append((self.tr("Drawing: {state}").format(state=state.label), state))
        if self._measure() is not None:
            offers.append((self.tr("Drawing: how to measure"), None))
        known = [self.choice.itemText(row) for row in range(self.choice.count())]
        if known == [name for name, _ in offers]:
            return
        self.choice.offer(offers)
        self._on_choice_activated(0)

    def follow(self, sight: Sight) -> None:
        """See what the other side sees, if both go together."""
        if self.linked.isChecked() and self.canvas.hand is not None:
            self.canvas.look(self.canvas.hand.sight.like(sight))

    def _measure(self) -> Levels | None:
        size = QSize(DRAWN, DRAWN)
        drawn = self._desk.pictures.measure(self._key, self._character, size=size, ratio=1.0)
        return None if drawn is None else levels_of_pixmap(drawn, self._desk.theme.colours.plate)

    def _drawing(self, row: int) -> Levels | None:
        state = self.choice.value(row)
        if state is None:
            return self._measure()
        drawn = self._desk.pictures.tile(
            self._key, self._character, state, size=QSize(DRAWN, DRAWN), ratio=1.0
        )
        return None if drawn is None else levels_of_pixmap(drawn, self._desk.theme.colours.plate)

    @Slot(int)
    def _on_choice_activated(self, row: int) -> None:
        if self.choice.count() == 0:
            self.canvas.show_picture(None)
            return
        what = self._wanted = self.choice.value(row)
        if isinstance(what, str):
            self._read(what)
        else:
            self.canvas.show_picture(self._drawing(row))

    def _read(self, picture_id: str) -> None:
        def work(tick: Tick) -> tuple[str, Levels]:  # on a pool thread
            tick(0, 1)
            return picture_id, levels_of(self._shelf.image(picture_id))

        job = Job(work)
        job.succeeded.connect(self._on_read)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    @Slot(object)
    def _on_read(self, read: tuple[str, Levels]) -> None:
        if read[0] == self._wanted:
            self.canvas.show_picture(read[1])

    @Slot(object)
    def _on_failed(self, error: object) -> None:
        if isinstance(error, IdKeyError):
            self.canvas.empty_words = message_for(error).text
        self.canvas.show_picture(None)

    @Slot(object)
    def _on_canvas_looked(self, sight: Sight) -> None:
        if self.linked.isChecked():
            self.looked.emit(sight)
