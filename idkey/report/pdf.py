"""The rationale as a PDF: A4, its font embedded, its data attached."""

from collections.abc import Mapping
from datetime import UTC, datetime
from pathlib import Path

from idkey import __version__
from idkey.errors import IdKeyError
from idkey.report.language import Language, in_language
from idkey.report.paper.about import About
from idkey.report.paper.closing import drawing_section, picture_section, signatures
from idkey.report.paper.front import front
from idkey.report.paper.papers import papers_section
from idkey.report.paper.sections import (
    caution_section,
    label_section,
    look_alike_section,
    reach_section,
    seen_section,
    source_section,
    unseen_section,
)
from idkey.report.paper.sheet import Sheet
from idkey.report.rationale import rationale_digest, rationale_json
from idkey.report.reasons import Rationale

ATTACHMENT = "rationale.json"
"""Name of the data inside the PDF."""

TIGHTEN = 0.4
"""A second page filled up to this share is worth setting everything smaller."""

_NO_PICTURES: Mapping[str, Path] = {}


def write_pdf(path: Path, found: Rationale, *, pictures: Mapping[str, Path] = _NO_PICTURES) -> None:
    """Write the rationale as PDF/A-3 with its JSON attached.

    Args:
        path: The file to write; replaced in one step when it exists.
        found: The rationale.
        pictures: File per picture id, for the pictures the rationale shows.

    Raises:
        IdKeyError: It cannot be written there.
    """
    partial = path.with_name(path.name + ".part")
    try:
        partial.write_bytes(pdf_bytes(found, pictures=pictures))
        partial.replace(path)
    except OSError as err:
        partial.unlink(missing_ok=True)
        raise IdKeyError(
            f"{path} cannot be written: {err.strerror or err}.",
            "Choose another folder, or close the program that has the file open.",
        ) from err


def pdf_bytes(found: Rationale, *, pictures: Mapping[str, Path] = _NO_PICTURES) -> bytes:
    """The same as bytes; equal rationales give equal bytes with one version of the program.

    What runs a little over one page is set again in smaller type, and stays so if it fits.
    """
    sheet = _laid_out(found, pictures)
    if sheet.pages_count == 2 and sheet.get_y() < TIGHTEN * sheet.h:
        tighter = _laid_out(found, pictures, dense=True)
        fits = tighter.pages_count == 1
        (sheet if fits else tighter).close()
        sheet = tighter if fits else sheet
    return sheet.finished()


def _laid_out(found: Rationale, pictures: Mapping[str, Path], *, dense: bool = False) -> Sheet:
    language = in_language(found.language)
    digest = rationale_digest(found)
    sheet = Sheet(
        footer=language.say(
            "Case {case} · SHA-256 of the data {digest}", case=found.case.id[:8], digest=digest[:16]
        ),
        page_words=language.say("Page {page} of {pages}", page="{page}", pages="{pages}"),
        dense=dense,
    )
    _describe(sheet, found, language, digest)
    front(sheet, found, language, code_text(found.case.id, digest))
    for part in (
        seen_section,
        look_alike_section,
        label_section,
        papers_section,
        unseen_section,
        reach_section,
        caution_section,
        drawing_section,
    ):
        part(sheet, found, language)
    picture_section(sheet, found, language, pictures)
    source_section(sheet, found, language)
    signatures(sheet, found, language)
    return sheet


def code_text(case_id: str, digest: str) -> str:
    """What the square code says: case id and digest of the data."""
    return f"idkey rationale\ncase {case_id}\nsha256 {digest}"


def _describe(sheet: Sheet, found: Rationale, language: Language, digest: str) -> None:
    made = _moment(found.at)
    sheet.describe(
        About(
            title=language.say("Identification rationale: {name}", name=found.heading),
            subject=f"{found.title}. {found.sentence}",
            author=found.by or "–",
            creator=f"idkey {__version__}",
            keywords=f"case {found.case.id}, sha256 {digest}",
            language=language.code,
            made=made,
        )
    )
    sheet.embed_file(
        bytes=rationale_json(found).encode("utf-8"),
        basename=ATTACHMENT,
        mime_type="application/json",
        modification_date=made,
        creation_date=made,
        associated_file_relationship="Source",
        desc="The data of this rationale",
        compress=True,
    )


def _moment(at: str) -> datetime:
    """The moment a text in ISO 8601 names; the start of 1970 when it names none."""
    try:
        moment = datetime.fromisoformat(at)
    except ValueError:
        return datetime(1970, 1, 1, tzinfo=UTC)
    return moment if moment.tzinfo else moment.replace(tzinfo=UTC)
