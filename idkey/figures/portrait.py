"""Portraits from the matrix: a taxon, a specimen, or the animal as found so far."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from pathlib import Path

from idkey.figures.binding import Binding, read_binding
from idkey.figures.drawing import Group, Item, Line, Part, group, pieces, placed
from idkey.figures.geometry import Place, Point, bounds, moved
from idkey.figures.marks import bar, letter
from idkey.figures.plan import Plan, Values
from idkey.figures.scorpion import body_plan as scorpion
from idkey.figures.spider import body_plan as spider
from idkey.figures.svg import Sheet, svg
from idkey.figures.traits import Traits, traits_of_case, traits_of_specimen, traits_of_taxon
from idkey.figures.turning import turned_knobs
from idkey.model.case import Case, Finding
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.places import images_folder

PLANS: Mapping[str, Plan] = {"scorpion": scorpion.PLAN, "spider": spider.PLAN}
"""Body plans by name."""

KEPT = 256
"""How many portraits are kept in memory."""


class Heading(StrEnum):
    """Which way the animal looks."""

    UP = "up"
    LEFT = "left"


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """How a portrait lies on its paper.

    Attributes:
        heading: Which way the animal looks.
        scale_mm: Body length in mm that would fill the paper; all of one line-up take the same
            one, and a bar shows it. None fills the paper with each animal.
        width: Width of the view box.
        height: Height of the view box.
        bar: Whether a bar shows the scale; without it a drawing too small to read letters is
            not cluttered.
    """

    heading: Heading = Heading.LEFT
    scale_mm: float | None = None
    width: float = 400.0
    height: float = 250.0
    bar: bool = True

    def __post_init__(self) -> None:
        if self.scale_mm is not None and not self.scale_mm > 0:
            raise ValueError("a scale is above nought")


DEFAULT_VIEW = View()


def portrait(
    key: Key,
    subject: str | Mapping[str, str | float],
    *,
    sex: Sex | None = None,
    stage: Stage | None = None,
    view: View = DEFAULT_VIEW,
) -> str:
    """The portrait of a taxon or of a specimen, as SVG text.

    Args:
        key: The key.
        subject: Taxon id, or state ids and numbers by character id.
        sex: Sex to draw; None draws a female where the sexes differ.
        stage: Stage to draw; None draws an adult.
        view: How it lies on its paper.

    Returns:
        The drawing; empty when the key has no body plan that is known here.

    Raises:
        BindingProblems: The binding of the body plan has mistakes.
        KeyError: The key has no such taxon.
    """
    if isinstance(subject, str):
        traits = traits_of_taxon(key, subject, sex=sex, stage=stage)
        title = key.taxon[subject].name
    else:
        traits, title = traits_of_specimen(subject), "Specimen"
    if key.body_plan not in PLANS:
        return ""
    return plan_portrait(key.body_plan, _turned(key, traits, (sex, stage)), title, view)


def portrait_of_findings(key: Key, case: Case, *, view: View = DEFAULT_VIEW) -> str:
    """The animal as found so far: what no finding says stays hatched or dashed.

    Args:
        key: The key.
        case: The case.
        view: How it lies on its paper.

    Returns:
        The drawing; empty when the key has no body plan that is known here.

    Raises:
        BindingProblems: The binding of the body plan has mistakes.
    """
    if key.body_plan not in PLANS:
        return ""
    return plan_portrait(key.body_plan, knobs_found(key, case), "The animal as found", view)


def findings_drawn(key: Key, case: Case) -> tuple[Finding, ...]:
    """The findings that change the portrait, in the order they were made."""
    if key.body_plan not in PLANS:
        return ()
    sources = _bound(key.body_plan).sources.values()
    bound = {source.character for some in sources for source in some}
    sure = traits_of_case(key, case).keys() & bound
    return tuple(finding for finding in case.findings if finding.character in sure)


def length_found(key: Key, case: Case) -> bool:
    """Whether the findings say how long the animal is, so that it can be drawn to a scale."""
    return knobs_found(key, case).knows("length")


def knobs_found(key: Key, case: Case) -> Values:
    """The knobs of the key's body plan that the findings turn; none without such a plan."""
    return _turned(key, traits_of_case(key, case), (case.specimen.sex, case.specimen.stage))


def knobs_of_taxon(key: Key, taxon: str) -> Values:
    """The knobs of the key's body plan that the scores of a taxon turn; none without such a plan.

    Raises:
        KeyError: The key has no such taxon.
    """
    return _turned(key, traits_of_taxon(key, taxon))


def _turned(
    key: Key, traits: Traits, specimen: tuple[Sex | None, Stage | None] = (None, None)
) -> Values:
    plan = PLANS.get(key.body_plan)
    if plan is None:
        return Values()
    binding = _bound(key.body_plan)
    return turned_knobs(plan, binding, key=key, traits=traits, specimen=specimen)


def lineup_scale_mm(key: Key, taxa: Sequence[str]) -> float | None:
    """Body length in mm of the longest of `taxa`, to draw all of them to one scale.

    Returns:
        None when no length is known, or the key has no body plan that is known here.
    """
    lengths = [knobs_of_taxon(key, taxon).number("length", 0.0) for taxon in taxa]
    return max(lengths, default=0.0) or None


def full_length(plan: Plan, view: View) -> float:
    """Length of an animal of that plan that fills the paper."""
    up = view.heading is Heading.UP
    across, along = (view.width, view.height) if up else (view.height, view.width)
    return min(across / plan.reach.real, along / plan.reach.imag)


def _bound(plan: str) -> Binding:
    """The binding of a body plan, read again when its file has changed."""
    file = images_folder() / "bodyplans" / f"{plan}.yaml"
    return _read(plan, file, file.stat().st_mtime_ns if file.is_file() else 0)


@lru_cache(maxsize=8)
def _read(plan: str, file: Path, _changed: int) -> Binding:
    return read_binding(file, PLANS[plan])


@lru_cache(maxsize=KEPT)
def plan_portrait(plan: str, values: Values, title: str, view: View = DEFAULT_VIEW) -> str:
    """A portrait from the knobs of a body plan, as SVG text; the last ones are kept.

    Args:
        plan: Name of the body plan.
        values: Values of its knobs.
        title: What it shows, for readers that speak.
        view: How it lies on its paper.
    """
    up = view.heading is Heading.UP
    fill = full_length(PLANS[plan], view)
    known = values.knows("length")
    share = 1.0 if view.scale_mm is None else UNKNOWN_SHARE
    if view.scale_mm is not None and known:
        share = values.number("length", 0.0) / view.scale_mm
    length = fill * share
    turn = Place() if up else Place(-1j)
    animal = placed(PLANS[plan].draw(values, length), turn)
    low, high = extent(animal)
    paper = complex(view.width, view.height)
    if view.scale_mm is None:
        paper *= _stretch(high - low, view, barred=known and view.bar)
    items: list[Item] = [placed(animal, moved(paper / 2 - (low + high) / 2))]
    if view.bar and known:
        items.append(_scale_bar(length / values.number("length", 1.0), paper))
    elif view.bar and view.scale_mm is not None:
        items.append(letter("? mm", paper - (26 + 12j), size=13))
    sheet = Sheet(width=paper.real, height=paper.imag, title=title)
    return svg(sheet, items, shown=(view.width, view.height))


def _stretch(size: Point, view: View, *, barred: bool) -> float:
    """How much larger the paper must be for the animal to fill it."""
    foot = _FOOT if barred else 0.0
    wide = (size.real + 2 * _MARGIN) / view.width
    return max(wide, (size.imag + 2 * (_MARGIN + foot)) / view.height)


UNKNOWN_SHARE = 0.6
"""How far an animal of unknown length fills the paper of a line-up."""
_MARGIN = 8.0
_FOOT = 8.0


def extent(item: Item) -> tuple[Point, Point]:
    """Upper left and lower right corner of the box around a drawing."""
    points: list[Point] = []
    for piece in pieces((item,)):
        if isinstance(piece, Part | Line):
            points += piece.outline.flat(3)
    return bounds(points)


def _scale_bar(per_mm: float, paper: Point) -> Group:
    """A bar of a round length that takes up to a fifth of the paper."""
    room = paper.real * 0.2 / per_mm
    steps = [s * 10**p for p in range(4) for s in (1, 2, 5)]
    long = max((step for step in steps if step <= room), default=1)
    end = paper - (12 + 10j)
    start = end - long * per_mm
    return group(
        bar(start, end, tick=4),
        letter(f"{long:g} mm", (start + end) / 2 - 12j, size=13),
    )
