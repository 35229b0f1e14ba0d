"""Tiles about the colour of the telson, of grown and of young animals."""

from dataclasses import replace
from functools import partial

from idkey.figures.drawing import Group, Item, Line, Part, group, pieces, placed
from idkey.figures.geometry import Place, Point, bounds, moved, smooth
from idkey.figures.ink import POINTER, blended, skin
from idkey.figures.marks import glow, ring
from idkey.figures.scorpion.animal import Arm, Build, animal, coat
from idkey.figures.scorpion.tail import (
    Sting,
    aculeus_outline,
    segment_drawing,
    sting_drawing,
    vesicle_outline,
)
from idkey.figures.scorpion.tiles_tail import side_view
from idkey.figures.tile import Colours, Rows, Tiles, tiles_of, tone


def _colour(character: str, state: str, colours: Colours) -> Item:
    body = tone(colours, "body_colour", "black")
    shown = tone(colours, character, state)
    sting = Sting(length=176, depth=76, vesicle=0.6, curve=0.5)
    joint = 132 + 112j
    dark = skin(blended(shown, "#2a1408", 0.62))
    back, cuticle = skin(body), skin(shown)
    return group(
        glow(vesicle_outline(sting).placed(moved(joint))),
        glow(aculeus_outline(sting).placed(moved(joint))),
        segment_drawing((joint - 96 + 5j, joint - 58 + 4j), 50, back),
        side_view(sting, joint=joint, skins=(back, cuticle, dark)),
    )


_LENS: Point = 256 + 166j
"""Middle of the enlarged telson of a young animal."""


def _young(state: str, colours: Colours) -> Item:
    body = tone(colours, "juvenile_telson_colour", "as_body")
    pale = skin(blended(body, "#e8d3a0", 0.34))
    shown = skin(tone(colours, "juvenile_telson_colour", state))
    baby = Build(
        length=148,
        tail=0.5,
        girth=1.28,
        tail_width=0.54,
        telson_depth=1.3,
        notch=0.08,
        bends=(8, 12, 14, 14, 16, 20),
        vesicle=0.66,
        arm=Arm(ratio=2.5, chela=1.65, thick=0.38, femur=0.7, patella=0.75),
    )
    painted = replace(coat(skin(body)), telson=shown, legs=pale)
    drawn = placed(animal(baby, painted), Place(-1j, 0j, 106 + 76j))
    small = next(i for i in drawn.items if isinstance(i, Group) and i.name == "telson")
    spot = _middle(small)
    sting = Sting(length=96, depth=50, vesicle=0.62, curve=0.45)
    joint = _LENS - (46 + 8j)
    way = (_LENS - spot) / abs(_LENS - spot)
    thread = smooth((spot + way * 15, _LENS - way * 56), closed=False)
    return group(
        drawn,
        Line(outline=thread, colour=POINTER, weight=1.6),
        ring(spot, 15),
        ring(_LENS, 58),
        segment_drawing((joint - 10 + 3j, joint + 3j), 30, skin(body), keels=False),
        sting_drawing(
            sting,
            shown,
            tip=skin(blended(shown.fill, "#2a1408", 0.62)),
            place=moved(joint),
            name="subject",
        ),
    )


def _middle(item: Item) -> Point:
    points = [
        p for piece in pieces((item,)) if isinstance(piece, Part) for p in piece.outline.flat(2)
    ]
    low, high = bounds(points)
    return (low + high) / 2


_TINTS = {
    "dark": "Telson dark as the body",
    "reddish": "Telson reddish brown",
    "yellow": "Telson yellow or pale",
}

_YOUNG: Rows = {
    "white_yellow": ("Young animal, telson white or yellow", partial(_young, "white_yellow")),
    "as_body": ("Young animal, telson as the body", partial(_young, "as_body")),
}

TILES: Tiles = {
    **tiles_of("juvenile_telson_colour", _YOUNG, "telson"),
    **tiles_of(
        "telson_colour",
        {s: (title, partial(_colour, "telson_colour", s)) for s, title in _TINTS.items()},
        "telson",
    ),
}
