"""What was seen and what was not, for a rationale."""

from collections.abc import Sequence
from pathlib import Path

from idkey import places
from idkey.engine.labels import claimed
from idkey.engine.result import Assessment, Blocked, Question
from idkey.figures.own import supplied_terms
from idkey.figures.tiles import figure_path
from idkey.model.case import Finding
from idkey.model.key import Key
from idkey.report.finding_words import seen_words
from idkey.report.language import Language
from idkey.report.look_alikes import shown
from idkey.report.names import character_name
from idkey.report.reasons import SeenFinding, Unseen, UnseenCharacter
from idkey.report.terms import certainty_words, look_words

_NOT_ITS_KIND = (Blocked.SEX, Blocked.STAGE, Blocked.REQUIRES)


def seen_findings(key: Key, assessment: Assessment, language: Language) -> tuple[SeenFinding, ...]:
    """The findings in order, each beside what the leading taxon shows."""
    leader = assessment.verdict.taxa[0] if assessment.verdict.taxa else ""
    conflicting = {
        conflict.finding.character
        for candidate in assessment.lineup
        if candidate.taxon == leader
        for conflict in candidate.conflicts
    }
    return tuple(
        _seen(key, finding, leader, conflicting, language) for finding in assessment.case.findings
    )


def _seen(
    key: Key, finding: Finding, leader: str, conflicting: set[str], language: Language
) -> SeenFinding:
    scores = key.cells.get((leader, finding.character), ())
    known = key.character.get(finding.character)
    images, drawn = places.images_folder(), _drawn(key, finding)
    fits = None if finding.unseen or not scores else finding.character not in conflicting
    return SeenFinding(
        character=finding.character,
        name=character_name(key, finding.character),
        seen=seen_words(key, finding, language),
        means=look_words(finding.look, language) if finding.look else "",
        certainty="" if finding.unseen else certainty_words(finding.certainty, language),
        unit=known.unit if known and finding.value is not None else "",
        note=finding.note,
        by=finding.by,
        leader=shown(key, scores, language),
        fits=fits,
        figures=tuple(file.relative_to(images).as_posix() for file in drawn.values()),
        figure_terms=_terms(key, finding.character, drawn),
        pictures=finding.pictures,
    )


def _drawn(key: Key, finding: Finding) -> dict[str, Path]:
    """The drawing of each state seen, where there is one."""
    images = places.images_folder()
    states = () if finding.negated else finding.states
    files = ((name, figure_path(images, key, finding.character, name)) for name in states)
    return {name: file for name, file in files if file is not None}


def _terms(key: Key, character: str, drawn: dict[str, Path]) -> str:
    images = places.images_folder()
    terms = (
        supplied_terms(images, key, character, name, figure=file) for name, file in drawn.items()
    )
    return "; ".join(dict.fromkeys(filter(None, terms)))


def unseen_characters(
    key: Key, assessment: Assessment, questions: Sequence[Question]
) -> tuple[UnseenCharacter, ...]:
    """Characters that carry no weight: what decides the label first, then by what they promise.

    Characters that cannot show on this sex or at this stage are left out.
    """
    label = claimed(key, assessment.case)
    deciding = label.deciding if label else ()
    found = []
    for question in questions:
        reason = _reason(key, assessment, question)
        if reason is not None:
            found.append(
                UnseenCharacter(
                    character=question.character,
                    name=character_name(key, question.character),
                    reason=reason,
                    deciding=question.character in deciding,
                )
            )
    return tuple(sorted(found, key=lambda one: not one.deciding))


def _reason(key: Key, assessment: Assessment, question: Question) -> Unseen | None:
    finding = assessment.case.finding(question.character)
    if finding is not None:
        return Unseen.LOOKED if finding.unseen else None
    if question.blocked is Blocked.HANDLING:
        return Unseen.HANDLING
    if question.blocked in _NOT_ITS_KIND:
        return None
    only_dead = key.character[question.character].only_dead
    return Unseen.DEAD if only_dead else Unseen.NOT_ASKED
