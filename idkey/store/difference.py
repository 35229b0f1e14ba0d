"""What differs between two states of a case."""

from collections.abc import Iterator
from dataclasses import dataclass, fields
from enum import StrEnum

from idkey.model.case import Case

_WORDS = {
    "claim": "the label",
    "specimen": "sex or stage",
    "note": "the remark",
    "walk": "the walk through the couplets",
    "aim": "the aim",
    "tolerance": "the tolerance",
    "care": "how carefully was looked",
    "use_prior": "whether past outcomes count",
    "by": "the determiner",
    "language": "the language of the rationale",
    "key": "the key or its version",
}
_KEY = ("key", "key_version", "key_digest")


class How(StrEnum):
    """What happened to a part of a case."""

    NOTED = "noted"
    CHANGED = "changed"
    WITHDRAWN = "withdrawn"


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """One part of a case that is otherwise than before.

    Attributes:
        how: What happened to it.
        character: Character of the finding; empty when it is no finding.
        field: Field of the case, such as ``"claim"``; empty when it is a finding.
    """

    how: How = How.CHANGED
    character: str = ""
    field: str = ""


def differences(before: Case, after: Case) -> tuple[Difference, ...]:
    """What `after` has otherwise than `before`: findings first, then the rest; none if equal."""
    differing = {f.name for f in fields(Case) if getattr(before, f.name) != getattr(after, f.name)}
    if differing.intersection(_KEY):
        differing.add("key")
    rest = (Difference(field=name) for name in _WORDS if name in differing)
    return (*_findings(before, after), *rest)


def changes(before: Case, after: Case) -> tuple[str, ...]:
    """The same in plain words, for messages of the record book."""
    return tuple(
        _WORDS[one.field] if one.field else f"{one.character} {one.how.value}"
        for one in differences(before, after)
    )


def _findings(before: Case, after: Case) -> Iterator[Difference]:
    old = {finding.character: finding for finding in before.findings}
    new = {finding.character: finding for finding in after.findings}
    for character, finding in new.items():
        if character not in old:
            yield Difference(character=character, how=How.NOTED)
        elif old[character] != finding:
            yield Difference(character=character, how=How.CHANGED)
    for character in old:
        if character not in new:
            yield Difference(character=character, how=How.WITHDRAWN)
