"""A row of choices of which one holds."""

from collections.abc import Callable, Iterable
from typing import Generic, TypeVar

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QWidget

from idkey.app.parts.captions import button

T = TypeVar("T")


class Segments(QWidget, Generic[T]):
    """Choices side by side; arrows move between them.

    Args:
        name: What is chosen, for readers that speak.
        values: The choices.
        words: What to call each.

    Signals:
        chosen(value: object): The person chose another one.
    """

    chosen = Signal(object)

    def __init__(self, name: str, values: Iterable[T], words: Callable[[T], str]) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._values = tuple(values)
        self._words = words
        self._group = QButtonGroup(self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        for number, value in enumerate(self._values):
            one = button(words(value), "segment")
            one.setCheckable(True)
            one.setAccessibleName(words(value))
            one.setAccessibleDescription(name)
            if number in (0, len(self._values) - 1):
                # The style sheet knows sides, not beginnings.
                one.setProperty("edge", "last" if bool(number) != self.isRightToLeft() else "first")
            self._group.addButton(one, number)
            row.addWidget(one)
        self._group.idClicked.connect(self._on_group_id_clicked)
        if self._values:
            self.set_value(self._values[0])

    @property
    def value(self) -> T:
        """The choice that holds."""
        return self._values[max(self._group.checkedId(), 0)]

    def set_value(self, value: T) -> None:
        """Choose without telling anybody."""
        self._group.button(self._values.index(value)).setChecked(True)

    @Slot(int)
    def _on_group_id_clicked(self, number: int) -> None:
        self.chosen.emit(self._values[number])
