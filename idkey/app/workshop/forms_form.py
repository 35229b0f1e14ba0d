"""A form: fields under headings, for one entry of a key."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QEvent, QObject, QSize, Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QPlainTextEdit, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.theme import Theme
from idkey.app.workshop.forms_field import Field

NARROWEST = 165
"""Width below which a field gets no column of its own, in pixels at 100 % text."""


def value_at(entry: Any, path: str) -> Any:
    """What stands at a path such as ``"hazard.level"``."""
    for name in path.split("."):
        entry = getattr(entry, name)
    return entry


def with_value(entry: Any, path: str, value: Any) -> Any:
    """The entry with another value at a path."""
    name, _, rest = path.partition(".")
    inner = with_value(getattr(entry, name), rest, value) if rest else value
    return replace(entry, **{name: inner})


class Abreast(QWidget):
    """Fields in as many columns as there is room for.

    Args:
        fields: The fields.
        theme: The look.
    """

    def __init__(self, fields: Iterable[QWidget], theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._fields = tuple(fields)
        self._placed: object = None
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(theme.px(10))
        self._grid.setVerticalSpacing(theme.px(9))
        for field in self._fields:
            field.setParent(self)
            field.installEventFilter(self)
        self._place()

    def minimumSizeHint(self) -> QSize:
        """As narrow as one column."""
        wide = max((f.minimumSizeHint().width() for f in self._fields), default=0)
        return QSize(wide, self._grid.totalMinimumSize().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fewer columns where there is no room."""
        self._place()
        super().resizeEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Close the gap where a field is hidden."""
        if event.type() in (QEvent.Type.ShowToParent, QEvent.Type.HideToParent):
            self._place()
        return False

    def _place(self) -> None:
        shown = [field for field in self._fields if not field.isHidden()]
        most = min(max(self.width() // self._theme.px(NARROWEST), 1), max(len(shown), 1))
        rows = -(-len(shown) // most)
        columns = -(-len(shown) // max(rows, 1))
        if (shown, columns) == self._placed:
            return
        self._placed = (shown, columns)
        for column in range(len(self._fields)):
            self._grid.setColumnStretch(column, int(column < columns))
        for place, field in enumerate(shown):
            row, column = divmod(place, columns)
            self._grid.addWidget(field, row, column, Qt.AlignmentFlag.AlignTop)


class Form(QWidget):
    """Fields under headings.

    Args:
        theme: The look.

    Attributes:
        fields: Fields by the path of their value.

    Signals:
        edited(path: str, value: object): The person gave a field another value.
    """

    edited = Signal(str, object)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setProperty("pane", "clear")
        self.theme = theme
        self.fields: dict[str, Field] = {}
        self._owner = ""
        self.wrong = caption(tone="doubt")
        self.wrong.hide()
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(theme.px(4), 0, theme.px(12), theme.px(16))
        self.column.setSpacing(theme.px(9))
        self.column.addWidget(self.wrong)

    def head(self, text: str) -> None:
        """Start a part with a heading."""
        label = caption(text, "strong")
        label.setContentsMargins(0, self.theme.px(8), 0, 0)
        self.column.addWidget(label)

    def add(self, fields: Mapping[str, Field], *, abreast: bool = False) -> None:
        """Add fields by their paths, below each other or side by side."""
        for path, field in fields.items():
            field.path = path
            field.edited.connect(self._on_field_edited)
            self.fields[path] = field
        if abreast:
            self.column.addWidget(Abreast(fields.values(), self.theme))
            return
        for field in fields.values():
            self.column.addWidget(field)

    def show_entry(self, entry: Any, owner: str) -> None:
        """Show an entry; `owner` tells entries apart, also while they change."""
        if owner != self._owner:
            self._owner = owner
            for field in self.fields.values():
                field.belong_to(owner)
        for path, field in self.fields.items():
            field.show_value(value_at(entry, path))

    def show_problems(self, found: Mapping[str, tuple[str, ...]]) -> None:
        """Say what is wrong beside each field; what is nowhere else stands above.

        Args:
            found: Problems by path in the entry; a path inside that of a field belongs to it.
        """
        beside: dict[str, dict[str, tuple[str, ...]]] = {path: {} for path in self.fields}
        rest: tuple[str, ...] = ()
        for path, words in found.items():
            place = self.field_of(path)
            if place:
                beside[place][path[len(place) + 1 :]] = words
            else:
                rest = (*rest, *words)
        for path, field in self.fields.items():
            field.say_inside(beside[path])
        self.wrong.setText("\n".join(f"⚠ {one}" for one in rest))
        self.wrong.setVisible(bool(rest))

    def field_of(self, path: str) -> str:
        """The path of the field in which a path lies; empty when there is none."""
        steps = path.split(".")
        for most in range(len(steps), 0, -1):
            if (found := ".".join(steps[:most])) in self.fields:
                return found
        return ""

    def reach(self, path: str) -> None:
        """Put the focus into the field in which a path lies."""
        place = self.field_of(path)
        if place:
            self.fields[place].reach(path[len(place) + 1 :])

    def focus_first(self) -> None:
        """Put the focus into the first field, its text chosen as after Tab."""
        for field in self.fields.values():
            field.setFocus(Qt.FocusReason.TabFocusReason)
            return

    def choose_first(self) -> None:
        """Put the focus into the first field, all of its text chosen: typing replaces it."""
        self.focus_first()
        for field in self.fields.values():
            for box in field.findChildren(QPlainTextEdit):
                box.selectAll()
            return

    def flush(self) -> None:
        """Make everything that was typed a step now."""
        for field in self.fields.values():
            field.flush()

    @Slot(object)
    def _on_field_edited(self, value: object) -> None:
        field = self.sender()
        if isinstance(field, Field):
            self.edited.emit(field.path, value)
