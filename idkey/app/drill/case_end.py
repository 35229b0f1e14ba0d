"""How a case went, line by line."""

from PySide6.QtCore import QCoreApplication

from idkey.app.drill.feedback import Figure
from idkey.app.drill.figures import DrillFigures
from idkey.app.drill.words import answer_words, slip_words
from idkey.app.parts.captions import headed
from idkey.drill.casework import RunCase
from idkey.drill.conclusion import Outcome
from idkey.drill.exercises import slip_of
from idkey.report.language import Language
from idkey.report.words import caution_sentence, covers_words, look_words, name_of, rich

_tr = QCoreApplication.translate

SHOWN = 3
"""Characters named that would have told more."""


def case_lines(run: RunCase, language: Language) -> list[str]:
    """What it was, what was missed, what was needless; rich text, a line each.

    Args:
        run: A case that is done.
        language: Language of the sentences.
    """
    key = run.key
    taxon = rich(key, name_of(key, run.individual.animal.taxon))
    covers = rich(key, covers_words(key, key.label[run.item.label], language))
    lines = [f"<b>{_tr('drill', 'The animal')}</b>&ensp;{taxon}. {covers}"]
    lines.append(_danger_line(run, language))
    lines.append(_effort_line(run))
    lines += _handling_lines(run, language)
    lines += _misread_lines(run, language)
    if run.outcome in (Outcome.UNFINISHED, Outcome.OVERSTATED):
        names = [key.character[one].name for one in run.worth_asking[:SHOWN]]
        if names:
            lines.append(headed(_tr("drill", "Would have told more"), "; ".join(names)))
    return lines


def _danger_line(run: RunCase, language: Language) -> str:
    head = _tr("drill", "Danger and papers")
    sentences = [caution_sentence(run.key, one, language) for one in run.assessment.cautions]
    said = " ".join(sentences) or _tr("drill", "Neither a danger nor a listing was possible.")
    judged = _tr("drill", "judged rightly") if run.hazard_right else _tr("drill", "judged wrongly")
    return f"<b>{head}</b>&ensp;{judged}. {rich(run.key, said)}"


def _effort_line(run: RunCase) -> str:
    text = _tr("drill", "{n} looks; a sure eye needed {par} on this animal.")
    return headed(_tr("drill", "Trouble"), text.format(n=len(run.looked), par=run.par))


def _handling_lines(run: RunCase, language: Language) -> list[str]:
    """One line per look that brought the hand near without need."""
    lines = []
    for one in run.looked:
        if one.needless:
            name = run.key.character[one.character].name
            look = look_words(one.look, language)
            why = (
                _tr("drill", "a medically significant species was still possible")
                if one.wary
                else _tr("drill", "it could be seen without the hand")
            )
            text = _tr("drill", "{name}, {look}: {why}").format(name=name, look=look, why=why)
            lines.append(headed(_tr("drill", "Needless handling"), text))
    return lines


def _misread_lines(run: RunCase, language: Language) -> list[str]:
    lines = []
    for seen in run.sightings:
        if not seen.right:
            character = run.key.character[seen.character]
            said = answer_words(character, seen.said, language)
            truth = answer_words(character, seen.truth, language)
            words = slip_words(slip_of(character, seen), said, truth)
            lines.append(headed(character.name, words))
    return lines


def misread_figures(run: RunCase, figures: DrillFigures, language: Language) -> list[Figure]:
    """The first misread state beside what it was."""
    for seen in run.sightings:
        if not seen.right and isinstance(seen.truth, str) and isinstance(seen.said, str):
            character = run.key.character[seen.character]
            return [
                Figure(
                    source=figures.drawing(run.key, character.id, state),
                    caption=answer_words(character, state, language),
                    words=answer_words(character, state, language),
                    tone=tone,
                )
                for state, tone in ((seen.said, "doubt"), (seen.truth, "accent"))
            ]
    return []
