"""A case survives the way to JSON and back; what is not ours is refused in words."""

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.model.case import Case
from idkey.store.codec import FORMAT, UnreadableRecord, canonical, case_from, digest, plain
from tests.store.any_case import cases
from tests.store.cases import EXAMPLE


@given(cases)
def test_every_case_comes_back_from_json_as_it_went(case: Case):
    text = json.dumps(plain(case))

    assert case_from(json.loads(text)) == case


@given(cases, st.text(max_size=3))
def test_a_changed_remark_changes_the_text_and_nothing_else_does(case: Case, note: str):
    changed = replace(case, note=note)

    assert (canonical(plain(changed)) == canonical(plain(case))) == (note == case.note)


@given(st.dictionaries(st.text(), st.integers(), max_size=5))
def test_the_order_of_names_does_not_change_the_canonical_text(values: dict[str, int]):
    turned = dict(reversed(values.items()))

    assert canonical(turned) == canonical(values)


def test_fields_at_their_default_are_not_written():
    assert plain(Case(id="a", key="k")) == {"format": FORMAT, "id": "a", "key": "k"}


def test_the_digest_is_the_published_sha_256_of_abc_nist_fips_180_2_appendix_b_1():
    assert digest("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"


@pytest.mark.parametrize(
    ("change", "problem"),
    [
        ({"format": FORMAT + 1}, "written in form 2; this program knows form 1"),
        ({"format": None}, "gives no form number (found None)"),
        ({"format": True}, "gives no form number (found True)"),
        ({"format": 0}, "gives no form number (found 0)"),
        ({"weather": "wet"}, "a field 'weather' unknown here"),
        ({"findings": [{"character": "a", "states": ["b"], "x": 1}]}, "'findings.0.x' unknown"),
        ({"findings": [{"states": ["b"]}]}, "lacks the field 'findings.0.character'"),
        ({"findings": [{"character": "a"}]}, "wrong at findings.0: Value error, a finding is"),
        ({"tolerance": "1"}, "wrong at tolerance:"),
        ({"use_prior": 1}, "wrong at use_prior:"),
        ({"aim": "profit"}, "wrong at aim:"),
        ({"findings": [{"character": "a", "value": float("nan")}]}, "not plain JSON"),
    ],
)
def test_a_record_that_is_not_ours_is_refused_with_the_place(
    change: dict[str, object], problem: str
):
    with pytest.raises(UnreadableRecord) as caught:
        case_from({**plain(EXAMPLE), **change})

    assert problem in caught.value.problem
    assert caught.value.remedy


def test_a_record_of_a_newer_program_asks_for_that_program():
    with pytest.raises(UnreadableRecord) as caught:
        case_from({**plain(EXAMPLE), "weather": "wet"})

    assert caught.value.remedy == "Install the newer program to read it; nothing was changed."
