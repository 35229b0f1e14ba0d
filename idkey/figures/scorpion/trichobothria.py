"""Maps of the trichobothria: cups on patella and chela, in their usual groups.

Source: numbers and groups of the patterns A and C after Vachon 1974, Bull. Mus. natn. Hist. nat.
Paris (3) 140 (Zool. 104): 857-958 (cited from memory): patella A 5 d, 1 i, 7 e; patella C 2 d,
1 i, 3 v, 13 e; chela C 26, of which 4 ventral and 2 internal. Places are schematic.
"""

from idkey.figures.drawing import Dot, Group, Item, Line, Part, group
from idkey.figures.geometry import Outline, Point, moved, scaled, smooth
from idkey.figures.ink import EDGE, LINE_WEIGHT, Skin

Spots = tuple[Point, ...]

PATELLA_E_A: Spots = (
    0.13 - 0.2j,
    0.15 + 0.16j,
    0.33 - 0.24j,
    0.35 + 0.1j,
    0.56 - 0.1j,
    0.73 + 0.08j,
    0.9 - 0.12j,
)
"""External face of a patella of type A: 7."""
PATELLA_E_C: Spots = (
    0.1 - 0.26j, 0.12 + 0.02j, 0.17 - 0.12j, 0.18 + 0.22j, 0.26 + 0.04j, 0.37 - 0.28j, 0.41 + 0.14j,
    0.55 - 0.22j, 0.59 + 0.16j, 0.72 - 0.06j, 0.86 - 0.28j, 0.89 + 0.0j, 0.86 + 0.24j,
)  # fmt: skip
"""External face of a patella of type C: 13."""
PATELLA_E_MORE: Spots = (
    0.33 - 0.08j,
    0.47 - 0.04j,
    0.66 - 0.28j,
    0.66 + 0.3j,
    0.78 + 0.2j,
    0.49 + 0.3j,
)
"""Where extra ones may stand on it."""
PATELLA_V_C: Spots = (0.2 - 0.12j, 0.52 - 0.2j, 0.86 - 0.14j)
"""Ventral face of a patella of type C: 3."""
PATELLA_V_MORE: Spots = (
    0.31 - 0.16j,
    0.41 - 0.18j,
    0.63 - 0.2j,
    0.74 - 0.18j,
    0.3 + 0.12j,
    0.6 + 0.1j,
)
"""Where extra ones may stand on it."""
CHELA_E: Spots = (
    0.06 + 0.15j, 0.09 + 0.0j, 0.11 - 0.14j, 0.18 - 0.22j, 0.33 + 0.28j,
    0.43 + 0.24j, 0.455 + 0.13j, 0.46 + 0.02j, 0.445 - 0.09j, 0.415 - 0.19j,
)  # fmt: skip
"""Outer face of a manus of type C, in chela lengths and manus widths: Eb 3, Esb, Est, Et 5."""
CHELA_V: Spots = (0.085 - 0.27j, 0.17 - 0.36j, 0.28 - 0.39j, 0.38 - 0.31j)
"""Lower edge of it: V 4."""
CHELA_D: Spots = (0.12 + 0.3j, 0.25 + 0.4j)
"""Upper edge of it: Db, Dt."""
FINGER: Spots = (
    0.58 + 0.085j, 0.66 + 0.09j, 0.745 + 0.09j, 0.83 + 0.08j,
    0.57 + 0.21j, 0.645 + 0.2j, 0.725 + 0.18j, 0.81 + 0.15j,
)  # fmt: skip
"""Fixed finger: eb, esb, est, et below; db, dsb, dst, dt above."""
FINGER_I: Spots = (0.56 + 0.14j, 0.63 + 0.14j)
"""Inner face of the fixed finger: ib, it."""


MARKED = "#a02a0a"
"""Cups to look at: redder than the outline and dark enough to stand out of the subject."""


def cup(at: Point, colour: str = EDGE, size: float = 3.7, *, full: bool = False) -> Group:
    """One trichobothrium: a wide cup with a fine hair; a full one is beyond the usual number."""
    hair = smooth((at, at + (2 - 6j), at + (5 - 11j)), closed=False)
    return group(
        Line(outline=hair, colour=colour, weight=LINE_WEIGHT, haloed=True),
        Dot(at=at, radius=size, colour=colour),
        Dot(at=at, radius=size * (0.0 if full else 0.62), colour="#fbf3e2"),
        Dot(at=at, radius=size * 0.26, colour=colour),
    )


def face_outline(length: float, width: float) -> Outline:
    """One face of a patella along x from 0 to `length`, its middle at y = 0."""
    points = (
        -0.36j, 0.05 - 0.46j, 0.3 - 0.5j, 0.7 - 0.5j, 0.95 - 0.44j, 1 - 0.34j,
        1.01 + 0.1j, 0.99 + 0.36j, 0.9 + 0.46j, 0.5 + 0.5j, 0.1 + 0.44j, 0.0 + 0.3j,
    )  # fmt: skip
    return smooth(points).placed(scaled(length, width))


def face_drawing(
    corner: Point, size: tuple[float, float], skin: Skin, spots: Spots, extra: Spots = ()
) -> Group:
    """One face of a patella with its cups.

    Args:
        corner: Where its base meets its middle line.
        size: Length and width.
        skin: What it is painted with.
        spots: Its cups, in lengths and widths.
        extra: Cups beyond the usual number.
    """
    place = moved(corner).after(scaled(*size))
    cups: list[Item] = [cup(place(at)) for at in spots]
    cups += [cup(place(at), MARKED, 4.6, full=True) for at in extra]
    return group(Part(outline=face_outline(*size).placed(moved(corner)), skin=skin), *cups)
