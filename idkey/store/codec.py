"""Values as plain JSON and back, strictly, with the number of the form they are written in."""

import hashlib
import json
from collections.abc import Mapping
from typing import Any, Generic, TypeVar

from pydantic import TypeAdapter, ValidationError

from idkey.errors import IdKeyError
from idkey.model.case import Case

T = TypeVar("T")

FORMAT = 1
"""Number of the form cases are written in; goes up when an older program would misread it."""

_NEWER = "Install the newer program to read it; nothing was changed."
_BROKEN = "Take the record from a backup, or correct it where it was written."


class UnreadableRecord(IdKeyError):  # noqa: N818 - names the thing that is wrong
    """A record is not what this program writes, or a newer program wrote it."""


class Form(Generic[T]):
    """How values of one frozen dataclass are written as JSON.

    Args:
        kind: The dataclass.
        number: Number of the form, written beside the fields.
    """

    def __init__(self, kind: type[T], number: int = FORMAT) -> None:
        self._adapter = TypeAdapter(kind)
        self._number = number

    def plain(self, value: T) -> dict[str, Any]:
        """`value` as JSON values under its field names.

        Fields at their default are left out, so that an unchanged value reads the same after
        its dataclass has gained a field.
        """
        fields = self._adapter.dump_python(value, mode="json", exclude_defaults=True)
        return {"format": self._number, **fields}

    def value_from(self, record: Mapping[str, Any]) -> T:
        """The value that `record`, made by `plain`, stands for.

        Raises:
            UnreadableRecord: A newer form, an unknown field, a missing or an impossible value.
        """
        fields = dict(record)
        self._check(fields.pop("format", None))
        try:
            return self._adapter.validate_json(canonical(fields), strict=True, extra="forbid")
        except ValidationError as err:
            raise _unreadable(err) from err
        except (TypeError, ValueError) as err:  # not a JSON value, such as NaN
            raise UnreadableRecord(f"The record is not plain JSON: {err}.", _BROKEN) from err

    def _check(self, number: object) -> None:
        if isinstance(number, bool) or not isinstance(number, int) or number < 1:
            raise UnreadableRecord(f"The record gives no form number (found {number!r}).", _BROKEN)
        if number > self._number:
            raise UnreadableRecord(
                f"The record is written in form {number}; this program knows form {self._number}.",
                _NEWER,
            )


_CASES = Form(Case)


def plain(case: Case) -> dict[str, Any]:
    """The case as JSON values; `case_from` of the result is `case` again."""
    return _CASES.plain(case)


def case_from(record: Mapping[str, Any]) -> Case:
    """The case that `record`, made by `plain`, stands for.

    Raises:
        UnreadableRecord: A newer form, an unknown field, a missing or an impossible value.
    """
    return _CASES.value_from(record)


def canonical(value: object) -> str:
    """The one JSON text of `value`: sorted names, no spaces; equal values, equal texts.

    Half a character (a lone surrogate, which no file can hold) becomes U+FFFD.

    Raises:
        ValueError: `value` holds a number that JSON lacks (NaN, infinity).
        TypeError: `value` holds something JSON lacks.
    """
    return whole(
        json.dumps(
            value, sort_keys=True, separators=(",", ":"), ensure_ascii=False, allow_nan=False
        )
    )


def whole(text: str) -> str:
    """`text` with halves of characters joined, or replaced by U+FFFD where one half is lost."""
    return text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")


def storable(text: str) -> str:
    """`text` as a database column can hold it: whole characters, no zero byte."""
    return whole(text.replace("\0", ""))


def digest(text: str) -> str:
    """SHA-256 of `text` in UTF-8, as 64 hexadecimal digits."""
    return sha256(text.encode("utf-8"))


def sha256(content: bytes) -> str:
    """SHA-256 of `content`, as 64 hexadecimal digits."""
    return hashlib.sha256(content).hexdigest()


def _unreadable(err: ValidationError) -> UnreadableRecord:
    first = err.errors(include_url=False, include_input=False)[0]
    place = ".".join(str(step) for step in first["loc"]) or "the record"
    if first["type"] == "unexpected_keyword_argument":
        return UnreadableRecord(f"The record has a field {place!r} unknown here.", _NEWER)
    if first["type"] == "missing":
        return UnreadableRecord(f"The record lacks the field {place!r}.", _BROKEN)
    return UnreadableRecord(f"The record is wrong at {place}: {first['msg']}.", _BROKEN)
