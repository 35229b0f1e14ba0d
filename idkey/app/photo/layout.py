"""The parts of the photo tool in their places."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.notice import Notice
from idkey.app.parts.words import upper_first
from idkey.app.photo.bar import PhotoBar
from idkey.app.photo.canvas import PhotoCanvas
from idkey.app.photo.compare import CompareSide
from idkey.app.photo.count_panel import CountPanel
from idkey.app.photo.look_panel import LookPanel
from idkey.app.photo.number_panel import LinesPanel
from idkey.app.photo.result import ResultCard
from idkey.app.photo.states import StateStrip
from idkey.app.photo.thumbs import Thumbs
from idkey.model.character import Character, Kind
from idkey.model.key import Key
from idkey.photo.reading import photo_look
from idkey.photo.shelf import Condition, PictureShelf
from idkey.report.words import look_words

SIDE = 316
"""Width of what stands beside the picture at 100 %, in pixels."""


class PhotoLayout(QWidget):
    """What there is to see, before anything happens.

    Args:
        key: The key.
        character: What is measured, counted or looked at.
        desk: Look, drawings, language.
        shelf: Where pictures are kept.
    """

    def __init__(self, key: Key, character: Character, desk: Desk, *, shelf: PictureShelf) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self.setAcceptDrops(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._character = character
        self._desk = desk
        self.canvas = PhotoCanvas(desk.theme)
        self.canvas.empty_words = self.empty_words(None)
        self.bar = PhotoBar(self.canvas)
        self.thumbs = Thumbs(desk)
        self.notice = Notice()
        self.other = CompareSide(key, character, desk, shelf=shelf)
        self.other.hide()
        self.panel = _panel(character, desk)
        self.result = ResultCard(character, desk)
        self.strip = StateStrip(key, character, desk)
        self.looks = Choice(self.tr("How it was looked at"), desk.theme)
        self.looks.offer(
            (upper_first(look_words(look, desk.language)), look) for look in character.looks
        )
        self.looks.choose(photo_look(character))
        self._lay_out()

    def empty_words(self, condition: Condition | None) -> str:
        """What stands where the picture would be.

        Args:
            condition: How the picture was found; None where there is none to show.
        """
        if condition is Condition.MISSING:
            return self.tr("The file of this picture is missing.\nA number noted from it stands.")
        if condition is Condition.DAMAGED:
            return self.tr("The file of this picture is damaged.\nA number noted from it stands.")
        return self.tr(
            "Drag a picture here, paste one, or choose a file.\n"
            "Place, time and owner are taken off what is kept."
        )

    def _lay_out(self) -> None:
        numeric = self._character.kind.numeric
        self.result.setVisible(numeric)
        self.strip.setVisible(not numeric)
        middle = QVBoxLayout()
        middle.setSpacing(4)
        pair = QHBoxLayout()
        pair.setSpacing(8)
        pair.addWidget(self.canvas, 1)
        pair.addWidget(self.other, 1)
        middle.addLayout(pair, 1)
        middle.addWidget(self.bar)
        body = QHBoxLayout()
        body.setSpacing(12)
        body.addWidget(self.thumbs)
        body.addLayout(middle, 1)
        body.addLayout(self._side())
        whole = QVBoxLayout(self)
        whole.setContentsMargins(16, 12, 16, 12)
        whole.setSpacing(8)
        whole.addLayout(self._head())
        whole.addWidget(self.notice)
        whole.addLayout(body, 1)
        whole.addWidget(self.strip)

    def _head(self) -> QHBoxLayout:
        theme = self._desk.theme
        self.add = button(self.tr("Add a picture …"))
        self.paste = KeyButton(self.tr("Paste"), "Ctrl+V", theme, "quiet")
        self.compare = button(self.tr("Compare"), "quiet")
        self.compare.setCheckable(True)
        self.back = KeyButton(self.tr("Back"), "Esc", theme, "quiet")
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(caption(self._character.question, "lead"))
        words.addWidget(caption(self._character.how or self._character.definition, "small"))
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addLayout(words, 1)
        for part in (self.add, self.paste, self.compare, self.back):
            row.addWidget(part, 0, Qt.AlignmentFlag.AlignTop)
        return row

    def _side(self) -> QVBoxLayout:
        inner = QWidget()
        inner.setProperty("pane", "clear")
        inside = QVBoxLayout(inner)
        inside.setContentsMargins(2, 0, 10, 0)
        inside.addWidget(self.panel)
        inside.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidget(inner)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setFixedWidth(self._desk.theme.px(SIDE))
        side = QVBoxLayout()
        side.setSpacing(8)
        side.addWidget(scroll, 1)
        side.addWidget(self.looks)
        side.addWidget(self.result)
        return side


def _panel(character: Character, desk: Desk) -> LinesPanel | CountPanel | LookPanel:
    if character.kind is Kind.COUNT:
        return CountPanel(character, desk)
    return LinesPanel(character, desk) if character.kind.numeric else LookPanel(character, desk)
