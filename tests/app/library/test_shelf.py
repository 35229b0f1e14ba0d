"""The keys that are here: what is told of them, and what can be done with them."""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from idkey.app.library.coverage_bar import percent
from idkey.app.library.key_page import Deed
from idkey.app.library.state import LibraryState
from idkey.app.library.view import LibraryView
from idkey.app.parts.key_library import KeyLibrary
from idkey.engine.coverage import Ground, coverage
from idkey.formats.arrival import Arrival, read_arrival
from idkey.formats.folder import write_key
from idkey.formats.giving import WAYS, Way
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.model.source import Basis
from idkey.store.book import Store


def settle(state: LibraryState, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not state.busy, timeout=20_000)


def page(view: LibraryView) -> str:
    return view.shelf.page.text.toPlainText()


def put_own(own: Path, key: Key, name: str = "garden-leaves") -> Path:
    folder = own / name
    write_key(replace(key, id=name, title="Garden leaves"), folder)
    return folder


def test_a_key_is_told_with_its_size_coverage_statements_and_lookalikes(view: LibraryView):
    (one,) = view.shelf.list.rows.rows
    assert one.key is not None

    assert view.shelf.page.about.text().startswith("kitchen-leaves · 1.0.0 · came with")
    assert "4 of 4 published statements hold." in page(view)
    assert "Origanum majorana – Origanum vulgare" in page(view)
    spoken = view.shelf.list.model().index(0, 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert "12 taxa, 14 characters, 100 % from memory or common practice" in spoken


def test_the_coverage_counts_each_cell_once_by_its_weakest_ground(leaves: Key):
    taxon, character = leaves.scores[0].taxon, leaves.scores[0].character
    first, second, *others = (s for s in leaves.scores if s.taxon == taxon)
    printed = replace(first, basis=Basis.SOURCE, sources=(leaves.sources[0].id,))
    claimed = replace(second, basis=Basis.SOURCE, sources=())
    rest = tuple(s for s in leaves.scores if s.taxon != taxon)
    kept = tuple(others[1:])
    found = coverage(replace(leaves, scores=(printed, claimed, *kept, *rest)))
    before = coverage(leaves)

    assert character
    assert found.cells[Ground.PRINT] == found.cells[Ground.UNTOLD] == found.cells[Ground.EMPTY] == 1
    assert found.total == before.total == sum(found.cells.values())


@pytest.mark.parametrize(
    ("share", "words"), [(0.0, "0 %"), (0.001, "under 1 %"), (0.999, "over 99 %"), (1.0, "100 %")]
)
def test_a_share_is_never_rounded_to_nothing_or_all(share: float, words: str):
    assert percent(share) == words


def test_a_broken_key_is_listed_with_its_mistakes_and_cannot_start_a_case(
    view: LibraryView, state: LibraryState, own: Path, leaves: Key, qtbot: QtBot
):
    folder = put_own(own, leaves)
    (folder / "characters.yaml").write_text("characters: [}")
    state.refresh()
    settle(state, qtbot)
    view.shelf.list.look_at("garden-leaves")

    assert "characters.yaml:1 A bracket that was opened is never closed" in page(view)
    assert not view.shelf.page.buttons[Deed.CASE].isEnabled()
    assert "garden-leaves" not in state.keys
    assert list(state.keys) == ["kitchen-leaves"]


def test_enter_starts_a_case_and_the_buttons_lead_on(view: LibraryView, own: Path, qtbot: QtBot):
    with qtbot.waitSignal(view.case_asked) as heard:
        qtbot.keyClick(view.shelf.list, Qt.Key.Key_Return)
    assert heard.args == ["kitchen-leaves"]
    with qtbot.waitSignal(view.edit_asked) as heard:
        view.shelf.page.buttons[Deed.EDIT].click()
    assert heard.args[0].name == "kitchen-leaves"
    assert not view.shelf.page.buttons[Deed.REMOVE].isVisible()


def test_an_own_key_leaves_the_shelf_but_not_the_disk(
    view: LibraryView, state: LibraryState, keys: KeyLibrary, own: Path, leaves: Key, qtbot: QtBot
):
    put_own(own, leaves)
    state.refresh()
    settle(state, qtbot)
    view.shelf.list.look_at("garden-leaves")

    view.shelf.page.buttons[Deed.REMOVE].click()
    settle(state, qtbot)

    assert [one.entry.id for one in state.accounts] == ["kitchen-leaves"]
    assert (own.parent / "removed" / "garden-leaves" / "key.yaml").is_file()
    assert "removed" in view.notice.text


def test_a_key_on_which_cases_rest_stays(
    view: LibraryView, state: LibraryState, store: Store, own: Path, leaves: Key, qtbot: QtBot
):
    put_own(own, leaves)
    store.save(Case(id="one", key="garden-leaves"), None)
    state.refresh()
    settle(state, qtbot)
    view.shelf.list.look_at("garden-leaves")

    view.shelf.page.buttons[Deed.REMOVE].click()
    settle(state, qtbot)

    assert "Cases rest on the key garden-leaves: 1." in view.notice.text
    assert (own / "garden-leaves").is_dir()


@pytest.mark.parametrize("way", WAYS, ids=lambda way: way.id)
def test_every_form_is_written_with_its_report_and_read_again(
    state: LibraryState, leaves: Key, qtbot: QtBot, tmp_path: Path, way: Way
):
    state.refresh()
    settle(state, qtbot)
    place = tmp_path / f"out{way.ending}" if way.ending else tmp_path / "kitchen-leaves"
    with qtbot.waitSignal(state.told) as heard:
        state.hand_out(state.accounts[0], way, place)
    settle(state, qtbot)
    said = heard.args[0]

    assert str(place) in said
    assert ("Nothing had to be left out." in said) == (way.id in ("package", "folder"))
    found = read_arrival(place)
    whole = isinstance(found, Arrival) and found.key.digest == leaves.digest
    assert whole == (way.id not in ("csv", "nexus"))


def test_a_page_that_cannot_be_written_is_refused_in_words(
    view: LibraryView, state: LibraryState, qtbot: QtBot, tmp_path: Path
):
    with qtbot.waitSignal(state.failed):
        state.hand_out(state.accounts[0], WAYS[0], tmp_path / "nowhere" / "out.idkey")
    settle(state, qtbot)

    assert "out.idkey could not be written: No such file or directory" in view.notice.text
