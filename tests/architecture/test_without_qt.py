"""Everything below the window works on a machine that has no Qt at all."""

import subprocess
import sys

import pytest

BELOW_THE_WINDOW = [
    "errors",
    "bootstrap",
    "places",
    "model",
    "engine",
    "store",
    "photo",
    "drill",
    "formats",
    "figures",
    "report",
    "cli",
]

SCRIPT = """
import importlib, pkgutil, sys
sys.modules["PySide6"] = sys.modules["shiboken6"] = None  # any import of Qt now fails
package = importlib.import_module("idkey." + sys.argv[1])
for part in pkgutil.walk_packages(getattr(package, "__path__", []), package.__name__ + "."):
    if "migrations" not in part.name:  # Alembic loads those, within a migration only
        importlib.import_module(part.name)
"""


@pytest.mark.parametrize("layer", BELOW_THE_WINDOW)
def test_layer_imports_without_qt(layer: str):
    subprocess.run([sys.executable, "-c", SCRIPT, layer], check=True)
