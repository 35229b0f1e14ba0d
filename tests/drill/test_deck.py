"""What a key has to practise."""

from dataclasses import replace

import pytest

from idkey import places
from idkey.drill.beginning import Bench
from idkey.drill.deck import Known, Offer, Why, deck, pairs_of, shop_shares
from idkey.drill.telling import tellers
from idkey.formats.folder import read_key
from idkey.model.key import Key
from idkey.store.drill_log import Exercise

SPINIFER_EMPEROR = ("heterometrus_spinifer", "pandinus_imperator")


def weight(offers: tuple[Offer, ...], part: str) -> float:
    return sum(offer.weight for offer in offers if part in offer.item.name)


def test_mix_ups_under_a_label_are_pairs_to_practise(bench: Bench):
    assert pairs_of(bench.matrix())[SPINIFER_EMPEROR] is Why.MIXUP


def test_every_pair_is_practised_on_characters_that_tell_it_apart(
    bench: Bench, offers: tuple[Offer, ...]
):
    pairs = [offer.item for offer in offers if offer.item.exercise is Exercise.PAIR]
    blind = [
        item.name
        for item in pairs
        if item.character not in {t.character for t in tellers(bench.matrix(), *item.taxa)}
    ]

    assert len(pairs) > 50
    assert blind == []


def test_weights_of_each_exercise_sum_to_one(offers: tuple[Offer, ...]):
    for exercise in Exercise:
        total = sum(offer.weight for offer in offers if offer.item.exercise is exercise)
        assert total == pytest.approx(1.0)


def test_a_state_is_practised_only_where_a_drawing_shows_it(bench: Bench):
    only = deck(bench.matrix(), Known(sees=bench.sees, drawn=frozenset({"sternum_shape"})))
    states = {o.item.character for o in only if o.item.state}

    assert states == {"sternum_shape"}


def test_what_the_person_confuses_comes_more_often(bench: Bench, drawn: frozenset[str]):
    plain = deck(bench.matrix(), Known(sees=bench.sees, drawn=drawn))
    harder = deck(
        bench.matrix(),
        Known(
            sees=bench.sees,
            drawn=drawn,
            pairs={SPINIFER_EMPEROR: 0.5},
            states={("telson_colour", "reddish"): 0.5},
        ),
    )

    for part in ("/".join(SPINIFER_EMPEROR), "telson_colour/reddish"):
        assert weight(harder, part) > 1.5 * weight(plain, part)


def test_what_the_shop_sees_comes_more_often(key: Key, bench: Bench, drawn: frozenset[str]):
    seen = shop_shares(key, {"L01": {"heterometrus_spinifer": 40}})
    plain = deck(bench.matrix(), Known(sees=bench.sees, drawn=drawn))
    busy = deck(bench.matrix(), Known(sees=seen, drawn=drawn))

    assert sum(seen.values()) == pytest.approx(1.0)
    assert weight(busy, "case/L01/heterometrus_spinifer") > 5 * weight(
        plain, "case/L01/heterometrus_spinifer"
    )


def test_outcomes_of_taxa_that_the_key_lacks_do_not_count(key: Key):
    assert shop_shares(key, {"L01": {"gone": 9}}) == shop_shares(key, {})


@pytest.mark.parametrize(
    "name", ["ornamental-tarantulas", "red-kneed-tarantulas", "kitchen-leaves"]
)
def test_every_shipped_key_gives_items_that_can_be_shown(name: str):
    key = read_key(places.keys_folder() / name)
    bench = Bench(key, shop_shares(key, {}))
    everything = frozenset(character.id for character in key.characters)
    offers = deck(bench.matrix(), Known(sees=bench.sees, drawn=everything))
    for offer in offers:
        if offer.item.exercise is not Exercise.CASE:
            run = bench.begin(offer.item, 0)
            assert run.individual.shown(offer.item.character) is not None

    assert {offer.item.exercise for offer in offers} == set(Exercise)


def test_a_key_without_labels_has_no_cases(key: Key):
    bare = replace(key, labels=())
    bench = Bench(bare, shop_shares(bare, {}))
    offers = deck(bench.matrix(), Known(sees=bench.sees))

    assert Exercise.CASE not in {offer.item.exercise for offer in offers}
