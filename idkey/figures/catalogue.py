"""Which drawings belong to which shipped key."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from idkey.figures.leaf import inset as leaf_inset
from idkey.figures.leaf import tiles as leaf_tiles
from idkey.figures.plan import Values
from idkey.figures.plate_list import PlateSet, plate_files
from idkey.figures.portrait import PLANS, plan_portrait
from idkey.figures.scorpion import inset as scorpion_inset
from idkey.figures.scorpion import plates as scorpion_plates
from idkey.figures.scorpion import tiles as scorpion_tiles
from idkey.figures.spider import inset as spider_inset
from idkey.figures.spider import plates as spider_plates
from idkey.figures.spider import tiles as spider_tiles
from idkey.figures.tile import Colours, Inset, Tiles, tile_svg
from idkey.formats.folder import read_key
from idkey.model.key import Key


@dataclass(frozen=True, slots=True)
class Drawn:
    """The drawings of one key.

    Attributes:
        tiles: Its tiles.
        inset: Draws the small animal of its body plan.
    """

    tiles: Tiles
    inset: Inset


CATALOGUE: Mapping[str, Drawn] = {
    "large-dark-scorpions": Drawn(scorpion_tiles.TILES, scorpion_inset.inset),
    "red-kneed-tarantulas": Drawn(spider_tiles.AMERICAN, spider_inset.inset),
    "kitchen-leaves": Drawn(leaf_tiles.TILES, leaf_inset.inset),
    "ornamental-tarantulas": Drawn(spider_tiles.ORNAMENTAL, spider_inset.inset),
}
"""Drawings by key id."""


PLATES: Mapping[str, PlateSet] = {
    "scorpion": PlateSet(
        names=scorpion_plates.NAMES,
        views=scorpion_plates.VIEWS,
        size=(scorpion_plates.WIDTH, scorpion_plates.HEIGHT),
        draw=scorpion_plates.plate_svg,
        areas=scorpion_plates.areas,
    ),
    "spider": PlateSet(
        names=spider_plates.NAMES,
        views=spider_plates.VIEWS,
        size=(spider_plates.WIDTH, spider_plates.HEIGHT),
        draw=spider_plates.plate_svg,
        areas=spider_plates.areas,
    ),
}
"""Orientation plates by body plan."""


def colours_of(key: Key) -> Colours:
    """Reference colours of the key's states; states without any are left out."""
    return {
        (character.id, state.id): state.colours
        for character in key.characters
        for state in character.states
        if state.colours
    }


def tile_files(keys: Path) -> dict[str, str]:
    """Every tile as SVG text, by its path below the image folder.

    Args:
        keys: Folder of the shipped keys, for their reference colours.

    Raises:
        KeyProblems: A key has mistakes.
    """
    found: dict[str, str] = {}
    for key_id, drawn in CATALOGUE.items():
        colours = colours_of(read_key(keys / key_id))
        for (character, state), tile in drawn.tiles.items():
            place = f"figures/{key_id}/{character}/{state}.svg"
            found[place] = tile_svg(tile, colours, drawn.inset)
    return found


def plan_files() -> dict[str, str]:
    """Plates, their lists, and each body plan before anything is known of the animal."""
    found: dict[str, str] = {}
    for body_plan, plates in PLATES.items():
        found |= plate_files(body_plan, plates)
    for body_plan in PLANS:
        found[f"bodyplans/{body_plan}.svg"] = plan_portrait(body_plan, Values(), "Nothing known")
    return found
