"""The whole scorpion from below."""

from dataclasses import replace

from idkey.figures.drawing import Group, Item, Line, Part, group, placed
from idkey.figures.geometry import MIRROR, Outline, Place, mirrored, moved, scaled, smooth
from idkey.figures.ink import Skin
from idkey.figures.scorpion.animal import (
    WIDE,
    Build,
    Coat,
    legs_of,
    pedipalp,
    tail_of,
    telson_of,
)
from idkey.figures.scorpion.below import (
    PENTAGON,
    Comb,
    comb_drawing,
    coxae_drawing,
    operculum_drawing,
)
from idkey.figures.scorpion.limbs import chelicera_drawing
from idkey.figures.scorpion.tail import joints, metasoma_drawing

_SHARES = (0.24, 0.18, 0.19, 0.19, 0.2)
"""Share of the belly that each sternite takes, third to seventh."""


def underside(build: Build, coat: Coat, *, teeth: Skin) -> Group:
    """The animal from below, front of the carapace at 0, heading up the page.

    Args:
        build: Its proportions.
        coat: What it is painted with; the carapace's skin goes to coxae and operculum, the
            tergites' to the sternites.
        teeth: Skin of the pectinal teeth.

    Returns:
        Groups named legs, telson, metasoma, sternites, pedipalp_left, pedipalp_right,
        chelicerae, coxae, operculum and pectines; inside the coxae the part sternum.
    """
    size = build.carapace
    tail = tail_of(build)
    points = joints(tail, complex(0, size + build.mesosoma))
    sides = (("left", MIRROR), ("right", Place()))
    mouth = moved(complex(0.012 * size, 0.12 * size))
    tips = [chelicera_drawing(size * 0.4, coat.arms, place=s.after(mouth)) for _, s in sides]
    chest = scaled(size * 0.00565, size * 0.0079)
    comb = Comb(teeth=14, length=size * 0.66, depth=size * 0.17)
    foot = complex(0.075, 1.24) * size
    combs = [
        comb_drawing(comb, coat.carapace, teeth, place=place.after(moved(foot)))
        for _, place in sides
    ]
    return group(
        group(*(legs_of(build, coat, place) for _, place in sides), name="legs"),
        telson_of(build, tail, (points[5], points[6]), coat),
        group(metasoma_drawing(tail, points, coat.tail), name="metasoma"),
        group(*_sternites(build, coat.tergites), name="sternites"),
        *(pedipalp(build, coat, place=place, side=side) for side, place in sides),
        group(*tips, name="chelicerae"),
        _chest(build, coat.carapace),
        group(*combs, name="pectines"),
        group(placed(coxae_drawing(PENTAGON, (coat.carapace, coat.carapace)), chest), name="coxae"),
        group(placed(operculum_drawing(coat.carapace), chest), name="operculum"),
    )


def _chest(build: Build, skin: Skin) -> Part:
    """The soft skin between the plates."""
    half = (0.12j, 0.28 + 0.14j, 0.46 + 0.55j, 0.52 + 1.0j, 0.5 + 1.3j, 1.36j)
    ring = smooth(mirrored([p * build.carapace for p in half]))
    return Part(outline=ring, skin=replace(skin, fill=skin.shade), shaded=False)


def _sternites(build: Build, skin: Skin) -> list[Item]:
    size = build.carapace
    top, half = size * 1.02, build.girth * size * WIDE / 2
    room = size + build.mesosoma - top
    found: list[Item] = []
    for index, share in enumerate(_SHARES):
        tall = share * room
        end = half * (0.98, 1.0, 0.99, 0.95, 0.62)[index]
        ring = _sternite(half * (0.86 if index == 0 else 0.95), end, tall)
        place = moved(complex(0, top))
        drawn = [
            Part(outline=ring.placed(place), skin=skin),
            *_slits(half, tall, index, skin, place),
        ]
        found = [*drawn, *found]
        top += tall
    return found


def _sternite(start: float, end: float, tall: float) -> Outline:
    right = (
        complex(0, -tall * 0.2),
        complex(start * 0.86, -tall * 0.2),
        complex(max(start, end), tall * 0.45),
        complex(end, tall * 0.92),
        complex(end * 0.8, tall * 1.03),
        complex(0, tall * 1.05),
    )
    return smooth(mirrored(right))


def _slits(half: float, tall: float, index: int, skin: Skin, place: Place) -> list[Item]:
    """Openings of the book lungs on the third to sixth sternite."""
    if index == 4:
        return []
    start, end = complex(half * 0.6, tall * 0.62), complex(half * 0.74, tall * 0.52)
    way = smooth((start, end), closed=False)
    return [
        Line(outline=way.placed(place.after(side)), colour=skin.detail, weight=1.6)
        for side in (Place(), MIRROR)
    ]
