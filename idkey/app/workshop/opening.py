"""Taking a key onto the table: as its folder says it, or as unsaved work left it."""

from dataclasses import dataclass, replace
from pathlib import Path

from idkey.app.workshop.drafts import Drafts
from idkey.app.workshop.editing import Editing, Step
from idkey.errors import IdKeyError
from idkey.formats.folder import mendable_key, read_key
from idkey.formats.problem import KeyProblems
from idkey.model.key import Key

MANY_TAXA = 200
"""A key of more taxa takes longer to read than one likes to wait for."""


@dataclass(frozen=True, slots=True)
class TakenUp:
    """A key ready to be edited, and why unsaved work on it is not there."""

    editing: Editing
    damaged: IdKeyError | None = None


def taken_up(folder: Path, drafts: Drafts) -> TakenUp:  # may run on a pool thread
    """The key of a folder, with the unsaved work there is on it.

    Raises:
        KeyProblems: A part of it cannot be understood, and there is no unsaved work on it.
    """
    try:
        draft = drafts.of(folder)
    except IdKeyError as err:
        key = _readable(folder)
        return TakenUp(Editing(folder=folder, saved=key, key=key, checking=True), err)
    if draft is None:
        key = _readable(folder)
        return TakenUp(Editing(folder=folder, saved=key, key=key, checking=True))
    past = tuple(Step(key, words) for key, words in draft.past)
    return TakenUp(
        Editing(folder=folder, saved=draft.saved, key=draft.key, past=past, checking=True)
    )


def large(folder: Path) -> bool:
    """Whether reading the key of a folder takes long."""
    names = (folder / "taxa").glob("*.yaml") if folder.is_dir() else ()
    return sum(1 for _ in names) > MANY_TAXA


def _readable(folder: Path) -> Key:
    """The key of a folder; one whose parts do not fit together is opened to be mended."""
    try:
        return read_key(folder)
    except KeyProblems:
        key = mendable_key(folder)
        if key is None:
            raise
        return replace(key, scores=tuple(sorted(key.scores, key=lambda score: score.taxon)))
