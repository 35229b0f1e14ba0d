"""A limb segment, as all jointed legs have them."""

from idkey.figures.geometry import Outline, Place, Point, smooth


def rod(start: Point, end: Point, base: float, tip: float, *, belly: float = 0.0) -> Outline:
    """A limb segment from joint to joint.

    Args:
        start: Near joint.
        end: Far joint.
        base: Width near the near joint.
        tip: Width near the far joint.
        belly: How much wider it is in the middle, as a share of `base`.
    """
    length = abs(end - start)
    right = [complex(x * length, half) for x, half in profile(base, tip, belly=belly)]
    left = [p.conjugate() for p in reversed(right[1:-1])]
    return smooth((*right, *left)).placed(Place((end - start) / length, 0j, start))


def profile(base: float, tip: float, *, belly: float = 0.0) -> tuple[tuple[float, float], ...]:
    """Half the width of a segment at shares of its length, from joint to joint."""
    middle = (base + tip) / 2 + belly * base
    return (
        (-0.02, 0.0),
        (0.05, 0.42 * base),
        (0.24, 0.25 * (base + middle)),
        (0.5, 0.5 * middle),
        (0.76, 0.25 * (tip + middle)),
        (0.95, 0.42 * tip),
        (1.02, 0.0),
    )
