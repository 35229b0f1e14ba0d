"""What people misread in the drill, offered to the author as error rates."""

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QCheckBox, QGridLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.jobs import Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.tips import plain_button
from idkey.app.records.latest import Latest
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.rate_bar import RateBar
from idkey.app.workshop.state import WorkshopState
from idkey.drill.observed import ENOUGH, WARM_UP, ObservedError, observed_error, with_observed
from idkey.model.key import Key
from idkey.report.names import character_name, state_labels
from idkey.store.drill_log import trials_of

SHOWN = 2
"""Mistakes shown per character."""

Found = tuple[ObservedError, ...]


class ObservedPage(LivePage):
    """Shows observed error rates per character; the author ticks which the key takes over.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self._desk = desk
        self._key: Key | None = None
        self._latest = Latest(state.errands, self)
        self.found: Found = ()
        self.ticks: dict[str, QCheckBox] = {}
        self.said = caption(rank="soft")
        self.all = button(self.tr("Tick all that differ"))
        self.accept = button(self.tr("Take the ticked rates over"), "main")
        self._body = QWidget()
        self._grid = QGridLayout(self._body)
        self._lay_out()
        for pressed in (self.all, self.accept):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.all.clicked.connect(self._on_all_clicked)
        self.accept.clicked.connect(self._on_accept_clicked)
        self._latest.answered.connect(self._on_found)
        self._latest.failed.connect(self._on_failed)
        state.changed.connect(self.show_editing)

    @property
    def busy(self) -> bool:
        """Whether the log is being read."""
        return self._latest.busy

    def focus_first(self) -> None:
        """Put the focus on the first rate one can tick."""
        open_ = [tick for tick in self.ticks.values() if tick.isEnabled()]
        (open_[0] if open_ else self.all).setFocus(Qt.FocusReason.OtherFocusReason)

    def showEvent(self, event: QShowEvent) -> None:
        """Read the log at once when one comes here."""
        self._key = self._drawn = None  # people may have drilled meanwhile
        super().showEvent(event)

    def draw(self, editing: Editing) -> None:
        """Follow the characters of the key."""
        before, key, store = self._key, editing.key, self.state.store
        if before and before.characters == key.characters:
            return
        self._key = key
        if store is None:
            self._show(())
            self.said.setText(self.tr("There is no record book here."))
            return

        def work(_: Tick) -> Found:  # on a pool thread
            return observed_error(key, trials_of(store, key=key.id))

        if before is None:
            self.said.setText(self.tr("Adding up …"))
        self._latest.ask(work)

    @Slot(object)
    def _on_found(self, found: Found) -> None:
        self._show(found)
        differ = sum(one.differs for one in found)
        if not found:
            text = self.tr("Nobody has answered enough drill pictures of this key yet.")
        elif not differ:
            text = self.tr("What people misread agrees with what the key says, as far as it goes.")
        else:
            text = self.tr("For {n} of {all} characters the key says something else than was seen.")
        self.said.setText(text.format(n=differ, all=len(found)))

    def _show(self, found: Found) -> None:
        self.found = found = tuple(
            sorted(found, key=lambda one: (not one.differs, one.offered is None))
        )
        self.ticks = {}
        while item := self._grid.takeAt(0):
            if widget := item.widget():
                widget.deleteLater()
        if found:
            self._show_heads()
        for row, one in enumerate(found, start=1):
            self._show_row(row, one)
        self._grid.setRowStretch(len(found) + 1, 1)
        self.all.setEnabled(any(one.differs for one in found))
        self._allow()

    def _show_heads(self) -> None:
        titles = (
            self.tr("Character"),
            self.tr("Wrong"),
            self.tr("People"),
            self.tr("0 to 50 %"),
            self.tr("Key"),
            self.tr("Offer"),
            self.tr("Most often"),
        )
        for place, title in enumerate(titles):
            self._grid.addWidget(caption(title, "overline", wraps=False), 0, place)

    def _show_row(self, row: int, one: ObservedError) -> None:
        assert self._key is not None
        name = character_name(self._key, one.character)
        tick = QCheckBox(plain_button(name))
        tick.setEnabled(self._offers(one))
        if not self._offers(one):
            tick.setToolTip(
                self.tr("Fewer than {n} answers, or the key says it already.").format(n=ENOUGH)
            )
        tick.toggled.connect(self._on_ticked)
        self.ticks[one.character] = tick
        language = self._desk.language
        offer = "–" if one.offered is None else language.share(one.offered)
        count = self.tr("{wrong} of {n}").format(wrong=one.wrong, n=one.answers)
        self._grid.addWidget(tick, row, 0)
        self._grid.addWidget(caption(count, wraps=False), row, 1)
        self._grid.addWidget(caption(str(one.people), wraps=False), row, 2)
        self._grid.addWidget(RateBar(one, self._desk.theme, language), row, 3)
        self._grid.addWidget(caption(language.share(one.now), wraps=False), row, 4)
        self._grid.addWidget(caption(offer, "strong" if one.differs else "", wraps=False), row, 5)
        self._grid.addWidget(caption(self._mistakes(one), "small"), row, 6)

    def _offers(self, one: ObservedError) -> bool:
        return one.offered is not None and abs(one.offered - one.now) >= 0.0005

    def _mistakes(self, one: ObservedError) -> str:
        assert self._key is not None
        lines = []
        for truth, said, count in one.mistakes[:SHOWN]:
            labels = state_labels(self._key, one.character, (truth, said))
            lines.append(f"{labels[0]} → {labels[1]} ({count})")
        return "\n".join(lines) or "–"

    def _allow(self) -> None:
        ticked = any(tick.isChecked() for tick in self.ticks.values())
        self.accept.setEnabled(ticked)

    def _lay_out(self) -> None:
        self._grid.setHorizontalSpacing(14)
        self._grid.setVerticalSpacing(6)
        self._grid.setContentsMargins(4, 0, 12, 0)
        for place, share in ((0, 4), (3, 3), (6, 5)):
            self._grid.setColumnStretch(place, share)
        foot = FlowRow(gap=8, last_ends=True)
        foot.add(self.all)
        foot.add(self.accept)
        note = self.tr(
            "From drawings in the drill; the first {warm} answers of each person to a character "
            "are left out. An offer takes {n} answers and leans towards the rate in the key. "
            "Line: 95 % interval; dot: seen; upright: the key; triangle: the offer."
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 4, 4)
        column.setSpacing(10)
        column.addWidget(self.said)
        pane = scrolled(self._body)
        pane.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)  # large text
        column.addWidget(pane, 1)
        told = scrolled(caption(note.format(warm=WARM_UP, n=ENOUGH), "small"))
        told.setMaximumHeight(self._desk.theme.px(40))
        column.addWidget(told)
        column.addWidget(foot)

    @Slot()
    def _on_ticked(self) -> None:
        self._allow()

    @Slot()
    def _on_all_clicked(self) -> None:
        for one in self.found:
            if one.differs and self._offers(one):
                self.ticks[one.character].setChecked(True)

    @Slot()
    def _on_accept_clicked(self) -> None:
        editing = self.state.editing
        accepted = [one for one in self.found if self.ticks[one.character].isChecked()]
        if editing is not None and accepted:
            one, many = (
                self.tr("Error rate of a character"),
                self.tr("Error rates of {n} characters"),
            )
            words = one if len(accepted) == 1 else many.format(n=len(accepted))
            self.state.change(with_observed(editing.key, accepted), words)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.said.setText(message_for(error).text)
