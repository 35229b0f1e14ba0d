"""Which drawings belong to which shipped key."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from idkey.figures.scorpion import inset as scorpion_inset
from idkey.figures.scorpion import tiles as scorpion_tiles
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
}
"""Drawings by key id."""


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
