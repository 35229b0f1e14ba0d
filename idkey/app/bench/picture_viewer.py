"""The pictures of one finding, large."""

from PySide6.QtCore import QRect, QSize, Qt, Signal, Slot
from PySide6.QtGui import QImage, QKeyEvent, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.photo.shelf import PictureShelf


class PictureViewer(QFrame):
    """Covers the bench with one picture; arrows turn, Delete removes, Esc ends.

    Args:
        desk: Look, drawings, language.
        shelf: Where pictures are kept.
        over: The widget it covers.

    Signals:
        adding_asked(): The person wants to add another one.
        dropped(picture: str): The picture does not belong here.
        ended(): The person has seen enough.
    """

    adding_asked = Signal()
    dropped = Signal(str)
    ended = Signal()

    def __init__(self, desk: Desk, shelf: PictureShelf, *, over: QWidget) -> None:
        super().__init__(over)
        self.setProperty("pane", "card")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._desk = desk
        self._shelf = shelf
        self._over = over
        self._jobs = Jobs(threads=1, parent=self)
        self._pictures: tuple[str, ...] = ()
        self._title = ""
        self._shown = ""
        self._image = QPixmap()
        self._words = caption(rank="strong")
        self._trouble = caption(tone="doubt")
        self._trouble.setAlignment(Qt.AlignmentFlag.AlignCenter)
        theme = desk.theme
        self.turn = KeyButton(self.tr("Next picture"), "→", theme, "quiet")
        self.add = KeyButton(self.tr("Add another"), "P", theme, "quiet")
        self.remove = KeyButton(self.tr("Remove"), "Del", theme, "quiet")
        self.back = KeyButton(self.tr("Back"), "Esc", theme, "quiet")
        self._lay_out()
        self.hide()

    @property
    def picture(self) -> str:
        """Id of the picture that is shown."""
        return self._shown

    @property
    def busy(self) -> bool:
        """Whether a picture is being read."""
        return self._jobs.busy

    @property
    def trouble(self) -> str:
        """Why a picture cannot be shown; empty when it can."""
        return self._trouble.text()

    def close_work(self) -> None:
        """Let go of work under way."""
        self._jobs.close()

    def show_pictures(self, title: str, pictures: tuple[str, ...]) -> None:
        """Show the pictures of a finding, or go away without any.

        Args:
            title: What was seen, in words.
            pictures: Ids; the one that was shown stays while it is among them.
        """
        grown = [one for one in pictures if one not in self._pictures] if self._pictures else []
        before = self._pictures.index(self._shown) if self._shown in self._pictures else 0
        self._title, self._pictures = title, pictures
        if not pictures:
            self._end()
            return
        if grown:
            self._show(grown[-1])
        elif self._shown in pictures:
            self._say()
        else:
            self._show(pictures[min(before, len(pictures) - 1)])

    def open(self) -> None:
        """Cover the bench."""
        margin = self._desk.theme.px(24)
        self.setGeometry(self._over.rect().adjusted(margin, margin, -margin, -margin))
        self.show()
        self.raise_()
        self.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Turn, add, remove, end."""
        ahead = -1 if self.isRightToLeft() else 1
        steps: dict[int, int] = {Qt.Key.Key_Left: -ahead, Qt.Key.Key_Right: ahead}
        if event.key() in steps:
            self._turn(steps[event.key()])
        elif event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self._on_remove_clicked()
        elif event.key() == Qt.Key.Key_P:
            self.adding_asked.emit()
        elif event.key() == Qt.Key.Key_Escape:
            self._end()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the ground and the picture."""
        super().paintEvent(event)
        if self._image.isNull():
            return
        px = self._desk.theme.px
        room = QRect(px(16), px(16), self.width() - px(32), self._words.y() - px(28))
        ratio = self.devicePixelRatioF()
        size = self._image.size().scaled(room.size() * ratio, Qt.AspectRatioMode.KeepAspectRatio)
        shown = self._image.scaled(
            size, Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
        )
        shown.setDevicePixelRatio(ratio)
        box = QRect(0, 0, round(size.width() / ratio), round(size.height() / ratio))
        box.moveCenter(room.center())
        painter = QPainter(self)
        painter.drawPixmap(box.topLeft(), shown)
        painter.end()

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addStretch(1)
        for one in (self.turn, self.add, self.remove, self.back):
            one.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            row.addWidget(one)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 16, 12)
        column.addWidget(self._trouble, 1)
        column.addWidget(self._words)
        column.addLayout(row)
        self.turn.clicked.connect(self._on_turn_clicked)
        self.add.clicked.connect(self._on_add_clicked)
        self.remove.clicked.connect(self._on_remove_clicked)
        self.back.clicked.connect(self._end)

    def _show(self, picture: str) -> None:
        self._shown, self._image = picture, QPixmap()
        self._trouble.setText("")
        self._say()
        shelf, most = self._shelf, self._over.window().size() * 2

        def work(tick: Tick) -> tuple[str, QImage]:  # on a pool thread
            tick(0, 1)
            return picture, _read(shelf.content(picture), most)

        job = Job(work)
        job.succeeded.connect(self._on_read)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    def _say(self) -> None:
        number = self._pictures.index(self._shown) + 1
        text = self.tr("{seen} · picture {n} of {all}").format(
            seen=self._title, n=number, all=len(self._pictures)
        )
        self._words.setText(text)
        self.setAccessibleName(text)
        self.turn.setVisible(len(self._pictures) > 1)
        self.update()

    def _turn(self, step: int) -> None:
        there = (self._pictures.index(self._shown) + step) % len(self._pictures)
        if self._pictures[there] != self._shown:
            self._show(self._pictures[there])

    @Slot(object)
    def _on_read(self, read: tuple[str, QImage]) -> None:
        if read[0] == self._shown:
            self._image = QPixmap.fromImage(read[1])
            self.update()

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        message = message_for(error)
        self._trouble.setText(f"{message.problem} {message.remedy}".strip())

    @Slot()
    def _on_turn_clicked(self) -> None:
        self._turn(1)

    @Slot()
    def _on_add_clicked(self) -> None:
        self.adding_asked.emit()

    @Slot()
    def _on_remove_clicked(self) -> None:
        self.dropped.emit(self._shown)

    @Slot()
    def _end(self) -> None:
        self._pictures, self._shown, self._image = (), "", QPixmap()
        if not self.isHidden():
            self.hide()
            self.ended.emit()


def _read(content: bytes, most: QSize) -> QImage:
    """A picture, no larger than `most`, so that a large one does not stay in memory whole."""
    image = QImage.fromData(content)
    if image.width() <= most.width() and image.height() <= most.height():
        return image
    return image.scaled(
        most, Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
    )
