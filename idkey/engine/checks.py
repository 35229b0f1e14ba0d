"""Running the published statements of a key."""

from collections.abc import Iterable
from dataclasses import dataclass

from idkey.engine.applicable import parts
from idkey.engine.labels import label_entry, match_labels
from idkey.engine.spans import printed
from idkey.model.case import Specimen
from idkey.model.check import Check, CheckKind
from idkey.model.couplet import Sees
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows, Spans


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckResult:
    """How a published statement stands against the matrix.

    Attributes:
        check: The statement.
        wrongly_excluded: Taxa it leaves that the matrix excludes.
        wrongly_kept: Taxa it excludes that the matrix keeps.
    """

    check: Check
    wrongly_excluded: tuple[str, ...] = ()
    wrongly_kept: tuple[str, ...] = ()

    @property
    def passed(self) -> bool:
        """Whether the matrix agrees."""
        return not (self.wrongly_excluded or self.wrongly_kept)


def run_checks(key: Key) -> tuple[CheckResult, ...]:
    """One result per statement that can be computed (matrix and name statements).

    Printed ranges are taken as they stand, because the statement does so too; judging an animal
    widens them.
    """
    return tuple(
        _matrix(key, check) if check.kind is CheckKind.MATRIX else _names(key, check)
        for check in key.checks
        if check.kind in (CheckKind.MATRIX, CheckKind.NAME)
    )


def failed_checks(key: Key) -> tuple[CheckResult, ...]:
    """The results that do not pass."""
    return tuple(result for result in run_checks(key) if not result.passed)


def left_by(key: Key, sees: Iterable[Sees], specimen: Specimen) -> tuple[str, ...]:
    """Taxa that can show all of `sees` as printed; what is not scored never excludes."""
    asked = tuple(sees)
    return tuple(
        taxon.id for taxon in key.taxa if all(_shows(key, taxon.id, s, specimen) for s in asked)
    )


def _matrix(key: Key, check: Check) -> CheckResult:
    left = left_by(key, check.sees, Specimen(sex=check.sex, stage=check.stage))
    return CheckResult(
        check=check,
        wrongly_excluded=tuple(t for t in check.remain if t not in left),
        wrongly_kept=tuple(t for t in check.exclude if t in left),
    )


def _names(key: Key, check: Check) -> CheckResult:
    covered: set[str] = set()
    for name in check.names:
        matches = [m for m in match_labels(key, name) if m.exact]
        entry = label_entry(key, matches[0].label) if matches else None
        covered |= set(entry.covers) if entry else set()
    return CheckResult(
        check=check,
        wrongly_excluded=tuple(t for t in check.remain if t not in covered),
        wrongly_kept=tuple(t for t in check.exclude if t in covered),
    )


def _shows(key: Key, taxon: str, sees: Sees, specimen: Specimen) -> bool:
    scores = key.cells.get((taxon, sees.character), ())
    held = parts(scores, key.character[sees.character], specimen)
    return any(score is None or _agrees(score, sees) for _, score in held)


def _agrees(score: Score, sees: Sees) -> bool:
    value = score.value
    if isinstance(value, Inapplicable):
        return False
    if isinstance(value, Shows):
        return bool(set(value.states) & set(sees.states))
    return _meets(value, sees)


def _meets(value: Spans, sees: Sees) -> bool:
    """Whether the printed range and the asked one overlap."""
    ends = [x for x in (sees.low, sees.high) if x is not None]
    if len(ends) == 2 and ends[0] == ends[1]:
        return printed(value, ends[0])
    low_ok = sees.high is None or value.low is None or value.low <= sees.high
    high_ok = sees.low is None or value.high is None or value.high >= sees.low
    return low_ok and high_ok
