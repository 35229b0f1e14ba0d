"""The line above the couplets: how they are shown, what can be done, and how they stand."""

from enum import StrEnum

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.segments import Segments
from idkey.app.workshop.couplet_facts import CoupletFacts, LeadPlace
from idkey.model.key import Key


class View(StrEnum):
    """How the couplets are shown."""

    GRAPH = "graph"
    TEXT = "text"


class CoupletBar(QWidget):
    """Buttons, and what is wrong with the couplets as a whole.

    Args:
        desk: Look, drawings, language.

    Signals:
        view_chosen(view: object): The couplets are to be shown another way.
        asked(what: str): Something is to be done: "start", "lead", "below", "remove", "up",
            "down", "here", "number" or "fit".
    """

    view_chosen = Signal(object)
    asked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.views: Segments[View] = Segments(self.tr("How they are shown"), View, self._view_words)
        self.facts = caption(rank="soft")
        self.buttons = {
            "start": button(self.tr("Start with a couplet"), "main"),
            "lead": button(self.tr("Add a lead")),
            "below": button(self.tr("Couplet below this lead")),
            "remove": button(self.tr("Remove")),
            "up": button("↑", "quiet"),
            "down": button("↓", "quiet"),
            "here": button(self.tr("Start here"), "quiet"),
            "number": button(self.tr("Number anew"), "quiet"),
            "fit": button(self.tr("Show all"), "quiet"),
        }
        self.buttons["up"].setAccessibleName(self.tr("Move the lead up"))
        self.buttons["down"].setAccessibleName(self.tr("Move the lead down"))
        row = FlowRow(gap=desk.theme.px(5))
        row.add(self.views)
        for what, one in self.buttons.items():
            one.setObjectName(what)
            one.setToolTip(one.accessibleName() or one.text())
            one.clicked.connect(self._on_clicked)
            row.add(one)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(row)
        column.addWidget(self.facts)
        self.views.chosen.connect(self.view_chosen)

    @property
    def view(self) -> View:
        """How the couplets are shown."""
        return self.views.value

    def show_view(self, view: View) -> None:
        """Show them another way."""
        if view is not self.views.value:
            self.views.set_value(view)
            self.view_chosen.emit(view)

    def show_facts(self, key: Key, facts: CoupletFacts, *, chosen: LeadPlace | None) -> None:
        """Say how the couplets stand, and offer what can be done with what is chosen."""
        graph, any_ = self.view is View.GRAPH, bool(key.couplets)
        on_lead = chosen is not None and chosen[1] >= 0
        for what, one in self.buttons.items():
            one.setVisible(any_ and graph if what != "start" else not any_ and bool(key.taxa))
            if what in ("below", "up", "down"):
                one.setEnabled(on_lead)
        first = chosen is None or chosen[0] == key.couplets[0].id
        self.buttons["here"].setEnabled(not first)
        self.facts.setText(self._words(key, facts))

    def _words(self, key: Key, facts: CoupletFacts) -> str:
        if not key.couplets:
            return self.tr("This key has no couplets. They can also be built from the matrix.")
        parts = [self.tr("Couplets: {n}").format(n=len(key.couplets))]
        against = sum(bool(fact.wrong) for fact in facts.leads.values())
        circles = sum(fact.circles for fact in facts.leads.values())
        lost = sum(fact.lost for fact in facts.leads.values())
        for number, words in (
            (len(facts.unreached), self.tr("⚠ no lead comes to: {names}")),
            (circles, self.tr("⚠ leads in a circle: {n}")),
            (lost, self.tr("⚠ leads to a couplet that is not there: {n}")),
            (against, self.tr("⚠ leads against the scores: {n}")),
            (len(facts.forgotten), self.tr("⚠ taxa no lead ends in: {n}")),
        ):
            if number:
                names = ", ".join(sorted(facts.unreached)[:6])
                parts.append(words.format(n=number, names=names))
        if len(parts) == 1:
            parts.append(self.tr("✓ every lead agrees with the scores"))
        return " · ".join(parts)

    def _view_words(self, view: View) -> str:
        return {View.GRAPH: self.tr("Graph"), View.TEXT: self.tr("Text")}[view]

    @Slot()
    def _on_clicked(self) -> None:
        self.asked.emit(self.sender().objectName())
