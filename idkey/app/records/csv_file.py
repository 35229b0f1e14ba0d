"""A table as a file that spreadsheets open."""

from pathlib import Path

from idkey.errors import IdKeyError


def write_csv(file: Path, text: str) -> Path:
    """Write a table as CSV, in UTF-8 with the mark by which spreadsheets know it; the file.

    Raises:
        IdKeyError: It cannot be written there.
    """
    try:
        file.write_text(text, "utf-8-sig", newline="")
    except OSError as err:
        raise IdKeyError(
            f"{file} cannot be written: {err.strerror or err}.",
            "Choose another folder, or close the program that has the file open.",
        ) from err
    return file
