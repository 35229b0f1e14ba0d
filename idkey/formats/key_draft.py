"""A key under edit as one file: also with mistakes in it, and with its way back."""

import hashlib
import json
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter

from idkey.errors import IdKeyError
from idkey.formats.delta import Delta, applied, delta
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.places import keep_private

FORMAT = 1
LARGEST_DRAFT = 256 * 2**20
MOST_STEPS = 50
"""Steps that are kept to be taken back."""

_MISFIT = (ValueError, LookupError, TypeError, AttributeError)
_MOST_SHARED = 3
_KEY = TypeAdapter(Key)
_SCORE = TypeAdapter(Score)


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyDraft:
    """What is kept of a key under edit.

    Attributes:
        folder: The folder it belongs to.
        saved: The key as the folder said it when editing began.
        key: The key as edited; it may have mistakes.
        past: (key before it, what it did) of each step that can be taken back, latest last.
    """

    folder: Path
    saved: Key
    key: Key
    past: tuple[tuple[Key, str], ...] = ()


def draft_file(drafts: Path, folder: Path) -> Path:
    """Where the draft of a key folder is kept."""
    name = hashlib.sha256(str(folder.absolute()).encode()).hexdigest()[:24]
    return drafts / f"{name}.json"


class DraftWriter:
    """Writes drafts one after another; what it worked out once is not worked out again."""

    def __init__(self) -> None:
        self._plain: dict[int, tuple[Key, Any]] = {}
        self._steps: dict[tuple[int, int], tuple[Key, Key, Delta]] = {}
        self._scores: dict[int, tuple[Score, Any, str]] = {}

    def write(self, draft: KeyDraft, file: Path) -> None:
        """Put a draft in the place of the one that is there, whole or not at all.

        Raises:
            IdKeyError: It cannot be written.
        """
        past = draft.past[-MOST_STEPS:]
        keys = [*(key for key, _ in past), draft.key]
        self._forget_all_but((*keys, draft.saved))
        steps = [self._back(after, before) for before, after in pairwise(keys)]
        said = {
            "format": FORMAT,
            "folder": str(draft.folder),
            "key": {n: v for n, v in self._said(draft.key).items() if n != "scores"},
            "saved": self._back(draft.key, draft.saved),
            "past": [{"words": w, "back": s} for (_, w), s in zip(past, steps, strict=True)],
        }
        scores = ",".join(self._score(score)[2] for score in draft.key.scores)
        _put(file, f'{_json(said)[:-1]},"scores":[{scores}]}}')

    def _said(self, key: Key) -> Any:
        if id(key) not in self._plain:
            plain = _KEY.dump_python(replace(key, scores=()), mode="json", exclude_defaults=True)
            scores = [self._score(score)[1] for score in key.scores]
            self._plain[id(key)] = (key, {"scores": scores, **plain})
        return self._plain[id(key)][1]

    def _score(self, score: Score) -> tuple[Score, Any, str]:
        """The score, as plain values, and as text; keys share most of theirs."""
        if id(score) not in self._scores:
            plain = _SCORE.dump_python(score, mode="json", exclude_defaults=True)
            self._scores[id(score)] = (score, plain, _json(plain))
        return self._scores[id(score)]

    def _back(self, after: Key, before: Key) -> Delta:
        pair = (id(after), id(before))
        if pair not in self._steps:
            change = delta(self._said(after), self._said(before))
            self._steps[pair] = (after, before, change)
        return self._steps[pair][2]

    def _forget_all_but(self, keys: Sequence[Key]) -> None:
        known = {id(key) for key in keys}
        recent = {id(key) for key in keys[-3:]}
        self._plain = {n: kept for n, kept in self._plain.items() if n in recent}
        self._steps = {pair: kept for pair, kept in self._steps.items() if {*pair} <= known}
        if len(self._scores) > _MOST_SHARED * max(len(keys[-1].scores), 1000):
            self._scores = {}


def read_draft(file: Path) -> KeyDraft | None:
    """The draft in a file; None when there is none.

    A step that cannot be read ends the way back; what was edited is still there.

    Raises:
        IdKeyError: The draft cannot be read.
    """
    try:
        with file.open("rb") as stream:
            raw = stream.read(LARGEST_DRAFT + 1)
    except FileNotFoundError:
        return None
    except OSError as err:
        raise _unreadable(file, err.strerror or "unknown reason") from err
    if len(raw) > LARGEST_DRAFT:
        raise _unreadable(file, "it is too large")
    try:
        return _draft(json.loads(raw))
    except (*_MISFIT, RecursionError) as err:
        raise _unreadable(file, "it is damaged") from err


def draft_folders(drafts: Path) -> tuple[Path, ...]:
    """The key folders that have a draft, the one worked on last first."""
    files = [(file.stat().st_mtime, file) for file in drafts.glob("*.json")]
    return tuple(_folders(file for _, file in sorted(files, reverse=True)))


def _folders(files: Iterable[Path]) -> Iterator[Path]:
    head = f'{{"format":{FORMAT},"folder":'
    for file in files:
        try:
            with file.open(encoding="utf-8") as stream:
                start = stream.read(10_000)
            if start.startswith(head):
                yield Path(json.JSONDecoder().raw_decode(start, len(head))[0])
        except (OSError, ValueError, TypeError):
            continue


def _draft(said: Any) -> KeyDraft:
    if said["format"] != FORMAT:
        raise ValueError("another format")
    reader = _Reader()
    plain = {"scores": said["scores"], **{n: v for n, v in said["key"].items() if n != "scores"}}
    key = reader.key(plain)
    past: list[tuple[Key, str]] = []
    before = plain
    for step in reversed(said["past"][-MOST_STEPS:]):
        try:
            before = applied(step["back"], before)
            past.append((reader.key(before), str(step["words"])))
        except _MISFIT:
            break
    return KeyDraft(
        folder=Path(said["folder"]),
        saved=reader.key(applied(said["saved"], plain)),
        key=key,
        past=tuple(reversed(past)),
    )


class _Reader:
    """Reads keys that share most of their scores; each of those is read once."""

    def __init__(self) -> None:
        self._scores: dict[int, tuple[Any, Score]] = {}

    def key(self, plain: Any) -> Key:
        head = _KEY.validate_python({name: plain[name] for name in plain if name != "scores"})
        return replace(head, scores=tuple(self._score(score) for score in plain["scores"]))

    def _score(self, plain: Any) -> Score:
        if id(plain) not in self._scores:
            self._scores[id(plain)] = (plain, _SCORE.validate_python(plain))
        return self._scores[id(plain)][1]


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def _put(file: Path, text: str) -> None:
    try:
        keep_private(file, text.encode(), durable=True)
    except OSError as err:
        reason = err.strerror or "unknown reason"
        raise IdKeyError(
            f"Your unsaved work could not be kept: {reason}.",
            "Make room on the disk, and save the key.",
        ) from err


def _unreadable(file: Path, reason: str) -> IdKeyError:
    return IdKeyError(
        f"The unsaved work in {file} cannot be read: {reason}.",
        "The key is opened as its folder says it; the damaged file is kept beside the others.",
    )
