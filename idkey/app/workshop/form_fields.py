"""Makes the fields of a page, each in the look of the desk and with its unread texts kept."""

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.desk import Desk
from idkey.app.workshop.forms_field import ChoiceField, FlagField, Options
from idkey.app.workshop.forms_pick import PickField
from idkey.app.workshop.forms_typed import TypedField
from idkey.app.workshop.forms_unread import unread_of
from idkey.app.workshop.forms_values import (
    BOUND,
    LINES,
    PROSE,
    WORDS,
    Reading,
    id_reading,
    number_reading,
    weakly,
)
from idkey.app.workshop.state import WorkshopState
from idkey.model.key import Key

translate = QCoreApplication.translate


class Fields:
    """Makes fields.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        self._theme = desk.theme
        self._unread = unread_of(state)

    def typed(self, name: str, reading: Reading, hint: str = "") -> TypedField:
        """A field one types in."""
        return TypedField(name, reading, theme=self._theme, hint=hint, unread=self._unread)

    def line(self, name: str, hint: str = "") -> TypedField:
        """A text on one line."""
        return self.typed(name, WORDS, hint)

    def prose(self, name: str, hint: str = "") -> TypedField:
        """A text of any length."""
        return self.typed(name, PROSE, hint)

    def lines(self, name: str, hint: str = "") -> TypedField:
        """Several texts, one a line."""
        return self.typed(name, LINES, hint)

    def number(
        self, name: str, fits: Callable[[float], bool], words: str, *, hint: str = ""
    ) -> TypedField:
        """A number or nothing; `words` say what it must be."""
        return self.typed(name, number_reading(fits, words), hint)

    def bound(self, name: str) -> TypedField:
        """An end of a range as a tuple of one; nothing typed is an open end."""
        return self.typed(name, BOUND)

    def id(
        self, name: str, own: Callable[[], str], taken: Callable[[], tuple[str, ...]]
    ) -> TypedField:
        """An id; renaming follows everywhere. `own` and `taken` are bound methods."""
        return self.typed(name, id_reading(weakly(own, ""), weakly(taken, ())))

    def choice(self, name: str, options: Options, hint: str = "") -> ChoiceField:
        """One of several values."""
        return ChoiceField(name, self._theme, options=options, hint=hint)

    def flag(self, name: str, hint: str = "") -> FlagField:
        """Yes or no."""
        return FlagField(name, self._theme, hint)

    def pick(self, name: str, hint: str = "", *, add: str = "") -> PickField:
        """Several things from a list."""
        return PickField(name, self._theme, hint=hint, add=add)

    def sources(self, name: str) -> PickField:
        """Cited works."""
        add = translate("form_fields", "Add a source …")
        return PickField(name, self._theme, add=add, terse=True)


def taxon_options(key: Key) -> Options:
    """All taxa by name."""
    return tuple((taxon.name or taxon.id, taxon.id) for taxon in key.taxa)


def character_options(key: Key) -> Options:
    """All characters by name."""
    return tuple((character.name or character.id, character.id) for character in key.characters)


def source_options(key: Key) -> Options:
    """All sources by id and work."""
    return tuple((_short(source.id, source.citation), source.id) for source in key.sources)


def _short(name: str, words: str) -> str:
    if words.startswith(name):
        return words[:90]
    return f"{name} – {words[:80]}{'…' if len(words) > 80 else ''}"
