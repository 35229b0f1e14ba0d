"""Tiles about the underside, the stridulatory organ and the trichobothria."""

from functools import partial

from idkey.figures.drawing import Item, Line, Part, group, placed
from idkey.figures.fields import scatter
from idkey.figures.geometry import MIRROR, Outline, Place, Points, moved, smooth
from idkey.figures.ink import CONTEXT, EDGE, blended, skin
from idkey.figures.marks import arrow, letter
from idkey.figures.rod import rod
from idkey.figures.scorpion.below import (
    PENTAGON,
    TRIANGLE,
    Comb,
    comb_drawing,
    coxae_drawing,
    operculum_drawing,
    sized,
)
from idkey.figures.scorpion.limbs import chelicera_drawing
from idkey.figures.scorpion.surface import granules
from idkey.figures.scorpion.tail import Sting, segment_drawing, sting_drawing
from idkey.figures.scorpion.trichobothria import (
    PATELLA_E_A,
    PATELLA_E_C,
    PATELLA_E_MORE,
    PATELLA_V_C,
    PATELLA_V_MORE,
    face_drawing,
)
from idkey.figures.tile import PLAIN, SHOWN, Colours, Rows, Tile, Tiles, tiles_of, tone


def _sternum(half: Points, _: Colours) -> Item:
    at = sized(1.37, 190 + 16j)
    drawn = group(
        coxae_drawing(half, (PLAIN, SHOWN)),
        operculum_drawing(PLAIN),
    )
    return placed(drawn, at)


def _combs(state: str, colours: Colours) -> Item:
    shown = skin(tone(colours, "pectine_colour", state))
    lamella = skin(blended(CONTEXT, shown.fill, 0.25))
    comb = Comb(teeth=11, length=114, depth=50)
    at = 190 + 88j
    combs = [
        comb_drawing(
            comb, lamella, shown, place=moved(at).after(side).after(moved(12 + 4j)), name=""
        )
        for side in (Place(), MIRROR)
    ]
    plate = smooth((at - 18 - 6j, at - 10j, at + 18 - 6j, at + 20 + 14j, at + 26j, at - 20 + 14j))
    valves = [
        Part(
            outline=smooth((1 - 52j, 26 - 56j, 52 - 46j, 50 - 26j, 22 - 14j, 1 - 15j)).placed(
                moved(at).after(side)
            ),
            skin=PLAIN,
        )
        for side in (Place(), MIRROR)
    ]
    return group(*valves, group(*combs, name="subject"), Part(outline=plate, skin=PLAIN))


_PALP_COXA = (
    84 + 46j,
    110 + 24j,
    160 + 20j,
    196 + 34j,
    206 + 66j,
    186 + 94j,
    140 + 104j,
    98 + 92j,
    82 + 70j,
)
_LEG_COXA = (
    96 + 152j,
    138 + 134j,
    186 + 128j,
    212 + 146j,
    214 + 176j,
    190 + 196j,
    146 + 202j,
    104 + 192j,
    88 + 174j,
)


def _coxae(rasp: str, _: Colours) -> Item:
    palp, walker = smooth(_PALP_COXA), smooth(_LEG_COXA)
    arm = rod(194 + 58j, 298 + 40j, 58, 60, belly=0.05)
    thigh = rod(204 + 168j, 304 + 194j, 34, 30, belly=0.06)
    items: list[Item] = [
        Part(outline=arm, skin=PLAIN),
        Part(outline=thigh, skin=PLAIN),
        Part(outline=palp, skin=SHOWN),
        Part(outline=walker, skin=SHOWN),
    ]
    if rasp == "palp":
        items += [_rasp(palp, below=True), _bristles(walker, up=True)]
    elif rasp == "leg":
        items += [_rasp(walker, below=False), _bristles(palp, up=False)]
    return group(*items)


def _rasp(coxa: Outline, *, below: bool) -> Item:
    ring = coxa.flat(10)
    high = 66.0 if below else 160.0
    spots = [p for p in scatter(ring, 9.5, margin=5) if (p.imag > high if below else p.imag < high)]
    return granules(spots, SHOWN, 3.4)


def _bristles(coxa: Outline, *, up: bool) -> Item:
    ring = coxa.flat(12)
    lines: list[Item] = []
    for index in range(17):
        x = 110 + index * 5.4
        near = [p for p in ring if abs(p.real - x) < 5]
        root = min(near, key=lambda p: p.imag) if up else max(near, key=lambda p: p.imag)
        for row, depth in ((0, 3), (1, 13)):
            start = complex(x + row * 2.7, root.imag + (depth if up else -depth))
            tip = start + complex(4, -22 if up else 22)
            way = smooth((start, (start + tip) / 2 + 1.2, tip), closed=False)
            lines.append(Line(outline=way, colour=EDGE, weight=1.5, haloed=True))
    return group(*lines)


def _cheliceral(_: Colours) -> Item:
    at = moved(190 + 158j)
    drawn: list[Item] = []
    for side in (Place(), MIRROR):
        here = at.after(side).after(moved(3 + 14j))
        drawn.append(chelicera_drawing(152, SHOWN, place=here))
        for row in range(6):
            for column in range(5):
                root = complex(14 + column * 7.5, -12 - row * 12 + (column % 2) * 5)
                way = smooth((root, root + (-3 - 7j), root + (-8 - 12j)), closed=False)
                drawn.append(Line(outline=way.placed(here), colour=EDGE, weight=1.5, haloed=True))
    front = smooth(
        (
            -64 + 8j,
            -40 - 12j,
            -8 - 4j,
            4j,
            8 - 4j,
            40 - 12j,
            64 + 8j,
            76 + 46j,
            82 + 70j,
            -82 + 70j,
            -76 + 46j,
        ),
        sharp=(3, 8, 9),
    )
    return group(*drawn, Part(outline=front.placed(at), skin=PLAIN))


def _tail_top(_: Colours) -> Item:
    ends = (100 + 156j, 156 + 156j, 224 + 156j, 302 + 156j)
    widths = (78, 74, 72)
    segments = [
        segment_drawing((ends[i], ends[i + 1]), widths[i], SHOWN if i < 2 else PLAIN, keels=False)
        for i in (2, 1, 0)
    ]
    field = smooth(
        (108 + 140j, 150 + 132j, 206 + 140j, 212 + 156j, 206 + 172j, 150 + 180j, 108 + 172j)
    )
    spots = scatter(field.flat(8), 8.5, margin=1)
    sting = Sting(length=112, depth=46, vesicle=0.58, curve=0.75)
    lie = Place(-0.82 + 0.28j, 0j, 272 + 53j).after(Place(0j, 1 + 0j, 0j))
    return group(
        *segments,
        segment_drawing((62 + 156j, 104 + 156j), 104, PLAIN, keels=False),
        granules(spots, SHOWN, 3.0),
        segment_drawing((304 + 38j, 266 + 53j), 40, PLAIN),
        sting_drawing(sting, PLAIN, tip=PLAIN, place=lie),
        arrow(150 + 112j, 180, 30),
        arrow(182 + 112j, 0, 30),
    )


def _pattern(kind: str, _: Colours) -> Item:
    size, low_size = (158.0, 78.0), (158.0, 54.0)
    outer, under = 72 + 76j, 72 + 180j
    more_e = PATELLA_E_MORE if kind == "neo" else ()
    more_v = PATELLA_V_MORE if kind == "neo" else ()
    e_spots = PATELLA_E_A if kind == "A" else PATELLA_E_C
    v_spots = () if kind == "A" else PATELLA_V_C
    e_count, v_count = len(e_spots), len(v_spots)
    more = ">" if kind == "neo" else ""
    return group(
        face_drawing(outer, size, SHOWN, e_spots, more_e),
        face_drawing(under, low_size, SHOWN, v_spots, more_v),
        letter(f"e {more}{e_count}", 277 + 76j, size=20),
        letter(f"v {more}{v_count}", 277 + 180j, size=20),
    )


_STERNA: Rows = {
    "triangular": (
        "Sternum triangular, narrowing to a point in front",
        partial(_sternum, TRIANGLE),
    ),
    "pentagonal": (
        "Sternum pentagonal, its sides roughly parallel",
        partial(_sternum, PENTAGON),
    ),
}
_TEETH: Rows = {
    "pale": ("Teeth of the pectines pale", partial(_combs, "pale")),
    "dark": ("Teeth of the pectines dark", partial(_combs, "dark")),
}
_ON_COXAE: Rows = {
    "coxal_rasp_on_pedipalp": (
        "Rasp on the coxa of the pedipalp, scraper hairs on the coxa of leg I",
        partial(_coxae, "palp"),
    ),
    "coxal_rasp_on_leg_I": (
        "Rasp on the coxa of leg I, scraper hairs on the coxa of the pedipalp",
        partial(_coxae, "leg"),
    ),
    "none_of_these": ("Coxae without rasp and scraper", partial(_coxae, "none")),
}
_PATTERNS: Rows = {
    "type_A": ("Patella of type A: 7 cups outside, none below", partial(_pattern, "A")),
    "type_C_ortho": ("Patella of type C: 13 cups outside, 3 below", partial(_pattern, "C")),
    "type_C_neo": ("Patella of type C with extra cups", partial(_pattern, "neo")),
}

TILES: Tiles = {
    **tiles_of("sternum_shape", _STERNA, "sternum", below=True),
    **tiles_of("pectine_colour", _TEETH, "pectines", below=True),
    **tiles_of("stridulatory_organ", _ON_COXAE, "coxae", below=True),
    ("stridulatory_organ", "cheliceral"): Tile(
        "Scraper hairs on the chelicerae", ("chelicerae",), _cheliceral
    ),
    ("stridulatory_organ", "metasomal_dorsal"): Tile(
        "Granular area on top of the first tail segments, rubbed by the sting",
        ("metasoma",),
        _tail_top,
    ),
    **tiles_of("bothriotaxy", _PATTERNS, "patella"),
}
