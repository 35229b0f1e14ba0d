"""What somebody changed in a case, in words."""

from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication

from idkey.model.key import Key
from idkey.store.difference import Difference, How

translate = QCoreApplication.translate


def change_words(found: Iterable[Difference], key: Key | None) -> str:
    """The changes in a row, findings under the names the key has for them.

    Args:
        found: The changes.
        key: The key of the case; None when it is not at hand.
    """
    return ", ".join(_words(one, key) for one in found)


def _words(one: Difference, key: Key | None) -> str:
    if one.field:
        return _field(one.field)
    known = key.character.get(one.character) if key is not None else None
    name = known.name if known is not None else one.character.replace("_", " ")
    return {
        How.NOTED: translate("changes", "{name} noted"),
        How.CHANGED: translate("changes", "{name} changed"),
        How.WITHDRAWN: translate("changes", "{name} withdrawn"),
    }[one.how].format(name=name)


def _field(name: str) -> str:
    return {
        "claim": translate("changes", "the label"),
        "specimen": translate("changes", "sex or stage"),
        "note": translate("changes", "the remark"),
        "walk": translate("changes", "the walk through the couplets"),
        "aim": translate("changes", "what is asked"),
        "tolerance": translate("changes", "how many conflicts are borne"),
        "care": translate("changes", "how carefully was looked"),
        "use_prior": translate("changes", "whether past outcomes count"),
        "by": translate("changes", "the determiner"),
        "language": translate("changes", "the language of the rationale"),
        "key": translate("changes", "the key or its version"),
    }[name]
