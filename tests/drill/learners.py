"""Simulated learners whose weaknesses are known, so that reports can be held against them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta

import numpy as np

from idkey.drill.beginning import Bench, Run
from idkey.drill.exercises import NameState, TellPair
from idkey.drill.item import Item
from idkey.drill.record import trial_of
from idkey.drill.schedule import serial
from idkey.store.drill_log import Trial

START = datetime(2025, 11, 4, 9, 0, tzinfo=UTC)


@dataclass
class Learner:
    """Someone who confuses known things at known rates.

    Attributes:
        name: Alias.
        confuses: Per (character, state): what is said instead, and how often.
        misjudges: Per pair of taxa: how often the decision is wrong.
        seed: Source of chance.
    """

    name: str = "RB"
    confuses: Mapping[tuple[str, str], tuple[str, float]] = field(default_factory=dict)
    misjudges: Mapping[tuple[str, str], float] = field(default_factory=dict)
    seed: int = 1

    def __post_init__(self) -> None:
        self.chance = np.random.default_rng(self.seed)
        self.trials: list[Trial] = []
        self.at = START

    def works_through(self, bench: Bench, items: Sequence[Item], times: int = 1) -> list[Trial]:
        """Answer every item so many times, a minute apart."""
        for _ in range(times):
            for item in items:
                run = self.answers(bench.begin(item, serial(self.trials, item, bench.key.id)))
                self.at += timedelta(minutes=1)
                trial = trial_of(run, self.name, self.trials, at=self.at, millis=6000)
                self.trials.append(trial)
        return self.trials

    def answers(self, run: Run) -> Run:
        """The exercise, answered."""
        if isinstance(run, NameState):
            return run.say(self._named(run))
        assert isinstance(run, TellPair)
        other = next(taxon for taxon in run.pair if taxon != run.truth)
        wrong = self.chance.random() < self.misjudges.get(run.pair, 0.0)
        return run.look(run.item.character).decide(other if wrong else run.truth)

    def _named(self, run: NameState) -> str | float:
        truth = run.truth
        said, rate = self.confuses.get((run.character.id, str(truth)), ("", 0.0))
        return said if self.chance.random() < rate else truth
