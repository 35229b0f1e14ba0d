"""Begin an exercise: the next picture of an item, drawn and laid out."""

from collections import OrderedDict
from collections.abc import Mapping
from dataclasses import replace

from idkey.drill.casework import RunCase, run_case, sure_eye
from idkey.drill.exercises import NameState, TellPair, pair_choices
from idkey.drill.item import Item
from idkey.drill.specimen import individual, seed_of
from idkey.engine.compile import compile_key
from idkey.engine.matrix import Matrix
from idkey.engine.result import VerdictKind
from idkey.model.case import Specimen
from idkey.model.key import Key
from idkey.store.drill_log import Exercise

Run = NameState | TellPair | RunCase
"""An exercise under way."""

ANIMALS = 6
"""Animals drawn for a case in search of one that a sure eye can settle."""

LONGEST = 12
"""Findings a case may take a sure eye; longer ones are taken only when nothing shorter comes."""

_KEPT = 8
_ANY = Specimen()


class Bench:
    """Draws and lays out exercises of one key; remembers the compiled key.

    Args:
        key: The key.
        sees: Share per taxon id of what the shop sees.
    """

    def __init__(self, key: Key, sees: Mapping[str, float]) -> None:
        self.key = key
        self.sees = sees
        self._matrices: OrderedDict[Specimen, Matrix] = OrderedDict()

    def matrix(self, kind: Specimen = _ANY) -> Matrix:
        """The key, compiled for that sex and stage."""
        if kind not in self._matrices:
            self._matrices[kind] = compile_key(self.key, kind)
            if len(self._matrices) > _KEPT:
                self._matrices.popitem(last=False)
        return self._matrices[kind]

    def begin(self, item: Item, serial: int) -> Run:
        """The exercise on the picture with that serial of an item.

        Raises:
            ValueError: The key cannot show the item.
        """
        if item.exercise is Exercise.CASE:
            return self._case(item, serial)
        one = individual(self.key, item, seed_of(item, self.key, serial), self.sees)
        if item.exercise is Exercise.STATE:
            return NameState(key=self.key, item=item, individual=one)
        choices = pair_choices(self.matrix(), item, one)
        return TellPair(key=self.key, item=item, individual=one, choices=choices)

    def _case(self, item: Item, serial: int) -> RunCase:
        """The first of some animals that a sure eye settles soon.

        Else the one settled soonest; and where none is, the one with most to see.
        """
        best: tuple[bool, int, RunCase] | None = None
        for number in range(ANIMALS):
            seed = seed_of(item, self.key, serial * ANIMALS + number)
            one = individual(self.key, item, seed, self.sees)
            run = run_case(item, one, self.matrix(one.kind))
            ended = sure_eye(run)
            run = replace(run, par=ended.par)
            is_open = ended.assessment.verdict.kind is VerdictKind.OPEN
            if not is_open and len(ended.looked) <= LONGEST:
                return run
            looks = -len(ended.looked) if is_open else len(ended.looked)
            if best is None or (is_open, looks) < best[:2]:
                best = (is_open, looks, run)
        assert best is not None
        return best[2]
