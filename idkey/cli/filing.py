"""The rationale as files."""

from pathlib import Path

from idkey.cli.judging import Judgement
from idkey.model.key import Key


def file_rationale(key: Key, judgement: Judgement, pdf: Path) -> tuple[Path, Path]:
    """Write the rationale as PDF and, beside it, as JSON.

    Args:
        key: The key.
        judgement: What is said about the case.
        pdf: File to write; its folder must exist.

    Returns:
        The two files.

    Raises:
        OSError: They cannot be written.
    """
    raise NotImplementedError
