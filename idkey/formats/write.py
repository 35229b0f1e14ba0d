"""Writes a key folder: canonical, comments kept, all or nothing."""

import contextlib
import os
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from idkey.errors import IdKeyError
from idkey.formats.comments import Comments
from idkey.formats.emit import emitted, text_of
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


def write_documents(documents: Mapping[str, dict[str, Any]], folder: Path) -> None:
    """Write the files, and remove taxa that are gone.

    A file whose content is the same already is not touched. All others are written beside
    their targets first, so that a full disk leaves the old key as it was.

    Raises:
        IdKeyError: The folder cannot be written.
    """
    staged: list[tuple[Path, Path]] = []
    try:
        (folder / "taxa").mkdir(parents=True, exist_ok=True)
        for name, document in documents.items():
            text = _new_text(folder / name, document)
            if text is not None:
                staged.append((_staged(folder / name, text), folder / name))
        _flush([new for new, _ in staged])
        for new, target in staged:
            new.replace(target)
        staged = []
        for file in (folder / "taxa").glob("*.yaml"):
            if f"taxa/{file.name}" not in documents:
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


def _new_text(file: Path, document: dict[str, Any]) -> str | None:
    """What to write; None when the file says the same already."""
    old = read_yaml(file)[0] if file.exists() else None
    if old is None:
        return text_of(document)
    plain = as_written(document)
    if old.plain == plain:
        return None
    return "".join(f"{line}\n" for line in Comments(old).woven(emitted(document), plain))


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
