"""The orientation plates of a scorpion, from above and from below."""

from collections.abc import Mapping

from idkey.figures.drawing import Group, group, placed
from idkey.figures.geometry import Points, moved
from idkey.figures.plate_layout import Tag, box, labelled, rings
from idkey.figures.scorpion.animal import Arm, Build, animal, coat
from idkey.figures.scorpion.underside import underside
from idkey.figures.svg import Sheet
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


def _tags(view: str) -> tuple[Tag, ...]:
    both = (
        Tag("chelicerae", 330 + 14j, (330 + 26j, 330 + 197j), "middle"),
        Tag("chela", 478 + 80j, (404 + 96j,), "start"),
        Tag("patella", 478 + 160j, (396 + 170j,), "start"),
        Tag("legs", 506 + 222j, (444 + 206j,), "start"),
        Tag("metasoma", 446 + 490j, (332 + 490j,), "start"),
        Tag("telson", 446 + 572j, (331 + 566j,), "start"),
    )
    if view == "above":
        return (
            *both,
            Tag("carapace", 160 + 180j, (316 + 244j,), "end"),
            Tag("body", 160 + 412j, (212 + 412j, 302 + 362j), "end"),
            Tag("tergites", 458 + 412j, (420 + 412j, 346 + 354j), "start"),
        )
    return (
        *both,
        Tag("coxae", 160 + 180j, (312 + 252j,), "end"),
        Tag("sternum", 160 + 322j, (200 + 322j, 329 + 263j), "end"),
        Tag("pectines", 160 + 412j, (206 + 412j, 300 + 286j), "end"),
        Tag("body", 478 + 412j, (440 + 412j, 352 + 340j), "start"),
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
    sheet = Sheet(width=WIDTH, height=HEIGHT, title=f"A scorpion {VIEWS[view]['en'].lower()}")
    return labelled(sheet, _drawn(view), _tags(view), NAMES)


def areas(view: str) -> dict[str, list[Points]]:
    """Rings to click on by part id: the parts themselves, then their labels."""
    drawn = _drawn(view)
    found = {part: _rings(drawn, part) for part in _GROUPS[view]}
    for tag in _tags(view):
        found.setdefault(tag.part, []).append(box(tag, NAMES))
    return found


def _rings(drawn: Group, part: str) -> list[Points]:
    if part == "patella":
        return [_patella(side) for side in (1, -1)]
    names = {"chela": ("chela_left", "chela_right"), "body": ("sternites",)}
    return rings(drawn, *names.get(part, (part,)))


def _patella(side: int) -> Points:
    """Ring around one patella."""
    right = (386 + 132j, 416 + 132j, 424 + 160j, 404 + 194j, 376 + 186j)
    return right if side > 0 else tuple(complex(660 - p.real, p.imag) for p in right)
