"""Reads outlines back from SVG text, with arithmetic of its own."""

import re

Point = complex


def outline(svg: str, id: str) -> list[Point]:  # noqa: A002 - SVG's word
    """Points along the path with that id, 24 to a piece."""
    found = re.search(rf'<path id="{re.escape(id)}"[^>]* d="([^"]+)"', svg)
    assert found, f"no path {id}"
    points: list[Point] = []
    here = 0j
    for command, rest in re.findall(r"([McZ])([^McZ]*)", found[1]):
        numbers = [float(n) for n in re.findall(r"-?(?:\d+\.?\d*|\.\d+)", rest)]
        pairs = [complex(x, y) for x, y in zip(numbers[::2], numbers[1::2], strict=True)]
        if command == "M":
            here = pairs[0]
        elif command == "c":
            one, two, end = (here + pair for pair in pairs)
            for step in range(24):
                t, u = step / 24, 1 - step / 24
                points.append(u**3 * here + 3 * u * u * t * one + 3 * u * t * t * two + t**3 * end)
            here = end
    return points


def length_and_width(points: list[Point]) -> tuple[float, float]:
    """Of a chela: from the middle of its base to the tip, and the extent across that line.

    The base is the last straight piece of the outline, which leads back to the start.
    """
    base = (points[0] + points[-24]) / 2
    tip = max(points, key=lambda p: abs(p - base))
    along = (tip - base) / abs(tip - base)
    across = [((p - base) / along).imag for p in points]
    return abs(tip - base), max(across) - min(across)
