"""How an animal came in: one intake for many animals of a shipment."""

import json
from dataclasses import dataclass, field

from sqlalchemy import Connection, delete, insert, select

from idkey.store.book import Store
from idkey.store.chain import append
from idkey.store.codec import Form, canonical, storable
from idkey.store.record import Papers
from idkey.store.schema import cases, chain, intakes
from idkey.store.selling import check_known, sale_in
from idkey.store.shelf import touch


@dataclass(frozen=True, slots=True, kw_only=True)
class Intake:
    """How an animal came in.

    Attributes:
        number: Number in the stock book, or of the shipment.
        date: Day it came in, ISO 8601.
        supplier: Who supplied it; for own breeding, say so and name the parents in `note`.
        label: Label of the shipment, verbatim.
        animals: How many animals came under that label; None when not counted.
        price: As the invoice prints it, currency included.
        papers: Permit fields the animal came with.
        note: Free text.
    """

    number: str
    date: str = ""
    supplier: str = ""
    label: str = ""
    animals: int | None = None
    price: str = ""
    papers: Papers = field(default_factory=Papers)
    note: str = ""

    def __post_init__(self) -> None:
        if not self.number.strip():
            raise ValueError("an intake needs a number")
        if self.animals is not None and self.animals < 1:
            raise ValueError("an intake has at least one animal")


_INTAKES = Form(Intake)


def put_intake(store: Store, case_id: str, intake: Intake, by: str = "") -> None:
    """Note how the animal of a case came in; a second time corrects it.

    Raises:
        Missing: There is no such case.
    """
    content = canonical({"intake": _INTAKES.plain(intake)})
    with store.database.writes() as connection:
        check_known(connection, case_id)
        if _intake(connection, case_id) == intake:
            return
        entry = append(
            connection, "intake", case_id, content=content, at=store.now(), by=storable(by)
        )["entry"]
        connection.execute(delete(intakes).where(intakes.c.case_id == case_id))
        row = {"case_id": case_id, "number": storable(intake.number), "entry": entry}
        connection.execute(insert(intakes).values(**row))
        touch(connection, case_id, entry)


def intake_of(store: Store, case_id: str) -> Intake | None:
    """How the animal of a case came in; None when not noted."""
    with store.database.reads() as connection:
        return _intake(connection, case_id)


def papers_of(store: Store, case_id: str) -> Papers | None:
    """The permit fields of an animal: those it came with, else those of its newest sale."""
    noted = intake_of(store, case_id)
    sold = store.sales(case_id)
    known = (noted.papers if noted else Papers(), *(sale.papers for sale in reversed(sold)))
    return next((papers for papers in known if papers != Papers()), None)


def papers_ever(store: Store, case_id: str) -> tuple[Papers, ...]:
    """Every state of permit fields that was noted for an animal, newest first, each once."""
    wanted = select(chain.c.kind, chain.c.content).where(
        chain.c.case_id == case_id, chain.c.kind.in_(("intake", "sale"))
    )
    with store.database.reads() as connection:
        found = connection.execute(wanted.order_by(chain.c.entry.desc())).all()
    noted = (_papers(kind, content) for kind, content in found)
    return tuple(dict.fromkeys(papers for papers in noted if papers != Papers()))


def _papers(kind: str, content: str) -> Papers:
    record = json.loads(content)
    return (_INTAKES.value_from(record["intake"]) if kind == "intake" else sale_in(record)).papers


def cases_of_intake(store: Store, number: str) -> tuple[str, ...]:
    """Ids of the cases that came in under that number, last touched first."""
    wanted = (
        select(intakes.c.case_id)
        .join(cases, cases.c.id == intakes.c.case_id)
        .where(intakes.c.number == number)
        .order_by(cases.c.touched.desc())
    )
    with store.database.reads() as connection:
        return tuple(connection.execute(wanted).scalars())


def _intake(connection: Connection, case_id: str) -> Intake | None:
    wanted = select(chain.c.content).join(intakes, intakes.c.entry == chain.c.entry)
    content = connection.execute(wanted.where(intakes.c.case_id == case_id)).scalar()
    return None if content is None else _INTAKES.value_from(json.loads(content)["intake"])
