"""Opening: files that are ours, older, newer, broken, or somebody else's."""

import shutil
import sqlite3
import stat
from contextlib import closing
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory

from idkey.store.book import Store
from idkey.store.faults import Damaged, StoreError, TooNew, Unwritable
from idkey.store.files import in_use
from idkey.store.schema import HEAD, metadata
from idkey.store.upgrading import config
from tests.store.cases import EXAMPLE


def test_the_newest_step_shipped_is_the_one_the_program_expects():
    assert ScriptDirectory.from_config(config()).get_current_head() == HEAD


def test_the_steps_lead_to_the_tables_the_program_uses(store: Store):
    def ours(_object: object, name: str | None, kind: str, *_more: object) -> bool:
        return not (kind in ("table", "index") and "case_words" in str(name))

    with store.database.reads() as connection:
        context = MigrationContext.configure(connection, opts={"include_object": ours})

        assert compare_metadata(context, metadata) == []


def test_only_the_owner_can_read_the_book(tmp_path: Path):
    file = tmp_path / "new" / "idkey.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
        modes = {each.name: stat.S_IMODE(each.stat().st_mode) for each in file.parent.iterdir()}

    assert set(modes.values()) == {0o600}
    assert stat.S_IMODE(file.parent.stat().st_mode) == 0o700


def test_every_connection_writes_durably_and_minds_references(tmp_path: Path):
    with Store.open(tmp_path / "a.sqlite3") as store, store.database.reads() as connection:
        found = {
            name: connection.exec_driver_sql(f"PRAGMA {name}").scalar()
            for name in ("journal_mode", "synchronous", "foreign_keys", "secure_delete")
        }

    assert found == {
        "journal_mode": "wal",
        "synchronous": 2,
        "foreign_keys": 1,
        "secure_delete": 1,
    }


def test_a_book_of_a_newer_program_is_left_as_it_is(tmp_path: Path):
    file = tmp_path / "a.sqlite3"
    Store.open(file).close()
    with closing(sqlite3.connect(file)) as raw:
        raw.execute("UPDATE alembic_version SET version_num = '9000'")
        raw.commit()
    before = file.read_bytes()

    with pytest.raises(TooNew, match="has form 9000; this program knows") as caught:
        Store.open(file)
    assert caught.value.remedy.startswith("Install the newer program")
    assert file.read_bytes() == before


def test_a_text_file_is_refused_and_left_as_it_is(tmp_path: Path):
    file = tmp_path / "a.sqlite3"
    file.write_text("shopping list\n" * 20)

    with pytest.raises(Damaged, match="not a SQLite file"):
        Store.open(file)
    assert file.read_text().startswith("shopping list")


def test_a_database_of_another_program_is_refused(tmp_path: Path):
    file = tmp_path / "a.sqlite3"
    with closing(sqlite3.connect(file)) as raw:
        raw.execute("CREATE TABLE tills (number)")

    with pytest.raises(Damaged, match="not those of a record book"):
        Store.open(file)


@pytest.mark.parametrize("share", [0.02, 0.5, 0.9, 0.999])
def test_a_file_cut_short_is_found_at_the_start(tmp_path: Path, share: float):
    file = tmp_path / "a.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
    whole = file.read_bytes()
    file.write_bytes(whole[: int(len(whole) * share)])

    with pytest.raises(Damaged) as caught:
        Store.open(file)
    assert "restore the newest backup" in caught.value.remedy


def test_a_page_overwritten_inside_is_found_at_the_start(tmp_path: Path):
    file = tmp_path / "a.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
    broken = bytearray(file.read_bytes())
    broken[8192:20480] = b"\x55" * 12288
    file.write_bytes(broken)

    with pytest.raises(Damaged):
        Store.open(file)


@pytest.mark.parametrize(
    ("place", "kind", "problem"),
    [
        ("mysql://host/name", StoreError, "cannot lie in 'mysql'"),
        ("sqlite://", StoreError, "needs a file"),
        ("ht!tp://[", StoreError, "cannot be read"),
    ],
)
def test_an_address_that_makes_no_sense_is_refused(
    place: str, kind: type[StoreError], problem: str
):
    with pytest.raises(kind, match=problem) as caught:
        Store.open(place)
    assert "postgresql://" in caught.value.remedy


def test_a_folder_is_no_book(tmp_path: Path):
    with pytest.raises(Unwritable, match="is a folder"):
        Store.open(tmp_path)


def test_a_book_below_a_file_cannot_be_made(tmp_path: Path):
    (tmp_path / "file").touch()

    with pytest.raises(Unwritable, match="cannot be made"):
        Store.open(tmp_path / "file" / "book.sqlite3")


def test_a_path_may_be_given_as_text_or_as_sqlite_address(tmp_path: Path):
    with Store.open(str(tmp_path / "a.sqlite3")) as store:
        store.save(EXAMPLE, None)
    with Store.open(f"sqlite:///{tmp_path / 'a.sqlite3'}") as store:
        assert store.case(EXAMPLE.id).case == EXAMPLE


def test_a_book_in_use_is_known_from_one_left_by_a_crash(tmp_path: Path):
    file = tmp_path / "a" / "idkey.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
        shutil.copytree(file.parent, tmp_path / "crashed")
        used = in_use(file)
        crashed = in_use(tmp_path / "crashed" / "idkey.sqlite3")

    assert (used, crashed) == (True, False)
    assert not in_use(file)


def test_a_second_program_opens_a_book_that_is_in_use(tmp_path: Path):
    file = tmp_path / "idkey.sqlite3"
    with Store.open(file) as first:
        first.save(EXAMPLE, None)
        with Store.open(file) as second:
            assert second.case(EXAMPLE.id).case == EXAMPLE
        first.save(EXAMPLE, None, by="still writing")

        assert first.verify() == ()


def test_what_was_saved_before_a_crash_is_there_after_it(tmp_path: Path):
    file = tmp_path / "a" / "idkey.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
        shutil.copytree(file.parent, tmp_path / "crashed")
    with Store.open(tmp_path / "crashed" / "idkey.sqlite3") as store:
        assert store.case(EXAMPLE.id).case == EXAMPLE
        assert store.verify() == ()
