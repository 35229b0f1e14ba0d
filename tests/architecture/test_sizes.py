"""Modules stay under 300 lines, functions under 40, and names say what is inside."""

import ast
from pathlib import Path

import pytest

import idkey

ROOT = Path(idkey.__file__).parent
VAGUE = {"utils", "util", "helpers", "helper", "common", "misc", "base", "manager"}
Function = ast.FunctionDef | ast.AsyncFunctionDef


@pytest.fixture(scope="module")
def modules() -> dict[str, str]:
    """Text per module, under its path below the package."""
    files = sorted(ROOT.rglob("*.py"))
    return {file.relative_to(ROOT).as_posix(): file.read_text("utf-8") for file in files}


@pytest.fixture(scope="module")
def functions(modules: dict[str, str]) -> dict[str, Function]:
    """Functions under module and name."""
    return {
        f"{name}:{node.lineno} {node.name}": node
        for name, text in modules.items()
        for node in ast.walk(ast.parse(text))
        if isinstance(node, Function)
    }


def test_modules_have_at_most_300_lines(modules: dict[str, str]):
    lines = {name: len(text.splitlines()) for name, text in modules.items()}

    assert {name: n for name, n in lines.items() if n > 300} == {}


def test_functions_have_at_most_40_lines(functions: dict[str, Function]):
    lines = {name: (one.end_lineno or 0) - one.lineno + 1 for name, one in functions.items()}

    assert {name: n for name, n in lines.items() if n > 40} == {}


def test_functions_have_at_most_5_parameters_by_place(functions: dict[str, Function]):
    taken = {name: _by_place(one) for name, one in functions.items()}

    assert {name: given for name, given in taken.items() if len(given) > 5} == {}


def test_names_say_what_is_inside(modules: dict[str, str]):
    assert [name for name in modules if VAGUE & set(Path(name).with_suffix("").parts)] == []


def test_an_init_holds_a_docstring_only(modules: dict[str, str]):
    inits = {name: text for name, text in modules.items() if name.endswith("/__init__.py")}

    assert [name for name, text in inits.items() if len(ast.parse(text).body) != 1] == []


def _by_place(function: Function) -> list[str]:
    return [one.arg for one in function.args.args if one.arg not in {"self", "cls"}]
