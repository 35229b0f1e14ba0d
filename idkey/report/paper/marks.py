"""Small drawings: marks for danger, papers and verdicts, the shop tag, the square code."""

import io

import segno

from idkey.engine.result import Stake, VerdictKind
from idkey.report.paper.sheet import ACCENT, HAZARD, INK, PERMIT, WASH, Colour, Sheet

_SIGNS = {
    VerdictKind.HOLDS: "✓",
    VerdictKind.TOO_BROAD: "↔",
    VerdictKind.CONTRADICTED: "✗",
    VerdictKind.OPEN: "?",
    VerdictKind.OUTSIDE: "∉",
    VerdictKind.LABEL_UNKNOWN: "–",
}


def stake_mark(sheet: Sheet, stake: Stake, x: float, y: float, size: float) -> None:
    """A triangle with "!" for danger, a leaf of paper with "§" for permits; `size` in mm."""
    if stake is Stake.HAZARD:
        points = [
            (x, y + size * 0.92),
            (x + size / 2, y + size * 0.04),
            (x + size, y + size * 0.92),
        ]
        _filled(sheet, points, HAZARD)
        _letter(sheet, "!", (x + size / 2, y + size * 0.81), size * 1.75)
        return
    fold = size * 0.26
    left, right = x + size * 0.14, x + size * 0.86
    points = [(left, y), (right - fold, y), (right, y + fold), (right, y + size), (left, y + size)]
    _filled(sheet, points, PERMIT)
    _letter(sheet, "§", (x + size / 2, y + size * 0.76), size * 1.75)


def _filled(sheet: Sheet, points: list[tuple[float, float]], colour: Colour) -> None:
    with sheet.tagged("/Artifact"):
        sheet.set_fill_color(*colour)
        sheet.polygon(points, style="F")


def _letter(
    sheet: Sheet, text: str, at: tuple[float, float], size_pt: float, colour: Colour | None = None
) -> None:
    """A bold sign centred on x with its baseline at y."""
    with sheet.tagged("/Artifact"):
        sheet.font(size_pt, "B", colour or (255, 255, 255))
        sheet.text(at[0] - sheet.get_string_width(text) / 2, at[1], text)


def verdict_mark(sheet: Sheet, kind: VerdictKind, x: float, y: float, size: float) -> None:
    """A round mark with the sign of a verdict; `size` is its diameter in mm."""
    colour = HAZARD if kind is VerdictKind.CONTRADICTED else ACCENT
    with sheet.tagged("/Artifact"):
        sheet.set_fill_color(*colour)
        sheet.ellipse(x, y, size, size, style="F")
    _letter(sheet, _SIGNS[kind], (x + size / 2, y + size * 0.71), size * 1.75)


def shop_tag(sheet: Sheet, x: float, y: float, width: float, height: float) -> None:
    """An empty shop tag: a card with a cut corner side and a hole for the string."""
    nose = min(7.0, height / 2)
    cut = nose * 0.6
    points = [
        (x + cut, y), (x + width, y), (x + width, y + height), (x + cut, y + height),
        (x, y + height - cut), (x, y + cut),
    ]  # fmt: skip
    with sheet.tagged("/Artifact"):
        sheet.set_fill_color(*WASH)
        sheet.set_draw_color(*INK)
        sheet.set_line_width(0.3)
        sheet.polygon(points, style="DF")
        sheet.set_fill_color(255, 255, 255)
        hole = 2.6
        sheet.ellipse(x + 2.6, y + height / 2 - hole / 2, hole, hole, style="DF")


def square_code(sheet: Sheet, text: str, x: float, y: float, size: float) -> None:
    """A QR code of `text`, `size` mm wide with its quiet zone, error correction M."""
    image = io.BytesIO()
    segno.make(text, error="m", micro=False).save(image, kind="png", scale=6, border=2)
    image.seek(0)
    sheet.image(image, x=x, y=y, w=size, h=size, alt_text=text)
