"""From marks to a number, and from the number to a finding."""

from idkey.engine.measure import Known, Measured, count, length, ratio
from idkey.engine.strokes import Line, length_px
from idkey.engine.tilt import Stroke
from idkey.model.case import Finding
from idkey.model.character import Character, Kind, Look
from idkey.photo.faults import PictureError
from idkey.photo.intake import Picture
from idkey.photo.marks import Marks, text_of

PER_CENT = "%"

UNLIKE = 1.3
"""How many times longer than another a repeat may be; beyond, it is another line."""


def line_names(character: Character) -> tuple[str, str]:
    """What the two lines are called: upper and lower of a ratio, or the line and the ruler.

    Units such as ``"length / width"`` name the lines; elsewhere the names are general.
    """
    if character.kind is Kind.MEASUREMENT:
        return "line", "ruler"
    upper, slash, lower = (part.strip() for part in character.unit.partition("/"))
    if slash and upper and lower:
        return upper, lower
    return ("part", "whole") if character.unit == PER_CENT else ("first line", "second line")


def measured(marks: Marks, character: Character, picture: Picture) -> Measured | None:
    """The number that the marks stand for; None while something is missing.

    Args:
        marks: What was drawn.
        character: A numeric character.
        picture: The picture it was drawn on.

    Raises:
        PictureError: A line is too short to be measured.
    """
    if character.kind is Kind.COUNT:
        doubtful = sum(spot.doubtful for spot in marks.spots)
        return count(len(marks.spots) - doubtful, doubtful) if marks.spots else None
    lines, others = _drawn(marks.lines), _drawn(marks.others)
    if not lines or not others or not character.kind.numeric:
        return None
    for name, strokes in zip(line_names(character), (lines, others), strict=True):
        _check_repeats(name, strokes)
    setting = marks.setting(picture.width, picture.height)
    try:
        if character.kind is Kind.RATIO:
            factor = 100.0 if character.unit == PER_CENT else 1.0
            return ratio(Line(lines), Line(others), setting, factor)
        if marks.ruler <= 0:
            return None
        known = Known(length=marks.ruler, uncertainty=marks.ruler_error)
        return length(Line(lines), Line(others), known, setting)
    except ValueError as err:
        px = min(length_px(stroke) for stroke in (*lines, *others))
        raise PictureError(
            f"A line of {px:.0f} pixels is too short for clicks that are "
            f"{marks.edge.click_px:g} pixels uncertain.",
            "Take the picture from nearer, or mark a longer part of the ruler.",
        ) from err


def finding(marks: Marks, found: Measured, *, look: Look, note: str = "") -> Finding:
    """The finding that a measured number makes.

    Args:
        marks: What was drawn; it stays with the finding.
        found: The number.
        look: How the animal was looked at.
        note: Free text.
    """
    spread = found.uncertainty
    return Finding(
        character=marks.character,
        value=float(f"{found.value:.6g}"),
        uncertainty=float(f"{spread:.3g}") if spread else None,
        look=look,
        note=note,
        pictures=(marks.picture,),
        marks=text_of(marks),
    )


def seen(marks: Marks, states: tuple[str, ...], *, look: Look, note: str = "") -> Finding:
    """The finding that a person makes by naming states after looking at a picture.

    Args:
        marks: Where was looked.
        states: Ids of the states the person named.
        look: How the animal was looked at.
        note: Free text.
    """
    return Finding(
        character=marks.character,
        states=states,
        look=look,
        note=note,
        pictures=(marks.picture,),
        marks=text_of(marks),
    )


def photo_look(character: Character) -> Look:
    """The way of looking a picture of this character stands for, if nobody says otherwise."""
    for look in character.looks:
        if look in (Look.ABOVE, Look.BELOW):
            return look
    return character.looks[0]


def rounded(found: Measured) -> tuple[str, str]:
    """Value and standard uncertainty as text: two figures of the uncertainty, GUM 7.2.6."""
    spread = found.uncertainty
    if not spread:
        return f"{found.value:g}", "0"
    exact = f"{spread:.1e}"
    places = max(0, 1 - int(exact[exact.index("e") + 1 :]))
    return f"{found.value:.{places}f}", f"{spread:.{places}f}"


def _check_repeats(name: str, strokes: tuple[Stroke, ...]) -> None:
    lengths = [length_px(stroke) for stroke in strokes]
    if max(lengths) > UNLIKE * min(lengths):
        raise PictureError(
            f"The repeats of “{name}” are {min(lengths):.0f} to {max(lengths):.0f} pixels long: "
            "they cannot be the same line.",
            "Choose a point of the wrong one and remove it.",
        )


def _drawn(strokes: tuple[Stroke, ...]) -> tuple[Stroke, ...]:
    """Strokes that are lines already: two points that differ."""
    return tuple(stroke for stroke in strokes if len(stroke) > 1 and length_px(stroke) > 0)
