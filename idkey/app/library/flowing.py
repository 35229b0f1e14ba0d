"""Buttons side by side that break into rows where large text leaves them no room."""

from collections.abc import Iterable

from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.flow import FlowRow

LARGE = 150
"""Text size, in per cent, from which what stands side by side may not fit."""


def flowing(parts: Iterable[QWidget], gap: int) -> FlowRow:
    """A row of widgets that breaks; its height follows its width both ways.

    Args:
        parts: The widgets.
        gap: Space between them, in pixels.
    """
    row = FlowRow(gap)
    for part in parts:
        row.add(part)
    policy = row.sizePolicy()
    policy.setVerticalPolicy(QSizePolicy.Policy.Preferred)
    row.setSizePolicy(policy)
    return row
