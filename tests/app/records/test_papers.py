"""Permit fields, second opinions and labels, as a person meets them in the records."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QUrl
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.theme import Theme
from idkey.app.records.case import Deed
from idkey.app.records.dialogs import OpinionDialog
from idkey.app.records.label_choice import LabelChoice
from idkey.app.records.label_dialog import LabelDialog
from idkey.app.records.papers_dialog import PapersDialog
from idkey.app.records.view import RecordsView
from idkey.engine.sample import sample_case
from idkey.model.key import Key
from idkey.report.label_stock import STOCKS
from idkey.report.recorded import judged
from idkey.store.book import Store
from idkey.store.intake import intake_of, papers_of
from idkey.store.opinions import first_of
from idkey.store.rationales import rationales_of
from idkey.store.record import Papers, VerdictSummary
from tests.app.records.test_view import settle, shown

FIRST = "first-case"


@pytest.fixture
def view(store: Store, keys: KeyLibrary, key: Key, theme: Theme, qtbot: QtBot) -> Iterator:
    """The records over a book with one case, which may be of a listed species."""
    case = replace(sample_case(key), id=FIRST, by="RB")
    store.save(case, VerdictSummary.of(judged(store, key, case)))
    made = RecordsView(store, keys, theme)
    qtbot.addWidget(made)
    made.resize(1200, 800)
    made.show()
    made.refresh()
    settle(made, qtbot)
    yield made
    made.close_work()


def page(view: RecordsView) -> str:
    """What the page of the case says."""
    return view.cases.case.page.toPlainText()


def test_a_listed_animal_without_papers_is_pointed_out_with_whom_to_ask(view: RecordsView):
    said = page(view)

    assert "May stand on a list: " in said
    assert "Missing or odd: 10 of the fields" in said
    assert "check locally, with the authority" in said


def test_the_dialog_says_what_is_missing_as_one_types(
    view: RecordsView, store: Store, qtbot: QtBot
):
    view.cases.case.page.anchorClicked.emit(QUrl("papers:"))
    dialog = shown(PapersDialog)
    assert "The source code is missing." in dialog.missing.toPlainText()
    dialog.fields["source"].choose("A")
    dialog.fields["source"].currentIndexChanged.emit(0)
    assert "Code A is for plants only" in dialog.missing.toPlainText()
    dialog.fields["source"].choose("C")
    qtbot.keyClicks(dialog.fields["issued"], "last year")
    said = dialog.missing.toPlainText()
    assert "source code" not in said
    assert "“last year” is no date" in said
    assert "check locally" in said
    dialog.save.click()
    settle(view, qtbot)

    assert papers_of(store, FIRST) == Papers(source="C", issued="last year")
    assert intake_of(store, FIRST).supplier == store.case(FIRST).case.claim.supplier
    assert "Source code: C: bred in captivity" in page(view)


def test_noted_papers_stand_in_the_rationale(view: RecordsView, store: Store, qtbot: QtBot):
    view.cases.case.buttons[Deed.PAPERS].click()
    dialog = shown(PapersDialog)
    qtbot.keyClicks(dialog.fields["document"], "DE-0815/25")
    dialog.save.click()
    settle(view, qtbot)
    view.cases.case.buttons[Deed.WRITE].click()
    settle(view, qtbot)

    (paper,) = rationales_of(store, FIRST)
    pages = PdfReader(view.deeds.folder / paper.file).pages
    text = " ".join(" ".join(page.extract_text() for page in pages).split())
    assert "Number of the document: DE-0815/25" in text
    assert "The source code is missing." in text


def begun(view: RecordsView, qtbot: QtBot) -> str:
    """Begin a second opinion by MT; the id of its case."""
    view.cases.case.actions_more[Deed.OPINION].trigger()
    dialog = shown(OpinionDialog)
    qtbot.keyClicks(dialog.initials, "rb")
    assert "would not be a second one" in dialog.same.text()
    dialog.initials.setText("MT")
    assert not dialog.same.text()
    with qtbot.waitSignal(view.blind) as heard:
        dialog.go.click()
    settle(view, qtbot)
    first, second = heard.args
    assert first == FIRST
    return second


def test_a_second_opinion_starts_from_the_label_alone(
    view: RecordsView, store: Store, qtbot: QtBot
):
    second = begun(view, qtbot)
    blind = store.case(second)

    assert blind.case.claim == store.case(FIRST).case.claim
    assert (blind.case.findings, blind.summary, blind.case.by) == ((), None, "MT")
    assert blind.case.specimen.sex is None
    assert first_of(store, second) == FIRST
    view.cases.look_at(FIRST)
    settle(view, qtbot)
    assert "MT is still at it, blind: 0 findings" in page(view)
    assert "Manus" not in page(view)


def test_once_finished_the_two_are_compared_character_by_character(
    view: RecordsView, store: Store, key: Key, qtbot: QtBot
):
    second = begun(view, qtbot)
    first = store.case(FIRST).case
    other = tuple(
        replace(f, states=("smooth",)) if f.character == "manus_surface" else f
        for f in first.findings
        if f.character != "total_length"
    )
    blind = replace(store.case(second).case, findings=other, specimen=first.specimen)
    store.save(blind, VerdictSummary.of(judged(store, key, blind)))
    view.refresh()
    view.cases.look_at(FIRST)
    settle(view, qtbot)
    view.cases.list.look_at(FIRST)
    settle(view, qtbot)

    said = page(view)
    assert "✗ different" in said or "≈ partly" in said
    assert "Total length · one only" in said
    assert "Seen by both: 9 characters; the same on 8 (Telson colour, " in said
    assert "Over all animals determined twice" in said

    view.cases.look_at(second)
    settle(view, qtbot)
    assert "This is a second opinion, given blind" in page(view)


def test_the_label_dialog_starts_from_the_last_choice_and_shows_the_page(
    view: RecordsView, store: Store, tmp_path: Path, qtbot: QtBot, monkeypatch
):
    file = tmp_path / "labels.pdf"
    monkeypatch.setattr(view.cases._asks, "_file", lambda *_: file)
    view.cases.case.buttons[Deed.LABEL].click()
    qtbot.waitUntil(lambda: bool(open_labels()))
    dialog = open_labels()[0]
    assert dialog.choice == LabelChoice()
    dialog.stock.choose("A4 3x8")
    dialog.used.setValue(5)
    dialog.price.setText("65 EUR")
    assert dialog.preview.accessibleDescription().endswith("65 EUR")
    dialog.write.click()
    settle(view, qtbot)

    assert "65" in PdfReader(file).pages[0].extract_text()
    width = float(PdfReader(file).pages[0].mediabox.width) / 72 * 25.4
    assert width == pytest.approx(STOCKS["A4 3x8"].page[0], abs=0.5)
    assert LabelChoice.kept(view.deeds.kept("records/label")).stock == "A4 3x8"


def test_a_stock_that_is_gone_gives_the_usual_one():
    assert LabelChoice.kept({"stock": "clay 9x9", "cut": 1}) == LabelChoice()


def open_labels() -> list[LabelDialog]:
    return [w for w in QApplication.topLevelWidgets() if isinstance(w, LabelDialog)]
