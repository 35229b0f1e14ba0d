"""What the layers below say, in the language of the window."""

from PySide6.QtCore import QCoreApplication

from idkey.report.language import Language, in_language
from idkey.report.told import told


def window_language() -> Language:
    """The language the window speaks."""
    # A translation answers with its own code here; without one the words stay English.
    return in_language(QCoreApplication.translate("messages", "en"))


def worded(sentence: str) -> str:
    """The sentence in the language of the window; as it is when it is not known."""
    return told(sentence, window_language())
