"""Whether each score fits its character."""

from collections.abc import Iterator

from idkey.formats.draft import Draft, Entry
from idkey.formats.known import Known, inverted
from idkey.formats.problem import Problem, Severity
from idkey.formats.taxon_document import ScoreDoc

_SAYS = "Give shows, low and high, or inapplicable: true."


def checked_scores(draft: Draft, known: Known) -> Iterator[Problem]:
    """Mistakes in the scores of all taxa."""
    for entries in draft.scores.values():
        seen: set[tuple[object, ...]] = set()
        strangers: set[str] = set()
        for entry in entries:
            if entry.id in strangers:
                continue
            if said := known.unknown("character", entry.id):
                strangers.add(entry.id)
                yield entry.yaml.problem_at_key(entry.loc[:2], *said)
                continue
            yield from _score(entry, known)
            place = (entry.id, entry.doc.sex, entry.doc.stage)
            if place in seen:
                yield entry.yaml.problem(
                    entry.loc,
                    f"'{entry.id}' is scored twice for the same sex and stage.",
                    "Join the scores, or give each its sex or stage.",
                )
            seen.add(place)


def _score(entry: Entry[ScoreDoc], known: Known) -> Iterator[Problem]:
    doc, yaml, loc = entry.doc, entry.yaml, entry.loc
    numbers = (doc.low, doc.high, doc.mean, doc.sd)
    spans = any(number is not None for number in numbers)
    if (doc.shows is not None) + (spans or doc.n is not None) + bool(doc.inapplicable) != 1:
        yield _nothing_or_too_much(entry)
    elif doc.shows is not None:
        yield from _states(entry, known)
    elif not doc.inapplicable:
        yield from _spans(entry, known)
    if not doc.sources:
        yield yaml.problem(
            loc,
            f"The score of '{entry.id}' names no source.",
            "Add sources, or say where it comes from with basis: memory and a note.",
            severity=Severity.WARNING,
        )
    elif not known.sources.issuperset(doc.sources) or len(doc.sources) > 1:
        yield from known.each("source", doc.sources, yaml, (*loc, "sources"))


def _nothing_or_too_much(entry: Entry[ScoreDoc]) -> Problem:
    doc = entry.doc
    if doc.shows is None and not doc.inapplicable:
        return entry.yaml.problem(entry.loc, f"The score of '{entry.id}' says nothing.", _SAYS)
    problem = f"The score of '{entry.id}' says two different things."
    return entry.yaml.problem(entry.loc, problem, _SAYS.replace("Give", "Keep one of"))


def _states(entry: Entry[ScoreDoc], known: Known) -> Iterator[Problem]:
    doc, yaml, loc = entry.doc, entry.yaml, entry.loc
    trait = known.trait(entry.id)
    if trait.numeric:
        problem = f"'{entry.id}' is a {trait.kind}, so it is scored with numbers, not states."
        yield yaml.problem((*loc, "shows"), problem, "Give low and high.")
    elif trait.numeric is not None and doc.shows is not None:
        named = set(doc.shows)
        if not named.issubset(trait.states) or len(named) < len(doc.shows):
            yield from known.states(entry.id, doc.shows, yaml, (*loc, "shows"))


def _spans(entry: Entry[ScoreDoc], known: Known) -> Iterator[Problem]:
    doc, yaml, loc = entry.doc, entry.yaml, entry.loc
    trait = known.trait(entry.id)
    if trait.numeric is False:
        problem = f"'{entry.id}' has states, so it is scored with shows, not with numbers."
        yield yaml.problem(loc, problem, f"States: {', '.join(trait.states)}.")
        return
    if doc.low is None and doc.high is None and doc.mean is None and doc.sd is None:
        yield yaml.problem(loc, f"The score of '{entry.id}' says nothing.", _SAYS)
    elif said := inverted(doc.low, doc.high):
        yield yaml.problem((*loc, "low"), *said)
    elif doc.mean is not None and not _between(doc):
        yield yaml.problem(
            (*loc, "mean"),
            f"The mean {doc.mean:g} lies outside low and high.",
            "Look in its source and correct it.",
        )


def _between(doc: ScoreDoc) -> bool:
    if doc.mean is None:
        return True
    return not (
        (doc.low is not None and doc.mean < doc.low)
        or (doc.high is not None and doc.mean > doc.high)
    )
