"""Every tile of the two tarantula keys."""

from idkey.figures.spider import (
    measures,
    tiles_barbs,
    tiles_body,
    tiles_legs,
    tiles_organs,
    tiles_under,
)
from idkey.figures.tile import Tiles

AMERICAN: Tiles = {
    **tiles_legs.AMERICAN,
    **tiles_body.AMERICAN,
    **tiles_organs.AMERICAN,
    **tiles_barbs.TILES,
    **measures.AMERICAN,
}
"""Of the key to red-kneed and other American ground tarantulas."""
ORNAMENTAL: Tiles = {
    **tiles_under.TILES,
    **tiles_legs.ORNAMENTAL,
    **tiles_body.ORNAMENTAL,
    **tiles_organs.HOOKS,
    **tiles_barbs.TILES,
    **measures.ORNAMENTAL,
}
"""Of the key to ornamental tarantulas."""
