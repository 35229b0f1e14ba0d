"""How to measure and how to count: one figure a number, with its end points."""

from dataclasses import replace
from functools import partial

from idkey.figures.drawing import Group, Item, Part, group, placed
from idkey.figures.geometry import Place, Point, moved, scaled
from idkey.figures.ink import EDGE
from idkey.figures.marks import bar, end_point, female, guide, letter, male
from idkey.figures.scorpion import claw as forms
from idkey.figures.scorpion.animal import Arm, Build, Coat, animal, coat, tail_of
from idkey.figures.scorpion.back import Shield, shield_drawing
from idkey.figures.scorpion.below import Comb, comb_drawing, spine_at
from idkey.figures.scorpion.claw import Form, claw, claw_drawing
from idkey.figures.scorpion.tail import joints
from idkey.figures.scorpion.tiles_claw import on_page
from idkey.figures.scorpion.trichobothria import (
    CHELA_D,
    CHELA_E,
    CHELA_V,
    FINGER,
    FINGER_I,
    MARKED,
    PATELLA_E_C,
    PATELLA_V_C,
    Spots,
    cup,
    face_outline,
)
from idkey.figures.tile import PLAIN, SHOWN, Colours, Tile, Tiles

_SIGN_AT = 36 + 116j


def _sexed(item: Item, sex: str, at: Point = _SIGN_AT) -> Item:
    sign = male if sex == "male" else female
    return group(item, sign(at, 34))


def _build(tail: float) -> Build:
    return Build(
        length=218,
        tail=tail,
        girth=1.2,
        bends=(0, 0, 0, 0, 0, 0),
        arm=Arm(chela=1.35, femur=0.5, patella=0.5, thick=0.34),
    )


def _lying(build: Build, skins: Coat, front: Point) -> Item:
    return placed(animal(build, skins), Place(-1j, 0j, front))


_TRUNK = replace(
    coat(PLAIN), carapace=SHOWN, tergites=SHOWN, tail=SHOWN, telson=SHOWN, aculeus=SHOWN
)
_TAIL = replace(coat(PLAIN), tail=SHOWN, telson=SHOWN, aculeus=SHOWN)


def _length(_: Colours) -> Item:
    build = _build(0.48)
    front = 88 + 128j
    end = front + 218
    return group(
        _lying(build, _TRUNK, front),
        *(guide(p, complex(p.real, 210)) for p in (front, end)),
        bar(complex(front.real, 216), complex(end.real, 216)),
        end_point(front),
        end_point(end),
        letter("mm", 199 + 230j, size=14),
    )


def _tail_share(sex: str, _: Colours) -> Item:
    build = _build(0.54 if sex == "male" else 0.48)
    front = 96 + 98j
    root = front + joints(tail_of(build), complex(0, build.carapace + build.mesosoma))[0].imag
    end = front + 218
    rows = (188.0, 216.0)
    drawn = group(
        _lying(build, _TAIL, front),
        *(guide(p, complex(p.real, rows[1] - 6)) for p in (front, end)),
        guide(root, complex(root.real, rows[0] - 6)),
        bar(complex(root.real, rows[0]), complex(end.real, rows[0]), "B", side=-1),
        bar(complex(front.real, rows[1]), complex(end.real, rows[1]), "A", side=-1),
        letter("B : A", 36 + 226j, size=18),
    )
    return _sexed(drawn, sex, 36 + 178j)


def _teeth(sex: str, _: Colours) -> Item:
    count, depth = (11, 52) if sex == "male" else (9, 38)
    comb = Comb(teeth=count, length=244, depth=depth)
    base = 70 + 56j
    drawn = comb_drawing(comb, PLAIN, SHOWN, place=moved(base))
    numbers = []
    for index in range(count):
        at, down = spine_at(comb, 0.05 + 0.95 * (index + 0.5) / count)
        text = str(index + 1) if index < count - 1 else "n"
        numbers.append(letter(text, base + at + down * (depth * 1.28 + 12), size=13))
    return _sexed(group(drawn, *numbers), sex)


def _claw_ratio(form: Form, ratio: float, sex: str, _: Colours) -> Item:
    build = claw(234, 234 / ratio, form)
    base = 72 + (104 if ratio < 3 else 92) * 1j
    place = on_page(base)
    low, high = (place(p) for p in build.widest)
    x = low.real
    tip = base + 234
    row = 206.0
    top, bottom = complex(x, high.imag), complex(x, low.imag)
    drawn = group(
        placed(claw_drawing(build, SHOWN, SHOWN), place),
        *(guide(p, complex(p.real, row - 7)) for p in (base, tip)),
        bar(complex(base.real, row), complex(tip.real, row), "A", side=-1),
        bar(top, bottom, "B", side=-1),
        end_point(base),
        end_point(tip),
        letter("A : B", 36 + 214j, size=18),
    )
    return _sexed(drawn, sex)


def _eyes(_: Colours) -> Item:
    shield = Shield(length=176, width=168, notch=0.09, eyes=0.45)
    front = 170 + 36j
    eyes, hind = front + 176j * 0.45, front + 176j
    x, far = 268.0, 298.0
    return group(
        placed(shield_drawing(shield, SHOWN), moved(front)),
        guide(front, complex(far - 6, front.imag)),
        guide(eyes + 14, complex(x - 6, eyes.imag)),
        guide(hind, complex(far - 6, hind.imag)),
        bar(complex(x, front.imag), complex(x, eyes.imag), "B", side=1),
        bar(complex(far, front.imag), complex(far, hind.imag), "A", side=1),
        *(end_point(p) for p in (front, eyes, hind)),
        letter("B : A", 36 + 214j, size=18),
    )


def _counted(spots: Spots, place: Place, start: int = 1) -> list[Item]:
    items: list[Item] = []
    for index, spot in enumerate(spots):
        at = place(spot)
        items.append(cup(at, MARKED, 4.6))
        items.append(letter(str(start + index), at + (9 + 9j), size=12, colour=EDGE))
    return items


def _face(spots: Spots, width: float, name: str, _: Colours) -> Item:
    corner, size = 72 + 124j, (230.0, width)
    place = moved(corner).after(scaled(*size))
    ordered = tuple(sorted(spots, key=lambda p: p.real))
    return group(
        Part(outline=face_outline(*size).placed(moved(corner)), skin=SHOWN),
        *_counted(ordered, place),
        letter(name, 40 + 124j, size=22),
    )


def _inner_claw(_: Colours) -> Item:
    build = claw(240, 104, forms.ROUND)
    place = on_page(68 + 126j)
    at = [68 + 126j + complex(p.real * 240, -p.imag * 104) for p in FINGER_I]
    return group(
        placed(claw_drawing(build, SHOWN, SHOWN), place),
        *(
            group(cup(p, MARKED, 4.6), letter(str(i + 1), p + (-6 - 24j), size=14))
            for i, p in enumerate(at)
        ),
        letter("i", 36 + 126j, size=22),
    )


def _all_cups(_: Colours) -> Item:
    outer = _cups_on((64 + 74j), 250, 96, (*CHELA_E, *CHELA_V, *CHELA_D, *FINGER))
    inner = _cups_on((64 + 184j), 180, 66, FINGER_I)
    count = len((*CHELA_E, *CHELA_V, *CHELA_D, *FINGER))
    return group(
        outer,
        inner,
        letter(str(count), 300 + 124j, size=18),
        letter(f"+ {len(FINGER_I)}", 284 + 184j, size=18),
        letter(f"= {count + len(FINGER_I)}", 284 + 212j, size=18),
    )


def _cups_on(base: Point, length: float, width: float, spots: Spots) -> Group:
    build = claw(length, width, forms.ROUND)
    size = 3.8
    cups = [cup(base + complex(p.real * length, -p.imag * width), MARKED, size) for p in spots]
    return group(placed(claw_drawing(build, SHOWN, SHOWN), on_page(base)), *cups)


_SEXES = ("male", "female")
MEASURES: dict[str, Tile] = {
    "total_length": Tile(
        "Total length: front of the carapace to the end of the telson",
        ("body", "metasoma", "telson"),
        _length,
    ),
    "median_eye_position": Tile(
        "Front edge to median eyes, against the length of the carapace", ("carapace",), _eyes
    ),
    "chela_i_trichobothria": Tile("Counting the cups inside the chela", ("chela",), _inner_claw),
    "patella_v_trichobothria": Tile(
        "Counting the cups on the lower face of the patella",
        ("patella",),
        partial(_face, PATELLA_V_C, 76.0, "v"),
    ),
    "patella_e_trichobothria": Tile(
        "Counting the cups on the outer face of the patella",
        ("patella",),
        partial(_face, PATELLA_E_C, 112.0, "e"),
    ),
    "chela_total_trichobothria": Tile("Counting all cups of the chela", ("chela",), _all_cups),
    **{
        f"pectinal_teeth_{sex}": Tile(
            f"Counting the teeth of one pecten of a {sex}",
            ("pectines",),
            partial(_teeth, sex),
            below=True,
        )
        for sex in _SEXES
    },
    **{
        f"metasoma_pct_{sex}": Tile(
            f"Metasoma with telson against total length of a {sex}",
            ("metasoma", "telson"),
            partial(_tail_share, sex),
        )
        for sex in _SEXES
    },
    "chela_lw_male": Tile(
        "Length of the chela against the width of the manus, male",
        ("chela",),
        partial(_claw_ratio, forms.ELONGATE, 3.5, "male"),
    ),
    "chela_lw_female": Tile(
        "Length of the chela against the width of the manus, female",
        ("chela",),
        partial(_claw_ratio, forms.LOBED, 2.2, "female"),
    ),
}
TILES: Tiles = {(c, "measure"): tile for c, tile in MEASURES.items()}
