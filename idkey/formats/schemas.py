"""JSON Schemas of the key files, so that editors complete and check them.

``python -m idkey.formats.schemas docs/schemas`` writes them again after a change.
"""

import json
import sys
from collections.abc import Mapping
from pathlib import Path

from idkey.formats.character_document import CharactersDoc, ChecksDoc, CoupletsDoc
from idkey.formats.document import Document
from idkey.formats.key_document import KeyDoc, LabelsDoc, SourcesDoc
from idkey.formats.taxon_document import TaxonDoc

DOCUMENTS: Mapping[str, type[Document]] = {
    "key": KeyDoc,
    "characters": CharactersDoc,
    "taxon": TaxonDoc,
    "labels": LabelsDoc,
    "couplets": CoupletsDoc,
    "sources": SourcesDoc,
    "checks": ChecksDoc,
}
"""Document per name of its schema."""


def schemas() -> dict[str, str]:
    """The text of each schema by file name."""
    found = {}
    for name, document in DOCUMENTS.items():
        schema = {
            "$schema": "https://json-schema.org/draft/2020-12/schema",
            **document.model_json_schema(),
        }
        found[f"{name}.schema.json"] = json.dumps(schema, indent=2, ensure_ascii=False) + "\n"
    return found


def write_schemas(folder: Path) -> None:
    """Write every schema to `folder`."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, text in schemas().items():
        (folder / name).write_text(text, encoding="utf-8", newline="\n")


if __name__ == "__main__":
    write_schemas(Path(sys.argv[1]))
