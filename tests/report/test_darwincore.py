"""Cases as a Darwin Core Archive, read back by another library."""

import io
import os
import zipfile
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from defusedxml import ElementTree
from dwca.read import DwCAReader
from hypothesis import given, settings
from hypothesis import strategies as st
from lxml import etree

from idkey.errors import IdKeyError
from idkey.model.case import Claim, Finding, Specimen
from idkey.model.character import Sex, Stage
from idkey.report.darwincore import Dataset, Licence, archive_bytes, write_archive
from idkey.report.dwc_rows import ArchivedCase
from idkey.report.dwc_terms import DWC, TABLES
from idkey.report.notes import PictureNote
from idkey.report.rationale import rationale
from idkey.report.reasons import Rationale
from idkey.store.record import Papers, Revision
from tests.report.specimens import KEY, case, judged

DATASET = Dataset(
    title="Checked animals <of> one shop & friends",
    owner="Lantern Street Vivarium",
    published="2025-11-25",
    licence=Licence.BY,
)
STANDARDS = os.environ.get("IDKEY_STANDARDS", "")
LABEL = 'Black lamp, "CB 2023",\nadult; ünï 漢'


def _found(taxon: str, findings: int, number: int, *, case_id: str) -> Rationale:
    length = 118.5 if taxon == "lampa_rubra" else 75
    start = case(taxon, findings, claim=Claim(text=LABEL, label="black_lamp", date="2025-11-03"))
    one = replace(
        start.observe(Finding(character="length", value=length, uncertainty=2)).observe(
            Finding(character="ridge_11", unseen=True)
        ),
        id=case_id,
        specimen=Specimen(sex=Sex.FEMALE, stage=Stage.ADULT),
        note="for the shop alone",
    )
    revision = Revision(
        case_id=case_id,
        number=number,
        entry=number,
        at=f"2025-11-0{number}T10:00:00Z",
        by="RB",
        digest="a" * 64,
        previous="0" * 64,
    )
    pictures = (PictureNote(id="p1", caption="Whole animal", sha256="9f" * 32),)
    return rationale(KEY, judged(one), revision=revision, pictures=pictures)


ONE = "7d6b0f5e-0002-4c1e-9a53-2f6f5f6f0002"
CASES = (
    ArchivedCase(
        current=_found("lampa_rubra", 11, 5, case_id=ONE),
        earlier=(_found("lampa_rubra", 6, 4, case_id=ONE),),
        papers=Papers(source="C", document="DE-0001", issued="2025-10-01"),
    ),
    ArchivedCase(current=_found("fenestra_alta", 6, 3, case_id="counter 2/17")),
)


@pytest.fixture(scope="module")
def archive(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DwCAReader]:
    """The archive, opened by the reader."""
    path = tmp_path_factory.mktemp("archive") / "cases.zip"
    write_archive(path, CASES, DATASET)
    with DwCAReader(str(path)) as reader:
        yield reader


def _extension(row: object, name: str) -> list[dict[str, str]]:
    return [
        {term.rsplit("/", 1)[-1]: value for term, value in extension.data.items()}
        for extension in row.extensions  # type: ignore[attr-defined]
        if extension.rowtype.endswith(f"/{name}")
    ]


def test_the_reader_finds_the_core_and_three_extensions(archive: DwCAReader):
    assert archive.descriptor.core.type == DWC + "Occurrence"
    assert [e.type.rsplit("/", 1)[-1] for e in archive.descriptor.extensions] == [
        "Identification",
        "MeasurementOrFact",
        "Multimedia",
    ]
    assert [row.id for row in archive] == [f"urn:uuid:{ONE}", "urn:idkey:case:counter%202%2F17"]


def test_an_occurrence_is_a_living_captive_animal_with_its_label_word_for_word(
    archive: DwCAReader,
):
    seen = archive.rows[0].data

    assert seen[DWC + "basisOfRecord"] == "LivingSpecimen"
    assert seen[DWC + "degreeOfEstablishment"] == "captive"
    assert seen[DWC + "occurrenceStatus"] == "detected"
    assert seen[DWC + "verbatimLabel"] == LABEL
    assert seen[DWC + "sex"] == "female"
    assert seen[DWC + "eventDate"] == "2025-11-03"
    assert seen[DWC + "scientificName"] == "Lampa rubra"
    assert seen["http://purl.org/dc/terms/license"] == Licence.BY.value[1]


def test_short_of_a_species_only_the_certain_part_is_a_scientific_name(archive: DwCAReader):
    seen = archive.rows[1].data

    assert seen[DWC + "scientificName"] == "Fenestra"
    assert seen[DWC + "taxonRank"] == "genus"
    assert seen[DWC + "identificationQualifier"] == "cf. alta"
    assert seen[DWC + "verbatimIdentification"] == "Fenestra cf. alta"


def test_label_and_every_determination_stay_and_the_last_one_is_accepted(archive: DwCAReader):
    rows = _extension(archive.rows[0], "Identification")

    assert [row["isAcceptedIdentification"] for row in rows] == ["false", "false", "true"]
    assert [row["identificationType"] for row in rows] == ["unknown", "features", "features"]
    assert [row["verbatimIdentification"] for row in rows][1:] == ["Lampa cf. rubra", "Lampa rubra"]
    assert [row["taxonFormula"] for row in rows] == ["", "A cf.", "A"]
    assert len({row["identificationID"] for row in rows}) == 3
    assert rows[2]["identificationReferences"].startswith("Lamps and doors, version 1.2.0 | ")
    assert "Ridge 0: ridged" in rows[2]["identificationRemarks"]


def test_findings_and_papers_are_measurements_and_what_was_not_seen_is_none(archive: DwCAReader):
    rows = {row["measurementType"]: row for row in _extension(archive.rows[0], "MeasurementOrFact")}

    assert rows["Length"]["measurementValue"] == "118.5"
    assert rows["Length"]["measurementUnit"] == "mm"
    assert rows["Length"]["measurementAccuracy"] == "2"
    assert rows["Ridge 0"]["measurementValue"] == "ridged"
    assert rows["Ridge 0"]["measurementMethod"] == "through the tub"
    assert "character: ridge_0" in rows["Ridge 0"]["measurementRemarks"]
    assert rows["CITES source code"]["measurementValue"] == "C"
    assert rows["permit or certificate number"]["measurementDeterminedDate"] == "2025-10-01"
    assert "Ridge 11" not in rows


def test_pictures_carry_their_digest_and_no_place(archive: DwCAReader):
    (picture,) = _extension(archive.rows[0], "Multimedia")

    assert picture["hashValue"] == "9f" * 32
    assert picture["caption"] == "Whole animal"
    assert picture["Owner"] == "Lantern Street Vivarium"


def test_remarks_of_the_shop_stay_out():
    content = archive_bytes(CASES, DATASET)
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        texts = [archive.read(name).decode("utf-8") for name in archive.namelist()]

    assert not [text for text in texts if "for the shop alone" in text]


@settings(max_examples=20)
@given(st.text(max_size=40))
def test_any_label_comes_back_word_for_word(tmp_path_factory: pytest.TempPathFactory, label: str):
    start = CASES[1].current
    odd = replace(start, case=replace(start.case, claim=replace(start.case.claim, text=label)))
    path = tmp_path_factory.mktemp("odd") / "odd.zip"
    write_archive(path, [ArchivedCase(current=odd)], DATASET)
    with DwCAReader(str(path)) as reader:
        read = reader.rows[0].data[DWC + "verbatimLabel"]

    assert _held(read) == _held(label)


def _held(text: str) -> list[str]:
    """What XML and the reader can hold: words, without control signs."""
    plain = "".join(sign if sign.isprintable() else " " for sign in text.replace("\ufffd", " "))
    return plain.split()


def test_equal_cases_give_equal_archives():
    assert archive_bytes(CASES, DATASET) == archive_bytes(CASES, DATASET)


def test_the_files_are_what_the_description_names():
    with zipfile.ZipFile(io.BytesIO(archive_bytes(CASES, DATASET))) as archive:
        meta = ElementTree.fromstring(archive.read("meta.xml"))
        eml = ElementTree.fromstring(archive.read("eml.xml"))
        named = [element.text for element in meta.iter() if element.tag.endswith("location")]
        heads = {name: archive.read(name).decode().splitlines()[0] for name in named if name}

    assert meta.get("metadata") == "eml.xml"
    assert named == [table.file for table in TABLES]
    for table in TABLES:
        assert heads[table.file].replace('"', "").split(",") == list(table.columns)
    assert eml.findtext("dataset/title") == DATASET.title
    assert eml.findtext("dataset/pubDate") == "2025-11-25"
    assert (eml.get("packageId") or "").startswith("urn:uuid:")


def _under_schema(file: str, schema: Path, *, spoilt: tuple[bytes, bytes] | None = None) -> str:
    """What the schema complains of in a file of the archive."""
    checker = etree.XMLSchema(etree.parse(str(schema), etree.XMLParser(no_network=True)))
    with zipfile.ZipFile(io.BytesIO(archive_bytes(CASES, DATASET))) as archive:
        content = archive.read(file)
    if spoilt is not None:
        assert spoilt[0] in content
        content = content.replace(*spoilt)
    checker.validate(etree.fromstring(content))
    return str(checker.error_log)


def test_meta_is_valid_under_the_published_schema():
    """Darwin Core text guide, TDWG, schema version 0.1 (CC BY 4.0), unchanged beside the data."""
    schema = Path(__file__).parents[1] / "data" / "tdwg_dwc_text.xsd"

    assert _under_schema("meta.xml", schema) == ""
    assert "rowType" in _under_schema("meta.xml", schema, spoilt=(b"rowType", b"rowTyp"))


@pytest.mark.skipif(not STANDARDS, reason="IDKEY_STANDARDS names no folder with the schemas")
def test_eml_is_valid_under_the_published_schema():
    """GBIF's profile 1.3 of EML 2.2; the file names no licence, so it is not kept here."""
    schema = next(Path(STANDARDS).rglob("eml.xsd"))

    assert _under_schema("eml.xml", schema) == ""


def test_nothing_and_twice_the_same_are_refused(tmp_path: Path):
    with pytest.raises(IdKeyError, match="no case to export"):
        archive_bytes([], DATASET)
    with pytest.raises(IdKeyError, match="chosen twice"):
        archive_bytes([CASES[0], CASES[0]], DATASET)
    with pytest.raises(IdKeyError, match="cannot be written"):
        write_archive(tmp_path / "gone" / "a.zip", CASES, DATASET)
