"""How often somebody who is right in a given share of pictures gets a pair attested.

Prints the table of ``docs/drill.md``: ``python -m tests.bench.drill_passing``.
"""

import numpy as np

from idkey.drill.progress import SHOWN, WINDOW
from idkey.engine.intervals import wilson

PEOPLE = 4000
PICTURES = (60, 120, 300)
SHARES = (0.80, 0.85, 0.88, 0.90, 0.92, 0.95, 0.97, 0.99)


def fewest_right() -> dict[int, int]:
    """Right answers needed per number of pictures; numbers at which none suffices are missing."""
    found = {}
    for number in range(1, WINDOW + 1):
        enough = [right for right in range(number + 1) if wilson(right, number).low >= SHOWN]
        if enough:
            found[number] = enough[0]
    return found


def first_pass(right: np.ndarray, needed: dict[int, int]) -> int | None:
    """After which picture somebody who keeps practising first passes; None when never."""
    total = np.concatenate([[0], np.cumsum(right)])
    for done in range(1, len(right) + 1):
        number = min(done, WINDOW)
        if number in needed and total[done] - total[done - number] >= needed[number]:
            return done
    return None


def main() -> None:
    """Print the table."""
    chance, needed = np.random.default_rng(1), fewest_right()
    print(f"needed of {WINDOW}: {needed[WINDOW]}; fewest pictures: {min(needed)}")
    for share in SHARES:
        fixed = (chance.binomial(WINDOW, share, 20_000) >= needed[WINDOW]).mean()
        passes = [first_pass(chance.random(max(PICTURES)) < share, needed) for _ in range(PEOPLE)]
        by = [np.mean([p is not None and p <= most for p in passes]) for most in PICTURES]
        print(f"{share:.2f}  fixed {fixed:.3f}  " + "  ".join(f"{one:.3f}" for one in by))


if __name__ == "__main__":
    main()
