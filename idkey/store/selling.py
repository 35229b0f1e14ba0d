"""Sales of a case. The chain holds their content, apart from the buyer, who can be erased."""

import json
import secrets
from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from sqlalchemy import Connection, select, update
from sqlalchemy import insert as insert_row

from idkey.store.chain import append
from idkey.store.codec import Form, canonical, digest, storable
from idkey.store.faults import Missing
from idkey.store.record import ChainFault, Sale
from idkey.store.schema import cases, chain, sales
from idkey.store.shelf import touch

_SALES = Form(Sale)


def put_sale(connection: Connection, case_id: str, sale: Sale, *, at: str, by: str) -> None:
    """Add a sale to a case, or correct the one with the same number.

    The chain keeps a salted digest of the buyer: it proves who was noted as long as the name is
    kept, and says nothing once name and salt are erased.

    Raises:
        Missing: There is no such case.
    """
    check_known(connection, case_id)
    sale = replace(sale, number=storable(sale.number), buyer=storable(sale.buyer))
    if sale in sales_of(connection, case_id):
        return
    salt = secrets.token_hex(16) if sale.buyer else ""
    content = {
        "sale": _SALES.plain(replace(sale, buyer="")),
        "buyer_digest": buyer_digest(sale.buyer, salt),
    }
    entry = append(connection, "sale", case_id, content=canonical(content), at=at, by=by)
    row = {"entry": entry["entry"], "buyer": sale.buyer, "salt": salt}
    same = (sales.c.case_id == case_id) & (sales.c.number == sale.number)
    if not connection.execute(update(sales).where(same).values(**row)).rowcount:
        connection.execute(insert_row(sales).values(case_id=case_id, number=sale.number, **row))
    touch(connection, case_id, entry["entry"])


def check_known(connection: Connection, case_id: str) -> None:
    """Refuse to attach something to a case that is not saved.

    Raises:
        Missing: There is no such case.
    """
    if connection.execute(select(cases.c.id).where(cases.c.id == case_id)).first() is None:
        raise Missing(f"The record book has no case {case_id}.", "Save the case first.")


def sales_of(connection: Connection, case_id: str) -> tuple[Sale, ...]:
    """The sales of a case, by number."""
    wanted = (
        select(sales.c.buyer, chain.c.content)
        .join(chain, chain.c.entry == sales.c.entry)
        .where(sales.c.case_id == case_id)
        .order_by(sales.c.number)
    )
    found = connection.execute(wanted).all()
    return tuple(replace(sale_in(json.loads(content)), buyer=buyer) for buyer, content in found)


def cases_of_sale(connection: Connection, number: str) -> tuple[str, ...]:
    """Ids of the cases that went out with that sale, in the order they were attached."""
    wanted = select(sales.c.case_id).where(sales.c.number == number).order_by(sales.c.entry)
    return tuple(connection.execute(wanted).scalars())


def buyer_digest(buyer: str, salt: str) -> str:
    """SHA-256 of salt and buyer, as 64 hexadecimal digits; empty without a buyer."""
    return digest(f"{salt}:{buyer}") if buyer else ""


def sale_in(record: Mapping[str, Any]) -> Sale:
    """The sale in an entry of the chain, without its buyer."""
    return _SALES.value_from(record["sale"])


def faults_of_buyers(connection: Connection) -> Iterator[ChainFault]:
    """Sales whose buyer is not the one noted when the sale was saved; an erased one is no fault."""
    wanted = select(sales, chain.c.content).join(chain, chain.c.entry == sales.c.entry)
    for row in connection.execute(wanted.order_by(sales.c.entry)).mappings():
        noted = json.loads(row["content"])["buyer_digest"]
        if row["buyer"] and buyer_digest(row["buyer"], row["salt"]) != noted:
            problem = f"The buyer of sale {row['number']} is not the one that was noted."
            yield ChainFault(entry=row["entry"], case_id=row["case_id"], number=0, problem=problem)
