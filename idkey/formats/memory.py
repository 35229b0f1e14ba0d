"""Keys as they were read last time, so that a large key opens at once.

What is remembered goes by the SHA-256 of the key's files, so it can never be older than them.
"""

import contextlib
import hashlib
import json
from collections import deque
from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path
from typing import Any, Generic, TypeVar

from idkey.formats import assemble
from idkey.formats.plain import documents, score_document
from idkey.formats.taxon_document import ScoreDoc
from idkey.formats.texts import FILES
from idkey.formats.whole import whole
from idkey.formats.write import as_written
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.places import keep_private

LAYOUT = "1"
"""Version of what is remembered; another version is read anew."""

MOST_KEYS = 30
"""The key that was remembered longest ago gives way."""

_T = TypeVar("_T")


class KeyMemory:
    """What is remembered of one key folder.

    Args:
        cache: Folder for what is remembered; made when needed.
        folder: The key.
    """

    def __init__(self, cache: Path, folder: Path) -> None:
        self._cache = cache
        self._file = cache / f"{_fingerprint(folder)}.json"

    def key(self) -> Key | None:
        """The key; None when it is not remembered, or not well."""
        try:
            said = json.loads(self._file.read_bytes())
            return _recalled(said)
        except (OSError, ValueError, TypeError, LookupError):
            return None

    def keep(self, key: Key) -> None:
        """Remember the key; a disk that is full is no reason to fail."""
        with contextlib.suppress(OSError):
            keep_private(self._file, json.dumps(_remembered(key), separators=(",", ":")).encode())
            kept = sorted(self._cache.glob("*.json"), key=lambda file: file.stat().st_mtime)
            for file in kept[:-MOST_KEYS]:
                file.unlink()


def _fingerprint(folder: Path) -> str:
    files = [folder / f"{name}.yaml" for name in FILES]
    files += sorted((folder / "taxa").glob("*.yaml"))
    told = hashlib.sha256(LAYOUT.encode())
    for file in files:
        with contextlib.suppress(OSError):
            raw = file.read_bytes()
            told.update(f"\0{file.name}\0{len(raw)}\0".encode())
            told.update(raw)
    return told.hexdigest()


class _Numbered(Generic[_T]):
    """Distinct values by number, in the order of their first use."""

    def __init__(self) -> None:
        self.values: list[_T] = []
        self._numbers: dict[object, int] = {}

    def number(self, value: _T, name: object) -> int:
        """The number of the value that goes by that name."""
        if name not in self._numbers:
            self._numbers[name] = len(self.values)
            self.values.append(value)
        return self._numbers[name]


def _remembered(key: Key) -> dict[str, Any]:
    rank = {taxon.id: n for n, taxon in enumerate(key.taxa)}
    order = {character.id: n for n, character in enumerate(key.characters)}
    values: _Numbered[Any] = _Numbered()
    sources: _Numbered[tuple[str, ...]] = _Numbered()
    notes: _Numbered[str] = _Numbered()
    rows = []
    for score in key.scores:
        said = score_document(score, key.character[score.character].state_ids)
        said.pop("sources", None)
        said.pop("note", None)
        rows.append(
            (
                rank[score.taxon],
                order[score.character],
                values.number(said, repr(said)),
                sources.number(score.sources, score.sources),
                notes.number(score.note, score.note),
            )
        )
    return {
        "digest": key.digest,
        "head": documents(replace(key, scores=())),
        "values": values.values,
        "sources": sources.values,
        "notes": notes.values,
        "columns": [list(column) for column in zip(*rows, strict=True)],
    }


def _recalled(said: dict[str, Any]) -> Key:
    key = replace(whole(said["head"]), digest=said["digest"])
    if not said["columns"]:
        return key
    return replace(key, scores=_scores(key, said))


def _scores(key: Key, said: dict[str, Any]) -> tuple[Score, ...]:
    """All scores at once, column by column: a loop over 100,000 of them takes half a second."""
    taxon, character, value, source, note = said["columns"]
    patterns = [assemble.score("", "", ScoreDoc(**as_written(v))) for v in said["values"]]
    columns: dict[str, Iterable[Any]] = {
        "taxon": map([t.id for t in key.taxa].__getitem__, taxon),
        "character": map([c.id for c in key.characters].__getitem__, character),
        "value": map([p.value for p in patterns].__getitem__, value),
        "sex": map([p.sex for p in patterns].__getitem__, value),
        "stage": map([p.stage for p in patterns].__getitem__, value),
        "basis": map([p.basis for p in patterns].__getitem__, value),
        "sources": map([tuple(s) for s in said["sources"]].__getitem__, source),
        "note": map(said["notes"].__getitem__, note),
    }
    return _columnwise(len(taxon), columns)


def _columnwise(count: int, columns: dict[str, Iterable[Any]]) -> tuple[Score, ...]:
    scores = tuple(map(Score.__new__, [Score] * count))
    for name, column in columns.items():
        deque(map(getattr(Score, name).__set__, scores, column), maxlen=0)
    return scores
