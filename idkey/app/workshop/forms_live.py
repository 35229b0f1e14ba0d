"""A page that follows the key on the table, and rests while nobody sees it."""

from PySide6.QtCore import Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QWidget

from idkey.app.workshop.editing import Editing
from idkey.app.workshop.state import WorkshopState
from idkey.model.key import Key


class LivePage(QWidget):
    """Draws the key on the table when it changed, at the latest when it comes into view.

    Args:
        state: The workshop.
    """

    def __init__(self, state: WorkshopState) -> None:
        super().__init__()
        self.state = state
        self._drawn: Editing | None = None

    def draw(self, editing: Editing) -> None:
        """Show the key."""
        raise NotImplementedError

    @property
    def key(self) -> Key:
        """The key as it is now; when it was put away, as it was."""
        editing = self.state.editing or self._drawn
        assert editing is not None
        return editing.key

    def follow(self) -> None:
        """Draw now, and from now on."""
        self.state.changed.connect(self.show_editing)
        self.fresh()

    def fresh(self) -> None:
        """Draw what is not drawn yet, seen or not."""
        editing = self.state.editing
        if editing is not None and editing is not self._drawn:
            self._drawn = editing
            self.draw(editing)

    @Slot(object)
    def show_editing(self, editing: Editing | None) -> None:
        """Draw the key, unless nobody sees it."""
        if editing is not None and (self.isVisible() or self._drawn is None):
            self._drawn = editing
            self.draw(editing)

    def redraw(self) -> None:
        """Draw again, because something else is chosen."""
        if self.state.editing is not None:
            self._drawn = self.state.editing
            self.draw(self.state.editing)

    def showEvent(self, event: QShowEvent) -> None:
        """Draw what changed while nobody saw it."""
        super().showEvent(event)
        self.fresh()
