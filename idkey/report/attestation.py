"""What somebody has shown they can tell apart, on paper: exactly that, and no more."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime

from idkey import __version__
from idkey.drill.progress import SHOWN, PairRecord, pair_records
from idkey.engine.intervals import wilson
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.report.names import character_name, name_of, scientific_names
from idkey.store.drill_log import Exercise, Trial

_MOST = 1000


class ThinEvidence(IdKeyError):  # noqa: N818 - named for what is wrong
    """Too little was shown for anything to be attested."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Attested:
    """One pair that was shown to be told apart.

    Attributes:
        names: Accepted names of both taxa.
        right: Right decisions among the latest trials.
        trials: The latest trials.
        low: Lower limit of the share right, 95 % Wilson interval.
        high: Upper limit.
        since: Day of the first of those trials.
        until: Day of the last.
        characters: Names of the characters it was decided on.
    """

    names: tuple[str, str]
    right: int
    trials: int
    low: float
    high: float
    since: str
    until: str
    characters: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Attestation:
    """What a document says.

    Attributes:
        person: Initials or alias.
        at: When it was written, ISO 8601 in UTC.
        key: Id of the key.
        title: Its title.
        version: Its version.
        key_digest: Its digest.
        pairs: Pairs shown to be told apart, the firmest first; never empty.
        others: Pairs that were practised and are not attested.
        elsewhere: Trials on other versions of the key, which do not count.
        entries: Entries of the person in the drill log.
        log_digest: Digest of the last entry, which seals all before it.
        threshold: Lower limit that was asked for.
        italic: Names set in italics.
        program: Version of the program.
        language: Code of the language.
    """

    person: str
    at: str
    key: str
    title: str
    version: str
    key_digest: str
    pairs: tuple[Attested, ...]
    others: int
    elsewhere: int
    entries: int
    log_digest: str
    threshold: float
    italic: tuple[str, ...]
    program: str = __version__
    language: str = "en"


def attestation_of(
    key: Key,
    trials: Sequence[Trial],
    now: datetime,
    *,
    threshold: float = SHOWN,
    language: Language = ENGLISH,
) -> Attestation:
    """What one person has shown on this very version of a key.

    Args:
        key: The key.
        trials: The person's trials with the key, as kept, oldest first.
        now: The time, aware of its zone.
        threshold: Lower limit of the share right that a pair must reach.
        language: Language of the document.

    Raises:
        ThinEvidence: No pair reaches the threshold.
        ValueError: The trials are of several people.
    """
    _check_person(trials)
    same, records = _counted(key, trials, threshold, language)
    return Attestation(
        person=trials[-1].person,
        at=now.astimezone(UTC).isoformat(timespec="seconds").replace("+00:00", "Z"),
        key=key.id,
        title=key.title,
        version=key.version,
        key_digest=key.digest,
        pairs=tuple(_attested(key, record) for record in records if record.shown),
        others=sum(not record.shown for record in records),
        elsewhere=_decisions(trials) - _decisions(same),
        entries=trials[-1].number,
        log_digest=trials[-1].digest,
        threshold=threshold,
        italic=scientific_names(key),
        language=language.code,
    )


def _check_person(trials: Sequence[Trial]) -> None:
    if len({trial.person for trial in trials}) > 1:
        raise ValueError("an attestation is about one person")


def _counted(
    key: Key, trials: Sequence[Trial], threshold: float, language: Language
) -> tuple[list[Trial], tuple[PairRecord, ...]]:
    """The trials on this version of the key, and what they show; refused when that is thin."""
    same = [trial for trial in trials if trial.key_digest == key.digest]
    records = pair_records(same, threshold=threshold)
    if not any(record.shown for record in records):
        newer = len(same) < len(trials)
        person = trials[-1].person if trials else ""
        advice = language.say(
            "Practise pairs on this version of the key; {n} right decisions on a pair without a "
            "mistake are the least that counts.",
            n=fewest_right(threshold),
        )
        best = records[0] if records else None
        said = _refusal(key, best, person, language, newer=newer, threshold=threshold)
        raise ThinEvidence(said, advice)
    return same, records


def _decisions(trials: Sequence[Trial]) -> int:
    """How many decisions on a pair there are among the trials."""
    return sum(trial.exercise is Exercise.PAIR for trial in trials)


def fewest_right(threshold: float = SHOWN) -> int:
    """Right decisions without a mistake from which a pair counts as told apart."""
    for number in range(1, _MOST):
        if wilson(number, number).low >= threshold:
            return number
    return _MOST


def _refusal(
    key: Key,
    best: PairRecord | None,
    person: str,
    language: Language,
    *,
    newer: bool,
    threshold: float,
) -> str:
    """Why nothing is attested; `newer` is whether there are trials on other versions."""
    if not person:
        return language.say("Nothing can be attested: no answer is in the drill log.")
    if best is None and newer:
        return language.say(
            "Nothing can be attested for {person}: no pair was practised on this version of the "
            "key.",
            person=person,
        )
    if best is None:
        return language.say(
            "Nothing can be attested for {person}: no pair was practised.", person=person
        )
    return language.say(
        "Nothing can be attested for {person} yet: the firmest pair, {names}, was told apart in "
        "{right} of {n} pictures, so the share right may be as low as {low}, and {threshold} is "
        "asked for.",
        person=person,
        names=language.join([name_of(key, taxon) for taxon in best.pair]),
        right=best.right,
        n=best.trials,
        low=language.share(best.interval.low),
        threshold=language.share(threshold),
    )


def _attested(key: Key, record: PairRecord) -> Attested:
    return Attested(
        names=(name_of(key, record.pair[0]), name_of(key, record.pair[1])),
        right=record.right,
        trials=record.trials,
        low=record.interval.low,
        high=record.interval.high,
        since=record.since,
        until=record.until,
        characters=tuple(character_name(key, one) for one in record.characters),
    )
