"""How one animal's picture differs from the drawing of a state: turned, bent, lighter, mirrored.

Only what no character is about is changed, and by little: proportions by under a tenth, so that a
robust claw stays robust.
"""

import cmath
import colorsys
import math
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from idkey.engine.simulate import Chance

STRETCH = 0.04
"""Most by which one direction is longer than drawn."""

BEND = 0.018
"""Most by which a wave shifts a point, as a share of the paper."""

TURN = 14.0
"""Most degrees a picture is turned to either side."""

LIGHTER = 0.05
"""Most by which all colours are lighter or darker, on a scale of 1."""

HUE = 0.012
"""Most by which all hues turn, on a circle of 1."""

_MARGIN = 6.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Wave:
    """A slow wave over the paper that bends what is drawn.

    Attributes:
        reach: How far it shifts, as a share of the paper's width.
        length: Waves per paper width.
        phase: Where it starts, in radians.
    """

    reach: float
    length: float
    phase: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Variation:
    """The picture of one animal.

    Attributes:
        mirrored: Whether left and right are exchanged.
        degrees: How far it is turned, clockwise.
        stretch: Factor on the width.
        across: Wave along the height that shifts sideways.
        along: Wave along the width that shifts up and down.
        lighter: Added to the lightness of every colour.
        hue: Added to the hue of every colour.
    """

    mirrored: bool = False
    degrees: float = 0.0
    stretch: float = 1.0
    across: Wave = Wave(reach=0, length=1, phase=0)
    along: Wave = Wave(reach=0, length=1, phase=0)
    lighter: float = 0.0
    hue: float = 0.0


NONE = Variation()


def variation(chance: Chance) -> Variation:
    """A variation at random, within the bounds above."""

    def wave() -> Wave:
        return Wave(
            reach=float(chance.uniform(-BEND, BEND)),
            length=float(chance.uniform(0.6, 1.6)),
            phase=float(chance.uniform(0, 2 * math.pi)),
        )

    return Variation(
        mirrored=bool(chance.random() < 0.5),
        degrees=float(chance.uniform(-TURN, TURN)),
        stretch=float(1 + chance.uniform(-STRETCH, STRETCH)),
        across=wave(),
        along=wave(),
        lighter=float(chance.uniform(-LIGHTER, LIGHTER)),
        hue=float(chance.uniform(-HUE, HUE)),
    )


def varied(svg: str, how: Variation, *, letters: bool = True) -> str:
    """A drawing of ours as the picture of one animal.

    Args:
        svg: SVG with paths of M, L, c, C and Z, circles and texts, as the drawings of keys are.
        how: The variation.
        letters: Whether what is written on it stays; it may give the answer away.

    Returns:
        SVG without the drawing's own title, whose view box holds everything; letters stay upright.
    """
    box = re.search(r'viewBox="([-\d. ]+)"', svg)
    if box is None:
        return svg
    left, top, wide, high = (float(number) for number in box[1].split())
    middle = complex(left + wide / 2, top + high / 2)
    bend = _bender(how, middle, wide)
    met: list[complex] = []

    def place(point: complex) -> complex:
        moved = bend(point)
        met.append(moved)
        return moved

    text = svg if letters else re.sub(r"<text .*?</text>", "", svg, flags=re.S)
    if how.mirrored:
        text = re.sub(r'text-anchor="(start|end)"', _turned_anchor, text)
    text = re.sub(r' d="([^"]+)"', lambda m: f' d="{_path(m[1], place)}"', text)
    text = re.sub(r' (c?)x="([-\d.]+)" \1y="([-\d.]+)"', lambda m: _at(m, place), text)
    text = re.sub(r"#[0-9a-f]{6}", lambda m: _tinted(m[0], how), text)
    text = re.sub(r"<title>.*?</title>", "<title>A specimen</title>", text, count=1, flags=re.S)
    return _framed(text, met)


def _bender(how: Variation, middle: complex, wide: float) -> Callable[[complex], complex]:
    turn = cmath.rect(1.0, math.radians(how.degrees))
    side = -how.stretch if how.mirrored else how.stretch
    pace = 2 * math.pi / wide
    across, along = how.across, how.along

    def bend(point: complex) -> complex:
        at = point - middle
        x = at.real + wide * across.reach * math.sin(pace * across.length * at.imag + across.phase)
        y = at.imag + wide * along.reach * math.sin(pace * along.length * at.real + along.phase)
        return complex(x * side, y) * turn + middle

    return bend


_STEP = re.compile(r"([MLcCZ])|(-?(?:\d+\.?\d*|\.\d+))")


def _path(text: str, place: Callable[[complex], complex]) -> str:
    out: list[str] = []
    here = 0j
    for letter, points in _strokes(text):
        if letter == "Z":
            out.append("Z")
            continue
        if letter == "c":
            points = [here + point for point in points]
        here = points[-1]
        pairs = " ".join(_pair(place(point)) for point in points)
        out.append(letter.upper() + pairs)
    return "".join(out)


def _strokes(text: str) -> Iterator[tuple[str, list[complex]]]:
    """Letter and points of each stroke; several curves after one letter come one by one."""
    letter, numbers = "", list[float]()
    for sign, number in _STEP.findall(text):
        if sign:
            letter, numbers = sign, []
            if sign == "Z":
                yield "Z", []
            continue
        numbers.append(float(number))
        if len(numbers) == (2 if letter in "ML" else 6):
            yield letter, [complex(x, y) for x, y in zip(numbers[::2], numbers[1::2], strict=True)]
            numbers = []


def _pair(point: complex) -> str:
    return f"{point.real:.2f} {point.imag:.2f}"


def _turned_anchor(match: re.Match[str]) -> str:
    return f'text-anchor="{"end" if match[1] == "start" else "start"}"'


def _at(match: re.Match[str], place: Callable[[complex], complex]) -> str:
    there = place(complex(float(match[2]), float(match[3])))
    return f' {match[1]}x="{there.real:.2f}" {match[1]}y="{there.imag:.2f}"'


def _tinted(colour: str, how: Variation) -> str:
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    hue, light, full = colorsys.rgb_to_hls(red, green, blue)
    light = min(max(light + how.lighter * min(1.0, 4 * light * (1.2 - light)), 0.0), 1.0)
    parts = colorsys.hls_to_rgb((hue + how.hue) % 1.0, light, full)
    return "#" + "".join(f"{round(part * 255):02x}" for part in parts)


def _framed(text: str, met: list[complex]) -> str:
    """The drawing with a view box around all its points."""
    if not met:
        return text
    left, right = min(p.real for p in met) - _MARGIN, max(p.real for p in met) + _MARGIN
    top, bottom = min(p.imag for p in met) - _MARGIN, max(p.imag for p in met) + _MARGIN
    size = f'width="{right - left:.0f}" height="{bottom - top:.0f}"'
    box = f'viewBox="{left:.2f} {top:.2f} {right - left:.2f} {bottom - top:.2f}"'
    return re.sub(r'width="[\d.]+" height="[\d.]+" viewBox="[-\d. ]+"', f"{size} {box}", text)
