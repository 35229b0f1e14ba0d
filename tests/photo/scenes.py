"""Photographs of a drawing whose true lengths are known: tilted, turned, noisy, compressed.

A plate is drawn flat, put before a pinhole camera at a tilt from the range that a person's words
stand for, and photographed: perspective, noise, JPEG, and a phone held any way. An eye then finds
the landmarks in the kept picture, and a hand that shakes by 2 pixels clicks them.
"""

import io
import math
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
from PIL import Image, ImageDraw

from idkey.engine.measure import HEIGHT, Lie, Measured
from idkey.engine.tilt import FARTHEST, NEAREST, Tilt
from idkey.model.character import Character
from idkey.photo.intake import Incoming, read_bytes
from idkey.photo.marks import Marks, Point
from idkey.photo.reading import measured
from tests.photo.characters import EYES, LENGTH, SLIMNESS

WIDTH, HEIGHT_PX = 960, 720
SHAKE = 2.0
"""Standard deviation of a click in pixels, along each axis."""

REPEATS = 3
RULER_MM = 30.0
_TABLE, _DOT = (205, 197, 178), (225, 20, 190)
_TURNS = {1: None, 3: Image.Transpose.ROTATE_180, 6: Image.Transpose.ROTATE_90}


@dataclass(frozen=True)
class Plate:
    """A flat drawing and what is true of it; points in pixels about its middle.

    Attributes:
        image: The drawing, twice as wide and high as the photograph's field.
        ruler: The same with the ruler alone on it; None when it lies on `image`.
        length: Ends of the long line.
        width: Ends of the line across.
        part: Ends of the part of the long line.
        tail: Joints of the tail.
        ends: Ends of the ruler line.
        tail_px: True length of the tail.
    """

    image: Image.Image
    ruler: Image.Image | None
    length: tuple[complex, complex]
    width: tuple[complex, complex]
    part: tuple[complex, complex]
    tail: tuple[complex, ...]
    ends: tuple[complex, complex]
    tail_px: float


@dataclass(frozen=True)
class Shot:
    """A photograph that was taken in, and where things are on it.

    Attributes:
        plate: What it shows.
        incoming: The kept picture.
        tilt: What the person says of it.
        lie: How the ruler lies to the part.
        seen: Where the eye finds each landmark, by its true place on the plate.
    """

    plate: Plate
    incoming: Incoming
    tilt: Tilt
    lie: Lie
    seen: dict[complex, Point]


@dataclass(frozen=True)
class Run:
    """One measurement and the truth."""

    kind: str
    found: Measured
    truth: float

    @property
    def covered(self) -> bool:
        """Whether the stated interval holds the truth."""
        return self.found.low <= self.truth <= self.found.high

    @property
    def off(self) -> float:
        """Error in stated standard uncertainties."""
        return (self.found.value - self.truth) / self.found.uncertainty


def plate(chance: np.random.Generator, *, apart: bool = False) -> Plate:
    """A claw with a tail and a ruler, of random proportions, at a random place and turn."""
    long = chance.uniform(240, 330)
    wide = long / chance.uniform(1.6, 4.0)
    turn = complex(*_unit(chance.uniform(0, 2 * math.pi)))
    middle = complex(chance.uniform(-60, 60), chance.uniform(-40, 40))

    def at(x: float, y: float) -> complex:
        return middle + turn * complex(x, y)

    length = (at(-long / 2, 0), at(long / 2, 0))
    width = (at(0, -wide / 2), at(0, wide / 2))
    part = (length[0], at(-long / 2 + long * chance.uniform(0.3, 0.6), 0))
    tail, tail_px = _tail(chance, at, long, wide)
    below = wide / 2 + 50
    ruler_px = chance.uniform(170, 240)
    ends = (at(-ruler_px / 2, below), at(ruler_px / 2, below))
    image, layer = _blank(), _blank() if apart else None
    _draw_claw(image, at, long, wide)
    ImageDraw.Draw(image).line([_on_page(p) for p in tail], fill=(120, 80, 50), width=16)
    _draw_ruler(layer or image, ends, turn)
    for point in {*length, *width, *part, *tail}:
        _dot(image, point)
    for point in ends:
        _dot(layer or image, point)
    return Plate(image, layer, length, width, part, tail, ends, tail_px)


def shot(chance: np.random.Generator, tilt: Tilt, *, lie: Lie = Lie.TOGETHER) -> Shot:
    """A photograph of a random plate."""
    what, view, own = _framed(chance, tilt, lie)
    image = _projected(what.image, view)
    if what.ruler is not None:
        layer = _projected(what.ruler, own)
        mask = Image.fromarray((_away(layer) > 24).astype(np.uint8) * 255)
        image.paste(layer, mask=mask)
    views = _views(what, view, own)
    incoming = read_bytes(_phone(chance, image))
    seen = {
        point: _found(chance, incoming.image, _mapped(at, point)) for point, at in views.items()
    }
    return Shot(what, incoming, tilt, lie, seen)


def _framed(chance: np.random.Generator, tilt: Tilt, lie: Lie) -> tuple[Plate, "_View", "_View"]:
    """A plate and views of it and of its ruler with everything in the picture."""
    while True:
        what = plate(chance, apart=lie is Lie.APART)
        far = math.exp(chance.uniform(math.log(NEAREST), math.log(FARTHEST))) * WIDTH
        spin = chance.uniform(0, 2 * math.pi)
        view = own = _view(chance, tilt, far, spin)
        if what.ruler is not None:
            own = _view(chance, Tilt.FLAT, 0.0, spin)
            goal = _depth(view, sum(what.length) / 2) * (1 + chance.uniform(-HEIGHT, HEIGHT))
            own = replace(own, far=goal - _depth(own, sum(what.ends) / 2), focal=far)
        places = [_mapped(at, point) for point, at in _views(what, view, own).items()]
        if all(20 < x < WIDTH - 20 and 20 < y < HEIGHT_PX - 20 for x, y in places):
            return what, view, own


def _views(what: Plate, view: "_View", own: "_View") -> dict[complex, "_View"]:
    part = (*what.length, *what.width, *what.part, *what.tail)
    return dict.fromkeys(part, view) | dict.fromkeys(what.ends, own)


def runs(chance: np.random.Generator, taken: Shot) -> list[Run]:
    """What a person with a shaking hand measures on a photograph."""
    p = taken.plate
    mm = RULER_MM / abs(p.ends[1] - p.ends[0])
    long, wide = abs(p.length[1] - p.length[0]), abs(p.width[1] - p.width[0])
    share = 100 * abs(p.part[1] - p.part[0]) / long
    made = [Run("length, by a ruler", _read(chance, taken, LENGTH, (p.length, p.ends)), long * mm)]
    if taken.lie is Lie.APART:
        return made  # the ruler's height is drawn about that of this line
    return [
        *made,
        Run("tail of 5 joints", _read(chance, taken, LENGTH, (p.tail, p.ends)), p.tail_px * mm),
        Run("length / width", _read(chance, taken, SLIMNESS, (p.length, p.width)), long / wide),
        Run("part in per cent", _read(chance, taken, EYES, (p.part, p.length)), share),
    ]


def _read(
    chance: np.random.Generator,
    taken: Shot,
    character: Character,
    lines: tuple[tuple[complex, ...], tuple[complex, ...]],
) -> Measured:
    upper, lower = (tuple(_clicked(chance, taken, line) for _ in range(REPEATS)) for line in lines)
    marks = Marks(
        picture=taken.incoming.picture.id,
        character=character.id,
        lines=upper,
        others=lower,
        tilt=taken.tilt,
        lie=taken.lie,
    )
    if character is LENGTH:
        marks = replace(marks, ruler=RULER_MM)
    found = measured(marks, character, taken.incoming.picture)
    assert found is not None
    return found


def _clicked(
    chance: np.random.Generator, taken: Shot, line: tuple[complex, ...]
) -> tuple[Point, ...]:
    shaken = chance.normal(0, SHAKE, (len(line), 2))
    return tuple(
        (taken.seen[point][0] + float(dx), taken.seen[point][1] + float(dy))
        for point, (dx, dy) in zip(line, shaken, strict=True)
    )


def _tail(chance, at, long: float, wide: float) -> tuple[tuple[complex, ...], float]:
    """Joints along an arc; half of the tails are bent smoothly, half only at the joints."""
    angle, radius = chance.uniform(1.2, 2.2), chance.uniform(100, 130)
    middle = (-long / 2 + 20, -wide / 2 - 30 - radius)
    turns = math.pi / 2 - np.linspace(-angle / 2, angle / 2, 6)
    joints = tuple(
        at(middle[0] + radius * math.cos(a), middle[1] + radius * math.sin(a)) for a in turns
    )
    if chance.random() < 0.5:
        return joints, radius * angle
    return joints, sum(abs(b - a) for a, b in pairwise(joints))


def _unit(angle: float) -> tuple[float, float]:
    return math.cos(angle), math.sin(angle)


def _blank() -> Image.Image:
    return Image.new("RGB", (2 * WIDTH, 2 * HEIGHT_PX), _TABLE)


def _on_page(point: complex) -> tuple[float, float]:
    return point.real + WIDTH, point.imag + HEIGHT_PX


def _dot(image: Image.Image, point: complex) -> None:
    x, y = _on_page(point)
    ImageDraw.Draw(image).ellipse((x - 5, y - 5, x + 5, y + 5), fill=_DOT)


def _draw_claw(image: Image.Image, at, long: float, wide: float) -> None:
    turns = np.linspace(0, 2 * math.pi, 60)
    ring = [at(long / 2 * math.cos(a), wide / 2 * math.sin(a)) for a in turns]
    ImageDraw.Draw(image).polygon([_on_page(p) for p in ring], fill=(70, 45, 35))


def _draw_ruler(image: Image.Image, ends: tuple[complex, complex], turn: complex) -> None:
    draw = ImageDraw.Draw(image)
    side = turn * 1j
    corners = (ends[0] - turn * 12, ends[1] + turn * 12)
    ring = (corners[0] - side * 4, corners[1] - side * 4, corners[1] + side * 34,
            corners[0] + side * 34)  # fmt: skip
    draw.polygon([_on_page(p) for p in ring], fill=(250, 250, 246))
    for step in range(31):
        here = ends[0] + (ends[1] - ends[0]) * step / 30
        deep = 22 if step % 10 == 0 else 13
        draw.line((*_on_page(here + side * 8), *_on_page(here + side * deep)), fill=(30, 30, 30))


@dataclass(frozen=True)
class _View:
    """A plane before a pinhole camera: unit vectors along it, distance and focal length."""

    across: np.ndarray
    down: np.ndarray
    far: float
    focal: float


def _view(chance: np.random.Generator, tilt: Tilt, far: float, spin: float) -> _View:
    low, high = tilt.degrees
    lean = math.radians(chance.uniform(low, high))
    azimuth = chance.uniform(0, 2 * math.pi)
    toward = np.array([math.cos(azimuth) * math.cos(lean), math.sin(azimuth) * math.cos(lean),
                       -math.sin(lean)])  # fmt: skip
    beside = np.array([-math.sin(azimuth), math.cos(azimuth), 0.0])
    # The plate is turned by `spin` in its own plane before it is tilted.
    start = spin - azimuth
    across = math.cos(start) * toward + math.sin(start) * beside
    down = -math.sin(start) * toward + math.cos(start) * beside
    return _View(across, down, far, far)


def _depth(view: _View, point: complex) -> float:
    return float((point.real * view.across + point.imag * view.down)[2]) + view.far


def _mapped(view: _View, point: complex) -> Point:
    place = point.real * view.across + point.imag * view.down + np.array([0, 0, view.far])
    x, y = place[:2] / place[2] * view.focal
    return float(x) + WIDTH / 2, float(y) + HEIGHT_PX / 2


def _projected(image: Image.Image, view: _View) -> Image.Image:
    """The photograph of a drawing, through PIL's projective transform."""
    corners = (-300 - 200j, 300 - 200j, 300 + 200j, -300 + 200j)
    rows, goals = [], []
    for corner in corners:
        (x, y), (u, v) = _mapped(view, corner), _on_page(corner)
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
        goals += [u, v]
    turn = np.linalg.solve(np.array(rows), np.array(goals))
    return image.transform(
        (WIDTH, HEIGHT_PX), Image.Transform.PERSPECTIVE, tuple(turn),
        Image.Resampling.BICUBIC, fillcolor=_TABLE,
    )  # fmt: skip


def _away(image: Image.Image) -> np.ndarray:
    return np.abs(np.asarray(image, dtype=float) - _TABLE).max(axis=-1)


def _phone(chance: np.random.Generator, image: Image.Image) -> bytes:
    """Noise, JPEG and the way the phone was held."""
    grain = chance.normal(0, 4, (HEIGHT_PX, WIDTH, 1)).astype(np.float32)
    noisy = np.asarray(image, dtype=np.float32) + grain
    orientation = int(chance.choice(list(_TURNS)))
    turn = _TURNS[orientation]
    held = Image.fromarray(noisy.clip(0, 255).astype(np.uint8))
    exif = Image.Exif()
    exif[0x0112] = orientation
    stream = io.BytesIO()
    (held if turn is None else held.transpose(turn)).save(
        stream, "JPEG", quality=int(chance.integers(70, 93)), exif=exif
    )
    return stream.getvalue()


def _found(chance: np.random.Generator, image: Image.Image, near: Point) -> Point:
    """The middle of the dot that lies near a place; the eye starts to look beside it."""
    x, y = (round(side + chance.uniform(-2, 2)) for side in near)  # no neighbour in sight
    part = np.asarray(image.crop((x - 9, y - 9, x + 10, y + 10)), dtype=float)
    weight = (np.minimum(part[..., 0], part[..., 2]) - part[..., 1] - 50).clip(min=0)
    assert weight.sum() > 500, f"no landmark near {near}"
    down, across = np.mgrid[-9:10, -9:10]
    return (
        x + 0.5 + float((across * weight).sum() / weight.sum()),
        y + 0.5 + float((down * weight).sum() / weight.sum()),
    )
