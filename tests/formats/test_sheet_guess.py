"""A spreadsheet becomes a new key: each column guessed and shown, each bad cell named."""

from contextlib import suppress
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats.problem import KeyProblems
from idkey.formats.sheet import Sheet, headed, parse_sheets
from idkey.formats.sheet_guess import Column, Role, guess
from idkey.formats.sheet_key import key_from_sheet
from idkey.model.character import Kind, Look, Sex
from idkey.model.score import Inapplicable, Often, Shows, Spans
from idkey.model.taxon import Danger

FILE = Path("geckos.csv")
TEXT = """\
Species,Author,Family,Tail shape,Snout to vent (mm),Pores,Index,Remarks,Empty,Always
Alpha prima,Novak 1990,Geckonidae,leaf,40-55,12,1.25,one of the first,,yes
Beta secunda,Novak 1991,Geckonidae,rope / leaf (rarely),"60,5",14 to 16,2,seen in a tub,,yes
Gamma tertia,,Geckonidae,n/a,?,12,,a third remark,,yes
Delta quarta,,Geckonidae,female: leaf; male: rope,70,,3.5,a fourth remark,,yes
"""


def sheet(text: str = TEXT) -> Sheet:
    return parse_sheets(text.encode(), "geckos.csv")[0]


def test_each_column_is_guessed_with_a_reason():
    found = guess(sheet())

    assert [(c.heading, c.role, c.kind, c.unit, c.states) for c in found] == [
        ("Species", Role.TAXON, Kind.CATEGORICAL, "", ()),
        ("Author", Role.AUTHORITY, Kind.CATEGORICAL, "", ()),
        ("Family", Role.FAMILY, Kind.CATEGORICAL, "", ()),
        ("Tail shape", Role.CHARACTER, Kind.CATEGORICAL, "", ("leaf", "rope")),
        ("Snout to vent", Role.CHARACTER, Kind.MEASUREMENT, "mm", ()),
        ("Pores", Role.CHARACTER, Kind.COUNT, "", ()),
        ("Index", Role.CHARACTER, Kind.RATIO, "", ()),
        ("Remarks", Role.SKIP, Kind.CATEGORICAL, "", ()),
        ("Empty", Role.SKIP, Kind.CATEGORICAL, "", ()),
        ("Always", Role.SKIP, Kind.CATEGORICAL, "", ("yes",)),
    ]
    assert all(column.why.endswith(".") for column in found)


def test_the_guess_makes_a_key():
    found = key_from_sheet(sheet(), guess(sheet()), FILE)
    values = {(s.taxon, s.character, s.sex): s.value for s in found.key.scores}

    assert found.notes[0] == "Columns left out: 'Remarks', 'Empty', 'Always'."
    assert [t.id for t in found.key.taxa] == [
        "alpha_prima", "beta_secunda", "delta_quarta", "gamma_tertia",
    ]  # fmt: skip
    assert found.key.taxon["alpha_prima"].authority == "Novak 1990"
    assert {t.hazard.level for t in found.key.taxa} == {Danger.SIGNIFICANT}
    assert {c.looks for c in found.key.characters} == {(Look.LENS,)}
    assert found.key.character["snout_to_vent"].unit == "mm"
    assert values == {
        ("alpha_prima", "tail_shape", None): Shows({"leaf": None}),
        ("alpha_prima", "snout_to_vent", None): Spans(low=40, high=55),
        ("alpha_prima", "pores", None): Spans(low=12, high=12),
        ("alpha_prima", "index", None): Spans(low=1.25, high=1.25),
        ("beta_secunda", "tail_shape", None): Shows({"rope": None, "leaf": Often.RARELY}),
        ("beta_secunda", "snout_to_vent", None): Spans(low=60.5, high=60.5),
        ("beta_secunda", "pores", None): Spans(low=14, high=16),
        ("beta_secunda", "index", None): Spans(low=2, high=2),
        ("gamma_tertia", "tail_shape", None): Inapplicable(),
        ("gamma_tertia", "pores", None): Spans(low=12, high=12),
        ("delta_quarta", "tail_shape", "female"): Shows({"leaf": None}),
        ("delta_quarta", "tail_shape", "male"): Shows({"rope": None}),
        ("delta_quarta", "snout_to_vent", None): Spans(low=70, high=70),
        ("delta_quarta", "index", None): Spans(low=3.5, high=3.5),
    }


def test_without_a_telling_heading_the_first_distinct_column_holds_the_taxa():
    found = guess(sheet("Group,Animal,Tail\na,Alpha,leaf\na,Beta,rope\nb,Gamma,leaf\n"))

    assert [c.role for c in found] == [Role.CHARACTER, Role.TAXON, Role.CHARACTER]


def test_a_column_in_which_every_cell_differs_is_a_text():
    rows = "".join(f"T{n},word {n}\n" for n in range(12))
    _, found = guess(sheet(f"Taxon,Habitat\n{rows}"))

    assert (found.role, found.why) == (Role.SKIP, "Nearly every cell differs: a text.")


def test_a_column_that_was_taken_for_dates_is_not_used():
    rows = (("taxon", "tail"), ("A", "\x00date 2026-05-03"), ("B", "leaf"))
    _, found = guess(Sheet("s", rows))

    assert (found.role, found.why) == (Role.SKIP, "The spreadsheet took cells for dates.")


def mistakes(text: str, **changes: object) -> list[str]:
    """What is said when the column of the last heading is changed so."""
    columns = guess(sheet(text))
    with pytest.raises(KeyProblems) as caught:
        key_from_sheet(sheet(text), (*columns[:-1], replace(columns[-1], **changes)), FILE)
    return [f"{p.problem} {p.remedy}" for p in caught.value.problems]


def test_bad_cells_are_named():
    text = "Taxon,Tail\nA,leaf\nB,rope\n,leaf\na,rope\nC,leaf (often)\n"

    assert mistakes(text, states=("leaf", "club")) == [
        "geckos.csv, cell A4: No name. Write a name, or empty the row.",
        "geckos.csv, cell A5: The taxon 'a' is there already. Join the rows.",
        "geckos.csv, cell B3: 'rope' is no state of 'Tail'. Known: leaf, club.",
        "geckos.csv, cell B5: 'rope' is no state of 'Tail'. Known: leaf, club.",
        "geckos.csv, cell B6: 'often' does not say how often. "
        "Write always, usually, sometimes, rarely or a share.",
    ]


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"states": ()}, "geckos.csv, cell B1: 'Tail' needs two states or more."),
        (
            {"kind": Kind.MEASUREMENT},
            "geckos.csv, cell B1: 'Tail' is a measurement without a unit.",
        ),
        ({"role": Role.SKIP}, "geckos.csv, cell A1: No column is a character."),
    ],
)
def test_a_column_that_cannot_be_what_it_is_marked_as_is_told(
    changes: dict[str, object], message: str
):
    (said,) = mistakes("Taxon,Tail\nA,leaf\nB,rope\n", **changes)

    assert said.startswith(message)


def test_a_sheet_without_taxa_is_told():
    columns = (Column(index=0, heading="Tail", role=Role.CHARACTER, states=("leaf", "rope")),)

    with pytest.raises(KeyProblems, match="No column holds the taxa"):
        key_from_sheet(sheet("Tail\nleaf\nrope\n"), columns, FILE)
    with pytest.raises(KeyProblems, match="There are no taxa"):
        key_from_sheet(sheet("Taxon,Tail\n"), guess(sheet("Taxon,Tail\n")), FILE)


@given(
    st.lists(
        st.lists(st.text('ab1-,;:|/ ?(.)="ß\x00', max_size=6), min_size=1, max_size=4),
        min_size=1,
        max_size=6,
    )
)
@settings(max_examples=60)
def test_no_sheet_at_all_does_more_than_be_refused(rows: list[list[str]]):
    made = Sheet("s", tuple(map(tuple, rows)))

    with suppress(IdKeyError):
        key_from_sheet(made, guess(made), FILE)


def test_semicolons_between_states_mean_or_unless_a_sex_is_named():
    text = "Species,Colour\nA,red; brown\nB,male: red; female: brown\nC,brown\n"
    found = key_from_sheet(sheet(text), guess(sheet(text)), FILE)
    values = {(s.taxon, s.sex): s.value for s in found.key.scores}

    assert values["a", None] == Shows({"red": None, "brown": None})
    assert {sex for taxon, sex in values if taxon == "b"} == {Sex.MALE, Sex.FEMALE}


@pytest.mark.parametrize(
    ("heading", "cells", "kind"),
    [
        ("Length (mm)", ["3", "4", "about 6"], Kind.MEASUREMENT),
        ("Length (mm)", ["3", "long", "short"], Kind.CATEGORICAL),
        ("Spots", ["1", "2", "3", "4", "some"], Kind.COUNT),
        ("Spots", ["1", "2", "3", "some"], Kind.CATEGORICAL),
    ],
)
def test_a_few_cells_that_are_no_numbers_are_mistakes_and_many_are_states(
    heading: str, cells: list[str], kind: Kind
):
    rows = "".join(f"T{n},{cell}\n" for n, cell in enumerate(cells))
    column = guess(sheet(f"Species,{heading}\n{rows}"))[1]

    assert column.kind is kind
    assert ("Cells that are none: 1." in column.why) == kind.numeric


def test_ids_beside_names_are_left_out_and_genera_go_before_the_names():
    text = "taxon,name,Colour\na_p,Alpha prima,red\nb_s,Beta secunda,brown\n"
    columns = guess(sheet(text))
    assert [column.role for column in columns[:2]] == [Role.SKIP, Role.TAXON]
    assert columns[0].why == "'name' says it already."
    assert [t.name for t in key_from_sheet(sheet(text), columns, FILE).key.taxa] == [
        "Alpha prima",
        "Beta secunda",
    ]

    text = "Genus,Species,Colour\nAlpha,prima,red\nAlpha,Alpha secunda,brown\n"
    found = key_from_sheet(sheet(text), guess(sheet(text)), FILE)
    assert [taxon.name for taxon in found.key.taxa] == ["Alpha prima", "Alpha secunda"]


def test_two_columns_of_names_are_told():
    text = "Species,Other,Colour\nA,B,red\nC,D,brown\n"
    columns = tuple(replace(c, role=Role.TAXON) if c.index < 2 else c for c in guess(sheet(text)))

    with pytest.raises(KeyProblems, match="Another column holds the same as 'Other': taxon"):
        key_from_sheet(sheet(text), columns, FILE)


MESSY = """\
Meine Käferliste 2024;;;;
;;;;
Art;Länge;Halsschildbreite mm;Fühlerglieder;Hörner
Hornus primus;12–15 mm;4,5;11;vorhanden
Hornus secundus;14-18 mm;5,25;10-11;fehlt
;;;;
Pilula minor;ca. 4 mm;1,2;9;fehlt
Pilula maior;bis 7 mm;2,0;9;–
Pilula nigra;> 5;1,8;;fehlt
"""


def test_a_title_above_the_headings_units_in_cells_and_german_words_are_understood():
    made = headed(parse_sheets(MESSY.encode("cp1252"), "beetles.csv")[0])
    columns = guess(made)

    assert made.above == 2
    assert [(c.heading, c.role, c.kind, c.unit) for c in columns[:4]] == [
        ("Art", Role.TAXON, Kind.CATEGORICAL, ""),
        ("Länge", Role.CHARACTER, Kind.MEASUREMENT, "mm"),
        ("Halsschildbreite", Role.CHARACTER, Kind.MEASUREMENT, "mm"),
        ("Fühlerglieder", Role.CHARACTER, Kind.COUNT, ""),
    ]
    with pytest.raises(KeyProblems) as raised:
        key_from_sheet(made, columns, FILE)
    (wrong,) = raised.value.problems
    assert wrong.problem.startswith("beetles.csv, cell B7: 'ca. 4")
    assert (wrong.line, wrong.loc[1]) == (7, 4)

    mended = Sheet(made.name, tuple(tuple(c.removeprefix("ca. ") for c in r) for r in made.rows))
    values = [s.value for s in key_from_sheet(mended, columns, FILE).key.scores]
    assert Spans(low=14, high=18) in values
    assert Spans(high=7) in values
    assert Spans(low=1.2, high=1.2) in values
