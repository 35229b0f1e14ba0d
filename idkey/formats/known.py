"""The ids a key defines, and what is said when another one is used."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from idkey.formats.document import RangeDoc, SeesDoc
from idkey.formats.draft import Draft
from idkey.formats.problem import Problem, hint
from idkey.formats.yaml_text import Loc, YamlText
from idkey.model.character import Kind

_PLACES = {
    "taxon": "a file in taxa/",
    "character": "characters.yaml",
    "source": "sources.yaml",
    "couplet": "couplets.yaml",
}
_FILES = {"character": "characters", "source": "sources", "couplet": "couplets"}


@dataclass(frozen=True, slots=True)
class Trait:
    """What must be known of a character to judge a score of it.

    Attributes:
        kind: Its kind; empty while its own entry has a mistake there.
        states: Ids of its states, in order.
        numeric: Whether it takes numbers; None while its own entry has a mistake there.
    """

    kind: str
    states: tuple[str, ...]
    numeric: bool | None = None


_NO_TRAIT = Trait("", ())


class Known:
    """Every id of a draft, also of entries that have mistakes of their own."""

    def __init__(self, draft: Draft) -> None:
        self.taxa = tuple(draft.plain.get("taxa", {}))
        self.sources = frozenset(draft.plain.get("sources", {}))
        self.couplets = tuple(draft.plain.get("couplets", {}))
        self._lost = {kind for kind, file in _FILES.items() if file in draft.lost}
        self.traits = {n: _trait(p) for n, p in draft.plain.get("characters", {}).items()}
        self._ids = {
            "taxon": frozenset(self.taxa),
            "character": frozenset(self.traits),
            "source": self.sources,
            "couplet": frozenset(self.couplets),
        }

    def unknown(self, kind: str, word: str) -> tuple[str, str] | None:
        """Problem and remedy when `word` is no id of that kind; None when it is one.

        Args:
            kind: "taxon", "character", "source" or "couplet".
            word: The id that was used; anything will do while the entries cannot be read.
        """
        ids = self._ids[kind]
        if word in ids or kind in self._lost:
            return None
        otherwise = f"Correct it, or add it to {_PLACES[kind]}."
        return f"Unknown {kind} '{word}'.", hint(word, sorted(ids), otherwise)

    def trait(self, character: str) -> Trait:
        """What is known of that character; nothing while its entry cannot be read."""
        return self.traits.get(character, _NO_TRAIT)

    def each(self, kind: str, words: Iterable[str], yaml: YamlText, loc: Loc) -> Iterator[Problem]:
        """What is wrong with a list of ids that stands at `loc`."""
        before = set()
        for index, word in enumerate(words):
            if said := self.unknown(kind, word):
                yield yaml.problem((*loc, index), *said)
            elif word in before:
                yield yaml.problem((*loc, index), f"'{word}' is named twice.", "Keep one of them.")
            before.add(word)

    def states(
        self, character: str, states: Iterable[str], yaml: YamlText, loc: Loc
    ) -> Iterator[Problem]:
        """What is wrong with states of a known character, as a list or a mapping at `loc`."""
        if character not in self.traits:
            return
        own = self.traits[character].states
        listed = isinstance(states, tuple)
        before = set()
        for index, state in enumerate(states):
            step = index if listed else state
            if state not in own:
                problem, remedy = self._no_state(character, state)
                place = yaml.problem if listed else yaml.problem_at_key
                yield place((*loc, step), problem, remedy)
            elif state in before:
                yield yaml.problem((*loc, step), f"'{state}' is named twice.", "Keep one of them.")
            before.add(state)

    def sees(self, asked: SeesDoc, yaml: YamlText, loc: Loc) -> Iterator[Problem]:
        """What is wrong with the findings that a lead or a check asks for."""
        for character, value in asked.items():
            here = (*loc, character)
            if said := self.unknown("character", character):
                yield yaml.problem_at_key(here, *said)
                continue
            numeric = self.trait(character).numeric
            if isinstance(value, RangeDoc):
                yield from self._range(character, value, yaml, here)
            elif numeric:
                yield yaml.problem(here, _says(character, "is a number"), "Give low and high.")
            elif numeric is not None:
                yield from self.states(character, value, yaml, here)

    def _range(
        self, character: str, asked: RangeDoc, yaml: YamlText, loc: Loc
    ) -> Iterator[Problem]:
        if self.trait(character).numeric is False:
            yield yaml.problem(loc, _says(character, "has states"), "List its states.")
        elif asked.low is None and asked.high is None:
            yield yaml.problem(
                loc, f"Nothing is asked of '{character}'.", "Give low, high or both."
            )
        elif said := inverted(asked.low, asked.high):
            yield yaml.problem((*loc, "low"), *said)

    def _no_state(self, character: str, state: str) -> tuple[str, str]:
        own = self.traits[character].states
        others = [name for name, trait in self.traits.items() if state in trait.states]
        if others:
            problem = f"'{state}' is a state of '{others[0]}', not of '{character}'."
        else:
            problem = f"'{character}' has no state '{state}'."
        return problem, hint(state, tuple(dict.fromkeys(own)))


def _says(character: str, words: str) -> str:
    return f"'{character}' {words}."


def _trait(plain: Any) -> Trait:
    if not isinstance(plain, dict):
        return Trait("", ())
    states = plain.get("states")
    ids = (
        entry["id"]
        for entry in (states if isinstance(states, list) else ())
        if isinstance(entry, dict) and isinstance(entry.get("id"), str)
    )
    kind = str(plain.get("kind", ""))
    numeric = Kind(kind).numeric if kind in list(Kind) else None
    return Trait(kind, tuple(ids), numeric)


def inverted(low: float | None, high: float | None) -> tuple[str, str] | None:
    """Problem and remedy when the bounds of a range are swapped; None when they are not."""
    if low is None or high is None or low <= high:
        return None
    return f"Low {low:g} is above high {high:g}.", "Look in its source and correct them."
