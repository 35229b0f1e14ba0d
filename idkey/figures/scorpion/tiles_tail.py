"""Tiles about metasoma and telson."""

from functools import partial

from idkey.figures.drawing import Group, Item, Line, Part, group, placed
from idkey.figures.fields import hairs
from idkey.figures.geometry import Outline, Point, moved, smooth
from idkey.figures.ink import EDGE, HAIR_WEIGHT, SUBJECT, Skin, blended, skin
from idkey.figures.marks import arrow, bar, guide
from idkey.figures.scorpion import claw as forms
from idkey.figures.scorpion.claw import claw, claw_drawing
from idkey.figures.scorpion.tail import (
    Sting,
    segment_drawing,
    sting_drawing,
    vesicle_outline,
)
from idkey.figures.scorpion.tiles_claw import on_page
from idkey.figures.tile import PLAIN, SHOWN, Colours, Rows, Tiles, tiles_of

_TIP = skin(blended(SUBJECT, "#5a3a1c", 0.45))


def side_view(
    sting: Sting, *, joint: Point, skins: tuple[Skin, Skin, Skin], back: float = 64
) -> Group:
    """The end of the tail from the side: segment V, then the telson.

    Args:
        sting: The telson.
        joint: Where the telson begins.
        skins: Of segment V, the vesicle and the aculeus.
        back: How much of segment V is shown.
    """
    place = moved(joint)
    tall = 46.0
    return group(
        segment_drawing((joint - back - 3 + 0.06j * tall, joint + 0.06j * tall), tall, skins[0]),
        sting_drawing(sting, skins[1], tip=skins[2], place=place, name="subject"),
    )


_JOINT = 118 + 112j


def _tooth(size: float, _: Colours) -> Item:
    sting = Sting(length=232, depth=112, vesicle=0.58, tooth=size, curve=0.62)
    joint = 78 + 98j
    spot = joint + complex(132 + 40 * size, 26 + 100 * size)
    return group(
        side_view(sting, joint=joint, skins=(PLAIN, SHOWN, _TIP), back=14),
        arrow(spot + (5 + 6j), 230, 34),
    )


def _vesicle(depth: float, share: float, _: Colours) -> Item:
    sting = Sting(length=192, depth=depth, vesicle=share, curve=0.5)
    return side_view(sting, joint=_JOINT, skins=(PLAIN, SHOWN, PLAIN))


def _hairy(count: int, length: float, _: Colours) -> Item:
    sting = Sting(length=190, depth=78, vesicle=0.62, curve=0.5)
    body = vesicle_outline(sting).placed(moved(_JOINT))
    inner = [_stubble(body, share, length) for share in _STUBBLE[: count // 3]]
    found = hairs(body, count, length=length, start=0.02, end=0.98)
    lines = [
        Line(outline=hair, colour=EDGE, weight=HAIR_WEIGHT * 1.2, haloed=True)
        for hair in (*found, *inner)
    ]
    return group(side_view(sting, joint=_JOINT, skins=(PLAIN, SHOWN, PLAIN)), *lines)


_STUBBLE = tuple(
    complex(x, y)
    for x, y in (
        (0.3, 0.1),
        (0.62, 0.2),
        (0.46, 0.36),
        (0.16, 0.16),
        (0.78, 0.06),
        (0.48, 0.0),
        (0.32, 0.4),
        (0.6, 0.42),
        (0.2, 0.34),
        (0.7, -0.1),
        (0.36, -0.14),
        (0.5, 0.18),
    )
)


def _stubble(ring: Outline, at: Point, length: float) -> Outline:
    points = ring.flat(4)
    left = min(p.real for p in points)
    right = max(p.real for p in points)
    middle = _JOINT.imag
    root = complex(left + at.real * (right - left), middle + at.imag * 78)
    tip = root + complex(0.9, -0.42 + 0.3 * at.real) * length * 0.8
    return smooth((root, (root + tip) / 2 - 0.1j * length, tip), closed=False)


def _against(share: float, _: Colours) -> Item:
    sting = Sting(length=206, depth=64, vesicle=share, curve=0.35)
    joint = 104 + 86j
    split = joint + share * 206 * 1.04
    tip = joint + complex(206, 0.35 * 206 * (1 - share))
    low = 196j
    floor = [complex(p.real, 0) + low for p in (joint, split, tip)]
    return group(
        side_view(sting, joint=joint, skins=(PLAIN, SHOWN, _TIP), back=46),
        *(guide(p + 14j, f - 8j) for p, f in zip((joint, split, tip), floor, strict=True)),
        bar(floor[0], floor[1] - 2, tick=7),
        bar(floor[1] + 2, floor[2], tick=7),
    )


def _top_telson(width: float, length: float, skin_: Skin, tip: Skin, joint: Point) -> Group:
    half = (
        0j,
        complex(0.05 * length, 0.2 * width),
        complex(0.2 * length, 0.43 * width),
        complex(0.36 * length, 0.5 * width),
        complex(0.52 * length, 0.4 * width),
        complex(0.64 * length, 0.2 * width),
        complex(0.7 * length, 0.1 * width),
        complex(0.72 * length, 0),
    )
    ring = (*half, *(p.conjugate() for p in reversed(half[1:-1])))
    prick = (
        complex(0.64 * length, 0.11 * width),
        complex(0.8 * length, 0.07 * width),
        complex(length, 0),
        complex(0.8 * length, -0.07 * width),
        complex(0.64 * length, -0.11 * width),
    )
    place = moved(joint)
    return group(
        Part(outline=smooth(prick, sharp=(0, 2, 4)).placed(place), skin=tip),
        Part(outline=smooth(ring).placed(place), skin=skin_),
    )


def _width(width: float, _: Colours) -> Item:
    joint = 186 + 122j
    five = 96.0
    wide = 66.0
    at = joint + 0.36 * 120
    return group(
        segment_drawing((joint - five - 66, joint - five), wide * 1.05, PLAIN),
        _top_telson(width, 122, SHOWN, _TIP, joint),
        segment_drawing((joint - five, joint), wide, PLAIN),
        bar(joint - five * 0.5 - wide * 0.5j, joint - five * 0.5 + wide * 0.5j),
        bar(at - width * 0.5j, at + width * 0.5j),
    )


def _thick(width: float, hand: float, form: forms.Form, _: Colours) -> Item:
    lengths = (42.0, 48.0, 52.0, 60.0, 74.0)
    start = 66 + 82j
    items: list[Item] = []
    ends = [start]
    for length in lengths:
        ends.append(ends[-1] + length * 0.9)
    fat = [
        width * s
        for s in ((1, 1.03, 1.05, 1.03, 0.94) if width > 55 else (1, 0.96, 0.93, 0.9, 0.85))
    ]
    for index in range(4, -1, -1):
        items.append(segment_drawing((ends[index], ends[index + 1]), fat[index], SHOWN))
    build = claw(170, hand, form)
    place = on_page(92 + 184j)
    four = (ends[3] + ends[4]) / 2
    low, high = (place(p) for p in build.widest)
    return group(
        *items,
        placed(claw_drawing(build, PLAIN, PLAIN), place),
        bar(four - fat[3] * 0.5j, four + fat[3] * 0.5j),
        bar(low, high),
    )


_TOOTH: Rows = {
    "absent": ("No tooth below the sting", partial(_tooth, 0.0)),
    "weak": ("A trace of a tooth below the sting", partial(_tooth, 0.19)),
    "present": ("A clear tooth below the sting", partial(_tooth, 0.36)),
}
_FORM: Rows = {
    "bulbous": ("Vesicle bulbous", partial(_vesicle, 108.0, 0.55)),
    "elongate": ("Vesicle elongate", partial(_vesicle, 58.0, 0.66)),
}
_HAIR: Rows = {
    "glabrous": ("Telson bare or with a few hairs", partial(_hairy, 4, 14.0)),
    "hirsute": ("Telson hairy", partial(_hairy, 46, 26.0)),
}
_LENGTHS: Rows = {
    "vesicle_longer": ("Vesicle longer than the aculeus", partial(_against, 0.62)),
    "equal": ("Vesicle and aculeus about equal", partial(_against, 0.48)),
    "aculeus_longer": ("Aculeus longer than the vesicle", partial(_against, 0.36)),
}
_WIDTHS: Rows = {
    "narrower": ("Telson clearly narrower than segment V", partial(_width, 38.0)),
    "as_wide": ("Telson about as wide as segment V", partial(_width, 64.0)),
}
_BUILDS: Rows = {
    "slender": (
        "Tail slender, narrower than the hand",
        partial(_thick, 30.0, 78.0, forms.LOBED),
    ),
    "intermediate": ("Tail of middling build", partial(_thick, 46.0, 60.0, forms.LOBED_WEAKLY)),
    "thick": (
        "Tail thick, as wide as the hand or wider",
        partial(_thick, 72.0, 38.0, forms.SLENDER),
    ),
}

TILES: Tiles = {
    **tiles_of("subaculear_tubercle", _TOOTH, "telson"),
    **tiles_of("telson_shape", _FORM, "telson"),
    **tiles_of("telson_setation", _HAIR, "telson"),
    **tiles_of("vesicle_aculeus", _LENGTHS, "telson"),
    **tiles_of("telson_width", _WIDTHS, "telson"),
    **tiles_of("metasoma_robustness", _BUILDS, "metasoma"),
}
