"""Second opinions: blind determinations of an animal, and how far they agree with the first."""

from collections.abc import Mapping
from dataclasses import dataclass

from sqlalchemy import ColumnElement, Connection, insert, select

from idkey.engine.agreement import (
    CharacterAgreement,
    CharacterMatch,
    Kappa,
    by_character,
    kappa_between,
    matches,
)
from idkey.engine.sample import SAMPLE_ID
from idkey.model.case import Case
from idkey.store.book import Store
from idkey.store.chain import append
from idkey.store.codec import canonical, storable
from idkey.store.content import opened
from idkey.store.faults import StoreError
from idkey.store.record import VerdictSummary
from idkey.store.schema import cases, chain, opinions
from idkey.store.selling import check_known

Judged = tuple[Case, VerdictSummary | None]
"""A determination with its verdict."""

_FIRST, _SECOND = cases.alias("first_case"), cases.alias("second_case")


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """A second opinion beside the first determination.

    Attributes:
        first: Id of the first case.
        second: Id of the blind case.
        same_taxa: Whether both verdicts name the same taxa; None when one has no verdict yet.
        same_kind: Whether both verdicts say the same about the label.
        characters: Character by character.
    """

    first: str
    second: str
    same_taxa: bool | None
    same_kind: bool | None
    characters: tuple[CharacterMatch, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Agreement:
    """How far second opinions agree with the first ones, over all animals judged twice.

    Attributes:
        animals: Animals judged twice.
        decided: Those with two verdicts.
        same_taxa: Those whose verdicts name the same taxa.
        taxa: Cohen's kappa over the taxa named; None when it means nothing.
        kinds: Cohen's kappa over what the verdicts say about the label.
        characters: Per character, over the animals on which both saw something.
    """

    animals: int
    decided: int
    same_taxa: int
    taxa: Kappa | None
    kinds: Kappa | None
    characters: tuple[CharacterAgreement, ...]


def blind_case(case: Case, new_id: str, *, by: str, created: str) -> Case:
    """The case to hand to a second person: the label and the key, and nothing that was found.

    Sex and stage are left out too, since seeing them is part of the work.
    """
    return Case(
        id=new_id,
        key=case.key,
        key_version=case.key_version,
        key_digest=case.key_digest,
        claim=case.claim,
        aim=case.aim,
        by=by,
        created=created,
    )


def put_opinion(store: Store, case_id: str, opinion_id: str, by: str = "") -> None:
    """Note that case `opinion_id` is a blind determination of the animal of `case_id`.

    Raises:
        Missing: One of the cases is not saved.
        StoreError: It is the same case, or one of them is bound otherwise already.
    """
    with store.database.writes() as connection:
        check_known(connection, case_id)
        check_known(connection, opinion_id)
        bound = _first(connection, opinion_id)
        if bound == case_id:
            return
        if bound or case_id == opinion_id or _first(connection, case_id):
            raise StoreError(
                f"Case {opinion_id} cannot be a second opinion on case {case_id}.",
                "Take a case of its own that is bound to no other, and the first case itself.",
            )
        content = canonical({"opinion": {"format": 1, "of": case_id}})
        entry = append(
            connection, "opinion", opinion_id, content=content, at=store.now(), by=storable(by)
        )
        row = {"case_id": opinion_id, "of_case": case_id, "entry": entry["entry"]}
        connection.execute(insert(opinions).values(**row))


def first_of(store: Store, opinion_id: str) -> str:
    """The case that `opinion_id` is a second opinion on; empty when it is none."""
    with store.database.reads() as connection:
        return _first(connection, opinion_id)


def comparisons(
    store: Store, case_id: str, uncertainty: Mapping[str, float] | None = None
) -> tuple[Comparison, ...]:
    """Every second opinion on a case, in the order they were bound to it.

    Args:
        store: The book.
        case_id: The first case.
        uncertainty: Standard uncertainty of one measurement per character id, as its key says.
    """
    with store.database.reads() as connection:
        pairs = _pairs(connection, opinions.c.of_case == case_id)
    return tuple(_compared(first, second, uncertainty) for first, second in pairs)


def agreement(
    store: Store,
    *,
    key: str = "",
    uncertainty: Mapping[str, float] | None = None,
    since: str = "",
    until: str = "",
) -> Agreement:
    """How far second opinions agree with the first, for cases of those days.

    The sample case is no animal of the shop and is left out.

    Args:
        store: The book.
        key: Only cases made with that key, since keys name their characters alone; empty
            takes all.
        uncertainty: Standard uncertainty of one measurement per character id of that key.
        since: First day, ISO 8601; empty for no limit.
        until: Last day, included.
    """
    limits: list[ColumnElement[bool]] = [_FIRST.c.id != SAMPLE_ID]
    if key:
        limits.append(_FIRST.c.key == key)
    if since:
        limits.append(_FIRST.c.day >= since)
    if until:
        limits.append(_FIRST.c.day <= until)
    with store.database.reads() as connection:
        pairs = _pairs(connection, *limits)
    verdicts = [(one[1], two[1]) for one, two in pairs if one[1] and two[1]]
    taxa = [(tuple(sorted(a.taxa)), tuple(sorted(b.taxa))) for a, b in verdicts if a and b]
    return Agreement(
        animals=len(pairs),
        decided=len(verdicts),
        same_taxa=sum(one == other for one, other in taxa),
        taxa=kappa_between(taxa),
        kinds=kappa_between([(a.kind, b.kind) for a, b in verdicts if a and b]),
        characters=by_character([(one[0], two[0]) for one, two in pairs], uncertainty),
    )


def _first(connection: Connection, opinion_id: str) -> str:
    wanted = select(opinions.c.of_case).where(opinions.c.case_id == opinion_id)
    return connection.execute(wanted).scalar() or ""


def _pairs(connection: Connection, *limits: ColumnElement[bool]) -> list[tuple[Judged, Judged]]:
    one, other = chain.alias("one"), chain.alias("other")
    wanted = (
        select(one.c.content, other.c.content)
        .select_from(opinions)
        .join(_FIRST, _FIRST.c.id == opinions.c.of_case)
        .join(_SECOND, _SECOND.c.id == opinions.c.case_id)
        .join(one, one.c.entry == _FIRST.c.entry)
        .join(other, other.c.entry == _SECOND.c.entry)
        .where(*limits)
        .order_by(opinions.c.entry)
    )
    return [(opened(left), opened(right)) for left, right in connection.execute(wanted)]


def _compared(first: Judged, second: Judged, uncertainty: Mapping[str, float] | None) -> Comparison:
    (one, summary), (other, its_summary) = first, second
    same_taxa = same_kind = None
    if summary is not None and its_summary is not None:
        same_taxa = set(summary.taxa) == set(its_summary.taxa)
        same_kind = summary.kind == its_summary.kind
    return Comparison(
        first=one.id,
        second=other.id,
        same_taxa=same_taxa,
        same_kind=same_kind,
        characters=matches(one, other, uncertainty),
    )
