"""What the repository holds: nothing of this machine, and nothing at the top that is not known."""

import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
AT_THE_TOP = {
    "README.md",
    "DEVELOPERS.md",
    "pyproject.toml",
    "idkey",
    "keys",
    "images",
    "tests",
    "docs",
}
REGISTRIES = ("py" + "pi.org", "python" + "hosted.org", "debian" + ".org", "npm" + "js.org")
ELSEWHERE = re.compile(r"(?<![\w./-])(?:/work|/root|/mnt)/|(?<![\w-])sha" + r"red/")
BINARY = {
    ".ttf",
    ".png",
    ".jpg",
    ".pdf",
    ".ico",
    ".idkey",
    ".zip",
    ".sqlite",
    ".qm",
    ".xlsx",
    ".ods",
}


@pytest.fixture(scope="module")
def tracked() -> list[Path]:
    """Files git knows."""
    listed = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=False
    )
    if listed.returncode:
        pytest.skip("not a git checkout")
    return [ROOT / name for name in listed.stdout.split("\0") if name and (ROOT / name).is_file()]


def test_nothing_unknown_lies_at_the_top(tracked: list[Path]):
    top = {file.relative_to(ROOT).parts[0] for file in tracked}

    assert {name for name in top if not name.startswith(".")} == AT_THE_TOP


def test_no_path_of_this_machine_and_no_registry_is_written_down(tracked: list[Path]):
    checkout = re.compile(rf"(?<![\w.-]){re.escape(str(ROOT))}(?!\w)")
    found = []
    for file in tracked:
        if file.suffix in BINARY or "corpus" in file.parts:
            continue
        for number, line in enumerate(file.read_text("utf-8").splitlines(), start=1):
            if (
                checkout.search(line)
                or ELSEWHERE.search(line)
                or any(r in line for r in REGISTRIES)
            ):
                found.append(f"{file.relative_to(ROOT)}:{number}: {line.strip()[:80]}")

    assert not found


def test_every_text_file_is_utf8_without_tabs_at_the_start(tracked: list[Path]):
    indented = [
        str(file.relative_to(ROOT))
        for file in tracked
        if file.suffix in {".py", ".yaml", ".toml", ".md"}
        and "corpus" not in file.parts
        and re.search(r"^ *\t", file.read_text("utf-8"), re.MULTILINE)
    ]

    assert not indented
