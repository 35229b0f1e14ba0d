"""Finds the drawing that shows a state, or says how a number is taken."""

from pathlib import Path

from idkey.model.key import Key

MEASURE = "measure"
"""Name of the drawing that says how a number is taken."""
KINDS = (".svg", ".png", ".jpg", ".jpeg", ".webp")
"""File endings of figures, in the order in which they are looked for."""


def figure_path(images: Path, key: Key, character: str, state: str | None = None) -> Path | None:
    """The drawing of a state, or of how the number of a character is taken.

    Args:
        images: Folder of the drawings.
        key: The key.
        character: Character id.
        state: State id; None asks how to measure or count.

    Returns:
        The file, or None when there is none. A figure that the state itself names below `images`
        comes first; one that leads out of `images` is not taken.
    """
    if state is not None and (named := _named(images, key, character, state)) is not None:
        return named
    stem = images / "figures" / key.id / character / (state or MEASURE)
    for kind in KINDS:
        file = stem.with_name(stem.name + kind)
        if file.is_file() and _below(images, file):
            return file
    return None


def _named(images: Path, key: Key, character: str, state: str) -> Path | None:
    described = key.character.get(character)
    if described is None or state not in described.state_ids:
        return None
    figure = described.state(state).figure
    file = images / figure
    return file if figure and file.is_file() and _below(images, file) else None


def _below(images: Path, file: Path) -> bool:
    return file.resolve().is_relative_to(images.resolve())
