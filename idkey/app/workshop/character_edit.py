"""Changes to a character that take its scores and its figures along."""

from dataclasses import replace
from pathlib import Path

from idkey.app.workshop.forms_entries import EntryKind, put
from idkey.app.workshop.forms_references import renamed, with_references, with_states
from idkey.app.workshop.state_form_picture import CREDIT, LICENCE, named_figure, picture_file
from idkey.model.character import Character, Kind, State
from idkey.model.key import Key


def with_figures_named(key: Key, folder: Path, character: str, state: str = "") -> Key:
    """The key with the usual drawings of a character named, so that a new id does not lose them.

    Args:
        key: The key.
        folder: Its folder.
        character: Character id.
        state: The only state to look at; empty for all.
    """
    one = key.character[character]

    def named(own: State) -> State:
        if own.figure or (state and own.id != state):
            return own
        file = picture_file(folder, key, character, own.id)
        figure = named_figure(file) if file is not None else ""
        if not figure:
            return own
        return replace(own, figure=figure, figure_credit=CREDIT, figure_licence=LICENCE)

    states = tuple(named(own) for own in one.states)
    return put(key, EntryKind.CHARACTER, replace(one, states=states))


def with_character_id(key: Key, folder: Path, old: str, new: str) -> Key:
    """The key with another id for a character; everything follows, and its drawings stay."""
    return renamed(with_figures_named(key, folder, old), EntryKind.CHARACTER, old, new)


def with_state_id(key: Key, folder: Path, character: str, *, old: str, new: str) -> Key:
    """The key with another id for a state; everything follows, and its drawing stays."""
    key = with_figures_named(key, folder, character, old)
    key = with_states(key, character, lambda one: new if one == old else one)
    one = key.character[character]
    states = tuple(replace(own, id=new) if own.id == old else own for own in one.states)
    return put(key, EntryKind.CHARACTER, replace(one, states=states))


def without_state(key: Key, character: str, state: str) -> Key:
    """The key without a state; what names it lets go of it.

    A character keeps its last state: one that has none is of another kind.
    """
    one = key.character[character]
    if len(one.states) < 2:
        return key
    key = with_states(key, character, lambda own: None if own == state else own)
    one = key.character[character]
    states = tuple(own for own in one.states if own.id != state)
    return put(key, EntryKind.CHARACTER, replace(one, states=states))


def with_kind(key: Key, character: str, kind: Kind, *, words: tuple[str, str]) -> Key:
    """The key with another kind of a character.

    Between states and numbers nothing can be kept: scores, leads and checks let go of it.

    Args:
        key: The key.
        character: Character id.
        kind: The kind.
        words: Labels of the two states that a character without states starts with.
    """
    one = key.character[character]
    if one.kind.numeric == kind.numeric:
        return put(key, EntryKind.CHARACTER, replace(one, kind=kind))
    key = with_references(key, EntryKind.CHARACTER, lambda own: None if own == character else own)
    return put(key, EntryKind.CHARACTER, _of_kind(key.character[character], kind, words))


def _of_kind(one: Character, kind: Kind, words: tuple[str, str]) -> Character:
    if kind.numeric:
        return replace(one, kind=kind, states=())
    states = tuple(State(id=f"state_{n}", label=word) for n, word in enumerate(words, start=1))
    return replace(one, kind=kind, states=states, unit="", uncertainty=None)
