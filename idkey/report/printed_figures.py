"""The drawings that stand beside the leads of a printed key."""

from base64 import b64encode
from collections.abc import Iterable
from dataclasses import dataclass
from html import escape
from pathlib import Path

from idkey.figures.own import shown_figure, supplied
from idkey.model.couplet import Sees
from idkey.model.key import Key
from idkey.report.printed_key import PrintedLead

MOST = 3
"""Most drawings beside one lead."""

_TYPES = {
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".jpg": "image/jpeg",
    ".jpeg": "image/jpeg",
    ".webp": "image/webp",
}


@dataclass(frozen=True, slots=True)
class Drawings:
    """Where drawings are looked for.

    Attributes:
        images: Folder of the drawings of the program.
        libraries: Folders with one folder per key, where a key may have pictures of its own.
    """

    images: Path
    libraries: tuple[Path, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class LeadFigure:
    """A drawing beside a lead.

    Attributes:
        character: Character id.
        state: State id; empty for how a number is taken.
        words: What it shows, for readers that speak.
        file: The drawing.
    """

    character: str
    state: str
    words: str
    file: Path


def lead_figures(key: Key, lead: PrintedLead, drawings: Drawings) -> tuple[LeadFigure, ...]:
    """Drawings of the states a lead stands for; of a number, how it is taken, once a couplet."""
    couplet = key.couplet[lead.couplet]
    found: list[LeadFigure] = []
    for sees in couplet.leads[lead.place].sees:
        if sees.character in key.character:
            found += _shown(key, sees, drawings, first=lead.first)
    return tuple(found[:MOST])


def _shown(key: Key, sees: Sees, drawings: Drawings, *, first: bool) -> list[LeadFigure]:
    character = key.character[sees.character]
    if character.kind.numeric and not first:
        return []
    labels = {state.id: state.label for state in character.states}
    wanted = [state for state in sees.states if state in labels] or [""]
    found = []
    for state in wanted if not character.kind.numeric else [""]:
        file = shown_figure(
            drawings.images, drawings.libraries, key, character=character.id, state=state or None
        )
        if file is not None:
            words = f"{character.name}: {labels[state]}" if state else character.name
            found.append(LeadFigure(character=character.id, state=state, words=words, file=file))
    return found


def picture_credits(key: Key, leads: Iterable[PrintedLead], drawings: Drawings) -> tuple[str, ...]:
    """Who made the printed pictures that are not the program's own, and their licences, once each.

    Args:
        key: The key.
        leads: What is printed.
        drawings: Where the drawings are.
    """
    found: dict[str, None] = {}
    for lead in leads:
        for figure in lead_figures(key, lead, drawings):
            place = (figure.character, figure.state)
            if figure.state and supplied(drawings.images, key, *place, figure=figure.file):
                state = key.character[figure.character].state(figure.state)
                terms = ", ".join(filter(None, (state.figure_credit, state.figure_licence)))
                if terms:
                    found[f"{figure.words} – {terms}"] = None
    return tuple(found)


def figure_html(figure: LeadFigure) -> str:
    """The drawing inside a page, so that the page needs no other file."""
    content = b64encode(figure.file.read_bytes()).decode("ascii")
    kind = _TYPES[figure.file.suffix]
    return f'<img src="data:{kind};base64,{content}" alt="{escape(figure.words)}">'
