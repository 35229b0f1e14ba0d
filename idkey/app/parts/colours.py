"""The two colour schemes of the window, and how contrast is measured."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Colours:
    """One colour scheme; every value is ``#rrggbb`` in sRGB.

    The hues of `accent`, `hazard`, `permit` and `doubt` are those of bluish green, vermillion,
    blue and orange, made darker or lighter until they can carry text on every ground here.

    Attributes:
        ground: Behind everything.
        surface: Panes.
        raised: Cards, fields and rows that can be chosen.
        line: Hairlines that carry no meaning.
        outline: Edges of controls.
        ink: Text.
        soft: Second-rank text.
        accent: The one accent: what is chosen, what Enter does, what has the focus.
        on_accent: Text on `accent`.
        accent_soft: Ground of what is chosen.
        hazard: Text and marks about stings and bites.
        hazard_soft: Ground of the same.
        permit: Text and marks about papers.
        permit_soft: Ground of the same.
        doubt: Text and marks about what is uncertain or in conflict.
        doubt_soft: Ground of the same.
        paper: The shop tag.
        paper_ink: Writing on the shop tag.
        paper_soft: Second-rank writing on the shop tag.
        plate: Ground of drawings.
        plate_ink: Writing on that ground.

    Source: hues from Okabe & Ito 2008, Color Universal Design.
    """

    ground: str
    surface: str
    raised: str
    line: str
    outline: str
    ink: str
    soft: str
    accent: str
    on_accent: str
    accent_soft: str
    hazard: str
    hazard_soft: str
    permit: str
    permit_soft: str
    doubt: str
    doubt_soft: str
    paper: str
    paper_ink: str
    paper_soft: str
    plate: str
    plate_ink: str


LIGHT = Colours(
    ground="#EFEDE6",
    surface="#F8F6F1",
    raised="#FFFFFF",
    line="#DDD9CE",
    outline="#827E72",
    ink="#1C2320",
    soft="#4F5650",
    accent="#006B50",
    on_accent="#FFFFFF",
    accent_soft="#DCEFE6",
    hazard="#A63F00",
    hazard_soft="#FBE6DA",
    permit="#00598F",
    permit_soft="#DDECF6",
    doubt="#6F4B00",
    doubt_soft="#FAEED2",
    paper="#F4E3BE",
    paper_ink="#33280F",
    paper_soft="#5F4F2C",
    plate="#F3F1EA",
    plate_ink="#1C2320",
)

DARK = Colours(
    ground="#121614",
    surface="#1A201D",
    raised="#242B27",
    line="#333C37",
    outline="#78847C",
    ink="#ECEFE9",
    soft="#A8B2AA",
    accent="#4CC9A3",
    on_accent="#06231A",
    accent_soft="#17372D",
    hazard="#FF9C5E",
    hazard_soft="#3A2114",
    permit="#79C2EE",
    permit_soft="#12303F",
    doubt="#F0BC55",
    doubt_soft="#35280E",
    paper="#43391F",
    paper_ink="#F5E7C6",
    paper_soft="#CDBC94",
    plate="#DFDCD2",
    plate_ink="#1C2320",
)

TEXT_CONTRAST = 4.5
"""Least contrast of text with its ground. Source: WCAG 2.2, success criterion 1.4.3 (AA)."""

GRAPHIC_CONTRAST = 3.0
"""Least contrast of controls and marks. Source: WCAG 2.2, success criterion 1.4.11 (AA)."""


def luminance(colour: str) -> float:
    """Relative luminance of a ``#rrggbb`` colour, from 0 (black) to 1 (white).

    Source: WCAG 2.2, definition of relative luminance.
    """
    shares = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    red, green, blue = (_linear(share) for share in shares)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two ``#rrggbb`` colours, from 1 to 21; not rounded.

    Source: WCAG 2.2, definition of contrast ratio.
    """
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def _linear(share: float) -> float:
    return share / 12.92 if share <= 0.04045 else float(((share + 0.055) / 1.055) ** 2.4)
