"""What else is sold under the label, and what decides it: shown before anything is looked at."""

from dataclasses import replace

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout

from idkey.app.bench.one_line import OneLine
from idkey.app.bench.session import Session
from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.tips import tip
from idkey.engine.labels import label_entry
from idkey.model.label import Label
from idkey.report.words import covers_words, mixup_warning, rich


class LabelNote(QFrame):
    """Warns of mix-ups, or asks which entry an unknown label means.

    Args:
        desk: Look, drawings, language.

    Signals:
        asked(character: str): The person wants to look at a deciding character.
        label_chosen(label: str): The label stands for that entry.
        opened(): The person wants the whole warning, of which one line was shown.
        put_away(): The person has read it.
    """

    asked = Signal(str)
    label_chosen = Signal(str)
    opened = Signal()
    put_away = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._shown: tuple[object, ...] = ()
        self.setProperty("pane", "doubt")
        self._heading = caption(rank="strong")
        self._text = caption()
        self._brief = OneLine(desk.theme, colour="ink")
        self._brief.hide()
        for text in (self._heading, self._text):
            text.setTextFormat(Qt.TextFormat.RichText)
        self._more = button(self.tr("More"), "link")
        self._close = button("✕", "quiet")
        self._close.setAccessibleName(self.tr("Put this note away"))
        self._close.setToolTip(self.tr("Put this note away"))
        self._buttons = FlowRow(gap=6)
        top = QHBoxLayout()
        top.setSpacing(4)
        top.addWidget(self._heading, 1)
        top.addWidget(self._brief, 1)
        top.addWidget(self._more, 0, Qt.AlignmentFlag.AlignTop)
        top.addWidget(self._close, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 8, 8, 10)
        column.setSpacing(6)
        column.addLayout(top)
        column.addWidget(self._text)
        column.addWidget(self._buttons)
        self._close.clicked.connect(self._on_close_clicked)
        self._more.clicked.connect(self._on_more_clicked)
        self.hide()

    def minimumSizeHint(self) -> QSize:
        """As high as its lines at the width it has: what lies below scrolls, a warning does not."""
        least = super().minimumSizeHint()
        return QSize(least.width(), max(least.height(), self.heightForWidth(self.width())))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Ask for another height where the lines break otherwise."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()

    @property
    def text(self) -> str:
        """What it says, as rich text."""
        return f"{self._heading.text()} {self._text.text()}"

    def show_session(self, session: Session, *, brief: bool = False) -> None:
        """Show what the label of a session calls for.

        Args:
            session: The session.
            brief: Whether something is being looked at already, which needs the room: the
                warning keeps to one line then. What concerns safety stays.
        """
        claim = session.case.claim
        shown = (session.key, session.label, claim.text, session.matches, brief)
        if shown != self._shown:
            self._shown = shown
            self._buttons.clear()
            self._brief.setVisible(brief and session.label is not None)
            self._heading.setVisible(self._brief.isHidden())
            if session.label is not None:
                self._show_mixups(session, session.label, brief=brief)
            else:
                self._show_near(session)

    def _show_mixups(self, session: Session, label: Label, *, brief: bool) -> None:
        key, language = session.key, self._desk.language
        names_only = replace(label, why="", deciding=(), safety="", law="", evidence="")
        heading = mixup_warning(key, names_only, language)
        self._heading.setText(rich(key, heading))
        self._brief.show_text(heading)
        whole = f"{covers_words(key, label, language)} {label.why} {label.law}"
        self._text.setText(rich(key, whole.strip()))
        self._text.hide()
        self._more.setText(self.tr("More"))
        self._more.show()
        if label.safety:
            self._buttons.add(caption(label.safety, tone="hazard"))
        self._buttons.setVisible(bool(label.safety) or not brief)
        deciding = () if brief else label.deciding
        if deciding:
            self._buttons.add(caption(self.tr("This decides it:"), wraps=False))
        for character in deciding:
            known = key.character.get(character)
            if known is not None:
                self._add(known.name, character).clicked.connect(self._on_character_clicked)

    def _show_near(self, session: Session) -> None:
        text = session.case.claim.text
        heading = self.tr("This key has no entry for “{text}”.").format(text=text)
        self._heading.setText(rich(session.key, heading))
        self._more.hide()
        self._text.show()
        self._buttons.show()
        if not session.matches:
            self._text.setText(self.tr("Nothing in it comes near. The identification goes on."))
            return
        self._text.setText(self.tr("Did the label mean one of these? If not, just go on."))
        for match in session.matches:
            entry = label_entry(session.key, match.label)
            if entry is not None:
                one = self._add(match.text, match.label)
                one.setToolTip(tip(covers_words(session.key, entry, self._desk.language)))
                one.clicked.connect(self._on_match_clicked)

    def _add(self, text: str, name: str) -> QPushButton:
        one = button(text)
        one.setObjectName(name)
        self._buttons.add(one)
        return one

    @Slot()
    def _on_character_clicked(self) -> None:
        self.asked.emit(self.sender().objectName())

    @Slot()
    def _on_match_clicked(self) -> None:
        self.label_chosen.emit(self.sender().objectName())

    @Slot()
    def _on_more_clicked(self) -> None:
        if not self._brief.isHidden():
            self.opened.emit()
            return
        self._text.setVisible(not self._text.isVisible())
        self._more.setText(self.tr("Less") if self._text.isVisible() else self.tr("More"))

    @Slot()
    def _on_close_clicked(self) -> None:
        self.put_away.emit()
