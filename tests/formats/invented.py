"""Keys that hypothesis makes up, as strange as the model and the file format allow."""

from typing import Any

from hypothesis import strategies as st

from idkey.model.character import Character, Kind, Look, Reliability, Requirement, Sex, Stage, State
from idkey.model.check import Check, CheckKind
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key
from idkey.model.label import Label, Rates
from idkey.model.score import Inapplicable, Often, Score, Shows, Spans, Value
from idkey.model.source import Basis, Source
from idkey.model.taxon import Climate, Danger, Hazard, Permit, Taxon

WORDS = st.one_of(
    st.text(st.characters(codec="utf-8", exclude_characters="\x00"), min_size=1, max_size=12),
    st.sampled_from(
        [
            "no",
            "null",
            "~",
            "1.5",
            "- a",
            "a: b",
            "a #b",
            "'",
            '"',
            "\\",
            "[x]",
            "é",
            " a ",
            "\n",
            "\t",
        ]
    ),
)
TEXT = st.just("") | WORDS
PLAIN_WORDS = st.text("abc xyz-&<>'\"éß,;:", min_size=1, max_size=10).map(str.strip).filter(bool)
"""Words without control characters or outer blanks, for formats that cannot hold them."""

IDS = st.one_of(
    st.from_regex(r"[a-z][a-z0-9_]{0,5}", fullmatch=True),
    st.sampled_from(["no", "null", "yes", "on", "none", "1", "1.5", "1e3", "0x1f", "type_C-neo"]),
)
NUMBERS = st.floats(-1e6, 1e6) | st.integers(-100, 100).map(float)


def _several(values: st.SearchStrategy[Any], most: int = 3) -> st.SearchStrategy[tuple[Any, ...]]:
    return st.lists(values, max_size=most).map(tuple)


def _some(values: tuple[str, ...], least: int = 0) -> st.SearchStrategy[tuple[str, ...]]:
    if not values:
        return st.just(())
    return st.lists(st.sampled_from(values), unique=True, min_size=least, max_size=3).map(tuple)


def _maybe(values: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    return st.none() | values


def _ids(least: int, most: int) -> st.SearchStrategy[list[str]]:
    return st.lists(IDS, min_size=least, max_size=most, unique_by=str.casefold)


@st.composite
def _characters(draw: st.DrawFn, words: Any, texts: Any, sources: tuple[str, ...]) -> Any:
    made: list[Character] = []
    for own in draw(_ids(1, 4)):
        kind = draw(st.sampled_from(Kind))
        states = () if kind.numeric else tuple(draw(_ids(2, 4)))
        before = [c for c in made if c.states]
        needed = draw(_maybe(st.sampled_from(before))) if before else None
        made.append(
            Character(
                id=own,
                name=draw(words),
                question=draw(words),
                kind=kind,
                looks=tuple(draw(st.lists(st.sampled_from(Look), min_size=1, max_size=3))),
                states=tuple(
                    State(
                        id=state,
                        label=draw(words),
                        detail=draw(texts),
                        colours=draw(_several(st.sampled_from(["#12ab34", "#ffffff"]), 2)),
                        figure=draw(st.sampled_from(["", "tail/leaf.svg"])),
                        figure_credit=draw(texts),
                        figure_licence=draw(texts),
                    )
                    for state in states
                ),
                unit=draw(words)
                if kind is Kind.MEASUREMENT
                else draw(texts)
                if kind.numeric
                else "",
                definition=draw(texts),
                pitfalls=draw(texts),
                reliability=draw(st.sampled_from(Reliability)),
                error=draw(_maybe(st.sampled_from([0.0, 0.05]))),
                effort=draw(_maybe(st.sampled_from([0.5, 4.0]))),
                uncertainty=draw(_maybe(st.sampled_from([0.0, 1.5]))),
                sex=draw(_maybe(st.sampled_from(Sex))),
                stage=draw(_maybe(st.sampled_from(Stage))),
                group=draw(texts),
                requires=needed
                and Requirement(character=needed.id, states=draw(_some(needed.state_ids, 1))),
                words=draw(_several(words, 2)),
                rule_of_thumb=draw(st.booleans()),
                sources=draw(_some(sources)),
            )
        )
    return tuple(made)


@st.composite
def _taxon(draw: st.DrawFn, own: str, words: Any, texts: Any, sources: tuple[str, ...]) -> Taxon:
    return Taxon(
        id=own,
        name=draw(words),
        authority=draw(texts),
        rank=draw(words),
        group=draw(texts),
        synonyms=draw(_several(words, 2)),
        range=draw(texts),
        size_mm=draw(st.sampled_from([(None, None), (1.0, None), (None, 2.5), (10.0, 20.0)])),
        hazard=Hazard(
            level=draw(st.sampled_from(Danger)),
            means=draw(_several(words, 2)),
            note=draw(texts),
            sources=draw(_some(sources)),
        ),
        permit=Permit(cites=draw(texts), listed_as=draw(_several(words, 2)), note=draw(texts)),
        climate=draw(st.sampled_from(Climate)),
        note=draw(texts),
        sources=draw(_some(sources)),
    )


@st.composite
def _value(draw: st.DrawFn, character: Character) -> Value:
    if draw(st.integers(0, 5)) == 0:
        return Inapplicable()
    if not character.kind.numeric:
        states = draw(_some(character.state_ids, 1))
        often = st.none() | st.sampled_from(Often) | st.floats(0, 1, exclude_min=True)
        listed = draw(st.booleans())
        return Shows({state: None if listed else draw(often) for state in states})
    bounds = sorted(draw(st.lists(NUMBERS, min_size=3, max_size=3)))
    low, mean, high = (draw(_maybe(st.just(bound))) for bound in bounds)
    if low is None and mean is None and high is None:
        high = bounds[2]
    return Spans(
        low=low,
        high=high,
        mean=mean,
        sd=draw(_maybe(st.just(1.25))),
        n=draw(_maybe(st.integers(1, 50))),
    )


@st.composite
def _cell(
    draw: st.DrawFn, taxon: str, character: Character, texts: Any, sources: tuple[str, ...]
) -> tuple[Score, ...]:
    places = draw(
        st.lists(
            st.tuples(_maybe(st.sampled_from(Sex)), _maybe(st.sampled_from(Stage))),
            unique=True,
            max_size=2,
        )
    )
    return tuple(
        Score(
            taxon=taxon,
            character=character.id,
            value=draw(_value(character)),
            sex=sex,
            stage=stage,
            basis=draw(st.sampled_from(Basis)),
            sources=draw(_some(sources)),
            note=draw(texts),
        )
        for sex, stage in places
    )


@st.composite
def _sees(draw: st.DrawFn, characters: tuple[Character, ...]) -> tuple[Sees, ...]:
    asked = draw(st.lists(st.sampled_from(characters), unique_by=lambda c: c.id, max_size=2))
    return tuple(
        Sees(character=c.id, low=draw(NUMBERS))
        if c.kind.numeric
        else Sees(character=c.id, states=draw(_some(c.state_ids, 1)))
        for c in asked
    )


@st.composite
def _couplets(draw: st.DrawFn, words: Any, texts: Any, key: Key) -> tuple[Couplet, ...]:
    names = draw(_ids(0, 3))
    taxa = tuple(taxon.id for taxon in key.taxa)
    made = []
    for number, name in enumerate(names):
        later = names[number + 1 :]
        leads = []
        for _ in range(draw(st.integers(2, 3))):
            to = draw(st.sampled_from(["", *later]))
            leads.append(
                Lead(
                    statement=draw(words),
                    sees=draw(_sees(key.characters)),
                    to=to,
                    taxa=() if to else draw(_some(taxa, 1)),
                    remark=draw(texts),
                )
            )
        made.append(Couplet(id=name, leads=tuple(leads), note=draw(texts)))
    return tuple(made)


@st.composite
def _label(draw: st.DrawFn, own: str, words: Any, texts: Any, key: Key) -> Label:
    taxa = tuple(taxon.id for taxon in key.taxa)
    sources = tuple(source.id for source in key.sources)
    covers = draw(_some(taxa))
    rates = Rates(
        shares=dict.fromkeys(draw(_some(taxa, 1)), 0.25),
        animals=draw(st.sampled_from([4.0, 12.5])),
        sources=draw(_some(sources)),
    )
    return Label(
        id=own,
        text=draw(words),
        variants=draw(_several(words)),
        covers=covers,
        sold_as=draw(_some(tuple(t for t in taxa if t not in covers))),
        sold_outside=draw(_several(words, 2)),
        why=draw(texts),
        deciding=draw(_some(tuple(c.id for c in key.characters))),
        rates=draw(_maybe(st.just(rates))),
        sources=draw(_some(sources)),
    )


@st.composite
def _check(draw: st.DrawFn, own: str, words: Any, texts: Any, key: Key) -> Check:
    taxa = tuple(taxon.id for taxon in key.taxa)
    remain = draw(_some(taxa))
    return Check(
        id=own,
        kind=draw(st.sampled_from(CheckKind)),
        statement=draw(words),
        sees=draw(_sees(key.characters)),
        sex=draw(_maybe(st.sampled_from(Sex))),
        names=draw(_several(words, 2)),
        remain=remain,
        exclude=draw(_some(tuple(t for t in taxa if t not in remain))),
        note=draw(texts),
    )


@st.composite
def keys(draw: st.DrawFn, words: st.SearchStrategy[str] = WORDS) -> Key:
    """A key without mistakes.

    Args:
        draw: Given by hypothesis.
        words: Texts that are not empty.
    """
    texts = st.just("") | words
    sources = tuple(
        Source(id=own, citation=draw(words), url=draw(texts), seen=draw(st.booleans()))
        for own in draw(_ids(0, 2))
    )
    cited = tuple(source.id for source in sources)
    characters = draw(_characters(words, texts, cited))
    taxa = tuple(draw(_taxon(own, words, texts, cited)) for own in draw(_ids(1, 4)))
    scores = tuple(
        score
        for taxon in taxa
        for character in characters
        for score in draw(_cell(taxon.id, character, texts, cited))
    )
    key = Key(
        id="made_up",
        title=draw(words),
        version=draw(st.sampled_from(["0.1.0", "1.2.3", "2.0.0-rc.1+5"])),
        scope=draw(texts),
        authors=draw(_several(words, 2)),
        licence=draw(texts),
        cautions=draw(_several(words, 2)),
        glossary=draw(st.dictionaries(words, texts, max_size=2)),
        taxa=taxa,
        characters=characters,
        scores=scores,
        sources=sources,
    )
    content = {
        "couplets": draw(_couplets(words, texts, key)),
        "labels": tuple(draw(_label(own, words, texts, key)) for own in draw(_ids(0, 2))),
        "checks": tuple(draw(_check(own, words, texts, key)) for own in draw(_ids(0, 2))),
    }
    return Key(**{**_fields(key), **content})


def _fields(key: Key) -> dict[str, Any]:
    return {name: getattr(key, name) for name in Key.__dataclass_fields__}
