"""Modules stay under 300 lines, functions under 40, and names say what is inside."""

import ast
from pathlib import Path

import pytest

import idkey

ROOT = Path(idkey.__file__).parent
MODULES = sorted(ROOT.rglob("*.py"))
VAGUE = {"utils", "util", "helpers", "helper", "common", "misc", "base", "manager"}
by_name = pytest.mark.parametrize("file", MODULES, ids=lambda f: f.relative_to(ROOT).as_posix())


@by_name
def test_module_has_at_most_300_lines(file: Path):
    assert len(file.read_text("utf-8").splitlines()) <= 300


@by_name
def test_functions_have_at_most_40_lines_and_5_parameters(file: Path):
    functions = [
        node
        for node in ast.walk(ast.parse(file.read_text("utf-8")))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    ]

    long = {f.name for f in functions if (f.end_lineno or 0) - f.lineno + 1 > 40}
    wide = {f.name for f in functions if len(f.args.args) - _bound(f) > 5}
    assert not long, f"over 40 lines: {long}"
    assert not wide, f"over 5 parameters: {wide}"


@by_name
def test_name_says_what_is_inside(file: Path):
    assert not VAGUE & set(file.relative_to(ROOT).with_suffix("").parts)


@by_name
def test_an_init_holds_a_docstring_only(file: Path):
    if file.name != "__init__.py" or file.parent == ROOT:
        return
    assert len(ast.parse(file.read_text("utf-8")).body) == 1


def _bound(function: ast.FunctionDef | ast.AsyncFunctionDef) -> bool:
    return bool(function.args.args) and function.args.args[0].arg in {"self", "cls"}
