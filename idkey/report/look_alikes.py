"""What the animal could be taken for, and what separates it."""

from collections.abc import Iterable

from idkey.engine.labels import claimed
from idkey.engine.result import Assessment, Candidate, Stake
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.report.finding_words import held_words, seen_words
from idkey.report.language import Language
from idkey.report.names import character_name, name_of
from idkey.report.reasons import LookAlike, Separation, Shown, Tie, agreed
from idkey.report.terms import hazard_words, permit_words

LISTED = 10
"""Look-alikes that are written out at most."""

CLOSEST = 3
"""Best-supported other taxa that are written out at least, whatever the label says."""

REASONS = 3
"""Separations written out per look-alike at most."""


def shown(key: Key, scores: Iterable[Score], language: Language) -> tuple[Shown, ...]:
    """Scores in words with their sources."""
    return tuple(
        Shown(text=held_words(key, score, language), basis=score.basis, sources=score.sources)
        for score in scores
    )


def look_alikes(key: Key, assessment: Assessment, language: Language) -> tuple[LookAlike, ...]:
    """The taxa to compare, the most pressing first, at most `LISTED`.

    First what the label covers, then what is sold under it, then what keeps a danger up, then
    the best supported of the rest.
    """
    standing = {candidate.taxon: candidate for candidate in assessment.lineup}
    ties = _ties(key, assessment)
    return tuple(
        _look_alike(key, assessment, standing[taxon], tie, language)
        for taxon, tie in list(ties.items())[:LISTED]
    )


def _ties(key: Key, assessment: Assessment) -> dict[str, Tie]:
    verdict = assessment.verdict
    label = claimed(key, assessment.case)
    known = {candidate.taxon for candidate in assessment.lineup}
    found: dict[str, Tie] = {}

    def tied(taxa: Iterable[str], tie: Tie) -> None:
        for taxon in taxa:
            if taxon in known and taxon not in verdict.taxa:
                found.setdefault(taxon, tie)

    if label is not None:
        tied(label.covers, Tie.COVERED)
        tied(label.sold_as, Tie.SOLD_AS)
    for caution in assessment.cautions:
        if caution.stake is Stake.HAZARD:
            tied(caution.taxa[:CLOSEST], Tie.DANGER)
    others = [c.taxon for c in assessment.lineup if c.taxon not in verdict.taxa]
    tied(others[:CLOSEST], Tie.RIVAL)
    return found


def _look_alike(
    key: Key, assessment: Assessment, candidate: Candidate, tie: Tie, language: Language
) -> LookAlike:
    taxon = key.taxon[candidate.taxon]
    apart = _apart(key, assessment, candidate, language)
    helping = (
        character
        for unmet in assessment.verdict.unmet
        if candidate.taxon in unmet.rivals
        for character in unmet.characters
    )
    return LookAlike(
        taxon=taxon.id,
        name=name_of(key, taxon.id),
        tie=tie,
        support=agreed(candidate.support),
        ruled_out=candidate.ruled_out,
        apart=apart[:REASONS],
        help=tuple(dict.fromkeys(character_name(key, c) for c in helping))[:REASONS],
        hazard=hazard_words(taxon.hazard, language) if taxon.hazard.means else "",
        permit=permit_words(taxon.permit, language) if taxon.listed else "",
    )


def _apart(
    key: Key, assessment: Assessment, candidate: Candidate, language: Language
) -> tuple[Separation, ...]:
    """What speaks against a taxon: what it cannot explain first, then what speaks 5 to 1."""
    conflicts = [conflict.finding.character for conflict in candidate.conflicts]
    characters = dict.fromkeys((*conflicts, *candidate.separators))
    found = []
    for character in characters:
        finding = assessment.case.finding(character)
        if finding is not None:
            scores = key.cells.get((candidate.taxon, character), ())
            found.append(
                Separation(
                    character=character,
                    name=character_name(key, character),
                    seen=seen_words(key, finding, language),
                    shows=shown(key, scores, language),
                    conflict=character in conflicts,
                )
            )
    return tuple(found)
