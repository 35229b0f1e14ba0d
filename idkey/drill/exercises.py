"""Name the state, and tell the pair apart: what was asked, what was answered, what was missed.

Pure values: each answer makes a new one. `casework` holds the third exercise.
"""

from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np

from idkey.drill.item import Item
from idkey.drill.plate import tolerance
from idkey.drill.specimen import Individual
from idkey.drill.telling import mute
from idkey.engine.matrix import Matrix
from idkey.model.character import Character, Kind
from idkey.model.key import Key
from idkey.store.drill_log import Answer, Sighting

CHOICES = 5
"""Characters to choose from in a pair, the one that tells included."""

NEITHER = "-"
"""The answer "this does not tell them apart"."""


def read_rightly(character: Character, truth: str | float, said: Answer) -> bool:
    """Whether an answer agrees with what is there: the same state, or a number near enough."""
    if isinstance(truth, float) and isinstance(said, float | int):
        return abs(said - truth) <= tolerance(character, truth)
    return said == truth


def sighting(character: Character, truth: str | float, said: Answer) -> Sighting:
    """What was there beside what was said."""
    right = read_rightly(character, truth, said)
    return Sighting(character=character.id, truth=truth, said=said, right=right)


class Slip(StrEnum):
    """What went wrong in an answer."""

    NONE = "none"
    NEIGHBOUR = "neighbour"
    OTHER_STATE = "other_state"
    NUMBER = "number"
    NOT_SEEN = "not_seen"


@dataclass(frozen=True, slots=True, kw_only=True)
class NameState:
    """One figure, one character: which state is it, or which number?

    Attributes:
        key: The key.
        item: What is practised.
        individual: The animal shown.
        sighting: The answer beside the truth; None until it is given.
    """

    key: Key
    item: Item
    individual: Individual
    sighting: Sighting | None = None

    @property
    def character(self) -> Character:
        """The character asked for."""
        return self.key.character[self.item.character]

    @property
    def truth(self) -> str | float:
        """What the figure shows."""
        return self.individual.animal.shown[self.item.character]

    @property
    def done(self) -> bool:
        """Whether it is answered."""
        return self.sighting is not None

    @property
    def correct(self) -> bool:
        """Whether the answer was right."""
        return self.sighting is not None and self.sighting.right

    @property
    def slips(self) -> int:
        """Slips on the way to a right answer: none, there is one answer."""
        return 0

    @property
    def sightings(self) -> tuple[Sighting, ...]:
        """What was read from the figure."""
        return () if self.sighting is None else (self.sighting,)

    def say(self, answer: Answer) -> "NameState":
        """Answer with a state id, a number, or None for "cannot tell"; the first answer stands.

        Raises:
            ValueError: The character has no such state, or takes the other sort of answer.
        """
        if self.done:
            return self
        character = self.character
        if isinstance(answer, str) and answer not in character.state_ids:
            raise ValueError(f"{character.id!r} has no state {answer!r}")
        if isinstance(answer, float | int) and not character.kind.numeric:
            raise ValueError(f"{character.id!r} takes a state, not a number")
        return replace(self, sighting=sighting(character, self.truth, answer))

    @property
    def slip(self) -> Slip:
        """What went wrong."""
        return Slip.NONE if self.sighting is None else slip_of(self.character, self.sighting)


def slip_of(character: Character, seen: Sighting) -> Slip:
    """What sort of mistake a sighting is."""
    if seen.right:
        return Slip.NONE
    if seen.said is None:
        return Slip.NOT_SEEN
    if character.kind.numeric:
        return Slip.NUMBER
    ids = character.state_ids
    if character.kind is Kind.ORDINAL and seen.said in ids and seen.truth in ids:
        near = abs(ids.index(str(seen.said)) - ids.index(str(seen.truth))) == 1
        return Slip.NEIGHBOUR if near else Slip.OTHER_STATE
    return Slip.OTHER_STATE


class Fault(StrEnum):
    """What went wrong with a pair."""

    NONE = "none"
    DETOUR = "detour"
    LUCK = "luck"
    WRONG_TAXON = "wrong_taxon"
    GAVE_UP = "gave_up"


@dataclass(frozen=True, slots=True, kw_only=True)
class TellPair:
    """Two look-alikes: which character first, then which of the two?

    Attributes:
        key: The key.
        item: What is practised; its character is the one that tells.
        individual: The animal shown, one of the two.
        choices: Characters to choose from; all but one show the same on both taxa.
        looks: Characters looked at, in order.
        said: The taxon decided for, `NEITHER` when given up on the telling character.
    """

    key: Key
    item: Item
    individual: Individual
    choices: tuple[str, ...]
    looks: tuple[str, ...] = ()
    said: str = ""

    @property
    def pair(self) -> tuple[str, str]:
        """Both taxa, in the order of their ids."""
        return self.item.taxa[0], self.item.taxa[1]

    @property
    def truth(self) -> str:
        """The taxon shown."""
        return self.individual.animal.taxon

    @property
    def looking(self) -> str:
        """The character in view; empty while one is to be chosen."""
        return self.looks[-1] if self.looks and self.looks[-1] in self.choices else ""

    @property
    def done(self) -> bool:
        """Whether it is decided."""
        return bool(self.said)

    @property
    def open_choices(self) -> tuple[str, ...]:
        """Characters not looked at yet."""
        return tuple(one for one in self.choices if one not in self.looks)

    @property
    def correct(self) -> bool:
        """Whether the right taxon was decided on by the character that tells."""
        return self.said == self.truth and self.looking == self.item.character

    @property
    def slips(self) -> int:
        """Characters looked at that tell nothing."""
        return sum(look in self.choices and look != self.item.character for look in self.looks)

    @property
    def sightings(self) -> tuple[Sighting, ...]:
        """Nothing is named here."""
        return ()

    @property
    def first_look(self) -> str:
        """The character looked at first."""
        return self.looks[0] if self.looks else ""

    def look(self, character: str) -> "TellPair":
        """Look at a character; nothing happens while another one is in view.

        Raises:
            ValueError: It is not among the choices, or was looked at already.
        """
        if self.done or self.looking:
            return self
        if character not in self.open_choices:
            raise ValueError(f"{character!r} is no choice here")
        return replace(self, looks=(*self.looks, character))

    def decide(self, answer: str) -> "TellPair":
        """Decide for a taxon, or say with `NEITHER` that the character in view does not tell.

        `NEITHER` on a character that tells nothing is right, and another one can be chosen.

        Raises:
            ValueError: It is none of the two taxa.
        """
        if self.done or not self.looking:
            return self
        if answer not in (*self.pair, NEITHER):
            raise ValueError(f"{answer!r} is none of the two")
        if answer == NEITHER and self.looking != self.item.character:
            return replace(self, looks=(*self.looks, NEITHER))
        return replace(self, said=answer)

    @property
    def fault(self) -> Fault:
        """What went wrong."""
        if self.said == NEITHER:
            return Fault.GAVE_UP
        if self.looking != self.item.character:
            return Fault.LUCK if self.said == self.truth else Fault.WRONG_TAXON
        if self.said != self.truth:
            return Fault.WRONG_TAXON
        return Fault.DETOUR if self.slips else Fault.NONE


def pair_choices(matrix: Matrix, item: Item, individual: Individual) -> tuple[str, ...]:
    """Characters to choose from: the one that tells, and others that show the same on both.

    Where there are too few of those, some that the key knows on neither or on one taxon only.
    Rules of thumb come first, since shops lean on them; the order is shuffled.
    """
    known = matrix.key.character
    chance = np.random.default_rng([individual.seed, 2])
    others: list[str] = []
    for idle in mute(matrix, *item.taxa):
        shown = [one for one in idle if individual.shown(one) is not None]
        mixed = [str(one) for one in chance.permutation(shown)] if shown else []
        others += sorted(mixed, key=lambda one: not known[one].rule_of_thumb)
    chosen = [item.character, *others[: CHOICES - 1]]
    return tuple(str(one) for one in chance.permutation(chosen))
