"""The shipped scorpion key, and what a shop sees of it."""

import pytest

from idkey import places
from idkey.drill.beginning import Bench
from idkey.drill.deck import Known, Offer, deck, shop_shares
from idkey.formats.folder import read_key
from idkey.model.key import Key


@pytest.fixture(scope="session")
def key() -> Key:
    return read_key(places.keys_folder() / "large-dark-scorpions")


@pytest.fixture(scope="session")
def bench(key: Key) -> Bench:
    return Bench(key, shop_shares(key, {}))


@pytest.fixture(scope="session")
def drawn(key: Key) -> frozenset[str]:
    return frozenset(character.id for character in key.characters)


@pytest.fixture(scope="session")
def offers(bench: Bench, drawn: frozenset[str]) -> tuple[Offer, ...]:
    return deck(bench.matrix(), Known(sees=bench.sees, drawn=drawn))
