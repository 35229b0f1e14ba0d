"""What the evidence supports about the animal and about its label, and no more."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from idkey.engine import naming
from idkey.engine.cautions import FAINT
from idkey.engine.evidence import Flags
from idkey.engine.labels import claimed
from idkey.engine.partition import (
    FEWER,
    FIT,
    SEPARATORS,
    SUPPORT,
    Grounds,
    carried,
    refuted,
    unmet,
)
from idkey.engine.result import Caution, Level, OpenName, Stake, Unmet, Verdict, VerdictKind
from idkey.engine.weighing import RATIO
from idkey.model.case import Case
from idkey.model.label import Label
from idkey.model.taxon import Danger, Taxon

MISFIT = 0.01
"""p-value below which the animal may be none of the key's taxa."""

LARGEST_GROUP = 3
"""More taxa than this are no result."""

_NO_STAKES = (VerdictKind.HOLDS, VerdictKind.OUTSIDE)

LIKELY = 0.9
"""Support from which the leader is named with cf."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Identity:
    """How far a name is carried: its level, its rows, what is missing."""

    level: Level
    rows: tuple[int, ...]
    missing: tuple[Unmet, ...] = ()


def verdict(held: Grounds, case: Case, warned: Sequence[Caution] = ()) -> Verdict:
    """The verdict on a case.

    Args:
        held: The evidence.
        case: The case, for its claim.
        warned: Cautions in force; while the name is open their taxa count as possible.
    """
    identity = _identity(held)
    label = claimed(held.matrix.key, case)
    taxa = tuple(held.matrix.key.taxa[row] for row in identity.rows)
    kind = _kind(held, identity, label)
    others = ~_mask(held, identity.rows)
    return Verdict(
        kind=kind,
        level=identity.level,
        taxa=tuple(taxon.id for taxon in taxa),
        name=_name(held, identity, taxa),
        support=float(held.weighing.support[list(identity.rows)].sum()),
        answers=held.answers,
        fit=held.fit,
        separated=int(held.counts[others].min()) if others.any() else 0,
        unmet=identity.missing,
        stakes=() if kind in _NO_STAKES else _stakes(held, identity, label, warned),
        contradicted=_against_claim(held, label) if kind is VerdictKind.CONTRADICTED else (),
    )


def _mask(held: Grounds, rows: tuple[int, ...]) -> Flags:
    mask = np.zeros(len(held.matrix.taxa), bool)
    mask[list(rows)] = True
    return mask


def _identity(held: Grounds) -> _Identity:
    if held.answers >= FEWER and (
        (held.fit is not None and held.fit < MISFIT) or held.weighing.background > 0.5
    ):
        return _Identity(level=Level.OUTSIDE, rows=(held.leader,))
    alone = _mask(held, (held.leader,))
    missing = unmet(held, alone, answers=held.answers_wanted)
    if not missing:
        return _Identity(level=Level.ESTABLISHED, rows=(held.leader,))
    rows = _smallest_group(held)
    if rows and not held.more and held.fit is not None and held.fit >= FIT:
        return _Identity(level=Level.GROUP, rows=rows, missing=missing)
    return _Identity(level=Level.OPEN, rows=(held.leader,), missing=missing)


def _smallest_group(held: Grounds) -> tuple[int, ...]:
    """The fewest best-supported taxa that hold enough support, and rivals close to them.

    Close is: not firmly set apart, and not very unlikely. Empty when that is no small group.
    """
    support = held.weighing.support[:-1]
    ranked = np.argsort(-support, kind="stable")
    enough = int(np.argmax(np.cumsum(support[ranked]) >= SUPPORT))
    if support[ranked[: enough + 1]].sum() < SUPPORT:
        return ()
    near = [
        int(r) for r in ranked[enough + 1 :] if support[r] >= FAINT and held.counts[r] < SEPARATORS
    ]
    rows = (*(int(row) for row in ranked[: enough + 1]), *near)
    return rows if 2 <= len(rows) <= LARGEST_GROUP else ()


def _kind(held: Grounds, identity: _Identity, label: Label | None) -> VerdictKind:
    if identity.level is Level.OUTSIDE:
        return VerdictKind.OUTSIDE
    if label is None:
        return VerdictKind.LABEL_UNKNOWN
    covered = _covered(held, label)
    if identity.level is not Level.OPEN:
        return _settled(held, _mask(held, identity.rows), covered, label)
    if covered.any() and not label.covers_outside and refuted(held, covered):
        return VerdictKind.CONTRADICTED
    if covered.sum() > 1 and carried(held, covered):
        return VerdictKind.TOO_BROAD
    return VerdictKind.OPEN


def _settled(held: Grounds, named: Flags, covered: Flags, label: Label) -> VerdictKind:
    """The kind once one taxon or a small group is carried."""
    if not label.covers and not label.covers_outside:
        return VerdictKind.TOO_BROAD
    if not (named & covered).any():
        against = named.sum() == 1 or refuted(held, covered)
        return VerdictKind.CONTRADICTED if against else VerdictKind.OPEN
    if (named & ~covered).any():
        return VerdictKind.OPEN
    one = covered.sum() == 1 and not label.covers_outside
    return VerdictKind.HOLDS if one else VerdictKind.TOO_BROAD


def _covered(held: Grounds, label: Label) -> Flags:
    return np.array([taxon in label.covers for taxon in held.matrix.taxa], bool)


def _name(held: Grounds, identity: _Identity, taxa: tuple[Taxon, ...]) -> OpenName:
    if identity.level is Level.OUTSIDE:
        return naming.UNNAMED
    if identity.level is Level.ESTABLISHED:
        return naming.species(taxa[0])
    if identity.level is Level.GROUP:
        shared = {taxon.group for taxon in taxa}
        return naming.group(taxa) if len(shared) == 1 and taxa[0].group else naming.either(taxa)
    leader = held.matrix.key.taxa[held.leader]
    genus = np.array([t.genus == leader.genus for t in held.matrix.key.taxa], bool)
    family = np.array([t.family == leader.family for t in held.matrix.key.taxa], bool)
    support = held.weighing.support[:-1]
    if carried(held, genus):
        likely = support[held.leader] >= LIKELY and leader.epithet
        return naming.compared(leader) if likely else naming.unknown_species(leader.genus)
    if leader.family and carried(held, family):
        likely = float(support[genus].sum()) >= LIKELY
        return naming.unknown_genus(leader.family, leader.genus if likely else "")
    return naming.UNNAMED


def _stakes(
    held: Grounds, identity: _Identity, label: Label | None, warned: Sequence[Caution]
) -> tuple[Stake, ...]:
    """What a wrong label costs: something worse, other papers, another climate."""
    key = held.matrix.key
    claim = [key.taxon[taxon] for taxon in label.covers if taxon in key.taxon] if label else []
    if not claim:
        return ()
    left = _left(held, identity, warned)
    found = []
    if max(map(_danger, left)) > max(map(_danger, claim)):
        found.append(Stake.HAZARD)
    if {t.listed for t in left} - {t.listed for t in claim}:
        found.append(Stake.PERMIT)
    if {t.climate for t in left} - {t.climate for t in claim}:
        found.append(Stake.CLIMATE)
    return tuple(found)


def _left(held: Grounds, identity: _Identity, warned: Sequence[Caution]) -> list[Taxon]:
    """What the evidence leaves: the named taxa, or all that are still possible."""
    key, rows = held.matrix.key, set(identity.rows)
    if identity.level is Level.OPEN:
        rows |= {int(row) for row in np.flatnonzero(held.weighing.support[:-1] >= 1 - SUPPORT)}
        rows |= {held.matrix.row[taxon] for caution in warned for taxon in caution.taxa}
    return [key.taxa[row] for row in sorted(rows)]


def _danger(taxon: Taxon) -> int:
    return list(Danger).index(taxon.hazard.level)


def _against_claim(held: Grounds, label: Label | None) -> tuple[str, ...]:
    """Characters that set the leader apart from every taxon the label covers, or from most."""
    if label is None:
        return ()
    covered = _covered(held, label)
    found: dict[str, int] = {}
    for one in held.weighing.evidence:
        apart = held.apart.get(one.group)
        if apart is not None and one.counts:
            ratio = one.likelihood[held.leader] / one.likelihood[:-1][covered]
            found[one.finding.character] = int((ratio >= RATIO).sum())
    ranked = sorted(found.items(), key=lambda item: -item[1])
    return tuple(character for character, count in ranked if count)
