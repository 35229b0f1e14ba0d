"""The tarantula from below: sternum, mouthparts, book lungs, belly, marked legs."""

from dataclasses import replace

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group, placed
from idkey.figures.geometry import MIRROR, Place, Points, mirrored, moved, scaled, smooth
from idkey.figures.ink import LINE_WEIGHT, Skin
from idkey.figures.rod import rod
from idkey.figures.spider.abdomen import abdomen_outline, spinnerets_drawing
from idkey.figures.spider.animal import Build, Coat, legs_of, palp_of
from idkey.figures.spider.leg import LEG_COURSES

STERNUM: Points = (0.42j, 0.1 + 0.42j, 0.2 + 0.5j, 0.25 + 0.66j, 0.18 + 0.88j, 0.99j)
LABIUM: Points = (0.3j, 0.07 + 0.3j, 0.08 + 0.38j, 0.41j)
_MAXILLA: Points = (
    0.09 + 0.06j,
    0.2 + 0.04j,
    0.27 + 0.16j,
    0.25 + 0.32j,
    0.13 + 0.4j,
    0.09 + 0.28j,
)
_JAW: Points = (
    0.01 + 0.1j,
    0.01 - 0.24j,
    0.06 - 0.325j,
    0.16 - 0.345j,
    0.255 - 0.27j,
    0.285 - 0.06j,
    0.24 + 0.1j,
)
_FANG: Points = (0.2 - 0.25j, 0.13 - 0.26j, 0.07 - 0.14j, 0.06 + 0.06j, 0.11 - 0.08j, 0.18 - 0.18j)
_BAND: Points = (0.11j, 0.2 + 0.1j, 0.3 + 0.115j, 0.36 + 0.19j, 0.41 + 0.28j, 0.2 + 0.28j, 0.275j)
_LUNGS = ((0.13, 0.13, 0.33, 0.24), (0.14, 0.33, 0.34, 0.44))
"""Left, top, right and lower edge of the right book lungs, in carapace lengths."""


def belly_drawing(size: float, length: float, skin: Skin, *, band: str = "") -> Group:
    """The abdomen from below: furrow, book lungs, spinnerets.

    Args:
        size: Length of the carapace.
        length: Length of the abdomen, in carapace lengths.
        skin: What it is painted with.
        band: Colour of a band across its front; empty for none.
    """
    outline = abdomen_outline(size, length)
    items: list[Item] = [Part(outline=outline, skin=skin)]
    if band:
        ring = smooth(mirrored(_BAND), sharp=(2, 4, 8, 10)).placed(scaled(size))
        items.append(Patch(outline=ring, colour=band))
    for left, top, right, low in _LUNGS:
        for side in (Place(), MIRROR):
            corners = (left + top * 1j, right + top * 1j, right + low * 1j, left + 0.02 + low * 1j)
            lid = smooth(corners)
            place = scaled(size).after(side)
            items.append(Line(outline=lid.placed(place), colour=skin.detail, weight=LINE_WEIGHT))
    furrow = smooth((-0.3 + 0.28j, -0.1 + 0.255j, 0.1 + 0.255j, 0.3 + 0.28j), closed=False)
    items.append(Line(outline=furrow.placed(scaled(size)), colour=skin.detail, weight=1.6))
    end = complex(0, size * length)
    return group(*items, placed(spinnerets_drawing(size, end - 0.1j * size, skin), Place()))


def chest_drawing(build: Build, coat: Coat, *, name: str = "") -> Group:
    """Coxae, maxillae, labium and sternum."""
    size = build.carapace
    ground = coat.shield.skin
    bottom = smooth(mirrored((0.02j, 0.2 + 0.04j, 0.4 + 0.4j, 0.4 + 0.8j, 0.2 + 1.0j, 1.0j)))
    base = replace(ground, fill=ground.shade)
    items: list[Item] = [Part(outline=bottom.placed(scaled(size)), skin=base, shaded=False)]
    coxae: list[Item] = []
    maxillae: list[Item] = []
    for side in (MIRROR, Place()):
        for index, leg in enumerate(("leg_4", "leg_3", "leg_2", "leg_1")):
            end = complex(*LEG_COURSES[leg][0]) * size
            start = complex(0.12, 0.84 - 0.11 * index) * size
            wide = build.thick * size * 1.02
            coxae.append(Part(outline=rod(side(start), side(end * 1.06), wide, wide), skin=ground))
        maxilla = smooth(_MAXILLA).placed(scaled(size).after(side))
        maxillae.append(Part(outline=maxilla, skin=ground))
    items += [group(*coxae, name="coxae"), group(*maxillae, name="maxillae")]
    plate = smooth(mirrored(STERNUM)).placed(scaled(size))
    lip = smooth(mirrored(LABIUM)).placed(scaled(size))
    items += [Part(outline=plate, skin=ground), Part(outline=lip, skin=ground)]
    return group(*items, name=name)


def fangs_drawing(size: float, skin: Skin, fang: Skin, *, name: str = "") -> Group:
    """Jaws from below with the fangs folded in."""
    items: list[Item] = []
    for side in (Place(), MIRROR):
        place = scaled(size).after(side)
        items.append(Part(outline=smooth(_JAW).placed(place), skin=skin))
        items.append(Part(outline=smooth(_FANG, sharp=(3,)).placed(place), skin=fang))
    return group(*items, name=name)


def underside(build: Build, coat: Coat, *, fang: Skin, band: str = "") -> Group:
    """The animal from below, front of the carapace at 0, heading up the page.

    Groups are named legs, palps, chelicerae, abdomen and chest.

    Args:
        build: Its proportions.
        coat: What it is painted with.
        fang: Skin of the fangs.
        band: Colour of a band across the front of the abdomen; empty for none.
    """
    size = build.carapace
    sides = (MIRROR, Place())
    belly = belly_drawing(size, build.abdomen, coat.belly.skin, band=band)
    return group(
        group(*(leg for side in sides for leg in legs_of(build, coat, side)), name="legs"),
        group(*(palp_of(build, coat, side) for side in sides), name="palps"),
        group(placed(belly, moved(complex(0, size * 0.97))), name="abdomen"),
        fangs_drawing(size, coat.jaws, fang, name="chelicerae"),
        chest_drawing(build, coat, name="chest"),
    )
