"""What differs between two states of a case, in words."""

from dataclasses import fields

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
}
_KEY = ("key", "key_version", "key_digest")


def changes(before: Case, after: Case) -> tuple[str, ...]:
    """What `after` has otherwise than `before`: findings first, then the rest; none if equal."""
    told = list(_finding_changes(before, after))
    differing = {f.name for f in fields(Case) if getattr(before, f.name) != getattr(after, f.name)}
    told += [words for name, words in _WORDS.items() if name in differing]
    if differing.intersection(_KEY):
        told.append("the key or its version")
    return tuple(told)


def _finding_changes(before: Case, after: Case) -> tuple[str, ...]:
    old = {finding.character: finding for finding in before.findings}
    new = {finding.character: finding for finding in after.findings}
    return tuple(
        f"{character} {'noted' if character not in old else 'changed'}"
        for character, finding in new.items()
        if old.get(character) != finding
    ) + tuple(f"{character} withdrawn" for character in old if character not in new)
