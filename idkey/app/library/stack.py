"""Pages one behind the other, of which only the one in front needs room."""

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QStackedWidget


class Stack(QStackedWidget):
    """A stack that asks for no more height than its front page must have.

    Qt's own asks for the highest of all pages at the given width, which large text makes higher
    than the window.
    """

    def hasHeightForWidth(self) -> bool:
        """The height is what there is; pages scroll."""
        return False

    def sizeHint(self) -> QSize:
        """What the front page would like."""
        page = self.currentWidget()
        return super().sizeHint() if page is None else page.sizeHint()

    def minimumSizeHint(self) -> QSize:
        """What the front page must have."""
        page = self.currentWidget()
        return super().minimumSizeHint() if page is None else page.minimumSizeHint()
