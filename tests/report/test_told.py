"""Sentences of the layers below are said in German, and none is forgotten."""

import ast
import re
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path

import pytest
import yaml

import idkey
from idkey.report.language import ENGLISH, in_language
from idkey.report.told import told

ROOT = Path(idkey.__file__).parent
LAYERS = ("formats", "store", "photo")
FIGURES = ("binding", "plates", "turning")
GERMAN = in_language("de")
BRACE = re.compile(r"\{\w+\}")
SENTENCE = re.compile(r"(?:[A-Z“']|\0|…).*[a-z].* .*[.?]|[A-Z][a-z]+ [^A-Z]*[.?]", re.DOTALL)
BUILT_IN = ("ValueError", "TypeError", "KeyError", "RuntimeError")
NOT_SAID = ("formats/compare.py", "formats/new_key.py", "store/erasing.py")
"""Changes are said by `report.key_changes`; the others hold what stands in a key, and SQL."""


def catalogue() -> dict[str, str]:
    text = (files("idkey.report") / "phrases" / "told_de.yaml").read_text(encoding="utf-8")
    return yaml.safe_load(text)


def sources() -> list[Path]:
    found = [file for layer in LAYERS for file in sorted((ROOT / layer).rglob("*.py"))]
    found += [ROOT / "figures" / f"{name}.py" for name in FIGURES]
    return [file for file in found if file.relative_to(ROOT).as_posix() not in NOT_SAID]


def sentences(file: Path) -> Iterator[tuple[int, str]]:
    """Every literal of a module that reads as a sentence, with a nought for what varies."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    inside: set[int] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr):  # docstrings
            inside.add(id(node.value))
        elif isinstance(node, ast.JoinedStr):
            inside |= {id(part) for part in node.values}
    for node in ast.walk(tree):
        text = _shape(node) if id(node) not in inside else ""
        if SENTENCE.fullmatch(text):
            yield node.lineno, text


def raised(file: Path) -> Iterator[tuple[int, str]]:
    """What a module of the window says in an error without translating it there."""
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        name = getattr(node.func, "id", "") if isinstance(node, ast.Call) else ""
        if name.endswith("Error") and name not in BUILT_IN:
            yield from ((part.lineno, _shape(part)) for part in node.args if _shape(part))


def _shape(node: ast.AST) -> str:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return BRACE.sub("\0", node.value)
    if isinstance(node, ast.JoinedStr):
        return "".join(
            str(part.value) if isinstance(part, ast.Constant) else "\0" for part in node.values
        )
    return ""


def test_every_sentence_of_the_layers_below_is_in_the_german_catalogue():
    known = {BRACE.sub("\0", one) for one in catalogue()} | {
        BRACE.sub("\0", one) for one in GERMAN.phrases
    }
    said = [(file, *one) for file in sources() for one in sentences(file)]
    said += [(file, *one) for file in (ROOT / "app").rglob("*.py") for one in raised(file)]
    missing = [
        f"{file.relative_to(ROOT)}:{line}: {text}".replace("\0", "{…}")
        for file, line, text in said
        if text not in known and text != "\0: which applies?"
    ]

    assert not missing, "\n".join(missing)


def test_german_keeps_what_varies():
    wrong = [
        one
        for one, said in catalogue().items()
        if set(BRACE.findall(one)) != set(BRACE.findall(said))
    ]

    assert not wrong


@pytest.mark.parametrize(
    ("english", "german"),
    [
        ("leaves.idkey is larger than any key needs.",
         "leaves.idkey ist größer, als je ein Schlüssel braucht."),
        ("gone.idkey cannot be read: No such file or directory.",
         "gone.idkey ist nicht lesbar: es gibt sie nicht."),
        ("An empty value is not a number, as 'low' needs.",
         "Ein leerer Wert ist keine Zahl, wie „low“ sie braucht."),
        ("'total_length' is a measurement, so it is scored with numbers, not states.",
         "„total_length“ ist ein Maß; seine Werte sind Zahlen, keine Zustände."),
        ("'sources' is missing.", "„sources“ fehlt."),
        ("Nobody has written this sentence.", "Nobody has written this sentence."),
    ],
)  # fmt: skip
def test_a_sentence_is_said_with_what_varies_in_its_place(english: str, german: str):
    assert told(english, GERMAN) == german
    assert told(english, ENGLISH) == english


def test_a_list_of_mistakes_is_said_line_by_line():
    text = "The key k has 2 mistakes:\nkey.yaml:1:1: 'id' is missing. Add it.\nelse"

    assert told(text, GERMAN).startswith("Der Schlüssel k hat 2 Fehler:\n")
