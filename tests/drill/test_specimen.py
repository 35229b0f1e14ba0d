"""Specimens: from the key, made again by their number, never twice the same."""

import pytest

from idkey.drill.beginning import Bench
from idkey.drill.deck import Offer
from idkey.drill.item import pair_item, state_item
from idkey.drill.specimen import individual, seed_of
from idkey.drill.telling import leaning
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.store.drill_log import Exercise

STATE = state_item("telson_colour", "reddish")
PAIR = pair_item("heterometrus_spinifer", "pandinus_imperator", "manus_surface")


def test_the_same_number_makes_the_same_specimen(key: Key, bench: Bench):
    one, other = (individual(key, STATE, 7, bench.sees) for _ in range(2))

    assert one == other
    assert one != individual(key, STATE, 8, bench.sees)


def test_no_picture_of_an_item_repeats_in_two_hundred(key: Key, bench: Bench):
    pictures = {bench.begin(STATE, n).individual.variation for n in range(200)}
    seeds = {seed_of(item, key, n) for n in range(200) for item in (STATE, PAIR)}

    assert len(pictures) == 200
    assert len(seeds) == 400


def test_a_state_is_shown_by_taxa_that_have_it_at_the_right_sex_and_stage(key: Key, bench: Bench):
    item = state_item("juvenile_telson_colour", "white_yellow")
    for number in range(20):
        animal = bench.begin(item, number).individual.animal
        cells = key.cells[animal.taxon, item.character]

        assert animal.shown[item.character] == "white_yellow"
        assert animal.specimen.stage is Stage.JUVENILE
        assert any("white_yellow" in cell.value.states for cell in cells)


def test_sexes_and_stages_vary(bench: Bench):
    kinds = {bench.begin(state_item("sternum_shape", "pentagonal"), n).individual.kind
             for n in range(60)}  # fmt: skip

    assert {kind.sex for kind in kinds} == set(Sex)
    assert {kind.stage for kind in kinds} == set(Stage)


def test_numbers_of_males_are_read_on_males(bench: Bench):
    runs = [bench.begin(state_item("pectinal_teeth_male"), n) for n in range(20)]

    assert {run.individual.kind.sex for run in runs} == {Sex.MALE}
    assert len({run.truth for run in runs}) > 3


def test_what_a_pair_shows_speaks_for_the_taxon_it_is(
    key: Key, offers: tuple[Offer, ...], bench: Bench
):
    items = [offer.item for offer in offers if offer.item.exercise is Exercise.PAIR]
    for item in items[::4]:
        for number in range(2):
            one = bench.begin(item, number).individual
            shown = one.animal.shown[item.character]
            character = key.character[item.character]
            said = leaning(key, character, shown, (item.taxa[0], item.taxa[1]), kind=one.kind)

            assert said == one.animal.taxon, item.name


def test_both_of_a_pair_come_up(bench: Bench):
    taxa = [bench.begin(PAIR, number).truth for number in range(40)]

    assert 8 < taxa.count("pandinus_imperator") < 32


def test_a_state_that_nobody_shows_is_refused(key: Key, bench: Bench):
    with pytest.raises(ValueError, match="no taxon"):
        individual(key, state_item("body_compression", "imagined"), 1, bench.sees)
