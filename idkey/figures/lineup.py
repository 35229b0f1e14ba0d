"""How portraits share a scale, and how much of their paper each takes at it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

from idkey.figures.plan import Plan, Values
from idkey.figures.portrait import (
    PLANS,
    UNKNOWN_SHARE,
    View,
    extent,
    full_length,
    knobs_found,
    knobs_of_taxon,
)
from idkey.model.case import Case
from idkey.model.key import Key

_EDGE = 10.0
_SAMPLE = 160.0
"""Length at which an animal is drawn to see how far its limbs reach."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Lineup:
    """A scale for the portraits of a key.

    Attributes:
        view: How each is drawn, without a bar; without a scale when no length is known.
        shares: Share of its paper that each taxon takes, by taxon id; the largest takes 1.
    """

    view: View
    shares: Mapping[str, float] = field(default_factory=dict)


def lineup(key: Key, taxa: Sequence[str], *, width: float, height: float) -> Lineup:
    """How to draw all of `taxa` to one scale, at which the one that reaches farthest fits.

    Args:
        key: The key.
        taxa: Taxon ids.
        width: Width of the view box.
        height: Height of the view box.
    """
    view = View(width=width, height=height, bar=False)
    plan = PLANS.get(key.body_plan)
    if plan is None:
        return Lineup(view=view)
    known = {taxon: knobs_of_taxon(key, taxon) for taxon in taxa}
    reaches = {taxon: _reach(plan, values, view) for taxon, values in known.items()}
    mm = {
        taxon: reaches[taxon] * values.number("length", 0.0)
        for taxon, values in known.items()
        if values.knows("length")
    }
    largest = max(mm.values(), default=0.0)
    if not largest:
        return Lineup(view=view)
    unknown = UNKNOWN_SHARE * full_length(plan, view)
    shares = {t: mm[t] / largest if t in mm else reach * unknown for t, reach in reaches.items()}
    return Lineup(view=replace(view, scale_mm=full_length(plan, view) * largest), shares=shares)


def found_share(key: Key, case: Case, view: View) -> float:
    """Share of its paper that the animal as found takes at the scale of a view.

    Returns:
        Above 1 when it does not fit; 1 without a scale, or while its length is not known.
    """
    plan = PLANS.get(key.body_plan)
    if plan is None or view.scale_mm is None:
        return 1.0
    values = knobs_found(key, case)
    if not values.knows("length"):
        return 1.0
    length = full_length(plan, view) * values.number("length", 0.0) / view.scale_mm
    return _reach(plan, values, view) * length


def _reach(plan: Plan, values: Values, view: View) -> float:
    """Share of the paper that an animal one unit long takes; all animals here look left."""
    low, high = extent(plan.draw(values, _SAMPLE))
    size = (high - low) / _SAMPLE
    return max(size.imag / (view.width - _EDGE), size.real / (view.height - _EDGE))
