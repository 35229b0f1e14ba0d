"""The page of an attestation: A4, its font embedded, its data attached."""

from dataclasses import asdict
from datetime import datetime
from pathlib import Path

from idkey.drill.progress import WINDOW
from idkey.errors import IdKeyError
from idkey.report.attestation import Attestation, Attested
from idkey.report.language import Language, in_language
from idkey.report.paper.about import About
from idkey.report.paper.prose import Type, broken, paragraph, pieces, set_block
from idkey.report.paper.sections import section
from idkey.report.paper.sheet import INK, SOFT, Sheet
from idkey.report.paper.table import Column, Row, table
from idkey.store.codec import canonical

ATTACHMENT = "attestation.json"
"""Name of the data inside the PDF."""


def write_attestation(path: Path, found: Attestation) -> None:
    """Write the document as PDF/A-3 with its data attached; replaced in one step.

    Raises:
        IdKeyError: It cannot be written there.
    """
    partial = path.with_name(path.name + ".part")
    try:
        partial.write_bytes(attestation_pdf(found))
        partial.replace(path)
    except OSError as err:
        partial.unlink(missing_ok=True)
        raise IdKeyError(
            f"{path} cannot be written: {err.strerror or err}.",
            "Choose another folder, or close the program that has the file open.",
        ) from err


def attestation_pdf(found: Attestation) -> bytes:
    """The same as bytes; equal attestations give equal bytes."""
    language = in_language(found.language)
    sheet = Sheet(
        footer=language.say(
            "Drill log of {person}, entry {n}, SHA-256 {digest}",
            person=found.person,
            n=found.entries,
            digest=found.log_digest[:16],
        ),
        page_words=language.say("Page {page} of {pages}", page="{page}", pages="{pages}"),
    )
    _describe(sheet, found, language)
    _head(sheet, found, language)
    _pair_table(sheet, found, language)
    _limits(sheet, found, language)
    _origin(sheet, found, language)
    _sign(sheet, language)
    return sheet.finished()


def _describe(sheet: Sheet, found: Attestation, language: Language) -> None:
    made = datetime.fromisoformat(found.at)
    sheet.describe(
        About(
            title=language.say("What {person} can tell apart", person=found.person),
            subject=f"{found.title} {found.version}",
            author="–",
            creator=f"idkey {found.program}",
            keywords=f"drill log entry {found.entries}, sha256 {found.log_digest}",
            language=language.code,
            made=made,
        )
    )
    sheet.embed_file(
        bytes=canonical(asdict(found)).encode("utf-8"),
        basename=ATTACHMENT,
        mime_type="application/json",
        modification_date=made,
        creation_date=made,
        associated_file_relationship="Source",
        desc="The data of this attestation",
        compress=True,
    )


def _head(sheet: Sheet, found: Attestation, language: Language) -> None:
    left, width = sheet.margins.left, sheet.width
    over = f"{language.say('Drill attestation').upper()}   {language.day(found.at)}"
    y = set_block(
        sheet,
        broken(sheet, ((over, ""),), width, Type(size=7.5, colour=SOFT, bold=True)),
        left,
        sheet.margins.top,
    )
    title = language.say("What {person} can tell apart", person=found.person)
    y = set_block(sheet, broken(sheet, ((title, ""),), width, Type(size=21)), left, y + 1.5, "/H1")
    sheet.set_y(y + 2)
    text = language.say(
        "On pictures drawn from the key {title}, version {version}, {person} looked at a "
        "character that tells the two taxa apart, and decided rightly, as often as this:",
        title=language.quote(found.title),
        version=found.version,
        person=found.person,
    )
    paragraph(sheet, pieces(found.italic, text), Type(size=10, leading=1.4))
    sheet.set_y(sheet.get_y() + 2)


def _pair_table(sheet: Sheet, found: Attestation, language: Language) -> None:
    columns = (
        Column(head=language.say("Pair"), share=0.34),
        Column(head=language.say("Right"), share=0.12),
        Column(head=language.say("95 % interval"), share=0.15),
        Column(head=language.say("Days"), share=0.17),
        Column(head=language.say("Decided on"), share=0.22),
    )
    table(sheet, columns, [_pair_row(found, pair, language) for pair in found.pairs])


def _pair_row(found: Attestation, pair: Attested, language: Language) -> Row:
    names = pieces(found.italic, "\n".join(pair.names), bold=True)
    right = language.say("{right} of {n}", right=pair.right, n=pair.trials)
    limits = language.say(
        "{low} to {high}", low=language.share(pair.low), high=language.share(pair.high)
    )
    days = "\n".join(dict.fromkeys((language.day(pair.since), language.day(pair.until))))
    characters = "; ".join(pair.characters)
    return (names, ((right, ""),), ((limits, ""),), ((days, ""),), ((characters, ""),))


def _limits(sheet: Sheet, found: Attestation, language: Language) -> None:
    sheet.set_y(sheet.get_y() + 2)
    section(sheet, language.say("What this says, and what it does not"))
    say = language.say
    sentences = [
        say(
            "A pair stands here when the lower limit of the interval reaches {threshold}; of each "
            "pair the latest {n} pictures count.",
            threshold=language.share(found.threshold),
            n=WINDOW,
        ),
        say(
            "The interval is that of Wilson (1927) for a number of pictures fixed beforehand; "
            "somebody who practises until the limit is reached passes a little more easily."
        ),
        say(
            "The pictures were drawings of made-up animals, each shown once, not living animals "
            "or photographs."
        ),
        say(
            "Nothing is said about any other pair, any other version of the key, handling, or "
            "safety. This is no licence and no qualification."
        ),
    ]
    sentences += _left_out(found, language)
    paragraph(sheet, pieces(found.italic, " ".join(sentences)), Type(size=8.5, leading=1.4))


def _left_out(found: Attestation, language: Language) -> list[str]:
    sentences = []
    if found.others:
        sentences.append(
            language.count(
                found.others,
                "One more pair was practised and is not attested.",
                "{n} more pairs were practised and are not attested.",
            )
        )
    if found.elsewhere:
        sentences.append(
            language.count(
                found.elsewhere,
                "One picture of another version of the key was not counted.",
                "{n} pictures of other versions of the key were not counted.",
            )
        )
    return sentences


def _origin(sheet: Sheet, found: Attestation, language: Language) -> None:
    section(sheet, language.say("Key and log"))
    text = language.say(
        "{title}, version {version}; SHA-256 of the key {digest}; idkey {program}.",
        title=found.title,
        version=found.version,
        digest=found.key_digest or "–",
        program=found.program,
    )
    log = language.say(
        "Drill log of {person} up to entry {n}; SHA-256 {digest}.",
        person=found.person,
        n=found.entries,
        digest=found.log_digest or "–",
    )
    paragraph(sheet, pieces(found.italic, f"{text} {log}"), Type(size=7.2, colour=SOFT))


def _sign(sheet: Sheet, language: Language) -> None:
    sheet.room(24)
    y = sheet.get_y() + 16
    width = (sheet.width - 10) / 2
    for number, text in enumerate(
        (language.say("The person who practised, date"), language.say("Printed by, date"))
    ):
        x = sheet.margins.left + number * (width + 10)
        with sheet.tagged("/Artifact"):
            sheet.set_draw_color(*INK)
            sheet.set_line_width(0.25)
            sheet.line(x, y, x + width, y)
        block = broken(sheet, ((text, ""),), width, Type(size=7.2, colour=SOFT))
        set_block(sheet, block, x, y + 0.8)
    sheet.set_y(y + 6)
