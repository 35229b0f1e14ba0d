"""What must hold for any key and any findings."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.engine.assess import assess
from idkey.engine.audit import agrees
from idkey.engine.build import build
from idkey.engine.compile import compile_key
from idkey.engine.walk import reachable
from idkey.engine.weighing import weigh
from idkey.model.case import Case, Certainty, Finding
from idkey.model.key import Key
from idkey.model.score import Shows
from tests.engine.small_keys import key_of, number_character, spans, states_character

STATES = ("a", "b", "c")
CHARACTERS = ("p", "q", "r", "s")

scored = st.sets(st.sampled_from(STATES), min_size=1, max_size=2).map(
    lambda found: Shows(dict.fromkeys(sorted(found)))
)
cells = st.one_of(st.none(), scored)
ranges = st.one_of(
    st.none(),
    st.tuples(st.integers(10, 60), st.integers(1, 20)).map(lambda x: spans(x[0], x[0] + x[1])),
)


@st.composite
def keys(draw: st.DrawFn, error: float = 0.1) -> Key:
    """A key of two to six taxa, four characters with states and one measurement."""
    characters = [states_character(name, STATES, error=error) for name in CHARACTERS]
    characters.append(number_character("size", error=error))
    table = {
        f"t{n}": {c: draw(cells) for c in CHARACTERS} | {"size": draw(ranges)}
        for n in range(draw(st.integers(2, 6)))
    }
    return key_of(characters, table)


@st.composite
def found(draw: st.DrawFn) -> tuple[Finding, ...]:
    """Findings on some of the characters, of every sort."""
    made = []
    for name in draw(st.sets(st.sampled_from(CHARACTERS))):
        states = tuple(sorted(draw(st.sets(st.sampled_from(STATES), min_size=1, max_size=2))))
        sort = draw(st.sampled_from(("states", "negated", "unseen")))
        sure = draw(st.sampled_from(Certainty))
        if sort == "unseen":
            made.append(Finding(character=name, unseen=True))
        else:
            made.append(
                Finding(character=name, states=states, negated=sort == "negated", certainty=sure)
            )
    if draw(st.booleans()):
        made.append(Finding(character="size", value=float(draw(st.integers(5, 90)))))
    return tuple(made)


def case_of(findings: tuple[Finding, ...]) -> Case:
    """A case with these findings."""
    return Case(id="1", key="small", findings=findings)


@given(keys(), found(), st.randoms())
def test_the_order_of_findings_does_not_matter(key: Key, findings, random):
    matrix = compile_key(key)
    shuffled = list(findings)
    random.shuffle(shuffled)

    one, other = (weigh(matrix, case_of(tuple(f))) for f in (findings, shuffled))

    assert np.allclose(one.support, other.support)
    assert (one.ruled_out == other.ruled_out).all()


@given(keys(), found())
def test_a_withdrawn_finding_leaves_no_trace(key: Key, findings):
    matrix = compile_key(key)
    before = case_of(tuple(f for f in findings if f.character != "p"))
    extra = Finding(character="p", states=("b",))

    after = before.observe(extra).withdraw("p")

    assert after == before
    assert assess(matrix, after) == assess(matrix, before)


@given(keys(), found())
def test_support_and_background_sum_to_one_and_every_taxon_stands_once(key: Key, findings):
    seen = assess(compile_key(key), case_of(findings))

    assert sum(c.support for c in seen.lineup) + seen.background == pytest.approx(1.0)
    assert sorted(c.taxon for c in seen.lineup) == sorted(t.id for t in key.taxa)


@given(keys(), found())
def test_what_is_not_scored_never_conflicts_and_never_separates(key: Key, findings):
    seen = assess(compile_key(key), case_of(findings))

    for candidate in seen.lineup:
        for name in (*(c.finding.character for c in candidate.conflicts), *candidate.separators):
            assert (candidate.taxon, name) in key.cells


@given(keys(), found())
def test_other_names_for_the_taxa_change_nothing(key: Key, findings):
    new = {t.id: f"x{t.id}" for t in key.taxa}
    renamed = replace(
        key,
        taxa=tuple(replace(t, id=new[t.id]) for t in key.taxa),
        scores=tuple(replace(s, taxon=new[s.taxon]) for s in key.scores),
    )

    one = weigh(compile_key(key), case_of(findings))
    other = weigh(compile_key(renamed), case_of(findings))

    assert np.allclose(one.support, other.support)


@given(st.data(), st.sampled_from(STATES), st.floats(0.0, 0.3), st.floats(0.0, 0.3))
def test_more_error_never_makes_a_taxon_more_certain(data, state: str, one: float, other: float):
    careful, hurried = sorted((one, other))
    table = {f"t{n}": {"p": data.draw(scored)} for n in range(4)}
    case = case_of((Finding(character="p", states=(state,)),))

    tops = []
    for error in (careful, hurried):
        matrix = compile_key(key_of([states_character("p", STATES, error=error)], table))
        support = weigh(matrix, case).support[:-1]
        tops.append((support / support.sum()).max())

    assert tops[1] <= tops[0] + 1e-6


@given(keys(), found())
def test_a_guess_never_rules_out(key: Key, findings):
    guesses = tuple(f if f.unseen else replace(f, certainty=Certainty.GUESS) for f in findings)

    seen = assess(compile_key(key), case_of(guesses))

    assert not seen.ruled_out


@settings(max_examples=40)
@given(keys(error=0.0), st.booleans())
def test_a_built_key_leads_each_taxons_own_states_to_that_taxon(key: Key, many: bool):
    built = build(compile_key(key), many_leads=many)

    if not built.couplets:
        return
    below = reachable(built.couplets)
    for taxon in key.taxa:
        todo = [built.couplets[0].id]
        ends: set[str] = set()
        while todo:
            place = todo.pop()
            couplet = next(c for c in built.couplets if c.id == place)
            open_ = [lead for lead in couplet.leads if agrees(key, taxon.id, lead)]
            assert any(taxon.id in (below[x.to] if x.to else x.taxa) for x in open_)
            for lead in open_:
                todo += [lead.to] if lead.to and taxon.id in below[lead.to] else []
                ends |= set(lead.taxa)
        assert taxon.id in ends
