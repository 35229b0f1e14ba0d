"""What changed between two versions of a key, in short lines that name the thing first."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from idkey.formats.compare import Change, How, changes
from idkey.formats.pieces import Part, Place, is_order, pieces, score_field
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.report.finding_words import score_words
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name, name_of
from idkey.report.told import told

LONGEST = 120
"""Signs of a value that are shown."""

_PARTS = {
    Part.TAXON: phrase("Taxon {name}"),
    Part.CHARACTER: phrase("Character {name}"),
    Part.LABEL: phrase("Label {name}"),
    Part.COUPLET: phrase("Couplet {name}"),
    Part.SOURCE: phrase("Source {name}"),
    Part.CHECK: phrase("Check {name}"),
}
_ORDERS = {
    Part.TAXON: phrase("The order of the taxa changed"),
    Part.CHARACTER: phrase("The order of the characters changed"),
    Part.LABEL: phrase("The order of the labels changed"),
    Part.COUPLET: phrase("The order of the couplets changed"),
    Part.SOURCE: phrase("The order of the sources changed"),
    Part.CHECK: phrase("The order of the checks changed"),
}


def worded_changes(old: Key, new: Key, language: Language = ENGLISH) -> tuple[Change, ...]:
    """The changes from `old` to `new`, their words as short lines in that language."""
    return tuple(_worded(old, new, language))


def content_changes(old: Key, new: Key, language: Language = ENGLISH) -> tuple[Change, ...]:
    """The same without the version itself."""
    version = Place(Part.KEY, "", "version")
    return tuple(one for one in worded_changes(old, new, language) if one.place != version)


def _worded(old: Key, new: Key, language: Language) -> Iterator[Change]:
    before, after = pieces(old), pieces(new)
    scores = {_score_place(score): score for score in old.scores}
    scores_now = {_score_place(score): score for score in new.scores}
    for change in changes(old, new):
        place = change.place
        if place.part is Part.SCORE:
            pair = scores.get(place), scores_now.get(place)
            line = _score_line(place, pair, (old, new), language)
        elif is_order(place):
            line = language.say(_ORDERS[place.part])
        elif not place.field:
            line = _entry_line(change, (new, old), language)
        else:
            line = _field_line(place, (before, after), (new, old), language)
        yield replace(change, words=line)


def _score_place(score: Score) -> Place:
    field = score_field(score.character, score.sex or "", score.stage or "")
    return Place(Part.SCORE, score.taxon, field)


def _score_line(
    place: Place,
    pair: tuple[Score | None, Score | None],
    keys: tuple[Key, Key],
    language: Language,
) -> str:
    character = place.field.split(" ")[0]
    knows = keys[1] if character in keys[1].character else keys[0]
    what = f"{name_of(knows, place.id)}, {character_name(knows, character)}"
    nothing = language.say("nothing scored")
    old, new = (
        score_words(key, score, language) if score else nothing
        for key, score in zip(keys, pair, strict=True)
    )
    if old == new:
        return language.say("{what}: only the remark changed", what=what)
    return f"{what}: {old} → {new}"


def _entry_line(change: Change, keys: tuple[Key, Key], language: Language) -> str:
    what = _name(change.place, keys, language)
    if change.how is How.ADDED:
        return language.say("{what}: new", what=what)
    return language.say("{what}: taken out", what=what)


def _field_line(
    place: Place,
    sides: tuple[Mapping[Place, Any], Mapping[Place, Any]],
    keys: tuple[Key, Key],
    language: Language,
) -> str:
    field = told(place.field.replace("_", " "), language)
    what = f"{_name(place, keys, language)}, {field}"
    old, new = (side.get(place, "") for side in sides)
    plain = all(isinstance(value, str | int | float) for value in (old, new))
    if not plain:
        return language.say("{what}: changed", what=what)
    return f"{what}: {_short(old)} → {_short(new)}"


def _short(value: str | float) -> str:
    text = str(value) or "–"
    return text if len(text) <= LONGEST else f"{text[: LONGEST - 1]}…"


def _name(place: Place, keys: tuple[Key, Key], language: Language) -> str:
    if place.part is Part.KEY:
        return language.say("The key")
    own = place.id
    known = next((key for key in keys if _knows(key, place)), keys[0])
    if place.part is Part.TAXON:
        own = name_of(known, own)
    elif place.part is Part.CHARACTER:
        own = character_name(known, own)
    elif place.part is Part.LABEL and own in known.label:
        own = language.quote(known.label[own].text)
    return language.say(_PARTS[place.part], name=own)


def _knows(key: Key, place: Place) -> bool:
    known: Mapping[Part, Mapping[str, object]] = {
        Part.TAXON: key.taxon,
        Part.CHARACTER: key.character,
        Part.LABEL: key.label,
    }
    return place.id in known.get(place.part, {})
