"""Reads couplets from text, line by line, and goes on after a mistake."""

import re
from dataclasses import dataclass, field

from PySide6.QtCore import QCoreApplication

from idkey.app.workshop.couplet_signs import unpacked
from idkey.app.workshop.forms_entries import is_id
from idkey.formats.problem import hint
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key

_LEAD = re.compile(r"(\d+(?=[a-z])|\S+[ \t]+)([a-z]{1,2})[.)](?:[ \t]+(.*))?", re.DOTALL | re.ASCII)
_NOTE = re.compile(r"(\S+)[ \t]+note:(.*)", re.DOTALL)
_BELOW = re.compile(r"[ \t]+(sees|remark):(.*)", re.DOTALL)
_ARROW = re.compile(r"(?<!\\)(?:->|→)")
translate = QCoreApplication.translate

_RANGE = re.compile(r"(.*?)\.\.(.*)", re.DOTALL)


@dataclass(frozen=True, slots=True)
class Mistake:
    """What is wrong with a line.

    Attributes:
        line: Line, counted from 1.
        problem: What is wrong.
        remedy: What to do.
    """

    line: int
    problem: str
    remedy: str


@dataclass(slots=True)
class _Lead:
    line: int
    letter: str
    statement: str
    goal: str
    sees: tuple[Sees, ...] = ()
    remark: str = ""


@dataclass(slots=True)
class _Couplet:
    line: int
    note: str = ""
    leads: list[_Lead] = field(default_factory=list)


class Reader:
    """Takes the lines of a text one after another.

    Args:
        key: The key, for its taxa, characters and states.
    """

    def __init__(self, key: Key) -> None:
        self._key = key
        self._names = {taxon.name: taxon.id for taxon in key.taxa}
        self._couplets: dict[str, _Couplet] = {}
        self._lead: _Lead | None = None
        self._mistakes: list[Mistake] = []
        self._unread = False

    def take(self, line: int, text: str) -> None:
        """Take a line."""
        if not text.strip():
            return
        if below := _BELOW.fullmatch(text):
            self._take_below(line, below[1], below[2])
        elif text[0].isspace():
            self._wrong(
                line,
                translate("couplets", "“{what}” belongs to nothing."),
                text.strip(),
                _how_indented(),
            )
        elif note := _NOTE.fullmatch(text):
            self._couplet(line, note[1]).note = unpacked(note[2])
            self._lead = None
        elif lead := _LEAD.fullmatch(text):
            self._take_lead(line, lead[1].strip(), lead[2], lead[3] or "")
        else:
            self._lead, self._unread = None, True
            self._wrong(
                line, translate("couplets", "“{what}” is no lead."), text.strip(), _how_a_lead()
            )

    def ended(self) -> tuple[tuple[Couplet, ...] | None, tuple[Mistake, ...]]:
        """The couplets, None when there are mistakes, and the mistakes in order."""
        found = []
        for name, couplet in self._couplets.items():
            leads = [made for lead in couplet.leads if (made := self._made(lead))]
            if len(leads) >= 2 and len(leads) == len(couplet.leads):
                found.append(Couplet(id=name, leads=tuple(leads), note=couplet.note))
            elif len(couplet.leads) < 2 and not self._unread:
                problem = translate("couplets", "Couplet {what} has fewer than two leads.")
                remedy = translate("couplets", "Add another lead below it.")
                self._wrong(couplet.line, problem, name, remedy)
        mistakes = tuple(sorted(self._mistakes, key=lambda one: one.line))
        return (None if mistakes else tuple(found)), mistakes

    def _wrong(self, line: int, problem: str, what: str, remedy: str) -> None:
        self._mistakes.append(Mistake(line, problem.format(what=what[:60]), remedy))

    def _couplet(self, line: int, name: str) -> _Couplet:
        if name not in self._couplets:
            self._couplets[name] = _Couplet(line)
            if not is_id(name):
                self._wrong(
                    line,
                    translate("couplets", "“{what}” cannot be the id of a couplet."),
                    name,
                    _how_no_id(),
                )
        return self._couplets[name]

    def _take_lead(self, line: int, name: str, letter: str, rest: str) -> None:
        couplet = self._couplet(line, name)
        *words, goal = _ARROW.split(rest)
        if not words:
            words, goal = [rest], ""
        if any(lead.letter == letter for lead in couplet.leads):
            twice = translate("couplets", "Lead {what} is there twice.")
            self._wrong(
                line, twice, f"{name} {letter}", translate("couplets", "Give one another letter.")
            )
        statement = unpacked("->".join(words))
        if not statement:
            empty = translate("couplets", "Lead {what} says nothing.")
            self._wrong(line, empty, f"{name} {letter}", _how_a_lead())
        if not goal.strip():
            nowhere = translate("couplets", "Lead {what} goes nowhere.")
            self._wrong(line, nowhere, f"{name} {letter}", _how_goal())
        self._lead = _Lead(line, letter, statement, goal.strip())
        couplet.leads.append(self._lead)

    def _take_below(self, line: int, word: str, rest: str) -> None:
        if self._lead is None:
            self._wrong(
                line, translate("couplets", "“{what}” stands below no lead."), word, _how_a_lead()
            )
        elif word == "remark":
            self._lead.remark = unpacked(rest)
        else:
            self._lead.sees = self._sees(line, rest)

    def _sees(self, line: int, text: str) -> tuple[Sees, ...]:
        found: dict[str, Sees] = {}
        for part in filter(str.strip, text.split(";")):
            name, equals, value = (piece.strip() for piece in part.partition("="))
            if not equals or not value:
                self._wrong(
                    line,
                    translate("couplets", "“{what}” asks for nothing."),
                    part.strip(),
                    _how_how_sees(),
                )
            elif name not in self._key.character:
                known = hint(name, tuple(self._key.character), _how_character())
                self._wrong(line, translate("couplets", "Unknown character '{what}'."), name, known)
            elif name in found:
                remedy = translate("couplets", "Join the two, or remove one.")
                self._wrong(
                    line, translate("couplets", "'{what}' is asked for twice."), name, remedy
                )
            elif made := self._asked(line, name, value):
                found[name] = made
        return tuple(found.values())

    def _asked(self, line: int, name: str, value: str) -> Sees | None:
        character = self._key.character[name]
        if character.kind.numeric:
            return self._asked_range(line, name, value)
        states = tuple(state for one in value.split(",") if (state := one.strip()))
        for state in states:
            if state not in character.state_ids:
                known = hint(state, character.state_ids)
                what = f"{name} = {state}"
                self._wrong(line, translate("couplets", "There is no state '{what}'."), what, known)
                return None
        return Sees(character=name, states=tuple(dict.fromkeys(states))) if states else None

    def _asked_range(self, line: int, name: str, value: str) -> Sees | None:
        bounds = _RANGE.fullmatch(value)
        try:
            low, high = (
                float(end) if end.strip() else None
                for end in ((bounds[1], bounds[2]) if bounds else (value, value))
            )
        except ValueError:
            self._wrong(
                line, translate("couplets", "“{what}” is no range."), value, _how_how_range()
            )
            return None
        if low is not None and high is not None and not low <= high:
            swap = translate("couplets", "Swap the two numbers.")
            self._wrong(
                line, translate("couplets", "The range {what} is upside down."), value, swap
            )
            return None
        return Sees(character=name, low=low, high=high)

    def _made(self, lead: _Lead) -> Lead | None:
        """The lead; None when its goal is not there, which is told."""
        goal = lead.goal
        if goal in self._couplets:
            return Lead(statement=lead.statement, sees=lead.sees, to=goal, remark=lead.remark)
        taxa = []
        for one in filter(None, (part.strip() for part in goal.split(","))):
            name = one.removeprefix("taxon ").strip()
            if name not in self._key.taxon:
                name = self._names.get(name, name)
            if name not in self._key.taxon:
                known = hint(name, (*self._couplets, *self._key.taxon), _how_goal())
                problem = translate("couplets", "There is no couplet or taxon '{what}'.")
                self._wrong(lead.line, problem, name, known)
                return None
            taxa.append(name)
        if not taxa:
            return None
        ends = tuple(dict.fromkeys(taxa))
        return Lead(statement=lead.statement, sees=lead.sees, taxa=ends, remark=lead.remark)


def _how_indented() -> str:
    return translate("couplets", "Start an indented line with sees: or remark:.")


def _how_no_id() -> str:
    return translate("couplets", "Use letters, digits, '_', '-' and '.', and no blanks.")


def _how_goal() -> str:
    return translate(
        "couplets", "Write -> and behind it the number of a couplet, or the ids of taxa."
    )


def _how_how_sees() -> str:
    return translate("couplets", "Write: character = state, state; another = 10..20")


def _how_how_range() -> str:
    return translate("couplets", "Write it as 10..20, 10.. or ..20.")


def _how_character() -> str:
    return translate("couplets", "Correct it, or add the character first.")


def _how_a_lead() -> str:
    return translate("couplets", "Write it as: 1 a. What the animal shows -> 2")
