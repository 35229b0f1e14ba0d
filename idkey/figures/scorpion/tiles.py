"""Every tile of the scorpion key."""

from idkey.figures.scorpion import (
    measures,
    tiles_arm,
    tiles_below,
    tiles_body,
    tiles_claw,
    tiles_coat,
    tiles_tail,
    tiles_telson,
)
from idkey.figures.tile import Tiles

TILES: Tiles = {
    **tiles_claw.TILES,
    **tiles_arm.TILES,
    **tiles_tail.TILES,
    **tiles_telson.TILES,
    **tiles_body.TILES,
    **tiles_coat.TILES,
    **tiles_below.TILES,
    **measures.TILES,
}
