"""Which places of a key the pages with forms can show."""

from collections.abc import Callable

from idkey.app.workshop.forms_entries import EntryKind
from idkey.app.workshop.forms_problems import kind_of
from idkey.engine.audit import Remark, Weakness
from idkey.formats.problem import Problem

_WEAK = {
    EntryKind.CHARACTER: (Weakness.IDLE_CHARACTER, Weakness.IDLE_STATE),
    EntryKind.TAXON: (),
    EntryKind.LABEL: (Weakness.LABEL_WITHOUT_CHARACTERS,),
    EntryKind.SOURCE: (Weakness.UNUSED_SOURCE,),
    EntryKind.CHECK: (Weakness.FAILED_CHECK,),
    EntryKind.COUPLET: (
        Weakness.COUPLET_AGAINST_MATRIX,
        Weakness.UNREACHED_COUPLET,
        Weakness.UNREACHED_TAXON,
    ),
}


def shows_place(kind: EntryKind) -> Callable[[object], bool]:
    """Whether the page of a kind can show a problem or a remark."""

    def shows(place: object) -> bool:
        if isinstance(place, Problem):
            in_scores = place.loc[:1] == ("scores",)
            return kind is kind_of(place) and not (kind is EntryKind.TAXON and in_scores)
        return isinstance(place, Remark) and place.weakness in _WEAK[kind]

    return shows


def shows_key(place: object) -> bool:
    """Whether the page of the key itself can show a place."""
    return isinstance(place, Problem) and place.file.name == "key.yaml"
