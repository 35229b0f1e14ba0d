"""What the drill says: titles, and what was missed, in plain sentences."""

from datetime import datetime

from PySide6.QtCore import QCoreApplication

from idkey.drill.conclusion import Outcome
from idkey.drill.exercises import Fault, Slip
from idkey.engine.intervals import Interval
from idkey.engine.result import VerdictKind
from idkey.model.case import Specimen
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.report.language import Language
from idkey.report.words import name_of, sex_words, stage_words, verdict_title
from idkey.store.drill_log import Answer, Exercise

translate = QCoreApplication.translate


def exercise_title(exercise: Exercise) -> str:
    """The name of an exercise."""
    return {
        Exercise.STATE: translate("drill", "Name the state"),
        Exercise.PAIR: translate("drill", "Tell the pair apart"),
        Exercise.CASE: translate("drill", "Run a case"),
    }[exercise]


def exercise_about(exercise: Exercise) -> str:
    """What it trains, in a sentence."""
    return {
        Exercise.STATE: translate("drill", "One figure, one character: what does it show?"),
        Exercise.PAIR: translate(
            "drill", "Two look-alikes: where do you look first, and which is it?"
        ),
        Exercise.CASE: translate("drill", "A whole animal under a label that may be wrong."),
    }[exercise]


def count_words(due: int, fresh: int) -> str:
    """How much is to be done."""
    if not due and not fresh:
        return translate("drill", "Nothing for today")
    again = translate("drill", "{n} to see again").format(n=due)
    new = translate("drill", "{n} new").format(n=fresh)
    return " · ".join(text for text, n in ((again, due), (new, fresh)) if n)


def when_words(due: datetime | None, now: datetime) -> str:
    """When the next thing falls due."""
    if due is None:
        return translate("drill", "Nothing is waiting.")
    local, today = due.astimezone(), now.astimezone()
    hour = f"{local:%H:%M}"
    days = (local.date() - today.date()).days
    if days <= 0:
        return translate("drill", "The next one is due at {hour}.").format(hour=hour)
    if days == 1:
        return translate("drill", "The next one is due tomorrow at {hour}.").format(hour=hour)
    return translate("drill", "The next one is due in {n} days.").format(n=days)


def answer_words(character: Character, answer: Answer, language: Language) -> str:
    """A state by its label, a number with its unit, or "cannot tell"."""
    if answer is None:
        return translate("drill", "cannot tell")
    if isinstance(answer, str):
        known = {state.id: state.label for state in character.states}
        return known.get(answer, answer)
    number = language.number(float(f"{float(answer):.3g}"))
    return f"{number} {character.unit}".strip()


def kind_words(key: Key, kind: Specimen, language: Language) -> str:
    """Sex and stage of an animal; empty where the key draws no animals."""
    if not key.body_plan:
        return ""
    return f"{sex_words(kind.sex, language)}, {stage_words(kind.stage, language)}"


def slip_words(slip: Slip, said: str, truth: str) -> str:
    """What was missed on one character."""
    if slip is Slip.NONE:
        return translate("drill", "Right: {truth}.").format(truth=truth)
    if slip is Slip.NOT_SEEN:
        return translate("drill", "It can be seen here: {truth}.").format(truth=truth)
    if slip is Slip.NUMBER:
        sentence = translate("drill", "You read {said}; the plate shows {truth}.")
    elif slip is Slip.NEIGHBOUR:
        sentence = translate("drill", "One step off: you said “{said}”, and it shows “{truth}”.")
    else:
        sentence = translate("drill", "You said “{said}”, and it shows “{truth}”.")
    return sentence.format(said=said, truth=truth)


def fault_words(fault: Fault, key: Key, truth: str, teller: Character, looked: str) -> str:
    """How a pair went.

    Args:
        fault: What went wrong.
        key: The key.
        truth: Taxon id.
        teller: The character that tells.
        looked: Name of the character decided on.
    """
    name, tells = name_of(key, truth), teller.name
    return {
        Fault.NONE: translate("drill", "Right: {name}, and by the character that tells."),
        Fault.DETOUR: translate("drill", "Right: {name}. The shorter way: look at {tells} first."),
        Fault.LUCK: translate(
            "drill",
            "It is {name}, but {looked} does not show that: it is the same on both, or the key "
            "does not know it. Look at {tells}.",
        ),
        Fault.WRONG_TAXON: translate("drill", "It is {name}. What tells them apart is {tells}."),
        Fault.GAVE_UP: translate("drill", "{tells} does tell them apart: this is {name}."),
    }[fault].format(name=name, tells=tells, looked=looked)


def outcome_words(outcome: Outcome, said: str, carried: str, truth: str) -> str:
    """How the conclusion of a case stands."""
    return {
        Outcome.RIGHT: translate("drill", "Right. The findings carry exactly that: {carried}."),
        Outcome.UNFINISHED: translate(
            "drill", "Left open too soon: there was more to see that would have told something."
        ),
        Outcome.OVERSTATED: translate(
            "drill", "More than was seen: you concluded “{said}”, and the findings leave it open."
        ),
        Outcome.UNDERSTATED: translate(
            "drill", "It was decided already: the findings carry “{carried}”."
        ),
        Outcome.MISREAD: translate(
            "drill",
            "Your findings carry “{carried}”, but something was misread: the truth is “{truth}”.",
        ),
        Outcome.WRONG: translate(
            "drill", "You concluded “{said}”; the findings carry “{carried}”."
        ),
    }[outcome].format(said=said, carried=carried, truth=truth)


def verdict_words(kind: VerdictKind | str, language: Language) -> str:
    """A verdict in two or three words, to stand inside a sentence."""
    return verdict_title(VerdictKind(kind), language).lower()


def share_words(interval: Interval, language: Language) -> str:
    """A share with its interval."""
    low, high = language.share(interval.low), language.share(interval.high)
    return translate("drill", "{share} ({low} to {high})").format(
        share=language.share(interval.share), low=low, high=high
    )
