"""The language of the window."""

from pathlib import Path

from PySide6.QtCore import QLocale, QTranslator
from PySide6.QtWidgets import QApplication

FOLDER = Path(__file__).parents[1] / "translations"

CODES = ("en", "de")
"""Languages there are."""


def system_language() -> str:
    """The language of the system if it is spoken here, else English."""
    code = QLocale.system().name().partition("_")[0]
    return code if code in CODES else "en"


class Translation:
    """Translates an application; one language at a time.

    Args:
        app: The application.
    """

    def __init__(self, app: QApplication) -> None:
        self._app = app
        self._translator: QTranslator | None = None
        self.code = ""

    def speak(self, code: str) -> None:
        """Speak that language; English where there is no such translation."""
        code = code if code in CODES else "en"
        if code == self.code:
            return
        if self._translator is not None:
            self._app.removeTranslator(self._translator)
        self._translator = QTranslator(self._app)
        self._translator.load(str(FOLDER / f"idkey_{code}.qm"))
        self._app.installTranslator(self._translator)
        self.code = code
