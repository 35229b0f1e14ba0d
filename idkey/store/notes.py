"""Named texts per place of work: drafts and settings."""

from sqlalchemy import ColumnElement, Connection, Table, delete, insert, select

from idkey.store.codec import storable


def noted(connection: Connection, table: Table, key: tuple[str, str]) -> str | None:
    """The text kept under `key`, which is (station, name); None when there is none."""
    found = connection.execute(select(table.c.value).where(_matches(table, key))).scalar()
    return None if found is None else str(found)


def note(connection: Connection, table: Table, key: tuple[str, str], value: str | None) -> None:
    """Keep `value` under `key`, which is (station, name); None forgets what was kept."""
    connection.execute(delete(table).where(_matches(table, key)))
    if value is not None:
        station, name = key
        connection.execute(insert(table).values(station=station, name=name, value=storable(value)))


def _matches(table: Table, key: tuple[str, str]) -> ColumnElement[bool]:
    station, name = key
    return (table.c.station == station) & (table.c.name == name)
