"""The JSON Schema of a rationale.

``python -m idkey.report.rationale_schema docs/schemas`` writes it again after a change.
"""

import json
import re
import sys
from dataclasses import is_dataclass
from inspect import cleandoc
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter

from idkey.engine import result
from idkey.model import case, character
from idkey.report import notes, reasons
from idkey.report.rationale import DIGEST

FILE = "rationale.schema.json"

_ATTRIBUTE = re.compile(r"^ {4}(\w+): (.+(?:\n {8}.+)*)", re.MULTILINE)


def rationale_schema() -> str:
    """The schema as JSON text; the words are those of the dataclasses."""
    schema = TypeAdapter(reasons.Rationale).json_schema()
    described = {
        name: _attributes(kind)
        for module in (case, character, result, notes, reasons)
        for name, kind in vars(module).items()
        if isinstance(kind, type) and is_dataclass(kind)
    }
    for name, definition in (*schema["$defs"].items(), ("Rationale", schema)):
        for field, words in described.get(name, {}).items():
            definition.get("properties", {}).get(field, {})["description"] = words
    properties: dict[str, Any] = schema["properties"]
    properties["format"] = {"const": 1, "description": "Number of the form."}
    properties[DIGEST] = {
        "type": "string",
        "pattern": "^[0-9a-f]{64}$",
        "description": "SHA-256 of all other fields as canonical JSON: sorted names, no spaces.",
    }
    schema["required"] = [*schema["required"], "format", DIGEST]
    schema = {"$schema": "https://json-schema.org/draft/2020-12/schema", **schema}
    return json.dumps(schema, indent=2, ensure_ascii=False) + "\n"


def _attributes(kind: type) -> dict[str, str]:
    """Words per field, out of the "Attributes" section of a docstring."""
    _, _, section = cleandoc(kind.__doc__ or "").partition("Attributes:\n")
    return {name: " ".join(words.split()) for name, words in _ATTRIBUTE.findall(section)}


if __name__ == "__main__":
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    (folder / FILE).write_text(rationale_schema(), encoding="utf-8", newline="\n")
