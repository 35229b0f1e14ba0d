"""Name the state, tell the pair apart."""

from dataclasses import replace

import pytest

from idkey.drill.beginning import Bench
from idkey.drill.exercises import NEITHER, Fault, NameState, Slip, TellPair
from idkey.drill.item import pair_item, state_item
from idkey.drill.record import trial_of
from idkey.drill.telling import mute
from tests.drill.learners import START

ITEM = pair_item("heterometrus_spinifer", "pandinus_imperator", "manus_surface")


@pytest.fixture
def pair(bench: Bench) -> TellPair:
    run = bench.begin(ITEM, 0)
    assert isinstance(run, TellPair)
    return run


def named(bench: Bench, character: str, state: str = "") -> NameState:
    run = bench.begin(state_item(character, state), 0)
    assert isinstance(run, NameState)
    return run


def other(pair: TellPair) -> str:
    return next(taxon for taxon in pair.pair if taxon != pair.truth)


def idle(pair: TellPair) -> str:
    return next(one for one in pair.choices if one != ITEM.character)


@pytest.mark.parametrize(
    ("said", "slip"),
    [
        ("extreme", Slip.NONE),
        ("moderate", Slip.NEIGHBOUR),
        ("none", Slip.OTHER_STATE),
        (None, Slip.NOT_SEEN),
    ],
)
def test_an_answer_says_what_sort_of_mistake_it_is(bench: Bench, said: str | None, slip: Slip):
    run = named(bench, "body_compression", "extreme").say(said)

    assert run.slip is slip
    assert run.correct is (slip is Slip.NONE)


def test_a_number_counts_when_it_is_as_near_as_one_can_read(bench: Bench):
    run = named(bench, "total_length")
    truth = run.truth

    assert isinstance(truth, float)
    assert run.say(truth + 3.9).correct
    assert run.say(truth + 4.1).slip is Slip.NUMBER


def test_the_first_answer_stands(bench: Bench):
    run = named(bench, "sternum_shape", "pentagonal").say("triangular")

    assert run.say("pentagonal") is run


def test_what_is_no_state_of_the_character_is_refused(bench: Bench):
    with pytest.raises(ValueError, match="no state"):
        named(bench, "sternum_shape", "pentagonal").say("round")
    with pytest.raises(ValueError, match="not a number"):
        named(bench, "sternum_shape", "pentagonal").say(4.0)


def test_a_pair_has_one_character_that_tells_and_some_that_do_not(bench: Bench, pair: TellPair):
    alike, unknown = mute(bench.matrix(), *ITEM.taxa)

    assert ITEM.character in pair.choices
    assert len(set(pair.choices)) == len(pair.choices) == 5
    assert set(pair.choices) - {ITEM.character} <= {*alike, *unknown}


def test_looking_at_the_right_thing_and_deciding_rightly_is_right(pair: TellPair):
    run = pair.look(ITEM.character).decide(pair.truth)

    assert (run.correct, run.slips, run.fault) == (True, 0, Fault.NONE)


def test_a_detour_is_told_and_still_leads_to_a_right_answer(pair: TellPair):
    run = pair.look(idle(pair)).decide(NEITHER).look(ITEM.character).decide(pair.truth)

    assert (run.correct, run.slips, run.fault) == (True, 1, Fault.DETOUR)
    assert run.first_look != ITEM.character


def test_deciding_on_what_shows_the_same_on_both_is_luck_at_best(pair: TellPair):
    lucky, wrong = (pair.look(idle(pair)).decide(taxon) for taxon in (pair.truth, other(pair)))

    assert (lucky.correct, lucky.fault) == (False, Fault.LUCK)
    assert (wrong.correct, wrong.fault) == (False, Fault.WRONG_TAXON)


def test_giving_up_on_the_character_that_tells_is_wrong(pair: TellPair):
    run = pair.look(ITEM.character).decide(NEITHER)

    assert (run.done, run.correct, run.fault) == (True, False, Fault.GAVE_UP)


def test_a_decision_needs_a_look_and_a_look_waits_for_its_decision(pair: TellPair):
    looked = pair.look(idle(pair))

    assert pair.decide(pair.truth) is pair
    assert looked.look(ITEM.character) is looked
    with pytest.raises(ValueError, match="no choice"):
        looked.decide(NEITHER).look(idle(pair))
    with pytest.raises(ValueError, match="none of the two"):
        looked.decide("homo_sapiens")


def test_what_is_kept_says_what_was_asked_seen_and_answered(bench: Bench, pair: TellPair):
    run = pair.look(ITEM.character).decide(other(pair))
    kept = trial_of(run, "RB", [], at=START, millis=5000)
    again = bench.begin(ITEM, 0)

    assert (kept.item, kept.correct, kept.rating) == (ITEM.name, False, 1)
    assert (kept.taxon, kept.said, kept.pair) == (pair.truth, other(pair), ITEM.taxa)
    assert kept.first_look == ITEM.character
    assert kept.at == "2025-11-04T09:00:00.000Z"
    assert (kept.key, kept.key_version) == ("large-dark-scorpions", bench.key.version)
    assert again.individual.seed == kept.seed, "item and serial make the same animal again"


def test_nothing_is_kept_of_an_exercise_that_is_not_done(pair: TellPair):
    with pytest.raises(ValueError, match="when it is done"):
        trial_of(pair, "RB", [], at=START, millis=1)


def test_a_right_answer_after_a_detour_is_rated_hard(pair: TellPair):
    run = pair.look(idle(pair)).decide(NEITHER).look(ITEM.character).decide(pair.truth)

    assert trial_of(run, "RB", [], at=START, millis=5000).rating == 2
    assert trial_of(replace(run, looks=run.looks[-1:]), "RB", [], at=START, millis=5000).rating == 3
