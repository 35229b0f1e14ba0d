"""Writes a rationale, and attaches it to the sale record."""

from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from idkey.engine.result import Assessment
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.notes import PictureNote
from idkey.report.rationale import rationale, rationale_json
from idkey.report.reasons import Rationale
from idkey.store import rationales
from idkey.store.book import Store
from idkey.store.codec import sha256
from idkey.store.intake import papers_of
from idkey.store.record import Papers, Sale, VerdictSummary


@dataclass(frozen=True, slots=True, kw_only=True)
class Order:
    """What is to be written.

    Attributes:
        key: The key in use.
        assessment: What is known; its case is saved first.
        sale: The sale it goes with; None when the animal is not being sold.
        folder: Where the files go; made when it is missing.
        language: Code of the language to write in.
        pictures: Folder of the kept pictures; None shows none.
        papers: Permit fields for the preview; what is written takes those of the record.
    """

    key: Key
    assessment: Assessment
    sale: Sale | None
    folder: Path
    language: str
    pictures: Path | None = None
    papers: Papers | None = None


@dataclass(frozen=True, slots=True)
class Filed:
    """The files that were written."""

    pdf: Path
    data: Path


def previewed(order: Order) -> Rationale:
    """The rationale as it would be written, without its revision."""
    return rationale(
        order.key,
        order.assessment,
        sale=order.sale,
        language=order.language,
        papers=order.papers,
    )


def file_rationale(store: Store, order: Order) -> Filed:
    """Save the case, write PDF and JSON, attach both to the sale record.

    Raises:
        IdKeyError: The case cannot be saved, or the files cannot be written.
    """
    # Fonts and paper take half a second to import, and most sittings end without a document.
    from idkey.report.pdf import pdf_bytes

    case = order.assessment.case
    revision = store.save(case, VerdictSummary.of(order.assessment))
    with TemporaryDirectory(prefix="idkey-") as copies:
        notes, files = _pictures(order, Path(copies))
        found = rationale(
            order.key,
            order.assessment,
            sale=order.sale,
            revision=revision,
            language=order.language,
            pictures=notes,
            papers=papers_of(store, case.id),
        )
        document = pdf_bytes(found, pictures=files)
    filed = _written(order, document, rationale_json(found).encode("utf-8"))
    if order.sale is not None:
        store.attach_sale(case.id, order.sale, by=case.by)
    rationales.put_rationale(
        store,
        rationales.Rationale(
            digest=sha256(document),
            case_id=case.id,
            revision=revision.number,
            sale=order.sale.number if order.sale else "",
            file=filed.pdf.name,
        ),
        by=case.by,
    )
    return filed


def _pictures(order: Order, into: Path) -> tuple[tuple[PictureNote, ...], dict[str, Path]]:
    case = order.assessment.case
    if order.pictures is None or not any(finding.pictures for finding in case.findings):
        return (), {}
    # Pillow's drawing is only needed where there are pictures.
    from idkey.report.marked import marked_pictures

    names = {c.id: c.name for c in order.key.characters}
    return marked_pictures(order.pictures, case.findings, into, names=names)


def file_stem(order: Order) -> str:
    """Name of the files without ending: sale number if there is one, and the case."""
    sale = (
        "".join(c if c.isalnum() or c in "-_" else "-" for c in order.sale.number)
        if (order.sale)
        else ""
    )
    return "-".join(part for part in ("rationale", sale, order.assessment.case.id[:8]) if part)


def _written(order: Order, document: bytes, data: bytes) -> Filed:
    stem = file_stem(order)
    filed = Filed(order.folder / f"{stem}.pdf", order.folder / f"{stem}.json")
    try:
        order.folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        for file, content in ((filed.pdf, document), (filed.data, data)):
            partial = file.with_name(f"{file.name}.part")
            partial.write_bytes(content)
            partial.replace(file)
    except OSError as err:
        raise IdKeyError(
            f"The rationale cannot be written to {order.folder}: {err.strerror or err}.",
            "Choose another folder, or close the program that has the file open.",
        ) from err
    return filed
