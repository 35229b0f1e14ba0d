"""The whole scorpion from above, put together from its proportions."""

import cmath
import math
from dataclasses import dataclass, field

from idkey.figures.drawing import Group, Item, Line, Part, group, pieces, placed
from idkey.figures.fields import hairs
from idkey.figures.geometry import MIRROR, Outline, Place, Point, moved, smooth
from idkey.figures.ink import EDGE, HAIR_WEIGHT, Skin, blended
from idkey.figures.rod import rod
from idkey.figures.scorpion.back import (
    Shield,
    shield_drawing,
    tergite_outlines,
    tergites_drawing,
)
from idkey.figures.scorpion.claw import LOBED, Form, claw, claw_drawing
from idkey.figures.scorpion.limbs import chelicera_drawing, legs_drawing
from idkey.figures.scorpion.tail import (
    TAPER,
    Sting,
    Tail,
    joints,
    metasoma_drawing,
    sting_drawing,
    sting_hairs,
)

WIDE = 1.04
"""Width of the carapace, in its own lengths."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Arm:
    """The build of a pedipalp; lengths in carapace lengths.

    Attributes:
        femur: Length of the femur.
        patella: Length of the patella.
        chela: Length of the chela.
        thick: Width of femur and patella.
        ratio: Chela length to manus width.
        form: Build of the chela.
        spine: Size of the inner tubercle of the patella, as a share of `thick`.
    """

    femur: float = 0.82
    patella: float = 0.88
    chela: float = 2.0
    thick: float = 0.36
    ratio: float = 2.1
    form: Form = LOBED
    spine: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Build:
    """Proportions of a whole scorpion.

    Attributes:
        length: Front of the carapace to the end of the telson.
        tail: Share of `length` that metasoma and telson take.
        girth: Greatest width of the body, in carapace widths.
        tail_width: Width of the first metasomal segment, in carapace widths.
        taper: Width of each metasomal segment, as a share of the first.
        bends: Turns of the tail, in degrees.
        notch: Depth of the notch in the front edge, as a share of the carapace.
        eyes: Where the median eyes lie, as a share of the carapace.
        keels: Keels on the tergites: 0, 1 or 3.
        arm: The pedipalp.
        vesicle: Share of the telson that the vesicle takes.
        telson_depth: Depth of the vesicle, as a share of the width of segment V.
        tooth: Size of the tubercle below the aculeus, as a share of the vesicle's depth.
        telson_hairs: Hairs of the telson.
        hairs: Hairs per limb segment.
        gloss: Strength of the light.
    """

    length: float
    tail: float = 0.5
    girth: float = 1.14
    tail_width: float = 0.42
    taper: tuple[float, ...] = TAPER
    bends: tuple[float, ...] = (2, 4, 5, 6, 7, 12)
    notch: float = 0.09
    eyes: float = 0.42
    keels: int = 0
    arm: Arm = field(default_factory=Arm)
    vesicle: float = 0.6
    telson_depth: float = 0.85
    tooth: float = 0.0
    telson_hairs: int = 0
    hairs: int = 0
    gloss: float = 1.0

    @property
    def carapace(self) -> float:
        """Length of the carapace; three tenths of what is not tail."""
        return self.length * (1 - self.tail) * 0.3

    @property
    def mesosoma(self) -> float:
        """Length of the seven tergites."""
        return self.length * (1 - self.tail) * 0.7


@dataclass(frozen=True, slots=True, kw_only=True)
class Coat:
    """What each part is painted with."""

    carapace: Skin
    tergites: Skin
    tail: Skin
    telson: Skin
    aculeus: Skin
    arms: Skin
    hand: Skin
    fingers: Skin
    legs: Skin


def coat(skin: Skin) -> Coat:
    """One skin for everything."""
    return Coat(**dict.fromkeys(Coat.__dataclass_fields__, skin))


def animal(build: Build, coat: Coat) -> Group:
    """The animal, front of the carapace at 0, heading up the page.

    Groups are named legs, telson, metasoma, tergites, pedipalp_left, pedipalp_right, chelicerae
    and carapace; the chelae inside the pedipalps chela_left and chela_right.
    """
    size = build.carapace
    width = size * WIDE
    shield = Shield(length=size, width=width, notch=build.notch, eyes=build.eyes)
    tail = tail_of(build)
    points = joints(tail, complex(0, size + build.mesosoma))
    rings = tergite_outlines(build.mesosoma, build.girth * width, tail.width)
    back = tergites_drawing(rings, coat.tergites, keels=build.keels, gloss=build.gloss)
    sides = (("left", MIRROR), ("right", Place()))
    mouth = moved(complex(0.012 * size, 0.12 * size))
    tips = [chelicera_drawing(size * 0.4, coat.arms, place=s.after(mouth)) for _, s in sides]
    return group(
        group(*(legs_of(build, coat, place) for _, place in sides), name="legs"),
        telson_of(build, tail, (points[5], points[6]), coat),
        _haired(group(metasoma_drawing(tail, points, coat.tail), name="metasoma"), build),
        group(placed(back, moved(complex(0, size))), name="tergites"),
        *(pedipalp(build, coat, place=place, side=side) for side, place in sides),
        group(*tips, name="chelicerae"),
        group(
            shield_drawing(shield, coat.carapace, gloss=build.gloss, name="shield"), name="carapace"
        ),
    )


def tail_of(build: Build) -> Tail:
    """Metasoma and telson of that build."""
    return Tail(
        length=build.length * build.tail,
        width=build.tail_width * build.carapace * WIDE,
        taper=build.taper,
        bends=build.bends,
    )


def legs_of(build: Build, coat: Coat, place: Place) -> Item:
    """The legs of one side."""
    return _haired(legs_drawing(build.carapace, coat.legs, place=place), build)


def telson_of(build: Build, tail: Tail, ends: tuple[Point, Point], coat: Coat) -> Group:
    """The telson, lying on its side, from the last joint of the tail to its own end."""
    length = abs(ends[1] - ends[0])
    sting = Sting(
        length=length,
        depth=tail.width * tail.taper[4] * build.telson_depth,
        vesicle=build.vesicle,
        tooth=build.tooth,
    )
    place = Place((ends[1] - ends[0]) / length, 0j, ends[0])
    drawn = sting_drawing(sting, coat.telson, tip=coat.aculeus, place=place)
    hair = sting_hairs(
        sting, place, count=build.telson_hairs, length=length * 0.16, colour=coat.telson.detail
    )
    return group(drawn, hair, name="telson")


def _haired(item: Item, build: Build) -> Item:
    count = round(build.hairs * min(1.0, build.carapace / _HAIRY_FROM))
    return bristled(item, count, build.carapace * 0.15) if count else item


_HAIRY_FROM = 34.0
"""Carapace length from which a drawing has room for all hairs."""


def bristled(item: Item, count: int, length: float) -> Group:
    """`item` with `count` hairs round each of its parts, of that length."""
    found: list[Item] = []
    for piece in pieces((item,)):
        found.append(piece)
        if isinstance(piece, Part) and piece.outline.closed:
            found += [
                Line(outline=hair, colour=_hair_colour(piece.skin), weight=HAIR_WEIGHT, haloed=True)
                for hair in hairs(piece.outline, count, length=length)
            ]
    return Group(tuple(found), item.name if isinstance(item, Group) else "")


def _hair_colour(skin: Skin) -> str:
    return blended(skin.shade, EDGE, 0.6)


def pedipalp(build: Build, coat: Coat, *, place: Place, side: str) -> Group:
    """One pedipalp, its arm below its claw."""
    size, arm = build.carapace, build.arm
    shoulder = complex(0.3, 0.2) * size
    elbow = shoulder + cmath.rect(arm.femur * size, math.radians(-32))
    wrist = elbow + cmath.rect(arm.patella * size, math.radians(-80))
    tip = wrist + cmath.rect(arm.chela * size, math.radians(-106))
    thick = arm.thick * size
    joint = (wrist - elbow) / abs(wrist - elbow)
    segments = [
        rod(elbow, wrist, thick * 0.9, thick * 1.0, belly=0.12),
        rod(shoulder, elbow, thick * 0.78, thick * 0.92, belly=0.08),
    ]
    parts: list[Item] = [Part(outline=ring.placed(place), skin=coat.arms) for ring in segments]
    if arm.spine:
        parts.insert(
            0, Part(outline=_spine(elbow, joint, thick, arm.spine).placed(place), skin=coat.arms)
        )
    chela = arm.chela * size
    built = claw(chela, chela / arm.ratio, arm.form)
    hand = placed(
        claw_drawing(built, coat.hand, coat.fingers, name=f"chela_{side}", gloss=build.gloss),
        place.after(Place(0j, (tip - wrist) / chela, wrist)),
    )
    return group(_haired(group(*parts), build), _haired(hand, build), name=f"pedipalp_{side}")


def _spine(elbow: Point, along: Point, thick: float, size: float) -> Outline:
    inner = along * -1j
    root = elbow + along * thick * 0.7 + inner * thick * 0.36
    reach = thick * size
    points = (root - along * reach * 0.6, root + inner * reach, root + along * reach * 0.6)
    return smooth(points, sharp=(0, 1, 2))
