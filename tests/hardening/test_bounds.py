"""What comes in is bounded: a file from a stranger takes neither the memory nor the day."""

import json
import zipfile
from pathlib import Path

import pytest

from idkey.errors import IdKeyError
from idkey.formats.arrival import MOST_TAXA, read_arrival
from idkey.formats.json_key import MOST_ENTRIES
from idkey.formats.problem import KeyProblems

HEAD = {"format": 1, "id": "many", "title": "Many", "version": "1.0.0"}
ODS = (
    '<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"'
    ' xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"'
    ' xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0">'
    '<office:body><office:spreadsheet><table:table table:name="a">'
    '<table:table-row table:number-rows-repeated="1000000000">'
    '<table:table-cell table:number-columns-repeated="1000000000"><text:p>x</text:p>'
    "</table:table-cell></table:table-row></table:table>"
    "</office:spreadsheet></office:body></office:document-content>"
)
LAUGHS = "".join(
    f'<!ENTITY l{n} "{f"&l{n - 1};" * 10 if n else "lol"}">' for n in range(10)
)  # grows to three thousand million letters


def packed(file: Path, entries: dict[str, str | bytes]) -> Path:
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in entries.items():
            archive.writestr(name, content)
    return file


def sheet_of_a_million_rows(folder: Path) -> Path:
    file = folder / "rows.csv"
    file.write_text("taxon,shape\n" + "a,b\n" * 1_000_000, "utf-8")
    return file


def more_rows_than_taxa(folder: Path) -> Path:
    file = folder / "taxa.csv"
    file.write_text("taxon,shape\n" + "a,b\n" * MOST_TAXA, "utf-8")
    return file


def cells_repeated(folder: Path) -> Path:
    kind = "application/vnd.oasis.opendocument.spreadsheet"
    return packed(folder / "rows.ods", {"mimetype": kind, "content.xml": ODS})


def package_that_swells(folder: Path) -> Path:
    return packed(folder / "big.idkey", {"manifest.json": "{}", "key.yaml": b"0" * 80_000_000})


def laughs(folder: Path) -> Path:
    file = folder / "laughs.xml"
    file.write_text(f"<!DOCTYPE a [{LAUGHS}]><Datasets>&l9;</Datasets>", "utf-8")
    return file


def brackets(folder: Path) -> Path:
    file = folder / "deep.json"
    file.write_text("[" * 1_000_000, "utf-8")
    return file


def taxa_without_end(folder: Path) -> Path:
    taxa = [{"id": f"t{number}", "name": "n"} for number in range(MOST_ENTRIES + 1)]
    file = folder / "taxa.json"
    file.write_text(json.dumps({**HEAD, "taxa": taxa}), "utf-8")
    return file


@pytest.mark.parametrize(
    ("made", "said"),
    [
        (sheet_of_a_million_rows, "has more rows or cells than any key"),
        (cells_repeated, "has more rows or cells than any key"),
        (package_that_swells, "unpacks to more than any key needs"),
        (laughs, "declares a document type"),
        (brackets, "nested deeper than any key"),
        (more_rows_than_taxa, "has more rows than a key can have taxa"),
        (taxa_without_end, "has more taxa than any key"),
    ],
    ids=lambda value: getattr(value, "__name__", ""),
)
def test_what_no_key_needs_is_refused_in_words(made, said: str, tmp_path: Path):
    with pytest.raises(IdKeyError, match=said):
        read_arrival(made(tmp_path))


def test_each_of_many_mistakes_is_told_with_its_line(tmp_path: Path):
    folder = tmp_path / "many"
    (folder / "taxa").mkdir(parents=True)
    (folder / "key.yaml").write_text("\n".join(f"{n}: {v}" for n, v in HEAD.items()), "utf-8")
    (folder / "characters.yaml").write_text("characters: []\n", "utf-8")
    scores = "".join(f"  c{number}: {{shows: [a]}}\n" for number in range(3_000))
    (folder / "taxa" / "t.yaml").write_text(f"id: t\nname: n\nscores:\n{scores}", "utf-8")

    with pytest.raises(KeyProblems) as refused:
        read_arrival(folder)

    lines = [one.line for one in refused.value.problems if "'c" in one.problem]
    assert lines == list(range(4, 3_004))
