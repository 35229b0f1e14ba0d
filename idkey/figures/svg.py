"""Drawings as SVG Tiny text: no filters, styles, scripts or outside references."""

from collections.abc import Iterable
from dataclasses import dataclass
from xml.sax.saxutils import escape, quoteattr

from idkey.figures.drawing import Dot, Group, Item, Line, Part, Patch, Words, pieces
from idkey.figures.fields import LIGHT, hatching, rim
from idkey.figures.geometry import Outline, Point, bounds
from idkey.figures.ink import EDGE, EDGE_WEIGHT, HALO, HALO_WEIGHT, lightened


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """The paper of a drawing.

    Attributes:
        width: Width of the view box.
        height: Height of the view box.
        title: What it shows, for readers that speak; no markup.
    """

    width: float
    height: float
    title: str


def svg(sheet: Sheet, items: Iterable[Item]) -> str:
    """The drawing as a whole SVG document; the ground stays transparent."""
    items = tuple(items)
    size = f"{number(sheet.width)} {number(sheet.height)}"
    lines = [
        f'<svg xmlns="http://www.w3.org/2000/svg" version="1.2" baseProfile="tiny" '
        f'width="{number(sheet.width)}" height="{number(sheet.height)}" viewBox="0 0 {size}">',
        f"<title>{escape(sheet.title)}</title>",
        *_halo(items),
        '<g stroke-linecap="round" stroke-linejoin="round">',
        *(line for item in items for line in _item(item)),
        "</g>",
        "</svg>",
    ]
    return "\n".join(lines) + "\n"


def number(value: float) -> str:
    """`value` to two places, without needless zeros."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def path(outline: Outline) -> str:
    """The ``d`` of an outline, in relative cubic pieces."""
    here = _rounded(outline.start)
    words = [f"M{_joined((here.real, here.imag))}"]
    for piece in outline.pieces:
        one, two, end = (_rounded(point) for point in piece)
        steps = (one - here, two - here, end - here)
        words.append("c" + _joined([x for step in steps for x in (step.real, step.imag)]))
        here = end
    return "".join(words) + ("Z" if outline.closed else "")


def _rounded(point: Point) -> Point:
    return complex(round(point.real, 2), round(point.imag, 2))


def _joined(values: Iterable[float]) -> str:
    text = " ".join(number(value) for value in values)
    return text.replace(" -", "-").replace(" 0.", " .").replace("-0.", "-.")


def _halo(items: tuple[Item, ...]) -> list[str]:
    by_weight: dict[float, list[str]] = {}
    for item in pieces(items):
        if isinstance(item, Part) or (isinstance(item, Line | Patch) and item.haloed):
            by_weight.setdefault(_halo_weight(item), []).append(path(item.outline))
    return [
        f'<path fill="none" stroke="{HALO}" stroke-width="{number(weight)}" '
        f'stroke-linejoin="round" stroke-linecap="round" d="{"".join(ways)}"/>'
        for weight, ways in sorted(by_weight.items())
    ]


def _halo_weight(item: Part | Line | Patch) -> float:
    if isinstance(item, Line) and item.weight < EDGE_WEIGHT:
        return item.weight + HALO_WEIGHT
    return (0.0 if isinstance(item, Patch) else item.weight) + 2 * HALO_WEIGHT


def _item(item: Item) -> list[str]:
    if isinstance(item, Group):
        inner = [line for part in item.items for line in _item(part)]
        return [f"<g{_id(item.name)}>", *inner, "</g>"] if item.name else inner
    if isinstance(item, Part):
        return _part(item)
    if isinstance(item, Words):
        return [_words(item)]
    if isinstance(item, Dot):
        at = f'cx="{number(item.at.real)}" cy="{number(item.at.imag)}" r="{number(item.radius)}"'
        return [f'<circle {at} fill="{item.colour}"/>']
    if isinstance(item, Patch):
        faint = f' fill-opacity="{number(item.opacity)}"' if item.opacity < 1 else ""
        return [f'<path{_id(item.name)} fill="{item.colour}"{faint} d="{path(item.outline)}"/>']
    return [_stroke((item.outline,), item.colour, item.weight, item.dash)]


def _part(part: Part) -> list[str]:
    skin = part.skin
    fill = f'<path{_id(part.name)} fill="{skin.fill}" d="{path(part.outline)}"/>'
    lines = [fill]
    if skin.hatched:
        lines.append(_stroke(hatching(part.outline.flat(6), 5), skin.detail, 0.8))
    elif part.shaded:
        lines += _shading(part)
    if not part.weight:
        return lines
    dash = (4.0, 3.2) if skin.dashed else ()
    return [*lines, _stroke((part.outline,), EDGE, part.weight, dash)]


def _shading(part: Part) -> list[str]:
    low, high = bounds(part.outline.flat(4))
    small = min((high - low).real, (high - low).imag)
    reach = min(small * 0.22, 9.0)
    if reach < 1.1:
        return []
    shade = rim(part.outline, toward=-LIGHT, near=0, far=reach, spread=0.05)
    lines = [_fill(shade, part.skin.shade)]
    if part.gloss > 0 and reach > 1.7:
        near = part.weight * 0.5 + reach * 0.28
        tone = (
            part.skin.light
            if part.gloss <= 1
            else lightened(part.skin.light, 14 * (part.gloss - 1))
        )
        glint = rim(
            part.outline, toward=LIGHT, near=near, far=near + reach * 0.4 * part.gloss, spread=0.45
        )
        lines.append(_fill(glint, tone))
    return [line for line in lines if line]


def _fill(outlines: tuple[Outline, ...], colour: str) -> str:
    ways = "".join(path(outline) for outline in outlines)
    return f'<path fill="{colour}" d="{ways}"/>' if ways else ""


def _stroke(
    outlines: tuple[Outline, ...], colour: str, weight: float, dash: tuple[float, ...] = ()
) -> str:
    ways = "".join(path(outline) for outline in outlines)
    dashes = f' stroke-dasharray="{",".join(map(number, dash))}"' if dash else ""
    return (
        f'<path fill="none" stroke="{colour}" stroke-width="{number(weight)}"{dashes} d="{ways}"/>'
    )


def _words(words: Words) -> str:
    bold = ' font-weight="bold"' if words.bold else ""
    italic = ' font-style="italic"' if words.italic else ""
    return (
        f'<text{_id(words.name)} x="{number(words.at.real)}" y="{number(words.at.imag)}" '
        f'font-family="sans-serif" font-size="{number(words.size)}"{bold}{italic} '
        f'text-anchor="{words.anchor}" fill="{words.colour}">{escape(words.text)}</text>'
    )


def _id(name: str) -> str:
    return f" id={quoteattr(name)}" if name else ""
