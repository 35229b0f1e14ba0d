"""What to do when a key could not be saved to its folder."""

from enum import StrEnum

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QDialog, QListView, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.columns import airy
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.messages import message_for
from idkey.app.parts.rows import RowsModel
from idkey.app.parts.theme import Theme
from idkey.app.parts.worded import window_language
from idkey.app.workshop.saving import ChangedMeanwhile
from idkey.errors import IdKeyError
from idkey.formats.compare import merge
from idkey.model.key import Key
from idkey.report.key_changes import worded_changes


class WayOut(StrEnum):
    """What the person chose."""

    COPY = "copy"
    BOTH = "both"
    OVER = "over"


def told_changes(old: Key, new: Key) -> tuple[str, ...]:
    """What changed, in words; nothing where a key has mistakes that keep it from being told."""
    try:
        return tuple(change.words for change in worded_changes(old, new, window_language()))
    except (IdKeyError, ValueError):
        return ()


def both(error: ChangedMeanwhile) -> Key | None:
    """The key with both people's changes; None when some clash, or cannot be joined."""
    if error.theirs is None:
        return None
    try:
        merged, clashes = merge(error.base, error.mine, error.theirs)
    except (IdKeyError, ValueError, LookupError):
        return None
    return None if clashes else merged


class TroubleDialog(QDialog):
    """Says why the key was not saved, and offers the ways out.

    Args:
        error: Why.
        theme: The look.
        parent: Over which it stands.

    Attributes:
        merged: The key with both people's changes; None when they cannot be joined.

    Signals:
        chosen(way: WayOut): The person chose a way out.
    """

    chosen = Signal(object)

    def __init__(self, error: IdKeyError, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Not saved"))
        self._theme = theme
        self._models: list[RowsModel[str]] = []
        self.merged: Key | None = None
        message = message_for(error)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(20, 16, 20, 16)
        self._column.setSpacing(8)
        for text, rank in ((message.problem, "lead"), (message.remedy, "")):
            self._column.addWidget(caption(text, rank))
        if isinstance(error, ChangedMeanwhile):
            self._show_both_sides(error)
        self._column.addWidget(self._ways(isinstance(error, ChangedMeanwhile)))
        self.setMinimumWidth(theme.px(560))

    def _show_both_sides(self, error: ChangedMeanwhile) -> None:
        self.merged = both(error)
        if not error.folder.is_dir():
            self._column.addWidget(caption(self.tr("The folder is not there any more.")))
        elif error.theirs is None:
            self._column.addWidget(caption(self.tr("What is there now cannot be read as a key.")))
        else:
            there = told_changes(error.base, error.theirs)
            self._show_list(self.tr("Changed on the disk"), there)
        self._show_list(self.tr("Changed by you"), told_changes(error.base, error.mine))

    def _show_list(self, title: str, rows: tuple[str, ...]) -> None:
        show = {int(Qt.ItemDataRole.DisplayRole): str, int(Qt.ItemDataRole.ToolTipRole): str}
        model: RowsModel[str] = RowsModel(show, parent=self)
        model.replace(rows)
        self._models.append(model)
        view = QListView()
        view.setModel(model)
        view.setWordWrap(True)
        view.setResizeMode(QListView.ResizeMode.Adjust)
        view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        view.setAccessibleName(title)
        view.setMaximumHeight(self._theme.px(150))
        airy(view, self._theme)
        self._column.addWidget(caption(f"{title} ({len(rows)})", "strong"))
        self._column.addWidget(view, 1)

    def _ways(self, changed: bool) -> FlowRow:
        row = FlowRow(gap=8)
        ways = [(WayOut.COPY, self.tr("Save as your own copy…"))]
        if changed:
            ways.append((WayOut.BOTH, self.tr("Take in both")))
            ways.append((WayOut.OVER, self.tr("Overwrite what is there")))
        for way, text in ways:
            one = button(text)
            one.setObjectName(way.value)
            one.setEnabled(way is not WayOut.BOTH or self.merged is not None)
            if not one.isEnabled():
                one.setToolTip(self.tr("The same places were changed on both sides."))
            one.clicked.connect(self._on_way_clicked)
            row.add(one)
        leave = button(self.tr("Not now"))
        leave.clicked.connect(self.reject)
        row.add(leave)
        return row

    @Slot()
    def _on_way_clicked(self) -> None:
        self.chosen.emit(WayOut(self.sender().objectName()))
        self.accept()
