"""Drawings as SVG Tiny text: no filters, styles, scripts or outside references."""

from collections.abc import Iterable
from dataclasses import dataclass
from xml.sax.saxutils import escape, quoteattr

from idkey.figures.drawing import Dot, Group, Item, Line, Part, Patch, Words, pieces
from idkey.figures.fields import LIGHT, hatching, rim
from idkey.figures.geometry import Outline, bounds
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


def svg(sheet: Sheet, items: Iterable[Item], *, shown: tuple[float, float] | None = None) -> str:
    """The drawing as a whole SVG document; the ground stays transparent.

    Args:
        sheet: Its paper.
        items: What is drawn, in painting order.
        shown: Width and height it asks to be shown at; None takes those of the paper.
    """
    items = tuple(items)
    wide, high = shown or (sheet.width, sheet.height)
    size = f"{number(sheet.width)} {number(sheet.height)}"
    lines = [
        f'<svg xmlns="http://www.w3.org/2000/svg" version="1.2" baseProfile="tiny" '
        f'width="{number(wide)}" height="{number(high)}" viewBox="0 0 {size}">',
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
    return f"{round(value * 100) / 100:g}"


def path(outline: Outline) -> str:
    """The ``d`` of an outline, in relative cubic pieces of hundredths."""
    x, y = round(outline.start.real * 100), round(outline.start.imag * 100)
    words = [f"M{x / 100:g} {y / 100:g}"]
    for piece in outline.pieces:
        ends = [(round(p.real * 100), round(p.imag * 100)) for p in piece]
        steps = [f"{(u - x) / 100:g} {(v - y) / 100:g}" for u, v in ends]
        words.append("c" + " ".join(steps))
        x, y = ends[2]
    text = "".join(words) + ("Z" if outline.closed else "")
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
    return _stroke((item.outline,), item.colour, item.weight, item.dash)


def _part(part: Part) -> list[str]:
    lines = [_body(part)]
    if part.skin.hatched:
        ring = part.outline.flat(6)
        lines += _stroke(hatching(ring, 5, cut=part.weight / 2), part.skin.detail, 0.8)
    elif part.shaded:
        lines += _shading(part)
    return lines


def _body(part: Part) -> str:
    edge = ""
    if part.weight:
        dash = ' stroke-dasharray="4,3.2"' if part.skin.dashed else ""
        edge = f' stroke="{EDGE}" stroke-width="{number(part.weight)}"{dash}'
    return f'<path{_id(part.name)} fill="{part.skin.fill}"{edge} d="{path(part.outline)}"/>'


def _shading(part: Part) -> list[str]:
    low, high = bounds(part.outline.flat(3))
    reach = min((high - low).real * 0.22, (high - low).imag * 0.22, 9.0)
    near = part.weight / 2
    if reach < near + 0.4:
        return []
    shade = rim(part.outline, toward=-LIGHT, near=near, far=reach, spread=0.05)
    lines = _fill(shade, part.skin.shade)
    if part.gloss > 0 and reach > 1.7:
        near += reach * 0.28
        far = near + reach * 0.4 * part.gloss
        glint = rim(part.outline, toward=LIGHT, near=near, far=far, spread=0.45)
        lines += _fill(glint, _glint(part))
    return lines


def _glint(part: Part) -> str:
    light = part.skin.light
    return light if part.gloss <= 1 else lightened(light, 14 * (part.gloss - 1))


def _fill(outlines: tuple[Outline, ...], colour: str) -> list[str]:
    ways = "".join(path(outline) for outline in outlines)
    return [f'<path fill="{colour}" d="{ways}"/>'] if ways else []


def _stroke(
    outlines: tuple[Outline, ...], colour: str, weight: float, dash: tuple[float, ...] = ()
) -> list[str]:
    ways = "".join(path(outline) for outline in outlines)
    if not ways:
        return []
    dashes = f' stroke-dasharray="{",".join(map(number, dash))}"' if dash else ""
    width = number(weight)
    return [f'<path fill="none" stroke="{colour}" stroke-width="{width}"{dashes} d="{ways}"/>']


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
