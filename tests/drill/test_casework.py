"""Run a case: the real engine judges, and so is the person."""

from functools import cache

import pytest

from idkey.drill.beginning import Bench
from idkey.drill.casework import RunCase, run_case, sure_eye
from idkey.drill.conclusion import CONCLUSIONS, Conclusion, Outcome
from idkey.drill.item import case_item
from idkey.drill.record import trial_of
from idkey.drill.specimen import individual
from idkey.engine.result import VerdictKind
from idkey.model.character import Look
from tests.drill.learners import START

EMPEROR = case_item("L01", "heterometrus_spinifer")
"""A forest scorpion sold as an emperor."""

BLACK = case_item("L25", "androctonus_bicolor")
"""A dangerous animal under a label that names a colour."""


@cache
def begun(bench: Bench, item=EMPEROR, serial: int = 0) -> RunCase:
    run = bench.begin(item, serial)
    assert isinstance(run, RunCase)
    return run


def plain(bench: Bench, serial: int) -> RunCase:
    """A case on the first animal that comes, whether it can be settled or not."""
    one = individual(bench.key, EMPEROR, serial, bench.sees)
    return run_case(EMPEROR, one, bench.matrix(one.kind))


def concluded(run: RunCase, verdict: VerdictKind | None = None, **said: bool) -> RunCase:
    told = {"hazard": run.wary, "permit": run.listed} | said
    carried = run.assessment.verdict.kind
    chosen = verdict or (carried if carried in CONCLUSIONS else VerdictKind.OPEN)
    return run.conclude(Conclusion(verdict=chosen, **told))


@pytest.fixture(scope="module")
def settled(bench: Bench) -> RunCase:
    """A case that a sure eye has settled."""
    for serial in range(3):
        run = sure_eye(begun(bench, EMPEROR, serial))
        if run.assessment.verdict.kind is VerdictKind.CONTRADICTED:
            return run
    raise AssertionError("no case was settled")


def test_the_label_misleads_and_the_truth_about_it_is_known(bench: Bench):
    run = begun(bench)

    assert run.case.claim.text == "Emperor scorpion"
    assert run.individual.animal.taxon == "heterometrus_spinifer"
    assert run.truth is VerdictKind.CONTRADICTED
    assert begun(bench, case_item("L01", "pandinus_imperator")).truth is VerdictKind.HOLDS
    assert begun(bench, BLACK).truth is VerdictKind.TOO_BROAD


def test_a_settled_case_concluded_as_the_findings_carry_it_is_right(settled: RunCase):
    run = concluded(settled)

    assert (run.outcome, run.correct, run.handled) == (Outcome.RIGHT, True, 0)
    assert run.slips == 0
    assert run.marks.findings == run.marks.par == len(run.looked)


@pytest.mark.parametrize(
    ("verdict", "outcome"),
    [
        (VerdictKind.OPEN, Outcome.UNDERSTATED),
        (VerdictKind.HOLDS, Outcome.WRONG),
        (VerdictKind.CONTRADICTED, Outcome.RIGHT),
    ],
)
def test_a_conclusion_is_held_against_what_was_found(
    settled: RunCase, verdict: VerdictKind, outcome: Outcome
):
    assert concluded(settled, verdict).outcome is outcome


def test_saying_more_than_was_seen_is_no_right_answer_even_when_it_is_true(bench: Bench):
    run = concluded(begun(bench), VerdictKind.CONTRADICTED)

    assert run.truth is VerdictKind.CONTRADICTED
    assert (run.outcome, run.correct) == (Outcome.OVERSTATED, False)


def test_leaving_a_case_open_while_more_can_be_seen_is_unfinished(bench: Bench):
    run = concluded(begun(bench), VerdictKind.OPEN)

    assert run.worth_asking
    assert run.outcome is Outcome.UNFINISHED


def test_a_danger_that_is_still_possible_must_be_named(bench: Bench):
    run = begun(bench)

    assert run.wary
    assert concluded(run, hazard=True).hazard_right
    assert not concluded(run, hazard=False).hazard_right
    assert not concluded(run, permit=not run.listed).hazard_right


def test_a_lens_while_something_dangerous_is_possible_is_needless_handling(bench: Bench):
    run = begun(bench).look("stridulatory_organ", Look.LENS)

    assert run.looked[0].needless
    assert concluded(run.answer(None) if run.open_look else run).handled == 1


def test_looking_through_the_tub_is_never_handling(bench: Bench):
    run = begun(bench).look("chela_robustness", Look.TUB)

    assert not run.looked[0].needless


def test_a_misread_state_is_a_finding_for_the_engine_and_a_slip_for_the_record(bench: Bench):
    run = begun(bench)
    run = next(
        looked
        for one in run.to_look_at
        for look in run.ways(one.id)
        if not one.kind.numeric and (looked := run.look(one.id, look)).open_look
    )
    character = run.key.character[run.open_look.character]
    truth = run.individual.shown(character.id)
    wrong = next(state for state in character.state_ids if state != truth)
    after = run.answer(wrong)

    assert after.case.findings[-1].states == (wrong,)
    assert [(s.truth, s.said, s.right) for s in after.sightings] == [(truth, wrong, False)]
    assert after.slips == 1


def test_what_cannot_be_seen_one_way_can_be_tried_another_way(bench: Bench):
    for serial in range(12):
        run = plain(bench, serial)
        looked = run.look("telson_colour", Look.ABOVE)
        if not looked.looked[-1].visible:
            assert looked.case.findings[-1].unseen
            assert Look.ABOVE not in looked.ways("telson_colour")
            assert looked.ways("telson_colour") == (Look.TUB,)
            return
    raise AssertionError("every look succeeded")


def test_nothing_is_looked_at_on_a_dead_animal_or_a_moult_that_is_not_there(bench: Bench):
    offered = {look for n in range(12) for look in plain(bench, n).ways("bothriotaxy")}
    moults = {Look.MOULT in plain(bench, n).ways("bothriotaxy") for n in range(12)}

    assert Look.DEAD not in offered
    assert moults == {True, False}
    with pytest.raises(ValueError, match="cannot be looked at"):
        begun(bench).look("bothriotaxy", Look.DEAD)


def test_the_same_case_comes_out_the_same_for_everybody(bench: Bench):
    one, other = bench.begin(BLACK, 0), begun(bench, BLACK)

    assert one.individual == other.individual
    assert one.par == other.par


def test_most_mix_ups_can_be_settled_by_a_sure_eye(bench: Bench):
    taxa = bench.key.label["L01"].sold_as[::2]
    ended = [sure_eye(begun(bench, case_item("L01", taxon))) for taxon in taxa]
    kinds = [run.assessment.verdict.kind for run in ended]

    assert kinds.count(VerdictKind.CONTRADICTED) >= len(kinds) / 2
    assert VerdictKind.HOLDS not in kinds
    assert all(run.outcome in (Outcome.RIGHT, Outcome.UNFINISHED) for run in map(concluded, ended))


def test_a_case_is_kept_with_its_marks(settled: RunCase):
    kept = trial_of(concluded(settled), "RB", [], at=START, millis=90_000)

    assert kept.case == concluded(settled).marks
    assert kept.case.verdict == kept.case.truth == "contradicted"
    assert len(kept.sightings) == len([one for one in settled.looked if one.visible])
