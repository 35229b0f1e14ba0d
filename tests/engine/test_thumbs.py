"""A rule of thumb lets no danger go, and a verdict that rests on one says so."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.matrix import Matrix
from idkey.engine.result import Assessment, Level, Stake, VerdictKind
from idkey.engine.thumbs import leaning
from idkey.model.case import Case, Claim, Finding
from idkey.model.label import Label
from idkey.model.score import Shows
from idkey.model.taxon import Danger, Hazard, Taxon
from tests.engine.small_keys import key_of, states_character

NAMES = tuple(f"c{n}" for n in range(12))
TAXA = (
    Taxon(id="mild", name="Alpha mitis", family="Fam"),
    Taxon(id="twin", name="Alpha gemina", family="Fam"),
    Taxon(id="wild", name="Beta saeva", family="Bad", hazard=Hazard(level=Danger.SIGNIFICANT)),
)
LABEL = Label(id="M", text="Mild one", covers=("mild",), deciding=("c0",))
ROWS = {
    "mild": dict.fromkeys(NAMES, "x"),
    "twin": dict.fromkeys(NAMES, "x") | {"c0": "y", "c1": "y"},
    "wild": dict.fromkeys(NAMES, "y"),
}


def matrix_of(thumbs: set[str], **cells: dict[str, Shows]) -> Matrix:
    """The key with these characters as rules of thumb; `cells` replaces scores by taxon."""
    characters = [
        states_character(n, ("x", "y", "z"), error=0.06, rule_of_thumb=n in thumbs) for n in NAMES
    ]
    rows = {taxon: row | cells.get(taxon, {}) for taxon, row in ROWS.items()}
    return compile_key(key_of(characters, rows, taxa=TAXA, labels=(LABEL,)))


def seen(states: str, label: str = "M") -> Case:
    """A case with those states on the first characters."""
    findings = tuple(Finding(character=n, states=(s,)) for n, s in zip(NAMES, states, strict=False))
    return Case(id="1", key="small", claim=Claim(text=label, label=label), findings=findings)


def warned(found: Assessment) -> set[str]:
    return {taxon for caution in found.cautions for taxon in caution.taxa}


def test_a_danger_stays_when_only_a_rule_of_thumb_completes_the_case_against_it():
    case = seen("xxxx")
    ordinary, leant = assess(matrix_of(set()), case), assess(matrix_of({"c2", "c3"}), case)

    assert "wild" not in warned(ordinary)
    assert "wild" in warned(leant)
    found = leaning(matrix_of({"c2", "c3"}), leant)
    assert found is not None
    assert found.kept == ("wild",)


@given(st.text("xyz", max_size=12), st.sets(st.sampled_from(NAMES)))
@settings(max_examples=60)
def test_calling_a_character_a_rule_of_thumb_never_lifts_a_caution(states: str, thumbs: set[str]):
    case = seen(states)

    bare, leant = assess(matrix_of(set()), case), assess(matrix_of(thumbs), case)

    assert warned(bare) <= warned(leant)
    assert bare.verdict == replace(leant.verdict, stakes=bare.verdict.stakes)


def test_a_name_that_needs_a_rule_of_thumb_says_so_and_what_would_be_without_it():
    matrix = matrix_of({"c0"})
    now = assess(matrix, seen("x" * 12))

    found = leaning(matrix, now)

    assert (now.verdict.kind, now.verdict.level) == (VerdictKind.HOLDS, Level.ESTABLISHED)
    assert found is not None
    assert [failure.character for failure in found.failures] == ["c0"]
    assert found.without.kind is VerdictKind.OPEN
    assert now.verdict.answers == found.without.answers, "it still counts as an answer"


def test_a_verdict_that_stands_without_its_rules_of_thumb_is_left_alone():
    matrix = matrix_of({"c5"})

    assert leaning(matrix, assess(matrix, seen("x" * 12))) is None
    assert leaning(matrix_of(set()), assess(matrix_of(set()), seen("x" * 12))) is None


def test_two_rules_that_can_replace_each_other_are_tried_together():
    rows = {"twin": {"c2": "y"}}  # three characters apart, two are enough
    matrix = matrix_of({"c0", "c1"}, **rows)

    found = leaning(matrix, assess(matrix, seen("x" * 12)))

    assert found is not None
    assert [failure.character for failure in found.failures] == ["c0", "c1"]


def test_the_matrix_tells_which_taxa_break_the_rule():
    torn = {"mild": {"c0": Shows({"x": None, "z": None})}, "wild": {"c0": Shows({"x": None})}}
    matrix = matrix_of({"c0", "c1"}, **torn)

    found = leaning(matrix, assess(matrix, seen("x" * 12)))

    assert found is not None
    rule = found.failures[0]
    assert (set(rule.alike), rule.torn, rule.scored) == ({"mild", "wild"}, ("mild",), 3)


@pytest.mark.parametrize("states", ["", "x", "xx"])
def test_nothing_is_said_before_anything_is_claimed(states: str):
    matrix = matrix_of({"c0", "c1"})

    assert leaning(matrix, assess(matrix, seen(states))) is None


def test_what_to_look_at_instead_is_no_rule_of_thumb():
    matrix = matrix_of({"c0", "c1", "c2"}, twin={"c3": "y", "c4": "y"})
    now = assess(matrix, seen("xxx" + "-" * 9))
    short = tuple(f for f in now.case.findings if f.states != ("-",))
    more = tuple(Finding(character=n, states=("x",)) for n in NAMES[5:])
    now = assess(matrix, replace(now.case, findings=(*short, *more)))

    found = leaning(matrix, now)

    assert now.verdict.level is Level.ESTABLISHED
    assert found is not None
    assert set(found.instead) == {"c3", "c4"}


def test_a_misfit_that_is_only_a_rule_of_thumb_is_told():
    """Every danger stands while the animal may be unknown, whoever made it look so."""
    matrix = matrix_of({"c0", "c1", "c2", "c3"})
    now = assess(matrix, seen("zzzz" + "x" * 7))

    found = leaning(matrix, now)

    assert now.verdict.level is Level.OUTSIDE
    assert Stake.HAZARD in {caution.stake for caution in now.cautions}
    assert found is not None
    assert found.without.level is not Level.OUTSIDE
