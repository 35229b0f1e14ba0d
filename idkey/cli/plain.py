"""A judgement as plain JSON values, for scripts."""

from typing import Any

from idkey.cli.judging import Judgement
from idkey.engine.result import Assessment, Candidate
from idkey.model.key import Key
from idkey.report.words import (
    caution_sentence,
    conflict_words,
    finding_words,
    name_of,
    thumb_words,
    unmet_words,
    verdict_sentence,
)
from idkey.store.codec import plain


def as_plain(key: Key, judgement: Judgement) -> dict[str, Any]:
    """Key, case, verdict, cautions, line-up and the next questions, best first."""
    assessment = judgement.assessment
    return {
        "key": {"id": key.id, "version": key.version, "digest": key.digest},
        "case": plain(assessment.case),
        "verdict": _verdict(key, assessment),
        "rules_of_thumb": _thumbs(key, judgement),
        "cautions": [
            {
                "stake": caution.stake.value,
                "taxa": list(caution.taxa),
                "support": round(caution.support, 6),
                "sentence": caution_sentence(key, caution),
            }
            for caution in assessment.cautions
        ],
        "findings": [finding_words(key, finding) for finding in assessment.case.findings],
        "lineup": [_candidate(key, candidate) for candidate in assessment.lineup],
        "background": round(assessment.background, 6),
        "next": [question.character for question in judgement.open],
    }


def _thumbs(key: Key, judgement: Judgement) -> list[str]:
    """What rests on rules of thumb, in sentences."""
    if judgement.leaning is None:
        return []
    return list(thumb_words(key, judgement.leaning, judgement.assessment.verdict))


def _verdict(key: Key, assessment: Assessment) -> dict[str, Any]:
    verdict = assessment.verdict
    return {
        "kind": verdict.kind.value,
        "level": verdict.level.value,
        "taxa": list(verdict.taxa),
        "name": verdict.name.text,
        "support": round(verdict.support, 6),
        "sentence": verdict_sentence(key, assessment),
        "unmet": [unmet_words(key, unmet) for unmet in verdict.unmet],
        "stakes": [stake.value for stake in verdict.stakes],
    }


def _candidate(key: Key, candidate: Candidate) -> dict[str, Any]:
    return {
        "taxon": candidate.taxon,
        "name": name_of(key, candidate.taxon),
        "support": round(candidate.support, 6),
        "ruled_out": candidate.ruled_out,
        "conflicts": [conflict_words(key, conflict) for conflict in candidate.conflicts],
    }
