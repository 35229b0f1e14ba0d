"""Rationales that were handed out: which document, for which state of a case, for which sale."""

import json
from dataclasses import dataclass

from sqlalchemy import ColumnElement, Connection, insert, select

from idkey.store.book import Store
from idkey.store.chain import append
from idkey.store.codec import Form, canonical, storable
from idkey.store.faults import Missing
from idkey.store.schema import chain, rationales


@dataclass(frozen=True, slots=True, kw_only=True)
class Rationale:
    """A document that was handed out.

    Attributes:
        digest: SHA-256 of its bytes, as 64 hexadecimal digits.
        case_id: The case it is about.
        revision: The revision it states.
        sale: Number of the sale it went with; empty when none.
        file: Name of the file, without its folder.
    """

    digest: str
    case_id: str
    revision: int
    sale: str = ""
    file: str = ""


_RATIONALES = Form(Rationale)


def put_rationale(store: Store, rationale: Rationale, by: str = "") -> None:
    """Note that a rationale was handed out; the same document again adds nothing.

    Raises:
        Missing: The book has no such revision of the case.
    """
    with store.database.writes() as connection:
        if _found(connection, rationales.c.digest == rationale.digest):
            return
        wanted = select(chain.c.entry).where(
            chain.c.case_id == rationale.case_id,
            chain.c.kind == "case",
            chain.c.number == rationale.revision,
        )
        if connection.execute(wanted).first() is None:
            raise Missing(
                f"The record book has no revision {rationale.revision} of case "
                f"{rationale.case_id}.",
                "Save the case before handing out its rationale.",
            )
        content = canonical({"rationale": _RATIONALES.plain(rationale)})
        entry = append(
            connection,
            "rationale",
            rationale.case_id,
            content=content,
            at=store.now(),
            by=storable(by),
        )
        row = {name: getattr(rationale, name) for name in ("digest", "case_id", "revision")}
        row |= {"sale": storable(rationale.sale), "entry": entry["entry"]}
        connection.execute(insert(rationales).values(**row))


def rationales_of(store: Store, case_id: str) -> tuple[Rationale, ...]:
    """The rationales of a case that were handed out, oldest first."""
    with store.database.reads() as connection:
        return _found(connection, rationales.c.case_id == case_id)


def rationale_with(store: Store, digest: str) -> Rationale | None:
    """The rationale whose document has that SHA-256; None when it never was handed out here."""
    with store.database.reads() as connection:
        found = _found(connection, rationales.c.digest == digest)
    return found[0] if found else None


def _found(connection: Connection, which: ColumnElement[bool]) -> tuple[Rationale, ...]:
    entries = select(rationales.c.entry).where(which)
    wanted = select(chain.c.content).where(chain.c.entry.in_(entries)).order_by(chain.c.entry)
    texts = connection.execute(wanted).scalars()
    return tuple(_RATIONALES.value_from(json.loads(text)["rationale"]) for text in texts)
