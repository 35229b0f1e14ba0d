"""Finds every sentence the package can say, by reading its code."""

import ast
from pathlib import Path

from idkey import report

FOLDER = Path(report.__file__).parent
SPEAKERS = {"say": (0,), "phrase": (0,), "count": (1, 2), "join": (1,)}
"""Calls whose arguments at these places are sentences."""


def phrases_used() -> dict[str, str]:
    """English sentence to the place that says it."""
    found: dict[str, str] = {"and": "join", "or": "join"}
    for file in sorted(FOLDER.rglob("*.py")):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call):
                for text in _texts(node):
                    found.setdefault(text, f"{file.name}:{node.lineno}")
    return found


def _texts(call: ast.Call) -> list[str]:
    name = call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")
    arguments = [call.args[n] for n in SPEAKERS.get(name, ()) if n < len(call.args)]
    return [text for argument in arguments for text in _constants(argument)]


def _constants(node: ast.expr) -> list[str]:
    if isinstance(node, ast.IfExp):
        return [*_constants(node.body), *_constants(node.orelse)]
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return [node.value]
    return []
