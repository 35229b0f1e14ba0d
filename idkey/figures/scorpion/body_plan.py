"""The scorpion as a body plan: its knobs, and the drawing they give."""

from dataclasses import replace

from idkey.figures.drawing import Group, Item, Part, group, pieces
from idkey.figures.fields import scatter
from idkey.figures.ink import Skin, blended, skin
from idkey.figures.plan import COLOUR, Plan, Values, choice, number
from idkey.figures.scorpion import claw as forms
from idkey.figures.scorpion.animal import Arm, Build, Coat, animal
from idkey.figures.scorpion.claw import Form
from idkey.figures.scorpion.surface import granules
from idkey.figures.scorpion.tail import TAPER

FORMS: dict[str, Form] = {
    "lobed_strongly": forms.LOBED_STRONGLY,
    "lobed": forms.LOBED,
    "lobed_weakly": forms.LOBED_WEAKLY,
    "round": forms.ROUND,
    "diamond": forms.DIAMOND,
    "elongate": forms.ELONGATE,
    "slender": forms.SLENDER,
}

KNOBS = {
    "length": number(1, 1000),
    "carapace": COLOUR,
    "tergites": COLOUR,
    "tail": COLOUR,
    "telson": COLOUR,
    "arms": COLOUR,
    "hand": COLOUR,
    "fingers": COLOUR,
    "legs": COLOUR,
    "claw_ratio": number(1.3, 8),
    "claw_form": choice(*FORMS),
    "claw_length": number(1.2, 2.6),
    "arm_length": number(0.7, 1.7),
    "arm_thickness": number(0.2, 0.5),
    "patella_spine": number(0, 0.8),
    "hand_relief": choice("smooth", "granular"),
    "carapace_relief": choice("smooth", "granular"),
    "tail_share": number(0.3, 0.7),
    "tail_width": number(0.25, 0.9),
    "telson_width": number(0.4, 1.4),
    "vesicle": number(0.3, 0.75),
    "tooth": number(0, 0.5),
    "telson_hairs": number(0, 60),
    "hairs": number(0, 40),
    "girth": number(0.8, 1.6),
    "notch": number(0, 0.25),
    "eyes": number(0.2, 0.75),
    "keels": number(0, 3),
    "gloss": number(0, 2),
}


def draw(values: Values, length: float) -> Group:
    """The scorpion with a body of `length`, the front of its carapace at 0, heading up."""
    build = _build(values, length)
    drawn = animal(build, _coat(values))
    return group(*(_with_relief(item, values, build) for item in drawn.items))


def _build(values: Values, length: float) -> Build:
    number_of = values.number
    stout = number_of("tail_width", 0.46)
    share = number_of("arm_length", 1.0)
    arm = Arm(
        femur=0.82 * share,
        patella=0.88 * share,
        chela=number_of("claw_length", 1.9) * share,
        thick=number_of("arm_thickness", 0.35),
        ratio=number_of("claw_ratio", 2.5),
        form=FORMS[values.choice("claw_form", "lobed_weakly")],
        spine=number_of("patella_spine", 0.0),
    )
    return Build(
        length=length,
        tail=number_of("tail_share", 0.5),
        girth=number_of("girth", 1.16),
        tail_width=stout,
        taper=(1.0, 1.03, 1.05, 1.03, 0.92) if stout > 0.6 else TAPER,
        notch=number_of("notch", 0.05),
        eyes=number_of("eyes", 0.42),
        keels=round(number_of("keels", 0)),
        arm=arm,
        vesicle=number_of("vesicle", 0.6),
        telson_depth=number_of("telson_width", 0.85),
        tooth=number_of("tooth", 0.0),
        telson_hairs=round(number_of("telson_hairs", 0)),
        hairs=round(number_of("hairs", 0)),
        gloss=number_of("gloss", 1.0),
    )


def _coat(values: Values) -> Coat:
    telson = values.skin("telson", dashed=not values.knows("vesicle"))
    hand = values.skin("hand", dashed=not values.knows("claw_ratio"))
    return Coat(
        carapace=values.skin("carapace"),
        tergites=values.skin("tergites"),
        tail=values.skin("tail", dashed=not values.knows("tail_width")),
        telson=telson,
        aculeus=telson if telson.hatched else _tip(telson),
        arms=values.skin("arms"),
        hand=hand,
        fingers=values.skin("fingers", dashed=hand.dashed),
        legs=values.skin("legs"),
    )


def _tip(telson: Skin) -> Skin:
    return replace(skin(blended(telson.fill, "#2a1408", 0.62)), dashed=telson.dashed)


def _with_relief(item: Item, values: Values, build: Build) -> Item:
    if not isinstance(item, Group):
        return item
    if item.name == "carapace" and values.choice("carapace_relief", "smooth") == "granular":
        return Group((*item.items, _grains(item, "", build.carapace)), item.name)
    if item.name.startswith("pedipalp") and values.choice("hand_relief", "smooth") == "granular":
        return Group((*item.items, _grains(item, "_hand", build.carapace)), item.name)
    return item


def _grains(item: Group, suffix: str, size: float) -> Group:
    part = next(p for p in pieces(item.items) if isinstance(p, Part) and p.name.endswith(suffix))
    spots = scatter(part.outline.flat(6), size * 0.09, margin=size * 0.05)
    return granules(spots, part.skin, size * 0.022)


PLAN = Plan(
    knobs=KNOBS,
    draw=draw,
    parts=(
        "legs",
        "telson",
        "metasoma",
        "tergites",
        "pedipalp_left",
        "pedipalp_right",
        "chelicerae",
        "carapace",
    ),
    reach=complex(1.05, 1.72),
)
