"""Names of items."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.drill.item import Item, case_item, item_named, pair_item, state_item
from idkey.store.drill_log import Exercise

IDS = st.from_regex(r"[a-z][a-z0-9_]{0,8}", fullmatch=True)


@given(IDS, IDS, IDS)
def test_every_item_is_found_again_by_its_name(one: str, other: str, character: str):
    items = [state_item(character, one), state_item(character), case_item(one, other)]
    if one != other:
        items.append(pair_item(one, other, character))

    assert [item_named(item.name) for item in items] == items


def test_a_pair_is_the_same_in_either_order():
    assert pair_item("b", "a", "c") == pair_item("a", "b", "c")


@pytest.mark.parametrize("name", ["", "state/a", "pair/a/b", "case/x", "walk/a/b", "pair/a/a/c"])
def test_what_is_no_item_is_refused(name: str):
    with pytest.raises(ValueError, match=r"item"):
        item_named(name)


def test_an_item_names_what_its_exercise_needs():
    with pytest.raises(ValueError, match="names 2 taxa"):
        Item(exercise=Exercise.PAIR, character="c", taxa=("a",))
    with pytest.raises(ValueError, match="a case does not"):
        Item(exercise=Exercise.CASE, character="c", taxa=("a",), label="L1")
