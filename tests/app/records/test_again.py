"""After a new key version: all cases are run again, and only what one says is issued anew."""

from collections.abc import Iterator
from dataclasses import replace

import pytest
from pytestqt.qtbot import QtBot

from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.theme import Theme
from idkey.app.records.rerun import run_again
from idkey.app.records.view import Part, RecordsView
from idkey.app.records.work import Shelf
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.errors import Stopped
from idkey.model.key import Key
from idkey.report.language import ENGLISH, in_language
from idkey.report.recorded import judged
from idkey.store.book import Store
from idkey.store.rationales import rationales_of
from idkey.store.record import VerdictSummary
from tests.app.records.test_view import settle

OLDER = {"key_version": "0.9.0", "key_digest": "older"}


@pytest.fixture
def book(store: Store, key: Key) -> Store:
    """Six cases; two of them were called an emperor by an older key."""
    for number in range(6):
        case = replace(sample_case(key), id=f"case-{number}")
        summary = VerdictSummary.of(judged(store, key, case))
        if number % 3 == 0:
            case = replace(case, **OLDER)
            taxa = ("pandinus_imperator", "gone_from_the_key")
            summary = replace(
                summary, kind="holds", name="Pandinus imperator", taxa=taxa, cautions=(), **OLDER
            )
        store.save(case, summary)
    return store


@pytest.fixture
def view(book: Store, keys: KeyLibrary, theme: Theme, qtbot: QtBot) -> Iterator[RecordsView]:
    made = RecordsView(book, keys, theme)
    qtbot.addWidget(made)
    made.resize(1200, 800)
    made.show()
    made.parts._group.button(list(Part).index(Part.AGAIN)).click()
    settle(made, qtbot)
    yield made
    made.close_work()


def ran(view: RecordsView, qtbot: QtBot) -> None:
    """Run all cases again."""
    view.again.run.click()
    assert view.again.stop.isVisible()
    settle(view, qtbot)


def test_what_changes_is_listed_with_the_reason_and_nothing_is_saved(
    view: RecordsView, book: Store, qtbot: QtBot
):
    ran(view, qtbot)

    assert view.again.said.text() == "2 of 6 cases come out otherwise."
    assert not view.again.stop.isVisible()
    said = view.again.page.toPlainText()
    assert "Name: Pandinus imperator, now Heterometrus" in said
    assert "Verdict: Label holds, now Label contradicted." in said
    assert "New caution: papers." in said
    assert "Key 0.9.0, now " in said
    assert "Pandinus imperator is ruled out now: Manus surface" in said
    assert "gone from the key is no longer in the key." in said
    assert all(len(book.revisions(f"case-{n}")) == 1 for n in range(6))


def test_issuing_anew_is_asked_twice_and_adds_a_revision_and_a_rationale(
    view: RecordsView, book: Store, key: Key, qtbot: QtBot
):
    ran(view, qtbot)
    view.again.issue.click()
    settle(view, qtbot)
    assert "Press again" in view.again.done.text()
    assert len(book.revisions("case-0")) == 1

    view.again.issue.click()
    settle(view, qtbot)
    newest = book.case("case-0")
    assert newest.revision.number == 2
    assert newest.summary.key_digest == newest.case.key_digest == key.digest
    assert [paper.revision for paper in rationales_of(book, "case-0")] == [2]
    assert book.case("case-0", 1).summary.name == "Pandinus imperator"
    assert not view.again.issue.isEnabled()
    assert "✓ Issued anew" in view.again.page.toPlainText()
    assert len(book.revisions("case-3")) == 1


def test_the_case_can_be_looked_up_from_the_list(view: RecordsView, qtbot: QtBot):
    ran(view, qtbot)
    view.again.look.click()
    settle(view, qtbot)

    assert view.parts.value is Part.CASES
    assert view.cases.list.current == "case-0"


def test_a_stopped_run_tells_what_it_has_found_so_far(book: Store, keys: KeyLibrary):
    def stop_after_four(done: int, _: int) -> None:
        if done == 4:
            raise Stopped

    found = run_again(Shelf(book, keys), SAMPLE_KEY, ENGLISH, stop_after_four)

    assert (found.done, found.total) == (4, 6)
    assert [one.stored.case.id for one in found.altered] == ["case-0", "case-3"]


def test_the_reasons_come_in_the_language_of_the_person(book: Store, keys: KeyLibrary):
    found = run_again(Shelf(book, keys), SAMPLE_KEY, in_language("de"), lambda *_: None)

    assert "Neue Warnung: Papiere." in found.altered[0].changes
    assert found.altered[0].reasons[0].startswith("Schlüssel 0.9.0, jetzt")


def test_a_prior_that_moved_is_named_where_the_key_is_the_same(book: Store, keys: KeyLibrary):
    stored = book.case("case-1")
    book.save(stored.case, replace(stored.summary, name="Opistophthalmus sp."))
    found = run_again(Shelf(book, keys), SAMPLE_KEY, ENGLISH, lambda *_: None)
    (one,) = (one for one in found.altered if one.stored.case.id == "case-1")

    assert "The key is the same" in one.reasons[0]
