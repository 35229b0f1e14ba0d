"""Books that an earlier form of the program wrote open in this one, with all they hold."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import text

from idkey.store.backups import backups
from idkey.store.book import Store
from idkey.store.database import Database
from idkey.store.opening import stored_version
from idkey.store.people import Person, people_of, put_person
from idkey.store.record import Papers, Query, Sale
from idkey.store.schema import HEAD
from idkey.store.upgrading import upgrade
from tests.store.cases import EXAMPLE, example
from tests.store.conftest import BACKENDS

FORM_1 = Path(__file__).with_name("form0001.sql")
"""What the program wrote when its newest step was 0001."""


@pytest.fixture(params=BACKENDS)
def old(request: pytest.FixtureRequest, tmp_path: Path) -> Path | str:
    """A book of form 0001: two cases, three revisions, a sale, a draft and a setting."""
    if request.param == "sqlite":
        place: Path | str = tmp_path / "old.sqlite3"
    else:
        place = request.getfixturevalue("empty_database")()
    database = Database(place)
    if not database.sqlite:
        with database.writes() as connection:
            connection.execute(text("DROP SCHEMA public CASCADE"))
            connection.execute(text("CREATE SCHEMA public"))
    with database.writes() as connection:
        upgrade(connection, "0001")
        for line in FORM_1.read_text("utf-8").splitlines():
            if database.sqlite or "case_words" not in line:
                connection.exec_driver_sql(line)
    database.close()
    return place


def test_a_book_of_form_1_keeps_cases_sales_and_a_whole_chain(old: Path | str):
    with Store.open(old) as store:
        newest = store.case(EXAMPLE.id)

        assert store.verify() == ()
        assert [finding.character for finding in newest.case.findings] == [
            "sternum_shape",
            "telson_colour",
        ]
        assert newest.summary is not None
        assert newest.summary.name == "Pandinus imperator"
        assert store.case(EXAMPLE.id, 1).case == EXAMPLE
        assert store.case("case-000002").case == example(2, note="it's calm")
        assert store.sales(EXAMPLE.id) == (
            Sale(
                number="2025-0042",
                date="2025-11-08",
                price="45.00 EUR",
                buyer="B-1733",
                papers=Papers(source="C"),
            ),
        )
        assert (store.draft("note"), store.setting("window")) in {("unfin", "800x600"), ("", "")}


def test_saving_the_same_case_to_an_old_book_makes_no_revision(old: Path | str):
    with Store.open(old) as store:
        assert store.save(example(2, note="it's calm"), None).number == 1


def test_a_book_of_form_1_takes_what_came_later(old: Path | str):
    with Store.open(old) as store:
        put_person(store, Person(initials="RB"))

        assert people_of(store) == (Person(initials="RB"),)


def test_the_words_of_an_old_file_are_still_found(tmp_path: Path):
    file = tmp_path / "old.sqlite3"
    make_old(file)
    with Store.open(file) as store:
        assert [row.case_id for row in store.search(Query(text="daylight"))] == [EXAMPLE.id]


def test_a_file_is_backed_up_before_it_changes_form(tmp_path: Path):
    file = tmp_path / "old.sqlite3"
    make_old(file)
    Store.open(file).close()
    (backup,) = backups(file)
    with closing(sqlite3.connect(backup.file)) as copy:
        version = copy.execute("SELECT version_num FROM alembic_version").fetchone()[0]
    Store.open(file).close()

    assert version == "0001"
    assert len(backups(file)) == 1, "a book that is up to date needs no backup to open"


def test_a_step_that_fails_leaves_the_old_book_as_it_was(tmp_path: Path):
    file = tmp_path / "old.sqlite3"
    make_old(file)
    with closing(sqlite3.connect(file)) as raw:
        raw.execute("CREATE TABLE pictures (id)")  # the last table the step makes
        raw.commit()

    with pytest.raises(Exception, match="pictures"):
        Store.open(file)
    database = Database(file)
    with database.reads() as connection:
        assert stored_version(connection, "here") == "0001" != HEAD
        names = connection.execute(text("SELECT name FROM sqlite_master")).scalars().all()
    database.close()
    assert "people" not in names


@pytest.mark.parametrize("filled", [False, True])
def test_the_table_of_pictures_goes_only_when_it_is_empty(tmp_path: Path, filled: bool):
    file = tmp_path / "old.sqlite3"
    make_old(file, "0003")
    if filled:
        with closing(sqlite3.connect(file)) as raw, raw:
            raw.execute("INSERT INTO pictures VALUES ('x', 'image/png', x'00', '')")
    Store.open(file).close()

    with closing(sqlite3.connect(file)) as raw:
        found = raw.execute("SELECT name FROM sqlite_master WHERE name = 'pictures'").fetchall()
    assert bool(found) == filled


def make_old(file: Path, form: str = "0001") -> None:
    database = Database(file)
    with database.writes() as connection:
        upgrade(connection, "0001")
        for line in FORM_1.read_text("utf-8").splitlines():
            connection.exec_driver_sql(line)
        upgrade(connection, form)
    database.close()
