"""What unsaved changes of a key do: to its checks, its couplets, its weaknesses, its cases."""

from collections.abc import Iterator
from dataclasses import dataclass

from idkey.engine.audit import Remark, audit
from idkey.engine.checks import run_checks
from idkey.engine.grower import Tick, silent
from idkey.errors import IdKeyError
from idkey.formats.compare import Change, next_version
from idkey.model.key import Key
from idkey.report.key_changes import content_changes
from idkey.report.language import ENGLISH, Language
from idkey.report.recorded import judged
from idkey.report.rerun_words import altered_words
from idkey.store.book import Store
from idkey.store.record import StoredCase, VerdictSummary
from idkey.store.reruns import says_otherwise, stored_cases


@dataclass(frozen=True, slots=True, kw_only=True)
class Impact:
    """What changes do to a key itself.

    Attributes:
        changes: What changed, the words of each a line; without the version.
        broken: Ids of the published checks that passed and fail now, or are new and fail.
        mended: Ids of the checks that failed and pass now.
        passing: How many checks pass now.
        checks: How many can be computed now.
        worse: Weaknesses that were not there, couplets against the scores among them.
        better: Weaknesses that are gone.
        version: The version these changes ask for.
    """

    changes: tuple[Change, ...]
    broken: tuple[str, ...]
    mended: tuple[str, ...]
    passing: int
    checks: int
    worse: tuple[Remark, ...]
    better: tuple[Remark, ...]
    version: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseImpact:
    """A recorded case that would be judged otherwise.

    Attributes:
        stored: The case as it was saved.
        before: What the saved key says about it.
        after: What the changed key says; None when it cannot judge it any more.
    """

    stored: StoredCase
    before: VerdictSummary
    after: VerdictSummary | None


def impact(old: Key, new: Key, language: Language = ENGLISH, *, tick: Tick = silent) -> Impact:
    """What the changes from `old` to `new` do; neither has errors.

    Args:
        old: The key as saved.
        new: The key as changed.
        language: Of the words.
        tick: Told (done, total) now and then; is where a stop is heard.
    """
    found = content_changes(old, new, language)
    before = {result.check.id: result.passed for result in run_checks(old)}
    after = {result.check.id: result.passed for result in run_checks(new)}
    weak_before, weak_after = audit(old, tick), audit(new, tick)
    return Impact(
        changes=found,
        broken=tuple(c for c, passed in after.items() if not passed and before.get(c, True)),
        mended=tuple(c for c, passed in after.items() if passed and before.get(c) is False),
        passing=sum(after.values()),
        checks=len(after),
        worse=_missing(weak_after, weak_before),
        better=_missing(weak_before, weak_after),
        version=next_version(old.version, found),
    )


def _missing(some: tuple[Remark, ...], others: tuple[Remark, ...]) -> tuple[Remark, ...]:
    """Those of `some` that are about nothing `others` are about."""
    known = {(remark.weakness, remark.about) for remark in others}
    return tuple(remark for remark in some if (remark.weakness, remark.about) not in known)


def case_impacts(store: Store, old: Key, new: Key, tick: Tick) -> Iterator[CaseImpact]:
    """Recorded cases whose name, verdict or cautions change; nothing is saved.

    Each case is judged with the key as it was and as it is now, so that what an older version
    said otherwise does not count.

    Args:
        store: The record book.
        old: The key as saved.
        new: The key as changed; it has no errors.
        tick: Told (done, total) after each case; is where a stop is heard.
    """
    cases = [one for one in stored_cases(store, old.id) if one.summary is not None]
    for done, stored in enumerate(cases, start=1):
        before = _summary(store, old, stored)
        after = _summary(store, new, stored)
        if before is not None and (after is None or says_otherwise(before, after)):
            yield CaseImpact(stored=stored, before=before, after=after)
        tick(done, len(cases))


def _summary(store: Store, key: Key, stored: StoredCase) -> VerdictSummary | None:
    try:
        return VerdictSummary.of(judged(store, key, stored.case))
    except (IdKeyError, KeyError, ValueError):  # it speaks of what this key does not have
        return None


def case_words(one: CaseImpact, language: Language = ENGLISH) -> tuple[str, ...]:
    """What would be said otherwise about a case, as sentences."""
    if one.after is None:
        return (language.say("It speaks of something this key no longer has."),)
    return altered_words(one.before, one.after, language)
