"""The drawings that stand beside the leads of a printed key."""

from base64 import b64encode
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from html import escape
from pathlib import Path

from idkey.figures.own import shown_figure, supplied_terms
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
        terms: Who made one that came with the key, and its licence; empty for others.
    """

    character: str
    state: str
    words: str
    file: Path
    terms: str = ""


def lead_figures(key: Key, lead: PrintedLead, drawings: Drawings | None) -> tuple[LeadFigure, ...]:
    """Drawings of the states a lead stands for; of a number, how it is taken, once a couplet.

    None for where drawings are leaves them out.
    """
    if drawings is None:
        return ()
    couplet = key.couplet[lead.couplet]
    found: list[LeadFigure] = []
    for sees in couplet.leads[lead.place].sees:
        if sees.character in key.character:
            found += _shown(key, sees, drawings, first=lead.first)
    return tuple(found[:MOST])


def _shown(key: Key, sees: Sees, drawings: Drawings, *, first: bool) -> Iterator[LeadFigure]:
    character = key.character[sees.character]
    if character.kind.numeric and not first:
        return
    images, own = drawings.images, character.id
    labels = {state.id: state.label for state in character.states}
    for state in [name for name in sees.states if name in labels] or [""]:
        file = shown_figure(images, drawings.libraries, key, character=own, state=state or None)
        if file is None:
            continue
        yield LeadFigure(
            character=own,
            state=state,
            words=f"{character.name}: {labels[state]}" if state else character.name,
            file=file,
            terms=supplied_terms(images, key, own, state, figure=file) if state else "",
        )


def picture_credits(figures: Iterable[LeadFigure]) -> tuple[str, ...]:
    """Who made the figures that are not the program's own, and their licences, once each."""
    said = (f"{figure.words} – {figure.terms}" for figure in figures if figure.terms)
    return tuple(dict.fromkeys(said))


def figure_html(figure: LeadFigure) -> str:
    """The drawing inside a page, so that the page needs no other file."""
    content = b64encode(figure.file.read_bytes()).decode("ascii")
    kind = _TYPES[figure.file.suffix]
    return f'<img src="data:{kind};base64,{content}" alt="{escape(figure.words)}">'
