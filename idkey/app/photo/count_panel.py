"""Beside the picture: how many things are marked."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.photo.session import PhotoSession
from idkey.app.photo.sketch import Sketch
from idkey.model.character import Character


class CountPanel(QWidget):
    """For counts.

    Args:
        character: What is counted.
        desk: Look, drawings, language.

    Signals:
        sketched(sketch: object): The person changed something.
    """

    sketched = Signal(object)

    def __init__(self, character: Character, desk: Desk) -> None:
        super().__init__()
        self._sketch: Sketch | None = None
        self._said = caption(rank="strong")
        self._doubt = KeyButton(self.tr("Doubtful"), "D", desk.theme, "quiet")
        self._doubt.setToolTip(self.tr("The chosen mark, or the last one, may be none."))
        self._back = KeyButton(self.tr("Take one back"), "Backspace", desk.theme, "quiet")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(caption(self.tr("Click each one once; the marks are numbered.")))
        column.addWidget(self._said)
        keys = FlowRow(gap=4)
        keys.add(self._doubt)
        keys.add(self._back)
        column.addWidget(keys)
        column.addWidget(
            caption(self.tr("A doubtful mark counts half, and widens the uncertainty."), "small")
        )
        self._doubt.clicked.connect(self._on_doubt_clicked)
        self._back.clicked.connect(self._on_back_clicked)

    def show_session(self, session: PhotoSession) -> None:
        """Show what is marked."""
        self._sketch = session.sketch
        spots = session.sketch.marks.spots
        doubtful = sum(spot.doubtful for spot in spots)
        self.setEnabled(session.loaded is not None)
        self._doubt.setEnabled(bool(spots))
        self._back.setEnabled(bool(spots))
        sure = len(spots) - doubtful
        text = self.tr("{sure} sure").format(sure=sure)
        if doubtful:
            text += self.tr(", {doubtful} doubtful").format(doubtful=doubtful)
        self._said.setText(text)

    @Slot()
    def _on_doubt_clicked(self) -> None:
        if self._sketch is not None:
            self.sketched.emit(self._sketch.doubted())

    @Slot()
    def _on_back_clicked(self) -> None:
        if self._sketch is not None:
            self.sketched.emit(self._sketch.taken_back())
