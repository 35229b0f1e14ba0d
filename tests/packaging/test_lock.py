"""The lock covers what the program needs, each file by its digest."""

import re
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]
LOCK = (ROOT / ".packaging" / "requirements.lock").read_text("utf-8")
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
EXTRAS = PROJECT["optional-dependencies"]
WANTED = [*PROJECT["dependencies"], *EXTRAS["postgres"], *EXTRAS["heic"]]


def locked() -> dict[str, tuple[str, list[str]]]:
    """Version and SHA-256 digests per package."""
    plain = "\n".join(line for line in LOCK.splitlines() if not line.startswith("#"))
    found = {}
    for entry in re.split(r"\n(?=\S)", plain.replace("\\\n", " ")):
        name, version = re.match(r"([A-Za-z0-9._-]+)==([^\s;]+)", entry.strip()).groups()
        found[canonicalize_name(name)] = version, re.findall(r"--hash=sha256:([0-9a-f]{64})", entry)
    return found


@pytest.mark.parametrize("line", WANTED)
def test_a_requirement_is_locked_at_a_version_it_allows(line: str):
    wanted = Requirement(line)

    version, _ = locked()[canonicalize_name(wanted.name)]

    assert wanted.specifier.contains(version)


def test_every_locked_package_has_digests():
    assert [name for name, (_, digests) in locked().items() if not digests] == []
