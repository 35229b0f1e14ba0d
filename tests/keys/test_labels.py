"""Labels as shops write them, against every shipped key."""

import numpy as np
import pytest

from idkey.engine.compile import compile_key
from idkey.engine.labels import label_entry, match_labels, name_only
from idkey.engine.separation import partly
from idkey.formats.folder import list_keys, read_key
from idkey.model.character import Character, Look
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.places import keys_folder
from idkey.report.label_words import mixup_warning

KEYS = {entry.id: read_key(entry.folder) for entry in list_keys(keys_folder())}
SCORPIONS, KNEES = "large-dark-scorpions", "red-kneed-tarantulas"
TREES, LEAVES = "ornamental-tarantulas", "kitchen-leaves"


@pytest.mark.parametrize(
    ("key", "text", "covers"),
    [
        (SCORPIONS, "emperor scorpions 4-5 cm", {"pandinus_imperator"}),
        (SCORPIONS, "🦂 Kaiserskorpione, adult ♀", {"pandinus_imperator"}),
        (SCORPIONS, "Pandinus imperator (C.L. Koch, 1841)", {"pandinus_imperator"}),
        (SCORPIONS, "P. imperator 0.1", {"pandinus_imperator"}),
        (SCORPIONS, "Heterometrus swammerdami Simon, 1872", {"gigantometrus_swammerdami"}),
        (SCORPIONS, "Asiatischer Riesenskorpion NZ", "L07"),
        (KNEES, "Rotknie-Vogelspinnen", {"brachypelma_smithi", "brachypelma_hamorii"}),
        (KNEES, "Euathlus smithi", {"brachypelma_smithi"}),
        (KNEES, "Brachypelma vagans, sling", {"tliltocatl_vagans"}),
        (KNEES, "B. boehmei", {"brachypelma_boehmei"}),
        (TREES, "P. regalis spiderling", {"poecilotheria_regalis"}),
        (TREES, "Mygale fasciata", {"poecilotheria_fasciata"}),
        (LEAVES, "Rosmarinus officinalis L.", {"rosemary"}),
        (LEAVES, "Thymian 🌿", {"thyme"}),
    ],
)
def test_sizes_signs_authorities_and_old_names_leave_a_label_what_it_is(
    key: str, text: str, covers: set[str] | str
):
    first = match_labels(KEYS[key], text)[0]
    entry = label_entry(KEYS[key], first.label)

    assert first.exact
    assert entry is not None
    assert covers in (set(entry.covers), entry.id)


@pytest.mark.parametrize(
    ("key", "text", "label"),
    [
        (SCORPIONS, "Emporer Scorpion", "L01"),
        (SCORPIONS, "Pandinus imperatr", "L01"),
        (KNEES, "Brachypelma smithii", "brachypelma_smithi"),
        (KNEES, "Kraushaarvogelspinne", "brachypelma_albopilosum"),
        (TREES, "Poecilotheria fasciatta", "poecilotheria_fasciata"),
        (LEAVES, "parsly", "flat_parsley"),
    ],
)
def test_a_slip_of_the_pen_is_offered_first_and_never_taken(key: str, text: str, label: str):
    first = match_labels(KEYS[key], text)[0]

    assert (first.label, first.exact) == (label, False)


def test_a_slip_of_the_pen_is_offered_under_the_name_that_the_label_goes_by():
    offered = match_labels(read_key(keys_folder() / "large-dark-scorpions"), "emporer scorpoin")

    assert offered[0].text == "Emperor scorpion"  # its French spelling is nearer by letters alone


@pytest.mark.parametrize("text", ["Black death stalker", "Palamneus fulvipes", "🦂🦂", "12 cm", ""])
def test_what_the_key_does_not_know_is_not_guessed(text: str):
    assert not [match for match in match_labels(KEYS[SCORPIONS], text) if match.exact]


def test_a_genus_covers_what_a_shop_may_still_keep_in_it_and_more_than_the_key_holds():
    entry = label_entry(KEYS[KNEES], match_labels(KEYS[KNEES], "Brachypelma sp.")[0].label)

    assert entry is not None
    assert {"brachypelma_smithi", "tliltocatl_vagans"} <= set(entry.covers)
    assert entry.covers_outside


def test_a_bare_name_warns_of_what_the_trade_label_of_the_taxon_hides():
    key = KEYS[SCORPIONS]
    entry = label_entry(key, match_labels(key, "Hadrurus spadix")[0].label)

    assert entry is not None
    warning = mixup_warning(key, entry)
    assert "Black hairy scorpion" in warning
    assert "Parabuthus transvaalicus" in warning
    assert "Danger: Treat it as medically significant" in warning


@pytest.mark.parametrize("key", KEYS.values(), ids=lambda key: key.id)
def test_an_animal_under_an_older_name_is_no_mislabel(key: Key):
    for taxon in key.taxa:
        for synonym in taxon.synonyms:
            first = match_labels(key, name_only(synonym))[0]
            entry = label_entry(key, first.label)
            assert first.exact, synonym
            assert entry is not None
            known = {*entry.covers, *entry.sold_as}
            assert taxon.id in known or not entry.covers, synonym


@pytest.mark.parametrize(
    ("key", "label"),
    [
        pytest.param(key, label, id=f"{key.id}-{label.id}")
        for key in KEYS.values()
        for label in key.labels
        if label.covers and label.sold_as
    ],
)
def test_what_decides_a_label_begins_with_what_needs_no_handling(key: Key, label: Label):
    """Where the key has a character that tells the two apart without handling, one is named."""
    matrix = compile_key(key)
    told = np.zeros(len(key.characters), bool)
    for taxon in label.covers:
        told |= partly(matrix, matrix.row[taxon])[matrix.rows(label.sold_as)].any(axis=0)
    named = [key.character[c] for c in label.deciding]

    could = [c for c, tells in zip(key.characters, told, strict=True) if tells and _easy(c)]
    assert not could or any(_easy(c) and told[matrix.number[c.id]] for c in named) or _paired(label)
    assert named[0].looks != (Look.DEAD,)


def _easy(character: Character) -> bool:
    return any(not look.handling and look is not Look.DEAD for look in character.looks)


def _paired(label: Label) -> bool:
    """Look-alikes whose scores differ on nothing that sources call decisive."""
    return label.id == "L04"
