"""The paper of a tile: the subject at large, and in the corner the small animal that places it."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Protocol

from idkey.figures.drawing import Group, Item
from idkey.figures.ink import CONTEXT, SUBJECT, skin
from idkey.figures.svg import Sheet, svg

WIDTH = 320.0
HEIGHT = 240.0

PLAIN = skin(CONTEXT)
"""What parts that only help to find one's way are painted with."""
SHOWN = skin(SUBJECT)
"""What the part in question is painted with where its colour is not the matter."""

Colours = Mapping[tuple[str, str], tuple[str, ...]]
"""Reference colours by (character id, state id), as ``#rrggbb``, typical one first."""

Draw = Callable[[Colours], Item]
Rows = Mapping[str, tuple[str, partial[Item]]]
"""State id to title and drawing."""


def tone(colours: Colours, character: str, state: str, which: int = 0) -> str:
    """A reference colour of a state; the colour of context where the key gives none."""
    given = colours.get((character, state), ())
    return given[min(which, len(given) - 1)].lower() if given else CONTEXT


@dataclass(frozen=True, slots=True)
class Tile:
    """One figure to be drawn.

    Attributes:
        title: What it shows, for readers that speak.
        where: Parts the small animal marks.
        draw: The subject, given the reference colours.
        below: Whether the small animal is seen from below.
    """

    title: str
    where: tuple[str, ...]
    draw: Draw
    below: bool = False


Tiles = Mapping[tuple[str, str], Tile]
"""Tiles by (character id, state id); the state ``measure`` says how a number is taken."""


class Inset(Protocol):
    """Draws the small animal of a body plan in the upper left corner."""

    def __call__(self, parts: Sequence[str], *, below: bool = False) -> Group:
        """The small animal with `parts` marked, seen from above or below."""


def tile_svg(tile: Tile, colours: Colours, inset: Inset) -> str:
    """The figure as SVG."""
    sheet = Sheet(width=WIDTH, height=HEIGHT, title=tile.title)
    return svg(sheet, (inset(tile.where, below=tile.below), tile.draw(colours)))


def tiles_of(
    character: str, rows: Rows, *where: str, below: bool = False
) -> dict[tuple[str, str], Tile]:
    """Tiles of all states of one character, which mark the same parts."""
    return {
        (character, state): Tile(title, where, draw, below) for state, (title, draw) in rows.items()
    }
