"""SDD 1.1: written strictly and read back whole; read loosely, with everything odd told.

Set IDKEY_SDD_XSD to a folder with SDD.xsd to validate against the schema as well.
"""

import os
from contextlib import suppress
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats.arrival import read_arrival
from idkey.formats.folder import digest, read_key
from idkey.formats.plain import canonical
from idkey.formats.sdd import sdd_text, write_sdd
from idkey.formats.sdd_faults import sdd_faults
from idkey.formats.sdd_reading import parse_sdd
from idkey.formats.sdd_terms import joined_unit, parted_unit
from idkey.formats.xml_nodes import LARGEST_XML, parse_xml
from idkey.model.character import Kind, Look, Requirement
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Often, Shows, Spans
from idkey.model.taxon import Danger
from idkey.places import keys_folder
from tests.formats.invented import keys
from tests.formats.small_key import FILES, laid_out

FILE = Path("x.sdd.xml")
TOUR = (Path(__file__).parent / "samples" / "tour.sdd.xml").read_text("utf-8")
SCHEMA = os.environ.get("IDKEY_SDD_XSD")
with_schema = pytest.mark.skipif(SCHEMA is None, reason="IDKEY_SDD_XSD names no schema folder")


@cache
def schema() -> Any:
    from lxml import etree

    return etree.XMLSchema(etree.parse(Path(str(SCHEMA)) / "SDD.xsd"))


def schema_errors(text: str) -> list[str]:
    from lxml import etree

    schema().validate(etree.fromstring(text.encode()))
    return [f"{error.line}: {error.message}" for error in schema().error_log]


def faults(text: str) -> list[str]:
    return [f"{p.line}: {p.problem}" for p in sdd_faults(parse_xml(text.encode(), "x"), FILE)]


@given(key=keys())
@settings(max_examples=10)
def test_every_key_comes_back_from_sdd(key: Key):
    text, _ = sdd_text(key)
    found = parse_sdd(text.encode(), FILE)

    assert replace(found.key, digest="") == canonical(key)
    assert found.key.digest == digest(key)
    assert found.notes == ()


@with_schema
@given(key=keys())
@settings(max_examples=10)
def test_every_key_is_valid_sdd(key: Key):
    assert schema_errors(sdd_text(key)[0]) == []


@pytest.mark.parametrize("name", ["large-dark-scorpions", "kitchen-leaves"])
def test_a_shipped_key_comes_back_from_sdd(name: str, tmp_path: Path):
    key = read_key(keys_folder() / name)
    left = write_sdd(key, tmp_path / "k.xml")

    assert parse_sdd((tmp_path / "k.xml").read_bytes(), tmp_path / "k.xml").key == key
    assert faults((tmp_path / "k.xml").read_text("utf-8")) == []
    assert left[0].startswith("The standard has no place for how characters are looked at,")
    assert left[1:] == (
        "Leads that end in several taxa end in a group of them, as the standard wants.",
    )


@with_schema
@pytest.mark.parametrize("name", [folder.name for folder in sorted(keys_folder().iterdir())])
def test_the_shipped_keys_are_valid_sdd(name: str):
    assert schema_errors(sdd_text(read_key(keys_folder() / name))[0]) == []


def test_what_somebody_else_edits_in_the_standard_wins(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    text, _ = sdd_text(key)
    text = text.replace("<Label>Tail</Label>", "<Label>Shape of the tail</Label>")
    text = text.replace('type="UMethUpper" value="50"', 'type="UMethUpper" value="52"')

    found = parse_sdd(text.encode(), FILE).key

    assert found.character["tail"].name == "Shape of the tail"
    assert found.character["tail"].question == key.character["tail"].question
    assert found.cells["alpha", "length"][0].value == Spans(low=40, high=52, mean=44.5, sd=2, n=12)
    assert found.cells["alpha", "length"][0].sources == ("novak2020",)


def test_a_damaged_remainder_is_passed_over(tmp_path: Path):
    text, _ = sdd_text(read_key(laid_out(tmp_path, FILES)))
    text = text.replace('<k:more>{"note', "<k:more>{note").replace(
        "<k:more>{&quot;sources", "<k:more>{sources"
    )
    broken = text.replace('{"question":"Which shape has', "{question:Which shape has")

    assert parse_sdd(broken.encode(), FILE).key.character["tail"].question == (
        "Tail: which applies?"
    )


@pytest.fixture(scope="module")
def tour() -> Key:
    return parse_sdd(TOUR.encode(), FILE).key


@with_schema
def test_the_sample_is_valid():
    assert schema_errors(TOUR) == []
    assert faults(TOUR) == []


def test_names_and_classification_are_read(tour: Key):
    alpha, beta, gamma = tour.taxa

    assert (tour.title, tour.licence, tour.authors) == (
        "Invented lizards of a made-up island", "CC0-1.0", ("A made-up author",),
    )  # fmt: skip
    assert (alpha.name, alpha.authority, alpha.family) == (
        "Alpha prima", "Novak, 1990", "Inventidae",
    )  # fmt: skip
    assert (beta.family, beta.synonyms) == ("Inventidae", ("Beta vetus",))
    assert (gamma.rank, gamma.hazard.level) == ("genus", Danger.SIGNIFICANT)
    assert alpha.note == "Habits: sleeps under bark"
    assert [source.citation for source in tour.sources] == ["Novak 1990, an invented book."]


def test_characters_are_read_with_units_and_dependence(tour: Key):
    tail, width, length, pores = tour.characters

    assert (tail.kind, tail.definition, tail.looks) == (
        Kind.CATEGORICAL, "Seen from above.", (Look.LENS,),
    )  # fmt: skip
    assert (width.kind, width.requires) == (
        Kind.ORDINAL, Requirement(character="tail_shape", states=("leaf",)),
    )  # fmt: skip
    assert (length.kind, length.unit) == (Kind.MEASUREMENT, "mm")
    assert (pores.kind, pores.unit) == (Kind.COUNT, "")


def test_scores_are_read_with_modifiers_sex_stage_and_animals(tour: Key):
    said = {(s.taxon, s.character): (s.value, s.sex, s.stage, s.note) for s in tour.scores}

    assert said == {
        ("alpha_prima", "tail_shape"): (
            Shows({"leaf": 0.8, "none": None}),
            "male",
            "adult",
            "from one plate; none: perhaps; none: tail lost; rope: often reported by mistake",
        ),
        ("alpha_prima", "snout_to_vent"): (
            Spans(low=90, high=115, mean=101, n=12), "male", "adult", "",
        ),
        ("beta_secunda", "tail_shape"): (
            Shows({"rope": Often.RARELY, "none": None}), None, None, "",
        ),
        ("beta_secunda", "width_of_the_leaf"): (Inapplicable(), None, None, ""),
        ("beta_secunda", "snout_to_vent"): (Spans(low=80.5, high=80.5), None, None, ""),
        ("beta_secunda", "pores"): (
            Spans(low=3, high=6), None, None, "Marked as to be checked.",
        ),
    }  # fmt: skip


def test_subkeys_and_reticulations_become_couplets(tour: Key):
    found = [
        (c.id, [(lead.statement, lead.to or lead.taxa) for lead in c.leads]) for c in tour.couplets
    ]

    assert found == [
        ("1", [("A tail", "2"), ("No tail", "3")]),
        (
            "2",
            [
                ("Like a leaf", ("alpha_prima",)),
                ("Like a rope", ("beta_secunda",)),
                ("Cannot tell", "3"),
            ],
        ),
        ("3", [("Stumpy", ("gamma",)), ("Smooth", ("alpha_prima",))]),
    ]


LOOSE = [
    ("no slash at the end of the namespace", "UBIF/2006/", "UBIF/2006"),
    ("another namespace", "http://rs.tdwg.org/UBIF/2006/", "urn:other"),
    ("a text inside a label", "<Label>Tail shape</Label>",
     "<Label><Text>Tail shape</Text></Label>"),
    ("a label inside a statement", "<Statement>A tail</Statement>",
     "<Statement><Label>A tail</Label></Statement>"),
    ("a label inside a question", "<Question><Text>A tail?</Text></Question>",
     "<Question><Label>A tail?</Label></Question>"),
    ("results for leads",
     '<Lead id="le7"><Statement>Smooth</Statement><TaxonName ref="tx1"/></Lead>',
     '<Result id="le7"><Statement>Smooth</Statement><TaxonName ref="tx1"/></Result>'),
    ("no technical metadata", '<TechnicalMetadata created="2026-01-01T00:00:00Z">'
     '<Generator name="by hand" version="1"/></TechnicalMetadata>', ""),
    ("no language", ' xml:lang="en"', ""),
    ("a median", 'type="Mean"', 'type="Median"'),
    ("estimates", 'type="UMethLower" value="3"', 'type="ObserverEstLower" value="3"'),
    ("only applicable if", '<InapplicableIf><State ref="st2"/><State ref="st3"/></InapplicableIf>',
     '<OnlyApplicableIf><State ref="st1"/></OnlyApplicableIf>'),
    ("a rule on a node above", '<Parent ref="no1"/><DependencyRules><InapplicableIf>'
     '<State ref="st2"/><State ref="st3"/></InapplicableIf></DependencyRules>'
     '<Character ref="ch2"/>',
     '<Parent ref="no2"/><Character ref="ch2"/></CharNode><Node id="no2"><DependencyRules>'
     '<InapplicableIf><State ref="st2"/><State ref="st3"/></InapplicableIf></DependencyRules>'
     "</Node><CharNode>"),
    ("a shared state", '<StateDefinition id="st2"><Representation><Label>rope</Label>'
     "</Representation></StateDefinition>", '<StateReference ref="st2"/>'),
]  # fmt: skip


@pytest.mark.parametrize(("name", "old", "new"), LOOSE, ids=[row[0] for row in LOOSE])
def test_a_loose_document_means_the_same(name: str, old: str, new: str, tour: Key):
    assert old in TOUR
    text = TOUR.replace(old, new)
    if name == "a shared state":
        shared = '<ConceptStates><StateDefinition id="st2"><Representation><Label>rope</Label>'
        shared += "</Representation></StateDefinition></ConceptStates></DescriptiveConcept>"
        text = text.replace("</DescriptiveConcept>", shared, 1)

    assert parse_sdd(text.encode(), FILE).key == tour


FAULTS = [
    ('<State ref="st2"><Modifier ref="mod4"/>', '<State ref="st4"><Modifier ref="mod4"/>',
     "'st4' is no state of the character 'ch1'."),
    ('<Quantitative ref="ch4"><Status', '<Categorical ref="ch1"/><Quantitative ref="ch4"><Status',
     "The character 'ch1' is scored twice in one description."),
    ('<Subkey ref="ke2"/>', '<Subkey ref="ke9"/>', "Subkey points to 'ke9', which is not there."),
    ('<Reticulation ref="le2"/>', '<Reticulation ref="le99"/>',
     "Reticulation points to 'le99', which is not there."),
    ('<Lead id="le1"><Statement>A tail', '<Lead id="le1"><Parent ref="le3"/><Statement>A tail',
     "Leads lie below each other in a circle: le1, le3."),
    ('<Lead id="le6"><Statement>', '<Lead id="le6"><Parent ref="le1"/><Statement>',
     "The lead 'le6' lies below 'le1', which is not in its key."),
    ('<Character ref="ch3"/>', '<Character ref="ch99"/>',
     "A node points to the character 'ch99', which is not there."),
    ('<CharNode><Parent ref="no1"/><Character ref="ch1"/>',
     '<CharNode><Parent ref="no9"/><Character ref="ch1"/>',
     "A node lies below 'no9', which is not there."),
    ('type="UMethUpper" value="5"', 'type="UMethUpper" value="1"',
     "UMethLower 3 is above UMethUpper 1."),
    ('type="Mean" value="101"', 'type="Mean" value="NaN"', "The value 'NaN' is no finite number."),
    ('type="Mean" value="101"', 'type="Mean" value="INF"', "The value 'INF' is no finite number."),
    ('lowerestimate="0.7"', 'lowerestimate="0.95"', "The proportion runs from 0.95 down to 0.9."),
    ("<Question><Text>Which shape?</Text></Question>", '<TaxonName ref="tx1"/>',
     "The lead 'le1' ends in a TaxonName and goes on as well."),
    ('<TaxonName ref="tx2"/></Lead>', "</Lead>", "The lead 'le4' goes nowhere."),
    ('<Lead id="le7"><Statement>Smooth</Statement><TaxonName ref="tx1"/></Lead>', "",
     "A step of the key has a single lead."),
    ('<TextChar ref="ch5"><Content>sleeps under bark</Content></TextChar>',
     '<Text ref="ch99"><Content>x</Content></Text>', "Text points to 'ch99', which is not there."),
]  # fmt: skip


@pytest.mark.parametrize(("old", "new", "fault"), FAULTS, ids=[row[2] for row in FAULTS])
def test_a_fault_the_schema_lets_through_is_told_with_its_line(old: str, new: str, fault: str):
    assert TOUR.count(old) == 1
    text = TOUR.replace(old, new)
    found = faults(text)

    assert fault in [words.partition(": ")[2] for words in found]
    line = TOUR[: TOUR.index(old)].count("\n") + 1
    places = [int(words.partition(":")[0]) for words in found if words.endswith(fault)]
    assert abs(places[0] - line) <= 2
    imported = parse_sdd(text.encode(), FILE)
    assert any(note.endswith(fault) for note in imported.notes)


@with_schema
@pytest.mark.parametrize(("old", "new", "_"), FAULTS, ids=[row[2] for row in FAULTS])
def test_the_schema_lets_the_fault_through(old: str, new: str, _: str):
    assert schema_errors(TOUR.replace(old, new)) == []


MENDED = [
    ('<TaxonName ref="tx2"/></Lead>', "</Lead>",
     [("2", ["Like a leaf", "Cannot tell"])],
     "a lead that goes nowhere was left out: 'Like a rope"),
    ('<Lead id="le7"><Statement>Smooth</Statement><TaxonName ref="tx1"/></Lead>', "",
     [("1", ["A tail", "No tail Stumpy"])], "A step of a single lead was joined: 'Stumpy'."),
    ('<Reticulation ref="le2"/>', '<Reticulation ref="le3"/>',
     [("2", ["Like a leaf", "Like a rope", "Cannot tell"])], None),
    ('<Reticulation ref="le2"/>', '<Reticulation ref="le1"/>',
     [("2", ["Like a leaf", "Like a rope"])], "a lead that goes nowhere was left out: 'Cannot"),
    ('<Subkey ref="ke2"/>', '<TaxonName ref="tx4"/>', [], "1 further keys were left out."),
]  # fmt: skip


@pytest.mark.parametrize(("old", "new", "couplets", "note"), MENDED)
def test_a_broken_key_is_mended_and_told(
    old: str, new: str, couplets: list[tuple[str, list[str]]], note: str | None
):
    assert TOUR.count(old) == 1
    found = parse_sdd(TOUR.replace(old, new).encode(), FILE)
    said = {c.id: [lead.statement for lead in c.leads] for c in found.key.couplets}

    assert [(own, said[own]) for own, _ in couplets] == couplets
    assert note is None or any(note in told for told in found.notes)


def test_what_is_not_read_is_told():
    text = TOUR.replace("</Dataset>", "<MediaObjects/></Dataset><Dataset/>")
    text = text.replace("<Label>Adults</Label>", "<Label>Eggs</Label>")
    text = text.replace('<StateDefinition id="st5"><Representation><Label>wide</Label></'
                        "Representation></StateDefinition>", "")  # fmt: skip

    notes = parse_sdd(text.encode(), FILE).notes

    assert "1 further data sets were left out." in notes
    assert "The stage 'Eggs' was left out." in notes
    assert "Not read: MediaObjects, Specimens." in notes
    assert "The character 'Width of the leaf' was left out: it has no two states." in notes


@pytest.mark.parametrize(
    ("unit", "parts"),
    [("mm", ("m", "milli")), ("cm", ("m", "centi")), ("m", ("m", "")), ("mg", ("g", "milli")),
     ("µm", ("m", "micro")), ("%", ("%", "")), ("", ("", "")), ("mol", ("mol", ""))],
)  # fmt: skip
def test_units_are_parted_and_joined(unit: str, parts: tuple[str, str]):
    assert parted_unit(unit) == parts
    assert joined_unit(*parts) == unit


def test_values_of_another_prefix_are_turned_into_that_of_their_character():
    text = TOUR.replace(
        '<MeasurementUnit><Label role="Abbrev">m</Label></MeasurementUnit>',
        '<MeasurementUnit><Label role="Abbrev">m</Label></MeasurementUnit>'
        "<Default><MeasurementUnitPrefix>centi</MeasurementUnitPrefix></Default>",
    )

    found = parse_sdd(text.encode(), FILE).key

    assert found.character["snout_to_vent"].unit == "cm"
    (score,) = found.cells["alpha_prima", "snout_to_vent"]
    assert score.value == Spans(low=9, high=11.5, mean=10.1, n=12)


@pytest.mark.parametrize(
    ("raw", "message"),
    [
        (b"", "x.sdd.xml:1:1: This is no XML: no element found."),
        (b"<a>", "x.sdd.xml:1:4: This is no XML: no element found."),
        (b"<a></b>", "x.sdd.xml:1:6: This is no XML: mismatched tag."),
        (b"\xff\xfe\0", "x.sdd.xml:"),
        (b"<html/>", "x.sdd.xml is no SDD document."),
        (b"<Datasets/>", "x.sdd.xml is no SDD document."),
        (b"<Datasets><Dataset/></Datasets>", "x.sdd.xml holds no character that tells anything"),
        (b"<!DOCTYPE a><a/>", "x.sdd.xml declares a document type, which no key needs."),
        (b"<a>" * 200, "x.sdd.xml is deeper or larger than any key."),
        (b"<a/>" + b" " * LARGEST_XML, "x.sdd.xml is larger than 64 MB."),
    ],
    ids=lambda value: str(value)[:40],
)
def test_bad_documents_end_in_words(raw: bytes, message: str):
    with pytest.raises(IdKeyError) as caught:
        parse_sdd(raw, FILE)

    assert caught.value.problem.startswith(message)
    assert caught.value.remedy


def test_a_chain_of_leads_beyond_any_key_is_refused():
    def lead(number: int) -> str:
        parent = f'<Parent ref="q{number - 1}"/>' if number else ""
        end = '<TaxonName ref="tx1"/>'
        return (
            f'<Lead id="q{number}">{parent}<Statement>On</Statement></Lead>'
            f'<Lead id="r{number}">{parent}<Statement>End</Statement>{end}</Lead>'
        )

    start = TOUR.index('<Lead id="le1">')
    end = TOUR.index("</Leads>")
    text = f"{TOUR[:start]}{''.join(map(lead, range(2000)))}{TOUR[end:]}"

    with pytest.raises(IdKeyError, match=r"x\.sdd\.xml is deeper than any key"):
        parse_sdd(text.encode(), FILE)


def test_a_file_that_cannot_be_read_or_written_is_told(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))

    with pytest.raises(IdKeyError, match=r"no\.xml cannot be read"):
        read_arrival(tmp_path / "no.xml")
    with pytest.raises(IdKeyError, match=r"k\.xml could not be written"):
        write_sdd(key, tmp_path / "no folder" / "k.xml")


TOKENS = [
    "<", ">", "/", '"', "&amp;", "&#0;", "<Lead/>", "</Lead>", '<Parent ref="le3"/>', "le1", "st1",
    "tx1", "ch1", "ke1", '<State ref="st1"/>', "<Node/>", "NaN", "1e999", "-1", "é", "",
]  # fmt: skip


@given(
    edits=st.lists(
        st.tuples(st.integers(0, len(TOUR)), st.integers(0, 60), st.sampled_from(TOKENS)),
        min_size=1,
        max_size=3,
    )
)
@settings(max_examples=60)
def test_no_damage_does_more_than_be_refused(edits: list[tuple[int, int, str]]):
    text = TOUR
    for place, taken, new in edits:
        text = text[:place] + new + text[place + taken :]

    with suppress(IdKeyError):
        parse_sdd(text.encode(), FILE)


REFS = ["le1", "le2", "le3", "le6", "ke1", "ke2", "tx1", "ch1", "ch2", "st1", "st4", "no1", "co3"]


@given(st.lists(st.tuples(st.sampled_from(REFS), st.sampled_from(REFS)), min_size=1, max_size=4))
@example([("le2", "le1")])
@settings(max_examples=60)
def test_no_exchange_of_references_does_more_than_be_refused(pairs: list[tuple[str, str]]):
    text = TOUR
    for one, other in pairs:
        text = text.replace(f'ref="{one}"', f'ref="{other}"')

    with suppress(IdKeyError):
        parse_sdd(text.encode(), FILE)


CORPUS = sorted((Path(__file__).parent / "corpus" / "sdd").iterdir())


@pytest.mark.parametrize("file", CORPUS, ids=lambda file: file.name)
def test_the_bad_files_of_the_corpus_are_refused(file: Path):
    with pytest.raises(IdKeyError):
        parse_sdd(file.read_bytes(), file)
