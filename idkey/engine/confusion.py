"""How often an observer records another state than the one that is there."""

import numpy as np
from numpy.typing import NDArray

from idkey.model.case import Care, Certainty
from idkey.model.character import Character, Kind

STEP = 0.15
"""For ordinal characters: how much rarer each further step away is than the one before."""

MOST = 0.45
"""No observer is assumed to be worse than this."""

DOUBT = {Certainty.SURE: 0.0, Certainty.LIKELY: 0.2, Certainty.GUESS: 0.5}
"""Share of a finding that is taken for noise, by how sure the observer is. Common practice."""


def error_rate(character: Character, care: Care) -> float:
    """Chance that another state is recorded, given how the looking was done."""
    return min(character.error_rate * care.factor, MOST)


def confusion(character: Character, error: float) -> NDArray[np.float64]:
    """P(recorded state | true state).

    Args:
        character: A character with states; ordinal ones slip to neighbours.
        error: Chance of a slip.

    Returns:
        Shape (states, states); rows are the true state and sum to one.
    """
    n = len(character.states)
    if n == 1:
        return np.ones((1, 1))
    steps = np.abs(np.subtract.outer(np.arange(n), np.arange(n)))
    slips = STEP ** (steps - 1.0) if character.kind is Kind.ORDINAL else np.ones((n, n))
    slips[steps == 0] = 0.0
    slips *= error / slips.sum(axis=1, keepdims=True)
    return np.asarray(slips + (1.0 - error) * np.eye(n))
