"""Scores as the text of a spreadsheet cell, and back.

``leaf | rope (rarely)``, ``40 to 55, mean 44.5, n 12``, ``n/a``; where sex or stage matters
``male: dark; female: pale``.
"""

import re
from collections.abc import Iterable

from idkey.formats.plain import number
from idkey.formats.problem import hint
from idkey.model.character import Character, Sex, Stage
from idkey.model.score import Inapplicable, Often, Score, Shows, Spans, Value

NOT_APPLICABLE = "n/a"

_NUMBER = r"[-+]?(?:\d+(?:[.,]\d+)?|\.\d+)(?:[eE][-+]?\d+)?"
_RANGE = re.compile(rf"({_NUMBER})\s*(?:to|bis|-|–|—|\.\.)\s*({_NUMBER})")
_BOUND = re.compile(rf"(from|>=?|≥|min|ab|to|<=?|≤|max|up to|bis)\s*({_NUMBER})")
_ONE = re.compile(rf"({_NUMBER})")
_EXTRA = re.compile(rf"(mean|sd|n)\s*=?\s*({_NUMBER})")
_FROM = frozenset(("from", ">", ">=", "≥", "min", "ab"))
_HEAD = re.compile(
    r"(?:(juvenile|adult)\s+)?(?:(female|male))?\s*:\s*|(juvenile|adult)\s*:\s*", re.IGNORECASE
)
_SEPARATORS = re.compile(r"\s*\|\s*|\s+/\s+|\s+or\s+|,\s+")
_OFTEN = re.compile(r"(.*\S)\s*\(([^()]*)\)")


class CellError(ValueError):
    """A cell says something that its character cannot be.

    Attributes:
        problem: What is wrong.
        remedy: What to do.
    """

    def __init__(self, problem: str, remedy: str) -> None:
        super().__init__(problem)
        self.problem = problem
        self.remedy = remedy


def cell_text(scores: Iterable[Score], states: tuple[str, ...]) -> str:
    """The scores of one cell as text; basis, sources and notes have no place in it.

    Args:
        scores: Scores of one taxon and character.
        states: Ids of the character's states, in order.
    """
    return "; ".join(_part(score, states) for score in scores)


def _part(score: Score, states: tuple[str, ...]) -> str:
    head = " ".join(word.value for word in (score.stage, score.sex) if word is not None)
    return f"{head}: {_said(score.value, states)}" if head else _said(score.value, states)


def _said(value: Value, states: tuple[str, ...]) -> str:
    if isinstance(value, Inapplicable):
        return NOT_APPLICABLE
    if isinstance(value, Shows):
        order = sorted(
            value.states, key=lambda s: (s not in states, s in states and states.index(s))
        )
        return " | ".join(f"{s}{_often(value.states[s])}" for s in order)
    low, high = value.low, value.high
    parts = []
    if low is not None and high is not None:
        parts.append(f"{number(low)!r} to {number(high)!r}")
    elif low is not None:
        parts.append(f"from {number(low)!r}")
    elif high is not None:
        parts.append(f"to {number(high)!r}")
    extras = (("mean", value.mean), ("sd", value.sd), ("n", value.n))
    parts += [f"{name} {number(x)!r}" for name, x in extras if x is not None]
    return ", ".join(parts)


def _often(share: Often | float | None) -> str:
    if share is None:
        return ""
    return f" ({share.value if isinstance(share, Often) else number(share)})"


def cell_scores(text: str, taxon: str, character: Character) -> tuple[Score, ...]:
    """The scores that a cell says.

    Args:
        text: Its text; empty says nothing.
        taxon: Id of its taxon.
        character: Its character; states may be given by id or by label.

    Raises:
        CellError: It cannot be understood.
    """
    found: list[Score] = []
    for part in re.split(r"\s*;\s*", text.strip()):
        if not part:
            continue
        head = _HEAD.match(part)
        stage = (head[1] or head[3]) if head else None
        sex = head[2] if head else None
        rest = part[head.end() :] if head else part
        score = Score(
            taxon=taxon,
            character=character.id,
            value=_value(rest.strip(), character),
            sex=Sex(sex.lower()) if sex else None,
            stage=Stage(stage.lower()) if stage else None,
        )
        if any((s.sex, s.stage) == (score.sex, score.stage) for s in found):
            raise CellError(f"'{part}' is for a sex and stage that the cell has already.", "Join.")
        found.append(score)
    return tuple(found)


def _value(text: str, character: Character) -> Value:
    if text.lower() == NOT_APPLICABLE:
        return Inapplicable()
    try:
        return spans(text) if character.kind.numeric else _shows(text, character)
    except CellError:
        raise
    except ValueError as err:
        raise CellError(f"'{text[:60]}' is no score: {err}.", "Correct it.") from err


def spans(text: str) -> Spans:
    """The range that a text says, such as "40 to 55", "≥ 40" or "44.5".

    Raises:
        CellError: It says no number.
        ValueError: It says an impossible range.
    """
    said: dict[str, float] = {}
    for part in re.split(r",\s+|,(?=[a-z])", text.strip().lower()):
        if extra := _EXTRA.fullmatch(part):
            said[extra[1]] = _float(extra[2])
        elif both := _RANGE.fullmatch(part):
            said |= {"low": _float(both[1]), "high": _float(both[2])}
        elif bound := _BOUND.fullmatch(part):
            said["low" if bound[1] in _FROM else "high"] = _float(bound[2])
        elif one := _ONE.fullmatch(part):
            said |= {"low": _float(one[1]), "high": _float(one[1])}
        else:
            raise CellError(
                f"'{text[:60]}' is no number or range.", "Write 40 to 55, from 40, to 55 or 44.5."
            )
    count = said.pop("n", None)
    if count is not None and (count != int(count) or count < 1):
        raise CellError(f"'{text[:60]}' has an n that is no count.", "Write a whole number.")
    return Spans(**said, n=None if count is None else int(count))


def _float(text: str) -> float:
    return float(text.replace(",", "."))


def parts_of(text: str) -> list[str]:
    """The states that a text names, as they are written, without how often."""
    parts = (part for part in _SEPARATORS.split(text.strip()) if part)
    return [match[1] if (match := _OFTEN.fullmatch(part)) else part for part in parts]


def _shows(text: str, character: Character) -> Shows:
    whole = _state(text, character)  # a label may itself hold a comma or an "or"
    if whole is not None:
        return Shows({whole: None})
    states: dict[str, Often | float | None] = {}
    for part in _SEPARATORS.split(text):
        if not part:
            continue
        name, often = part, ""
        if _state(part, character) is None and (match := _OFTEN.fullmatch(part)):
            name, often = match[1], match[2]
        state = _state(name, character)
        if state is None:
            labels = [s.label for s in character.states]
            remedy = hint(
                name,
                list(dict.fromkeys((*character.state_ids, *labels))),
                f"Known: {', '.join(labels)}.",
            )
            raise CellError(f"'{name[:60]}' is no state of '{character.name}'.", remedy)
        if state in states:
            raise CellError(f"'{name[:60]}' is named twice.", "Keep one.")
        states[state] = _share(often)
    return Shows(states)


def _state(name: str, character: Character) -> str | None:
    """The id of the state that goes by that id or label."""
    if name in character.state_ids:
        return name
    folded = " ".join(name.split()).casefold()
    for state in character.states:
        if folded in (state.id.casefold(), " ".join(state.label.split()).casefold()):
            return state.id
    return None


def _share(text: str) -> Often | float | None:
    if not text:
        return None
    if text.lower() in list(Often):
        return Often(text.lower())
    if _ONE.fullmatch(text) and 0 < _float(text) <= 1:
        return _float(text)
    raise CellError(
        f"'{text[:40]}' does not say how often.", f"Write {', '.join(Often)} or a share."
    )
