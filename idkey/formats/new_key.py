"""Keys to begin with: the least that a key can be."""

from idkey.formats.imported import UNKNOWN_HAZARD, Ids
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.taxon import Taxon

FIRST_VERSION = "0.1.0"
"""Version of a key that nobody has used yet. Source: Semantic Versioning 2.0.0, item 4."""


def id_for(title: str) -> str:
    """An id like the title, for a key folder."""
    return Ids("key").new(title).replace("_", "-")


def empty_key(title: str) -> Key:
    """A key with one taxon and one character, to be overwritten; no key can have fewer.

    Args:
        title: Its title; the id is made from it.
    """
    states = (State(id="first", label="first state"), State(id="second", label="second state"))
    character = Character(
        id="first_character",
        name="First character",
        question="What does one see?",
        kind=Kind.CATEGORICAL,
        looks=(Look.TUB,),
        states=states,
    )
    taxon = Taxon(id="first_taxon", name="First taxon", hazard=UNKNOWN_HAZARD)
    return Key(
        id=id_for(title),
        title=title,
        version=FIRST_VERSION,
        taxa=(taxon,),
        characters=(character,),
    )
