"""The end of a rationale: drawings, pictures, who signs."""

import io
import re
from collections.abc import Mapping
from pathlib import Path

from PIL import Image, ImageOps

from idkey import places
from idkey.report.language import Language
from idkey.report.notes import PictureNote
from idkey.report.paper.prose import Type, broken, set_block
from idkey.report.paper.sections import section
from idkey.report.paper.sheet import INK, SOFT, Sheet
from idkey.report.reasons import Rationale, SeenFinding

DRAWING_MM = (23.0, 18.0)
"""Width and height of a drawing."""

GAP_MM = 2.0
PICTURE_MM = 84.0
PICTURE_PIXELS = 1400


def drawing_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """Drawings of the states seen, in rows; nothing when the key has none."""
    drawn = [
        (file, _words(finding))
        for finding in found.findings
        for path in finding.figures
        if (file := _shipped(path)) is not None
    ]
    if not drawn:
        return
    section(sheet, language.say("As drawn in the key"))
    across = int((sheet.width + GAP_MM) // (DRAWING_MM[0] + GAP_MM))
    for start in range(0, len(drawn), across):
        _drawings(sheet, drawn[start : start + across])


def _words(finding: SeenFinding) -> str:
    """What the drawing shows, and who made it where it came with the key."""
    words = f"{finding.name}: {finding.seen}"
    return f"{words} ({finding.figure_terms})" if finding.figure_terms else words


def _shipped(path: str) -> Path | None:
    """The drawing at that path below images/; None when there is none, or it leads elsewhere."""
    images = places.images_folder().resolve()
    file = (images / path).resolve()
    return file if file.is_relative_to(images) and file.is_file() else None


def _drawings(sheet: Sheet, row: list[tuple[Path, str]]) -> None:
    kind = Type(size=6.2, colour=SOFT, leading=1.2)
    wide, high = DRAWING_MM
    captions = [broken(sheet, ((words, ""),), wide, kind) for _, words in row]
    height = high + 0.6 + max(caption.height for caption in captions)
    sheet.room(height + 1.5)
    x, y = sheet.margins.left, sheet.get_y()
    for (file, words), caption in zip(row, captions, strict=True):
        picture = drawing_source(file)
        sheet.image(picture, x=x, y=y, w=wide, h=high, keep_aspect_ratio=True, alt_text=words)
        set_block(sheet, caption, x, y + high + 0.6)
        x += wide + GAP_MM
    sheet.set_y(y + height + 1.5)


def drawing_source(file: Path) -> Path | io.BytesIO:
    """The drawing as the library takes it: without titles, in the font of the paper."""
    if file.suffix != ".svg":
        return file
    text = re.sub(r"<(title|desc)>.*?</\1>", "", file.read_text("utf-8"), flags=re.DOTALL)
    text = re.sub(r'font-family="[^"]*"', f'font-family="{places.FONT_FAMILY}"', text)
    return io.BytesIO(text.encode("utf-8"))


def picture_section(
    sheet: Sheet, found: Rationale, language: Language, files: Mapping[str, Path]
) -> None:
    """Photographs, two in a row, each with its caption; without what a camera wrote into them."""
    shown = [note for note in found.pictures if note.id in files]
    if not shown:
        return
    section(sheet, language.say("Pictures"))
    for start in range(0, len(shown), 2):
        _pictures(sheet, shown[start : start + 2], files)


def _pictures(sheet: Sheet, row: list[PictureNote], files: Mapping[str, Path]) -> None:
    images = [plain_picture(files[note.id]) for note in row]
    heights = [PICTURE_MM * image.height / image.width for image in images]
    widths = [PICTURE_MM * min(1.0, 100 / height) for height in heights]
    tall = min(max(heights), 100.0)
    sheet.room(tall + 8)
    x, y = sheet.margins.left, sheet.get_y()
    for note, image, width, height in zip(row, images, widths, heights, strict=True):
        sheet.image(image, x=x, y=y, w=width, alt_text=note.caption or note.id)
        kind = Type(size=7.2, colour=SOFT)
        caption = broken(sheet, ((note.caption or note.id, ""),), PICTURE_MM, kind)
        set_block(sheet, caption, x, y + min(height, 100.0) + 0.8)
        x += PICTURE_MM + 8
    sheet.set_y(y + tall + 8)


def plain_picture(file: Path) -> Image.Image:
    """The picture upright, at most `PICTURE_PIXELS` wide, without place, date or camera."""
    with Image.open(file) as opened:
        upright = ImageOps.exif_transpose(opened).convert("RGB")
    upright.thumbnail((PICTURE_PIXELS, PICTURE_PIXELS))
    clean = io.BytesIO()
    upright.save(clean, "JPEG", quality=85)
    clean.seek(0)
    return Image.open(clean)


def signatures(sheet: Sheet, found: Rationale, language: Language) -> None:
    """Two lines to sign on: who determined, and who looked again."""
    gap = 9 if sheet.dense else 14
    sheet.room(gap + 6)
    y = sheet.get_y() + gap
    width = (sheet.width - 10) / 2
    names = (
        language.say("Determined by {name}, date", name=found.by or "…"),
        language.say("Second look by, date"),
    )
    for number, text in enumerate(names):
        x = sheet.margins.left + number * (width + 10)
        with sheet.tagged("/Artifact"):
            sheet.set_draw_color(*INK)
            sheet.set_line_width(0.25)
            sheet.line(x, y, x + width, y)
        block = broken(sheet, ((text, ""),), width, Type(size=7.2, colour=SOFT))
        set_block(sheet, block, x, y + 0.8)
    sheet.set_y(y + 6)
