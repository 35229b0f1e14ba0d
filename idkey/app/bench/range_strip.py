"""Where the candidates lie on the axis of a number."""

from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.theme import Theme
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.model.score import Spans

ROWS = 7
"""How many candidates are shown at first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """What one taxon shows: None is an open or unknown bound."""

    name: str
    low: float | None
    high: float | None


def bands(key: Key, character: Character, taxa: tuple[str, ...]) -> tuple[Band, ...]:
    """One band per taxon that is scored, in the order of `taxa`."""
    found = []
    for taxon in taxa:
        scores = key.cells.get((taxon, character.id), ())
        spans = [score.value for score in scores if isinstance(score.value, Spans)]
        if spans:
            lows = [s.low if s.low is not None else s.mean for s in spans]
            highs = [s.high if s.high is not None else s.mean for s in spans]
            found.append(
                Band(
                    name=key.taxon[taxon].name,
                    low=None if None in lows else min(x for x in lows if x is not None),
                    high=None if None in highs else max(x for x in highs if x is not None),
                )
            )
    return tuple(found)


def axis(shown: tuple[Band, ...], value: float | None) -> tuple[float, float]:
    """Lowest and highest value on the axis; never the same."""
    numbers = [x for band in shown for x in (band.low, band.high) if x is not None]
    if value is not None:
        numbers.append(value)
    if not numbers:
        return 0.0, 1.0
    low, high = min(numbers), max(numbers)
    room = (high - low) * 0.08 or max(abs(high) * 0.2, 1.0)
    return max(low - room, 0.0) if low >= 0 else low - room, high + room


class RangeStrip(QWidget):
    """A band per candidate over one axis, and a line where the animal is.

    Args:
        theme: The look.

    Attributes:
        every: All candidates there are.
        unit: Unit of the axis.
        whole: Whether all of them are shown, from the next showing on.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.every: tuple[Band, ...] = ()
        self._bands: tuple[Band, ...] = ()
        self.whole = False
        self._value: float | None = None
        self.unit = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_bands(self, shown: tuple[Band, ...], unit: str) -> None:
        """Show other candidates; the first ones, unless all are wanted."""
        self.every, self.unit = shown, unit
        self._bands = shown if self.whole else shown[:ROWS]
        self.setVisible(bool(shown))
        self._describe()
        self.updateGeometry()
        self.update()

    @property
    def reach(self) -> tuple[float, float] | None:
        """The lowest and the highest bound known of any candidate; None without one."""
        ends = [x for band in self.every for x in (band.low, band.high) if x is not None]
        return (min(ends), max(ends)) if ends else None

    def show_value(self, value: float | None) -> None:
        """Show where the animal is; None for nowhere yet."""
        if value != self._value:
            self._value = value
            self._describe()
            self.update()

    def sizeHint(self) -> QSize:
        """A row per band, and the axis."""
        return QSize(320, len(self._bands) * self._row() + self._theme.px(24))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw bands, axis and the value."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px, colour, mirrored = self._theme.px, self._theme.colour, self.isRightToLeft()
        # Numbers run from left to right in every script; the names stand where text begins.
        names, rim = min(px(176), self.width() // 3), px(16)
        left, right = (rim, self.width() - names) if mirrored else (names, self.width() - rim)
        low, high = axis(self._bands, self._value)

        def place(number: float) -> float:
            return left + (number - low) / (high - low) * (right - left)

        for number, band in enumerate(self._bands):
            top = number * self._row()
            edge = right + px(12) if mirrored else 0
            self._draw_name(painter, band.name, QRectF(edge, top, names - px(12), self._row()))
            start = left if band.low is None else place(band.low)
            end = right if band.high is None else place(band.high)
            box = QRectF(start, top + px(5), max(end - start, 3), self._row() - px(10))
            fits = self._fits(band)
            painter.setPen(QPen(colour("accent" if fits else "outline"), 1))
            painter.setBrush(colour("accent_soft" if fits else "surface"))
            painter.drawRoundedRect(box, 4, 4)
        self._draw_axis(painter, (low, high), (left, right))
        if self._value is not None:
            x = place(self._value)
            painter.setPen(QPen(colour("ink"), 2))
            painter.drawLine(int(x), 0, int(x), len(self._bands) * self._row())
        painter.end()

    def _draw_name(self, painter: QPainter, name: str, box: QRectF) -> None:
        font = self._theme.font(12, italic=True)
        painter.setFont(font)
        painter.setPen(self._theme.colour("ink"))
        text = QFontMetrics(font).elidedText(name, Qt.TextElideMode.ElideRight, int(box.width()))
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)

    def _draw_axis(
        self, painter: QPainter, ends: tuple[float, float], places: tuple[float, float]
    ) -> None:
        y = len(self._bands) * self._row() + 2
        painter.setPen(QPen(self._theme.colour("outline"), 1))
        painter.drawLine(int(places[0]), y, int(places[1]), y)
        painter.setFont(self._theme.font(11))
        painter.setPen(self._theme.colour("soft"))
        box = QRectF(places[0], y + 2, places[1] - places[0], self._theme.px(18))
        unit = f" {self.unit}" if self.unit else ""
        painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        painter.drawText(box, Qt.AlignmentFlag.AlignLeft, f"{_short(ends[0])}{unit}")
        painter.drawText(box, Qt.AlignmentFlag.AlignRight, f"{_short(ends[1])}{unit}")

    def _fits(self, band: Band) -> bool:
        if self._value is None:
            return True
        low = band.low is None or self._value >= band.low
        return low and (band.high is None or self._value <= band.high)

    def _describe(self) -> None:
        lines = (f"{b.name}: {_bound(b.low)} – {_bound(b.high)} {self.unit}" for b in self._bands)
        self.setAccessibleName(self.tr("Where the candidates lie"))
        self.setAccessibleDescription("; ".join(line.strip() for line in lines))

    def _row(self) -> int:
        return self._theme.px(21)


def _bound(value: float | None) -> str:
    return "…" if value is None else f"{value:g}"


def _short(value: float) -> str:
    return f"{value:.0f}" if abs(value) >= 20 else f"{value:.3g}"
