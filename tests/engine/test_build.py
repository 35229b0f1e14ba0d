"""Couplets from the matrix, as their author wants them."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey import places
from idkey.engine.audit import Weakness, audit
from idkey.engine.build import build, shares
from idkey.engine.compile import compile_key
from idkey.engine.couplet_cost import couplet_cost, named_share
from idkey.engine.walk import reachable
from idkey.errors import Stopped
from idkey.formats.folder import read_key
from idkey.model.character import Look
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Spans
from idkey.model.taxon import Danger, Hazard, Taxon
from tests.engine.small_keys import key_of, number_character, states_character

TABLE = {
    "a": {"colour": "red", "spots": "yes", "claw": "thin"},
    "b": {"colour": "red", "spots": "no", "claw": "thin"},
    "c": {"colour": "blue", "spots": "yes", "claw": "thin"},
    "d": {"colour": "blue", "spots": "no", "claw": "thick"},
}


def small(**looks: Look) -> Key:
    """Four taxa that colour and spots tell apart; only `d` is dangerous, and its claw tells."""
    taxa = tuple(
        Taxon(id=t, name=f"Genus {t}", family="Fam", hazard=Hazard(level=level))
        for t, level in zip("abcd", [*["harmless"] * 3, "medically_significant"], strict=True)
        for level in [Danger(level)]
    )
    characters = [
        states_character(name, states, looks=(looks.get(name, Look.TUB),))
        for name, states in (
            ("colour", ("red", "blue")),
            ("spots", ("yes", "no")),
            ("claw", ("thin", "thick")),
        )
    ]
    return key_of(characters, TABLE, taxa=taxa)


def asked(couplet: Couplet) -> str:
    return couplet.leads[0].sees[0].character


def test_dangerous_taxa_are_told_from_the_rest_first():
    plain = build(compile_key(small()))
    safe = build(compile_key(small()), danger_first=True)

    assert asked(plain.couplets[0]) != "claw"
    assert asked(safe.couplets[0]) == "claw"
    assert safe.couplets[0].leads[1].taxa == ("d",)


def test_nothing_that_means_handling_is_asked_while_a_dangerous_taxon_is_possible():
    safe = build(compile_key(small(claw=Look.LENS)), danger_first=True)
    below = reachable(safe.couplets)

    assert "claw" not in [asked(c) for c in safe.couplets if "d" in below[c.id]]
    assert below[safe.couplets[0].id] == frozenset("abcd")


def hand_written(key: Key) -> Key:
    """Spots first, then colour."""

    def sees(character: str, state: str) -> tuple[Sees, ...]:
        return (Sees(character=character, states=(state,)),)

    def ends(number: str, red: str, blue: str) -> Couplet:
        leads = (
            Lead(statement="Red", sees=sees("colour", "red"), taxa=(red,)),
            Lead(statement="Blue", sees=sees("colour", "blue"), taxa=(blue,)),
        )
        return Couplet(id=number, leads=leads)

    first = Couplet(
        id="1",
        note="Look twice.",
        leads=(
            Lead(statement="With spots", sees=sees("spots", "yes"), to="2"),
            Lead(statement="Without", sees=sees("spots", "no"), to="3"),
        ),
    )
    return replace(key, couplets=(first, ends("2", "a", "c"), ends("3", "b", "d")))


def test_the_opening_of_the_author_stays_word_for_word_and_the_rest_is_built_below():
    key = hand_written(small())
    built = build(compile_key(key), keep=1)
    opening = built.couplets[0]

    assert (opening.id, opening.note) == ("1", "Look twice.")
    assert [lead.statement for lead in opening.leads] == ["With spots", "Without"]
    assert reachable(built.couplets)["1"] == frozenset("abcd")
    assert built.missing == ()
    assert build(compile_key(key), keep=3).couplets == key.couplets


def test_what_couplets_cost_is_counted_alike_whoever_wrote_them():
    key = hand_written(small(colour=Look.LENS))
    matrix = compile_key(key)
    share = shares(matrix, None)
    hand = couplet_cost(matrix, key.couplets, share)
    built = build(matrix)

    assert (hand.questions, hand.effort) == (2.0, Look.TUB.effort + Look.LENS.effort)
    assert (hand.most_questions, hand.leaves, hand.bound) == (2, 4, 2.0)
    assert couplet_cost(matrix, built.couplets, share) == built.cost
    assert named_share(matrix, key.couplets, share) == pytest.approx(1.0)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.tuples(*[st.sampled_from("xyz")] * 4), min_size=2, max_size=9),
    st.booleans(),
    st.booleans(),
)
def test_a_built_key_costs_what_its_tree_costs_and_never_less_than_the_bound(rows, many, short):
    characters = [states_character(f"c{n}", "xyz", effort=1.0 + n) for n in range(4)]
    table = {f"t{n}": {f"c{m}": state for m, state in enumerate(r)} for n, r in enumerate(rows)}
    matrix = compile_key(key_of(characters, table))
    built = build(matrix, many_leads=many, short=short)
    if not built.couplets:
        return
    told = couplet_cost(matrix, built.couplets, shares(matrix, None))

    assert told.questions == pytest.approx(built.cost.questions)
    assert told.effort == pytest.approx(built.cost.effort)
    assert (told.most_questions, told.leaves) == (built.cost.most_questions, len(rows))
    assert built.together or told.questions >= told.bound - 1e-9


def test_a_part_that_some_taxa_lack_is_not_asked_before_they_are_gone():
    key = small()
    gone = [score for score in key.scores if (score.taxon, score.character) != ("a", "spots")]
    lacking = replace(key.scores[1], taxon="a", character="spots", value=Inapplicable())
    built = build(compile_key(replace(key, scores=(*gone, lacking))))

    assert reachable(built.couplets)[built.couplets[0].id] == frozenset("abcd")
    assert asked(built.couplets[0]) != "spots"


def test_building_can_be_stopped():
    def stop(_: int, __: int) -> None:
        raise Stopped

    with pytest.raises(Stopped):
        build(compile_key(small()), tick=stop)


@pytest.fixture(scope="module")
def scorpions() -> Key:
    return read_key(places.keys_folder() / "large-dark-scorpions")


@pytest.mark.parametrize("danger_first", [False, True])
@pytest.mark.parametrize("keep", [0, 4])
def test_no_taxon_of_a_shipped_key_is_lost_whatever_is_wished(
    scorpions: Key, keep: int, danger_first: bool
):
    matrix = compile_key(scorpions)
    built = build(matrix, short=True, keep=keep, danger_first=danger_first)
    written = replace(scorpions, couplets=built.couplets)
    against = [r.about for r in audit(written) if r.weakness is Weakness.COUPLET_AGAINST_MATRIX]
    leads = [written.couplet[couplet].leads[int(lead) - 1] for couplet, lead in against]

    assert reachable(built.couplets)[built.couplets[0].id] == {t.id for t in scorpions.taxa}
    assert [lead for lead in leads if lead.sees[0].states] == []  # few animals: ranges widen
    assert len({couplet.id for couplet in built.couplets}) == len(built.couplets)


def test_a_short_key_has_fewer_couplets_than_one_of_the_least_effort(scorpions: Key):
    matrix = compile_key(scorpions)
    share = np.full(len(scorpions.taxa), 1 / len(scorpions.taxa))
    quick, short = build(matrix), build(matrix, short=True)
    hand = couplet_cost(matrix, scorpions.couplets, share)

    assert len(short.couplets) < len(quick.couplets) / 2
    assert quick.cost.effort < short.cost.effort < hand.effort


def test_a_couplet_whose_leads_all_end_in_the_same_taxa_is_not_built():
    table = {
        "small": {"colour": "red", "length": Spans(low=3.5, high=4.2)},
        "open": {"colour": "red", "length": Spans(high=7)},
        "other": {"colour": "blue", "length": Spans(low=40, high=50)},
    }
    characters = (states_character("colour", ("red", "blue")), number_character("length"))
    built = build(compile_key(key_of(characters, table)))
    ends = [[set(lead.taxa) for lead in one.leads if not lead.to] for one in built.couplets]

    assert built.together == (("small", "open"),)
    assert all(len(one) < 2 or any(end != one[0] for end in one) for one in ends)
