"""How often the intervals of the photo tool hold the truth, and colours suggest the right state.

Run: ``python -m tests.bench.photo_accuracy [--pictures 1000] [--out docs/photo-accuracy.md]``
Only what stands between the two marker lines of the document is replaced.
"""

import argparse
from collections import defaultdict
from collections.abc import Iterable, Mapping
from itertools import product
from pathlib import Path

import numpy as np

from idkey.engine.colour import ciede2000, lab_of_hex
from idkey.engine.measure import Lie
from idkey.engine.tilt import Tilt
from idkey.photo.colour_sample import decided, sampled, suggestions
from idkey.photo.intake import read_bytes
from idkey.photo.marks import Neutral
from idkey.photo.quality import edge_px
from tests.photo.characters import with_colours
from tests.photo.light import LIGHTS, grey, photographed, reflectance
from tests.photo.pictures import saved
from tests.photo.scenes import Run, runs, shot
from tests.photo.test_quality import granules, smooth
from tests.photo.test_quality import shot as phone_shot

START, END = "<!-- measured: start -->", "<!-- measured: end -->"
CLASSES = (
    *((tilt, Lie.TOGETHER) for tilt in Tilt),
    (Tilt.SLIGHT, Lie.APART),
)
PATCH, NEUTRAL = (8, 8, 80, 80), (104, 8, 80, 80)


def main() -> None:
    """Measure, and print or write the tables."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--pictures", type=int, default=1000, help="pictures in one plane")
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--out", type=Path)
    options = asked.parse_args()
    tables = "\n\n".join(
        (
            coverage_table(coverage(options.pictures, options.seed)),
            colour_table(colours()),
            edge_table(),
        )
    )
    said = f"Seed {options.seed}.\n\n{tables}"
    if options.out is None:
        print(said)
        return
    text = options.out.read_text("utf-8")
    head, tail = text.split(START)[0], text.split(END)[1]
    options.out.write_text(f"{head}{START}\n{said}\n{END}{tail}", "utf-8")


Rows = Mapping[tuple[str, str], list[Run]]


def coverage(pictures: int, seed: int) -> Rows:
    """Runs by kind of number and by how the part lay.

    Args:
        pictures: Photographs whose ruler lies with the part, a third of them per tilt; half as
            many as a third are taken with the ruler apart.
        seed: Of all chance.
    """
    chance = np.random.default_rng(seed)
    found: defaultdict[tuple[str, str], list[Run]] = defaultdict(list)
    for number in range(pictures):
        tilt = list(Tilt)[number % 3]
        for run in runs(chance, shot(chance, tilt)):
            found[run.kind, tilt.value].append(run)
    for _ in range(pictures // 3):
        for run in runs(chance, shot(chance, Tilt.SLIGHT, lie=Lie.APART)):
            found[f"{run.kind}, apart", Tilt.SLIGHT.value].append(run)
    return found


def coverage_table(found: Rows) -> str:
    """Coverage by kind and tilt, and of each kind as a whole."""
    lines = [
        "| number | leans | runs | truth in the 95 % interval | mean uncertainty | "
        "mean error in uncertainties |",
        "|---|---|---:|---:|---:|---:|",
    ]
    kinds = list(dict.fromkeys(kind for kind, _ in found))
    for kind in kinds:
        of_kind = {tilt: rows for (name, tilt), rows in found.items() if name == kind}
        lines += [_row(kind, tilt, rows) for tilt, rows in of_kind.items()]
        if len(of_kind) > 1:
            lines.append(_row(kind, "**all**", [run for rows in of_kind.values() for run in rows]))
    whole = [run for rows in found.values() for run in rows]
    lines.append(_row("**all numbers**", "**all**", whole))
    return "\n".join(lines)


def _row(kind: str, tilt: str, rows: list[Run]) -> str:
    held = np.mean([run.covered for run in rows])
    spread = np.mean([run.found.uncertainty / run.found.value for run in rows])
    off = np.mean([run.off for run in rows])
    return f"| {kind} | {tilt} | {len(rows)} | {held:.1%} | {spread:.1%} | {off:+.2f} |".replace(
        "%", " %"
    )


def colours() -> Iterable[tuple[str, str, str, list[tuple[bool, bool, float]]]]:
    """Every reference colour of the shipped keys, in every light.

    Yields:
        Light, reference, camera, and of each patch whether the first suggestion is right,
        whether it is said to be clear, and the error of the corrected colour.
    """
    references = ((Neutral.GREY_CARD, 0.18), (Neutral.WHITE_PAPER, 0.85), (Neutral.OTHER, 0.4))
    for people, light, (reference, share) in product((True, False), LIGHTS, references):
        rows = []
        for character in with_colours():
            for state in character.states:
                for colour in state.colours:
                    shown = reflectance(colour.lower())
                    image = photographed(shown, grey(share), light, people=people)
                    kept = read_bytes(saved(image, "JPEG", quality=85)).image
                    sample = sampled(kept, PATCH, NEUTRAL, reference=reference)
                    order = suggestions(sample, character)
                    error = float(ciede2000(np.array(sample.lab), lab_of_hex(colour)))
                    rows.append((order[0].state == state, decided(order), error))
        yield light, reference.value, "eye" if people else "made-up camera", rows


def colour_table(found: Iterable[tuple[str, str, str, list[tuple[bool, bool, float]]]]) -> str:
    """Right suggestions by light, reference and camera."""
    lines = [
        "| light | neutral thing | camera | patches | nearest state right | said to be clear | "
        "of those right | mean CIEDE2000 error |",
        "|---|---|---|---:|---:|---:|---:|---:|",
    ]
    for light, reference, camera, rows in found:
        right, clear, error = (np.array(column) for column in zip(*rows, strict=True))
        lines.append(
            f"| {light} | {reference.replace('_', ' ')} | {camera} | {len(rows)} "
            f"| {right.mean():.1%} | {clear.mean():.1%} | {right[clear].mean():.1%} "
            f"| {error.mean():.1f} |".replace("%", " %")
        )
    return "\n".join(lines)


def edge_table() -> str:
    """Width of the sharpest edges by blur, for the two rendered surfaces."""
    lines = [
        "| blur (px, sd) | smooth hand: edges (px) | granules of 9 px: edges (px) |",
        "|---:|---:|---:|",
    ]
    for blur in (0, 1, 2, 3, 4):
        widths = [
            edge_px(phone_shot(image, blur).crop((60, 60, 360, 360)), 3.0)
            for image in (smooth(), granules())
        ]
        said = " | ".join("none" if wide is None else f"{wide:.1f}" for wide in widths)
        lines.append(f"| {blur} | {said} |")
    return "\n".join(lines)


if __name__ == "__main__":
    main()
