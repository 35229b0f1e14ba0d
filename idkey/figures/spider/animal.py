"""The whole tarantula from above, put together from its proportions."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from idkey.figures.drawing import Group, Item, Part, group, placed
from idkey.figures.geometry import MIRROR, Place, moved
from idkey.figures.ink import Skin
from idkey.figures.rod import rod
from idkey.figures.spider.abdomen import Belly, abdomen_drawing, spinnerets_drawing
from idkey.figures.spider.body import Shield, jaws_drawing, shield_drawing
from idkey.figures.spider.leg import (
    LEG_COURSES,
    PALP_COURSE,
    PALP_SEGMENTS,
    Limb,
    Pelts,
    limb_drawing,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Build:
    """Proportions of a tarantula.

    Attributes:
        length: Front of the carapace to the end of the abdomen.
        abdomen: Length of the abdomen, in carapace lengths.
        legs: Length of the legs, against the usual one.
        thick: Width of the femora, in carapace lengths.
    """

    length: float
    abdomen: float = 1.28
    legs: float = 1.0
    thick: float = 0.235

    @property
    def carapace(self) -> float:
        """Length of the carapace."""
        return self.length / (1 + self.abdomen * 0.97)


@dataclass(frozen=True, slots=True, kw_only=True)
class Coat:
    """What each part is painted with.

    Attributes:
        shield: The carapace.
        jaws: The chelicerae.
        belly: The abdomen.
        legs: Pelts of the legs by leg name; ``"leg"`` stands for those that are not named.
        palps: Pelts of the palps.
    """

    shield: Shield
    jaws: Skin
    belly: Belly
    legs: Mapping[str, Pelts] = field(default_factory=dict)
    palps: Pelts = field(default_factory=dict)


def animal(build: Build, coat: Coat) -> Group:
    """The animal, front of the carapace at 0, heading up the page.

    Groups are named legs, palps, chelicerae, abdomen and carapace.
    """
    size = build.carapace
    rear = complex(0, size * 0.97)
    end = rear + complex(0, size * build.abdomen)
    sides = (MIRROR, Place())
    return group(
        group(*(leg for side in sides for leg in legs_of(build, coat, side)), name="legs"),
        group(*(palp_of(build, coat, side) for side in sides), name="palps"),
        jaws_drawing(size, coat.jaws, name="chelicerae"),
        group(
            spinnerets_drawing(size, end, coat.belly.skin),
            placed(abdomen_drawing(size, build.abdomen, coat.belly), moved(rear)),
            name="abdomen",
        ),
        group(shield_drawing(size, coat.shield, name="shield"), name="carapace"),
    )


def legs_of(build: Build, coat: Coat, side: Place) -> list[Item]:
    """The four legs of one side, the hindmost first."""
    found: list[Item] = []
    for name in ("leg_4", "leg_3", "leg_2", "leg_1"):
        course = [complex(*point) for point in LEG_COURSES[name]]
        joints = [side((course[0] + (p - course[0]) * build.legs) * build.carapace) for p in course]
        limb = Limb(joints=tuple(joints), width=build.thick * build.carapace)
        pelts = coat.legs.get(name) or coat.legs["leg"]
        found.append(_coxa(build, limb, pelts["femur"].skin, side))
        found.append(limb_drawing(limb, pelts))
    return found


def palp_of(build: Build, coat: Coat, side: Place) -> Group:
    """The palp of one side."""
    joints = tuple(side(complex(*point) * build.carapace) for point in PALP_COURSE)
    limb = Limb(
        joints=joints,
        width=build.thick * 0.86 * build.carapace,
        names=PALP_SEGMENTS,
        widths=(1.0, 0.95, 0.88, 0.84),
    )
    return limb_drawing(limb, coat.palps)


def _coxa(build: Build, limb: Limb, ground: Skin, side: Place) -> Part:
    """The root of a leg, which shows beside the carapace."""
    root = side(0.5j * build.carapace)
    start = root + (limb.joints[0] - root) * 0.35
    end = limb.joints[0] + (limb.joints[1] - limb.joints[0]) * 0.08
    return Part(outline=rod(start, end, limb.width * 0.95, limb.width), skin=ground)
