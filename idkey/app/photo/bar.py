"""Below the picture: zoom, magnifier, undo, and which keys do what."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QWidget

from idkey.app.parts.captions import button, caption, key_text
from idkey.app.photo.canvas import PhotoCanvas
from idkey.app.photo.hand import ZOOM_STEP
from idkey.app.photo.sight import Sight

LARGE = 1.0
"""Scale at which one pixel of the picture is one of the screen."""


class PhotoBar(QWidget):
    """A row of buttons for a canvas.

    Args:
        canvas: The canvas.

    Signals:
        stepped(step: int): Undo (-1) or redo (1) is wanted.
    """

    stepped = Signal(int)

    def __init__(self, canvas: PhotoCanvas) -> None:
        super().__init__()
        self._canvas = canvas
        self.smaller = button("−", "quiet")
        self.larger = button("+", "quiet")
        self.whole = button(self.tr("Whole"), "quiet")
        self.magnifier = button(self.tr("Magnifier"), "quiet")
        self.magnifier.setCheckable(True)
        self.magnifier.setChecked(canvas.magnifies)
        self.undo = button(self.tr("Undo"), "quiet")
        self.redo = button(self.tr("Redo"), "quiet")
        self._scale = caption(rank="small", wraps=False)
        said = {
            self.smaller: (self.tr("Smaller"), "-"),
            self.larger: (self.tr("Larger"), "+"),
            self.whole: (self.tr("The whole picture"), "0"),
            self.magnifier: (self.tr("Magnifier at the cursor"), "M"),
            self.undo: (self.tr("Undo"), key_text("Ctrl+Z")),
            self.redo: (self.tr("Redo"), key_text("Ctrl+Shift+Z")),
        }
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2)
        for part, (name, key) in said.items():
            part.setAccessibleName(name)
            part.setToolTip(f"{name} ({key})")
            row.addWidget(part)
            if part is self.larger:
                row.addWidget(self._scale)
        row.addStretch(1)
        self.smaller.clicked.connect(self._on_smaller_clicked)
        self.larger.clicked.connect(self._on_larger_clicked)
        self.whole.clicked.connect(self._on_whole_clicked)
        self.magnifier.toggled.connect(self._canvas.magnify)
        self.undo.clicked.connect(self._on_undo_clicked)
        self.redo.clicked.connect(self._on_redo_clicked)

    def show_sight(self, sight: Sight | None) -> None:
        """Say how large the picture is seen."""
        self._scale.setText("" if sight is None else f"{sight.scale:.0%}".replace("%", " %"))
        for part in (self.smaller, self.larger, self.whole):
            part.setEnabled(sight is not None)

    @Slot()
    def _on_smaller_clicked(self) -> None:
        self._canvas.zoom(1 / ZOOM_STEP)

    @Slot()
    def _on_larger_clicked(self) -> None:
        self._canvas.zoom(ZOOM_STEP)

    @Slot()
    def _on_whole_clicked(self) -> None:
        self._canvas.fit()

    @Slot()
    def _on_undo_clicked(self) -> None:
        self.stepped.emit(-1)

    @Slot()
    def _on_redo_clicked(self) -> None:
        self.stepped.emit(1)
