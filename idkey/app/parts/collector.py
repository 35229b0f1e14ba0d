"""Frees what only refers to itself, between two events of the UI thread and nowhere else.

Python looks for such garbage wherever an object happens to be made: on a pool thread, or while
Qt holds a lock and asks a class for an override (`disconnect` does). What is left of a widget
must not be deleted there: the program ends in the one case, and stands still in the other.
"""

import gc
import time

from PySide6.QtCore import QObject, QTimer, Slot

EVERY_MS = 500
"""Shortest time between two looks, in milliseconds."""

SHARE = 0.02
"""Largest share of the time that collecting may take."""


class Collector(QObject):
    """Takes the garbage collector over from its making until `leave`.

    Args:
        parent: Owner; lives on the UI thread.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._took_over = gc.isenabled()
        gc.disable()
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._on_timeout)
        self._timer.start(EVERY_MS)

    def leave(self) -> None:
        """Give the collector back to Python."""
        self._timer.stop()
        if self._took_over:
            gc.enable()

    @Slot()
    def _on_timeout(self) -> None:
        began = time.perf_counter()
        collect_if_due()
        took_ms = (time.perf_counter() - began) * 1e3
        self._timer.start(max(EVERY_MS, round(took_ms / SHARE)))


def collect_if_due() -> int:
    """Collect the oldest generation that Python itself would; how many objects were freed."""
    for generation in (2, 1, 0):
        wanted = gc.get_threshold()[generation]
        if wanted and gc.get_count()[generation] > wanted:
            return gc.collect(generation)
    return 0
