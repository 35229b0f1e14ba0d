"""A whole key as one JSON document, lossless: for programs, and for sending."""

import json
import re
from collections import Counter
from pathlib import Path
from typing import Any

from idkey.errors import IdKeyError
from idkey.formats.draft import drafted
from idkey.formats.folder import checked
from idkey.formats.plain import documents
from idkey.formats.problem import KeyProblems
from idkey.formats.texts import Texts
from idkey.formats.write import as_written
from idkey.formats.yaml_text import YamlText
from idkey.model.key import Key

LARGEST_JSON = 64 * 2**20
DEEPEST = 40
"""Brackets inside brackets; a key needs ten."""

MOST_ENTRIES = 30_000
"""Taxa, or characters, or others of one kind; as many as a package may hold files."""

_BRACKET = re.compile(r'"(?:[^"\\]|\\.)*+"|[\[\]{}]')
_LISTS = ("characters", "labels", "couplets", "sources", "checks")
_MEND = "Ask for the file again, or export the key anew."


def write_json(key: Key) -> str:
    """The key as JSON: the fields of the key files, with the taxa as a list."""
    return json.dumps(documents(key), ensure_ascii=False, indent=1) + "\n"


def parse_json(raw: bytes, file: Path) -> Key:
    """The key that `raw`, which was read from `file`, says.

    Raises:
        KeyProblems: It has mistakes, each with its line and column.
        IdKeyError: It is no JSON, or no key.
    """
    if len(raw) > LARGEST_JSON:
        size = LARGEST_JSON // 2**20
        raise IdKeyError(f"{file.name} is larger than {size} MB.", "Split the key.")
    try:
        text = raw.decode("utf-8-sig")
        _check_depth(text)
        plain = json.loads(text, object_pairs_hook=_once, parse_constant=_never)
    except UnicodeDecodeError as err:
        raise IdKeyError(f"{file.name} is not UTF-8 text.", "Save it as UTF-8.") from err
    except json.JSONDecodeError as err:
        raise IdKeyError(f"{file}:{err.lineno}:{err.colno}: This is no JSON.", _MEND) from err
    except (ValueError, RecursionError) as err:
        raise IdKeyError(f"{file.name} is no key: {err}.", _MEND) from err
    if not isinstance(plain, dict):
        raise IdKeyError(f"{file.name} is JSON, but no key.", _MEND)
    return _key(file, text, plain)


def key_of_documents(documents: dict[str, Any], file: Path) -> Key:
    """The key that documents made from another format say.

    Args:
        documents: As `plain.documents` gives them.
        file: Where they come from, for messages.

    Raises:
        KeyProblems: They have mistakes.
        IdKeyError: A taxon is there twice.
    """
    return _key(file, "", documents)


def _key(file: Path, text: str, plain: dict[str, Any]) -> Key:
    for name in (*_LISTS, "taxa"):
        entries = plain.get(name)
        if isinstance(entries, list | dict) and len(entries) > MOST_ENTRIES:
            raise IdKeyError(f"{file.name} has more {name} than any key.", "Split the key.")
    key, problems = checked(drafted(file, _texts(file, text, as_written(plain))))
    if key is None:
        raise KeyProblems(file.name, problems)
    return key


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    fields = dict(pairs)
    if len(fields) < len(pairs):
        (twice, _), *_ = Counter(name for name, _ in pairs).most_common(1)
        raise ValueError(f"'{twice[:60]}' is given twice in one place")
    return fields


def _check_depth(text: str) -> None:
    depth = 0
    for match in _BRACKET.finditer(text):
        depth += {"[": 1, "{": 1, "]": -1, "}": -1}.get(match[0], 0)
        if depth > DEEPEST:
            raise ValueError("it is nested deeper than any key")


def _never(constant: str) -> float:
    raise ValueError(f"{constant} is no number")


def _texts(file: Path, text: str, plain: dict[str, Any]) -> Texts:
    """The parts of the document as if they were the files of a folder."""
    texts = Texts()
    whole = YamlText(file, text, plain)
    head = {name: value for name, value in plain.items() if name not in (*_LISTS, "taxa")}
    texts.files["key.yaml"] = YamlText(file, text, head, whole=whole)
    for name in _LISTS:
        content = {name: plain[name]} if name in plain else None
        texts.files[f"{name}.yaml"] = YamlText(file, text, content, whole=whole)
    taxa = plain.get("taxa")
    for index, taxon in enumerate(taxa if isinstance(taxa, list) else ()):
        own = taxon.get("id") if isinstance(taxon, dict) else None
        name = f"taxa/{own if isinstance(own, str) else index}.yaml"
        if name in texts.files:
            raise IdKeyError(f"The taxon '{own}' is twice in {file.name}.", "Remove one.")
        texts.files[name] = YamlText(file, text, taxon, ("taxa", index), whole)
    texts.names = set(texts.files)
    return texts
