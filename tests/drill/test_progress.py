"""Reports recover what simulated learners are known to get wrong."""

from dataclasses import replace

import pytest

from idkey.drill.beginning import Bench
from idkey.drill.deck import Offer
from idkey.drill.item import pair_item, state_item
from idkey.drill.observed import ENOUGH, WARM_UP, observed_error, with_observed
from idkey.drill.people import agreements, by_person, known_of, standings
from idkey.drill.progress import (
    UNNAMED,
    WINDOW,
    accuracies,
    agreement_between,
    overall,
    pair_records,
    state_confusion,
    taxon_confusion,
    trend,
)
from idkey.engine.intervals import wilson
from idkey.model.key import Key
from idkey.store.drill_log import Sighting
from tests.drill.learners import Learner

STATES = [state_item("telson_colour", s) for s in ("reddish", "dark")]
STATES.append(state_item("sternum_shape", "pentagonal"))
FIRM = pair_item("heterometrus_spinifer", "pandinus_imperator", "manus_surface")
SHAKY = pair_item("heterometrus_laoticus", "pandinus_imperator", "bothriotaxy")


@pytest.fixture(scope="module")
def learner(bench: Bench) -> Learner:
    """Takes reddish stings for dark ones three times in ten, and one pair for another often."""
    one = Learner(
        confuses={("telson_colour", "reddish"): ("dark", 0.3)},
        misjudges={SHAKY.taxa: 0.35},
    )
    one.works_through(bench, [*STATES, FIRM, SHAKY], times=80)
    return one


@pytest.fixture(scope="module")
def steady(bench: Bench) -> Learner:
    """Never wrong."""
    one = Learner(name="AK", seed=2)
    one.works_through(bench, STATES, times=12)
    return one


def test_the_confusion_of_states_is_the_one_that_was_built_in(key: Key, learner: Learner):
    table = state_confusion(learner.trials, key.character["telson_colour"])
    ((truth, said, count),) = table.mistakes()
    interval = wilson(count, 80, confidence=0.999)

    assert (truth, said) == ("reddish", "dark")
    assert interval.low <= 0.3 <= interval.high
    assert table.trials == 160
    assert table.right == 160 - count


def test_the_weakest_character_leads_the_list(learner: Learner):
    weakest, strongest = accuracies(learner.trials)

    assert weakest.name == "telson_colour"
    assert (strongest.name, strongest.right, strongest.trials) == ("sternum_shape", 80, 80)


def test_the_pair_told_apart_is_shown_and_the_shaky_one_is_not(learner: Learner):
    records = {record.pair: record for record in pair_records(learner.trials)}
    firm, shaky = records[FIRM.taxa], records[SHAKY.taxa]

    assert firm.shown
    assert (firm.right, firm.trials, firm.first_look) == (WINDOW, WINDOW, 1.0)
    assert not shaky.shown
    assert shaky.interval.low <= 0.65 <= shaky.interval.high
    assert firm.characters == ("manus_surface",)


def test_35_right_decisions_in_a_row_show_a_pair_and_34_do_not(learner: Learner):
    """The lower limit of n of n is n / (n + 3.84): Wilson 1927, J. Amer. Statist. Assoc. 22."""
    firm = [trial for trial in learner.trials if trial.item == FIRM.name]

    assert pair_records(firm[:35])[0].shown
    assert not pair_records(firm[:34])[0].shown


def test_old_mistakes_leave_the_window(bench: Bench, learner: Learner):
    wrong = Learner(misjudges={FIRM.taxa: 1.0})
    wrong.works_through(bench, [FIRM], times=10)
    firm = [trial for trial in learner.trials if trial.item == FIRM.name]

    assert not pair_records([*wrong.trials, *firm[:40]])[0].shown
    assert pair_records([*wrong.trials, *firm[:WINDOW]])[0].shown


def test_taxa_are_confused_within_the_shaky_pair_alone(key: Key, learner: Learner):
    order = [taxon.id for taxon in key.taxa]
    mistakes = taxon_confusion(learner.trials, order).mistakes()

    assert {frozenset(one[:2]) for one in mistakes} == {frozenset(SHAKY.taxa)}


def test_cannot_tell_has_a_column_of_its_own(key: Key, learner: Learner):
    seen = Sighting(character="telson_colour", truth="reddish")
    silent = replace(learner.trials[0], correct=False, sightings=(seen,))
    table = state_confusion([silent], key.character["telson_colour"])

    assert table.mistakes() == (("reddish", UNNAMED, 1),)


def test_the_trend_of_someone_who_learns_rises(bench: Bench):
    one = Learner(confuses={("telson_colour", "reddish"): ("dark", 0.8)})
    one.works_through(bench, STATES[:1], times=40)
    one.confuses = {}
    one.works_through(bench, STATES[:1], times=45)
    shares = [block.interval.share for block in trend(one.trials)]

    assert len(shares) == 4, "85 answers are three blocks of 20 and one of 25"
    assert shares[0] < 0.5
    assert shares[-1] == 1.0
    assert [block.trials for block in trend(one.trials)] == [20, 20, 20, 25]


def test_nobody_has_no_trend_no_pairs_and_no_accuracy():
    assert (trend([]), pair_records([]), accuracies([]), overall([])) == ((), (), (), ())


def test_two_people_are_compared_on_the_same_pictures(learner: Learner, steady: Learner):
    between = agreement_between(learner.trials, steady.trials)

    assert between is not None
    assert between.pictures == 36
    assert between.same < 36
    assert between.kappa is not None
    assert 0.4 < between.kappa.kappa < 1


def test_a_person_agrees_with_themselves_and_with_nobody_who_did_nothing(steady: Learner):
    alone = agreement_between(steady.trials, steady.trials)

    assert alone is not None
    assert (alone.same, alone.pictures) == (36, 36)
    assert agreement_between(steady.trials, []) is None


def test_the_supervisor_sees_who_stands_where(
    learner: Learner, steady: Learner, offers: tuple[Offer, ...]
):
    trials = [*steady.trials, *learner.trials]
    calm, shaky = standings(trials, offers, learner.at)

    assert [calm.person, shaky.person] == ["AK", "RB"] == list(by_person(trials))
    assert (calm.trials, calm.weakest, calm.shown) == (36, (), 0)
    assert [weak.name for weak in shaky.weakest] == ["telson_colour"]
    assert (shaky.shown, shaky.pairs) == (1, 2)
    assert [one.name for one in overall(learner.trials)] == ["state", "pair"]
    assert [one.pictures for one in agreements(trials)] == [36]


def test_what_a_person_confuses_goes_into_the_deck(learner: Learner, bench: Bench):
    known = known_of(learner.trials, bench.sees, frozenset())

    assert known.pairs[SHAKY.taxa] > 0.2 > known.pairs[FIRM.taxa]
    assert known.states["telson_colour", "reddish"] > 0.2
    assert known.states["telson_colour", "dark"] == 0


def test_the_author_is_offered_the_observed_rate_with_its_numbers(key: Key, learner: Learner):
    found = {one.character: one for one in observed_error(key, learner.trials)}
    colour, sternum = found["telson_colour"], found["sternum_shape"]
    built_in = 0.3 / 2  # every second picture of the two colours

    assert colour.answers == 160 - WARM_UP
    assert colour.interval.low <= built_in <= colour.interval.high
    assert colour.offered is not None
    assert abs(colour.offered - built_in) < 0.06
    assert colour.mistakes[0][:2] == ("reddish", "dark")
    assert sternum.offered is not None
    assert 0 < sternum.offered < sternum.now, "a perfect score does not make a character perfect"


def test_a_rate_changes_only_when_it_is_accepted_and_only_there(key: Key, learner: Learner):
    found = observed_error(key, learner.trials)
    colour = [one for one in found if one.character == "telson_colour"]
    changed = with_observed(key, colour)
    different = [c.id for c in changed.characters if c != key.character[c.id]]

    assert different == ["telson_colour"]
    assert changed.character["telson_colour"].error == colour[0].offered
    assert changed.digest == ""
    assert with_observed(key, []) is key


def test_few_answers_make_no_offer(key: Key, steady: Learner):
    few = [t for t in steady.trials if t.item.startswith("state/sternum")]
    (sternum,) = observed_error(key, few)

    assert sternum.answers == 12 - WARM_UP < ENOUGH
    assert sternum.offered is None
    assert with_observed(key, [sternum]) is key


def test_answers_on_another_key_say_nothing_about_this_one(key: Key, learner: Learner):
    foreign = [replace(trial, key="other") for trial in learner.trials[:40]]

    assert observed_error(key, foreign) == ()
