"""Permit fields of listed animals: the codes, and which fields are still empty or odd."""

import csv
from dataclasses import dataclass
from datetime import date
from functools import cache
from importlib.resources import files

from idkey.model.taxon import Permit
from idkey.store.record import Papers

CHECK_LOCALLY = (
    "Permit law differs by country and changes: check locally, with the authority or a licensed "
    "adviser, what this sale needs."
)
"""Stands under every list of missing fields."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Code:
    """One code of a permit form.

    Attributes:
        code: The letter.
        meaning: What it stands for, in our words.
        remark: When it is used, or not.
        as_of: Of when the list is; the purpose codes were under review for the meeting of the
            parties in late 2025, whose outcome is not in here.
        checked: Whether the entry was seen in a legal text or on the convention's own pages.
        authority: Where the code is laid down.
    """

    code: str
    meaning: str
    remark: str
    as_of: str
    checked: bool
    authority: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Gap:
    """A permit field that is empty or cannot be right.

    Attributes:
        field: Name of the field in `Papers`.
        problem: What is wrong, as one sentence.
    """

    field: str
    problem: str


@cache
def source_codes() -> tuple[Code, ...]:
    """CITES codes for where an animal comes from."""
    return _codes("cites_source.csv")


@cache
def purpose_codes() -> tuple[Code, ...]:
    """CITES codes for what a movement of an animal is for."""
    return _codes("cites_purpose.csv")


def gaps(papers: Papers, permit: Permit) -> tuple[Gap, ...]:
    """What is missing or odd in the permit fields of an animal, in the order of the form.

    It cannot say what a sale needs; show `CHECK_LOCALLY` beside it.

    Args:
        papers: The fields as filled in.
        permit: What the key says about the taxon; nothing is missed for an unlisted one.
    """
    found = [*_odd(papers)]
    if permit.listed:
        found += _missing(papers, permit)
    order = list(Papers.__dataclass_fields__)
    return tuple(sorted(found, key=lambda gap: order.index(gap.field)))


def _missing(papers: Papers, permit: Permit) -> list[Gap]:
    lists = [f"CITES Appendix {permit.cites}"] if permit.cites else []
    lists += [f"EU Annex {permit.eu}"] if permit.eu else []
    listed = " and ".join(lists)
    wanted = {
        "name": "The name as the papers write it is missing; it may be an older one.",
        "source": f"The source code is missing; the taxon stands in {listed}.",
        "document": f"The number of the permit or certificate is missing ({listed}).",
        "authority": "Who issued the document is missing.",
        "issued": "The date of the document is missing.",
        "origin": "The country of origin or the breeder is missing.",
        "mark": "What ties the papers to this animal (chip, ring, photo set) is missing.",
    }
    if permit.cites:
        wanted["appendix"] = f"The appendix is missing; the key says {permit.cites}."
        wanted["purpose"] = "The purpose code is missing; it is needed where a border is crossed."
    if permit.eu:
        wanted["annex"] = f"The annex is missing; the key says {permit.eu}."
    return [Gap(field=f, problem=p) for f, p in wanted.items() if not getattr(papers, f).strip()]


def _odd(papers: Papers) -> list[Gap]:
    found = []
    for field, codes in (("source", source_codes()), ("purpose", purpose_codes())):
        given = getattr(papers, field).strip().upper()
        known = {code.code: code for code in codes}
        if given and given not in known:
            letters = ", ".join(known)
            found.append(Gap(field=field, problem=f"{given!r} is no {field} code ({letters})."))
        elif given and known[given].remark.startswith("plants only"):
            found.append(Gap(field=field, problem=f"Source code {given} is for plants only."))
    strict = papers.appendix.strip().upper() == "I" or papers.annex.strip().upper() == "A"
    if papers.source.strip().upper() == "D" and not strict and (papers.appendix or papers.annex):
        problem = "Source code D is for Appendix I or Annex A; a captive-bred animal takes C or F."
        found.append(Gap(field="source", problem=problem))
    if papers.issued.strip() and not _is_date(papers.issued.strip()):
        found.append(Gap(field="issued", problem=f"{papers.issued!r} is no date (YYYY-MM-DD)."))
    return found


def _is_date(text: str) -> bool:
    try:
        date.fromisoformat(text)
    except ValueError:
        return False
    return True


def _codes(name: str) -> tuple[Code, ...]:
    table = files("idkey.store").joinpath("codes", name).read_text("utf-8")
    return tuple(
        Code(**{**row, "checked": row["checked"] == "yes"})  # type: ignore[arg-type]
        for row in csv.DictReader(table.splitlines())
    )
