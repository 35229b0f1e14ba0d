"""The orientation plates of a scorpion, from above and from below."""

from collections.abc import Mapping
from dataclasses import dataclass

from idkey.figures.drawing import Group, Item, Part, group, pieces, placed
from idkey.figures.geometry import Point, Points, area, moved
from idkey.figures.plates import LETTER, label
from idkey.figures.scorpion.animal import Arm, Build, animal, coat
from idkey.figures.scorpion.underside import underside
from idkey.figures.svg import Sheet, svg
from idkey.figures.tile import PLAIN, SHOWN

WIDTH, HEIGHT = 680.0, 610.0
_FRONT = 330 + 206j
_BUILD = Build(
    length=386,
    tail=0.49,
    girth=1.2,
    bends=(0, 0, 0, 0, 0, 0),
    arm=Arm(chela=1.8, femur=0.86, patella=0.9),
)

NAMES: Mapping[str, Mapping[str, str]] = {
    "body": {"en": "body", "de": "Rumpf"},
    "carapace": {"en": "carapace", "de": "Carapax"},
    "chela": {"en": "claw (chela)", "de": "Schere (Chela)"},
    "chelicerae": {"en": "chelicerae", "de": "Cheliceren"},
    "coxae": {"en": "coxae", "de": "Hüften (Coxae)"},
    "legs": {"en": "walking legs", "de": "Laufbeine"},
    "metasoma": {"en": "tail (metasoma)", "de": "Schwanz (Metasoma)"},
    "patella": {"en": "patella", "de": "Patella"},
    "pectines": {"en": "combs (pectines)", "de": "Kämme (Pectines)"},
    "sternum": {"en": "sternum", "de": "Sternum"},
    "telson": {"en": "sting (telson)", "de": "Stachel (Telson)"},
    "tergites": {"en": "back plates (tergites)", "de": "Rückenplatten (Tergite)"},
}
VIEWS: Mapping[str, Mapping[str, str]] = {
    "above": {"en": "From above", "de": "Von oben"},
    "below": {"en": "From below", "de": "Von unten"},
}


@dataclass(frozen=True, slots=True)
class _Tag:
    """Where a name stands, and the points its line runs through."""

    part: str
    at: Point
    to: Points
    anchor: str


def _tags(view: str) -> tuple[_Tag, ...]:
    both = (
        _Tag("chelicerae", 330 + 14j, (330 + 26j, 330 + 197j), "middle"),
        _Tag("chela", 478 + 80j, (404 + 96j,), "start"),
        _Tag("patella", 478 + 160j, (396 + 170j,), "start"),
        _Tag("legs", 506 + 222j, (444 + 206j,), "start"),
        _Tag("metasoma", 446 + 490j, (332 + 490j,), "start"),
        _Tag("telson", 446 + 572j, (331 + 566j,), "start"),
    )
    if view == "above":
        return (
            *both,
            _Tag("carapace", 160 + 180j, (316 + 244j,), "end"),
            _Tag("body", 160 + 412j, (212 + 412j, 302 + 362j), "end"),
            _Tag("tergites", 458 + 412j, (420 + 412j, 346 + 354j), "start"),
        )
    return (
        *both,
        _Tag("coxae", 160 + 180j, (312 + 252j,), "end"),
        _Tag("sternum", 160 + 322j, (200 + 322j, 329 + 263j), "end"),
        _Tag("pectines", 160 + 412j, (206 + 412j, 300 + 286j), "end"),
        _Tag("body", 478 + 412j, (440 + 412j, 352 + 340j), "start"),
    )


_GROUPS = {
    "above": (
        "chela",
        "telson",
        "metasoma",
        "chelicerae",
        "patella",
        "carapace",
        "tergites",
        "legs",
    ),
    "below": (
        "sternum",
        "pectines",
        "chela",
        "telson",
        "metasoma",
        "chelicerae",
        "patella",
        "coxae",
        "body",
        "legs",
    ),
}
"""Parts that can be clicked, uppermost first."""


def _drawn(view: str) -> Group:
    drawn = (
        animal(_BUILD, coat(PLAIN))
        if view == "above"
        else underside(_BUILD, coat(PLAIN), teeth=SHOWN)
    )
    here = placed(drawn, moved(_FRONT))
    return here if isinstance(here, Group) else group(here)


def plate_svg(view: str) -> str:
    """One plate as SVG text, labelled in English."""
    tags = [
        label(tag.part, NAMES[tag.part]["en"], at=tag.at, to=tag.to, anchor=tag.anchor)
        for tag in _tags(view)
    ]
    sheet = Sheet(width=WIDTH, height=HEIGHT, title=f"A scorpion {VIEWS[view]['en'].lower()}")
    return svg(sheet, (_drawn(view), group(*tags, name="labels")))


def areas(view: str) -> dict[str, list[Points]]:
    """Rings to click on by part id: the parts themselves, then their labels."""
    drawn = _drawn(view)
    found: dict[str, list[Points]] = {part: [] for part in _GROUPS[view]}
    for part in _GROUPS[view]:
        found[part] += [_coarse(ring) for ring in _rings(drawn, part)]
    for tag in _tags(view):
        found.setdefault(tag.part, []).append(_box(tag))
    return found


def _rings(drawn: Group, part: str) -> list[Points]:
    names = {
        "chela": ("chela_left", "chela_right"),
        "body": ("sternites",),
    }.get(part, (part,))
    if part == "patella":
        return [_patella(side) for side in (1, -1)]
    return [
        piece.outline.flat(2)
        for name in names
        for item in _named(drawn, name)
        for piece in pieces((item,))
        if isinstance(piece, Part) and abs(area(piece.outline.flat(3))) > _SMALLEST
    ]


_SMALLEST = 26.0
"""Area below which a piece is no place to click on."""


def _named(item: Item, name: str) -> list[Item]:
    if isinstance(item, Part):
        return [item] if item.name == name else []
    if not isinstance(item, Group):
        return []
    if item.name == name:
        return [item]
    return [found for inner in item.items for found in _named(inner, name)]


def _patella(side: int) -> Points:
    """Ring around one patella."""
    right = (386 + 132j, 416 + 132j, 424 + 160j, 404 + 194j, 376 + 186j)
    return right if side > 0 else tuple(complex(660 - p.real, p.imag) for p in right)


def _coarse(ring: Points) -> Points:
    return tuple(complex(round(p.real, 1), round(p.imag, 1)) for p in ring)


def _box(tag: _Tag) -> Points:
    wide = max(len(name) for name in NAMES[tag.part].values()) * LETTER * 0.6 + 8
    left = tag.at.real - {"start": 6, "middle": wide / 2, "end": wide - 6}[tag.anchor]
    top, foot = tag.at.imag - LETTER * 0.9, tag.at.imag + LETTER * 0.9
    corners = (complex(left, top), complex(left + wide, top))
    return (*corners, complex(left + wide, foot), complex(left, foot))
