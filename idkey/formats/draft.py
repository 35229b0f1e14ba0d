"""A key folder as documents, before anybody has checked what they say about each other."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Generic, TypeVar

from pydantic import TypeAdapter, ValidationError

from idkey.formats.character_document import CharacterDoc, CheckDoc, CoupletDoc
from idkey.formats.complaints import complaints
from idkey.formats.document import ID_PATTERN, Document
from idkey.formats.key_document import KeyDoc, LabelDoc, SourceDoc
from idkey.formats.problem import Problem, hint
from idkey.formats.taxon_document import ScoreDoc, TaxonDoc
from idkey.formats.texts import FILES, Texts, start_of
from idkey.formats.yaml_text import Loc, YamlText

_NEEDED = ("key", "characters")
_Doc = TypeVar("_Doc", bound=Document)


@dataclass(frozen=True, slots=True)
class Entry(Generic[_Doc]):
    """A document and where it stands.

    Attributes:
        id: Its id; for a score the id of its character.
        yaml: Its file.
        loc: The way to it in the file.
        doc: What it says.
    """

    id: str
    yaml: YamlText
    loc: Loc
    doc: _Doc


@dataclass(slots=True)
class Draft:
    """What a folder holds, and the mistakes met while reading it.

    Attributes:
        folder: The folder.
        key: key.yaml; None when it is unusable.
        characters: Usable entries of characters.yaml.
        taxa: Usable files of taxa/, in the order of their names.
        scores: Usable scores per taxon id.
        labels: Usable entries of labels.yaml.
        couplets: Usable entries of couplets.yaml.
        sources: Usable entries of sources.yaml.
        checks: Usable entries of checks.yaml.
        plain: Every entry with an id per kind, usable or not, as (id, its plain value).
        lost: Files of which not every id could be read: "characters", "sources" …
        problems: Mistakes so far.
    """

    folder: Path
    key: Entry[KeyDoc] | None = None
    characters: list[Entry[CharacterDoc]] = field(default_factory=list)
    taxa: list[Entry[TaxonDoc]] = field(default_factory=list)
    scores: dict[str, list[Entry[ScoreDoc]]] = field(default_factory=dict)
    labels: list[Entry[LabelDoc]] = field(default_factory=list)
    couplets: list[Entry[CoupletDoc]] = field(default_factory=list)
    sources: list[Entry[SourceDoc]] = field(default_factory=list)
    checks: list[Entry[CheckDoc]] = field(default_factory=list)
    plain: dict[str, dict[str, Any]] = field(default_factory=dict)
    lost: set[str] = field(default_factory=set)
    problems: list[Problem] = field(default_factory=list)


_SCORE = TypeAdapter(ScoreDoc)
_ID = re.compile(ID_PATTERN)


def drafted(folder: Path, texts: Texts) -> Draft:
    """The documents of a key and the mistakes in them, file by file.

    Args:
        folder: Where the key is, or will be.
        texts: Its files.
    """
    draft = Draft(folder, problems=list(texts.problems))
    files = {name: _file(draft, texts, name) for name in FILES}
    if (yaml := files["key"]) is not None:
        draft.key = _entry(draft, KeyDoc, yaml, (), yaml.plain)
    draft.characters = list(_listed(draft, "characters", CharacterDoc, files["characters"]))
    draft.labels = list(_listed(draft, "labels", LabelDoc, files["labels"]))
    draft.couplets = list(_listed(draft, "couplets", CoupletDoc, files["couplets"]))
    draft.sources = list(_named(draft, "sources", SourceDoc, files["sources"]))
    draft.checks = list(_listed(draft, "checks", CheckDoc, files["checks"]))
    _read_taxa(draft, texts)
    return draft


def _file(draft: Draft, texts: Texts, name: str) -> YamlText | None:
    file = f"{name}.yaml"
    if file not in texts.names and name in _NEEDED and texts.found:
        draft.problems.append(start_of(draft.folder / file, f"The key has no {file}.", "Add it."))
    if file in texts.names and file not in texts.files:
        draft.lost.add(name)
    return texts.files.get(file)


def _entry(
    draft: Draft, document: type[_Doc], yaml: YamlText, loc: Loc, plain: Any
) -> Entry[_Doc] | None:
    """The document at `loc`, or None and its mistakes noted."""
    plain = _without_nothing(plain)
    try:
        doc = document.model_validate(plain)
    except ValidationError as error:
        draft.problems += complaints(yaml, loc, error, document, plain)
        return None
    return Entry(str(getattr(doc, "id", loc[-1] if loc else "")), yaml, loc, doc)


def _without_nothing(plain: Any) -> Any:
    """`plain` without fields that were left empty, at every depth."""
    if isinstance(plain, dict):
        return {n: _without_nothing(v) for n, v in plain.items() if v is not None}
    if isinstance(plain, list):
        return [_without_nothing(v) for v in plain]
    return plain


def _inside(draft: Draft, name: str, yaml: YamlText | None) -> Any:
    """What stands under the one top-level name of a file; None when there is nothing."""
    if yaml is None or yaml.plain is None:
        return None
    if not isinstance(yaml.plain, dict):
        draft.lost.add(name)
        draft.problems.append(
            yaml.problem((), f"The file does not start with '{name}:'.", f"Write '{name}:' above.")
        )
        return None
    for other in yaml.plain:
        if other != name:
            draft.problems.append(
                yaml.problem_at_key((other,), f"Unknown field '{other}'.", hint(other, [name]))
            )
    return yaml.plain.get(name)


def _listed(
    draft: Draft, name: str, document: type[_Doc], yaml: YamlText | None
) -> Iterator[Entry[_Doc]]:
    found = _inside(draft, name, yaml)
    known: dict[str, Any] = draft.plain.setdefault(name, {})
    if yaml is None or found is None:
        return
    if not isinstance(found, list):
        draft.lost.add(name)
        remedy = "Start each entry with a dash."
        draft.problems.append(yaml.problem((name,), f"'{name}' needs a list.", remedy))
        return
    for index, plain in enumerate(found):
        loc: Loc = (name, index)
        own = plain.get("id") if isinstance(plain, dict) else None
        if isinstance(own, str) and own in known:
            problem = f"The id '{own}' is used twice in {yaml.file.name}."
            draft.problems.append(
                yaml.problem((*loc, "id"), problem, "Give one of them another id.")
            )
        elif isinstance(own, str) and _ID.fullmatch(own):
            known[own] = plain
        else:
            draft.lost.add(name)
        entry = _entry(draft, document, yaml, loc, plain)
        if entry is not None:
            yield entry


def _named(
    draft: Draft, name: str, document: type[_Doc], yaml: YamlText | None
) -> Iterator[Entry[_Doc]]:
    found = _inside(draft, name, yaml)
    known = draft.plain.setdefault(name, {})
    if yaml is None or found is None:
        return
    if not isinstance(found, dict):
        draft.lost.add(name)
        remedy = "Write 'id:' and below it the fields."
        draft.problems.append(yaml.problem((name,), f"'{name}' needs named entries.", remedy))
        return
    for own, plain in found.items():
        known[own] = plain
        entry = _entry(draft, document, yaml, (name, own), plain)
        if entry is not None:
            yield entry


def _read_taxa(draft: Draft, texts: Texts) -> None:
    known = draft.plain.setdefault("taxa", {})
    for name in sorted(name for name in texts.names if name.startswith("taxa/")):
        stem = name.removeprefix("taxa/").removesuffix(".yaml")
        known[stem] = None
        if (yaml := texts.files.get(name)) is not None:
            _read_taxon(draft, stem, yaml)
    if not known and texts.found:
        wrong = start_of(draft.folder / "taxa", "The key has no taxa.", "Add a file for each.")
        draft.problems.append(wrong)


def _read_taxon(draft: Draft, stem: str, yaml: YamlText) -> None:
    plain = yaml.plain
    scores = plain.get("scores") if isinstance(plain, dict) else None
    if scores is not None:
        plain = {name: value for name, value in plain.items() if name != "scores"}
    entry = _entry(draft, TaxonDoc, yaml, (), plain)
    if entry is not None:
        draft.taxa.append(entry)
        if entry.id != stem:
            draft.problems.append(
                yaml.problem(
                    ("id",),
                    f"The id '{entry.id}' is not the name of the file.",
                    f"Write id: {stem}, or rename the file to {entry.id}.yaml.",
                )
            )
    if isinstance(scores, dict):
        draft.scores[stem] = list(_scores(draft, yaml, scores))
    elif scores is not None:
        remedy = "Write 'character: {shows: [...]}', one a line."
        draft.problems.append(
            yaml.problem(("scores",), "'scores' needs characters by name.", remedy)
        )


def _scores(draft: Draft, yaml: YamlText, scores: Mapping[str, Any]) -> Iterator[Entry[ScoreDoc]]:
    for character, cell in scores.items():
        if not isinstance(cell, list):
            entry = _score(draft, yaml, ("scores", character), cell)
            if entry is not None:
                yield entry
            continue
        if not cell:
            problem = f"The list of scores of '{character}' is empty."
            draft.problems.append(
                yaml.problem(("scores", character), problem, "Add a score, or remove the line.")
            )
        for index, plain in enumerate(cell):
            entry = _score(draft, yaml, ("scores", character, index), plain)
            if entry is not None:
                yield entry


def _score(draft: Draft, yaml: YamlText, loc: Loc, plain: Any) -> Entry[ScoreDoc] | None:
    if isinstance(plain, dict) and None in plain.values():
        plain = {name: value for name, value in plain.items() if value is not None}
    try:
        return Entry(str(loc[1]), yaml, loc, _SCORE.validate_python(plain))
    except ValidationError as error:
        draft.problems += complaints(yaml, loc, error, ScoreDoc, plain)
        return None
