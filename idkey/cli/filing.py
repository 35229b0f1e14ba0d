"""The rationale as files."""

from pathlib import Path

from idkey.cli.judging import Judgement
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.language import CODES, language_of
from idkey.report.pdf import write_pdf
from idkey.report.rationale import rationale, rationale_json


def file_rationale(key: Key, judgement: Judgement, pdf: Path) -> tuple[Path, Path]:
    """Write the rationale as PDF and, beside it, as JSON.

    Args:
        key: The key.
        judgement: What is said about the case.
        pdf: File to write; its folder must exist.

    Returns:
        The two files.

    Raises:
        IdKeyError: They cannot be written.
    """
    spoken = language_of(judgement.assessment.case, CODES[0])
    found = rationale(key, judgement.assessment, language=spoken)
    data = pdf.with_suffix(".json")
    write_pdf(pdf, found)
    try:
        data.write_text(rationale_json(found), "utf-8")
    except OSError as err:
        raise IdKeyError(
            f"{data} cannot be written: {err.strerror or err}.", "Choose another folder."
        ) from err
    return pdf, data
