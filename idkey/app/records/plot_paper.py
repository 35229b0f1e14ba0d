"""Plots on paper: drawn again in the light, as a picture or a PDF page."""

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QByteArray, QMarginsF, QPoint, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QImage, QImageWriter, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtWidgets import QApplication

from idkey.app.parts.plots import Bars, Trend
from idkey.app.parts.theme import Scheme, Theme
from idkey.errors import IdKeyError

WIDTH = 700
"""Width of the plots in pixels of 1/96 inch; fits a page of A4."""

SHARPNESS = 2
"""Pixels of a picture per pixel of the screen at 100 %."""

EDGE = 44
PAGE = 1123 - 2 * EDGE
"""Height left on a page of A4."""


class PaperLook(Theme):
    """The light look at 100 %, for paper; it leaves the window as it is."""

    def __init__(self, app: QApplication) -> None:
        super().__init__(app)
        self.scheme = Scheme.LIGHT

    def _apply(self) -> None:
        """The application keeps its own look."""


@dataclass(frozen=True, slots=True)
class Plot:
    """A plot with its heading."""

    title: str
    drawing: Bars | Trend


def write_plots(file: Path, plots: Sequence[Plot], *, title: str, said: str, look: Theme) -> None:
    """Write plots under each other.

    Args:
        file: A name that ends in ``.pdf`` writes a PDF, any other a PNG picture.
        plots: The plots, drawn with `look`.
        title: Heading of the whole.
        said: What the plots show, in a sentence or two.
        look: The look they are drawn in.

    Raises:
        IdKeyError: It cannot be written there.
    """
    if file.suffix.casefold() == ".pdf":
        written = _write_pdf(file, plots, (title, said), look)
    else:
        written = _write_png(file, plots, (title, said), look)
    if not written:
        raise IdKeyError(
            f"{file} cannot be written.",
            "Choose another folder, or close the program that has the file open.",
        )


def _write_pdf(file: Path, plots: Sequence[Plot], texts: tuple[str, str], look: Theme) -> bool:
    writer = QPdfWriter(str(file))
    writer.setTitle(texts[0])
    writer.setResolution(96)
    layout = QPageLayout(QPageSize(QPageSize.PageSizeId.A4), QPageLayout.Orientation.Portrait,
                         QMarginsF())  # fmt: skip
    writer.setPageLayout(layout)
    painter = QPainter()
    if not painter.begin(writer):
        return False
    y = EDGE + _head(painter, texts, look, EDGE)
    for plot in plots:
        if y + _height(plot, look) > EDGE + PAGE:
            writer.newPage()
            y = EDGE
        y += _draw(painter, plot, look, y)
    return painter.end()


def _write_png(file: Path, plots: Sequence[Plot], texts: tuple[str, str], look: Theme) -> bool:
    trial = QImage(1, 1, QImage.Format.Format_RGB32)
    painter = QPainter(trial)
    high = 2 * EDGE + _head(painter, texts, look, EDGE) + sum(_height(p, look) for p in plots)
    painter.end()
    image = QImage(QSize(WIDTH + 2 * EDGE, high) * SHARPNESS, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(SHARPNESS)
    image.fill(QColor("#ffffff"))
    painter.begin(image)
    y = EDGE + _head(painter, texts, look, EDGE)
    for plot in plots:
        y += _draw(painter, plot, look, y)
    painter.end()
    return QImageWriter(str(file), QByteArray(b"png")).write(image)


def _head(painter: QPainter, texts: tuple[str, str], look: Theme, top: int) -> int:
    """Write heading and explanation; the height used."""
    y = top
    for text, font, colour in (
        (texts[0], look.font(20, bold=True), "ink"),
        (texts[1], look.font(12), "soft"),
    ):
        painter.setFont(font)
        painter.setPen(look.colour(colour))
        box = QRectF(EDGE, y, WIDTH, 400)
        wrap = Qt.TextFlag.TextWordWrap
        used = painter.boundingRect(box, wrap, text)
        painter.drawText(box, wrap, text)
        y += round(used.height()) + 8
    return y - top + 8


def _height(plot: Plot, look: Theme) -> int:
    return plot.drawing.sizeHint().height() + look.px(44)


def _draw(painter: QPainter, plot: Plot, look: Theme, y: int) -> int:
    """Draw a plot under its heading; the height used."""
    painter.setFont(look.font(14, bold=True))
    painter.setPen(look.colour("ink"))
    painter.drawText(QPoint(EDGE, y + look.px(16)), plot.title)
    drawing = plot.drawing
    drawing.resize(WIDTH, drawing.sizeHint().height())
    painter.save()
    painter.translate(EDGE, y + look.px(26))
    drawing.render(painter, QPoint(), renderFlags=drawing.RenderFlag.DrawChildren)
    painter.restore()
    return _height(plot, look)
