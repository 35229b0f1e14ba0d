"""Sales from elsewhere, in the window: tables, the watched folder, documents that come back."""

import csv
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.theme import Theme
from idkey.app.records.columns_dialog import ColumnsDialog
from idkey.app.records.view import RecordsView
from idkey.engine.sample import sample_case
from idkey.model.key import Key
from idkey.report.recorded import judged
from idkey.report.verify import verify
from idkey.store.book import Store
from idkey.store.rationales import rationales_of
from idkey.store.record import Sale, VerdictSummary
from tests.app.records.test_view import settle

CASE = "the-case"


@pytest.fixture
def book(store: Store, key: Key) -> Store:
    """A book with a case that went out with a sale."""
    case = replace(sample_case(key), id=CASE)
    store.save(case, VerdictSummary.of(judged(store, key, case)))
    store.attach_sale(CASE, Sale(number="LSV-1", buyer="buyer 12"))
    return store


@pytest.fixture
def view(book: Store, keys: KeyLibrary, theme: Theme, qtbot: QtBot) -> Iterator[RecordsView]:
    made = RecordsView(book, keys, theme)
    qtbot.addWidget(made)
    made.resize(1000, 700)
    made.show()
    settle(made, qtbot)
    yield made
    made.close_work()


def asked(qtbot: QtBot) -> ColumnsDialog:
    """The dialog that asks for the columns."""

    def found() -> list[ColumnsDialog]:
        tops = QApplication.topLevelWidgets()
        return [w for w in tops if isinstance(w, ColumnsDialog) and w.isVisible()]

    qtbot.waitUntil(lambda: bool(found()))
    return found()[0]


def test_a_table_is_taken_in_and_its_columns_are_remembered(
    view: RecordsView, book: Store, tmp_path: Path, qtbot: QtBot
):
    file = tmp_path / "till.csv"
    file.write_text("Beleg;Summe\nLSV-1;65,00 €\nLSV-9;1\n", "cp1252")
    view.till.take_in(file)
    dialog = asked(qtbot)
    assert not dialog.go.isEnabled()
    dialog.fields["number"].setCurrentIndex(1)
    dialog.fields["price"].setCurrentIndex(2)
    assert dialog.shown["price"].text() == "65,00 €"
    dialog.go.click()
    settle(view, qtbot)

    said = view.till.taken.toPlainText()
    assert "new or corrected sale: 1" in said
    assert "Line 3: sale LSV-9 belongs to no case" in said
    assert book.sales(CASE)[0].price == "65,00 €"
    view.till.take_in(file)
    again = asked(qtbot)
    assert again.mapping == {"number": "Beleg", "price": "Summe"}
    again.reject()


def test_what_is_no_table_is_told(view: RecordsView, tmp_path: Path, qtbot: QtBot):
    (tmp_path / "till.csv").write_text("just words", "utf-8")
    view.till.take_in(tmp_path / "till.csv")
    settle(view, qtbot)

    assert "no table" in view.till.taken.toPlainText()


def test_sales_go_out_with_buyers_only_when_ticked(view: RecordsView, tmp_path: Path, qtbot: QtBot):
    for ticked in (False, True):
        view.till.buyers.setChecked(ticked)
        view.till.write_out(tmp_path / "sales.csv")
        settle(view, qtbot)
        (row,) = csv.DictReader((tmp_path / "sales.csv").read_text("utf-8-sig").splitlines())
        assert row.get("buyer", "") == ("buyer 12" if ticked else "")


@pytest.mark.slow
def test_the_watched_folder_gets_its_rationale_and_is_watched_again_after_a_start(
    view: RecordsView,
    book: Store,
    keys: KeyLibrary,
    theme: Theme,
    tmp_path: Path,
    qtbot: QtBot,
):
    till = tmp_path / "till"
    till.mkdir()
    (till / "LSV-1.txt").touch()
    view.watch.start(till)
    qtbot.waitUntil(lambda: bool(view.watch.log), timeout=20_000)
    (paper,) = rationales_of(book, CASE)
    assert (till / paper.file).is_file()
    assert paper.file in view.till.log.toPlainText()
    assert str(till) in view.till.where.text()

    view.till.check_document(till / paper.file)
    settle(view, qtbot)
    answer = view.till.answer.toPlainText()
    assert "✓ Nothing speaks against this document" in answer
    assert "noted in the record as handed out" in answer

    again = RecordsView(book, keys, theme)
    qtbot.addWidget(again)
    assert again.watch.folder == till
    again.till.stop.click()
    qtbot.waitUntil(lambda: not again.busy)
    again.close_work()
    assert again.watch.folder is None
    assert '"folder": ""' in book.setting("records/watch")


def test_a_folder_that_went_away_is_told(view: RecordsView, tmp_path: Path, qtbot: QtBot):
    view.watch.start(tmp_path / "gone")
    qtbot.waitUntil(lambda: "cannot be read" in view.till.where.text())


def test_a_document_that_was_changed_is_not_to_be_relied_on(
    view: RecordsView, tmp_path: Path, qtbot: QtBot
):
    view.deeds.folder = tmp_path
    view.deeds.write_again(CASE)
    settle(view, qtbot)
    (file,) = tmp_path.glob("rationale-*.json")
    file.write_text(file.read_text("utf-8").replace("contradicted", "holds"), "utf-8")
    view.till.check_document(file)
    settle(view, qtbot)

    assert "✗ Something does not match" in view.till.answer.toPlainText()


@pytest.mark.slow
@pytest.mark.parametrize(("signed", "spoken"), [("de", "de"), ("", "en"), ("tlh", "en")])
def test_papers_go_out_again_in_the_language_they_were_signed_in(
    signed: str, spoken: str, book: Store, key: Key, view: RecordsView, tmp_path: Path, qtbot: QtBot
):
    case = replace(book.case(CASE).case, language=signed)
    book.save(case, VerdictSummary.of(judged(book, key, case)))
    view.deeds.folder, till = tmp_path / "papers", tmp_path / "till"
    till.mkdir()
    (till / "LSV-1.txt").touch()
    view.watch.start(till)
    qtbot.waitUntil(lambda: bool(view.watch.log), timeout=20_000)
    view.deeds.write_again(CASE)
    settle(view, qtbot)
    files = [*view.deeds.folder.glob("*.pdf"), *till.glob("*.pdf")]

    assert [verify(file).found.language for file in files] == [spoken, spoken]


def test_the_answer_about_one_document_does_not_stand_over_the_next(
    view: RecordsView, tmp_path: Path, qtbot: QtBot
):
    view.till.answer.setPlainText("✓ Nothing speaks against this document.")
    view.till.check_document(tmp_path / "another.pdf")

    assert "Nothing speaks" not in view.till.answer.toPlainText()
    assert "another.pdf" in view.till.answer.toPlainText()
    qtbot.waitUntil(lambda: not view.till.busy)
