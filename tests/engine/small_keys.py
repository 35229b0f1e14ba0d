"""Small made-up keys for the engine's tests."""

from collections.abc import Mapping, Sequence

from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.score import Score, Shows, Spans, Value
from idkey.model.taxon import Taxon


def states_character(name: str, states: Sequence[str], **more: object) -> Character:
    """A categorical character without observer error, unless told otherwise."""
    given: dict[str, object] = {"kind": Kind.CATEGORICAL, "looks": (Look.TUB,), "error": 0.0}
    given |= more
    return Character(
        id=name,
        name=name,
        question=name,
        states=tuple(State(id=s, label=s) for s in states),
        **given,
    )


def number_character(name: str, **more: object) -> Character:
    """A measurement in mm without slips, unless told otherwise."""
    given: dict[str, object] = {
        "kind": Kind.MEASUREMENT,
        "looks": (Look.ABOVE,),
        "unit": "mm",
        "error": 0.0,
    }
    given |= more
    return Character(id=name, name=name, question=name, **given)


def key_of(
    characters: Sequence[Character],
    table: Mapping[str, Mapping[str, Value | str | None]],
    **more: object,
) -> Key:
    """A key from {taxon: {character: state, value or None}}; None is unscored."""
    scores = tuple(
        Score(
            taxon=taxon,
            character=name,
            value=Shows({value: None}) if isinstance(value, str) else value,
        )
        for taxon, row in table.items()
        for name, value in row.items()
        if value is not None
    )
    taxa = more.pop("taxa", tuple(Taxon(id=t, name=f"Genus {t}", family="Fam") for t in table))
    return Key(
        id="small",
        title="Small",
        version="1.0.0",
        characters=tuple(characters),
        taxa=taxa,
        scores=scores,
        **more,
    )


def binary_key(rows: Sequence[Sequence[int]], **more: object) -> Key:
    """A key from a 0/1 matrix: taxa t0, t1 …, characters c0, c1 …."""
    characters = [states_character(f"c{n}", ("0", "1"), **more) for n in range(len(rows[0]))]
    table = {f"t{t}": {f"c{n}": str(v) for n, v in enumerate(row)} for t, row in enumerate(rows)}
    return key_of(characters, table)


def spans(low: float, high: float, **more: float) -> Spans:
    """A printed range."""
    return Spans(low=low, high=high, **more)
