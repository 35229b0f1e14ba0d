"""Tiles about carapace, jaws and abdomen of a tarantula."""

import math
from functools import partial

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group, placed
from idkey.figures.fields import hair, hairs, scatter
from idkey.figures.geometry import MIRROR, Outline, Place, Point, ellipse, mirrored, moved, smooth
from idkey.figures.ink import EDGE, EDGE_WEIGHT, HAIR_WEIGHT, skin
from idkey.figures.rod import rod
from idkey.figures.spider.abdomen import Belly, abdomen_drawing, abdomen_outline, spinnerets_drawing
from idkey.figures.spider.animal import Build, Coat, animal
from idkey.figures.spider.body import Shield, jaws_drawing, shield_drawing
from idkey.figures.spider.leg import LEG_COURSES, PALP_COURSE, PALP_SEGMENTS, SEGMENTS
from idkey.figures.spider.tones import (
    BLACK,
    BLUE,
    BROWN,
    DARK,
    GOLD,
    GREY,
    HAIR,
    ORANGE,
    PALE,
    PINK,
    SHADE_HAIR,
    pelt,
)
from idkey.figures.tile import PLAIN, Colours, Rows, Tiles, tiles_of, tone

_SIZE = 136.0
_FRONT = moved(190 + 72j)

SHIELDS: dict[str, Shield] = {
    "dark_with_pale_border": Shield(skin=skin(DARK), border=PALE),
    "starburst": Shield(skin=skin(DARK), rays=PALE, rays_reach=0.92),
    "dark_reduced_to_eye_patches": Shield(skin=skin(PALE), eye_patches=DARK),
    "uniform_orange": Shield(skin=skin(ORANGE)),
    "uniform_pale_golden": Shield(skin=skin(GOLD)),
    "black_triangle_on_pale": Shield(skin=skin(PALE), triangle=BLACK),
    "uniform_black": Shield(skin=skin(BLACK)),
    "uniform_brown": Shield(skin=skin(BROWN)),
}
"""Carapaces of the American key by state."""
ORNATE: dict[str, Shield] = {
    "two_black_lines": Shield(skin=skin("#b5ad98"), lines=BLACK),
    "greenish_yellow_or_purplish": Shield(skin=skin("#a8a45e")),
    "white_starburst_at_fovea": Shield(skin=skin("#8a8374"), rays="#f1ede2", rays_reach=0.62),
    "dark_brown_pale_edge_starburst": Shield(
        skin=skin("#4a3426"), border="#cdbf9f", rays="#cdbf9f", rays_reach=0.7
    ),
    "dark_brown_plain": Shield(skin=skin("#4a3426")),
}
"""Carapaces of the ornamental key by state."""


def _setting(size: float) -> list[Item]:
    """What stands round a carapace: jaws, roots of the legs, start of the abdomen."""
    belly = (0.96j, 0.12 + 0.97j, 0.3 + 1.08j, 0.34 + 1.2j, 1.2j)
    ring = smooth(mirrored([p * size for p in belly]), sharp=(3, 5))
    found: list[Item] = [Part(outline=ring, skin=PLAIN)]
    for side in (Place(), MIRROR):
        for course in (*reversed(list(LEG_COURSES.values())), PALP_COURSE):
            start, knee = complex(*course[0]), complex(*course[1])
            end = start + (knee - start) / abs(knee - start) * (
                0.3 if course is PALP_COURSE else 0.42
            )
            root = rod(
                side(start * 0.8 * size + 0.1j * size), side(end * size), 0.22 * size, 0.21 * size
            )
            found.append(Part(outline=root, skin=PLAIN))
    return [*found, jaws_drawing(size, PLAIN)]


def _shield(shield: Shield, _: Colours) -> Item:
    drawn = group(*_setting(_SIZE), shield_drawing(_SIZE, shield, name="subject"))
    return placed(drawn, _FRONT)


def _two_tone(_: Colours) -> Item:
    """Two carapaces: the state covers two tints."""
    small = 70.0
    found: list[Item] = []
    for tint, x in (("#a8a45e", 128), ("#7d6a86", 252)):
        drawn = group(*_setting(small), shield_drawing(small, Shield(skin=skin(tint))))
        found.append(placed(drawn, moved(complex(x, 106))))
    return group(*found)


_BELLY_AT = moved(190 + 14j)


def _setae(state: str, colours: Colours) -> Item:
    tint = tone(colours, "abd_setae", state)
    ground = tone(colours, "abd_setae", "no_bright_setae")
    outline = abdomen_outline(160, 1.14).placed(_BELLY_AT)
    bright = state != "no_bright_setae"
    items: list[Item] = [
        placed(spinnerets_drawing(104, 160 * 1.14j, skin(ground)), _BELLY_AT),
        Part(outline=outline, skin=skin(ground), name="subject"),
    ]
    colour = tint if bright else SHADE_HAIR
    for index, root in enumerate(scatter(outline.flat(6), 17, margin=8, jitter=0.4)):
        side = (root.real - 190) / 90
        way = hair(root, complex(side * 14, 25), 0.05 if index % 2 else -0.05)
        items.append(Line(outline=way, colour=colour, weight=2.2 if bright else 1.2))
    for way in hairs(outline, 46, length=26, start=0.06, end=0.94):
        bent = hair(way.start, way.pieces[-1][2] - way.start + 8j)
        items.append(Line(outline=bent, colour=colour, weight=2.0, haloed=True))
    return group(*items)


_LENS = (190 + 122j, 114.0, 106.0)
"""Middle and half-widths of what a lens shows."""


def _curl(curled: bool, _: Colours) -> Item:
    """The edge of the abdomen through a lens, its long hairs standing against the light."""
    items: list[Item] = [
        Part(outline=ellipse(*_LENS), skin=skin("#efe6d3"), shaded=False, weight=3.2),
        Part(outline=_skin_edge(), skin=skin(DARK), weight=1.6),
    ]
    for index, share in enumerate((-0.72, -0.5, -0.3, -0.1, 0.12, 0.33, 0.52, 0.73)):
        root = complex(190 + 104 * share, 160 + 13 * share**2)
        course = complex(22 * share, -88 + 16 * abs(share) - 6 * (index % 3))
        way = _wave(root, course, turns=2.6 if curled else 0.0, phase=1.1 * index)
        items.append(Line(outline=way, colour=ORANGE, weight=2.8, haloed=True))
    return group(*items)


def _skin_edge() -> Outline:
    """The dark skin that fills the foot of the lens."""
    centre, wide, high = _LENS
    turns = [math.radians(degrees) for degrees in (28, 50, 72, 90, 108, 130, 152)]
    foot = [centre + complex(wide * math.cos(turn), high * math.sin(turn)) for turn in turns]
    top = [foot[-1], 138 + 159j, 190 + 155j, 242 + 159j, foot[0]]
    return smooth((*top, *foot[1:-1]), sharp=(0, 4))


def _wave(root: Point, course: Point, *, turns: float, phase: float) -> Outline:
    """A hair from `root` along `course`: a spiral seen from the side, or a slight bend."""
    across = course / abs(course) * 1j
    if not turns:
        return smooth((root, root + course * 0.55 + across * 2.5, root + course), closed=False)
    points = []
    for step in range(22):
        share = step / 21
        swing = 7.5 * min(1.0, 3 * share) * math.sin(2 * math.pi * turns * share + phase)
        points.append(root + course * share * 0.86 + across * swing)
    return smooth(points, closed=False)


_PALP = (70 - 30j, 98 - 40j, 116 - 16j, 112 + 40j, 96 + 84j, 80 + 60j, 82 + 10j)
_FANG = (24 + 104j, 40 + 104j, 46 + 118j, 36 + 136j, 18 + 142j, 30 + 126j)
_JAW = (3 - 24j, 40 - 34j, 66 - 14j, 70 + 36j, 58 + 88j, 36 + 112j, 10 + 106j, 3 + 60j)
_BAND = (5 + 8j, 34 + 0j, 66 + 8j, 67 + 30j, 36 + 24j, 5 + 30j)
_JAW_HAIRS = (20 + 46j, 44 + 52j, 28 + 70j, 48 + 78j, 20 + 88j, 36 + 94j)
_FACE = (-84j, 34 - 82j, 66 - 62j, 76 - 34j, 70 - 20j, -14j)
_EYES = ((9, -58, 5.6), (26, -62, 4.2), (12, -70, 3.4), (28, -52, 3.6))


def _jaws(banded: bool, _: Colours) -> Item:
    at = moved(190 + 94j)
    items: list[Item] = []
    for side in (Place(), MIRROR):
        items += _half_face(at.after(side), banded=banded)
    items.append(Part(outline=smooth(mirrored(_FACE)).placed(at), skin=PLAIN))
    for x, y, size in _EYES:
        for way in (-1, 1):
            items.append(Patch(outline=ellipse(at(complex(way * x, y)), size), colour=EDGE))
    return group(*items)


def _half_face(place: Place, *, banded: bool) -> list[Item]:
    """Palp, fang and jaw of one side, from the front."""
    jaw = smooth(_JAW).placed(place)
    items: list[Item] = [
        Part(outline=smooth(_PALP).placed(place), skin=PLAIN),
        Part(outline=smooth(_FANG, sharp=(4,)).placed(place), skin=skin(DARK)),
        Part(outline=jaw, skin=skin(DARK)),
    ]
    if banded:
        band = smooth(_BAND, sharp=(0, 2, 3, 5)).placed(place)
        items += [
            Patch(outline=band, colour=PINK),
            Line(outline=jaw, colour=EDGE, weight=EDGE_WEIGHT),
        ]
    for root in _JAW_HAIRS:
        way = hair(root, 3 + 12j).placed(place)
        items.append(Line(outline=way, colour=HAIR, weight=HAIR_WEIGHT))
    return items


def _leaf(kind: str, _: Colours) -> Item:
    belly = Belly(skin=skin("#8b8577"), folio=kind, folio_colours=("#d3cdbd", "#2f2b28"))
    drawn = group(
        spinnerets_drawing(110, 178 * 1.14j, PLAIN),
        abdomen_drawing(178, 1.14, belly, name="subject"),
    )
    return placed(drawn, moved(190 + 10j))


def whole(ground: str, build: Build, front: Point) -> Group:
    """A whole animal of one colour, heading left."""
    legs = {segment: pelt(ground, hairs=4) for segment in SEGMENTS}
    painted = Coat(
        shield=Shield(skin=skin(ground)),
        jaws=skin(ground),
        belly=Belly(skin=skin(ground)),
        legs={"leg": legs},
        palps={segment: legs[segment] for segment in PALP_SEGMENTS},
    )
    return placed(animal(build, painted), Place(-1j, 0j, front))


def _blue(present: bool, _: Colours) -> Item:
    return whole(BLUE if present else GREY, Build(length=90), 160 + 122j)


_SHIELD_TITLES = {
    "dark_with_pale_border": "Carapace dark with a pale border",
    "starburst": "Carapace with a starburst",
    "dark_reduced_to_eye_patches": "Carapace pale, dark only by the eyes",
    "uniform_orange": "Carapace orange all over",
    "uniform_pale_golden": "Carapace pale gold all over",
    "black_triangle_on_pale": "Carapace pale with a black triangle",
    "uniform_black": "Carapace black all over",
    "uniform_brown": "Carapace brown all over",
}
_ORNATE_TITLES = {
    "two_black_lines": "Carapace with two black lines",
    "white_starburst_at_fovea": "Carapace with white rays at the centre pit",
    "dark_brown_pale_edge_starburst": "Carapace dark brown with a pale edge and rays",
    "dark_brown_plain": "Carapace plain dark brown",
}
_SETAE = {
    "red": "Long hairs of the abdomen red",
    "orange": "Long hairs of the abdomen orange",
    "golden_bronze": "Long hairs of the abdomen golden bronze",
    "no_bright_setae": "No bright hairs on the abdomen",
}
_CURLS: Rows = {
    "curled": ("Long hairs curled", partial(_curl, True)),
    "straight": ("Long hairs straight", partial(_curl, False)),
}
_BANDS: Rows = {
    "present": ("Two bands across the jaws", partial(_jaws, True)),
    "absent": ("No bands across the jaws", partial(_jaws, False)),
}
_LEAVES: Rows = {
    "full_length": ("Leaf along the whole abdomen", partial(_leaf, "full")),
    "ends_halfway_three_linked_spots": (
        "Leaf along half the abdomen, then three joined spots",
        partial(_leaf, "half"),
    ),
}
_BLUES: Rows = {
    "present": ("Animal covered in blue hairs", partial(_blue, True)),
    "absent": ("Animal not blue", partial(_blue, False)),
}
AMERICAN: Tiles = {
    **tiles_of(
        "carapace",
        {s: (t, partial(_shield, SHIELDS[s])) for s, t in _SHIELD_TITLES.items()},
        "carapace",
    ),
    **tiles_of("abd_setae", {s: (t, partial(_setae, s)) for s, t in _SETAE.items()}, "abdomen"),
    **tiles_of("setae_curl", _CURLS, "abdomen"),
    **tiles_of("cheliceral_bands", _BANDS, "chelicerae"),
}
"""Of the American key."""
ORNAMENTAL: Tiles = {
    **tiles_of(
        "poe_carapace",
        {
            **{s: (t, partial(_shield, ORNATE[s])) for s, t in _ORNATE_TITLES.items()},
            "greenish_yellow_or_purplish": (
                "Carapace greenish yellow or purplish",
                partial(_two_tone),
            ),
        },
        "carapace",
    ),
    **tiles_of("folio", _LEAVES, "abdomen"),
    **tiles_of("dorsal_blue", _BLUES, "body", "legs"),
}
"""Of the key to the ornamental ones."""
TILES: Tiles = {**AMERICAN, **ORNAMENTAL}
