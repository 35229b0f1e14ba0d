"""Common label stock: sheets and rolls."""

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock:
    """Label stock: labels of one size on pages of one size. Lengths in mm.

    Attributes:
        label: Width and height of a label.
        page: Width and height of a page; the label itself on a roll.
        across: Labels in a row.
        down: Rows on a page.
        first: Left and top of the first label.
        pitch: From one label to the next, across and down.
    """

    label: tuple[float, float]
    page: tuple[float, float]
    across: int = 1
    down: int = 1
    first: tuple[float, float] = (0.0, 0.0)
    pitch: tuple[float, float] = (0.0, 0.0)

    @property
    def places(self) -> tuple[tuple[float, float], ...]:
        """Left and top of each label of a page, row by row."""
        return tuple(
            (self.first[0] + column * self.pitch[0], self.first[1] + row * self.pitch[1])
            for row in range(self.down)
            for column in range(self.across)
        )


def _roll(width: float, height: float) -> Stock:
    return Stock(label=(width, height), page=(width, height))


def _a4(label: tuple[float, float], grid: tuple[int, int], gap: tuple[float, float]) -> Stock:
    """A4 stock with the grid in the middle of the page."""
    pitch = (label[0] + gap[0], label[1] + gap[1])
    wide = grid[0] * pitch[0] - gap[0]
    high = grid[1] * pitch[1] - gap[1]
    return Stock(
        label=label,
        page=(210, 297),
        across=grid[0],
        down=grid[1],
        first=((210 - wide) / 2, (297 - high) / 2),
        pitch=pitch,
    )


STOCKS: Mapping[str, Stock] = {
    "roll 62x29": _roll(62, 29),
    "roll 57x32": _roll(57, 32),
    "roll 89x36": _roll(89, 36),
    "roll 102x59": _roll(102, 59),
    "A4 3x8": _a4((70, 36), (3, 8), (0, 0)),
    "A4 3x7": _a4((63.5, 38.1), (3, 7), (2.5, 0)),
    "A4 2x7": _a4((99.1, 38.1), (2, 7), (2.5, 0)),
    "A4 2x4": _a4((99.1, 67.7), (2, 4), (2.5, 0)),
}
"""Common stock by name: kind, then size in mm or labels across and down."""
