"""The chela from above: hand, fixed finger, movable finger, in true length and width."""

from dataclasses import dataclass

from idkey.figures.drawing import Dot, Group, Item, Line, Part, Patch, group
from idkey.figures.geometry import Outline, Point, Points, bounds, scaled, smooth
from idkey.figures.ink import EDGE, EDGE_WEIGHT, Skin

TOOTHED = 150.0
"""Length from which a chela shows the granules of its cutting edges."""

Profile = tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Form:
    """The build of a chela; lengths are shares of its length, heights only count relative.

    Attributes:
        split: Where the fingers leave the hand.
        inner: (share of the hand, height) of the inner border, base first.
        outer: The same for the outer border.
        bow: How far the fingers arch apart.
        gap: Height of the opening between the fingers.
        ridge: Whether one strong keel runs along the hand.
    """

    split: float
    inner: Profile
    outer: Profile
    bow: float = 0.03
    gap: float = 0.03
    ridge: bool = False


LOBED_STRONGLY = Form(
    split=0.53,
    inner=(
        (0.02, 0.075),
        (0.05, 0.19),
        (0.12, 0.315),
        (0.27, 0.385),
        (0.47, 0.37),
        (0.70, 0.30),
        (0.9, 0.235),
    ),
    outer=((0.06, 0.06), (0.17, 0.14), (0.40, 0.205), (0.66, 0.215), (0.90, 0.18)),
    bow=0.042,
    gap=0.026,
)
LOBED = Form(
    split=0.54,
    inner=(
        (0.03, 0.07),
        (0.08, 0.155),
        (0.18, 0.255),
        (0.34, 0.29),
        (0.54, 0.27),
        (0.76, 0.225),
        (0.93, 0.185),
    ),
    outer=((0.06, 0.06), (0.18, 0.12), (0.40, 0.175), (0.66, 0.18), (0.90, 0.15)),
    bow=0.038,
    gap=0.024,
)
LOBED_WEAKLY = Form(
    split=0.54,
    inner=((0.04, 0.06), (0.12, 0.12), (0.26, 0.19), (0.45, 0.215), (0.66, 0.195), (0.88, 0.155)),
    outer=((0.06, 0.06), (0.20, 0.11), (0.42, 0.15), (0.66, 0.155), (0.90, 0.13)),
    bow=0.034,
    gap=0.022,
)
ROUND = Form(
    split=0.55,
    inner=((0.02, 0.09), (0.08, 0.17), (0.22, 0.23), (0.46, 0.245), (0.7, 0.215), (0.92, 0.15)),
    outer=((0.02, 0.085), (0.08, 0.155), (0.22, 0.215), (0.46, 0.235), (0.7, 0.21), (0.92, 0.155)),
    bow=0.034,
    gap=0.022,
)
DIAMOND = Form(
    split=0.55,
    inner=(
        (0.05, 0.06),
        (0.18, 0.115),
        (0.34, 0.175),
        (0.46, 0.215),
        (0.60, 0.20),
        (0.78, 0.15),
        (0.94, 0.11),
    ),
    outer=(
        (0.05, 0.06),
        (0.18, 0.10),
        (0.34, 0.15),
        (0.48, 0.185),
        (0.62, 0.175),
        (0.80, 0.145),
        (0.94, 0.12),
    ),
    bow=0.032,
    gap=0.02,
    ridge=True,
)
ELONGATE = Form(
    split=0.60,
    inner=((0.03, 0.055), (0.08, 0.10), (0.18, 0.13), (0.40, 0.137), (0.65, 0.135), (0.90, 0.12)),
    outer=((0.03, 0.055), (0.08, 0.095), (0.18, 0.12), (0.40, 0.13), (0.65, 0.132), (0.90, 0.12)),
    bow=0.022,
    gap=0.014,
)
SLENDER = Form(
    split=0.42,
    inner=((0.06, 0.05), (0.20, 0.085), (0.42, 0.118), (0.66, 0.112), (0.92, 0.075)),
    outer=((0.06, 0.05), (0.20, 0.08), (0.42, 0.108), (0.66, 0.108), (0.92, 0.08)),
    bow=0.026,
    gap=0.016,
)


@dataclass(frozen=True, slots=True)
class Claw:
    """The outlines of one chela; x runs from the base at 0 to the tip, y > 0 is the inner side.

    Attributes:
        hand: Manus with the fixed finger.
        fixed: The fixed finger alone.
        finger: The movable finger.
        manus: The manus alone, for what lies on it.
        length: From the base to the tip of the fixed finger.
        width: Greatest width of the manus.
        ridged: Whether one strong keel runs along it.
        web: Where along x the fingers part.
        widest: The two border points that give the width, outer one first.
    """

    hand: Outline
    fixed: Outline
    finger: Outline
    manus: Outline
    length: float
    width: float
    ridged: bool
    web: float
    widest: tuple[Point, Point]


def claw(length: float, width: float, form: Form) -> Claw:
    """A chela of true length and manus width.

    Args:
        length: From the base of the manus to the tip of the fixed finger.
        width: Greatest width of the manus, across that line.
        form: Its build.
    """
    manus = smooth(_manus(form))
    low, high = bounds(manus.flat(12))
    place = scaled(length, width / (high - low).imag)
    ring = manus.placed(place)
    flat = ring.flat(12)
    hand = _hand(form)
    inner = len(hand) - len(form.inner) - 1
    return Claw(
        smooth(hand, sharp=(0, len(form.outer) + 1, len(form.outer) + 2, inner - 4, -1)).placed(
            place
        ),
        smooth(_fixed_alone(form), sharp=(0, 4, -2)).placed(place),
        smooth(_finger(form), sharp=(0, 5, 9, 10)).placed(place),
        ring,
        length,
        width,
        form.ridge,
        (form.split + 0.05) * length,
        (min(flat, key=lambda p: p.imag), max(flat, key=lambda p: p.imag)),
    )


def _borders(form: Form) -> tuple[Points, Points]:
    inner = tuple(complex(f * form.split, y) for f, y in form.inner)
    outer = tuple(complex(f * form.split, -y) for f, y in form.outer)
    return outer, inner


def _web(form: Form) -> tuple[Point, Point]:
    return complex(form.split, -form.outer[-1][1] * 0.6), complex(form.split + 0.04, 0.004)


def _manus(form: Form) -> Points:
    outer, inner = _borders(form)
    hinge, web = _web(form)
    close = (hinge, web + 0.005, complex(form.split + 0.02, 0.55 * inner[-1].imag))
    return (-0.034j, *outer, *close, *reversed(inner), 0.034j)


def _hand(form: Form) -> Points:
    outer, inner = _borders(form)
    hinge, web = _web(form)
    return (-0.034j, *outer, hinge, web, *_fixed(form, inner[-1], web), *reversed(inner), 0.034j)


def _fixed(form: Form, root: Point, web: Point) -> Points:
    tip = complex(1.0, -0.012)
    rail = [_on(web, tip, t, form.gap * 0.5 + form.bow * 0.5) for t in (0.2, 0.5, 0.8)]
    back = [_on(root, tip, t, form.bow + 0.006) for t in (0.8, 0.5, 0.2)]
    return (*rail, tip, *back)


def _fixed_alone(form: Form) -> Points:
    _, inner = _borders(form)
    _, web = _web(form)
    base = (complex(inner[-1].real + 0.05, inner[-1].imag * 0.55),)
    return (web, *_fixed(form, inner[-1], web), inner[-1], *base)


def _on(start: Point, end: Point, share: float, bow: float) -> Point:
    return start + (end - start) * share + 1j * bow * 4 * share * (1 - share) * (0.65 + 0.7 * share)


def _finger(form: Form) -> Points:
    root = complex(form.split - 0.035, -form.outer[-1][1] * 0.98)
    heel = complex(form.split + 0.005, -form.outer[-1][1] * 0.2)
    tip = complex(0.988, -0.03)
    back = [_on(root + 0.03, tip, t, -form.bow - 0.006) for t in (0.06, 0.3, 0.56, 0.8)]
    rail = [_on(heel, tip, t, -form.gap * 0.5 - form.bow * 0.5) for t in (0.8, 0.52, 0.25)]
    return (root, *back, tip, *rail, heel, complex(form.split - 0.05, heel.imag))


def claw_drawing(
    build: Claw, hand: Skin, finger: Skin, *, name: str = "", gloss: float = 1
) -> Group:
    """The chela painted, hand above movable finger, with the keel where there is one.

    Args:
        build: Its outlines.
        hand: Skin of the manus.
        finger: Skin of both fingers.
        name: Prefix of the ids; empty for none.
        gloss: Strength of the light.
    """
    label = name or "claw"
    items: list[Item] = [
        Part(
            outline=build.finger, skin=finger, name=f"{label}_finger" if name else "", gloss=gloss
        ),
        Part(outline=build.hand, skin=hand, name=f"{label}_hand" if name else "", gloss=gloss),
    ]
    if finger != hand:
        items.append(Part(outline=build.fixed, skin=finger, weight=0, gloss=gloss))
        items.append(Line(outline=build.hand, colour=EDGE, weight=EDGE_WEIGHT))
    if build.ridged:
        items += _keel(build, hand)
    if build.length > TOOTHED:
        items += _teeth(build)
    return group(*items, name=name)


def _keel(build: Claw, hand: Skin) -> list[Item]:
    low, high = build.widest
    middle = (low.imag + high.imag) / 2
    ways = ((0.05, -0.02), (0.2, -0.03), (0.34, -0.02), (0.46, 0.02), (0.55, 0.1))
    points = [complex(x * build.length, middle + y * build.width) for x, y in ways]
    below = [p + 0.05j * build.width for p in points[1:-1]]
    ring = smooth((*points, *reversed(below)), sharp=(0, 4))
    return [
        Patch(outline=ring, colour=hand.shade),
        Line(outline=smooth(points, closed=False), colour=hand.detail, weight=EDGE_WEIGHT * 0.8),
    ]


def _teeth(build: Claw) -> list[Item]:
    """Granules on the cutting edges, smaller toward the tips."""
    tip = build.length
    edges = (build.hand, 0.5, -1), (build.finger, -0.5, 1)
    found: list[Item] = []
    for outline, lean, side in edges:
        rail = [p for p in outline.flat(9) if build.web < p.real < tip * 0.97]
        middle = sum(p.imag for p in rail) / len(rail)
        facing = [p for p in rail if (p.imag - middle) * side > 0][::3]
        size = build.length * 0.0058
        found += [
            Dot(at=p + lean * 0.9j, radius=size * (1.25 - 0.6 * p.real / tip), colour=EDGE)
            for p in facing
        ]
    return found
