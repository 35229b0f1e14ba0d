"""Which character changes what on a body plan, read from ``bodyplans/*.yaml``.

A binding file names, for each knob of the plan, the characters that turn it, in order: the
first one that is known decides. Every mistake in it is told with file, line and column.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from idkey.errors import IdKeyError
from idkey.figures.plan import Knob, KnobKind, Plan, Value
from idkey.formats.problem import Problem, hint
from idkey.formats.yaml_text import Loc, YamlText, read_yaml
from idkey.model.character import Sex, Stage


class BindingProblems(IdKeyError):  # noqa: N818 - it holds many errors and is named for them
    """A binding file cannot be used as it stands.

    Attributes:
        problems: Every mistake in it, in the order of lines.
    """

    def __init__(self, file: Path, problems: Iterable[Problem]) -> None:
        self.problems = tuple(sorted(problems, key=lambda p: (p.line, p.column)))
        lines = "\n".join(str(problem) for problem in self.problems)
        super().__init__(
            f"The body plan {file.name} has mistakes:\n{lines}",
            "Mend the lines named above; until then the portraits stay away.",
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """One character that can turn a knob.

    Attributes:
        character: Character id; ``size_mm`` is the size of the taxon itself.
        values: What each state sets; empty takes the number or the reference colour.
        which: Which reference colour a state takes, counted from 1; the first when not named.
        times: What a number is multiplied by.
        sex: The only sex it is used for; None for all.
        stage: The only stage it is used for; None for all.
        loc: Its place in the file.
    """

    character: str
    values: Mapping[str, Value]
    which: Mapping[str, int]
    times: float
    sex: Sex | None
    stage: Stage | None
    loc: Loc


@dataclass(frozen=True, slots=True, kw_only=True)
class Binding:
    """A whole binding file.

    Attributes:
        text: The file, for the place of each mistake.
        sources: Sources by knob name, in order.
    """

    text: YamlText
    sources: Mapping[str, tuple[Source, ...]]


_FIELDS = ("character", "values", "which", "times", "sex", "stage")


def read_binding(file: Path, plan: Plan) -> Binding:
    """The binding in `file`, held against the knobs of `plan`.

    Raises:
        BindingProblems: Something in it is wrong; it holds every mistake.
    """
    text, problems = read_yaml(file)
    if text is None or problems:
        raise BindingProblems(file, problems)
    reader = _Reader(text, plan)
    sources = reader.sources()
    if reader.problems:
        raise BindingProblems(file, reader.problems)
    return Binding(text=text, sources=sources)


class _Reader:
    def __init__(self, text: YamlText, plan: Plan) -> None:
        self.problems: list[Problem] = []
        self._text = text
        self._plan = plan

    def sources(self) -> dict[str, tuple[Source, ...]]:
        plain = self._text.plain
        if not isinstance(plain, dict):
            self._say((), "The file is not a list of knobs.", "Write 'knob: [sources]' lines.")
            return {}
        found = {}
        for name, rows in plain.items():
            knob = self._plan.knobs.get(name)
            if knob is None:
                remedy = hint(name, tuple(self._plan.knobs), "See the list in the manual.")
                self.problems.append(
                    self._text.problem_at_key((name,), f"Unknown knob '{name}'.", remedy)
                )
            elif not isinstance(rows, list):
                self._say((name,), f"'{name}' is not a list.", "Start each source with '-'.")
            else:
                made = (self._source(knob, row, (name, i)) for i, row in enumerate(rows))
                found[name] = tuple(source for source in made if source is not None)
        return found

    def _source(self, knob: Knob, row: Any, loc: Loc) -> Source | None:
        if not isinstance(row, dict) or not isinstance(row.get("character"), str):
            self._say(loc, "A source names no character.", "Write 'character: its id'.")
            return None
        for field in set(row) - set(_FIELDS):
            self.problems.append(
                self._text.problem_at_key(
                    (*loc, field), f"Unknown field '{field}'.", hint(field, _FIELDS)
                )
            )
        return Source(
            character=row["character"],
            values=dict(self._values(knob, row, loc)),
            which=dict(self._which(row, loc)),
            times=self._number(row.get("times", "1"), (*loc, "times")) or 1.0,
            sex=self._word(Sex, row, (*loc, "sex")),
            stage=self._word(Stage, row, (*loc, "stage")),
            loc=loc,
        )

    def _values(self, knob: Knob, row: dict[str, Any], loc: Loc) -> Iterator[tuple[str, Value]]:
        for state, written in self._pairs(row, "values", loc):
            here = (*loc, "values", state)
            if knob.kind is KnobKind.NUMBER:
                value = self._number(written, here)
                if value is not None and not knob.low <= value <= knob.high:
                    limits = f"{knob.low:g} to {knob.high:g}"
                    self._say(here, f"{value:g} is out of bounds.", f"Write {limits}.")
                elif value is not None:
                    yield state, value
            elif knob.kind is KnobKind.CHOICE and written not in knob.choices:
                self._say(here, f"Unknown choice '{written}'.", hint(str(written), knob.choices))
            elif knob.kind is KnobKind.COLOUR and not _is_colour(written):
                self._say(here, f"'{written}' is not a colour.", 'Write it as "#rrggbb".')
            else:
                yield state, str(written)

    def _which(self, row: dict[str, Any], loc: Loc) -> Iterator[tuple[str, int]]:
        for state, written in self._pairs(row, "which", loc):
            number = self._number(written, (*loc, "which", state))
            if number is not None and (number < 1 or number != int(number)):
                self._say((*loc, "which", state), f"'{written}' is no place.", "Count from 1.")
            elif number is not None:
                yield state, int(number)

    def _pairs(self, row: dict[str, Any], field: str, loc: Loc) -> Iterator[tuple[str, Any]]:
        pairs = row.get(field, {})
        if isinstance(pairs, dict):
            yield from pairs.items()
        else:
            self._say((*loc, field), f"'{field}' is not a mapping.", "Write '{state: value}'.")

    def _number(self, written: Any, loc: Loc) -> float | None:
        try:
            return float(written)
        except (TypeError, ValueError):
            self._say(loc, f"'{written}' is not a number.", "Write digits only.")
            return None

    def _word(self, words: Any, row: dict[str, Any], loc: Loc) -> Any:
        written = row.get(str(loc[-1]))
        if written is None or written in tuple(words):
            return None if written is None else words(written)
        self._say(loc, f"Unknown {loc[-1]} '{written}'.", hint(str(written), tuple(words)))
        return None

    def _say(self, loc: Loc, problem: str, remedy: str) -> None:
        self.problems.append(self._text.problem(loc, problem, remedy))


def _is_colour(written: Any) -> bool:
    return (
        isinstance(written, str)
        and len(written) == 7
        and written[0] == "#"
        and all(sign in "0123456789abcdefABCDEF" for sign in written[1:])
    )
