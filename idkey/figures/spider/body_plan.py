"""The tarantula as a body plan: its knobs, and the drawing they give, from above or below."""

from dataclasses import replace

from idkey.figures.drawing import Group
from idkey.figures.ink import UNKNOWN, Skin, skin
from idkey.figures.plan import COLOUR, Plan, Values, choice, number
from idkey.figures.spider.abdomen import Belly
from idkey.figures.spider.animal import Build, Coat, animal
from idkey.figures.spider.below import underside
from idkey.figures.spider.body import Shield
from idkey.figures.spider.leg import PALP_SEGMENTS, SEGMENTS, Mark, Pelt, Pelts
from idkey.figures.spider.tiles_body import ORNATE, SHIELDS
from idkey.figures.spider.tiles_under import FIRST_FEMUR, FIRST_TIBIA, LAST_FEMUR
from idkey.figures.spider.tones import (
    BLACK,
    BLUE,
    HAIR,
    KNEES,
    ORANGE,
    SHADE_HAIR,
    SHINS,
)

KNOBS = {
    "length": number(5, 200),
    "side": choice("above", "below"),
    "legs": COLOUR,
    "patella": choice(*KNEES),
    "tibia": choice(*SHINS),
    "metatarsus": choice(*SHINS),
    "brush": number(0.1, 1.2),
    "carapace": choice(*SHIELDS, *ORNATE),
    "abdomen": COLOUR,
    "abdomen_hair": COLOUR,
    "curl": number(0, 0.3),
    "folio": choice("full", "half"),
    "blue": choice("yes", "no"),
    "leg_1": COLOUR,
    "leg_4": COLOUR,
    "alike": choice("yes", "no"),
    "femur_1": choice(*FIRST_FEMUR),
    "tibia_1": choice(*FIRST_TIBIA),
    "femur_4": choice(*LAST_FEMUR),
    "belly_band": choice("yes", "no"),
}

_OPEN = "open"
"""Stands for a choice that is not known."""
_BAND = "#f0e4cb"


def draw(values: Values, length: float) -> Group:
    """The tarantula with a body of `length`, the front of its carapace at 0, heading up."""
    build = Build(length=length)
    hairs = 7 if build.carapace > _ROOMY else 3
    if values.choice("blue", "no") == "yes":
        return animal(build, _one_colour(BLUE, hairs))
    if values.choice("side", "above") == "below":
        fang = skin("#4a3020")
        band = _BAND if values.choice("belly_band", "no") == "yes" else ""
        return underside(build, _coat_below(values, hairs), fang=fang, band=band)
    return animal(build, _coat_above(values, hairs))


_ROOMY = 36.0
"""Carapace length from which a drawing has room for all hairs."""


def _one_colour(colour: str, hairs: int) -> Coat:
    ground = skin(colour)
    legs = {name: Pelt(skin=ground, hair=HAIR, hairs=hairs) for name in SEGMENTS}
    return Coat(
        shield=Shield(skin=ground, rays="#8fb0d6", rays_reach=0.7),
        jaws=ground,
        belly=Belly(skin=ground),
        legs={"leg": legs},
        palps={name: legs[name] for name in PALP_SEGMENTS},
    )


def _coat_above(values: Values, hairs: int) -> Coat:
    ground = values.skin("legs")
    length = values.number("brush", 0.32)
    count = round(hairs * (3 if length > 0.5 else 1))

    def pelt(row: tuple[str, tuple[Mark, ...]] | None) -> Pelt:
        shown = UNKNOWN if row is None else skin(row[0])
        return Pelt(skin=shown, marks=row[1] if row else (), hair=_tint(shown), hairs=hairs)

    root = Pelt(skin=ground, hair=_tint(ground), hairs=count, length=length)
    legs = {
        "femur": root,
        "patella": pelt(KNEES.get(values.choice("patella", _OPEN))),
        "tibia": pelt(SHINS.get(values.choice("tibia", _OPEN))),
        "metatarsus": _furred(values, pelt(SHINS.get(values.choice("metatarsus", _OPEN)))),
        "tarsus": replace(root, length=0.32, hairs=hairs),
    }
    return Coat(
        shield={**SHIELDS, **ORNATE}.get(values.choice("carapace", _OPEN), Shield(skin=UNKNOWN)),
        jaws=UNKNOWN,
        belly=_belly(values),
        legs={"leg": legs},
        palps={name: legs[name] for name in PALP_SEGMENTS},
    )


def _furred(values: Values, pelt: Pelt) -> Pelt:
    if values.choice("metatarsus", _OPEN) != "dark_with_long_orange_hairs":
        return pelt
    return replace(pelt, hair=ORANGE, hairs=pelt.hairs * 2, length=0.55)


def _belly(values: Values) -> Belly:
    hair = values.skin("abdomen_hair")
    ground = values.skin("abdomen")
    return Belly(
        skin=ground,
        hair="" if hair.hatched else hair.fill,
        curl=values.number("curl", 0.0),
        folio=values.choice("folio", ""),
        folio_colours=("#d3cdbd", "#2f2b28"),
    )


def _coat_below(values: Values, hairs: int) -> Coat:
    first = _first_leg(values, hairs)
    last = _leg(values.skin("leg_4"), hairs, femur=LAST_FEMUR.get(values.choice("femur_4", _OPEN)))
    middle = first if values.choice("alike", "no") == "yes" else _leg(UNKNOWN, hairs)
    if values.choice("alike", "no") == "yes" and not values.knows("leg_4"):
        last = first
    return Coat(
        shield=Shield(skin=UNKNOWN),
        jaws=UNKNOWN,
        belly=Belly(skin=UNKNOWN),
        legs={"leg": middle, "leg_1": first, "leg_2": middle, "leg_3": middle, "leg_4": last},
        palps={name: first[name] for name in PALP_SEGMENTS},
    )


def _first_leg(values: Values, hairs: int) -> Pelts:
    return _leg(
        values.skin("leg_1"),
        hairs,
        femur=FIRST_FEMUR.get(values.choice("femur_1", _OPEN)),
        tibia=FIRST_TIBIA.get(values.choice("tibia_1", _OPEN)),
    )


_Row = tuple[str, tuple[Mark, ...]] | None


def _leg(ground: Skin, hairs: int, *, femur: _Row = None, tibia: _Row = None) -> Pelts:
    """A leg of one ground with the known marks; a femur whose marks are open is dashed."""
    base = Pelt(skin=ground, hair=_tint(ground), hairs=hairs)
    thigh = replace(base, skin=replace(ground, dashed=True))
    if femur is not None:
        shown = skin(BLACK) if femur[0] == BLACK else ground
        thigh = replace(base, skin=shown, marks=femur[1], hair=_tint(shown))
    shin = base if tibia is None else replace(base, marks=tibia[1])
    return dict.fromkeys(SEGMENTS, base) | {"femur": thigh, "tibia": shin}


def _tint(ground: Skin) -> str:
    return HAIR if ground.detail > ground.fill else SHADE_HAIR


PLAN = Plan(
    knobs=KNOBS,
    draw=draw,
    parts=("legs", "palps", "chelicerae", "abdomen"),
    reach=complex(2.5, 2.55),
)
