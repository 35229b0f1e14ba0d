"""What the program needs from others, and what the running Python has of it."""

import csv
import re
import tomllib
from importlib import metadata
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
"""Top of the checkout, or the folder an installed package lies in."""

_PARTS = re.compile(r"\s*([A-Za-z0-9._-]+)\s*(?:\[[^\]]*\])?\s*([^;]*)(;.*)?")
_LIMIT = re.compile(r"(>=|<=|!=|==|<|>)\s*([0-9][0-9.]*)")


def from_checkout(extra: str = "", root: Path = ROOT) -> tuple[str, ...]:
    """Requirement lines of `pyproject.toml`, those of `extra` after the program's own.

    Returns:
        Lines as pip takes them; empty for an installed package, whose installer saw to them.
    """
    file = root / "pyproject.toml"
    if not file.is_file():
        return ()
    project = tomllib.loads(file.read_text("utf-8"))["project"]
    extras = project.get("optional-dependencies", {})
    return (*project["dependencies"], *(extras[extra] if extra else ()))


def missing(lines: tuple[str, ...]) -> tuple[str, ...]:
    """Lines that the running Python does not meet; lines with a marker are left to pip."""
    return tuple(line for line in lines if not _met(line))


def meets(version: str, limits: str) -> bool:
    """Whether a version keeps to limits such as ``">=6.8,!=6.11.0"``; unknown limits pass."""
    have = _release(version)
    for sign, number in _LIMIT.findall(limits):
        want = _release(number)
        width = max(len(have), len(want))
        left, right = _padded(have, width), _padded(want, width)
        kept = {
            ">=": left >= right,
            "<=": left <= right,
            "!=": left != right,
            "==": left == right,
            "<": left < right,
            ">": left > right,
        }
        if not kept[sign]:
            return False
    return True


def damaged() -> tuple[str, ...]:
    """Distributions of the running Python that lack files they were installed with."""
    return tuple(
        distribution.name
        for distribution in metadata.distributions()
        if any(not Path(str(distribution.locate_file(file))).exists() for file in _of(distribution))
    )


def _of(distribution: metadata.Distribution) -> list[str]:
    """Files it was installed with; `Distribution.files` lists from 3.12 on only those left."""
    record = distribution.read_text("RECORD") or ""
    names = [row[0] for row in csv.reader(record.splitlines()) if row]
    return [name for name in names if not name.endswith(".pyc")]


def _met(line: str) -> bool:
    parts = _PARTS.fullmatch(line)
    if parts is None or parts[3]:
        return True
    try:
        return meets(metadata.version(parts[1]), parts[2])
    except metadata.PackageNotFoundError:
        return False


def _release(version: str) -> tuple[int, ...]:
    leading = re.match(r"[0-9]+(?:\.[0-9]+)*", version)
    return tuple(int(part) for part in leading[0].split(".")) if leading else ()


def _padded(release: tuple[int, ...], width: int) -> tuple[int, ...]:
    return release + (0,) * (width - len(release))
