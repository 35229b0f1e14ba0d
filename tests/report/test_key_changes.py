"""Changes of a key in words that an author reads at a glance."""

from dataclasses import replace

import pytest
from hypothesis import given, settings

from idkey import places
from idkey.formats.compare import changes
from idkey.formats.folder import read_key
from idkey.model.key import Key
from idkey.model.score import Shows
from idkey.report.key_changes import content_changes
from idkey.report.language import ENGLISH, Language, in_language
from tests.formats.invented import keys


@pytest.fixture(scope="module")
def key() -> Key:
    return read_key(places.keys_folder() / "large-dark-scorpions")


def lines(old: Key, new: Key, language: Language = ENGLISH) -> tuple[str, ...]:
    return tuple(change.words for change in content_changes(old, new, language))


def test_the_thing_comes_first_then_what_it_was_and_what_it_is(key: Key):
    colour = next(s for s in key.scores if s.character == "telson_colour")
    turned = replace(colour, value=Shows({"reddish": None}))
    scores = tuple(turned if s is colour else s for s in key.scores[1:])
    taxa = (replace(key.taxa[0], range="The moon"), *key.taxa[1:])
    new = replace(
        key, title="Stings", version="9.9.9", taxa=taxa, scores=scores, labels=key.labels[1:]
    )

    assert lines(key, new) == (
        "The key, title: Large dark scorpions of the pet trade → Stings",
        "Taxon Androctonus bicolor, range: North Africa to the Levant → The moon",
        "Androctonus bicolor, Sternum shape: Triangular [just_pictures] → nothing scored",
        "Androctonus bicolor, Telson colour: Dark, like the body [mahmiyat_bicolor] → "
        "Reddish brown [mahmiyat_bicolor]",
        "Label “Emperor scorpion”: taken out",
    )
    assert lines(key, new, in_language("de"))[-1] == ("Etikett „Emperor scorpion“: herausgenommen")
    assert lines(key, key) == ()


@settings(max_examples=12, deadline=None)
@given(keys(), keys())
def test_every_change_has_a_line(old: Key, new: Key):
    told = lines(old, new)
    version = sum(change.place.field == "version" for change in changes(old, new))

    assert len(told) == len(changes(old, new)) - version
    assert all(told)
