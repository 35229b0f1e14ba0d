"""Backups rotate, and the way back from one loses nothing."""

import shutil
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.store.backups import (
    NEWEST,
    Backup,
    back_up,
    backup_folder,
    backups,
    due,
    restore,
    surplus,
)
from idkey.store.book import Store
from idkey.store.faults import Busy, Damaged, Missing, StoreError, Unwritable
from idkey.store.record import Query, Sale
from tests.store.cases import EXAMPLE, example
from tests.store.conftest import Clock

DAY = timedelta(days=1)
MOMENT = datetime(2025, 11, 4, 9, 30, tzinfo=UTC)


@pytest.fixture
def book(tmp_path: Path) -> Path:
    """A closed book with one case."""
    file = tmp_path / "idkey.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
    return file


def made(days: list[int]) -> list[Backup]:
    return [
        Backup(file=Path(f"{n}"), number=n, moment=MOMENT + day * DAY, size_bytes=0)
        for n, day in enumerate(days, start=1)
    ]


def test_a_backup_of_a_book_in_use_holds_all_that_was_saved(tmp_path: Path, clock: Clock):
    with Store.open(tmp_path / "idkey.sqlite3", clock=clock) as store:
        store.save(EXAMPLE, None)
        backup = store.back_up()
        store.save(example(2), None)
    assert backup is not None
    with Store.open(backup.file) as copy:
        kept = copy.recent()

    assert [row.case_id for row in kept] == [EXAMPLE.id]
    assert backup.at == "2025-11-04 09:00 UTC"
    assert backup.file.stat().st_mode & 0o777 == 0o600


def test_a_second_backup_on_the_same_day_waits_unless_asked_for(tmp_path: Path, clock: Clock):
    with Store.open(tmp_path / "idkey.sqlite3", clock=clock) as store:
        first = store.back_up(only_if_due=True)
        second = store.back_up(only_if_due=True)
        third = store.back_up()
        clock.moment += DAY
        fourth = store.back_up(only_if_due=True)

    assert (first is None, second is None, third is None, fourth is None) == (
        False,
        True,
        False,
        False,
    )


def test_a_clock_set_back_makes_a_backup_due_and_its_number_still_leads(book: Path):
    early = back_up(book, MOMENT)
    assert due(book, MOMENT - 30 * DAY)
    late = back_up(book, MOMENT - 30 * DAY)

    assert [backup.number for backup in backups(book)] == [2, 1]
    assert (early.number, late.number) == (1, 2)
    assert not due(book, MOMENT - 30 * DAY)


@given(st.lists(st.integers(-400, 400), max_size=40))
def test_surplus_never_takes_the_newest_and_keeps_few(days: list[int]):
    all_made = made(days)
    gone = surplus(all_made)
    kept = [b for b in all_made if b not in gone]

    assert all_made[-NEWEST:] == kept[-NEWEST:]
    assert len(kept) <= 3 + 7 + 5 + 12
    assert not surplus(kept)


def test_a_year_of_daily_backups_leaves_days_weeks_and_months():
    every_day = made(list(range(365)))
    gone = set(surplus(every_day))
    kept = [b for b in every_day if b not in gone]
    ages = [364 - (b.moment - MOMENT).days for b in kept]

    assert ages[-7:] == [6, 5, 4, 3, 2, 1, 0]
    assert ages[0] > 300
    assert len(kept) < 25


def test_restore_brings_back_the_newest_whole_backup_and_keeps_what_was_there(book: Path):
    back_up(book)
    with Store.open(book) as store:
        store.save(example(2), None)
    broken = back_up(book)
    broken.file.write_bytes(broken.file.read_bytes()[:5000])
    book.write_bytes(b"x" * 3000)

    restored = restore(book)
    with Store.open(book) as store:
        assert [row.case_id for row in store.recent()] == [EXAMPLE.id]
        assert store.verify() == ()
    assert restored.backup == backups(book)[1].file
    assert restored.replaced is not None
    assert restored.replaced.read_bytes() == b"x" * 3000
    assert book.stat().st_mode & 0o777 == 0o600


def test_a_second_restore_keeps_both_books_it_replaced(book: Path):
    back_up(book)
    first, second = restore(book), restore(book)

    assert first.replaced != second.replaced
    assert all(each.replaced and each.replaced.exists() for each in (first, second))


def test_restore_puts_back_a_book_that_is_gone(book: Path):
    back_up(book)
    book.unlink()

    assert restore(book).replaced is None
    with Store.open(book) as store:
        assert len(store.recent()) == 1


def test_the_log_of_a_crash_does_not_run_over_the_restored_book(tmp_path: Path):
    book, crashed = tmp_path / "a" / "idkey.sqlite3", tmp_path / "b" / "idkey.sqlite3"
    with Store.open(book) as store:
        store.save(EXAMPLE, None)
        store.back_up()
        for number in range(5):
            store.save(example(number), None)
        shutil.copytree(book.parent, crashed.parent)
    crashed.write_bytes(crashed.read_bytes()[:3000])
    log = crashed.with_name(crashed.name + "-wal")
    had_log = log.stat().st_size > 0
    moved = backup_folder(crashed)
    restore(crashed)

    assert had_log
    assert not log.exists()
    with Store.open(crashed) as store:
        assert [row.case_id for row in store.recent()] == [EXAMPLE.id]
        assert store.verify() == ()
    assert (moved / "idkey.replaced-1").exists()


def test_restore_refuses_while_a_program_has_the_book_open(book: Path):
    back_up(book)
    with Store.open(book) as store:
        store.save(example(2), None)
        with pytest.raises(Busy, match="is open in a program"):
            restore(book)

        assert len(store.recent()) == 2


def test_restore_without_a_backup_says_where_it_looked(book: Path):
    with pytest.raises(Missing, match="no whole backup") as caught:
        restore(book)
    assert str(backup_folder(book)) in caught.value.problem


def test_restore_from_a_broken_or_missing_file_leaves_the_book(book: Path, tmp_path: Path):
    before = book.read_bytes()
    (tmp_path / "broken").write_bytes(b"x" * 3000)

    with pytest.raises(Damaged):
        restore(book, tmp_path / "broken")
    with pytest.raises(Unwritable):
        restore(book, tmp_path / "nowhere")
    assert book.read_bytes() == before
    assert not (tmp_path / "nowhere").exists()


def test_opening_a_damaged_book_names_the_backup_to_restore(book: Path):
    whole = back_up(book, MOMENT)
    book.write_bytes(book.read_bytes()[:20000])

    with pytest.raises(Damaged) as caught:
        Store.open(book)
    assert caught.value.backup == whole.file
    assert caught.value.remedy == (
        "Restore the backup of 2025-11-04 09:30 UTC; the damaged file will be kept beside it."
    )


def test_a_damaged_book_makes_no_backup_and_drops_none(book: Path):
    back_up(book)
    page = bytearray(book.read_bytes())
    page[8192:40960] = b"\x55" * 32768
    book.write_bytes(page)

    with pytest.raises(StoreError):
        back_up(book)
    assert len(backups(book)) == 1


def test_files_of_other_names_are_no_backups(book: Path):
    back_up(book)
    for name in ("idkey.000002.99999999T000000Z.backup", "other.000009.20250101T000000Z.backup"):
        (backup_folder(book) / name).touch()

    assert len(backups(book)) == 1


def test_a_book_moves_from_a_file_to_a_server_and_back_with_its_chain(
    place: Path | str, tmp_path: Path
):
    with Store.open(tmp_path / "file.sqlite3") as file:
        file.save(EXAMPLE, None)
        file.save(replace(EXAMPLE, note="second look"), None, by="MT")
        file.attach_sale(EXAMPLE.id, Sale(number="7", buyer="B-1"))
        assert file.copy_to(place) == 3
        with Store.open(place) as there:
            there.copy_to(tmp_path / "back.sqlite3")
        with Store.open(tmp_path / "back.sqlite3") as back:
            assert back.revisions(EXAMPLE.id) == file.revisions(EXAMPLE.id)
            assert back.search(Query(text="second")) == file.recent()
            assert back.sales(EXAMPLE.id) == file.sales(EXAMPLE.id)
            assert back.verify() == ()


def test_a_book_with_records_is_not_copied_into(store: Store, tmp_path: Path):
    store.save(EXAMPLE, None)
    store.copy_to(tmp_path / "copy.sqlite3")

    with pytest.raises(StoreError, match="holds records already"):
        store.copy_to(tmp_path / "copy.sqlite3")
