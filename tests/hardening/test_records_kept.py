"""Records are copied by themselves, and are for the eyes of their owner."""

import os
import stat
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.workshop.couplet_text_view import text_place
from idkey.app.workshop.forms_unread import unread_of
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.formats.folder import read_key
from idkey.formats.package import write_package
from idkey.store.backups import back_up, backups
from idkey.store.book import Store
from tests.stories.conftest import CTRL, KEY, Keeper

LEAVES = places.keys_folder() / "kitchen-leaves"

pytestmark = pytest.mark.skipif(os.name == "nt", reason="modes of Unix")


def modes(folder: Path) -> dict[str, str]:
    """Mode per file and folder, in octal."""
    return {
        file.relative_to(folder).as_posix(): oct(stat.S_IMODE(file.stat().st_mode))
        for file in sorted(folder.rglob("*"))
    }


def reachable(folder: Path) -> dict[str, str]:
    """What other accounts of the machine could open: theirs to open, and no closed folder above."""
    open_modes = {name: mode for name, mode in modes(folder).items() if int(mode, 8) & 0o077}
    closed = {name for name, mode in modes(folder).items() if not int(mode, 8) & 0o077}
    return {
        name: mode
        for name, mode in open_modes.items()
        if not closed & {parent.as_posix() for parent in Path(name).parents}
    }


@pytest.mark.slow
def test_no_other_account_can_open_what_the_window_keeps(opens, tmp_path: Path):
    file = tmp_path / "garden.idkey"
    write_package(replace(read_key(LEAVES), id="garden-leaves"), file)
    before = os.umask(0)
    try:
        keeper = opens()
        program = keeper.program
        program.window.commands.run("sample")
        workshop = program.workshop
        unread_of(workshop).keep(text_place(LEAVES), "half a couplet")
        workshop.open(workshop.copy(LEAVES, "my-leaves"))
        workshop.change(replace(workshop.editing.key, title="Half-way"), "Title")
        workshop.drafts.flush()
        program.state.keys.take_in(file)
        program.library.refresh()
        keeper.qtbot.waitUntil(lambda: not program.library.busy, timeout=60_000)
        keeper.settles()
        rationale_filed(keeper)
        keeper.start.close()
        found = modes(places.data_folder())
    finally:
        os.umask(before)

    kept = {"drafts", "keys/garden-leaves", "keys/my-leaves", "rationales", "workshop-texts"}
    assert kept | {"records.sqlite"} <= set(found)
    assert reachable(places.data_folder()) == {}


def rationale_filed(keeper: Keeper) -> None:
    keeper.presses(KEY.Key_R, CTRL)
    dialog = QApplication.activeModalWidget()
    keeper.qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.number)
    keeper.presses(KEY.Key_Return)
    keeper.qtbot.waitUntil(lambda: dialog.show_pdf.isVisible(), timeout=60_000)
    dialog.close()


def test_the_window_copies_the_book_once_a_day(opens):
    keeper = opens()
    book = places.data_folder() / "records.sqlite"

    keeper.start.stand()
    keeper.qtbot.waitUntil(lambda: len(backups(book)) == 1, timeout=10_000)
    keeper.start.stand()
    keeper.start.close()

    assert len(backups(book)) == 1


def test_the_book_its_log_and_its_backups_are_for_their_owner_alone():
    file = places.data_folder() / "records.sqlite"
    before = os.umask(0)
    try:
        with Store.open(file) as book:
            book.save(sample_case(read_key(places.keys_folder() / SAMPLE_KEY)), None)
            back_up(file)
            found = modes(file.parent)
    finally:
        os.umask(before)

    assert {"records.sqlite", "records.sqlite-wal"} < set(found)
    assert {name for name, mode in found.items() if mode not in {"0o600", "0o700"}} == set()
