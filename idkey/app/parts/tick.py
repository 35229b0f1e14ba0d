"""A box to tick whose frame can be seen in the dark as well."""

from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QCheckBox

from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import plain_button


def tick(text: str, theme: Theme) -> QCheckBox:
    """A box to tick; the style draws its frame in a shade of the ground, which the dark hides."""
    made = QCheckBox(plain_button(text))
    palette = made.palette()
    palette.setColor(QPalette.ColorRole.Window, theme.colour("soft"))
    made.setPalette(palette)
    return made
