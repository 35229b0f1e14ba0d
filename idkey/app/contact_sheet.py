"""All drawings on one sheet: ``python -m idkey.app.contact_sheet OUT.png`` (or ``OUT.pdf``)."""

import os
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

import click
from PySide6.QtCore import QMarginsF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontDatabase,
    QGuiApplication,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
)
from PySide6.QtSvg import QSvgRenderer

from idkey.app.parts.words import credit_words
from idkey.errors import IdKeyError
from idkey.figures.catalogue import CATALOGUE
from idkey.figures.own import shown_figure, supplied
from idkey.figures.plates import plate_text, read_plates
from idkey.figures.portrait import lineup_scale_mm, portrait
from idkey.formats.folder import read_key
from idkey.model.key import Key
from idkey.places import FONT_FAMILY, font_files, images_folder, keys_folder

GROUNDS = {"light": ("#fdfbf7", "#2b2622"), "dark": ("#1e1e1e", "#e8e2d8")}
"""Paper and letters."""
HEAD = 34.0
FOOT = 20.0
GAP = 10.0


@dataclass(frozen=True, slots=True)
class Picture:
    """One drawing or photograph with the words below it."""

    content: bytes
    words: str


@dataclass(frozen=True, slots=True)
class Row:
    """Drawings under a heading."""

    heading: str
    pictures: tuple[Picture, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Paper:
    """How a sheet is laid out, in points or pixels.

    Attributes:
        tile: Width of a drawing; its height is three quarters of it.
        columns: Drawings side by side.
        ground: ``"light"`` or ``"dark"``.
    """

    tile: float = 160.0
    columns: int = 7
    ground: str = "light"

    @property
    def width(self) -> float:
        """Width of the sheet."""
        return GAP + self.columns * (self.tile + GAP)

    def height(self, shelf: Sequence[Row]) -> float:
        """Height of rows side by side, with their headings."""
        lines = max(-(-len(row.pictures) // self.columns) for row in shelf)
        return HEAD + lines * (self.tile * 0.75 + FOOT)

    def shelves(self, all_rows: Sequence[Row]) -> tuple[tuple[Row, ...], ...]:
        """Rows put side by side as far as they fit, in their order."""
        found: list[list[Row]] = []
        left = 0
        for row in all_rows:
            wide = len(row.pictures)
            if wide > left:
                found.append([])
                left = self.columns
            found[-1].append(row)
            left = max(0, left - wide)
        return tuple(map(tuple, found))


def rows(key: Key) -> Iterator[Row]:
    """Every drawing of a key: its characters, its plates, then the portraits of its taxa."""
    images, libraries = images_folder(), (keys_folder(),)
    for character in key.characters:
        found = []
        for state in character.states:
            file = shown_figure(images, libraries, key, character=character.id, state=state.id)
            theirs = supplied(images, key, character.id, state.id, figure=file)
            if file is not None:
                words = (state.label, credit_words(state) if theirs else "")
                found.append(Picture(file.read_bytes(), " · ".join(filter(None, words))))
        measure = shown_figure(images, libraries, key, character=character.id)
        if measure is not None and not character.states:
            found.append(Picture(measure.read_bytes(), "how it is taken"))
        if found:
            yield Row(character.name, tuple(found))
    plates = read_plates(images, key.body_plan) if key.body_plan else ()
    if plates:
        drawings = ((plate_text(images, plate).encode(), plate.names["en"]) for plate in plates)
        yield Row("Parts", tuple(Picture(*drawing) for drawing in drawings))
    taxa = tuple(taxon.id for taxon in key.taxa)
    drawn = [(portrait(key, taxon.id), taxon.name) for taxon in key.taxa]
    if any(text for text, _ in drawn) and lineup_scale_mm(key, taxa):
        yield Row("Portraits", tuple(Picture(text.encode(), name) for text, name in drawn))


def paint(painter: QPainter, shelf: Sequence[Row], *, top: float, paper: Paper) -> None:
    """Paint rows side by side with their upper edge at `top`."""
    left = 0.0
    for row in shelf:
        _paint_row(painter, row, at=(left, top), paper=paper)
        left += len(row.pictures) * (paper.tile + GAP)


def _paint_row(painter: QPainter, row: Row, *, at: tuple[float, float], paper: Paper) -> None:
    ink = QColor(GROUNDS[paper.ground][1])
    painter.setPen(ink)
    painter.setFont(_font(13, bold=True))
    wide = min(len(row.pictures), paper.columns) * (paper.tile + GAP) - GAP
    align = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom
    heading = _elided(painter, row.heading, wide)
    painter.drawText(QRectF(at[0] + GAP, at[1], wide, HEAD - 6), align, heading)
    painter.setFont(_font(9))
    for index, picture in enumerate(row.pictures):
        x = at[0] + GAP + index % paper.columns * (paper.tile + GAP)
        y = at[1] + HEAD + index // paper.columns * (paper.tile * 0.75 + FOOT)
        box = QRectF(x, y, paper.tile, paper.tile * 0.75)
        _paint_picture(painter, picture.content, box)
        words = _elided(painter, picture.words, paper.tile)
        below = QRectF(x, y + box.height(), paper.tile, FOOT)
        painter.drawText(below, Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop, words)


def _paint_picture(painter: QPainter, content: bytes, box: QRectF) -> None:
    if content.lstrip().startswith(b"<"):
        renderer = QSvgRenderer(content)
        renderer.setAspectRatioMode(Qt.AspectRatioMode.KeepAspectRatio)
        renderer.render(painter, box)
        return
    photograph = QImage.fromData(content)
    size = QSizeF(photograph.size()).scaled(box.size(), Qt.AspectRatioMode.KeepAspectRatio)
    place = QRectF(QPointF(0, 0), size)
    place.moveCenter(box.center())
    painter.drawImage(place, photograph)


def _elided(painter: QPainter, text: str, width: float) -> str:
    return painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, int(width))


def _font(size: int, *, bold: bool = False) -> QFont:
    font = QFont(FONT_FAMILY)
    font.setPixelSize(size)
    font.setBold(bold)
    return font


def image(all_rows: Sequence[Row], paper: Paper) -> QImage:
    """All rows on one picture."""
    shelves = paper.shelves(all_rows)
    height = sum(paper.height(shelf) for shelf in shelves) + GAP
    sheet = QImage(round(paper.width), round(height), QImage.Format.Format_ARGB32)
    sheet.fill(QColor(GROUNDS[paper.ground][0]))
    painter = QPainter(sheet)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    top = 0.0
    for shelf in shelves:
        paint(painter, shelf, top=top, paper=paper)
        top += paper.height(shelf)
    painter.end()
    return sheet


def write_pdf(all_rows: Sequence[Row], file: Path, paper: Paper) -> None:
    """All rows as vectors on pages of A4, rows never split where they fit a page."""
    writer = QPdfWriter(str(file))
    writer.setTitle("Drawings")
    writer.setResolution(72)
    size = QPageSize(QPageSize.PageSizeId.A4)
    writer.setPageLayout(QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF()))
    page: QSizeF = size.size(QPageSize.Unit.Point)
    scale = page.width() / paper.width
    painter = QPainter(writer)
    top, room = 0.0, page.height() / scale
    for index, shelf in enumerate(paper.shelves(all_rows)):
        if index and top + paper.height(shelf) > room:
            writer.newPage()
            top = 0.0
        painter.save()
        painter.scale(scale, scale)
        if top == 0.0:
            painter.fillRect(QRectF(0, 0, paper.width, room), QColor(GROUNDS[paper.ground][0]))
        paint(painter, shelf, top=top, paper=paper)
        painter.restore()
        top += paper.height(shelf)
    painter.end()


@click.command()
@click.argument("out", type=click.Path(dir_okay=False, path_type=Path))
@click.option("--key", "names", multiple=True, help="Only this key; may be given again.")
@click.option("--ground", type=click.Choice(sorted(GROUNDS)), default="light", show_default=True)
@click.option("--tile", type=click.IntRange(40, 1600), default=160, show_default=True)
@click.option("--columns", type=click.IntRange(1, 20), default=7, show_default=True)
def main(out: Path, names: tuple[str, ...], ground: str, tile: int, columns: int) -> None:
    """Put all drawings on the sheet OUT, a PNG picture or a PDF."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    app = QGuiApplication.instance() or QGuiApplication([])
    for file in font_files():
        QFontDatabase.addApplicationFont(str(file))
    paper = Paper(tile=tile, columns=columns, ground=ground)
    try:
        found = [row for name in names or CATALOGUE for row in rows(read_key(keys_folder() / name))]
    except IdKeyError as err:
        raise click.ClickException(f"{err.problem}\n{err.remedy}") from err
    if out.suffix.lower() == ".pdf":
        write_pdf(found, out, paper)
    elif not image(found, paper).save(str(out)):
        raise click.ClickException(f"{out} cannot be written. Choose a folder that exists.")
    click.echo(f"{sum(len(row.pictures) for row in found)} drawings on {out}.")
    del app


if __name__ == "__main__":
    main()
