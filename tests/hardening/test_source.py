"""What the program's own source never does."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest
import yaml

import idkey
from idkey.figures import plates
from idkey.formats import yaml_text
from idkey.report import told

PACKAGE = Path(idkey.__file__).parent
FORBIDDEN_CALLS = {
    "eval", "exec", "compile", "__import__",
    "os.system", "os.popen",
    "yaml.load_all", "yaml.unsafe_load", "yaml.full_load", "yaml.unsafe_load_all",
    "tempfile.mktemp", "ssl._create_unverified_context",
}  # fmt: skip
FORBIDDEN_IMPORTS = {
    "pickle", "shelve", "marshal", "dill", "cloudpickle", "joblib",
    "socket", "http", "urllib.request", "ftplib", "smtplib", "requests", "httpx", "urllib3",
    "PySide6.QtNetwork", "PySide6.QtWebEngineWidgets",
    "xml.sax.handler", "xml.sax.make_parser", "xml.sax.parse", "xml.sax.parseString", "xml.dom",
    "xml.etree.cElementTree", "lxml",
}  # fmt: skip
XML_READERS = {"parse", "fromstring", "iterparse", "XML", "XMLParser"}
SAFE_LOADER = {"_Loader"}
"""Names that stand for a safe loader; a test of its own holds them to it."""


def offences(tree: ast.AST) -> Iterator[str]:
    """What in a module is forbidden, as line and words."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            yield from (f"{node.lineno}: {what}" for what in _in_call(node))
        elif isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
            yield from (f"{node.lineno}: imports {n}" for n in names if _unwanted(n))
        elif isinstance(node, ast.ImportFrom):
            names = [f"{node.module}.{alias.name}" for alias in node.names]
            yield from (f"{node.lineno}: imports {n}" for n in names if _unwanted(n))


def _in_call(call: ast.Call) -> Iterator[str]:
    name = ast.unparse(call.func)
    if name in FORBIDDEN_CALLS:
        yield name
    words = {word.arg: ast.unparse(word.value) for word in call.keywords}
    if words.get("shell", "False") != "False":
        yield f"{name} with a shell"
    loader = words.get("Loader") or (ast.unparse(call.args[1]) if len(call.args) > 1 else "")
    if name in {"yaml.load", "yaml.parse", "yaml.compose"} and loader not in SAFE_LOADER:
        yield f"{name} without a safe loader"
    head, _, last = name.rpartition(".")
    if last in XML_READERS and head in {"ElementTree", "ET", "etree", "xml.etree.ElementTree"}:
        yield f"{name} reads XML undefused"


def _unwanted(name: str) -> bool:
    return any(name == bad or name.startswith(f"{bad}.") for bad in FORBIDDEN_IMPORTS) or (
        name.startswith("xml.etree.ElementTree.") and name.rpartition(".")[2] in XML_READERS
    )


@pytest.mark.parametrize(
    "line",
    [
        "eval(text)",
        "exec(text)",
        "import pickle",
        "from pickle import loads",
        "yaml.load(text)",
        "yaml.load(text, Loader=yaml.UnsafeLoader)",
        "subprocess.run(command, shell=True)",
        "os.system(command)",
        "from urllib.request import urlopen",
        "from PySide6.QtNetwork import QTcpSocket",
        "from xml.etree.ElementTree import fromstring",
        "ET.parse(file)",
    ],
)
def test_the_check_notices(line: str):
    assert list(offences(ast.parse(line)))


def test_no_module_runs_text_unpickles_opens_a_shell_or_talks_to_the_network():
    found = {
        file.relative_to(PACKAGE).as_posix(): list(offences(ast.parse(file.read_text("utf-8"))))
        for file in sorted(PACKAGE.rglob("*.py"))
    }

    assert {name: what for name, what in found.items() if what} == {}


@pytest.mark.parametrize("module", [plates, told, yaml_text], ids=lambda m: m.__name__)
def test_yaml_is_read_by_a_loader_that_makes_plain_values_only(module):
    loader = vars(module)["_Loader"]

    with pytest.raises(yaml.constructor.ConstructorError):
        yaml.load("!!python/object/apply:os.getpid []", Loader=loader)  # noqa: S506 - under test
