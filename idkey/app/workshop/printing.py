"""Files that the workshop hands out: the printed key, and texts about its taxa."""

from enum import StrEnum
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.language import Language
from idkey.report.printed_figures import Drawings
from idkey.report.printed_html import printed_html
from idkey.report.printed_key import Layout, printed_text


class Form(StrEnum):
    """What kind of file."""

    PDF = "pdf"
    HTML = "html"
    TEXT = "text"

    @property
    def ending(self) -> str:
        """Ending of its name."""
        return {"pdf": ".pdf", "html": ".html", "text": ".txt"}[self]


def printed(
    key: Key,
    form: Form,
    file: Path,
    *,
    layout: Layout,
    language: Language,
    drawings: Drawings | None,
) -> Path:
    """Write the couplets of a key to a file.

    Args:
        key: The key.
        form: What kind of file.
        file: Where it goes.
        layout: How couplets stand on paper.
        language: Language of the fixed words.
        drawings: Where the drawings are; None leaves them out. Text has none.

    Raises:
        IdKeyError: The key has no couplets, or the file cannot be written there.
    """
    if form is Form.PDF:
        # Fonts and paper take half a second to import.
        from idkey.report.printed_pdf import write_printed_key

        write_printed_key(file, key, layout, language, drawings=drawings)
    elif form is Form.HTML:
        write_text(file, printed_html(key, layout, language, drawings=drawings))
    else:
        write_text(file, printed_text(key, layout, language))
    return file


def write_text(file: Path, text: str) -> None:
    """Write a text to a file in UTF-8.

    Raises:
        IdKeyError: It cannot be written there.
    """
    try:
        file.write_text(text, encoding="utf-8")
    except OSError as err:
        raise IdKeyError(
            f"{file} cannot be written: {err.strerror or err}.", "Choose another folder."
        ) from err
