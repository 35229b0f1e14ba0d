"""Rows of the line-up: candidates, the fold, what was ruled out."""

from dataclasses import dataclass, replace
from enum import StrEnum

from PySide6.QtCore import QCoreApplication

from idkey.app.bench.session import Session
from idkey.engine.result import Candidate
from idkey.model.taxon import Danger, Taxon
from idkey.report.language import Language

translate = QCoreApplication.translate


class RowKind(StrEnum):
    """What a row of the line-up is."""

    STANDING = "standing"
    OUTSIDE = "outside"
    FOLD = "fold"
    GONE = "gone"


@dataclass(frozen=True, slots=True, kw_only=True)
class LineupRow:
    """One row of the line-up.

    Attributes:
        kind: What it is.
        taxon: Taxon id; empty for the fold and for "not in this key".
        name: Name, or the text of the fold.
        support: Share from 0 to 1.
        hazard: Whether it is medically significant.
        painful: Whether its sting or bite is painful without being significant.
        listed: Whether it is permit-listed.
        conflicts: How many findings it cannot explain.
        reason: Why it is ruled out; empty for others.
        unfolded: Whether the fold is open.
        leads: Whether it has the most support.
    """

    kind: RowKind
    taxon: str = ""
    name: str = ""
    support: float = 0.0
    hazard: bool = False
    painful: bool = False
    listed: bool = False
    conflicts: int = 0
    reason: str = ""
    unfolded: bool = False
    leads: bool = False

    def spoken(self, language: Language) -> str:
        """The row as a sentence for readers that speak."""
        if self.kind is RowKind.FOLD:
            return self.name
        parts = [self.name, language.share(self.support)]
        if self.hazard:
            parts.append(translate("lineup", "medically significant"))
        if self.listed:
            parts.append(translate("lineup", "permit-listed"))
        if self.kind is RowKind.GONE:
            parts.append(translate("lineup", "ruled out: {reason}").format(reason=self.reason))
        elif self.conflicts:
            parts.append(translate("lineup", "in conflict with a finding"))
        return ", ".join(parts)


def lineup_rows(session: Session, *, unfolded: bool) -> tuple[LineupRow, ...]:
    """The rows of a session; what is ruled out only when `unfolded`."""
    assessment = session.reasoned.assessment
    standing = [_row(session, c, RowKind.STANDING) for c in assessment.standing]
    if standing and session.case.findings and not session.reading:
        first = standing[0]
        standing[0] = replace(first, leads=True)
    rows = [*standing, _outside(session)]
    gone = assessment.ruled_out
    if gone:
        text = translate("lineup", "{n} ruled out").format(n=len(gone))
        rows.append(LineupRow(kind=RowKind.FOLD, name=text, unfolded=unfolded))
    if unfolded:
        rows += [_row(session, c, RowKind.GONE) for c in gone]
    return tuple(rows)


def ruled_out_by(session: Session, candidate: Candidate) -> str:
    """The finding that speaks most plainly against a taxon, as a short phrase."""
    if not candidate.conflicts:
        return ""
    clear = [c for c in candidate.conflicts if not c.near] or list(candidate.conflicts)
    character = session.key.character[clear[0].finding.character]
    more = len(candidate.conflicts) - 1
    if not more:
        return character.name
    return translate("lineup", "{character} and {n} more").format(character=character.name, n=more)


def _row(session: Session, candidate: Candidate, kind: RowKind) -> LineupRow:
    taxon: Taxon = session.key.taxon[candidate.taxon]
    return LineupRow(
        kind=kind,
        taxon=taxon.id,
        name=taxon.name,
        support=candidate.support,
        hazard=taxon.dangerous,
        painful=taxon.hazard.level is Danger.PAINFUL,
        listed=taxon.listed,
        conflicts=len(candidate.conflicts),
        reason=ruled_out_by(session, candidate) if kind is RowKind.GONE else "",
    )


def _outside(session: Session) -> LineupRow:
    return LineupRow(
        kind=RowKind.OUTSIDE,
        name=translate("lineup", "Something not in this key"),
        support=session.reasoned.assessment.background,
    )
