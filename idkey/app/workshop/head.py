"""The line above the pages: which key, what can be taken back, Save."""

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QPushButton, QWidget

from idkey.app.bench.one_line import OneLine
from idkey.app.parts.captions import KeyButton, button, caption, key_text
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip
from idkey.app.workshop.editing import Editing

_SHORTEST, _LONGEST = 12, 34
"""Signs of a step that a button shows; the whole of it is its tooltip."""


class Head(QWidget):
    """Title and version of the key, undo and redo with words, Save, Close.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.title = OneLine(theme, 17, "ink")
        self.version = caption(rank="soft", wraps=False)
        self.undo = button(role="quiet")
        self.redo = button(role="quiet")
        self.save = KeyButton(self.tr("Save"), "Ctrl+S", theme, "main")
        self.impact = button(self.tr("What changes"), "quiet")
        self.impact.setToolTip(self.tr("What saving would change: checks, couplets, cases"))
        self.close_key = button(self.tr("Put away"), "quiet")
        self.close_key.setToolTip(self.tr("Put this key away and choose another one"))
        names, deeds = QHBoxLayout(), QHBoxLayout()
        names.addWidget(self.title, 1)
        names.addWidget(self.version)
        deeds.addStretch(1)
        self._pressed = (self.undo, self.redo, self.impact, self.save, self.close_key)
        for pressed in self._pressed:
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
            deeds.addWidget(pressed)
        self._rows = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        for part in (names, deeds, self._rows):
            part.setSpacing(theme.px(8))
        self._rows.addLayout(names, 1)
        self._rows.addLayout(deeds)

    def show_editing(self, editing: Editing) -> None:
        """Show which key it is and what can be done."""
        self.title.show_text(editing.key.title)
        self.title.setToolTip(tip(f"{editing.key.title}\n{editing.folder}"))
        unsaved = self.tr("not saved yet") if editing.dirty else self.tr("saved")
        version = self.tr("version {version}").format(version=editing.key.version)
        self.version.setText(f"{version} · {'● ' if editing.dirty else ''}{unsaved}")
        self.save.setEnabled(editing.dirty)
        self.impact.setVisible(editing.dirty)
        self._show_step(self.undo, "Ctrl+Z", editing.past[-1].words if editing.past else "")
        again = editing.future[-1].words if editing.future else ""
        self._show_step(self.redo, "Ctrl+Shift+Z", again)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the buttons below the title where they do not fit beside it."""
        super().resizeEvent(event)
        shown = [one.sizeHint().width() for one in self._pressed if not one.isHidden()]
        wide = sum(shown) + self.version.sizeHint().width() + self._theme.px(120)
        way = QBoxLayout.Direction
        self._rows.setDirection(way.TopToBottom if wide > self.width() else way.LeftToRight)

    def _show_step(self, pressed: QPushButton, key: str, words: str) -> None:
        takes_back = pressed is self.undo
        name = self.tr("Take back") if takes_back else self.tr("Do again")
        room = min(_LONGEST, (self.width() - self._theme.px(900)) // self._theme.px(8))
        short = words if len(words) <= room else f"{words[: max(room - 1, 0)]}…"
        text = f"{name}: {short}" if words and takes_back and room > _SHORTEST else name
        pressed.setText(text.replace("&", "&&"))  # what a file says is no mnemonic
        pressed.setEnabled(bool(words))
        whole = f"{name}: {words}" if words else name
        pressed.setToolTip(tip(f"{whole} ({key_text(key)})"))
        pressed.setAccessibleName(whole)
