"""How much of a key is filled, as a bar in which every ground has a pattern of its own."""

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.theme import Theme
from idkey.engine.coverage import Coverage, Ground

translate = QCoreApplication.translate


def ground_words(ground: Ground) -> str:
    """What the cells of a ground rest on."""
    return {
        Ground.PRINT: translate("library", "from print"),
        Ground.PARTLY_MEMORY: translate("library", "partly from memory"),
        Ground.MEMORY: translate("library", "from memory or common practice"),
        Ground.UNTOLD: translate("library", "without a source"),
        Ground.EMPTY: translate("library", "not filled"),
    }[ground]


def percent(share: float) -> str:
    """A share in per cent; what is not nothing is never called nothing, nor all."""
    if 0 < share < 0.005:
        return translate("library", "under 1 %")
    if 0.995 <= share < 1:
        return translate("library", "over 99 %")
    return translate("library", "{n} %").format(n=round(share * 100))


def coverage_words(coverage: Coverage) -> str:
    """The whole bar in words, for readers that speak."""
    told = (
        f"{percent(coverage.share(ground))} {ground_words(ground)}"
        for ground in Ground
        if coverage.cells[ground]
    )
    return ", ".join(told)


def draw_coverage(painter: QPainter, box: QRectF, coverage: Coverage, theme: Theme) -> None:
    """Draw the bar: solid is print, stripes partly memory, dots memory, lines no source."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    shape = QPainterPath()
    shape.addRoundedRect(box, box.height() / 4, box.height() / 4)
    painter.setClipPath(shape)
    painter.fillRect(box, theme.colour("surface"))
    left = box.left() if not theme.mirrored else box.right()
    for ground in Ground:
        width = box.width() * coverage.share(ground)
        start = left if not theme.mirrored else left - width
        draw_ground(painter, QRectF(start, box.top(), width, box.height()), ground, theme)
        left += width if not theme.mirrored else -width
    painter.setClipping(False)
    painter.setPen(QPen(theme.colour("outline"), 1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(shape)
    painter.restore()


def draw_ground(painter: QPainter, box: QRectF, ground: Ground, theme: Theme) -> None:
    """Fill a box with the pattern of a ground."""
    if box.width() <= 0 or ground is Ground.EMPTY:
        return
    accent = theme.colour("accent")
    if ground is Ground.PRINT:
        painter.fillRect(box, accent)
        return
    painter.fillRect(box, theme.colour("accent_soft"))
    painter.fillRect(box, QBrush(accent, _PATTERNS[ground]))
    painter.setPen(QPen(accent, 1))
    painter.drawLine(box.topLeft() + QPointF(0.5, 0), box.bottomLeft() + QPointF(0.5, 0))


_PATTERNS = {
    Ground.PARTLY_MEMORY: Qt.BrushStyle.BDiagPattern,
    Ground.MEMORY: Qt.BrushStyle.Dense6Pattern,
    Ground.UNTOLD: Qt.BrushStyle.VerPattern,
}


class CoverageBar(QWidget):
    """The bar by itself.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._coverage: Coverage | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_coverage(self, coverage: Coverage) -> None:
        """Show another one."""
        self._coverage = coverage
        self.setAccessibleName(coverage_words(coverage))
        self.setToolTip(coverage_words(coverage))
        self.update()

    def sizeHint(self) -> QSize:
        """As high as a line."""
        return QSize(self._theme.px(200), self._theme.px(18))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        if self._coverage is not None:
            box = QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
            draw_coverage(QPainter(self), box, self._coverage, self._theme)


class _Sample(QWidget):
    """A small piece of the pattern of a ground."""

    def __init__(self, ground: Ground, theme: Theme) -> None:
        super().__init__()
        self._ground, self._theme = ground, theme
        self.setFixedSize(theme.px(28), theme.px(13))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        box = QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
        draw_ground(painter, box, self._ground, self._theme)
        painter.setPen(QPen(self._theme.colour("outline"), 1))
        painter.drawRect(box)


class CoverageView(QWidget):
    """The bar, and a line for each ground: its pattern, its share, its cells.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._bar = CoverageBar(theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.px(3))
        column.addWidget(self._bar)
        self._rows = {ground: (QWidget(), caption(rank="small")) for ground in Ground}
        for ground, (row, words) in self._rows.items():
            line = QHBoxLayout(row)
            line.setContentsMargins(0, 0, 0, 0)
            line.addWidget(_Sample(ground, theme), 0, Qt.AlignmentFlag.AlignTop)
            line.addWidget(words, 1)
            column.addWidget(row)

    def show_coverage(self, coverage: Coverage) -> None:
        """Show another one; grounds without cells are left out."""
        self._bar.show_coverage(coverage)
        for ground, (row, words) in self._rows.items():
            cells = coverage.cells[ground]
            row.setVisible(cells > 0)
            text = self.tr("{share} {ground} ({n} of {all} cells)")
            words.setText(
                text.format(
                    share=percent(coverage.share(ground)),
                    ground=ground_words(ground),
                    n=cells,
                    all=coverage.total,
                )
            )
