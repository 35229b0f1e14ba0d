"""Permit fields of listed animals: the codes, and which fields are still empty or odd."""

import csv
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from functools import cache
from importlib.resources import files

from idkey.model.taxon import Permit
from idkey.store.record import Papers


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


class Fault(StrEnum):
    """What is wrong with a permit field."""

    MISSING = "missing"
    UNKNOWN_CODE = "unknown_code"
    PLANTS_ONLY = "plants_only"
    STRICTEST_ONLY = "strictest_only"
    NO_DATE = "no_date"


@dataclass(frozen=True, slots=True, kw_only=True)
class Gap:
    """A permit field that is empty or cannot be right.

    Attributes:
        field: Name of the field in `Papers`.
        fault: What is wrong.
        given: What stands there; empty when it is missing.
    """

    field: str
    fault: Fault
    given: str = ""


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

    It cannot say what a sale needs: whoever shows it says "check locally" beside it.

    Args:
        papers: The fields as filled in.
        permit: What the key says about the taxon; nothing is missed for an unlisted one.
    """
    found = [*_odd(papers)]
    if permit.listed:
        wanted = [*_ALWAYS, *(("appendix", "purpose") if permit.cites else ())]
        wanted += ["annex"] if permit.eu else []
        missing = (name for name in wanted if not getattr(papers, name).strip())
        found += [Gap(field=name, fault=Fault.MISSING) for name in missing]
    order = list(Papers.__dataclass_fields__)
    return tuple(sorted(found, key=lambda gap: order.index(gap.field)))


def strictest(permits: Iterable[Permit]) -> Permit:
    """One permit that asks for all that any of `permits` asks for; unlisted without any."""
    listed = [permit for permit in permits if permit.listed]
    cites = min((one.cites for one in listed if one.cites), default="", key=len)
    return Permit(cites=cites, eu=min((one.eu for one in listed if one.eu), default=""))


_ALWAYS = ("name", "source", "document", "authority", "issued", "origin", "mark")


def _odd(papers: Papers) -> Iterator[Gap]:
    for field, codes in (("source", source_codes()), ("purpose", purpose_codes())):
        given = getattr(papers, field).strip().upper()
        known = {code.code: code for code in codes}
        if given and given not in known:
            yield Gap(field=field, fault=Fault.UNKNOWN_CODE, given=given)
        elif given and known[given].remark.startswith("plants only"):
            yield Gap(field=field, fault=Fault.PLANTS_ONLY, given=given)
    strict = papers.appendix.strip().upper() == "I" or papers.annex.strip().upper() == "A"
    if papers.source.strip().upper() == "D" and not strict and (papers.appendix or papers.annex):
        yield Gap(field="source", fault=Fault.STRICTEST_ONLY, given="D")
    issued = papers.issued.strip()
    if issued and not _is_date(issued):
        yield Gap(field="issued", fault=Fault.NO_DATE, given=issued)


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
