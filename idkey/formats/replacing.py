"""Files that are replaced whole or not at all."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from idkey.errors import IdKeyError


@contextmanager
def replacing(file: Path) -> Iterator[Path]:
    """A place beside `file` to write to; what is written there takes the place of `file`.

    Raises:
        IdKeyError: It cannot be written; what was there before still is.
    """
    new = file.with_name(f".{file.name}.new")
    try:
        yield new
        new.replace(file)
    except OSError as err:
        reason = err.strerror or "unknown reason"
        raise IdKeyError(f"{file.name} could not be written: {reason}.", "Make room.") from err
    finally:
        new.unlink(missing_ok=True)
