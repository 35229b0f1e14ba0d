"""What a body plan lets a binding change, and what a portrait is drawn from."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from idkey.figures.drawing import Group
from idkey.figures.ink import UNKNOWN, Skin, skin

Value = float | str
"""A number, a colour as ``#rrggbb`` or the name of a choice."""


class KnobKind(StrEnum):
    """What sort of value a knob takes."""

    COLOUR = "colour"
    NUMBER = "number"
    CHOICE = "choice"


@dataclass(frozen=True, slots=True, kw_only=True)
class Knob:
    """Something on a body plan that a character can change.

    Attributes:
        kind: What sort of value it takes.
        low: Smallest number it takes.
        high: Largest number it takes.
        choices: Names it takes, for a choice.
    """

    kind: KnobKind
    low: float = 0.0
    high: float = 0.0
    choices: tuple[str, ...] = ()


COLOUR = Knob(kind=KnobKind.COLOUR)


def number(low: float, high: float) -> Knob:
    """A knob for numbers from `low` to `high`."""
    return Knob(kind=KnobKind.NUMBER, low=low, high=high)


def choice(*names: str) -> Knob:
    """A knob for one of `names`."""
    return Knob(kind=KnobKind.CHOICE, choices=names)


@dataclass(frozen=True, slots=True)
class Values:
    """Values of knobs; a knob that is missing is not known.

    Attributes:
        known: Value per knob name, as pairs, so that equal portraits are found again.
    """

    known: tuple[tuple[str, Value], ...] = ()

    def skin(self, knob: str, *, dashed: bool = False) -> Skin:
        """The skin of a colour; hatched where it is not known."""
        for name, value in self.known:
            if name == knob and isinstance(value, str):
                return skin(value, dashed=dashed)
        return Skin(UNKNOWN.fill, UNKNOWN.shade, UNKNOWN.light, UNKNOWN.detail, True, dashed)

    def number(self, knob: str, otherwise: float) -> float:
        """A number; `otherwise` where it is not known."""
        for name, value in self.known:
            if name == knob and isinstance(value, float | int):
                return float(value)
        return otherwise

    def choice(self, knob: str, otherwise: str) -> str:
        """A choice; `otherwise` where it is not known."""
        for name, value in self.known:
            if name == knob and isinstance(value, str):
                return value
        return otherwise

    def knows(self, *knobs: str) -> bool:
        """Whether all of `knobs` are known."""
        names = {name for name, _ in self.known}
        return names.issuperset(knobs)


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """A body plan.

    Attributes:
        knobs: What a binding may change, by name.
        draw: Draws the animal at a body length in drawing units, front of the body at 0,
            heading up.
        parts: Names of the groups in the drawing.
        reach: How many body lengths the largest animal spans, (across, along); at one scale
            it must still fit its paper.
    """

    knobs: Mapping[str, Knob]
    draw: Callable[[Values, float], Group]
    parts: tuple[str, ...]
    reach: complex
