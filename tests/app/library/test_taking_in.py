"""What comes in: dragged, pasted, double-clicked; looked at before anything is added."""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from idkey.app.library.state import LibraryState
from idkey.app.library.view import LibraryView
from idkey.app.parts.key_library import KeyLibrary
from idkey.formats.folder import read_key, write_key
from idkey.formats.json_key import write_json
from idkey.formats.nexus import write_nexus
from idkey.formats.package import write_package
from idkey.formats.table import write_csv
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.store.book import Store
from idkey.store.record import VerdictSummary

CORPUS = Path(__file__).parents[2] / "formats" / "corpus"
HOSTILE = sorted(file for file in CORPUS.rglob("*") if file.is_file())


def settle(state: LibraryState, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not state.busy, timeout=20_000)


def drop(view: QWidget, mime: QMimeData) -> None:
    """Drag something over a widget and let it go."""
    copy, left = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
    plain = Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(QPoint(5, 5), copy, mime, left, plain)
    view.dragEnterEvent(enter)
    assert enter.isAccepted()
    view.dropEvent(QDropEvent(QPointF(5, 5), copy, mime, left, plain))


def files(*places: Path) -> QMimeData:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(place)) for place in places])
    return mime


def garden(leaves: Key, **changed: object) -> Key:
    return replace(leaves, id="garden-leaves", title="Garden leaves", **changed)


def test_a_dragged_package_is_shown_and_added_by_one_key(
    view: LibraryView, state: LibraryState, own: Path, leaves: Key, qtbot: QtBot, tmp_path: Path
):
    file = tmp_path / "garden-leaves.idkey"
    write_package(garden(leaves), file)

    drop(view, files(file))
    settle(state, qtbot)
    assert view.stack.currentWidget() is view.arrival
    assert view.arrival.about.text().startswith("garden-leaves.idkey: a key package.")
    assert "Nothing was left out" in view.arrival.report.toPlainText()
    assert not (own / "garden-leaves").exists()

    assert view.arrival.add.hasFocus()
    qtbot.keyClick(view.arrival.add, Qt.Key.Key_Space)
    settle(state, qtbot)

    assert read_key(own / "garden-leaves").title == "Garden leaves"
    assert view.stack.currentWidget() is view.shelf
    assert "garden-leaves is among your keys now." in view.notice.text
    assert "garden-leaves" in state.keys


def test_what_a_matrix_cannot_say_is_told_and_assumed_with_care(
    view: LibraryView, state: LibraryState, leaves: Key, qtbot: QtBot, tmp_path: Path
):
    file = tmp_path / "matrix.of.unknown.ending"
    write_nexus(leaves, file)

    drop(view, files(file))
    settle(state, qtbot)

    told = view.arrival.text.toPlainText()
    assert "how dangerous 12 of its taxa are; they are treated as medically significant" in told
    assert "all were set to the hand lens" in view.arrival.report.toPlainText()
    assert view.arrival.welcome.counts.coverage.filled > 0


def test_another_version_of_an_own_key_shows_its_changes_and_cases_before_it_replaces(
    view: LibraryView, state: LibraryState, keys: KeyLibrary, store: Store, own: Path,
    leaves: Key, qtbot: QtBot, tmp_path: Path,
):  # fmt: skip
    keys.add(garden(leaves))
    summary = VerdictSummary(
        kind="unknown", level="established", name="Laurus nobilis", taxa=("laurel",),
        cautions=(), key_version="1.0.0", key_digest="",
    )  # fmt: skip
    case = Case(id="one", key="garden-leaves")
    store.save(replace(case, claim=replace(case.claim, text="bay leaf")), summary)
    first, *others = leaves.taxa
    newer = garden(leaves, version="1.1.0", taxa=(replace(first, name="Nova herba"), *others))
    file = tmp_path / "newer.json"
    file.write_text(write_json(newer), "utf-8")

    view.take_in(file)
    settle(state, qtbot)

    changes = [change.words for change in view.arrival.changes.rows.rows]
    assert any("→" in words and "Nova herba" in words for words in changes)
    assert "You have a key with this id in version 1.0.0" in view.arrival.verdict.text()
    assert "bay leaf: Name: Laurus nobilis, now" in view.arrival.report.toPlainText()
    assert view.arrival.replace.isVisible()
    assert not view.arrival.add.isVisible()

    view.arrival.replace.click()
    settle(state, qtbot)

    assert read_key(own / "garden-leaves").version == "1.1.0"
    (kept,) = (own.parent / "removed").iterdir()
    assert (kept / "key.yaml").read_text("utf-8").count("version: 1.0.0") == 1
    assert keys["garden-leaves"].version == "1.1.0"


def test_a_shipped_key_is_not_replaced_but_both_can_stay(
    view: LibraryView, state: LibraryState, own: Path, leaves: Key, qtbot: QtBot, tmp_path: Path
):
    file = tmp_path / "leaves.idkey"
    write_package(replace(leaves, version="9.0.0"), file)

    view.take_in(file)
    settle(state, qtbot)
    assert "came with the program" in view.arrival.verdict.text()
    assert not view.arrival.replace.isVisible()
    view.arrival.both.click()
    settle(state, qtbot)

    assert read_key(own / "kitchen-leaves-2").version == "9.0.0"
    assert state.keys["kitchen-leaves"].version == leaves.version


def test_the_very_same_key_has_nothing_to_add(
    view: LibraryView, state: LibraryState, leaves: Key, qtbot: QtBot, tmp_path: Path
):
    folder = tmp_path / "kitchen-leaves"
    write_key(leaves, folder)

    drop(view, files(folder))
    settle(state, qtbot)

    assert "The very same key is here already" in view.arrival.verdict.text()
    for one in (view.arrival.add, view.arrival.replace, view.arrival.both):
        assert not one.isVisible()
    qtbot.keyClick(view.arrival, Qt.Key.Key_Escape)
    assert view.stack.currentWidget() is view.shelf


def test_a_matrix_that_was_filled_in_elsewhere_goes_back_into_its_key(
    view: LibraryView, state: LibraryState, leaves: Key, qtbot: QtBot, tmp_path: Path
):
    file = tmp_path / "matrix.csv"
    write_csv(leaves, file)
    text = file.read_text("utf-8")
    one, other, *_ = (s for s in leaves.character["surface"].state_ids if f",{s}," in text)
    file.write_text(text.replace(f",{one},", f",{other},", 1), "utf-8")

    view.take_in(file)
    settle(state, qtbot)

    assert view.arrival.welcome.arrival.key.id == "kitchen-leaves"
    (change,) = view.arrival.changes.rows.rows
    assert "Relief of the upper side: " in change.words


def test_pasted_json_is_read_like_a_file(
    view: LibraryView, state: LibraryState, leaves: Key, qtbot: QtBot
):
    QGuiApplication.clipboard().setText(write_json(garden(leaves)))
    qtbot.keyClick(view.shelf.list, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    settle(state, qtbot)

    assert view.arrival.about.text().startswith("pasted text: a key as JSON.")


def test_hostile_and_broken_files_end_in_a_sentence_and_nothing_is_added(
    view: LibraryView, state: LibraryState, own: Path, qtbot: QtBot
):
    """Bombs, traversal, entities, links, wrong encodings, scripts, pictures that are none."""
    assert len(HOSTILE) > 40
    for file in HOSTILE:
        view.notice.hide()
        view.show_part(view.head.part)
        view.take_in(file)
        settle(state, qtbot)

        refused = view.notice.text != "" and not view.arrival.isVisible()
        explained = view.sheet.isVisible()
        assert refused or explained, file
        assert "program made a mistake" not in view.notice.text, file
        qtbot.waitUntil(lambda: not state.sheet.busy)
    assert not own.exists() or not list(own.glob("*/key.yaml"))


@pytest.mark.parametrize("text", ["", "  "])
def test_pasting_nothing_is_said(view: LibraryView, text: str, qtbot: QtBot):
    QGuiApplication.clipboard().setText(text)
    qtbot.keyClick(view.shelf.list, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)

    assert "There is nothing here that could be a key." in view.notice.text
