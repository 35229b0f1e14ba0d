"""Plates to read a number from: something to count, a length on a ruler, two lengths to divide.

They stand in for a photograph to measure; each is drawn for one animal and shows its number alone.
"""

import math
from collections.abc import Iterable
from dataclasses import replace

import numpy as np

from idkey.drill.variation import Variation, Wave, varied
from idkey.engine.simulate import Chance
from idkey.model.character import Character, Kind

_WIDE, _HIGH = 420.0, 260.0
_INK, _BODY, _SHADE = "#2a2622", "#e6b566", "#c4924a"
_RULE = "#1f6fa8"
_LEFT, _LONG = 40.0, 340.0
_GRID = "#a9c3d4"
_CALM = 0.35
_STILL = Wave(reach=0, length=1, phase=0)

Point = tuple[float, float]
Line = tuple[Point, Point]


def plate(character: Character, value: float, seed: int, how: Variation) -> str:
    """A drawing from which the number of one animal can be read.

    Args:
        character: A character that takes numbers.
        value: What the animal shows, in the unit of the character.
        seed: Decides what is left to chance.
        how: The animal's variation; rulers are not bent or mirrored.

    Returns:
        SVG text.
    """
    chance = np.random.default_rng([seed, 1])
    if character.kind is Kind.COUNT:
        drawn = _comb(round(value), chance)
    elif character.kind is Kind.MEASUREMENT:
        drawn = _length(value, character.unit, chance)
    elif character.unit == "%":
        drawn = _share(value, chance)
    else:
        drawn = _proportion(value, chance)
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" version="1.2" baseProfile="tiny" '
        f'width="{_WIDE:g}" height="{_HIGH:g}" viewBox="0 0 {_WIDE:g} {_HIGH:g}">'
    )
    whole = "\n".join((head, "<title>A plate</title>", *drawn, "</svg>"))
    counted = character.kind is Kind.COUNT
    steady = replace(
        how, stretch=1.0, across=_STILL, along=_STILL, degrees=how.degrees * _CALM, mirrored=False
    )
    return varied(whole, how if counted else steady)


def tolerance(character: Character, value: float) -> float:
    """How far off a reading may be: twice the uncertainty of one, for a count less than one.

    Where the key gives no uncertainty, 3 % of the value.
    """
    if character.kind is Kind.COUNT:
        return max(2 * (character.uncertainty or 0.0), 0.5)
    return 2 * (character.uncertainty or 0.015 * abs(value))


def _comb(number: int, chance: Chance) -> list[str]:
    """A bowed bar with that many pegs, in rows of at most 40."""
    rows = max(1, -(-number // 40))
    drawn: list[str] = []
    left = number
    for row in range(rows):
        pegs = math.ceil(left / (rows - row))
        left -= pegs
        drawn += _comb_row(pegs, 50 + row * (180 / rows), chance)
    return drawn


def _comb_row(pegs: int, top: float, chance: Chance) -> list[str]:
    wide = min(_LONG, 22.0 * max(pegs, 1) + 90)
    bow = float(chance.uniform(0.04, 0.09)) * wide
    start = (_WIDE - wide) / 2
    gap = wide / max(pegs, 1)

    def spine(share: float) -> Point:
        return start + share * wide, top + bow * math.sin(math.pi * share)

    drawn = []
    for peg in range(pegs):
        x, y = spine((peg + 0.5) / pegs)
        long = float(chance.uniform(0.85, 1.1)) * min(52.0, 24 + gap * 2)
        lean = float(chance.uniform(-0.05, 0.05)) * long
        half = min(gap * 0.36, 8.0)
        shape = [
            (x - half, y), (x - half * 0.9 + lean, y + long * 0.8), (x + lean, y + long),
            (x + half * 0.9 + lean, y + long * 0.8), (x + half, y),
        ]  # fmt: skip
        drawn.append(_shape(shape, _BODY))
    upper = [spine(n / 24) for n in range(25)]
    lower = [(x, y + 11) for x, y in reversed(upper)]
    drawn.append(_shape([(x, y - 4) for x, y in upper] + lower, _SHADE))
    return drawn


def _length(value: float, unit: str, chance: Chance) -> list[str]:
    """A body that lies along a ruler, not at its nought."""
    room = value * float(chance.uniform(1.2, 1.45))
    per = _LONG / room
    start = _LEFT + float(chance.uniform(0.15, 0.85)) * (_LONG - value * per)
    body = _blob(start, 105.0, value * per, min(70.0, value * per * 0.3), chance)
    return [*_grid(150.0, room, per, 60.0), body, *_ruler(150.0, room, per, unit)]


def _proportion(value: float, chance: Chance) -> list[str]:
    """A body with a ruler below and one beside it; the number is length through width."""
    value = max(value, 0.05)
    long = 200.0 if value >= 1 else 110.0 * value
    wide = long / value
    if wide > 150:
        long, wide = long * 150 / wide, 150.0
    units = float(chance.uniform(16, 40))
    per = max(long, wide) / units
    x = 120.0 + float(chance.uniform(0, 40))
    body = _blob(x, 20 + 75, long, wide, chance)
    across = _ruler(190.0, _LONG / per, per, "")
    lines = [*_grid(190.0, _LONG / per, per, 20.0), *_levels(150 / per, per)]
    return [*lines, body, *across, *_standing(26.0, 150 / per, per)]


def _share(value: float, chance: Chance) -> list[str]:
    """Two bars on one ruler: the part above, the whole below."""
    units = float(chance.uniform(24, 70))
    per = _LONG / (units * 1.08)
    part = units * min(max(value, 0.0), 100.0) / 100
    start = _LEFT + per * units * float(chance.uniform(0.0, 0.04))
    return [
        *_grid(165.0, _LONG / per, per, 30.0),
        _blob(start, 55.0, part * per, 34.0, chance),
        _blob(start, 115.0, units * per, 34.0, chance),
        *_ruler(165.0, _LONG / per, per, ""),
    ]


def _blob(x: float, middle: float, long: float, wide: float, chance: Chance) -> str:
    """A rounded body from `x` on, exactly `long` and `wide`."""
    lift = [float(chance.uniform(0.86, 1.0)) for _ in range(6)]
    widest = max(lift)
    upper, lower = [], []
    for step in range(41):
        share = (1 - math.cos(math.pi * step / 40)) / 2
        swell = math.sqrt(max(0.0, 1 - abs(2 * share - 1) ** 2.6))
        rough = float(np.interp(share * 5, range(6), lift)) / widest
        half = wide / 2 * swell * rough
        upper.append((x + share * long, middle - half))
        lower.append((x + share * long, middle + half))
    tall = max(low[1] - up[1] for up, low in zip(upper, lower, strict=True)) or 1.0
    fit = wide / tall
    points = [(px, middle + (py - middle) * fit) for px, py in upper + lower[::-1]]
    return _shape(points, _BODY)


def _grid(y: float, length: float, per: float, top: float) -> list[str]:
    """Faint lines from the numbered ticks of a ruler up to `top`."""
    _, bold = _steps(length)
    places = (_LEFT + n * bold * per / 2 for n in range(int(2 * length / bold + 1e-9) + 1))
    return [_lines([((x, top), (x, y)) for x in places], 0.5, _GRID)]


def _levels(length: float, per: float) -> list[str]:
    """Faint lines across from the ticks of a standing ruler."""
    foot = 20 + 150.0
    _, bold = _steps(length)
    places = (foot - n * bold * per / 2 for n in range(int(2 * length / bold + 1e-9) + 1))
    return [_lines([((_LEFT - 10, y), (_LEFT + _LONG, y)) for y in places], 0.5, _GRID)]


def _ruler(y: float, length: float, per: float, unit: str) -> list[str]:
    """A ruler along the paper with its nought at the left."""
    fine, bold = _steps(length)
    drawn = [_lines([((_LEFT, y), (_LEFT + length * per, y))], 1.6)]
    ticks, strong = list[Line](), list[Line]()
    for number in range(int(length / fine + 1e-9) + 1):
        x = _LEFT + number * fine * per
        major = number % round(bold / fine) == 0
        (strong if major else ticks).append(((x, y), (x, y + (14 if major else 7))))
        if major:
            drawn.append(_words(f"{number * fine:g}", x, y + 28))
    drawn += [_lines(ticks, 0.9), _lines(strong, 1.6)]
    if unit:
        drawn.append(_words(unit, _LEFT + length * per + 4, y + 44, "end"))
    return drawn


def _standing(x: float, length: float, per: float) -> list[str]:
    """A ruler up the paper, in the same units, with its nought at the foot."""
    foot = 20 + 150.0
    fine, bold = _steps(length)
    drawn = [_lines([((x + 14, foot), (x + 14, foot - length * per))], 1.6)]
    ticks, strong = list[Line](), list[Line]()
    for number in range(int(length / fine + 1e-9) + 1):
        y = foot - number * fine * per
        major = number % round(bold / fine) == 0
        (strong if major else ticks).append(((x + 14, y), (x + (0 if major else 7), y)))
        if major:
            drawn.append(_words(f"{number * fine:g}", x - 3, y + 4, "end"))
    return [*drawn, _lines(ticks, 0.9), _lines(strong, 1.6)]


def _steps(length: float) -> tuple[float, float]:
    """Distance of small and of numbered ticks, for about 50 and 5 to 10 of them."""
    raw = length / 50
    power = 10.0 ** math.floor(math.log10(raw))
    fine = next(step * power for step in (1.0, 2.0, 5.0, 10.0) if step * power >= raw)
    tens = round(fine / 10 ** math.floor(math.log10(fine) + 1e-9))
    return fine, fine * (10 if tens != 2 else 5)


def _shape(points: Iterable[Point], fill: str) -> str:
    ways = "L".join(f"{x:.2f} {y:.2f}" for x, y in points)
    return f'<path fill="{fill}" stroke="{_INK}" stroke-width="1.4" d="M{ways}Z"/>'


def _lines(lines: Iterable[Line], weight: float, colour: str = _RULE) -> str:
    ways = "".join(f"M{a:.2f} {b:.2f}L{c:.2f} {d:.2f}" for (a, b), (c, d) in lines)
    return f'<path fill="none" stroke="{colour}" stroke-width="{weight}" d="{ways}"/>'


def _words(text: str, x: float, y: float, anchor: str = "middle") -> str:
    return (
        f'<text x="{x:.2f}" y="{y:.2f}" font-family="sans-serif" font-size="12" '
        f'text-anchor="{anchor}" fill="{_RULE}">{text}</text>'
    )
