"""How to measure and how to count on a tarantula."""

from functools import partial

from idkey.figures.drawing import Item, Line, Part, group, placed
from idkey.figures.geometry import Place, Point, smooth
from idkey.figures.ink import EDGE, skin
from idkey.figures.marks import bar, end_point, female, guide, letter, male
from idkey.figures.spider.abdomen import Belly
from idkey.figures.spider.animal import Build, Coat, animal
from idkey.figures.spider.body import Shield
from idkey.figures.spider.leg import PALP_SEGMENTS, SEGMENTS
from idkey.figures.spider.tiles_legs import CONTEXT_PELT
from idkey.figures.spider.tiles_organs import BRANCHES, hook
from idkey.figures.tile import PLAIN, SHOWN, Colours, Tile, Tiles

_SIGN_AT: Point = 34 + 196j


def _body(sex: str, _: Colours) -> Item:
    legs = dict.fromkeys(SEGMENTS, CONTEXT_PELT)
    painted = Coat(
        shield=Shield(skin=SHOWN),
        jaws=PLAIN,
        belly=Belly(skin=SHOWN),
        legs={"leg": legs},
        palps={name: legs[name] for name in PALP_SEGMENTS},
    )
    slim = sex == "male"
    length = 80.0
    build = Build(length=length, abdomen=1.05 if slim else 1.3, thick=0.2 if slim else 0.235)
    front = 158 + 112j
    end = front + length
    low = 234j
    return group(
        placed(animal(build, painted), Place(-1j, 0j, front)),
        *(guide(p, complex(p.real, 0) + low - 9j) for p in (front, end)),
        bar(complex(front.real, 0) + low - 6j, complex(end.real, 0) + low - 6j, tick=5),
        end_point(front),
        end_point(end),
        letter("mm", end.real + 26 + 228j, size=15),
        (male if slim else female)(_SIGN_AT, 34),
    )


_INNER = ((158, 148, -1), (170, 170, -1), (176, 188, -1))
_OUTER = ((206, 148, 1), (222, 170, 1), (236, 184, 1))


def _spines(branch: int, _: Colours) -> Item:
    """The hook with the spines of one branch numbered."""
    drawn = hook(forked=True)
    shown = BRANCHES[branch]
    others = [Part(outline=BRANCHES[1 - branch], skin=PLAIN), Part(outline=shown, skin=SHOWN)]
    marks: list[Item] = []
    for index, (x, y, side) in enumerate(_INNER if branch == 0 else _OUTER):
        root = complex(x - (8 if branch == 0 else -2), y)
        tip = root + complex(16 * side, 10)
        thorn = smooth((root - 3j, tip, root + 4j), sharp=(0, 1, 2))
        marks.append(Part(outline=thorn, skin=skin("#4a3020"), weight=1.2))
        text = str(index + 1) if index < 2 else "n"
        marks.append(letter(text, tip + complex(11 * side, 5), size=14))
    return group(drawn[0], *others, drawn[-1], *marks)


def _pegs(_: Colours) -> Item:
    """The inner face of a maxilla with its pegs numbered."""
    upper = (72 + 150j, 84 + 84j, 138 + 48j, 216 + 44j, 286 + 70j)
    face = smooth((*upper, 306 + 128j, 288 + 186j, 212 + 210j, 128 + 204j, 82 + 188j))
    fringe: list[Item] = []
    for index in range(22):
        root = complex(96 + index * 9.4, 62 - 16 * (1 - ((index - 10.5) / 11) ** 2))
        way = smooth((root, root + (3 - 16j)), closed=False)
        fringe.append(Line(outline=way, colour=EDGE, weight=1.2, haloed=True))
    pegs: list[Item] = []
    for index, at in enumerate((132 + 128j, 190 + 116j, 248 + 132j)):
        peg = smooth((at - 7 + 8j, at - 6 - 8j, at - 17j, at + 6 - 8j, at + 7 + 8j, at + 11j))
        pegs.append(Part(outline=peg, skin=skin("#4a3020"), weight=1.4))
        text = str(index + 1) if index < 2 else "n"
        pegs.append(letter(text, at + 30j, size=17, colour=EDGE))
    return group(*fringe, Part(outline=face, skin=SHOWN), *pegs)


def _lengths(sex: str) -> Tile:
    title = f"Body length of a {sex}: front of the carapace to the end of the abdomen"
    return Tile(title, ("body",), partial(_body, sex))


BODIES: Tiles = {
    ("body_f", "measure"): _lengths("female"),
    ("body_m", "measure"): _lengths("male"),
}
"""Of both keys."""
AMERICAN: Tiles = {
    **BODIES,
    ("apo_pro_spines", "measure"): Tile(
        "Counting the spines of the inner branch of the hook", ("leg_1_tibia",), partial(_spines, 0)
    ),
    ("apo_retro_spines", "measure"): Tile(
        "Counting the spines of the outer branch of the hook", ("leg_1_tibia",), partial(_spines, 1)
    ),
}
"""Of the American key."""
ORNAMENTAL: Tiles = {
    **BODIES,
    ("max_tub", "measure"): Tile("Counting the pegs of the maxilla", ("palps",), _pegs, below=True),
}
"""Of the key to the ornamental ones."""
TILES: Tiles = {**AMERICAN, **ORNAMENTAL}
