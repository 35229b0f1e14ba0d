"""A text that is as high as what it says, so that the pane around it scrolls."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QTextBrowser

from idkey.app.parts.sheet import page_style
from idkey.app.parts.theme import Theme

LEAST = 24
"""Least height of what can be pressed, in pixels. WCAG 2.2, criterion 2.5.8."""


class TextPage(QTextBrowser):
    """Shows HTML; links go nowhere, and nothing is fetched.

    Args:
        theme: The look.

    Signals:
        fitted(high: int): It is so high now, in pixels.
    """

    fitted = Signal(int)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._html = ""
        self.setOpenLinks(False)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setAccessibleName(self.tr("Text"))
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.document().setDefaultStyleSheet(page_style(theme))
        self.document().setDocumentMargin(0)
        self.document().setIndentWidth(theme.px(18))
        accent = theme.colours.accent
        self.setStyleSheet(
            "QTextBrowser { padding: 0px; border: none; border-left: 2px solid transparent; }"
            f"QTextBrowser:focus {{ border-left: 2px solid {accent}; }}"
        )
        self.document().documentLayout().documentSizeChanged.connect(self._on_size_changed)

    def show_html(self, html: str) -> None:
        """Show another text; the same one stays as it is, selection and all."""
        if html != self._html:
            self._html = html
            self.setHtml(f"<body>{html}</body>")
            self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the height to the width."""
        super().resizeEvent(event)
        self._fit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Leave the keys that scroll to the pane around."""
        scrolls = (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown)
        if event.key() in scrolls:
            event.ignore()
            return
        super().keyPressEvent(event)

    def _fit(self) -> None:
        around = self.height() - self.viewport().height()
        high = round(self.document().size().height()) + max(around, 0) + 2
        high = max(high, LEAST)
        if self.height() != high or self.minimumHeight() != high:
            self.setFixedHeight(high)
            self.fitted.emit(high)

    @Slot(object)
    def _on_size_changed(self, _: object) -> None:
        self._fit()
