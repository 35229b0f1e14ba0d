"""Writes a key folder: canonical, comments kept, all or nothing."""

import contextlib
import os
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from idkey.errors import IdKeyError
from idkey.formats.emit import text_of
from idkey.formats.patch import patched
from idkey.formats.plain import (
    canonical,
    characters_document,
    checks_document,
    couplets_document,
    key_document,
    labels_document,
    sources_document,
    taxon_documents,
)
from idkey.formats.texts import Texts
from idkey.formats.yaml_text import YamlText, read_yaml
from idkey.model.key import Key

_MANY = 20


def folder_documents(key: Key) -> dict[str, dict[str, Any]]:
    """The document per file name, such as ``"taxa/pandinus_imperator.yaml"``."""
    key = canonical(key)
    taxa = {f"taxa/{name}.yaml": doc for name, doc in taxon_documents(key).items()}
    return {
        "key.yaml": key_document(key),
        "characters.yaml": characters_document(key),
        "labels.yaml": labels_document(key),
        "couplets.yaml": couplets_document(key),
        "sources.yaml": sources_document(key),
        "checks.yaml": checks_document(key),
        **taxa,
    }


def texts_of(documents: Mapping[str, dict[str, Any]], folder: Path) -> Texts:
    """The files that would be written to `folder`, without writing them."""
    texts = Texts(names=set(documents))
    for name, document in documents.items():
        texts.files[name] = YamlText(
            file=folder / name, text=text_of(document), plain=as_written(document)
        )
    return texts


def as_written(value: Any) -> Any:
    """A document as reading its text would give it: every scalar a text."""
    if isinstance(value, dict):
        return {name: as_written(inner) for name, inner in value.items()}
    if isinstance(value, list):
        return [as_written(inner) for inner in value]
    if isinstance(value, bool):
        return "true" if value else "false"
    return value if value is None or isinstance(value, str) else repr(value)


@dataclass(frozen=True, slots=True)
class Plan:
    """What writing a key will do to its folder.

    Attributes:
        texts: New text per file name; files that say the same already are not in it.
        kept: Names of files that stay as they are.
        patched: Whether lines of the old files were kept in some new text.
    """

    texts: Mapping[str, str]
    kept: frozenset[str] = frozenset()
    patched: bool = False


def planned(
    documents: Mapping[str, dict[str, Any]],
    folder: Path,
    before: Mapping[str, dict[str, Any]],
) -> Plan:
    """How the files have to change so that they say these documents.

    Args:
        documents: What the files shall say.
        folder: Where they are.
        before: What they say now; empty when they cannot be read.
    """
    texts: dict[str, str] = {}
    kept: set[str] = set()
    exchanged = False
    for name, document in documents.items():
        old = read_yaml(folder / name)[0] if name in before else None
        if old is not None and before[name] == document:
            kept.add(name)
            continue
        text = None if old is None else patched(old, before[name], document)
        exchanged = exchanged or text is not None
        texts[name] = text or text_of(document)
    return Plan(texts, frozenset(kept), exchanged)


def write_files(plan: Plan, folder: Path, *, trusted: bool) -> None:
    """Write the files of a plan, and remove taxa that are gone.

    They are all written beside their targets first, so that a full disk leaves the old key as
    it was.

    Args:
        plan: What to write.
        folder: Where to.
        trusted: Whether the old files could be read; copies of the others are kept as ``.bak``.

    Raises:
        IdKeyError: The folder cannot be written.
    """
    staged: list[tuple[Path, Path]] = []
    try:
        (folder / "taxa").mkdir(parents=True, exist_ok=True)
        staged += [(_staged(folder / n, text), folder / n) for n, text in plan.texts.items()]
        _flush([new for new, _ in staged])
        for new, target in staged:
            if not trusted and target.exists():
                target.replace(target.with_name(f"{target.name}.bak"))
            new.replace(target)
        staged = []
        for file in (folder / "taxa").glob("*.yaml"):
            name = f"taxa/{file.name}"
            if name not in plan.texts and name not in plan.kept:
                file.unlink()
    except OSError as err:
        reason = err.strerror or "unknown reason"
        raise IdKeyError(
            f"The key could not be written to {folder}: {reason}.",
            "Make room or ask for the right to write there; the old files still stand.",
        ) from err
    finally:
        for new, _ in staged:
            with contextlib.suppress(OSError):
                new.unlink()


def _staged(target: Path, text: str) -> Path:
    new = target.with_name(f".{target.name}.new")
    new.write_text(text, encoding="utf-8", newline="\n")
    return new


def _flush(files: list[Path]) -> None:
    """Have the files on the disk before they take the place of the old ones."""
    if len(files) > _MANY and hasattr(os, "sync"):
        os.sync()
        return
    for file in files:
        with file.open("rb+") as stream:
            os.fsync(stream.fileno())
