"""Numbers as classes, for formats that know only states."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from idkey.model.score import Spans

MOST_CLASSES = 6


@dataclass(frozen=True, slots=True)
class Bins:
    """Classes of a number.

    Attributes:
        cuts: Bounds between neighbouring classes, ascending; a value on a bound belongs above.
        unit: Unit, for the labels.
    """

    cuts: tuple[float, ...]
    unit: str = ""

    def labels(self) -> tuple[str, ...]:
        """One label per class, lowest first."""
        unit = f" {self.unit}" if self.unit else ""
        middle = zip(self.cuts, self.cuts[1:], strict=False)
        return (
            f"under {self.cuts[0]:g}{unit}",
            *(f"{low:g} to under {high:g}{unit}" for low, high in middle),
            f"{self.cuts[-1]:g}{unit} or more",
        )

    def classes(self, spans: Spans) -> tuple[int, ...]:
        """The classes that a range touches; an open bound touches all beyond."""
        low, high = bounds(spans)
        first = 0 if low is None else sum(cut <= low for cut in self.cuts)
        last = len(self.cuts) if high is None else sum(cut <= high for cut in self.cuts)
        return tuple(range(first, last + 1))


def bounds(spans: Spans) -> tuple[float | None, float | None]:
    """The range that a score stands for: its bounds, or its mean where it has no other."""
    if spans.low is None and spans.high is None:
        return spans.mean, spans.mean
    return spans.low, spans.high


def bins(ranges: Iterable[Spans], unit: str) -> Bins | None:
    """Classes that tell these ranges apart; None when there is nothing to tell apart.

    The cuts stand where ranges start, spread evenly over the starts there are.
    """
    starts = sorted({low for low, _ in map(bounds, ranges) if low is not None})
    ends = sorted({high for _, high in map(bounds, ranges) if high is not None})
    cuts = starts[1:] if len(starts) > 1 else _after(starts, ends)
    if not cuts:
        return None
    return Bins(tuple(_spread(cuts, MOST_CLASSES - 1)), unit)


def _after(starts: Sequence[float], ends: Sequence[float]) -> Sequence[float]:
    """With one start or none, the ends are all there is to cut at."""
    return [end for end in ends if not starts or end > starts[0]][:-1]


def _spread(values: Sequence[float], most: int) -> list[float]:
    if len(values) <= most:
        return list(values)
    step = (len(values) - 1) / (most - 1)
    return [values[round(index * step)] for index in range(most)]
