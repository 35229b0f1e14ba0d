"""The newest revision of each case in short: what lists and searches read."""

import json
from collections.abc import Mapping
from typing import Any

from sqlalchemy import Connection, RowMapping, Select, delete, func, insert, select, union_all

from idkey.engine.sample import SAMPLE_ID
from idkey.model.case import Case
from idkey.store.codec import canonical, storable
from idkey.store.content import opened
from idkey.store.day import iso_day
from idkey.store.record import CaseRow, Query, VerdictSummary
from idkey.store.schema import case_taxa, cases, chain, intakes, opinions, sales
from idkey.store.words import drop_words, put_words, touched_with

_BATCH = 500


def put_case(
    connection: Connection, case: Case, summary: VerdictSummary | None, entry: Mapping[str, Any]
) -> None:
    """Let lists show `case` as the chain's `entry` left it."""
    row = _short(case, summary)
    row |= {"revision": entry["number"], "entry": entry["entry"], "touched": entry["entry"]}
    row |= {"at": entry["at"], "by": entry["by"]}
    known = connection.execute(select(cases).where(cases.c.id == case.id)).mappings().first()
    if known is None:
        row["day"] = row["day"] or entry["at"][:10]
        connection.execute(insert(cases).values(id=case.id, **row))
    else:
        row["day"] = row["day"] or known["day"]
        drop_words(connection, known["touched"])
        connection.execute(cases.update().where(cases.c.id == case.id).values(**row))
        connection.execute(delete(case_taxa).where(case_taxa.c.case_id == case.id))
    taxa = dict.fromkeys(storable(taxon) for taxon in (summary.taxa if summary else ()))
    for taxon in taxa:
        connection.execute(insert(case_taxa).values(case_id=case.id, taxon=taxon))
    put_words(connection, [(entry["entry"], _texts(connection, case, summary))])


def touch(connection: Connection, case_id: str, entry: int) -> None:
    """Bring a case to the top of the lists after something was attached to it."""
    wanted = select(cases.c.touched, chain.c.content).join(chain, chain.c.entry == cases.c.entry)
    touched, content = connection.execute(wanted.where(cases.c.id == case_id)).one()
    drop_words(connection, touched)
    connection.execute(cases.update().where(cases.c.id == case_id).values(touched=entry))
    put_words(connection, [(entry, _texts(connection, *opened(content)))])


def index_words(connection: Connection) -> None:
    """Fill the word index of a book that has none yet."""
    wanted = select(cases.c.touched, chain.c.content).join(chain, chain.c.entry == cases.c.entry)
    wanted = wanted.order_by(cases.c.touched).limit(_BATCH)
    last = 0
    while found := connection.execute(wanted.where(cases.c.touched > last)).all():
        put_words(connection, [(n, _texts(connection, *opened(text))) for n, text in found])
        last = found[-1].touched


def rows(connection: Connection, query: Query) -> tuple[CaseRow, ...]:
    """The cases that answer `query`, last touched first."""
    wanted = select(cases)
    words = touched_with(connection, query)
    if words is not None:
        wanted = wanted.where(cases.c.touched.in_(words))
    for column, value in (("label_id", query.label_id), ("kind", query.verdict)):
        if value:
            wanted = wanted.where(cases.c[column] == value)
    if query.since:
        wanted = wanted.where(cases.c.day >= query.since)
    if query.until:
        wanted = wanted.where(cases.c.day <= query.until)
    if query.taxon:
        named = select(case_taxa.c.case_id).where(case_taxa.c.taxon == query.taxon)
        wanted = wanted.where(cases.c.id.in_(named))
    return _rows(connection, wanted.order_by(cases.c.touched.desc()).limit(query.limit))


def outcomes(connection: Connection, label_id: str, excluding: str, key: str) -> dict[str, int]:
    """How many established cases of a label turned out to be each taxon, most first.

    Second opinions and the sample case do not count; for a second opinion, the first does not
    either, since it is about the same animal.
    """
    first = select(opinions.c.of_case).where(opinions.c.case_id == excluding)
    wanted = (
        select(case_taxa.c.taxon, func.count().label("cases"))
        .join(cases, cases.c.id == case_taxa.c.case_id)
        .where(cases.c.label_id == label_id, cases.c.level == "established")
        .where(cases.c.id.not_in((excluding, SAMPLE_ID)))
        .where(cases.c.id.not_in(select(opinions.c.case_id)))
        .where(cases.c.id.not_in(first))
        .group_by(case_taxa.c.taxon)
        .order_by(func.count().desc(), case_taxa.c.taxon)
    )
    if key:
        wanted = wanted.where(cases.c.key == key)
    return {row.taxon: row.cases for row in connection.execute(wanted)}


def _short(case: Case, summary: VerdictSummary | None) -> dict[str, Any]:
    claim = case.claim
    return {
        "key": storable(case.key),
        "label": storable(claim.text),
        "label_id": storable(claim.label),
        "supplier": storable(claim.supplier),
        "day": iso_day(claim.date) or iso_day(case.created) or "",
        "kind": summary.kind if summary else "",
        "level": summary.level if summary else "",
        "name": storable(summary.name) if summary else "",
        "cautions": canonical(summary.cautions if summary else ()),
        "findings": len(case.findings),
    }


def _texts(connection: Connection, case: Case, summary: VerdictSummary | None) -> Mapping[str, str]:
    numbers = connection.execute(
        union_all(
            select(sales.c.number).where(sales.c.case_id == case.id),
            select(intakes.c.number).where(intakes.c.case_id == case.id),
        )
    )
    claim = case.claim
    remarks = (finding.note for finding in case.findings)
    rest = (case.id, case.note, case.by, claim.origin, *remarks, *numbers.scalars())
    named = (summary.name, *summary.taxa) if summary else ()
    return {
        "label": f"{claim.text} {claim.label}",
        "name": " ".join(named),
        "supplier": claim.supplier,
        "rest": " ".join(rest),
    }


def _rows(connection: Connection, wanted: Select[Any]) -> tuple[CaseRow, ...]:
    return tuple(_row(found) for found in connection.execute(wanted).mappings())


def _row(found: RowMapping) -> CaseRow:
    same = ("revision", "label", "label_id", "supplier", "day", "kind", "level", "name")
    fields = {name: found[name] for name in (*same, "findings", "by", "at")}
    return CaseRow(case_id=found["id"], cautions=tuple(json.loads(found["cautions"])), **fields)
