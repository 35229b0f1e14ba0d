"""How the window looks: scheme, text size, fonts; one object that every view is given."""

from collections.abc import Iterable
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QColor, QFont, QFontDatabase, QPalette
from PySide6.QtWidgets import QApplication

from idkey.app.parts.colours import DARK, LIGHT, Colours
from idkey.app.parts.stylesheet import stylesheet

BODY_PX = 14
"""Height of body text at 100 %, in device-independent pixels."""

SCALES = (80, 90, 100, 110, 125, 150, 175, 200)
"""Text sizes offered, in per cent."""


class Scheme(StrEnum):
    """Which colours the person wants."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"


class Theme(QObject):
    """The look of the window, the only thing views ask about colours and sizes.

    Args:
        app: The application that takes on the look.
        parent: Owner.

    Signals:
        changed(): After the scheme or the text size changed.
    """

    changed = Signal()

    def __init__(self, app: QApplication, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._app = app
        self.scheme = Scheme.SYSTEM
        self.scale = 100
        # The namespace Qt costs 22 ms when first touched; the first picture does without it.
        self._system_dark = app.palette().window().color().lightness() < 128
        app.styleHints().colorSchemeChanged.connect(self._on_system_changed)
        self._apply()

    @property
    def dark(self) -> bool:
        """Whether the dark scheme is on."""
        if self.scheme is Scheme.SYSTEM:
            return self._system_dark
        return self.scheme is Scheme.DARK

    @property
    def colours(self) -> Colours:
        """The colours in use."""
        return DARK if self.dark else LIGHT

    @property
    def mirrored(self) -> bool:
        """Whether text runs from right to left here."""
        return self._app.isRightToLeft()

    def colour(self, name: str) -> QColor:
        """The colour of that name, see `Colours`."""
        return QColor(getattr(self.colours, name))

    def px(self, at_100: float) -> int:
        """A length in pixels that grows with the text."""
        return round(at_100 * self.scale / 100)

    def font(self, px: float = BODY_PX, *, bold: bool = False, italic: bool = False) -> QFont:
        """The font at a height given for 100 %."""
        font = QFont(self._app.font().family())
        font.setPixelSize(max(self.px(px), 1))
        font.setWeight(QFont.Weight.DemiBold if bold else QFont.Weight.Normal)
        font.setItalic(italic)
        return font

    def choose(self, scheme: Scheme, scale: int) -> None:
        """Take another scheme or text size; `scale` in per cent, kept within 80 to 200."""
        scale = min(max(scale, SCALES[0]), SCALES[-1])
        if (scheme, scale) != (self.scheme, self.scale):
            self.scheme, self.scale = scheme, scale
            self._apply()
            self.changed.emit()

    @Slot()
    def _on_system_changed(self) -> None:
        self._system_dark = self._app.styleHints().colorScheme().name == "Dark"
        if self.scheme is Scheme.SYSTEM:
            self._apply()
            self.changed.emit()

    def _apply(self) -> None:
        palette = _palette(self.colours)
        self._app.setPalette(palette)
        # The style frames boxes to tick in a shade of the ground, which the dark hides.
        palette.setColor(QPalette.ColorRole.Window, QColor(self.colours.soft))
        self._app.setPalette(palette, "QCheckBox")  # type: ignore[arg-type]  # the stub wants bytes
        self._app.setFont(self.font())
        self._app.setStyleSheet(stylesheet(self.colours, self.px))


def add_fonts(files: Iterable[Path]) -> str:
    """Load font files; the family name of the first one, empty when none could be read."""
    families = ""
    for file in files:
        number = QFontDatabase.addApplicationFont(str(file))
        if number >= 0 and not families:
            families = QFontDatabase.applicationFontFamilies(number)[0]
    return families


def _palette(colours: Colours) -> QPalette:
    role = QPalette.ColorRole
    named = {
        role.Window: colours.ground,
        role.WindowText: colours.ink,
        role.Base: colours.raised,
        role.AlternateBase: colours.surface,
        role.Text: colours.ink,
        role.PlaceholderText: colours.soft,
        role.Button: colours.raised,
        role.ButtonText: colours.ink,
        role.ToolTipBase: colours.raised,
        role.ToolTipText: colours.ink,
        role.Highlight: colours.accent,
        role.HighlightedText: colours.on_accent,
        role.Link: colours.accent,
        role.Light: colours.raised,
        role.Mid: colours.outline,
        role.Dark: colours.outline,
        role.Shadow: colours.ink,
    }
    palette = QPalette()
    for which, colour in named.items():
        palette.setColor(which, QColor(colour))
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, QColor(colours.outline))
    return palette
