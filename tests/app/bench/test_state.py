"""Every step makes a new session, is saved, and can be undone."""

import json
from dataclasses import replace
from pathlib import Path

import pytest

from idkey.app.bench.session import DEPTH, Mode
from idkey.app.bench.state import BenchState
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.key_library import KeyLibrary
from idkey.engine.result import Stake, VerdictKind
from idkey.engine.sample import sample_case
from idkey.errors import IdKeyError
from idkey.model.case import Aim, Care, Claim, Finding, Specimen
from idkey.model.character import Sex
from idkey.store.book import Store
from idkey.store.faults import Missing

FIVE_SIDED = Finding(character="sternum_shape", states=("pentagonal",))
DARK = Finding(character="telson_colour", states=("dark",))


def test_a_new_bench_is_blank_and_asks_the_best_question(state: BenchState):
    assert state.session.blank
    assert state.session.question == state.session.reasoned.questions[0]


def test_a_label_that_fits_exactly_is_taken_without_asking(state: BenchState):
    state.claim(Claim(text="asian forest scorpions"))

    label = state.session.label
    assert label is not None
    assert "asian forest scorpion" in label.text.casefold()
    assert state.session.matches == ()


def test_a_label_that_only_comes_near_is_offered_and_not_taken(state: BenchState):
    state.claim(Claim(text="Asian forrest skorpion"))

    assert state.session.label is None
    assert state.session.matches[0].exact is False


def test_a_near_label_can_be_confirmed(state: BenchState):
    state.claim(Claim(text="Asian forrest skorpion"))
    state.confirm_label(state.session.matches[0].label)

    assert state.session.label is not None
    assert state.session.case.claim.text == "Asian forrest skorpion"


def test_typing_offers_entries_before_the_label_is_confirmed(state: BenchState):
    state.type_label("emperor")

    assert state.session.matches
    assert state.session.case.claim.text == ""


def test_a_finding_is_stamped_and_answers_the_question(state: BenchState):
    state.sign("mk", "en")
    state.observe(FIVE_SIDED)

    found = state.session.case.finding("sternum_shape")
    assert found is not None
    assert (found.states, found.by) == (("pentagonal",), "mk")
    assert found.at.endswith("Z")
    assert state.session.question != "sternum_shape"


def test_the_same_finding_again_is_no_step(state: BenchState):
    state.observe(FIVE_SIDED)
    before = state.session
    state.observe(FIVE_SIDED)

    assert state.session is before


def test_undo_and_redo_go_through_every_step(state: BenchState):
    state.claim(Claim(text="Emperor scorpion"))
    state.observe(FIVE_SIDED)
    state.want(Aim.HAZARD)
    whole = state.session.case
    for _ in range(3):
        state.undo()
    blank = state.session.case
    for _ in range(3):
        state.redo()

    assert (blank.claim.text, blank.findings, blank.aim) == ("", (), Aim.LABEL)
    assert replace(state.session.case, id="") == replace(whole, id="")


def test_a_step_after_an_undo_forgets_what_was_undone(state: BenchState):
    state.observe(FIVE_SIDED)
    state.undo()
    state.observe(DARK)

    assert state.session.future == ()


def test_withdrawing_brings_the_ruled_out_back(state: BenchState):
    state.observe(FIVE_SIDED)
    out = state.session.reasoned.assessment.ruled_out
    state.withdraw("sternum_shape")

    assert out
    assert not state.session.reasoned.assessment.ruled_out


def test_every_step_is_a_revision_of_the_record(state: BenchState, keeper: Keeper, store: Store):
    state.claim(Claim(text="Emperor scorpion"))
    state.observe(FIVE_SIDED)
    state.undo()
    keeper.flush()

    case_id = state.session.case.id
    assert [len(store.case(case_id, n).case.findings) for n in (1, 2, 3)] == [0, 1, 0]
    assert len(store.revisions(case_id)) == 3


def test_a_saved_case_says_what_was_concluded_and_with_which_key(
    state: BenchState, keeper: Keeper, store: Store
):
    state.observe(FIVE_SIDED)
    keeper.flush()

    summary = store.case(state.session.case.id).summary
    assert summary is not None
    assert summary.key_digest == state.session.key.digest
    assert Stake.HAZARD in summary.cautions


def test_resuming_goes_back_to_case_question_and_tray(
    state: BenchState, keys: KeyLibrary, keeper: Keeper
):
    state.claim(Claim(text="Emperor scorpion"))
    state.new_case()
    state.claim(Claim(text="Black scorpion"))
    state.ask("telson_colour")
    state.go_by(Mode.COUPLETS)
    keeper.flush()

    again = BenchState(keys, keeper)
    again.resume()

    assert again.session.case == state.session.case
    assert (again.session.asked, again.session.mode) == ("telson_colour", Mode.COUPLETS)
    assert again.session.open == state.session.open
    again.close()


def test_a_blank_case_that_was_never_saved_is_resumed_with_its_draft(
    state: BenchState, keys: KeyLibrary, keeper: Keeper
):
    state.type_label("Emper")
    state.ask("")
    keeper.flush()

    again = BenchState(keys, keeper)
    again.resume()

    assert again.session.case.id == state.session.case.id
    assert again.drafted("label") == "Emper"
    again.close()


def test_a_tray_with_a_case_that_is_gone_is_resumed_without_it(state: BenchState, keeper: Keeper):
    keeper.put_setting("bench", {"case": "gone", "tray": [{"case": "gone"}, {"case": "too"}, 3]})
    keeper.flush()
    state.resume()

    assert state.session.open == ("gone",)
    assert state.session.blank


def test_the_rest_of_a_shipment_gets_the_same_claim(state: BenchState):
    claim = Claim(text="Emperor scorpion", supplier="Lantern Street Vivarium")
    state.claim(claim)
    state.copy_claim(11)
    claims = {session.case.claim.text for session in state.tray()}

    assert len(state.session.open) == 12
    assert claims == {"Emperor scorpion"}


def test_going_round_the_tray_comes_back(state: BenchState):
    state.claim(Claim(text="Emperor scorpion"))
    state.observe(FIVE_SIDED)
    first = state.session
    state.copy_claim(2)
    for _ in range(3):
        state.next_case()

    assert state.session.case == first.case
    assert state.session.past == first.past


def test_putting_a_case_away_leaves_it_in_the_records(
    state: BenchState, keeper: Keeper, store: Store
):
    state.claim(Claim(text="Emperor scorpion"))
    gone = state.session.case.id
    state.leave_case()
    keeper.flush()

    assert state.session.open == (state.session.case.id,)
    assert store.case(gone).case.claim.text == "Emperor scorpion"


def test_a_blank_case_leaves_the_tray_when_another_is_opened(state: BenchState):
    blank = state.session.case.id
    state.put_on_bench(sample_case(state.session.key))

    assert blank not in state.session.open


def test_opening_a_case_that_is_not_there_says_so(state: BenchState):
    with pytest.raises(Missing):
        state.open_case("nowhere")


def test_a_case_of_a_key_that_is_not_here_says_so(state: BenchState, store: Store):
    store.save(replace(state.session.case, id="other", key="another-key"), None)

    with pytest.raises(IdKeyError, match="another-key"):
        state.open_case("other")


def test_sex_stage_and_care_are_reasoned_with(state: BenchState):
    state.describe(Specimen(sex=Sex.MALE))
    state.look_with(Care.HURRIED)

    blocked = {q.character for q in state.session.reasoned.questions if q.blocked is None}
    assert "pectinal_teeth_male" in blocked
    assert "pectinal_teeth_female" not in blocked


def test_the_label_counts_only_when_wanted(state: BenchState):
    state.claim(Claim(text="Emperor scorpion"))
    without = state.session.reasoned.assessment
    state.weigh_label(count=True)

    assert not without.prior
    assert state.session.reasoned.assessment.prior


def test_a_walk_makes_findings_and_going_back_takes_them(state: BenchState):
    state.take("1", (1,))
    made = state.session.case.findings
    state.step_back()

    assert {finding.lead for finding in made} == {"1/2"}
    assert state.session.case.findings == ()


def test_the_cautions_are_there_before_anything_is_seen(state: BenchState):
    stakes = {caution.stake for caution in state.session.reasoned.assessment.cautions}

    assert stakes == {Stake.HAZARD, Stake.PERMIT}
    assert state.session.reasoned.assessment.verdict.kind is not VerdictKind.HOLDS


def test_changed_is_told_once_per_step(state: BenchState):
    told = []
    state.changed.connect(told.append)
    state.observe(FIVE_SIDED)

    assert told == [state.session]


def test_undo_goes_on_after_the_program_was_killed(
    state: BenchState, keys: KeyLibrary, keeper: Keeper, tmp_path: Path
):
    state.claim(Claim(text="Emperor scorpion"))
    state.observe(FIVE_SIDED)
    state.observe(DARK)
    state.undo()
    keeper.flush()  # nothing is closed: the process is gone

    with Store.open(tmp_path / "book.sqlite") as book:
        writer = Keeper(book)
        again = BenchState(keys, writer)
        again.resume()
        again.redo()
        redone = again.session.case
        for _ in range(4):
            again.undo()
        blank = again.session
        again.redo()
        labelled = again.session.case
        again.close()
        writer.close()

    assert [f.character for f in redone.findings] == ["sternum_shape", "telson_colour"]
    assert (blank.case.claim.text, blank.case.findings, blank.undoable) == ("", (), False)
    assert (labelled.claim.text, labelled.findings) == ("Emperor scorpion", ())


def test_a_step_whose_trail_was_not_kept_is_undone_all_the_same(
    state: BenchState, keys: KeyLibrary, keeper: Keeper, store: Store
):
    state.claim(Claim(text="Emperor scorpion"))
    state.observe(FIVE_SIDED)
    keeper.flush()
    store.save(state.session.case.observe(DARK), None)

    again = BenchState(keys, keeper)
    again.resume()
    again.undo()
    again.close()

    assert [f.character for f in again.session.case.findings] == ["sternum_shape"]
    assert again.session.undoable


@pytest.mark.slow
def test_the_trail_does_not_grow_without_bound_and_goes_with_the_case(
    state: BenchState, keeper: Keeper, store: Store
):
    case_id = state.session.case.id
    for number in range(DEPTH + 20):
        state.claim(Claim(text="Emperor scorpion", supplier=f"Lantern {number}"))
    keeper.flush()
    kept = store.draft(f"{case_id}/trail")
    state.leave_case()
    keeper.flush()

    assert len(json.loads(kept)[0]) == DEPTH
    assert store.draft(f"{case_id}/trail") == ""
