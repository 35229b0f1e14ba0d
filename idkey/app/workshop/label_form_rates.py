"""The field for what a label usually turns out to be."""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Slot

from idkey.app.parts.theme import Theme
from idkey.app.workshop.form_fields import Fields, source_options
from idkey.app.workshop.forms_field import Field
from idkey.app.workshop.forms_form import Form, with_value
from idkey.app.workshop.forms_values import number_reading, shares_reading, weakly
from idkey.model.key import Key
from idkey.model.label import Rates

NOTHING = Rates(shares={})


class RatesField(Field):
    """Shares by taxon, what they are worth, and where they come from; None when nobody counted.

    Args:
        name: What it is called.
        fields: Makes fields.
        theme: The look.
        key: A bound method: the key as it is now.
    """

    def __init__(self, name: str, fields: Fields, *, theme: Theme, key: Callable[[], Key]) -> None:
        super().__init__(name, theme)
        self._key = key = weakly(key, Key(id="", title="", version=""))
        self._value: Rates | None = None
        self._owner = ""
        self.form = Form(theme)
        self.form.column.setContentsMargins(0, 0, 0, 0)
        shares = fields.typed(
            self.tr("Share of each taxon, one a line"),
            shares_reading(key),
            self.tr("Genus species 0.6"),
        )
        animals = number_reading(lambda x: x > 0, self.tr("It must be above 0."), empty=4.0)
        self.sources = fields.sources(self.tr("Who counted"))
        self.form.add({"shares": shares})
        self.form.add(
            {
                "animals": fields.typed(self.tr("Worth how many animals"), animals),
                "sources": self.sources,
            },
            abreast=True,
        )
        self.put(self.form)
        self.setFocusProxy(shares)
        self.form.edited.connect(self._on_form_edited)

    def belong_to(self, owner: str) -> None:
        """Show another label."""
        self._owner = owner

    def show_value(self, value: Any) -> None:
        """Show rates."""
        self._value = value
        shown = value or NOTHING
        self.sources.offer(source_options(self._key()))
        self.form.show_entry(shown, f"{self._owner}/rates")
        for path in ("animals", "sources"):
            self.form.fields[path].setVisible(value is not None)

    def flush(self) -> None:
        """Make what was typed a step."""
        self.form.flush()

    @Slot(str, object)
    def _on_form_edited(self, path: str, value: object) -> None:
        rates = with_value(self._value or NOTHING, path, value)
        self.edited.emit(rates if rates.shares else None)
