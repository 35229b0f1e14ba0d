"""Tiles about the arm of the pedipalp, and about the two sexes side by side."""

from functools import partial

from idkey.figures.drawing import Group, Item, Part, group, placed
from idkey.figures.geometry import Outline, Place, Point, smooth
from idkey.figures.ink import Skin
from idkey.figures.marks import arrow, female, male
from idkey.figures.rod import rod
from idkey.figures.scorpion import claw as forms
from idkey.figures.scorpion.claw import Form, claw, claw_drawing
from idkey.figures.scorpion.tiles_claw import on_page
from idkey.figures.tile import PLAIN, SHOWN, Colours, Rows, Tiles, tiles_of


def arm(
    joints: tuple[Point, Point, Point], chela: tuple[float, float, Form], thick: float, paint: Skin
) -> Group:
    """A stretched pedipalp: femur, patella, chela.

    Args:
        joints: Base of the femur, of the patella and of the chela.
        chela: Length, length to width and build of the chela; it runs on to the right.
        thick: Width of femur and patella.
        paint: Skin of all of it.
    """
    built = claw(chela[0], chela[0] / chela[1], chela[2])
    parts = [
        Part(outline=rod(joints[1], joints[2], thick * 0.95, thick, belly=0.1), skin=paint),
        Part(outline=rod(joints[0], joints[1], thick * 0.85, thick * 0.95, belly=0.06), skin=paint),
    ]
    return group(*parts, placed(claw_drawing(built, paint, paint), on_page(joints[2])))


def _pair(longer: bool, _: Colours) -> Item:
    female_arm = arm((70 + 180j, 112 + 164j, 158 + 170j), (106, 2.1, forms.LOBED), 24, PLAIN)
    if longer:
        male_arm = arm((70 + 76j, 126 + 52j, 188 + 60j), (126, 3.4, forms.ELONGATE), 21, SHOWN)
    else:
        male_arm = arm((70 + 72j, 112 + 56j, 158 + 62j), (106, 2.1, forms.LOBED), 24, SHOWN)
    return group(male_arm, female_arm, male(84 + 110j, 30), female(82 + 212j, 30))


def patella_outline(joint: Point, wrist: Point, thick: float, spine: float) -> Outline:
    """The patella from above, with its inner tubercle on the upper side of the page.

    Args:
        joint: Its base.
        wrist: Its end.
        thick: Its width.
        spine: Height of the tubercle, as a share of `thick`.
    """
    length = abs(wrist - joint)
    high = spine * thick
    points = (
        complex(0, -0.3 * thick),
        complex(0.05 * length, -0.46 * thick),
        complex(0.15 * length, -0.5 * thick),
        complex(0.19 * length, -0.5 * thick - high * 0.55),
        complex(0.24 * length, -0.5 * thick - high),
        complex(0.33 * length, -0.54 * thick - high * 0.25),
        complex(0.46 * length, -0.56 * thick),
        complex(0.75 * length, -0.54 * thick),
        complex(0.95 * length, -0.4 * thick),
        complex(length, -0.16 * thick),
        complex(length, 0.2 * thick),
        complex(0.9 * length, 0.44 * thick),
        complex(0.5 * length, 0.52 * thick),
        complex(0.12 * length, 0.44 * thick),
        complex(0, 0.24 * thick),
    )
    ring = smooth(points, sharp=(4,) if spine > 0.1 else ())
    return ring.placed(Place((wrist - joint) / length, 0j, joint))


def _spine(size: float, _: Colours) -> Item:
    joint, wrist = 110 + 164j, 190 + 134j
    built = claw(118, 62, forms.LOBED)
    ring = patella_outline(joint, wrist, 52, size)
    along = (wrist - joint) / abs(wrist - joint)
    tip = joint + along * (0.24 * abs(wrist - joint)) - along * 1j * (26 + size * 52 + 5)
    return group(
        Part(outline=rod(64 + 222j, joint + 2, 38, 42, belly=0.05), skin=PLAIN),
        placed(claw_drawing(built, PLAIN, PLAIN), on_page(wrist, -16)),
        Part(outline=ring, skin=SHOWN),
        arrow(tip, 66, 34),
    )


_SEXES: Rows = {
    "absent": ("Arms of both sexes alike", partial(_pair, False)),
    "present": ("Arms of the male longer and slimmer", partial(_pair, True)),
}
_SPINES: Rows = {
    "absent_or_weak": ("No tubercle inside the patella, or a weak one", partial(_spine, 0.05)),
    "pronounced": ("A spine-like tubercle inside the patella", partial(_spine, 0.52)),
}

TILES: Tiles = {
    **tiles_of("male_pedipalp_elongation", _SEXES, "chela", "patella", "femur"),
    **tiles_of("patella_internal_tubercle", _SPINES, "patella"),
}
