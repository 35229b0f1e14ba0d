"""The schemas in docs/ are those of the models, and say what the program says."""

import json
from functools import cache
from pathlib import Path
from typing import Any

import jsonschema
import pytest
import yaml

from idkey.formats.schemas import schemas, write_schemas
from idkey.places import keys_folder
from tests.formats.small_key import FILES

DOCS = Path(__file__).parents[2] / "docs" / "schemas"
SHIPPED = sorted(keys_folder().glob("**/*.yaml"))


class PlainLoader(yaml.SafeLoader):
    """Reads YAML as editors do: a date is a text."""

    yaml_implicit_resolvers = {
        sign: [(tag, shape) for tag, shape in found if not tag.endswith("timestamp")]
        for sign, found in yaml.SafeLoader.yaml_implicit_resolvers.items()
    }


def loaded(text: str) -> Any:
    return yaml.load(text, Loader=PlainLoader)  # noqa: S506 - it is a safe loader


@cache
def _schemas() -> dict[str, str]:
    return schemas()


def validator(file: str) -> jsonschema.Draft202012Validator:
    """The validator for a file of a key folder."""
    name = "taxon" if file.startswith("taxa/") else file.removesuffix(".yaml")
    return jsonschema.Draft202012Validator(json.loads(_schemas()[f"{name}.schema.json"]))


def test_the_schemas_in_docs_are_those_of_the_models():
    written = {name: (DOCS / name).read_text("utf-8") for name in schemas()}

    assert written == schemas(), "run python -m idkey.formats.schemas docs/schemas"


def test_schemas_are_written_where_they_are_wanted(tmp_path: Path):
    write_schemas(tmp_path / "new")

    assert {f.name for f in (tmp_path / "new").iterdir()} == set(schemas())


@pytest.mark.parametrize("name", sorted(schemas()))
def test_a_schema_is_a_schema(name: str):
    jsonschema.Draft202012Validator.check_schema(json.loads(schemas()[name]))


@pytest.mark.parametrize("key", sorted({f.relative_to(keys_folder()).parts[0] for f in SHIPPED}))
def test_the_shipped_keys_fit_the_schemas(key: str):
    folder = keys_folder() / key
    found = []
    for file in sorted(folder.rglob("*.yaml")):
        name = file.relative_to(folder).as_posix()
        errors = validator(name).iter_errors(loaded(file.read_text("utf-8")))
        found += [f"{name}: {error.json_path}: {error.message}" for error in errors]

    assert found == []


@pytest.mark.parametrize(
    ("file", "old", "new"),
    [
        ("key.yaml", "version: 1.0.0", "version: one"),
        ("key.yaml", "title:", "titel:"),
        ("characters.yaml", "measurement", "measurment"),
        ("characters.yaml", "[photo_above]", "[]"),
        ("characters.yaml", "#202020", "black"),
        ("labels.yaml", "[alpha]", "alpha"),
        ("couplets.yaml", "[beta]", "7"),
        ("sources.yaml", "seen: true", "seen: perhaps"),
        ("checks.yaml", "kind: matrix", "kind: matrices"),
        ("taxa/alpha.yaml", "usually", "often"),
        ("taxa/alpha.yaml", "low: 40", "low: tiny"),
        ("taxa/alpha.yaml", "shows: [leaf]", "show: [leaf]"),
    ],
)
def test_an_editor_sees_a_mistake_by_the_schema(file: str, old: str, new: str):
    assert old in FILES[file]
    before = list(validator(file).iter_errors(loaded(FILES[file])))
    after = list(validator(file).iter_errors(loaded(FILES[file].replace(old, new))))

    assert before == []
    assert after
