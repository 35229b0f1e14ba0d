"""Commands about the record book, on a real book with the sample case."""

import csv
import json
import sqlite3
import zipfile
from dataclasses import replace
from pathlib import Path
from shutil import copy

import pytest
from pypdf import PdfReader

from idkey.cli.commands import main
from idkey.cli.opening import opened
from idkey.cli.recorded import recorded
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.places import BOOK, data_folder
from idkey.report.pdf import write_pdf
from idkey.report.rationale import rationale_json
from idkey.store.book import Store
from idkey.store.record import Sale, VerdictSummary

CASE = "00000000-0000-4000-8000-000000000001"


@pytest.fixture(scope="module")
def sold(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A book with the sample case judged and sold."""
    file = tmp_path_factory.mktemp("sold") / BOOK
    with Store.open(file) as store:
        store.save(sample_case(opened(SAMPLE_KEY)), None)
        one = recorded(store, CASE)
        store.save(one.stored.case, VerdictSummary.of(one.assessment))
        store.attach_sale(CASE, Sale(number="LSV-1", buyer="buyer 12"))
    return file


@pytest.fixture
def book(sold: Path) -> Path:
    """The same as the person's own book."""
    return Path(copy(sold, data_folder() / BOOK))


def document(tmp_path: Path, ending: str) -> Path:
    """A rationale of the sample case, written from the person's own book."""
    file = tmp_path / f"rationale.{ending}"
    with Store.open(data_folder() / BOOK) as store:
        found = recorded(store, CASE).rationale()
    if ending == "pdf":
        write_pdf(file, found)
    else:
        file.write_text(rationale_json(found), "utf-8")
    return file


@pytest.mark.parametrize(
    "asked",
    [["emperor"], ["", "--supplier", "lantern"], ["LSV-1"], ["", "--verdict", "contradicted"]],
)
@pytest.mark.usefixtures("book")
def test_a_case_is_found_by_label_supplier_sale_and_verdict(
    asked: list[str], capsys: pytest.CaptureFixture[str]
):
    code = main(["records", "search", *asked])

    assert code == 0
    assert capsys.readouterr().out.startswith(f"{CASE}  2026-03-12  contradicted")


@pytest.mark.usefixtures("book")
def test_a_search_without_a_hit_says_what_to_try(capsys: pytest.CaptureFixture[str]):
    assert main(["records", "search", "tarantula"]) == 0

    assert "fewer words" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("asked", "said"),
    [(["--since", "last week"], "no day"), (["--verdict", "contradict"], "contradicted")],
)
def test_a_search_for_no_day_or_no_verdict_is_refused(
    asked: list[str], said: str, capsys: pytest.CaptureFixture[str]
):
    assert main(["records", "search", "", *asked]) == 2

    assert said in capsys.readouterr().err


def test_without_a_book_every_command_says_so_and_makes_none(capsys: pytest.CaptureFixture[str]):
    for asked in (["search", "x"], ["verify"], ["backup"], ["export-dwc", "o.zip", CASE]):
        assert main(["records", *asked]) == 2
        assert "There is no record book" in capsys.readouterr().err

    assert not (data_folder() / BOOK).exists()


def test_a_whole_book_verifies_and_a_changed_one_names_the_entry(
    book: Path, capsys: pytest.CaptureFixture[str]
):
    assert main(["records", "verify"]) == 0
    with sqlite3.connect(book) as raw:
        raw.execute("UPDATE chain SET content = replace(content, 'Emperor', 'Empress')")
    raw.close()

    assert main(["records", "verify"]) == 1
    assert "entry 1, case 0000" in capsys.readouterr().out


def test_a_backup_comes_back_and_the_book_before_it_is_kept(
    book: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
):
    kept = tmp_path / "copy.backup"
    assert main(["records", "backup", str(kept)]) == 0
    with Store.open(book) as store:
        stored = store.case(CASE).case
        store.save(replace(stored, id="later"), None)

    assert main(["records", "restore", str(kept)]) == 0
    assert "is kept as" in capsys.readouterr().out
    with Store.open(book) as store:
        assert [row.case_id for row in store.recent()] == [CASE]


@pytest.mark.usefixtures("book")
def test_a_backup_overwrites_nothing(tmp_path: Path):
    mine = tmp_path / "mine.txt"
    mine.write_text("mine", "utf-8")

    assert main(["records", "backup", str(mine)]) == 2
    assert mine.read_text("utf-8") == "mine"


def test_a_book_in_use_is_not_restored_over(book: Path, capsys: pytest.CaptureFixture[str]):
    assert main(["records", "backup"]) == 0
    with Store.open(book) as store:
        store.recent()

        assert main(["records", "restore"]) == 2
    assert "Close idkey everywhere" in capsys.readouterr().err


@pytest.mark.usefixtures("book")
def test_an_archive_holds_the_case_and_no_buyer(tmp_path: Path):
    out = tmp_path / "out.zip"

    assert main(["records", "export-dwc", str(out), CASE[:8], CASE]) == 0
    with zipfile.ZipFile(out) as archive:
        texts = {name: archive.read(name).decode("utf-8") for name in archive.namelist()}
    assert "Emperor scorpion" in texts["occurrence.csv"]
    assert not any("buyer 12" in text for text in texts.values())


@pytest.mark.usefixtures("book")
def test_pictures_go_out_by_digest_alone(tmp_path: Path):
    out, picture = tmp_path / "out.zip", "ab" * 32
    with Store.open(data_folder() / BOOK) as store:
        case = store.case(CASE).case
        shown = replace(case.findings[0], pictures=(picture,))
        store.save(case.observe(shown), None)

    assert main(["records", "export-dwc", str(out), CASE]) == 0
    with zipfile.ZipFile(out) as archive:
        (row,) = csv.DictReader(archive.read("multimedia.csv").decode("utf-8").splitlines())
    assert (row["hashFunction"], row["hashValue"]) == ("SHA-256", picture)
    assert row["caption"] == "Telson colour"


@pytest.mark.usefixtures("book")
def test_an_unknown_case_is_named(capsys: pytest.CaptureFixture[str]):
    assert main(["label", "no-such-case", "out.pdf"]) == 2

    assert "no case no-such-case" in capsys.readouterr().err


@pytest.mark.usefixtures("book")
def test_a_label_says_the_name_the_case_came_to(tmp_path: Path):
    out = tmp_path / "label.pdf"

    assert main(["label", CASE, str(out), "--price", "65 EUR"]) == 0
    assert "Heterometrus" in PdfReader(out).pages[0].extract_text()


@pytest.mark.parametrize("ending", ["pdf", "json"])
@pytest.mark.usefixtures("book")
def test_a_document_from_the_record_matches_it(
    tmp_path: Path, ending: str, capsys: pytest.CaptureFixture[str]
):
    code = main(["verify", str(document(tmp_path, ending))])

    assert code == 0
    assert "It says what the record says." in capsys.readouterr().out


@pytest.mark.usefixtures("book")
def test_a_document_with_another_finding_does_not_match_the_record(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
):
    file = document(tmp_path, "json")
    told = json.loads(file.read_text("utf-8"))
    told["sentence"] = "It is a harmless beetle."
    file.write_text(json.dumps(told), "utf-8")

    assert main(["verify", str(file)]) == 1
    said = capsys.readouterr().out
    assert "do not rely on it" in said
    assert "trust the record" in said


def test_without_a_book_a_document_is_checked_by_itself(
    book: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
):
    file = document(tmp_path, "json")
    book.unlink()

    assert main(["verify", str(file)]) == 0
    assert "not held against a record" in capsys.readouterr().out
