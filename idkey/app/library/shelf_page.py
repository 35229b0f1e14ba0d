"""The shelf: the keys that are here beside the one that is looked at."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.library.account import Account
from idkey.app.library.key_list import KeyList
from idkey.app.library.key_page import Deed, KeyPage
from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.formats.giving import Way


class ShelfPage(QWidget):
    """The list of keys, and the page of the current one.

    Args:
        desk: Look, drawings, language.

    Signals:
        wanted(account: object, deed: object): Something is to be done with a key.
        given(account: object, way: object): A key is to be handed out.
    """

    wanted = Signal(object, object)
    given = Signal(object, object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.list = KeyList(desk.theme)
        self.page = KeyPage(desk)
        self.hint = caption(
            self.tr(
                "To take a key in, drag a file or folder here, paste it, or choose it above. "
                "Packages, folders, spreadsheets, JSON, SDD and NEXUS are recognised."
            ),
            "small",
        )
        left = QVBoxLayout()
        left.setSpacing(desk.theme.px(8))
        left.addWidget(self.list, 1)
        left.addWidget(self.hint)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(desk.theme.px(16))
        row.addLayout(left, 9)
        row.addWidget(self.page, 11)
        self.list.chosen.connect(self._on_list_chosen)
        self.list.opened.connect(self._on_list_opened)
        self.page.wanted.connect(self._on_page_wanted)
        self.page.given.connect(self._on_page_given)
        self.page.show_account(None)

    def show_accounts(self, accounts: tuple[Account, ...]) -> None:
        """Show the keys that are here: the person's own first."""
        self.list.show_accounts(tuple(sorted(accounts, key=lambda one: not one.entry.own)))

    def focus_first(self) -> None:
        """Put the focus on the list."""
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _on_list_chosen(self) -> None:
        self.page.show_account(self.list.current)

    @Slot()
    def _on_list_opened(self) -> None:
        one = self.list.current
        if one is not None and one.read:
            self.wanted.emit(one, Deed.EDIT if one.broken else Deed.CASE)

    @Slot(object)
    def _on_page_wanted(self, deed: Deed) -> None:
        self.wanted.emit(self.list.current, deed)

    @Slot(object)
    def _on_page_given(self, way: Way) -> None:
        self.given.emit(self.list.current, way)
