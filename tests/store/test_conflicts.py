"""Two people at one case: the second is told what the first did, and nothing is overwritten."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from idkey.model.case import Case, Finding, Specimen
from idkey.model.character import Sex
from idkey.store.book import Store
from idkey.store.difference import changes
from idkey.store.faults import Conflict
from tests.store.cases import EXAMPLE, example
from tests.store.conftest import Clock

TELSON = Finding(character="telson_colour", states=("reddish",))


@pytest.fixture
def counters(place: Path | str, clock: Clock) -> Iterator[tuple[Store, Store]]:
    """Two programs on one book."""
    with (
        Store.open(place, clock=clock, station="front") as front,
        Store.open(place, clock=clock, station="back") as back,
    ):
        yield front, back


def test_the_second_to_save_learns_who_changed_what(counters: tuple[Store, Store]):
    front, back = counters
    opened = front.save(EXAMPLE, None, parent=0).number
    front.save(EXAMPLE.observe(TELSON), None, by="RB", parent=opened)

    with pytest.raises(Conflict) as caught:
        back.save(replace(EXAMPLE, note="calm"), None, by="MT", parent=opened)
    assert caught.value.problem == (
        "RB saved this case at 2025-11-04T09:00:02.000Z after you opened it. "
        "Changed: telson_colour noted."
    )
    assert caught.value.remedy.endswith("nothing was overwritten.")
    assert (caught.value.by, caught.value.changed) == ("RB", ("telson_colour noted",))
    assert back.case(EXAMPLE.id).case == EXAMPLE.observe(TELSON)
    assert back.verify() == ()


def test_both_changes_stay_when_the_second_adds_to_the_newer_state(
    counters: tuple[Store, Store],
):
    front, back = counters
    front.save(EXAMPLE, None, parent=0)
    front.save(EXAMPLE.observe(TELSON), None, parent=1)
    newer = back.case(EXAMPLE.id)
    back.save(replace(newer.case, note="calm"), None, parent=newer.revision.number)

    assert front.case(EXAMPLE.id).case == replace(EXAMPLE.observe(TELSON), note="calm")


def test_saving_what_the_other_saved_too_is_no_conflict(counters: tuple[Store, Store]):
    front, back = counters
    front.save(EXAMPLE, None, parent=0)
    first = front.save(EXAMPLE.observe(TELSON), None, parent=1)

    assert back.save(EXAMPLE.observe(TELSON), None, parent=1) == first


def test_two_new_cases_with_one_id_conflict(counters: tuple[Store, Store]):
    front, back = counters
    front.save(EXAMPLE, None, by="RB", parent=0)

    with pytest.raises(Conflict) as caught:
        back.save(replace(EXAMPLE, note="mine"), None, parent=0)
    assert caught.value.changed == ("the case as a whole",)


def test_a_book_restored_meanwhile_is_said_to_be_another(store: Store):
    store.save(EXAMPLE, None)

    with pytest.raises(Conflict, match="exchanged or restored meanwhile"):
        store.save(replace(EXAMPLE, note="x"), None, parent=5)
    with pytest.raises(Conflict, match="0 revisions of this case"):
        store.save(example(2), None, parent=1)
    assert len(store.revisions(EXAMPLE.id)) == 1


@pytest.mark.parametrize(
    ("after", "words"),
    [
        (EXAMPLE, ()),
        (EXAMPLE.observe(TELSON), ("telson_colour noted",)),
        (EXAMPLE.withdraw("sternum_shape"), ("sternum_shape withdrawn",)),
        (
            EXAMPLE.observe(Finding(character="sternum_shape", unseen=True)),
            ("sternum_shape changed",),
        ),
        (replace(EXAMPLE, specimen=Specimen(sex=Sex.MALE)), ("sex or stage",)),
        (replace(EXAMPLE, key_version="2"), ("the key or its version",)),
        (replace(EXAMPLE, note="x", by="MT"), ("the remark", "the determiner")),
    ],
)
def test_changes_are_named(after: Case, words: tuple[str, ...]):
    assert changes(EXAMPLE, after) == words
