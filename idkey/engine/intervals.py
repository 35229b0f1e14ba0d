"""Rates with their uncertainty, and how many animals of a lot to look at."""

from dataclasses import dataclass
from math import comb, sqrt
from statistics import NormalDist


@dataclass(frozen=True, slots=True)
class Interval:
    """A share with its limits, each in [0, 1]."""

    share: float
    low: float
    high: float


def wilson(hits: int, trials: int, confidence: float = 0.95) -> Interval:
    """The Wilson score interval of a share.

    Args:
        hits: Successes, from 0 to `trials`.
        trials: Trials; with none the interval is everything.
        confidence: Two-sided confidence.

    Raises:
        ValueError: The counts do not make sense.

    Source: Wilson 1927, J. Amer. Statist. Assoc. 22: 209-212.
    """
    if not 0 <= hits <= trials:
        raise ValueError(f"{hits} of {trials} is no share")
    if trials == 0:
        return Interval(0.5, 0.0, 1.0)
    z = NormalDist().inv_cdf((1 + confidence) / 2)
    share, square = hits / trials, z * z / trials
    middle = (share + square / 2) / (1 + square)
    half = z / (1 + square) * sqrt(share * (1 - share) / trials + square / (4 * trials))
    low = 0.0 if hits == 0 else max(0.0, middle - half)
    high = 1.0 if hits == trials else min(1.0, middle + half)
    return Interval(share, low, high)


def unseen_chance(lot: int, wrong: int, examined: int, found: int = 0) -> float:
    """P(at most `found` wrong animals among `examined` | `wrong` of the `lot` are wrong).

    Hypergeometric, exact.

    Raises:
        ValueError: The counts do not make sense.
    """
    if not (0 <= wrong <= lot and 0 <= examined <= lot):
        raise ValueError("a lot cannot hold more wrong or examined animals than animals")
    ways = sum(
        comb(wrong, k) * comb(lot - wrong, examined - k)
        for k in range(found + 1)
        if examined - k >= 0
    )
    return ways / comb(lot, examined)


def animals_to_examine(lot: int, share: float, confidence: float = 0.95) -> int:
    """Fewest animals to examine so that a lot with more than `share` wrong would show one.

    Args:
        lot: Animals in the lot, at least 1.
        share: Largest share of wrong animals one is ready to miss, in [0, 1).
        confidence: Wanted chance of seeing at least one wrong animal otherwise.

    Raises:
        ValueError: The lot is empty, or a share or confidence is out of range.
    """
    if lot < 1 or not 0 <= share < 1 or not 0 < confidence < 1:
        raise ValueError("a lot has animals, a share lies in [0, 1), a confidence in (0, 1)")
    wrong = min(lot, int(share * lot + 1e-9) + 1)
    low, high = 1, lot
    while low < high:
        middle = (low + high) // 2
        if unseen_chance(lot, wrong, middle) <= 1 - confidence:
            high = middle
        else:
            low = middle + 1
    return low


def most_wrong(lot: int, examined: int, found: int, confidence: float = 0.95) -> int:
    """Most wrong animals the lot can hold, given `found` among `examined`, at that confidence."""
    if not 0 <= found <= examined <= lot:
        raise ValueError("found of examined of the lot do not make sense")
    possible = found
    for wrong in range(found, lot - (examined - found) + 1):
        if unseen_chance(lot, wrong, examined, found) <= 1 - confidence:
            break
        possible = wrong
    return possible
