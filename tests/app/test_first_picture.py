"""What stands first needs little: nothing heavy is imported before the tag can be written on."""

import ast
import subprocess
import sys
from pathlib import Path

from idkey import places

HEAVY = ("numpy", "sqlalchemy", "PIL", "yaml", "networkx", "idkey.engine", "idkey.store", "uuid")

SCRIPT = """
import sys
before = set(sys.modules)
import idkey.app.window.main
print("\\n".join(set(sys.modules) - before))
"""


def imported() -> set[str]:
    """Modules that come with the start of the window, and with nothing else."""
    ended = subprocess.run(
        [sys.executable, "-c", f"import PySide6.QtWidgets\n{SCRIPT}"],
        cwd=places.PACKAGE.parent,
        check=True,
        capture_output=True,
        text=True,
    )
    return set(ended.stdout.split())


def names_qt(module: str) -> bool:
    """Whether a module imports the namespace Qt, which costs 20 ms when first touched."""
    file = places.PACKAGE.parent.joinpath(*module.split("."))
    file = file / "__init__.py" if file.is_dir() else file.with_suffix(".py")
    tree = ast.parse(Path(file).read_text("utf-8"))
    return any(
        alias.name == "Qt"
        for node in ast.walk(tree)
        if isinstance(node, ast.ImportFrom)
        for alias in node.names
    )


def test_the_tag_stands_before_anything_heavy_is_imported():
    modules = imported()
    ours = {module for module in modules if module.startswith("idkey")}

    assert "idkey.app.parts.tag" in ours
    assert [heavy for heavy in HEAVY if heavy in modules] == []
    assert [module for module in ours if names_qt(module)] == []
