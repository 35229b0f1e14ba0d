"""Drafts: what was typed comes back, whatever it was; damage is told."""

import contextlib
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats.delta import applied, delta
from idkey.formats.key_draft import (
    DraftWriter,
    KeyDraft,
    draft_file,
    draft_folders,
    read_draft,
)
from idkey.model.key import Key
from idkey.model.taxon import Taxon
from tests.formats.invented import keys

PLAIN = st.recursive(
    st.none() | st.text(max_size=3) | st.integers(2, 9),
    lambda inner: st.lists(inner, max_size=5) | st.dictionaries(st.text(max_size=2), inner),
    max_leaves=20,
)


@settings(max_examples=40)
@given(PLAIN, PLAIN)
def test_a_change_turns_the_old_value_into_the_new_one(old: object, new: object):
    again = applied(delta(old, new), old)

    assert again == new
    assert repr(again) == repr(new), "in the same order"


def test_a_small_change_of_a_large_value_is_small():
    old = {"scores": [{"note": str(n), "states": ["a", "b"]} for n in range(1000)]}
    new = {"scores": [*old["scores"][:500], {"note": "x", "states": []}, *old["scores"][501:]]}

    assert len(repr(delta(old, new))) < 200


@settings(max_examples=10)
@given(st.lists(keys(), min_size=1, max_size=2))
def test_a_draft_comes_back_whole(tmp_path_factory: pytest.TempPathFactory, several: list):
    file = tmp_path_factory.mktemp("drafts") / "one.json"
    *past, key = several
    draft = KeyDraft(
        folder=Path("somewhere"),
        saved=several[0],
        key=key,
        past=tuple((before, f"step {n}") for n, before in enumerate(past)),
    )
    DraftWriter().write(draft, file)

    assert read_draft(file) == draft


def test_drafts_are_listed_by_folder_and_a_missing_one_is_none(tmp_path: Path):
    assert draft_folders(tmp_path) == ()
    assert read_draft(draft_file(tmp_path, tmp_path / "no-key")) is None


@pytest.mark.parametrize(
    "text",
    ["", "{", "[]", '{"format":2}', '{"format":1,"folder":"x","key":[],"saved":{},"past":[]}'],
)
def test_a_damaged_draft_is_told_and_left_where_it_is(tmp_path: Path, text: str):
    file = tmp_path / "one.json"
    file.write_text(text, "utf-8")

    with pytest.raises(IdKeyError, match="cannot be read"):
        read_draft(file)
    assert file.read_text("utf-8") == text
    assert draft_folders(tmp_path) in ((), (Path("x"),))


@settings(max_examples=60)
@given(st.data())
def test_a_draft_damaged_at_random_is_told_or_read(
    tmp_path_factory: pytest.TempPathFactory, data: st.DataObject
):
    file = tmp_path_factory.mktemp("drafts") / "one.json"
    first = Key(id="a", title="A", version="1.0.0", taxa=(Taxon(id="t", name="T"),))
    second = replace(first, title="B", taxa=())
    past = ((first, "one"), (second, "two"))
    draft = KeyDraft(folder=Path("x"), saved=first, key=replace(first, scope="C"), past=past)
    DraftWriter().write(draft, file)
    text = file.read_text("utf-8")
    at = data.draw(st.integers(0, len(text) - 1))
    long = data.draw(st.integers(0, 12))
    new = data.draw(st.sampled_from(["", "null", "[]", "{}", "7", '"x"', ",", "[[[["]))
    file.write_text(text[:at] + new + text[at + long :], "utf-8")

    found = None
    with contextlib.suppress(IdKeyError):
        found = read_draft(file)
    assert found is None or isinstance(found, KeyDraft)
