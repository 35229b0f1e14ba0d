"""The word index: find cases by the beginnings of words, newest first, in both databases.

Both sides see the same plain words (lower case, no accents, letters and digits only), so that
SQLite and PostgreSQL find the same cases.
"""

import unicodedata
from collections.abc import Iterable, Mapping

from sqlalchemy import (
    BigInteger,
    Column,
    Connection,
    MetaData,
    Select,
    Table,
    Text,
    delete,
    func,
    literal_column,
    select,
    text,
)
from sqlalchemy.dialects.postgresql import TSVECTOR

from idkey.store.record import Query

FIELDS = ("label", "name", "supplier", "rest")
"""What can be searched apart; PostgreSQL knows them as the weights A to D."""

_WEIGHTS = dict(zip(FIELDS, "ABCD", strict=True))
_fts = Table(
    "case_words",
    MetaData(),
    Column("rowid", BigInteger, primary_key=True),
    *(Column(name, Text) for name in FIELDS),
)
_vectors = Table(
    "case_words",
    MetaData(),
    Column("touched", BigInteger, primary_key=True),
    Column("words", TSVECTOR),
)
_PUT = {
    "sqlite": text(
        "INSERT INTO case_words (rowid, label, name, supplier, rest) "
        "VALUES (:touched, :label, :name, :supplier, :rest)"
    ),
    "postgresql": text(
        "INSERT INTO case_words (touched, words) VALUES (:touched, "
        "setweight(to_tsvector('simple', :label), 'A') || "
        "setweight(to_tsvector('simple', :name), 'B') || "
        "setweight(to_tsvector('simple', :supplier), 'C') || "
        "setweight(to_tsvector('simple', :rest), 'D'))"
    ),
}


def plain_words(said: str) -> tuple[str, ...]:
    """The words of a text in lower case without accents, signs and spaces left out."""
    bare = said
    for _ in range(2):  # the second round folds what the first has taken apart
        bare = unicodedata.normalize("NFKD", bare.casefold())
    kept = (sign if sign.isalnum() else "" if unicodedata.combining(sign) else " " for sign in bare)
    return tuple("".join(kept).split())


def put_words(connection: Connection, cases: Iterable[tuple[int, Mapping[str, str]]]) -> None:
    """Index cases: each one's `touched` number, with one text per field of `FIELDS`."""
    rows = [
        {"touched": touched} | {name: " ".join(plain_words(texts.get(name, ""))) for name in FIELDS}
        for touched, texts in cases
    ]
    if rows:
        connection.execute(_PUT[connection.dialect.name], rows)


def drop_words(connection: Connection, touched: int) -> None:
    """Take the case last touched by entry `touched` out of the index."""
    if connection.dialect.name == "sqlite":
        connection.execute(delete(_fts).where(_fts.c.rowid == touched))
    else:
        connection.execute(delete(_vectors).where(_vectors.c.touched == touched))


def touched_with(connection: Connection, query: Query) -> Select[tuple[int]] | None:
    """The `touched` numbers of cases with the words of `query`; None when it names no words."""
    asked = {
        "": plain_words(query.text),
        "label": plain_words(query.label),
        "name": plain_words(query.name),
        "supplier": plain_words(query.supplier),
    }
    asked = {field: words for field, words in asked.items() if words}
    if not asked:
        return None
    if connection.dialect.name == "sqlite":
        match = " AND ".join(
            f'{field and field + " : "}"{word}"*'
            for field, words in asked.items()
            for word in words
        )
        return select(_fts.c.rowid).where(literal_column("case_words").op("MATCH")(match))
    match = " & ".join(
        f"'{word}':*{_WEIGHTS.get(field, '')}" for field, words in asked.items() for word in words
    )
    wanted = func.to_tsquery(literal_column("'simple'"), match)
    return select(_vectors.c.touched).where(_vectors.c.words.op("@@")(wanted))
