"""A case walked in text, question by question."""

import re
from dataclasses import replace

from idkey.cli.console import Console
from idkey.cli.findings import answered
from idkey.cli.judging import Judgement, judged, now
from idkey.errors import IdKeyError, Stopped
from idkey.model.case import Case, Finding
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.report.words import (
    ENGLISH,
    caution_sentence,
    conflict_words,
    finding_words,
    look_words,
    name_of,
    next_step,
    thumb_words,
    verdict_sentence,
    why_question,
)

COMMANDS = "? cannot see it   u undo   o another question   why   stop"
SHOWN = 5
"""Taxa of the line-up shown after each answer."""


class Walk:
    """A case on its way: every answer makes a new one, and the old ones are kept for undo."""

    def __init__(self, console: Console, key: Key, case: Case) -> None:
        self._console = console
        self._key = key
        self._cases = [case]
        self._wanted = ""

    @property
    def case(self) -> Case:
        """The case as it stands."""
        return self._cases[-1]

    def to_the_end(self) -> Case:
        """Ask until the person stops or nothing is left to ask; the case then."""
        told: tuple[Case, str] | None = None
        try:
            while True:
                judgement = judged(self._key, self.case)
                if told is None or told[0] is not self.case:
                    self._tell_standing(judgement)
                character = self._next(judgement)
                if character is None:
                    return self.case
                if told != (self.case, character.id):
                    self._put(judgement, character)
                told = (self.case, character.id)
                self._take(judgement, character, self._console.ask(">"))
        except Stopped:
            return self.case

    def _next(self, judgement: Judgement) -> Character | None:
        """The character asked for, else the best one; None when nothing is left to ask."""
        offered = [question.character for question in judgement.open]
        if not offered:
            step = next_step(self._key, judgement.assessment, judgement.questions)
            self._console.tell(step)
            return None
        return self._key.character[self._wanted if self._wanted in offered else offered[0]]

    def _put(self, judgement: Judgement, character: Character) -> None:
        """Show a question with its answers."""
        tell = self._console.tell
        look = next(q.look for q in judgement.questions if q.character == character.id)
        tell(f"\n{character.question}  [{character.name}]")
        means = look_words(look)
        words = (f"{means[:1].upper()}{means[1:]}.", character.how, character.pitfalls)
        tell(" ".join(filter(None, words)), indent="  ")
        for number, state in enumerate(character.states, start=1):
            detail = f" – {state.detail}" if state.detail else ""
            tell(f"{state.label}{detail}", indent="  ", bullet=f"{number}  ")
        unit = f" in {character.unit}" if character.unit else ""
        counted = f"a number{unit}, such as 12.5 or 12.5±0.3"
        several = "1 seen   1,2 one of these   !1 not this   1? likely   1?? a guess"
        tell(counted if character.kind.numeric else several, indent="  ")
        tell(COMMANDS, indent="  ")

    def _take(self, judgement: Judgement, character: Character, answer: str) -> None:
        """Do what was typed."""
        word = answer.casefold()
        if word == "stop":
            raise Stopped
        if word in ("u", "undo"):
            self._undo()
        elif word in ("o", "other"):
            self._another(judgement)
        elif word == "why":
            self._tell_reasons(judgement, character)
        else:
            try:
                self._observe(judgement, understood(character, answer))
            except IdKeyError as err:
                self._console.tell(f"{err.problem} {err.remedy}")

    def _observe(self, judgement: Judgement, finding: Finding) -> None:
        look = next(q.look for q in judgement.questions if q.character == finding.character)
        self._cases.append(self.case.observe(replace(finding, look=look, at=now())))
        self._wanted = ""

    def _undo(self) -> None:
        if len(self._cases) == 1:
            self._console.tell("There is no answer to undo.")
            return
        self._wanted = self._cases.pop().findings[-1].character

    def _another(self, judgement: Judgement) -> None:
        characters = [self._key.character[question.character] for question in judgement.open]
        names = [f"{one.question}  [{one.name}]" for one in characters]
        self._wanted = characters[self._console.choose("Which question?", names)].id

    def _tell_standing(self, judgement: Judgement) -> None:
        """The verdict, the cautions and the head of the line-up."""
        assessment = judgement.assessment
        self._console.tell(f"\n{verdict_sentence(self._key, assessment)}")
        for caution in assessment.cautions:
            self._console.tell(caution_sentence(self._key, caution), bullet="! ")
        if judgement.leaning is not None:
            for line in thumb_words(self._key, judgement.leaning, assessment.verdict):
                self._console.tell(line, bullet="~ ")
        if not assessment.verdict.answers:
            return
        if judgement.decided:
            self._console.tell("That decides; 'stop' writes it down, more answers may refine it.")
        for candidate in assessment.standing[:SHOWN]:
            name = name_of(self._key, candidate.taxon)
            self._console.tell(f"{ENGLISH.share(candidate.support):>6}  {name}", indent="  ")
        more = len(assessment.standing) - SHOWN
        rest = f"{more} more, " if more > 0 else ""
        self._console.tell(f"{rest}{len(assessment.ruled_out)} ruled out", indent=" " * 10)

    def _tell_reasons(self, judgement: Judgement, character: Character) -> None:
        """Why this question is asked, what was found, and what ruled taxa out."""
        for question in judgement.questions:
            if question.character == character.id:
                self._console.tell(why_question(self._key, question))
        for finding in self.case.findings:
            self._console.tell(f"Found: {finding_words(self._key, finding)}", indent="  ")
        for candidate in judgement.assessment.ruled_out:
            name = name_of(self._key, candidate.taxon)
            against = " ".join(conflict_words(self._key, one) for one in candidate.conflicts)
            self._console.tell(f"Ruled out: {name}. {against}", indent="  ")


def understood(character: Character, answer: str) -> Finding:
    """The finding that a typed answer stands for: state numbers or words, a number, or ``?``.

    Raises:
        IdKeyError: It is no answer to this question.
    """
    if answer and not answer.strip("?"):
        return Finding(character=character.id, unseen=True)
    if character.kind.numeric:
        return answered(character, answer)
    return answered(character, re.sub(r"\b[0-9]+\b", lambda n: _numbered(character, n[0]), answer))


def _numbered(character: Character, number: str) -> str:
    if 1 <= int(number) <= len(character.states):
        return character.states[int(number) - 1].id
    raise IdKeyError(
        f"There is no answer {number} here.", f"Give a number from 1 to {len(character.states)}."
    )
