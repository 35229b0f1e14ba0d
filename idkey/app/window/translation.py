"""The language of the window."""

from pathlib import Path

from PySide6.QtCore import QLibraryInfo, QLocale, QTranslator
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
        self._translators: list[QTranslator] = []
        self.code = ""

    def speak(self, code: str) -> None:
        """Speak that language; English where there is no such translation."""
        code = code if code in CODES else "en"
        if code == self.code:
            return
        for old in self._translators:
            self._app.removeTranslator(old)
        self._translators = [self._installed(file) for file in _catalogues(code)]
        self.code = code

    def _installed(self, file: Path) -> QTranslator:
        made = QTranslator(self._app)
        made.load(str(file))
        self._app.installTranslator(made)
        return made


def _catalogues(code: str) -> tuple[Path, ...]:
    """What Qt itself says (keys, dialogs for files), then ours, which counts first."""
    own = FOLDER / f"idkey_{code}.qm"
    if code == "en":
        return (own,)
    qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
    return qt / f"qtbase_{code}.qm", own
