"""The orientation plates of a tarantula, from above and from below."""

from collections.abc import Mapping
from dataclasses import replace

from idkey.figures.drawing import Group, placed
from idkey.figures.geometry import MIRROR, Place, Points, moved
from idkey.figures.ink import skin
from idkey.figures.plate_layout import Tag, box, labelled, rings
from idkey.figures.rod import rod
from idkey.figures.spider.abdomen import Belly
from idkey.figures.spider.animal import Build, Coat, animal
from idkey.figures.spider.below import underside
from idkey.figures.spider.body import Shield
from idkey.figures.spider.inset import GROUPS
from idkey.figures.spider.leg import LEG_COURSES, PALP_SEGMENTS, SEGMENTS, WIDTHS
from idkey.figures.spider.tiles_legs import CONTEXT_PELT
from idkey.figures.svg import Sheet
from idkey.figures.tile import PLAIN

WIDTH, HEIGHT = 760.0, 600.0
_FRONT = 380 + 252j
_BUILD = Build(length=226)

NAMES: Mapping[str, Mapping[str, str]] = {
    "abdomen": {"en": "abdomen", "de": "Hinterleib"},
    "carapace": {"en": "carapace", "de": "Carapax"},
    "chelicerae": {"en": "jaws (chelicerae)", "de": "Kieferklauen"},
    "femora": {"en": "femur", "de": "Femur"},
    "legs": {"en": "legs", "de": "Beine"},
    "metatarsi": {"en": "metatarsus", "de": "Metatarsus"},
    "palps": {"en": "palps", "de": "Taster"},
    "patellae": {"en": "knee (patella)", "de": "Knie (Patella)"},
    "tibiae": {"en": "tibia", "de": "Tibia"},
}
VIEWS: Mapping[str, Mapping[str, str]] = {
    "above": {"en": "From above", "de": "Von oben"},
    "below": {"en": "From below", "de": "Von unten"},
}


def _spot(leg: str, segment: str, side: Place) -> complex:
    """The middle of a segment on the plate."""
    course = LEG_COURSES[leg]
    index = SEGMENTS.index(segment)
    middle = (complex(*course[index]) + complex(*course[index + 1])) / 2
    return side(middle * _BUILD.carapace) + _FRONT


def _tags(view: str) -> tuple[Tag, ...]:
    here = Place()
    shared = (
        Tag("chelicerae", 380 + 18j, (380 + 30j, 370 + 232j), "middle"),
        Tag("palps", 464 + 70j, (_FRONT + complex(0.55, -1.3) * _BUILD.carapace,), "middle"),
        Tag("metatarsi", 628 + 120j, (_spot("leg_2", "metatarsus", here),), "start"),
        Tag("tibiae", 652 + 214j, (_spot("leg_2", "tibia", here),), "start"),
        Tag("patellae", 602 + 280j, (_spot("leg_2", "patella", here),), "start"),
        Tag("femora", 652 + 336j, (_spot("leg_3", "femur", here),), "start"),
        Tag("legs", 118 + 110j, (_spot("leg_2", "tarsus", MIRROR),), "end"),
    )
    if view == "above":
        return (
            *shared,
            Tag("carapace", 130 + 318j, (368 + 306j,), "end"),
            Tag("abdomen", 414 + 548j, (392 + 436j,), "start"),
        )
    return (*shared, Tag("abdomen", 414 + 548j, (392 + 436j,), "start"))


def _drawn(view: str) -> Group:
    bare = replace(CONTEXT_PELT, hairs=5)
    legs = dict.fromkeys(SEGMENTS, bare)
    painted = Coat(
        shield=Shield(skin=PLAIN),
        jaws=PLAIN,
        belly=Belly(skin=PLAIN),
        legs={"leg": legs},
        palps={name: legs[name] for name in PALP_SEGMENTS},
    )
    if view == "above":
        return placed(animal(_BUILD, painted), moved(_FRONT))
    return placed(underside(_BUILD, painted, fang=skin("#4a3020")), moved(_FRONT))


def plate_svg(view: str) -> str:
    """One plate as SVG text, labelled in English."""
    sheet = Sheet(width=WIDTH, height=HEIGHT, title=f"A tarantula {VIEWS[view]['en'].lower()}")
    return labelled(sheet, _drawn(view), _tags(view), NAMES)


def areas(view: str) -> dict[str, list[Points]]:
    """Rings to click on by part id: the parts themselves, then their labels."""
    drawn = _drawn(view)
    names = ["chelicerae", "abdomen", "palps"]
    names = ["carapace", *names] if view == "above" else names
    found = {name: rings(drawn, name) for name in names}
    for plural, segment in GROUPS.items():
        found[plural] = _segments(segment)
    found["legs"] = _segments("tarsus") + rings(drawn, "coxae")
    found["palps"] += rings(drawn, "maxillae")
    for tag in _tags(view):
        found[tag.part].append(box(tag, NAMES))
    return found


def _segments(segment: str) -> list[Points]:
    """Rings around that segment of all eight legs."""
    index = SEGMENTS.index(segment)
    size = _BUILD.carapace
    wide = _BUILD.thick * size
    found = []
    for course in LEG_COURSES.values():
        for side in (Place(), MIRROR):
            ends = [side(complex(*point) * size) + _FRONT for point in course[index : index + 2]]
            after = WIDTHS[min(index + 1, 4)]
            found.append(rod(ends[0], ends[1], wide * WIDTHS[index], wide * after).flat(1))
    return found
