"""Tiles about carapace, tergites, and the body as a whole."""

from functools import partial

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group, placed
from idkey.figures.fields import scatter
from idkey.figures.geometry import MIRROR, Place, ellipse, moved, smooth, straight
from idkey.figures.ink import (
    EDGE,
    LINE_WEIGHT,
    POINTER,
    SUBJECT,
    blended,
    skin,
)
from idkey.figures.marks import bar
from idkey.figures.rod import rod
from idkey.figures.scorpion import claw as forms
from idkey.figures.scorpion.animal import bristled
from idkey.figures.scorpion.back import (
    Shield,
    shield_drawing,
    shield_outline,
    tergite_outlines,
    tergites_drawing,
)
from idkey.figures.scorpion.claw import claw, claw_drawing
from idkey.figures.scorpion.limbs import chelicera_drawing, leg
from idkey.figures.scorpion.surface import beyond, granules, wrinkles
from idkey.figures.scorpion.tail import segment_drawing
from idkey.figures.tile import PLAIN, SHOWN, Colours, Rows, Tiles, tiles_of


def _setae(count: int, length: float, _: Colours) -> Item:
    tail: list[Item] = []
    ends = [70 + 70j, 130 + 70j, 196 + 70j, 280 + 70j]
    for index in (2, 1, 0):
        tail.append(
            bristled(segment_drawing((ends[index], ends[index + 1]), 44, SHOWN), count, length)
        )
    joints = (72 + 196j, 128 + 152j, 186 + 160j, 236 + 186j, 266 + 206j, 288 + 218j)
    walking = leg(joints, (30, 27, 20, 14, 9), SHOWN)
    return group(*tail, bristled(walking, round(count * 0.7), length * 0.85))


_SHIELD = Shield(length=186, width=196, notch=0.09)
_SHIELD_AT = moved(191 + 36j)


def _relief(kind: str, _: Colours) -> Item:
    ring = shield_outline(_SHIELD).placed(_SHIELD_AT).flat(10)
    base = placed(shield_drawing(_SHIELD, SHOWN), _SHIELD_AT)
    eyes = _SHIELD_AT(complex(0, _SHIELD.eyes * _SHIELD.length))
    if kind == "smooth":
        return base
    if kind == "rugose":
        marks: Item = wrinkles(ring, SHOWN, 13.5, 7)
    else:
        spots = scatter(ring, 11.5, margin=5, jitter=0.34)
        spots = beyond(spots, ring, 27) if kind == "smooth_disc_granular_margins" else spots
        marks = granules([p for p in spots if abs(p - eyes) > 22], SHOWN, 3.1, vary=0.4)
    return group(base, marks, _eyes_again())


def _eyes_again() -> Item:
    return placed(shield_drawing(_SHIELD, SHOWN).items[-1], _SHIELD_AT)


def _front(notch: float, _: Colours) -> Item:
    shield = Shield(length=140, width=190, notch=notch * 1.3, front=0.7, eyes=0.5)
    at = moved(190 + 86j)
    mouth = [
        placed(chelicera_drawing(86, PLAIN, place=side.after(moved(2 + 24j))), at)
        for side in (Place(), MIRROR)
    ]
    ring = shield_outline(shield).placed(at).flat(10)
    edge = [p for p in ring if p.imag < 104 and abs(p.real - 190) < 69]
    edge.sort(key=lambda p: p.real)
    line = Line(outline=straight(edge, closed=False), colour=POINTER, weight=4)
    return group(*mouth, placed(shield_drawing(shield, SHOWN), at), line)


def _carinae(keels: int, _: Colours) -> Item:
    rings = tergite_outlines(206, 172, 80)
    at = moved(190 + 20j)
    drawn = placed(tergites_drawing(rings, SHOWN, keels=keels), at)
    return group(*drawn.items) if isinstance(drawn, Group) else drawn


def _flat(deep: float, _: Colours) -> Item:
    """The trunk from the side, and below it the body cut across."""
    floor, top = 124.0, 124.0 - deep
    body = smooth(
        (
            complex(106, floor - deep * 0.4), complex(112, floor - deep * 0.8),
            complex(138, top + deep * 0.08), complex(160, top), complex(226, top - deep * 0.04),
            complex(262, top + deep * 0.14), complex(276, floor - deep * 0.5),
            complex(268, floor - deep * 0.12), complex(230, floor), complex(150, floor),
            complex(116, floor - deep * 0.08),
        )
    )  # fmt: skip
    legs = [
        leg([complex(x + dx, floor + dy) for dx, dy in way], (11, 10, 8, 6), PLAIN)
        for x, way in ((130, _FORWARD), (146, _FORWARD), (166, _BACKWARD), (184, _BACKWARD))
    ]
    seam = (
        complex(108, floor - deep * 0.34),
        complex(180, floor - deep * 0.3),
        complex(272, floor - deep * 0.36),
    )
    cut = ellipse(190 + 196j, 60, deep * 0.5)
    return group(
        *_behind(deep, floor),
        Part(outline=body, skin=SHOWN),
        *legs,
        Line(outline=smooth(seam, closed=False), colour=SHOWN.detail, weight=LINE_WEIGHT * 1.3),
        *(_plate(x, top, deep) for x in (156, 172, 189, 206, 224, 242, 259)),
        Patch(outline=ellipse(complex(124, top + deep * 0.26), min(3.4, deep * 0.1)), colour=EDGE),
        Part(outline=cut, skin=skin(blended(SUBJECT, "#ffffff", 0.35))),
        bar(196j + 264 - deep * 0.5j, 196j + 264 + deep * 0.5j, tick=5),
    )


_FORWARD = ((0, -3), (-13, 5), (-20, 21), (-30, 25))
_BACKWARD = ((0, -3), (14, 5), (23, 21), (35, 25))


def _behind(deep: float, floor: float) -> list[Item]:
    """Arm and tail, as deep as the body is."""
    share = min(1.0, 0.3 + deep / 90)
    at = complex(116, floor - deep * 0.4)
    elbow = at - complex(22, 5 * share)
    built = claw(50, 8 + 18 * share, forms.LOBED_WEAKLY)
    tail = (at + 156, at + 186 - 10j * share)
    return [
        segment_drawing(tail, 26 * share, PLAIN),
        Part(outline=rod(at, elbow, 18 * share, 20 * share), skin=PLAIN),
        placed(claw_drawing(built, PLAIN, PLAIN), Place(-1 + 0j, 0j, elbow + 3)),
    ]


def _plate(x: float, top: float, deep: float) -> Line:
    ends = (
        complex(x, top + deep * (0.02 if x < 240 else 0.1)),
        complex(x + 5, top + deep * 0.34),
        complex(x + 3, top + deep * 0.64),
    )
    return Line(outline=smooth(ends, closed=False), colour=SHOWN.detail, weight=LINE_WEIGHT * 1.3)


_DEPTH: Rows = {
    "none": ("Body deep, not flattened", partial(_flat, 66.0)),
    "moderate": ("Body somewhat flattened", partial(_flat, 40.0)),
    "extreme": ("Body paper-flat", partial(_flat, 17.0)),
}
_HAIR: Rows = {
    "sparse": ("Few stiff hairs", partial(_setae, 5, 11.0)),
    "moderate": ("A moderate number of stiff hairs", partial(_setae, 15, 16.0)),
    "dense": ("Visibly hairy", partial(_setae, 44, 22.0)),
}
_RELIEF = {
    "smooth": "Carapace smooth",
    "smooth_disc_granular_margins": "Carapace smooth in the middle, granular near its margins",
    "granular": "Carapace granular over most of it",
    "rugose": "Carapace rough",
}
_EDGE: Rows = {
    "straight_or_weak": ("Front edge straight or weakly curved", partial(_front, 0.005)),
    "notched": ("Front edge with a clear notch and two lobes", partial(_front, 0.16)),
}
_KEELS: Rows = {
    "none": ("Tergites without keels", partial(_carinae, 0)),
    "one_median": ("Tergites with one weak keel", partial(_carinae, 1)),
    "several": ("Tergites with several keels", partial(_carinae, 3)),
}

TILES: Tiles = {
    **tiles_of("body_compression", _DEPTH, "body"),
    **tiles_of("body_setation", _HAIR, "metasoma", "legs"),
    **tiles_of(
        "carapace_surface", {s: (t, partial(_relief, s)) for s, t in _RELIEF.items()}, "carapace"
    ),
    **tiles_of("carapace_front", _EDGE, "carapace"),
    **tiles_of("tergite_carinae", _KEELS, "tergites"),
}
