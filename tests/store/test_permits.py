"""Permit fields: what is missing, what cannot be right, and nothing about what is allowed."""

from dataclasses import replace

import pytest

from idkey.model.taxon import Permit
from idkey.store.permits import Fault, Gap, gaps, purpose_codes, source_codes, strictest
from idkey.store.record import Papers

LISTED = Permit(cites="II", eu="B")
FULL = Papers(
    name="Pandinus imperator",
    appendix="II",
    annex="B",
    source="C",
    purpose="T",
    document="DE-0815/25",
    authority="Lower nature authority",
    issued="2025-10-01",
    origin="own breeding",
    mark="photo set 12",
)


def test_the_codes_of_the_convention_are_all_there_with_their_date():
    assert "".join(sorted(code.code for code in source_codes())) == "ACDFIORUWXY"
    assert "".join(sorted(code.code for code in purpose_codes())) == "BEGHLMNPQSTZ"
    assert all("2019" in c.as_of and c.authority for c in source_codes() + purpose_codes())


def test_codes_not_seen_in_an_official_text_say_so():
    assert {code.code for code in source_codes() if not code.checked} == {"U", "X", "Y"}


def test_complete_papers_have_no_gaps():
    assert gaps(FULL, LISTED) == ()


def test_an_unlisted_animal_misses_nothing():
    assert gaps(Papers(), Permit()) == ()


def test_every_empty_field_of_a_listed_animal_is_named_in_the_order_of_the_form():
    found = gaps(Papers(), LISTED)

    assert [gap.field for gap in found] == list(Papers.__dataclass_fields__)
    assert {gap.fault for gap in found} == {Fault.MISSING}


@pytest.mark.parametrize("field", list(Papers.__dataclass_fields__))
def test_a_blank_field_is_empty_too(field: str):
    assert [gap.field for gap in gaps(replace(FULL, **{field: " "}), LISTED)] == [field]


def test_only_the_list_that_names_the_taxon_asks_for_its_entry():
    found = {gap.field for gap in gaps(Papers(), Permit(eu="D"))}

    assert "annex" in found
    assert not found & {"appendix", "purpose"}


@pytest.mark.parametrize(
    ("change", "gap"),
    [
        ({"source": "q"}, Gap(field="source", fault=Fault.UNKNOWN_CODE, given="Q")),
        ({"purpose": "W"}, Gap(field="purpose", fault=Fault.UNKNOWN_CODE, given="W")),
        ({"source": "A"}, Gap(field="source", fault=Fault.PLANTS_ONLY, given="A")),
        ({"source": "D"}, Gap(field="source", fault=Fault.STRICTEST_ONLY, given="D")),
        ({"issued": "1.10.2025"}, Gap(field="issued", fault=Fault.NO_DATE, given="1.10.2025")),
    ],
)
def test_what_cannot_be_right_is_named(change: dict[str, str], gap: Gap):
    assert gaps(replace(FULL, **change), LISTED) == (gap,)


def test_source_code_d_is_right_for_appendix_i_and_annex_a():
    assert gaps(replace(FULL, source="d", appendix="I", annex="A"), LISTED) == ()


def test_several_listed_taxa_ask_for_what_the_strictest_asks_for():
    found = strictest([Permit(cites="II", eu="B"), Permit(), Permit(cites="I"), Permit(eu="C")])

    assert (found.cites, found.eu) == ("I", "B")
    assert not strictest([Permit()]).listed
