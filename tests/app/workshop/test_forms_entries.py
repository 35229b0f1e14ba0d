"""Entries renamed, copied and removed: whatever names them follows in the same step."""

import re
from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from idkey.app.workshop.forms_entries import (
    EntryKind,
    added,
    duplicated,
    entries,
    free_id,
    is_id,
    moved,
)
from idkey.app.workshop.forms_references import Uses, removed, renamed, uses, with_states
from idkey.formats.folder import checked, drafted
from idkey.formats.plain import documents
from idkey.formats.write import folder_documents, texts_of
from idkey.model.key import Key
from tests.formats.invented import keys as invented_keys

KINDS = st.sampled_from(EntryKind)


def mistakes(key: Key, tmp_path_factory: pytest.TempPathFactory) -> list[str]:
    folder = tmp_path_factory.getbasetemp() / "made_up"
    _, problems = checked(drafted(folder, texts_of(folder_documents(key), folder)))
    return [str(one) for one in problems if one.severity == "error"]


def mentions(key: Key, name: str) -> int:
    return len(re.findall(rf"'{re.escape(name)}'", repr(documents(key))))


@settings(max_examples=10)
@given(key=invented_keys(), kind=KINDS, pick=st.integers(0, 5))
def test_a_rename_follows_every_reference_and_back_again(key: Key, kind: EntryKind, pick: int):
    found = entries(key, kind)
    assume(found)
    old = found[pick % len(found)].id

    new = renamed(key, kind, old, "quite_new")

    assert "quite_new" in {one.id for one in entries(new, kind)}
    assert uses(new, kind, "quite_new") == uses(key, kind, old) or kind in (
        EntryKind.CHARACTER,
        EntryKind.TAXON,
        EntryKind.COUPLET,
    )
    assert mentions(new, "quite_new") > 0
    assert renamed(new, kind, "quite_new", old) == key


@settings(max_examples=10)
@given(key=invented_keys(), kind=KINDS, pick=st.integers(0, 5))
def test_what_is_removed_leaves_no_trace_and_no_new_mistake(
    tmp_path_factory: pytest.TempPathFactory, key: Key, kind: EntryKind, pick: int
):
    found = entries(key, kind)
    least = {EntryKind.TAXON: 2, EntryKind.CHARACTER: 1}.get(kind, 1)
    assume(len(found) >= least)
    name = found[pick % len(found)].id
    key = renamed(key, kind, name, "quite_new")

    kept = removed(key, kind, "quite_new")

    assert "quite_new" not in repr(documents(kept))
    assert mistakes(kept, tmp_path_factory) == []


@settings(max_examples=10)
@given(key=invented_keys(), pick=st.integers(0, 5), back=st.booleans())
def test_states_are_renamed_and_let_go_of_everywhere(key: Key, pick: int, back: bool):
    found = [c for c in key.characters if c.states]
    assume(found)
    character = found[pick % len(found)]
    old = character.states[0].id

    new = with_states(key, character.id, lambda one: "quite_new" if one == old else one)
    gone = with_states(new, character.id, lambda one: None if one == "quite_new" else one)

    assert "quite_new" not in repr(gone.scores) + repr(gone.couplets) + repr(gone.checks)
    again = with_states(new, character.id, lambda one: old if one == "quite_new" else one)
    assert again == key
    assert back in (True, False)


def test_uses_count_what_would_change(key: Key):
    found = uses(key, EntryKind.TAXON, "pandinus_imperator")

    assert found.scores == sum(score.taxon == "pandinus_imperator" for score in key.scores)
    assert "L01" in found.labels
    assert "K01" in found.checks
    assert found.couplets
    assert uses(key, EntryKind.LABEL, "L01") == Uses()


def test_a_copy_of_a_taxon_has_its_scores(key: Key):
    new = duplicated(key, EntryKind.TAXON, "scorpio_fuscus", "scorpio_fuscus_2")

    copied = [
        replace(score, taxon="scorpio_fuscus")
        for score in new.scores
        if score.taxon == "scorpio_fuscus_2"
    ]
    assert copied == [score for score in key.scores if score.taxon == "scorpio_fuscus"]


def test_entries_move_and_stop_at_the_ends(key: Key):
    first, second = (one.id for one in key.characters[:2])

    down = moved(key, EntryKind.CHARACTER, first, 1)

    assert [one.id for one in down.characters[:2]] == [second, first]
    assert moved(key, EntryKind.CHARACTER, first, -5) == key
    assert (
        added(key, EntryKind.CHARACTER, key.characters[0], after=second).characters[2].id == first
    )


def test_free_ids_are_ids_and_free():
    assert free_id((), "Telson colour!") == "telson_colour"
    assert free_id((), "Flügeldecken-Länge") == "flugeldecken-lange"
    assert free_id({"a", "a_2"}, "a") == "a_3"
    assert free_id({"a_2"}, "a_2") == "a_3"
    assert is_id(free_id((), "…"))
    assert not is_id("no blanks here")
