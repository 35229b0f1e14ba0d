"""Imports point down, and Qt stays in one package. Same rules as [tool.importlinter]."""

import ast
import sys
from pathlib import Path

import idkey

ROOT = Path(idkey.__file__).parent
ORDER = [
    ["__init__"],
    ["errors", "bootstrap", "places"],
    ["model"],
    ["engine"],
    ["store"],
    ["drill"],
    ["photo"],
    ["formats"],
    ["figures"],
    ["report"],
    ["app", "cli"],
    ["__main__"],
]
RANK = {name: rank for rank, names in enumerate(ORDER) for name in names}
MODULES = sorted(ROOT.rglob("*.py"))


def imports(file: Path) -> set[str]:
    """Every module `file` imports, also inside functions and under TYPE_CHECKING."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(file.read_text("utf-8"))):
        if isinstance(node, ast.ImportFrom):
            assert not node.level, f"{file}:{node.lineno}: relative import"
            found |= {f"{node.module}.{alias.name}" for alias in node.names}
        elif isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
    return found


def test_imports_point_down():
    wrong = []
    for file in MODULES:
        layer = file.relative_to(ROOT).with_suffix("").parts[0]
        assert layer in RANK, f"{layer} is not a layer; add it to ORDER and to pyproject.toml"
        for name in imports(file):
            head, _, rest = name.partition(".")
            other = rest.split(".")[0]
            if head in {"PySide6", "shiboken6"} and layer not in {"app", "__main__"}:
                wrong.append(f"{file}: Qt in {layer}")
            if head == "idkey" and other != layer and RANK.get(other, 0) >= RANK[layer]:
                wrong.append(f"{file}: {layer} may not import {other}")

    assert not wrong


def test_the_set_up_needs_nothing_but_python():
    outside = {
        name
        for file in (ROOT / "bootstrap").glob("*.py")
        for name in imports(file)
        if name.split(".")[0] not in sys.stdlib_module_names
        and not name.startswith("idkey.bootstrap")
    }

    assert not outside
