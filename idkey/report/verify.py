"""Whether a rationale is what was once written, and whether a key still says the same."""

import io
import re
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path

from pypdf import PdfReader
from pypdf.errors import PyPdfError

from idkey import __version__, places
from idkey.engine.assess import assess
from idkey.engine.compile import compiled
from idkey.errors import IdKeyError
from idkey.model.case import Case, Finding
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.pdf import ATTACHMENT, pdf_bytes
from idkey.report.rationale import rationale, rationale_digest, rationale_from
from idkey.report.reasons import Rationale

LARGEST = 50_000_000
"""Bytes in a file that is still read."""


class Pages(StrEnum):
    """Whether the pages of a PDF say what its data say."""

    SAME = "same"
    DIFFERENT = "different"
    UNTOLD = "untold"
    NONE = "none"


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """A part of the answer that the key in hand gives otherwise.

    Attributes:
        what: ``"verdict"``, ``"name"``, ``"cautions"``.
        then: As written.
        now: As the key in hand says.
    """

    what: str
    then: str
    now: str


@dataclass(frozen=True, slots=True, kw_only=True)
class VerifyResult:
    """What the check of one file found.

    Attributes:
        found: The rationale in the file.
        digest: Digest of what it says.
        intact: Whether that is the digest written in it.
        pages: Whether its pages say the same; NONE for JSON, UNTOLD when another version of the
            program laid them out, they show photographs, or a drawing is gone.
        same_as_record: Whether it says what the record says; None without a record.
        same_key: Whether the key in hand is the one that was used; None without a key.
        changes: What the key in hand answers otherwise.
    """

    found: Rationale
    digest: str
    intact: bool
    pages: Pages = Pages.NONE
    same_as_record: bool | None = None
    same_key: bool | None = None
    changes: tuple[Change, ...] = ()

    @property
    def good(self) -> bool:
        """Whether nothing speaks against the document itself (the key may have moved on)."""
        return (
            self.intact and self.pages is not Pages.DIFFERENT and self.same_as_record is not False
        )


def verify(path: Path, *, record: str | None = None, key: Key | None = None) -> VerifyResult:
    """Check a rationale, PDF or JSON.

    The digest in a file shows damage and careless edits. Whoever rewrites data and digest
    together is found out only by the record.

    Args:
        path: The file.
        record: The rationale as the record has it, as JSON text.
        key: The key in hand, to ask again.

    Raises:
        IdKeyError: It cannot be read, or holds no rationale.
    """
    content = _content(path)
    is_pdf = content.startswith(b"%PDF")
    text = _attached(path, content) if is_pdf else content.decode("utf-8", "replace")
    found, written = rationale_from(text)
    digest = rationale_digest(found)
    alone = VerifyResult(
        found=found,
        digest=digest,
        intact=written == digest,
        pages=_pages(content, found) if is_pdf else Pages.NONE,
    )
    return held_against(alone, record=record, key=key)


def held_against(alone: VerifyResult, *, record: str | None, key: Key | None) -> VerifyResult:
    """What was found in a file, held against a record and a key as well; see `verify`."""
    return replace(
        alone,
        same_as_record=None if record is None else _digest_of(record) == alone.digest,
        same_key=None if key is None else key.digest == alone.found.key.digest,
        changes=() if key is None else changes(alone.found, key),
    )


def _digest_of(record: str) -> str:
    return rationale_digest(rationale_from(record)[0])


def _content(path: Path) -> bytes:
    try:
        if path.stat().st_size > LARGEST:
            raise IdKeyError(f"{path.name} is far too large for a rationale.", _CHOOSE)
        return path.read_bytes()
    except OSError as err:
        raise IdKeyError(f"{path} cannot be read: {err.strerror or err}.", _CHOOSE) from err


_CHOOSE = "Choose the PDF or JSON file that was written as a rationale."


def _attached(path: Path, content: bytes) -> str:
    try:
        attached = PdfReader(io.BytesIO(content)).attachments.get(ATTACHMENT)
    except (PyPdfError, ValueError, KeyError, TypeError, AttributeError, RecursionError) as err:
        raise IdKeyError(f"{path.name} is a broken PDF: {err}.", _CHOOSE) from err
    if not attached:
        raise IdKeyError(
            f"{path.name} has no rationale inside.",
            "Some programs drop what is attached when they save a PDF again: take the original.",
        )
    return attached[0].decode("utf-8", "replace")


def _pages(content: bytes, found: Rationale) -> Pages:
    """Lay the data out again and compare the words."""
    drawings = (places.images_folder() / path for one in found.findings for path in one.figures)
    if found.key.program != __version__ or found.pictures or not all(map(Path.is_file, drawings)):
        return Pages.UNTOLD
    same = _words(content) == _words(pdf_bytes(found))
    return Pages.SAME if same else Pages.DIFFERENT


def _words(document: bytes) -> str:
    pages = PdfReader(io.BytesIO(document)).pages
    return re.sub(r"\s+", " ", " ".join(page.extract_text() for page in pages))


def changes(found: Rationale, key: Key) -> tuple[Change, ...]:
    """What `key` answers otherwise on the same findings, with the same starting rates."""
    case = _known(found.case, key)
    prior = dict(found.prior.shares) or None
    again = assess(compiled(key, case.specimen, case.care), case, prior)
    now = rationale(key, again, language=found.language)
    pairs = (
        ("verdict", found.title, now.title),
        ("name", found.heading, now.heading),
        ("cautions", _cautions(found), _cautions(now)),
    )
    return tuple(Change(what=w, then=a, now=b) for w, a, b in pairs if a != b)


def _cautions(found: Rationale) -> str:
    return ", ".join(notice.stake.value for notice in found.notices) or "–"


def _known(case: Case, key: Key) -> Case:
    """The case with the findings this key can read."""
    return replace(case, findings=tuple(f for f in case.findings if _readable(f, key)))


def _readable(finding: Finding, key: Key) -> bool:
    character = key.character.get(finding.character)
    if character is None or finding.unseen:
        return character is not None
    if finding.value is not None:
        return character.kind.numeric
    return set(finding.states) <= set(character.state_ids)


_WHAT = {
    "verdict": phrase("verdict"),
    "name": phrase("name"),
    "cautions": phrase("cautions"),
}
_PAGES = {
    Pages.SAME: phrase("Its pages say what its data say."),
    Pages.DIFFERENT: phrase("Its pages do not say what its data say: do not rely on it."),
    Pages.UNTOLD: phrase(
        "Its pages were not compared with its data: another version of the program made them, "
        "or they show photographs."
    ),
}


def verify_words(result: VerifyResult, language: Language = ENGLISH) -> str:
    """The result in sentences, the gravest first."""
    say = language.say
    lines = [
        say("Its data are whole: they match the digest written in them.")
        if result.intact
        else say("Its data were changed after it was written: do not rely on it.")
    ]
    if result.pages in _PAGES:
        lines.append(say(_PAGES[result.pages]))
    if result.same_as_record is None:
        lines.append(say("It was not held against a record; only the record shows a forgery."))
    elif result.same_as_record:
        lines.append(say("It says what the record says."))
    else:
        lines.append(say("It does not say what the record says: trust the record."))
    return "\n".join((*lines, *_key_lines(result, language)))


def _key_lines(result: VerifyResult, language: Language) -> list[str]:
    if result.same_key is None:
        return []
    if result.same_key and not result.changes:
        return [language.say("It was made with the key in hand, which answers the same.")]
    if not result.changes:
        return [language.say("The key has changed since; it still answers the same.")]
    return [
        language.say(
            "The key in hand answers otherwise: {what} was {then}, and is now {now}.",
            what=language.say(_WHAT[change.what]),
            then=change.then,
            now=change.now,
        )
        for change in result.changes
    ]
