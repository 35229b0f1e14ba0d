"""Asks in place, without a dialog, before something takes other things with it."""

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt, Slot
from PySide6.QtWidgets import QFrame, QVBoxLayout

from idkey.app.parts.captions import button, caption
from idkey.app.parts.flow import FlowRow
from idkey.app.workshop.forms_references import Uses

translate = QCoreApplication.translate


class Confirm(QFrame):
    """A question with two answers; Esc keeps everything."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("pane", "doubt")
        self._does: Callable[[], None] | None = None
        self.text = caption()
        self.go = button()
        self.keep = button(self.tr("Leave as it is"))
        for one in (self.go, self.keep):
            one.setAutoDefault(True)
        row = FlowRow(gap=6)
        row.add(self.go)
        row.add(self.keep)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 10)
        column.addWidget(self.text)
        column.addWidget(row)
        self.go.clicked.connect(self._on_go_clicked)
        self.keep.clicked.connect(self.put_away)
        self.keep.setShortcut("Esc")
        self.hide()

    def ask(self, text: str, go: str, does: Callable[[], None]) -> None:
        """Ask, and do it if the person says so.

        Args:
            text: What would happen.
            go: The answer that does it.
            does: Does it.
        """
        self._does = does
        self.text.setText(text)
        self.setAccessibleName(text)
        self.go.setText(go)
        self.go.setAccessibleDescription(text)
        self.show()
        self.go.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def put_away(self) -> None:
        """Do nothing."""
        self._does = None
        self.hide()

    @Slot()
    def _on_go_clicked(self) -> None:
        does = self._does
        self.put_away()
        if does is not None:
            does()


def uses_words(uses: Uses) -> str:
    """What would change, counted, as a list in words."""
    parts = [
        _many(uses.scores, translate("forms", "1 score"), translate("forms", "{n} scores")),
        _named(uses.characters, translate("forms", "characters")),
        _named(uses.taxa, translate("forms", "taxa")),
        _named(uses.labels, translate("forms", "labels")),
        _named(uses.couplets, translate("forms", "couplets")),
        _named(uses.checks, translate("forms", "checks")),
    ]
    return "; ".join(filter(None, parts))


def _named(names: tuple[str, ...], what: str) -> str:
    if not names:
        return ""
    shown = ", ".join(names[:5])
    more = f" +{len(names) - 5}" if len(names) > 5 else ""
    return f"{what} {shown}{more}"


def _many(number: int, one: str, many: str) -> str:
    if not number:
        return ""
    return one if number == 1 else many.format(n=number)
