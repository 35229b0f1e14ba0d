"""Couplets walked, labels matched, published statements run, priors and audits."""

from dataclasses import replace

import pytest

from idkey.engine import walk
from idkey.engine.audit import Weakness, audit
from idkey.engine.checks import failed_checks, run_checks
from idkey.engine.labels import label_entry, match_labels, name_only, normalised
from idkey.engine.priors import label_prior
from idkey.model.case import Case, Finding
from idkey.model.check import Check, CheckKind
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.label import Label, Rates
from idkey.model.taxon import Taxon
from tests.engine.small_keys import key_of, number_character, spans, states_character

TAXA = (
    Taxon(id="one", name="Alpha prima", synonyms=("Beta prima Smith, 1900",)),
    Taxon(id="two", name="Alpha secunda"),
    Taxon(id="three", name="Alpha tertia"),
)
COUPLETS = (
    Couplet(
        id="1",
        leads=(
            Lead(statement="red", sees=(Sees(character="c", states=("red",)),), taxa=("one",)),
            Lead(statement="blue", sees=(Sees(character="c", states=("blue",)),), to="2"),
        ),
    ),
    Couplet(
        id="2",
        leads=(
            Lead(statement="small", sees=(Sees(character="m", high=20),), taxa=("two",)),
            Lead(statement="large", sees=(Sees(character="m", low=20),), taxa=("three",)),
        ),
    ),
)
LABELS = (
    Label(id="L1", text="Red rover", variants=("Rover rouge",), covers=("one",), sold_as=("two",)),
    Label(id="L2", text="Blue rover", covers=("two", "three"), deciding=("m",)),
)


@pytest.fixture(scope="module")
def key():
    """Three taxa, a colour and a size, two couplets, two labels."""
    characters = [states_character("c", ("red", "blue", "green")), number_character("m")]
    table = {
        "one": {"c": "red", "m": None},
        "two": {"c": "blue", "m": spans(10, 18)},
        "three": {"c": "blue", "m": spans(22, 30)},
    }
    return key_of(characters, table, taxa=TAXA, couplets=COUPLETS, labels=LABELS)


@pytest.fixture
def case():
    """An empty case."""
    return Case(id="1", key="small")


def test_a_lead_taken_becomes_a_finding_and_back_takes_it_away(key, case):
    on = walk.take(key, case, "1", (1,))

    assert [c.id for c in walk.here(key, on)] == ["2"]
    assert on.finding("c") == Finding(character="c", states=("blue",), lead="1/2")
    assert walk.back(on) == case


def test_a_finding_that_was_seen_is_not_overwritten_by_a_lead(key, case):
    seen = case.observe(Finding(character="c", states=("red",), note="by daylight"))

    on = walk.take(key, seen, "1", (1,))

    assert on.finding("c") == seen.finding("c")
    assert walk.back(on).findings == seen.findings


def test_both_could_be_right_follows_both_and_claims_no_more_than_one_of_them(key, case):
    on = walk.take(key, case, "1", (0, 1))

    assert [c.id for c in walk.here(key, on)] == ["2"]
    assert [e.taxa for e in walk.ends(key, on)] == [("one",)]
    assert on.finding("c") == Finding(character="c", states=("red", "blue"), lead="1/1+2")


def test_findings_decide_leads(case):
    blue = case.observe(Finding(character="c", states=("blue",)))
    large = case.observe(Finding(character="m", value=25.0))

    assert walk.decided(blue, COUPLETS[0]) == (1,)
    assert walk.decided(case, COUPLETS[0]) == (0, 1)
    assert walk.decided(large, COUPLETS[1]) == (1,)


def test_a_lead_that_is_not_there_is_refused(key, case):
    with pytest.raises(ValueError, match="no such lead"):
        walk.take(key, case, "1", (2,))
    with pytest.raises(ValueError, match="does not stand"):
        walk.take(key, case, "2", (0,))


@pytest.mark.parametrize(
    "text", ["red rovers", "RED ROVER", "Red-Rover (adult female)", "rover rouge"]
)
def test_labels_are_found_whatever_the_spelling(key, text: str):
    first = match_labels(key, text)[0]

    assert (first.label, first.exact) == ("L1", True)


def test_a_near_label_is_offered_never_taken(key):
    matches = match_labels(key, "Red rovr")

    assert matches[0].label == "L1"
    assert not any(m.exact for m in matches)


def test_an_older_name_on_a_label_is_the_same_animal(key):
    match = match_labels(key, "beta prima")[0]

    assert match.exact
    assert label_entry(key, match.label).covers == ("one",)


@pytest.mark.parametrize(
    ("synonym", "name"),
    [
        ("Buthus (Heterometrus) spinifer Ehrenberg, 1828", "Buthus (Heterometrus) spinifer"),
        ("Pandinus imperator gambiensis Pocock, 1899", "Pandinus imperator gambiensis"),
        ("Scorpio cavimanus Pocock, 1888", "Scorpio cavimanus"),
    ],
)
def test_a_synonym_without_its_author_is_the_name(synonym: str, name: str):
    assert name_only(synonym) == name


def test_normalising_drops_accents_and_signs():
    assert normalised("  Riesen-Wald\u2019skorpión ") == "riesen wald skorpion"


def check(**more) -> Check:
    """A published statement on the blue ones of 15 mm."""
    sees = (Sees(character="c", states=("blue",)), Sees(character="m", low=15, high=15))
    given = {"id": "K", "kind": CheckKind.MATRIX, "statement": "", "sees": sees}
    return Check(**(given | more))


def test_published_statements_are_run_on_the_printed_ranges(key):
    good = replace(key, checks=(check(remain=("two",), exclude=("one", "three")),))
    bad = replace(key, checks=(check(remain=("three",), exclude=("two",)),))

    assert [r.passed for r in run_checks(good)] == [True]
    assert [(r.wrongly_excluded, r.wrongly_kept) for r in failed_checks(bad)] == [
        (("three",), ("two",))
    ]


def test_a_statement_on_names_is_run_on_the_labels(key):
    names = check(kind=CheckKind.NAME, sees=(), names=("Beta prima",), remain=("one",))

    assert run_checks(replace(key, checks=(names,)))[0].passed


def test_a_prior_starts_even_and_follows_the_shops_own_cases(key):
    even = label_prior(key, LABELS[0], {})
    own = label_prior(key, LABELS[0], {"two": 8, "one": 2})

    assert list(even.shares.values()) == pytest.approx([1 / 3] * 3)
    assert own.shares["two"] == pytest.approx((8 + 2 / 3) / 12)
    assert own.rates["two"].low < 0.8 < own.rates["two"].high


def test_the_keys_own_rates_are_worth_a_few_animals(key):
    rated = replace(LABELS[0], rates=Rates(shares={"one": 0.9, "two": 0.1}, animals=4))

    prior = label_prior(key, rated, {})

    assert prior.shares["one"] == pytest.approx((0.9 * 4 + 2 / 3) / 6)
    assert sum(prior.shares.values()) == pytest.approx(1.0)


def test_the_audit_finds_what_is_weak(key):
    found = {(r.weakness, r.about) for r in audit(key)}

    assert (Weakness.IDLE_STATE, ("c", "green")) in found
    assert (Weakness.LABEL_WITHOUT_CHARACTERS, ("L1",)) in found
    assert (Weakness.UNSOURCED, ("one", "c")) in found
    assert (Weakness.FRAGILE, ("two", "three")) in found
    assert not any(w is Weakness.INSEPARABLE for w, _ in found)


def test_the_audit_finds_couplets_that_contradict_the_matrix(key):
    wrong = replace(
        COUPLETS[0], leads=(replace(COUPLETS[0].leads[0], taxa=("two",)), COUPLETS[0].leads[1])
    )

    found = audit(replace(key, couplets=(wrong, COUPLETS[1])))

    remarks = {(r.weakness, r.about, r.detail) for r in found}
    assert (Weakness.COUPLET_AGAINST_MATRIX, ("1", "1"), ("two",)) in remarks
    assert (Weakness.UNREACHED_TAXON, ("one",), ()) in remarks
