"""Versions side by side, and two people's edits joined."""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from idkey.app.library.editions import Edition
from idkey.app.library.part import Part
from idkey.app.library.state import LibraryState
from idkey.app.library.view import LibraryView
from idkey.formats.merge import Side
from idkey.formats.package import write_package
from idkey.model.key import Key


def packed(folder: Path, name: str, key: Key) -> Edition:
    file = folder / f"{name}.idkey"
    write_package(key, file)
    return Edition(name, file)


def renamed(key: Key, version: str, names: dict[str, str]) -> Key:
    taxa = tuple(replace(t, name=names.get(t.id, t.name)) for t in key.taxa)
    return replace(key, version=version, taxa=taxa)


@pytest.fixture
def joining(
    view: LibraryView, state: LibraryState, leaves: Key, tmp_path: Path, qtbot: QtBot
) -> LibraryView:
    """A join in which two names clash, and each person changed a third thing alone."""
    first, second, third, fourth = (taxon.id for taxon in leaves.taxa[:4])
    mine = renamed(leaves, "1.1.0", {first: "Mine prima", second: "Mine secunda", third: "Mea"})
    theirs = renamed(leaves, "1.2.0", {first: "Sua prima", second: "Sua secunda", fourth: "Sua"})
    view.show_part(Part.JOIN)
    view.join.base.choose(packed(tmp_path, "base", leaves))
    view.join.mine.choose(packed(tmp_path, "mine", mine))
    view.join.theirs.choose(packed(tmp_path, "theirs", theirs))
    qtbot.waitUntil(lambda: state.join.joining is not None and not state.join.busy)
    return view


def test_two_versions_are_told_in_words_and_narrowed(
    view: LibraryView, leaves: Key, tmp_path: Path, qtbot: QtBot
):
    page = view.versions
    first, *_ = leaves.taxa
    newer = replace(renamed(leaves, "1.0.1", {first.id: "Nova herba"}), scores=leaves.scores[1:])
    view.show_part(Part.VERSIONS)
    page.older.choose(packed(tmp_path, "old", leaves))
    page.newer.choose(packed(tmp_path, "new", newer))
    qtbot.waitUntil(lambda: not page.busy)

    assert "Changes from 1.0.0 to 1.0.1: 3; a verdict may change." in page.said.text()
    assert "After 1.0.0 should come 1.1.0 or later." in page.said.text()
    qtbot.keyClicks(page.changes.words, "nova herb")
    (name, _) = page.changes.rows.rows
    assert name.words.endswith("→ Nova herba")
    page.changes.words.clear()
    page.changes.part.setCurrentIndex(page.changes.part.count() - 1)
    (score,) = page.changes.rows.rows
    assert score.words.endswith("→ nothing scored")

    page.swap.click()
    qtbot.waitUntil(lambda: not page.busy)
    assert "from 1.0.1 to 1.0.0" in page.said.text()


def test_a_version_that_cannot_be_read_is_said(view: LibraryView, tmp_path: Path, qtbot: QtBot):
    page = view.versions
    view.show_part(Part.VERSIONS)
    page.newer.choose_file(tmp_path / "gone.idkey")
    qtbot.waitUntil(lambda: not page.busy)

    assert "gone.idkey cannot be read: No such file" in page.said.text()


def test_clashes_are_decided_row_by_row_by_keyboard(
    joining: LibraryView, state: LibraryState, qtbot: QtBot
):
    table = joining.join.table
    cells = [table.model().index(0, column).data() for column in range(4)]
    assert "was changed on both sides" in cells[0]
    assert "Ocimum basilicum" in cells[1]
    assert cells[2].startswith("✓ ")
    assert "undecided: 2" in joining.join.said.text()

    qtbot.keyClick(table, Qt.Key.Key_T)
    qtbot.waitUntil(lambda: not state.join.busy)
    assert table.currentIndex().row() == 1
    qtbot.keyClick(table, Qt.Key.Key_M)
    qtbot.waitUntil(lambda: not state.join.busy)

    assert "undecided: 0" in joining.join.said.text()
    names = {taxon.name for taxon in state.join.joining.key.taxa}
    assert {"Sua prima", "Mine secunda", "Mea", "Sua"} <= names
    assert state.join.joining.key.version == "1.2.0"


def test_the_joined_key_is_looked_at_before_it_is_kept(
    joining: LibraryView, state: LibraryState, own: Path, qtbot: QtBot
):
    joining.join.all_theirs.click()
    qtbot.waitUntil(lambda: not state.join.busy)
    joining.join.go_on.click()
    qtbot.waitUntil(lambda: not state.busy)

    assert joining.stack.currentWidget() is joining.arrival
    assert not own.exists()
    joining.arrival.both.click()
    qtbot.waitUntil(lambda: not state.busy, timeout=10_000)

    kept = state.keys["kitchen-leaves-2"]
    assert {"Sua prima", "Sua secunda", "Mea", "Sua"} <= {taxon.name for taxon in kept.taxa}


def test_a_join_that_refers_to_what_the_other_removed_is_shown_and_not_passed_on(
    view: LibraryView, state: LibraryState, leaves: Key, tmp_path: Path, qtbot: QtBot
):
    gone = leaves.couplets[-1].leads[0].taxa[0]
    without = replace(
        leaves,
        taxa=tuple(t for t in leaves.taxa if t.id != gone),
        scores=tuple(s for s in leaves.scores if s.taxon != gone),
        labels=(),
        couplets=(),
        checks=(),
    )
    label = replace(leaves.labels[0], text="another label", covers=(gone,), sold_as=())
    with_label = replace(leaves, labels=(*leaves.labels, replace(label, id="another")))
    view.show_part(Part.JOIN)
    view.join.base.choose(packed(tmp_path, "base", leaves))
    view.join.mine.choose(packed(tmp_path, "mine", without))
    view.join.theirs.choose(packed(tmp_path, "theirs", with_label))
    qtbot.waitUntil(lambda: state.join.joining is not None and not state.join.busy)

    assert gone in view.join.wrong.text()
    assert not view.join.go_on.isEnabled()
    assert state.join.joining.taken is not Side.MINE
