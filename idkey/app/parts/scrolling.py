"""A pane that scrolls up and down when it does not fit."""

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget


class _AsWide(QScrollArea):
    """A frame that does not become narrower than what is in it."""

    def minimumSizeHint(self) -> QSize:
        """As wide as what is in it, with the bar beside it."""
        inner = self.widget()
        wide = inner.minimumSizeHint().width() if inner is not None else 0
        bar = self.verticalScrollBar().sizeHint().width()
        return QSize(wide + bar, super().minimumSizeHint().height())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Tell the layout around when what is in it wants another width."""
        if event.type() == QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().eventFilter(watched, event)


def scrolled(inner: QWidget, *, as_wide: bool = False) -> QScrollArea:
    """`inner` in a frame that scrolls up and down; the frame takes no focus.

    Args:
        inner: What is in it.
        as_wide: Whether the frame keeps as wide as what is in it needs at least.
    """
    if inner.property("pane") is None:
        inner.setProperty("pane", "clear")
    scroll = _AsWide() if as_wide else QScrollArea()
    scroll.setWidgetResizable(True)
    scroll.setFrameShape(QFrame.Shape.NoFrame)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setWidget(inner)
    return scroll
