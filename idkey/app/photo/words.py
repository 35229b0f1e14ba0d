"""What the photo tool says: tilts, edges, warnings and causes in plain words."""

from PySide6.QtCore import QCoreApplication

from idkey.engine.measure import Cause, Lie, Measured
from idkey.engine.strokes import Edge
from idkey.engine.tilt import Tilt
from idkey.model.character import Character, Kind
from idkey.photo.colour_sample import Warn
from idkey.photo.marks import Neutral
from idkey.photo.quality import Fault
from idkey.photo.reading import rounded

translate = QCoreApplication.translate


def tilt_words(tilt: Tilt) -> str:
    """How far a part leans, in a word or two."""
    return {
        Tilt.FLAT: translate("photo", "Flat"),
        Tilt.SLIGHT: translate("photo", "Slightly"),
        Tilt.CLEAR: translate("photo", "Clearly"),
    }[tilt]


def tilt_meaning(tilt: Tilt) -> str:
    """What that means on the table."""
    rise = {Tilt.FLAT: 17, Tilt.SLIGHT: 42, Tilt.CLEAR: 71}[tilt]  # mm: 100 sin of the most
    return {
        Tilt.FLAT: translate("photo", "Of 10 cm, one end would stand at most {mm} mm higher."),
        Tilt.SLIGHT: translate("photo", "Of 10 cm, one end would stand 9 to {mm} mm higher."),
        Tilt.CLEAR: translate("photo", "Of 10 cm, one end would stand 26 to {mm} mm higher."),
    }[tilt].format(mm=rise)


def lie_words(lie: Lie) -> str:
    """How two things lie to each other."""
    return {
        Lie.TOGETHER: translate("photo", "In one plane"),
        Lie.APART: translate("photo", "Apart"),
    }[lie]


def lie_meaning(lie: Lie, character: Character) -> str:
    """What that means for a ruler, or for the two lines of a ratio."""
    if lie is Lie.APART:
        return translate(
            "photo", "They lie at different heights or lean differently: 5 % is allowed for."
        )
    if character.kind is Kind.MEASUREMENT:
        return translate("photo", "The ruler lies at the height of the part and leans as it does.")
    return translate("photo", "Both lines lie on one flat part.")


def edge_words(edge: Edge) -> str:
    """How well end points can be seen."""
    return {
        Edge.SHARP: translate("photo", "Sharp"),
        Edge.ORDINARY: translate("photo", "Ordinary"),
        Edge.SOFT: translate("photo", "Soft"),
    }[edge]


def edge_meaning(edge: Edge) -> str:
    """What that means in pixels."""
    return translate("photo", "A click is held to be right to about ± {px} pixels.").format(
        px=f"{edge.click_px:g}"
    )


def neutral_words(neutral: Neutral) -> str:
    """What the neutral thing is."""
    return {
        Neutral.GREY_CARD: translate("photo", "Grey card (18 %)"),
        Neutral.WHITE_PAPER: translate("photo", "White paper"),
        Neutral.OTHER: translate("photo", "Other grey or white thing"),
    }[neutral]


def cause_words(cause: Cause) -> str:
    """Where an uncertainty comes from."""
    return {
        Cause.CLICKS: translate("photo", "clicks"),
        Cause.BENDS: translate("photo", "bends cut short"),
        Cause.TILT: translate("photo", "tilt and height"),
        Cause.SCALE: translate("photo", "the ruler"),
    }[cause]


def budget_words(found: Measured) -> str:
    """The causes of an uncertainty by their share of its square, largest first."""
    whole = sum(part**2 for _, part in found.budget)
    parts = sorted(found.budget, key=lambda one: -one[1])
    shares = [(cause, part**2 / whole) for cause, part in parts if part**2 >= 0.005 * whole]
    return ", ".join(
        f"{cause_words(cause)} {share:.0%}".replace("%", " %") for cause, share in shares
    )


def number_words(found: Measured, character: Character, decimal: str = ".") -> tuple[str, str]:
    """The number with its uncertainty, and its 95 % interval, as they are shown."""
    value, spread = rounded(found)
    unit = character.unit if character.kind is not Kind.RATIO or character.unit == "%" else ""
    if not found.uncertainty:
        return f"{value} {unit}".strip().replace(".", decimal), ""
    if character.kind is Kind.COUNT:
        said = f"{found.value:g} ± {found.uncertainty:.2g} {unit}".strip()
        span = translate(
            "photo", "From {low:g} to {high:g}, as the doubtful ones are counted"
        ).format(low=found.low, high=found.high)
        return said.replace(".", decimal), span
    places = len(value.partition(".")[2])
    said = f"{value} ± {spread} {unit}".strip()
    span = translate("photo", "95 % interval: {low} to {high}").format(
        low=f"{found.low:.{places}f}", high=f"{found.high:.{places}f}"
    )
    return said.replace(".", decimal), span.replace(".", decimal)


def warn_words(warn: Warn) -> str:
    """What makes a colour less sure, and what to do."""
    return {
        Warn.CLIPPED: translate(
            "photo", "The patch is blown out in places; mark a part without glare."
        ),
        Warn.REFERENCE_CLIPPED: translate(
            "photo", "The neutral thing is blown out; its colour cannot be read. Expose it less."
        ),
        Warn.DARK: translate(
            "photo", "The picture is too dark; colours of dark parts are mostly noise."
        ),
        Warn.TINTED: translate(
            "photo", "The light is strongly coloured; daylight would be much surer."
        ),
        Warn.UNEVEN: translate(
            "photo", "The neutral thing is not evenly lit; keep shadows and print out of the mark."
        ),
        Warn.BLURRED: translate(
            "photo", "The picture is blurred here; colours of small parts run together."
        ),
        Warn.PATCHY: translate(
            "photo", "The patch holds several colours; mark a smaller, even one."
        ),
        Warn.SMALL: translate("photo", "The patch or the neutral mark is tiny; mark more of it."),
        Warn.NO_EXPOSURE: translate(
            "photo",
            "How light the neutral thing really is is not known, so lightness is left open.",
        ),
        Warn.MOULTED: translate(
            "photo", "A freshly moulted animal is paler than its kind; wait two weeks if you can."
        ),
    }[warn]


def fault_words(fault: Fault) -> str:
    """Why a patch cannot show a fine surface."""
    return {
        Fault.SMALL: translate(
            "photo", "the patch has too few pixels; take the picture from nearer"
        ),
        Fault.BLURRED: translate("photo", "it is blurred"),
        Fault.UNJUDGED: translate(
            "photo", "no edge in it is clear enough to tell whether it is sharp"
        ),
        Fault.DARK: translate("photo", "it is too dark"),
        Fault.GLARE: translate("photo", "glare covers too much of it"),
        Fault.GRAINY: translate("photo", "its noise looks like granules"),
    }[fault]
