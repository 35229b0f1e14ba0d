"""Brings the tables of a record book to the newest form."""

from pathlib import Path

from alembic.command import upgrade as alembic_upgrade
from alembic.config import Config
from sqlalchemy import Connection, text

from idkey.store.schema import HEAD

FOLDER = Path(__file__).parent / "migrations"
_LOCK = 0x69644B79  # any number will do that only this program uses


def config(connection: Connection | None = None) -> Config:
    """Where Alembic finds the shipped steps, and the connection they run on."""
    found = Config(attributes={"connection": connection})
    found.set_main_option("script_location", str(FOLDER).replace("%", "%%"))
    return found


def upgrade(connection: Connection, target: str = HEAD) -> None:
    """Apply the steps that are missing up to `target`, all or none; the caller commits."""
    if connection.dialect.name == "postgresql":
        connection.execute(text("SELECT pg_advisory_xact_lock(:key)"), {"key": _LOCK})
    alembic_upgrade(config(connection), target)
