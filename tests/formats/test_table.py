"""A key comes back from a spreadsheet, cell by cell, and no cell is worked out as a formula."""

import csv
import io
import zipfile
from collections.abc import Callable
from contextlib import suppress
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import openpyxl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats import sheet as sheets
from idkey.formats.arrival import read_arrival
from idkey.formats.cell_safe import safe, unsafe
from idkey.formats.cell_text import CellError, cell_scores, cell_text, spans
from idkey.formats.folder import digest, read_key
from idkey.formats.imported import Imported
from idkey.formats.plain import canonical
from idkey.formats.problem import KeyProblems
from idkey.formats.sheet import parse_sheets, reference
from idkey.formats.table import write_csv, write_ods, write_xlsx
from idkey.formats.table_reading import table_of
from idkey.model.character import Character, Kind, Look, Sex, Stage, State
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Often, Shows, Spans, Value
from idkey.places import keys_folder
from tests.formats.invented import WORDS, keys
from tests.formats.small_key import FILES, laid_out


@pytest.fixture
def key(tmp_path: Path) -> Key:
    return read_key(laid_out(tmp_path, FILES))


def _read(file: Path, base: Key | None = None) -> Imported:
    return table_of(parse_sheets(file.read_bytes(), file.name), file, base)


Write = Callable[[Key, Path], tuple[str, ...]]


@given(key=keys())
@settings(max_examples=4)
@pytest.mark.parametrize(("ending", "write"), [("xlsx", write_xlsx), ("ods", write_ods)])
def test_every_key_comes_back_from_both_books(
    key: Key, tmp_path_factory: pytest.TempPathFactory, ending: str, write: Write
):
    file = tmp_path_factory.getbasetemp() / f"k.{ending}"
    left = write(key, file)
    found = _read(file)

    assert left == ()
    assert replace(found.key, digest="") == canonical(key)
    assert found.key.digest == digest(key)


@given(key=keys())
@settings(max_examples=5)
def test_every_matrix_comes_back_from_csv(key: Key, tmp_path_factory: pytest.TempPathFactory):
    file = tmp_path_factory.getbasetemp() / "k.csv"
    write_csv(key, file)
    bare = replace(key, scores=())
    found = _read(file, base=bare).key

    def values(of: Key) -> list[tuple[object, ...]]:
        return [(s.taxon, s.character, s.sex, s.stage, s.value) for s in of.scores]

    assert values(found) == values(canonical(key))
    assert replace(_read(file, base=key).key, digest="") == canonical(key)


@pytest.mark.parametrize("name", ["large-dark-scorpions", "kitchen-leaves"])
def test_a_shipped_key_comes_back_from_both(name: str, tmp_path: Path):
    shipped = read_key(keys_folder() / name)
    write_xlsx(shipped, tmp_path / "k.xlsx")
    left = write_csv(shipped, tmp_path / "k.csv")

    assert _read(tmp_path / "k.xlsx").key == shipped
    assert _read(tmp_path / "k.csv", base=shipped).key == shipped
    assert left[0] == "Sources, remarks and the basis of scores have no place in a CSV matrix."


@given(WORDS | st.text(max_size=8) | st.from_regex(r"[=+@'\"\[{-].{0,5}", fullmatch=True))
def test_no_cell_starts_like_a_formula_and_every_text_comes_back(text: str):
    cell = safe(text)

    assert cell[0] not in "=+-@'\t\r\n"
    assert unsafe(cell) == text


@given(
    st.recursive(
        WORDS, lambda x: st.lists(x, max_size=3) | st.dictionaries(st.just("id"), x), max_leaves=5
    )
)
def test_lists_and_mappings_come_back_from_a_cell(value: object):
    assert unsafe(safe(value)) == value


def test_a_formula_in_a_name_is_a_text_in_both(key: Key, tmp_path: Path):
    evil = '=HYPERLINK("http://x.example","A")'
    named = replace(key, taxa=(replace(key.taxa[0], name=evil), *key.taxa[1:]))
    write_xlsx(named, tmp_path / "k.xlsx")
    write_csv(named, tmp_path / "k.csv")

    cell = openpyxl.load_workbook(tmp_path / "k.xlsx")["matrix"]["B2"]
    with (tmp_path / "k.csv").open(encoding="utf-8-sig", newline="") as stream:
        rows = list(csv.reader(stream))
    assert (cell.data_type, cell.value[:2]) == ("s", '"=')
    assert rows[1][1][:2] == '"='
    assert _read(tmp_path / "k.xlsx").key.taxa[0].name == evil


TAIL = Character(
    id="tail",
    name="Tail",
    question="?",
    kind=Kind.CATEGORICAL,
    looks=(Look.TUB,),
    states=(
        State(id="none", label="no tail"),
        State(id="leaf", label="like a leaf, or a fan"),
        State(id="rope", label="Like a rope"),
    ),
)
LENGTH = Character(
    id="length",
    name="Length",
    question="?",
    kind=Kind.MEASUREMENT,
    unit="mm",
    looks=(Look.TUB,),
)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("leaf", Shows({"leaf": None})),
        ("leaf | rope", Shows({"leaf": None, "rope": None})),
        ("LEAF / like  a rope", Shows({"leaf": None, "rope": None})),
        ("like a leaf, or a fan", Shows({"leaf": None})),
        ("no tail or like a rope (rarely)", Shows({"none": None, "rope": Often.RARELY})),
        ("leaf (0.7), rope (0,3)", Shows({"leaf": 0.7, "rope": 0.3})),
        ("N/A", Inapplicable()),
    ],
)
def test_states_are_read_as_people_write_them(text: str, value: Value):
    (score,) = cell_scores(text, "alpha", TAIL)

    assert score.value == value


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("40 to 55", Spans(low=40, high=55)),
        ("40-55", Spans(low=40, high=55)),
        ("40 – 55.5", Spans(low=40, high=55.5)),
        ("-5--3", Spans(low=-5, high=-3)),
        ("44,5", Spans(low=44.5, high=44.5)),
        ("≥ 40", Spans(low=40)),
        ("from 40", Spans(low=40)),
        ("up to 55", Spans(high=55)),
        ("< 55", Spans(high=55)),
        ("40 to 55, mean 44.5, sd 2, n 12", Spans(low=40, high=55, mean=44.5, sd=2, n=12)),
        ("mean = 3, n=4", Spans(mean=3, n=4)),
        ("1e-3..2", Spans(low=0.001, high=2)),
    ],
)
def test_numbers_are_read_as_people_write_them(text: str, value: Spans):
    assert spans(text) == value


def test_sex_and_stage_stand_in_front():
    found = cell_scores("Male: leaf; adult female: rope; juvenile: n/a", "alpha", TAIL)

    assert [(s.sex, s.stage, s.value) for s in found] == [
        (Sex.MALE, None, Shows({"leaf": None})),
        (Sex.FEMALE, Stage.ADULT, Shows({"rope": None})),
        (None, Stage.JUVENILE, Inapplicable()),
    ]
    assert cell_text(found, TAIL.state_ids) == "male: leaf; adult female: rope; juvenile: n/a"


@pytest.mark.parametrize(
    ("character", "text", "message"),
    [
        (TAIL, "leef", "'leef' is no state of 'Tail'. Did you mean 'leaf'?"),
        (TAIL, "club", "'club' is no state of 'Tail'. Known: none, leaf, rope, no tail, "),
        (TAIL, "leaf | leaf", "'leaf' is named twice. Keep one."),
        (TAIL, "leaf (often)", "'often' does not say how often. Write always, usually, someti"),
        (TAIL, "leaf (2)", "'2' does not say how often."),
        (TAIL, "male: leaf; male: rope", "'male: rope' is for a sex and stage that the cell has"),
        (TAIL, " | ", "'|' is no score: "),
        (LENGTH, "long", "'long' is no number or range. Write 40 to 55, from 40, to 55 or 44.5."),
        (LENGTH, "55 to 40", "'55 to 40' is no score: low 55 is above high 40. Correct it."),
        (LENGTH, "40, n 1.5", "'40, n 1.5' has an n that is no count. Write a whole number."),
        (LENGTH, "40, sd -1", "'40, sd -1' is no score: sd -1 is negative. Correct it."),
    ],
)
def test_a_cell_that_says_nothing_possible_is_explained(
    character: Character, text: str, message: str
):
    with pytest.raises(CellError) as caught:
        cell_scores(text, "alpha", character)

    assert f"{caught.value.problem} {caught.value.remedy}".startswith(message)


def test_mistakes_are_told_cell_by_cell(key: Key, tmp_path: Path):
    (tmp_path / "m.csv").write_text(
        "taxon,name,tail,colour,spots\nalpha,A,leef,dark,1\nalfa,B,leaf,,\nalpha,C,,,\n"
        'beta,D,rope,"male: dark; male: pale",\n',
        "utf-8",
    )

    with pytest.raises(KeyProblems) as caught:
        _read(tmp_path / "m.csv", base=key)

    assert [f"{p.problem} {p.remedy}" for p in caught.value.problems] == [
        "m.csv, cell E1: Unknown character 'spots'. Known: tail, colour, length.",
        "m.csv, cell C2: 'leef' is no state of 'Tail'. Did you mean 'leaf'?",
        "m.csv, cell A3: Unknown taxon 'alfa'. Did you mean 'alpha'?",
        "m.csv, cell A4: The taxon 'alpha' is twice. Did you mean 'alpha'?",
        "m.csv, cell D5: 'male: pale' is for a sex and stage that the cell has already. Join.",
    ]
    assert caught.value.problems[1].loc == ("m.csv", 1, 2)


def test_a_column_or_row_that_is_not_in_the_sheet_stays_as_it_was(key: Key, tmp_path: Path):
    (tmp_path / "m.csv").write_text("taxon;Tail\nalpha;rope\n", "utf-8")

    found = _read(tmp_path / "m.csv", base=key).key

    new = {(s.taxon, s.character, s.sex): s for s in found.scores}
    old = {(s.taxon, s.character, s.sex): s for s in key.scores}
    assert {place for place in old if old[place] != new[place]} == {("alpha", "tail", None)}
    assert new["alpha", "tail", None].value == Shows({"rope": None})
    assert new["alpha", "tail", None].sources == ()


def test_a_range_that_the_spreadsheet_took_for_a_date_is_told(key: Key, tmp_path: Path):
    book = openpyxl.Workbook()
    book.active.append(["taxon", "length"])
    book.active.append(["alpha", datetime(2026, 3, 5, tzinfo=UTC).replace(tzinfo=None)])
    book.save(tmp_path / "m.xlsx")

    with pytest.raises(KeyProblems, match="cell B2: The spreadsheet took the cell for a date"):
        _read(tmp_path / "m.xlsx", base=key)


def test_numbers_and_truth_values_of_a_spreadsheet_are_read_as_text(tmp_path: Path):
    book = openpyxl.Workbook()
    book.active.append([1, 2.0, 2.5, True, None, "x ", "=1+1"])
    book.save(tmp_path / "m.xlsx")

    assert parse_sheets((tmp_path / "m.xlsx").read_bytes(), "m.xlsx")[0].rows == (
        ("1", "2", "2.5", "true", "", "x"),
    )


def test_a_matrix_alone_is_no_whole_key(key: Key, tmp_path: Path):
    write_csv(key, tmp_path / "k.csv")

    with pytest.raises(IdKeyError, match=r"k\.csv holds a matrix, but no whole key"):
        _read(tmp_path / "k.csv")


def test_an_edited_workbook_is_checked_like_any_key(key: Key, tmp_path: Path):
    write_xlsx(key, tmp_path / "k.xlsx")
    book = openpyxl.load_workbook(tmp_path / "k.xlsx")
    book["labels"]["D2"] = "[alfa]"
    book.save(tmp_path / "k.xlsx")

    with pytest.raises(KeyProblems, match=r"Unknown taxon 'alfa'\. Did you mean 'alpha'"):
        _read(tmp_path / "k.xlsx")


def test_an_odd_basis_or_a_taxon_twice_is_told(key: Key, tmp_path: Path):
    write_xlsx(key, tmp_path / "k.xlsx")
    book = openpyxl.load_workbook(tmp_path / "k.xlsx")
    book["remarks"]["E2"] = "hearsay"
    book.save(tmp_path / "a.xlsx")
    book["taxa"]["A3"] = "alpha"
    book.save(tmp_path / "b.xlsx")

    with pytest.raises(KeyProblems, match="remarks, cell A2: 'hearsay' is no basis"):
        _read(tmp_path / "a.xlsx")
    with pytest.raises(IdKeyError, match=r"The taxon 'alpha' is twice in b\.xlsx"):
        _read(tmp_path / "b.xlsx")


def test_a_text_too_long_for_a_cell_is_told(key: Key, tmp_path: Path):
    long = replace(key, glossary={f"term {n}": "x" * 19_000 for n in range(2)})

    with pytest.raises(IdKeyError, match="too long for a cell of the sheet 'key'"):
        write_xlsx(long, tmp_path / "k.xlsx")


def test_a_place_that_cannot_be_written_is_told(key: Key, tmp_path: Path):
    with pytest.raises(IdKeyError, match=r"k\.csv could not be written"):
        write_csv(key, tmp_path / "no folder" / "k.csv")


@pytest.mark.parametrize(
    ("place", "name"), [((0, 0), "A1"), ((3, 2), "C4"), ((0, 26), "AA1"), ((9, 701), "ZZ10")]
)
def test_cells_are_named_as_spreadsheets_name_them(place: tuple[int, int], name: str):
    assert reference(*place) == name


@pytest.mark.parametrize(
    ("raw", "rows"),
    [
        (b"a,b\n1,2\n", (("a", "b"), ("1", "2"))),
        (b"a;b\r\n1,5;2\r\n", (("a", "b"), ("1,5", "2"))),
        (b"a\tb\n\n1\t2\n\n\n", (("a", "b"), (), ("1", "2"))),
        ("a|ß\n".encode("utf-16"), (("a", "ß"),)),
        ("a,ß\n".encode("cp1252"), (("a", "ß"),)),
        (b'\xef\xbb\xbf"a,b";"c\nd";;\n', (("a,b", "c\nd"),)),
    ],
)
def test_csv_is_read_whatever_its_signs(raw: bytes, rows: tuple[tuple[str, ...], ...]):
    assert parse_sheets(raw, "m.csv")[0].rows == rows


ODS = """<?xml version="1.0"?>
<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><office:body><office:spreadsheet>
<table:table table:name="one">
<table:table-row><table:table-cell><text:p>taxon</text:p></table:table-cell>
<table:table-cell table:number-columns-repeated="2"/>
<table:table-cell><text:p>a<text:s text:c="2"/>b<text:tab/><text:span>c</text:span></text:p>
<text:p>d</text:p><office:annotation><text:p>no</text:p></office:annotation></table:table-cell>
<table:table-cell table:number-columns-repeated="16000"/></table:table-row>
<table:table-row table:number-rows-repeated="2"><table:table-cell/></table:table-row>
<table:table-row table:number-rows-repeated="2">
<table:table-cell office:value-type="float" office:value="44.5"/>
<table:table-cell office:value-type="float" office:value="3.0"/>
<table:table-cell office:value-type="date" office:date-value="2026-05-03"/></table:table-row>
<table:table-row table:number-rows-repeated="1048000"><table:table-cell/></table:table-row>
</table:table></office:spreadsheet></office:body></office:document-content>"""


def wide(cells: int) -> str:
    """A sheet whose one row says a few cells, each as often as a row is wide at most."""
    cell = '<table:table-cell table:number-columns-repeated="200000"><text:p>x</text:p>'
    start = ODS.partition("<table:table-row>")[0]
    row = f"{cell}</table:table-cell>" * cells
    end = "</table:table></office:spreadsheet></office:body></office:document-content>"
    return f"{start}<table:table-row>{row}</table:table-row>{end}"


def ods(content: str) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("content.xml", content)
    return out.getvalue()


def test_ods_is_read():
    (found,) = parse_sheets(ods(ODS), "m.ods")

    row = ("44.5", "3", "\x00date 2026-05-03")
    assert found.name == "one"
    assert found.rows == (("taxon", "", "", "a  b\tc\nd"), (), (), row, row)


@pytest.mark.parametrize(
    ("raw", "name", "message"),
    [
        (b"", "m.csv", "m.csv is empty."),
        (b"\n\n,,\n", "m.csv", "m.csv is empty."),
        (b"a\0b", "m.csv", "m.csv is no text."),
        (b"a,b", "m.pdf", "m.pdf is no kind of spreadsheet."),
        (b"x\n" * 200_001, "m.csv", "The sheet 'm.csv' in m.csv has more rows or cells than any"),
        (b"," * 1_100_000, "m.csv", "The sheet 'm.csv' in m.csv has more rows or cells than any"),
        (b'"' + b"x" * 200_000, "m.csv", "m.csv, line 1, is no CSV: "),
        (b"no zip", "m.xlsx", "m.xlsx is damaged."),
        (b"no zip", "m.ods", "m.ods is damaged."),
        (ods("<a>"), "m.ods", "m.ods is damaged, or no ODS."),
        (ods("<!DOCTYPE a [<!ENTITY b 'c'>]><a>&b;</a>"), "m.ods", "m.ods is damaged, or no ODS."),
        (ods(ODS), "m.xlsx", "m.xlsx is damaged, or no XLSX."),
        (ods(ODS.replace('"2">\n<table:table-cell off', '"1048000">\n<table:table-cell off')),
         "m.ods", "The sheet 'one' in m.ods has more rows or cells than any key."),
        (ods(wide(5_000)), "m.ods", "The sheet 'one' in m.ods has more rows or cells than any"),
    ],
    ids=lambda given: given if isinstance(given, str) else "bytes",  # zips hold the time
)  # fmt: skip
def test_bad_spreadsheets_end_in_words(raw: bytes, name: str, message: str):
    with pytest.raises(IdKeyError) as caught:
        parse_sheets(raw, name)

    assert caught.value.problem.startswith(message)
    assert caught.value.remedy


def test_a_zip_bomb_in_a_spreadsheet_is_not_unpacked():
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("xl/workbook.xml", bytes(sheets.LARGEST_UNPACKED + 1))

    with pytest.raises(IdKeyError, match=r"m\.xlsx unpacks to more than any key needs"):
        parse_sheets(out.getvalue(), "m.xlsx")


def test_a_lone_cell_in_the_last_row_is_refused_soon(tmp_path: Path):
    book = openpyxl.Workbook()
    book.active["XFD1048576"] = "x"
    book.save(tmp_path / "m.xlsx")

    with pytest.raises(IdKeyError, match="has more rows or cells than any key"):
        parse_sheets((tmp_path / "m.xlsx").read_bytes(), "m.xlsx")


def test_a_file_that_is_not_there_or_too_large_is_told(tmp_path: Path):
    with pytest.raises(IdKeyError, match=r"no\.csv cannot be read"):
        read_arrival(tmp_path / "no.csv")
    with pytest.raises(IdKeyError, match=r"big\.csv is larger than 32 MB"):
        parse_sheets(bytes(sheets.LARGEST_SHEET_FILE + 1), "big.csv")


def _whole() -> bytes:
    out = io.BytesIO()
    book = openpyxl.Workbook()
    book.active.append(["taxon", "tail"])
    book.active.append(["alpha", "leaf"])
    book.save(out)
    return out.getvalue()


WHOLE = _whole()


@given(
    place=st.integers(0, len(WHOLE)),
    taken=st.integers(0, 60),
    new=st.binary(max_size=20),
    name=st.sampled_from(["m.xlsx", "m.ods", "m.csv"]),
)
@settings(max_examples=60)
def test_no_damage_does_more_than_be_refused(place: int, taken: int, new: bytes, name: str):
    with suppress(IdKeyError):
        parse_sheets(WHOLE[:place] + new + WHOLE[place + taken :], name)


PARTS = ["xl/worksheets/sheet1.xml", "xl/workbook.xml", "xl/styles.xml", "[Content_Types].xml"]


@given(
    part=st.sampled_from(PARTS),
    place=st.integers(0, 1500),
    taken=st.integers(0, 40),
    new=st.text('<>/"= abcdrst019&;:#', max_size=20),
)
@settings(max_examples=60)
def test_no_damage_inside_does_more_than_be_refused(part: str, place: int, taken: int, new: str):
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(WHOLE)) as old, zipfile.ZipFile(out, "w") as archive:
        for name in old.namelist():
            text = old.read(name)
            if name == part:
                text = text[:place] + new.encode() + text[place + taken :]
            archive.writestr(name, text)

    with suppress(IdKeyError):
        parse_sheets(out.getvalue(), "m.xlsx")


@given(raw=st.binary(max_size=100) | st.text(',;"\n\r\t=a1é', max_size=100).map(str.encode))
def test_no_bytes_at_all_do_more_than_be_refused(raw: bytes):
    with suppress(IdKeyError):
        parse_sheets(raw, "m.csv")


@given(st.text("0123456789.,-–to mean sd n<>≥frup|/;:()alefrpointmal", max_size=25))
@settings(max_examples=60)
def test_no_cell_at_all_does_more_than_be_refused(text: str):
    for character in (TAIL, LENGTH):
        with suppress(CellError):
            cell_scores(text, "alpha", character)


CORPUS = sorted((Path(__file__).parent / "corpus" / "table").iterdir())


@pytest.mark.parametrize("file", CORPUS, ids=lambda file: file.name)
def test_the_bad_files_of_the_corpus_are_refused(file: Path):
    with pytest.raises(IdKeyError):
        _read(file)


def test_a_sheet_has_room_for_a_remark_on_every_cell_of_a_large_key():
    rows = b"taxon,character,basis\n" * 100_001  # as our own sheet of remarks has them

    assert len(parse_sheets(rows, "remarks.csv")[0].rows) == 100_001
