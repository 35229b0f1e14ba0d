"""What happens before a record book is used: is it ours, is it whole, is it up to date."""

from sqlalchemy import Connection, inspect, text

from idkey.store.backups import back_up, newest_whole
from idkey.store.database import APPLICATION_ID, Database
from idkey.store.faults import Damaged, TooNew
from idkey.store.files import check_file
from idkey.store.schema import HEAD


def prepare(database: Database) -> None:
    """Check the book, and make or upgrade its tables; an older book is backed up before.

    Raises:
        Damaged: The file is cut short, broken, or not a record book; names a whole backup.
        TooNew: A newer program wrote it; it is left as it is.
        StoreError: It cannot be reached, read or written.
    """
    version = _checked_version(database)
    if version == HEAD:
        return
    if int(version) > int(HEAD):
        raise TooNew(
            f"The record book {database.place} has form {version}; this program knows {HEAD}.",
            "Install the newer program; the book was left as it is.",
        )
    if database.file is not None and int(version):
        back_up(database.file)
    _upgrade(database)


def stored_version(connection: Connection, place: str) -> str:
    """The number of the newest step the book has seen; ``"0000"`` for an empty one.

    Raises:
        Damaged: It holds tables of something else.
    """
    names = set(inspect(connection).get_table_names())
    if "alembic_version" in names and "chain" in names:
        version = connection.execute(text("SELECT version_num FROM alembic_version")).scalar()
        if version is not None and str(version).isdigit():
            return str(version)
    elif not names:
        return "0000"
    raise Damaged(
        f"{place} holds tables, but not those of a record book.",
        "Choose another place; it was left as it is.",
    )


def _checked_version(database: Database) -> str:
    try:
        if database.file is not None:
            check_file(database.file)
        with database.reads() as connection:
            return stored_version(connection, database.place)
    except Damaged as err:
        backup = None if database.file is None else newest_whole(database.file)
        if backup is None:
            raise
        raise Damaged(
            err.problem,
            f"Restore the backup of {backup.at}; the damaged file will be kept beside it.",
            backup=backup.file,
        ) from err


def _upgrade(database: Database) -> None:
    # Alembic takes a third of a second to import; a book that is up to date does without it.
    from idkey.store.upgrading import upgrade

    with database.writes() as connection:
        upgrade(connection)
        if database.sqlite:
            connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")
