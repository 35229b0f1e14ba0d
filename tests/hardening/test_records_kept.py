"""Records are copied by themselves, and are for the eyes of their owner."""

import os
import stat
from pathlib import Path

import pytest

from idkey import places
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.formats.folder import read_key
from idkey.store.backups import back_up, backups
from idkey.store.book import Store

pytestmark = pytest.mark.skipif(os.name == "nt", reason="modes of Unix")


def modes(folder: Path) -> dict[str, str]:
    """Mode per file and folder, in octal."""
    return {
        file.relative_to(folder).as_posix(): oct(stat.S_IMODE(file.stat().st_mode))
        for file in sorted(folder.rglob("*"))
    }


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
