"""The sentences of window, command line and documents, in one place, in every language.

Each function takes a `Language` last; without one it speaks English. Names of taxa stand in the
sentences as plain text; `rich` sets them in italics for HTML, `runs` for any other medium.
"""

from idkey.report.finding_words import (
    conflict_words,
    effect_words,
    expected_words,
    finding_words,
    held_words,
    means_seen,
    score_words,
    seen_words,
    value_words,
)
from idkey.report.label_words import covers_words, mixup_warning, stakes_words
from idkey.report.language import CODES, ENGLISH, Language, in_language
from idkey.report.names import name_of, rich, rich_text, runs, scientific_names
from idkey.report.question_words import next_step, why_question
from idkey.report.terms import (
    basis_words,
    blocked_words,
    certainty_words,
    climate_words,
    danger_words,
    hazard_words,
    level_words,
    look_words,
    permit_words,
    sex_words,
    stage_words,
    trouble_words,
    verdict_title,
)
from idkey.report.thumb_words import thumb_line, thumb_words
from idkey.report.verdict_words import (
    caution_sentence,
    identity_sentence,
    prior_words,
    unmet_words,
    verdict_sentence,
    written_name,
)

__all__ = (
    "CODES",
    "ENGLISH",
    "Language",
    "basis_words",
    "blocked_words",
    "caution_sentence",
    "certainty_words",
    "climate_words",
    "conflict_words",
    "covers_words",
    "danger_words",
    "effect_words",
    "expected_words",
    "finding_words",
    "hazard_words",
    "held_words",
    "identity_sentence",
    "in_language",
    "level_words",
    "look_words",
    "means_seen",
    "mixup_warning",
    "name_of",
    "next_step",
    "permit_words",
    "prior_words",
    "rich",
    "rich_text",
    "runs",
    "scientific_names",
    "score_words",
    "seen_words",
    "sex_words",
    "stage_words",
    "stakes_words",
    "thumb_line",
    "thumb_words",
    "trouble_words",
    "unmet_words",
    "value_words",
    "verdict_sentence",
    "verdict_title",
    "why_question",
    "written_name",
)
