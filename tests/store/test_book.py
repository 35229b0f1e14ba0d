"""What goes into the record book comes out, in order, and nothing is overwritten."""

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from idkey.model.case import Case, Finding
from idkey.store.book import Store
from idkey.store.faults import Missing
from idkey.store.record import VerdictSummary
from tests.store.any_case import cases
from tests.store.cases import EXAMPLE, example
from tests.store.conftest import Clock

OPEN = VerdictSummary(kind="open", level="open", name="Scorpiones indet.", cautions=("hazard",))
DECIDED = VerdictSummary(
    kind="contradicted",
    level="established",
    name="Pandinus imperator",
    taxa=("pandinus_imperator",),
    key_version="1.0.0",
    key_digest="ab12",
)


def test_a_saved_case_is_there_after_closing_and_opening_again(place: Path | str, clock: Clock):
    with Store.open(place, clock=clock) as store:
        saved = store.save(EXAMPLE, DECIDED)
    with Store.open(place, clock=clock) as store:
        found = store.case(EXAMPLE.id)

    assert (found.case, found.summary, found.revision) == (EXAMPLE, DECIDED, saved)


@settings(
    max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None
)
@given(cases, st.text(max_size=3))
def test_any_case_comes_back_as_it_was_saved(store: Store, case: Case, by: str):
    store.save(case, None, by=by)

    assert store.case(case.id).case == case
    assert store.verify() == ()


def test_half_a_character_typed_by_accident_does_not_stop_a_save(store: Store):
    store.save(replace(EXAMPLE, note="dark\ud83d"), None)

    assert store.case(EXAMPLE.id).case.note == "dark\ufffd"


def test_each_change_makes_a_revision_and_keeps_the_one_before(store: Store):
    later = EXAMPLE.observe(Finding(character="telson_colour", states=("reddish",)))
    store.save(EXAMPLE, OPEN, by="RB")
    store.save(later, DECIDED, by="MT")

    assert [(r.number, r.by) for r in store.revisions(EXAMPLE.id)] == [(1, "RB"), (2, "MT")]
    assert store.case(EXAMPLE.id, 1).case == EXAMPLE
    assert store.case(EXAMPLE.id, 1).summary == OPEN
    assert store.case(EXAMPLE.id).case == later


def test_saving_the_same_again_makes_no_revision(store: Store):
    first = store.save(EXAMPLE, OPEN)
    second = store.save(EXAMPLE, OPEN, by="MT")

    assert second == first
    assert len(store.revisions(EXAMPLE.id)) == 1


def test_a_changed_verdict_on_the_same_findings_is_a_revision(store: Store):
    store.save(EXAMPLE, OPEN)
    store.save(EXAMPLE, DECIDED)

    assert [r.number for r in store.revisions(EXAMPLE.id)] == [1, 2]


def test_going_back_to_an_earlier_state_is_a_revision_too(store: Store):
    store.save(EXAMPLE, OPEN)
    store.save(replace(EXAMPLE, note="wrong"), OPEN)
    store.save(EXAMPLE, OPEN)

    assert len(store.revisions(EXAMPLE.id)) == 3
    assert store.case(EXAMPLE.id).case == EXAMPLE


def test_who_saved_is_the_determiner_unless_told_otherwise(store: Store):
    assert store.save(EXAMPLE, None).by == EXAMPLE.by
    assert store.save(replace(EXAMPLE, note="x"), None, by="MT").by == "MT"


def test_each_revision_names_the_digest_of_the_entry_before_it(store: Store):
    first = store.save(example(1), None)
    second = store.save(example(2), None)

    assert first.previous == "0" * 64
    assert second.previous == first.digest


def test_a_clock_that_goes_back_changes_no_order(store: Store, clock: Clock):
    store.save(example(1), OPEN)
    clock.moment = datetime(2001, 1, 1, tzinfo=UTC)
    store.save(example(2), OPEN)
    store.save(example(1, note="later"), OPEN)

    assert [row.case_id for row in store.recent()] == ["case-000001", "case-000002"]
    assert store.case("case-000001").case.note == "later"
    assert store.case("case-000001").revision.at == "2001-01-01T00:00:02.000Z"
    assert store.verify() == ()


def test_a_clock_without_a_time_zone_is_a_mistake_of_the_caller(place: Path | str):
    with (
        Store.open(place, clock=lambda: datetime(2025, 1, 1)) as store,
        pytest.raises(ValueError, match="time zone"),
    ):
        store.save(EXAMPLE, None)


def test_an_unknown_case_is_said_to_be_unknown(store: Store):
    store.save(EXAMPLE, None)

    with pytest.raises(Missing, match="no case nowhere") as caught:
        store.case("nowhere")
    with pytest.raises(Missing, match="with revision 7"):
        store.case(EXAMPLE.id, 7)
    assert caught.value.remedy
    assert store.revisions("nowhere") == ()
    assert store.sales("nowhere") == ()


def test_recent_rows_say_what_the_newest_revision_says(store: Store):
    store.save(EXAMPLE, OPEN)
    store.save(replace(EXAMPLE, note="second look"), DECIDED)
    (row,) = store.recent()

    assert row.case_id == EXAMPLE.id
    assert (row.revision, row.kind, row.level) == (2, "contradicted", "established")
    assert (row.label, row.supplier) == ("Asian Forest Scorpion", "Lantern Street Vivarium")
    assert (row.day, row.findings, row.cautions) == ("2025-11-03", 1, ())


def test_recent_gives_the_newest_first_and_no_more_than_asked(store: Store):
    for number in range(5):
        store.save(example(number), None)

    assert [row.case_id for row in store.recent(2)] == ["case-000004", "case-000003"]


def test_drafts_and_settings_are_kept_and_can_be_emptied(place: Path | str):
    with Store.open(place) as store:
        store.put_draft("note", "dark scor")
        store.put_draft("note", "dark scorpion\0")
        store.put_setting("window", "800x600")
        store.put_setting("filter", "")
    with Store.open(place) as store:
        kept = store.draft("note"), store.setting("window"), store.setting("filter", "all")
        store.put_draft("note", "")
        gone = store.draft("note"), store.setting("never", "standard")

    assert kept == ("dark scorpion", "800x600", "")
    assert gone == ("", "standard")


def test_two_places_of_work_keep_their_own_drafts(place: Path | str):
    with Store.open(place, station="till") as till, Store.open(place, station="back") as back:
        till.put_draft("note", "mine")

        assert back.draft("note") == ""


def test_outcomes_count_established_cases_of_the_label_without_the_one_left_out(store: Store):
    other = replace(DECIDED, name="Heterometrus sp.", taxa=("heterometrus_silenus",))
    for number, summary in enumerate([DECIDED, DECIDED, other, OPEN, None]):
        store.save(example(number), summary)
    store.save(replace(example(9), claim=replace(EXAMPLE.claim, label="black")), DECIDED)

    counts = store.outcomes("asian_forest_scorpion")
    assert counts == {"pandinus_imperator": 2, "heterometrus_silenus": 1}
    assert list(counts) == ["pandinus_imperator", "heterometrus_silenus"]
    assert store.outcomes("asian_forest_scorpion", excluding="case-000000") == {
        "pandinus_imperator": 1,
        "heterometrus_silenus": 1,
    }
    assert store.outcomes("asian_forest_scorpion", key="another") == {}


def test_a_case_counts_by_its_newest_verdict_only(store: Store):
    store.save(EXAMPLE, DECIDED)
    store.save(replace(EXAMPLE, note="doubt"), OPEN)

    assert store.outcomes("asian_forest_scorpion") == {}
