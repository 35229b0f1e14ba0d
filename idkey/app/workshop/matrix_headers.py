"""The headings of the matrix: taxa at the side, characters and their regions on top."""

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter
from PySide6.QtWidgets import QHeaderView, QWidget

from idkey.app.parts.theme import Theme
from idkey.app.parts.words import upper_first
from idkey.app.workshop.matrix_delegate import wrapped
from idkey.app.workshop.matrix_model import MatrixModel

BAND = 20
"""Height of the band that names the region, in pixels at 100 %."""
NARROW = 24
"""Width of a column that shows shapes only, in pixels at 100 %."""

_MIDDLE = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeading


class CharacterHeader(QHeaderView):
    """Names of characters, wrapped or upright, below a band that names the body region.

    Args:
        model: The matrix.
        theme: The look.
        parent: The table.
    """

    def __init__(self, model: MatrixModel, theme: Theme, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._matrix = model
        self._theme = theme
        self._font = theme.font(12, bold=True)
        self._small = theme.font(11.5)
        self.words = True
        self.setSectionsClickable(True)
        self.setHighlightSections(True)
        self.setAccessibleName(self.tr("Characters"))

    def sizeHint(self) -> QSize:
        """Three lines of words, or a name upright."""
        high = 3 * QFontMetrics(self._font).height() if self.words else self._theme.px(170)
        return QSize(super().sizeHint().width(), high + self._theme.px(BAND + 10))

    def paintSection(self, painter: QPainter, rect: QRect, section: int) -> None:
        """Draw one heading."""
        theme, px = self._theme, self._theme.px
        painter.save()
        chosen = self.selectionModel().columnIntersectsSelection(section, self.rootIndex())
        painter.fillRect(rect, theme.colour("accent_soft" if chosen else "surface"))
        painter.setPen(theme.colour("line"))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        band = QRect(rect.left(), rect.top(), rect.width(), px(BAND))
        name = QRect(rect.left(), band.bottom(), rect.width(), rect.height() - px(BAND))
        painter.drawLine(rect.right(), name.top(), rect.right(), rect.bottom())
        self._draw_band(painter, band, section)
        painter.setPen(theme.colour("ink"))
        painter.setFont(self._font)
        text = self._matrix.characters[section].name
        if self.words:
            self._draw_wrapped(painter, name.adjusted(px(6), px(2), -px(4), -px(4)), text)
        else:
            self._draw_upright(painter, name, text)
        painter.restore()

    def _draw_band(self, painter: QPainter, band: QRect, section: int) -> None:
        """The region, once where it begins; it may run on over its other columns."""
        shown, theme = self._matrix.characters, self._theme
        part = shown[section].part
        painter.fillRect(band, theme.colour("ground"))
        painter.setPen(theme.colour("outline"))
        if section == 0 or shown[section - 1].part != part:
            painter.drawLine(band.topLeft(), band.bottomLeft())
        first = section
        while first > 0 and shown[first - 1].part == part:
            first -= 1
        last = section
        while last + 1 < len(shown) and shown[last + 1].part == part:
            last += 1
        start = band.left() - sum(self.sectionSize(n) for n in range(first, section))
        whole = sum(self.sectionSize(n) for n in range(first, last + 1))
        if self._theme.mirrored:
            start = band.right() - whole + sum(self.sectionSize(n) for n in range(first, section))
        run = QRect(start, band.top(), whole, band.height())
        painter.setClipRect(band)
        painter.setFont(self._small)
        painter.setPen(theme.colour("soft"))
        text = upper_first(part.replace("_", " ")) or "–"
        run.setLeft(max(run.left(), 0))  # it stays in sight while its columns scroll away
        inner = run.adjusted(theme.px(6), 0, -theme.px(4), 0)
        if inner.width() >= theme.px(NARROW) * 2:
            painter.drawText(inner, _MIDDLE, _elided(painter, text, inner.width()))
        painter.setClipping(False)

    def _draw_wrapped(self, painter: QPainter, inner: QRect, text: str) -> None:
        metrics = QFontMetrics(self._font)
        for number, line in enumerate(wrapped(text, inner.width(), 3, metrics)):
            top = inner.top() + metrics.ascent() + number * metrics.height()
            x = inner.left()
            if self._theme.mirrored:
                x = inner.right() - metrics.horizontalAdvance(line)
            painter.drawText(x, top, line)

    def _draw_upright(self, painter: QPainter, name: QRect, text: str) -> None:
        metrics = QFontMetrics(self._font)
        px = self._theme.px
        painter.save()
        painter.translate(name.left(), name.bottom())
        painter.rotate(-90)
        text = metrics.elidedText(text, Qt.TextElideMode.ElideRight, name.height() - px(8))
        middle = (name.width() + metrics.ascent() - metrics.descent()) // 2
        painter.drawText(px(5), middle, text)
        painter.restore()


class TaxonHeader(QHeaderView):
    """Names of taxa; they stay where they are while the characters scroll.

    Args:
        model: The matrix.
        theme: The look.
        parent: The table.
    """

    def __init__(self, model: MatrixModel, theme: Theme, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Vertical, parent)
        self._matrix = model
        self._theme = theme
        self._table = parent
        self._font = theme.font(13, italic=True)
        self.setSectionsClickable(True)
        self.setHighlightSections(True)
        self.setAccessibleName(self.tr("Taxa"))

    def sizeHint(self) -> QSize:
        """As wide as the longest name, within reason."""
        metrics = QFontMetrics(self._font)
        widths = [metrics.horizontalAdvance(taxon.name) for taxon in self._matrix.taxa[:200]]
        wide = min(max(widths, default=0) + self._theme.px(20), self._theme.px(210), 260)
        third = max(self._table.width() // 3, self._theme.px(90))
        return QSize(min(wide, third), super().sizeHint().height())

    def paintSection(self, painter: QPainter, rect: QRect, section: int) -> None:
        """Draw one name."""
        theme = self._theme
        painter.save()
        chosen = self.selectionModel().rowIntersectsSelection(section, self.rootIndex())
        painter.fillRect(rect, theme.colour("accent_soft" if chosen else "surface"))
        painter.setPen(theme.colour("line"))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        painter.setFont(self._font)
        painter.setPen(theme.colour("ink"))
        inner = rect.adjusted(theme.px(8), 0, -theme.px(6), 0)
        name = short_name(self._matrix.taxa[section].name, inner.width(), painter.fontMetrics())
        painter.drawText(inner, _MIDDLE, name)
        painter.restore()


def _elided(painter: QPainter, text: str, width: int) -> str:
    return painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, width)


def short_name(name: str, width: int, metrics: QFontMetrics) -> str:
    """A name of a taxon in a width: its genus is cut short first."""
    if metrics.horizontalAdvance(name) > width:
        genus, _, rest = name.partition(" ")
        name = f"{genus[0]}. {rest}" if rest else name
    return metrics.elidedText(name, Qt.TextElideMode.ElideRight, width)
