"""Tiles about the colour and the lustre of back and legs."""

from dataclasses import replace
from functools import partial

from idkey.figures.drawing import Group, Item, Part, Patch, group, placed
from idkey.figures.geometry import MIRROR, Place, ellipse, mirrored, moved, smooth
from idkey.figures.ink import (
    Skin,
    lightened,
    skin,
)
from idkey.figures.rod import rod
from idkey.figures.scorpion.back import (
    Shield,
    shield_drawing,
    tergite_outlines,
    tergites_drawing,
)
from idkey.figures.scorpion.limbs import chelicera_drawing, legs_drawing
from idkey.figures.scorpion.tail import segment_drawing
from idkey.figures.tile import PLAIN, Colours, Rows, Tiles, tiles_of, tone

_FRONT = 190 + 32j


def trunk(back: Skin, limbs: Skin, *, gloss: float = 1, keels: int = 0, name: str = "") -> Group:
    """Carapace and tergites with the roots of the limbs, heading up.

    Args:
        back: Skin of carapace and tergites.
        limbs: Skin of the rest.
        gloss: Strength of the light.
        keels: Keels on the tergites.
        name: Id of carapace and tergites.
    """
    size = 58.0
    shield = Shield(length=size, width=66, notch=0.09)
    rings = tergite_outlines(122, 82, 32)
    limbs_drawn = [placed(item, side) for side in (Place(), MIRROR) for item in _roots(size, limbs)]
    mouth = [
        chelicera_drawing(size * 0.4, limbs, place=side.after(moved(0.7 + 7j)))
        for side in (Place(), MIRROR)
    ]
    drawn = group(
        *limbs_drawn,
        segment_drawing((179j, 206j), 30, limbs),
        *mouth,
        group(
            placed(
                tergites_drawing(rings, back, keels=keels, gloss=gloss), moved(complex(0, size))
            ),
            shield_drawing(shield, back, gloss=gloss),
            name=name,
        ),
    )
    return group(placed(drawn, moved(_FRONT - 4j)))


def _roots(size: float, limbs: Skin) -> list[Item]:
    shoulder, elbow = complex(0.3, 0.2) * size, complex(1.05, -0.3) * size
    drawn: list[Item] = []
    for start, end in (
        ((0.42, 0.98), (1.2, 1.62)),
        ((0.48, 0.8), (1.45, 1.04)),
        ((0.47, 0.6), (1.42, 0.5)),
        ((0.42, 0.42), (1.25, 0.06)),
    ):
        drawn.append(
            Part(
                outline=rod(complex(*start) * size, complex(*end) * size, 13, 11, belly=0.1),
                skin=limbs,
            )
        )
    drawn.append(Part(outline=rod(shoulder, elbow, 20, 24, belly=0.08), skin=limbs))
    return drawn


def _back_colour(state: str, colours: Colours) -> Item:
    shown = skin(tone(colours, "body_colour", state))
    if state == "yellow_dark_back":
        dark = skin(tone(colours, "body_colour", state, 1))
        return group(trunk(shown, shown, name="subject"), *_saddle(dark))
    drawn = trunk(shown, PLAIN, name="subject")
    return group(drawn, _sheen()) if state == "black_green_blue" else drawn


_ROWS = (0.0, 13.5, 29.0, 46.5, 65.5, 85.0)


def _saddle(dark: Skin) -> list[Item]:
    """Dark middles of carapace and tergites."""
    at = _FRONT - 4j
    widths = (27.0, 30.0, 31.0, 31.0, 30.0, 28.0)
    tall = (12.0, 13.6, 15.6, 17.2, 18.0, 18.0)
    hood = mirrored((22j, 9 + 24j, 17 + 32j, 23 + 46j, 22 + 54j, 56j))
    items: list[Item] = [Patch(outline=smooth(hood).placed(moved(at)), colour=dark.fill)]
    for y, wide, high in zip(_ROWS, widths, tall, strict=True):
        half = (0j, wide * 0.9 + 0j, wide + 0.5j * high, wide * 0.8 + 0.86j * high, 0.9j * high)
        ring = smooth(mirrored(half)).placed(moved(at + complex(0, 60.5 + y)))
        items.append(Patch(outline=ring, colour=dark.fill))
        items.append(
            Patch(
                outline=ellipse(at + complex(-wide * 0.35, 64 + y), wide * 0.4, 1.4),
                colour=dark.light,
            )
        )
    return items


def _sheen() -> Group:
    spots = ((-15, 40, 4, 14, "#3f7f80"), (13, 47, 3, 8, "#4b6fa0"))
    rows = [(-19, 66.5 + y, 11, 3, ("#3f7f80", "#4b6fa0")[i % 2]) for i, y in enumerate(_ROWS)]
    more = [(17, 69 + y, 8, 2.2, ("#4b6fa0", "#3f7f80")[i % 2]) for i, y in enumerate(_ROWS)]
    return group(
        *(
            Patch(outline=ellipse(_FRONT - 4j + complex(x, y), a, b, -8), colour=tone, opacity=0.8)
            for x, y, a, b, tone in (*spots, *rows, *more)
        )
    )


def _legs(state: str, colours: Colours) -> Item:
    body = skin(tone(colours, "body_colour", "black"))
    shown = skin(tone(colours, "leg_colour", state))
    size = 53.0
    here = moved(190 + 72j)
    shield = Shield(length=size, width=size * 1.04, notch=0.09)
    rings = tergite_outlines(size * 1.95, size * 1.2, 26)
    legs = [legs_drawing(size, shown, place=here.after(side)) for side in (Place(), MIRROR)]
    back = group(
        placed(tergites_drawing(rings, body), moved(complex(0, size))),
        shield_drawing(shield, body),
    )
    return group(group(*legs, name="subject"), placed(back, here))


def _lustre(gloss: float, colours: Colours) -> Item:
    back = skin(lightened(tone(colours, "body_colour", "black"), 6))
    if gloss == 0:
        back = replace(back, shade=lightened(back.fill, -2))
    drawn = trunk(back, PLAIN, gloss=gloss)
    if gloss == 0:
        return drawn
    tint = "#f4f1ea" if gloss > 1 else lightened(back.fill, 24)
    return group(drawn, *_glints(tint, 1.0 if gloss > 1 else 1.35))


def _glints(tint: str, spread: float) -> list[Item]:
    spots: list[tuple[float, float, float, float, float]] = [
        (-15, 38, 3.4, 12, 14),
        (-20, 20, 2.0, 6, 20),
    ]
    spots += [(-19, 66 + y, 12.5, 2.5, -3) for y in _ROWS]
    spots += [(18, 67 + y, 5, 1.8, 3) for y in _ROWS]
    return [
        Patch(
            outline=ellipse(_FRONT - 4j + complex(x, y), a * spread, b * spread, turn), colour=tint
        )
        for x, y, a, b, turn in spots
    ]


_BODY = {
    "black": "Back black",
    "black_green_blue": "Back black with a green or blue sheen",
    "brown_black": "Back dark brown to brownish black",
    "reddish_brown_black": "Back reddish brown to reddish black",
    "yellow_dark_back": "Pale animal with a dark back",
    "orange_yellow": "Back orange to yellow",
}

_LEG = {
    "dark": "Legs dark as the body",
    "brown": "Legs brown, paler than the body",
    "yellow": "Legs yellow to orange",
}

_GLOSS: Rows = {
    "weak": ("Back matt", partial(_lustre, 0.0)),
    "moderate": ("Back with a moderate gloss", partial(_lustre, 1.0)),
    "high": ("Back with a high gloss", partial(_lustre, 2.0)),
}

TILES: Tiles = {
    **tiles_of("body_colour", {s: (t, partial(_back_colour, s)) for s, t in _BODY.items()}, "body"),
    **tiles_of("leg_colour", {s: (t, partial(_legs, s)) for s, t in _LEG.items()}, "legs"),
    **tiles_of("cuticle_lustre", _GLOSS, "body"),
}
