"""Findings as written on a command line: ``telson_colour=dark``, ``total_length=112±2``."""

import difflib
import re
from collections.abc import Iterable

from idkey.errors import IdKeyError
from idkey.model.case import Certainty, Finding
from idkey.model.character import Character
from idkey.model.key import Key

SYNTAX = """\
  character=state            seen
  character='a|b'            one of these (a,b works too and needs no quotes)
  character='!state'         not this
  character=12.5±0.3         a number with its standard uncertainty (12.5+-0.3 works too)
  character=unseen           looked, could not see it
A ? at the end means likely, ?? means a guess: telson_colour='dark?'"""

_NUMBER = re.compile(
    r"(?P<value>[0-9]+(?:[.,][0-9]+)?)"
    r"(?:\s*(?:±|\+/?-)\s*(?P<spread>[0-9]+(?:[.,][0-9]+)?))?"
    r"\s*(?P<unit>\D.*)?"
)


def finding(key: Key, text: str) -> Finding:
    """The finding a text such as ``"chela_robustness=!slender?"`` stands for.

    Raises:
        IdKeyError: The text is no finding; it names the near ones and what exists.
    """
    name, sign, answer = text.partition("=")
    if not sign or not answer.strip():
        raise IdKeyError(f"{text!r} is no finding.", f"Write it like this:\n{SYNTAX}")
    return answered(character_named(key, name.strip()), answer)


def character_named(key: Key, name: str) -> Character:
    """The character with that id or term.

    Raises:
        IdKeyError: There is none.
    """
    for character in key.characters:
        if name.casefold() in (character.id, character.name.casefold()):
            return character
    raise unknown("character", name, [character.id for character in key.characters])


def answered(character: Character, answer: str) -> Finding:
    """The finding that an answer to the question on `character` stands for.

    Raises:
        IdKeyError: The answer is none of this character.
    """
    bare = answer.strip().rstrip("?").strip()
    sure = {0: Certainty.SURE, 1: Certainty.LIKELY}.get(answer.strip().count("?"), Certainty.GUESS)
    if bare == "unseen":
        return Finding(character=character.id, unseen=True)
    if character.kind.numeric:
        value, spread = _number(character, bare)
        return Finding(character=character.id, value=value, uncertainty=spread, certainty=sure)
    negated = bare.startswith("!")
    parts = [part.strip() for part in re.split(r"[|,]", bare.removeprefix("!"))]
    states = tuple(dict.fromkeys(_state(character, part) for part in parts))
    return Finding(character=character.id, states=states, negated=negated, certainty=sure)


def unknown(what: str, name: str, known: Iterable[str]) -> IdKeyError:
    """The error for a name that does not exist, with the near one and all that exist."""
    names = list(known)
    near = difflib.get_close_matches(name.casefold().replace(" ", "_"), names, n=1, cutoff=0.5)
    hint = f"Did you mean {near[0]}? " if near else ""
    return IdKeyError(f"There is no {what} {name!r}.", f"{hint}There are: {', '.join(names)}.")


def _number(character: Character, text: str) -> tuple[float, float | None]:
    found = _NUMBER.fullmatch(text)
    if found is None:
        raise IdKeyError(
            f"{text!r} is no number for {character.id}.",
            f"Write it in {character.unit or 'plain numbers'}, such as {character.id}=12.5±0.3.",
        )
    unit = (found["unit"] or "").strip()
    if unit and unit != character.unit:
        raise IdKeyError(
            f"{character.id} is measured in {character.unit or 'plain numbers'}, not in {unit!r}.",
            "Convert the number, and leave the unit out.",
        )
    spread = found["spread"]
    return _decimal(found["value"]), _decimal(spread) if spread else None


def _decimal(text: str) -> float:
    return float(text.replace(",", "."))


def _state(character: Character, name: str) -> str:
    for state in character.states:
        if name.casefold() in (state.id.casefold(), state.label.casefold()):
            return state.id
    raise unknown(f"{character.id} state", name, character.state_ids)
