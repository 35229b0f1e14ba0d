"""Writes the list of plates of a body plan: names, files, and where to click."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from idkey.figures.geometry import Points
from idkey.figures.plates import Names
from idkey.figures.svg import number


@dataclass(frozen=True, slots=True, kw_only=True)
class PlateSet:
    """The plates of one body plan.

    Attributes:
        names: Names of the parts by part id.
        views: Names of the views by view id.
        size: Width and height of each plate.
        draw: Draws one view, labelled in English, as SVG text.
        areas: Rings to click on by part id, for one view.
    """

    names: Mapping[str, Names]
    views: Mapping[str, Names]
    size: tuple[float, float]
    draw: Callable[[str], str]
    areas: Callable[[str], Mapping[str, Sequence[Points]]]


HEAD = """\
# Orientation plates: which drawings there are, what their parts are called, and where to click.
# Written by `python -m idkey.figures.draw images`; the names come from idkey/figures.
# Areas are rings of x, y, x, y … in the view box of the drawing; where two overlap, the first
# part counts.

"""


def plate_files(body_plan: str, plates: PlateSet) -> dict[str, str]:
    """The plates of a body plan and their list, by path below the image folder."""
    found = {f"plates/{body_plan}-{view}.svg": plates.draw(view) for view in plates.views}
    found[f"plates/{body_plan}.yaml"] = HEAD + "\n".join(_lines(body_plan, plates)) + "\n"
    return found


def _lines(body_plan: str, plates: PlateSet) -> list[str]:
    lines = ["parts:"]
    lines += [f"  {part}: {_names(names)}" for part, names in plates.names.items()]
    lines.append("plates:")
    for view, names in plates.views.items():
        width, height = map(number, plates.size)
        lines += [
            f"  - id: {view}",
            f"    file: plates/{body_plan}-{view}.svg",
            f"    names: {_names(names)}",
            f"    size: [{width}, {height}]",
            "    areas:",
        ]
        for part, rings in plates.areas(view).items():
            lines.append(f"      {part}:")
            lines += [f"        - [{_ring(ring)}]" for ring in rings]
    return lines


def _names(names: Names) -> str:
    return "{" + ", ".join(f'{language}: "{name}"' for language, name in names.items()) + "}"


def _ring(ring: Points) -> str:
    return ", ".join(f"{p.real:.1f}, {p.imag:.1f}" for p in ring)
