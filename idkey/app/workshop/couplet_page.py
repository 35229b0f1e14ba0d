"""The page of the couplets: as a graph and as text, with a form for the lead that is chosen."""

from dataclasses import replace

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QStackedWidget, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import HUGE
from idkey.app.parts.scrolling import scrolled
from idkey.app.workshop.couplet_bar import CoupletBar, View
from idkey.app.workshop.couplet_deeds import deed_words, done
from idkey.app.workshop.couplet_edit import (
    led_to,
    taxa_below,
    with_lead,
    without_couplet,
    without_lead,
)
from idkey.app.workshop.couplet_facts import CoupletFacts, LeadPlace, couplet_facts
from idkey.app.workshop.couplet_graph import CoupletGraph
from idkey.app.workshop.couplet_lead_form import LeadForm
from idkey.app.workshop.couplet_text import letter
from idkey.app.workshop.couplet_text_view import CoupletText
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields
from idkey.app.workshop.forms_entries import EntryKind, put
from idkey.app.workshop.forms_form import Form, with_value
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.forms_problems import place_of, problems_of
from idkey.app.workshop.forms_references import renamed
from idkey.app.workshop.forms_values import weakly
from idkey.app.workshop.state import WorkshopState
from idkey.formats.problem import Problem
from idkey.model.couplet import Couplet, Lead
from idkey.model.key import Key

SIDE_BY_SIDE = 820
"""Width from which the form stands beside the graph, in pixels at 100 % text."""


class CoupletPage(LivePage):
    """Couplets as a graph and as text.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self.desk = desk
        self.chosen: LeadPlace | None = None
        self._facts: tuple[Key | None, CoupletFacts] = (None, CoupletFacts())
        fields = Fields(state, desk)
        self.bar = CoupletBar(desk)
        self.graph = CoupletGraph(desk)
        self.text = CoupletText(state, desk)
        self.form = LeadForm(fields, desk, weakly(self.below, ()))
        self.head = Form(desk.theme)
        self.head.add(
            {
                "id": fields.id(self.tr("Number of the couplet"), self._own, self._ids),
                "note": fields.prose(self.tr("How to look at this couplet, or a caution")),
            }
        )
        self.stack = QStackedWidget()
        self.side = self._made_side()
        self.split = QSplitter()
        self._lay_out()
        self._connect()
        self.follow()

    def below(self, name: str) -> tuple[str, ...]:
        """Taxa a couplet can lead to."""
        return taxa_below(self.key.couplets, name)

    @property
    def couplet(self) -> Couplet | None:
        """The couplet that is chosen, or whose lead is."""
        return self.key.couplet.get(self.chosen[0]) if self.chosen else None

    @property
    def lead(self) -> Lead | None:
        """The lead that is chosen; None for a whole couplet."""
        one = self.couplet
        if one is None or self.chosen is None or self.chosen[1] < 0:
            return None
        return one.leads[self.chosen[1]]

    def draw(self, editing: Editing) -> None:
        """Show the couplets of the key on the table."""
        key = editing.key
        self._keep_chosen(key)
        problems = problems_of(editing, EntryKind.COUPLET)
        if key is not self._facts[0]:
            self._facts = (key, couplet_facts(key))
        facts = self._facts[1]
        self.graph.show_key(key, facts, frozenset(problems), chosen=self.chosen)
        self.text.show_editing(editing)
        self.bar.show_facts(key, facts, chosen=self.chosen)
        self.side.setVisible(self.chosen is not None and self.bar.view is View.GRAPH)
        one, lead = self.couplet, self.lead
        if one is None or self.chosen is None:
            return
        owner = f"{editing.folder}/couplets/{one.id}"
        self.head.show_entry(one, owner)
        own = problems.get(one.id, {})
        self.head.show_problems({p: w for p, w in own.items() if not p.startswith("leads.")})
        self.form.setVisible(lead is not None)
        self.title.setText(self._title())
        if lead is not None:
            number = self.chosen[1]
            start = f"leads.{number}."
            self.form.show_lead(editing, lead, one.id, owner=f"{owner}/{number}")
            self.form.say_facts(key, facts.leads.get(self.chosen))
            inside = {p.removeprefix(start): w for p, w in own.items() if p.startswith(start)}
            self.form.say_problems(inside)

    def choose(self, couplet: str, lead: int = -1) -> None:
        """Choose a lead, or a whole couplet with -1."""
        self.flush()
        self.chosen = (couplet, lead)
        self.redraw()

    def show_place(self, place: object) -> None:
        """Go to the couplet and the lead of a mistake or a remark."""
        self.fresh()
        self.bar.show_view(View.GRAPH)
        if isinstance(place, Problem):
            found = place_of(self.key, place)
            if found is None or found[0] is not EntryKind.COUPLET:
                return
            steps = found[2].split(".")
            inside = steps[0] == "leads" and len(steps) > 1
            self.choose(found[1], int(steps[1]) if inside else -1)
            self.form.reach(".".join(steps[2:])) if inside else self.head.reach(found[2])
            return
        about = getattr(place, "about", ())
        if about and about[0] in self.key.couplet:
            self.choose(about[0], int(about[1]) - 1 if len(about) > 1 else -1)
        self.focus_first()

    def focus_first(self) -> None:
        """Put the focus into the graph or the text."""
        view = self.graph if self.bar.view is View.GRAPH else self.text.text
        view.setFocus(Qt.FocusReason.OtherFocusReason)

    def flush(self) -> None:
        """Make what was typed a step."""
        if self.state.editing is not None:
            self.form.flush()
            self.head.flush()
            self.text.flush()

    def close_work(self) -> None:
        """Make what was typed a step, or keep it until it can be read."""
        self.flush()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the form beside the graph, or below it."""
        wide = self.width() >= self.desk.theme.px(SIDE_BY_SIDE)
        self.split.setOrientation(Qt.Orientation.Horizontal if wide else Qt.Orientation.Vertical)
        super().resizeEvent(event)

    def _made_side(self) -> QWidget:
        self.title = caption(rank="lead")
        frame = QWidget()
        column = QVBoxLayout(frame)
        column.setContentsMargins(6, 0, 0, 0)
        column.addWidget(self.title)
        column.addWidget(self.form)
        column.addWidget(self.head)
        column.addStretch(1)
        return scrolled(frame)

    def _lay_out(self) -> None:
        self.stack.addWidget(self.graph)
        self.stack.addWidget(self.text)
        self.split.addWidget(self.stack)
        self.split.addWidget(self.side)
        px = self.desk.theme.px
        self.side.setMinimumSize(min(px(280), 380), 110)
        self.graph.setMinimumHeight(70)
        self.split.setStretchFactor(0, 3)
        self.split.setStretchFactor(1, 2)
        self.split.setSizes([px(600), px(340)])
        self.split.setChildrenCollapsible(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        bar = scrolled(self.bar) if self.desk.theme.scale >= HUGE else self.bar
        if bar is not self.bar:
            bar.setMaximumHeight(px(80))
        column.addWidget(bar)
        column.addWidget(self.split, 1)

    def _connect(self) -> None:
        self.bar.view_chosen.connect(self._on_view_chosen)
        self.bar.asked.connect(self._on_bar_asked)
        self.graph.picked.connect(self.choose)
        self.graph.led.connect(self._on_graph_led)
        self.graph.remove_asked.connect(self.remove)
        self.graph.edit_asked.connect(self._on_graph_edit_asked)
        self.form.changed.connect(self._on_form_changed)
        self.head.edited.connect(self._on_head_edited)

    def _keep_chosen(self, key: Key) -> None:
        """What is chosen, or what is nearest to it now."""
        if not key.couplets:
            self.chosen = None
            return
        name, number = self.chosen or (key.couplets[0].id, 0)
        one = key.couplet.get(name, key.couplets[0])
        self.chosen = (one.id, min(number, len(one.leads) - 1) if one.id == name else -1)

    def _title(self) -> str:
        name, number = self.chosen or ("", -1)
        if number < 0:
            return self.tr("Couplet {name}").format(name=name)
        return self.tr("Lead {name}").format(name=f"{name} {letter(number)}")

    def _own(self) -> str:
        return self.chosen[0] if self.chosen else ""

    def _ids(self) -> tuple[str, ...]:
        return tuple(one.id for one in self.key.couplets)

    def change(self, couplets: tuple[Couplet, ...], words: str) -> None:
        """Make a step with other couplets."""
        self.state.change(replace(self.key, couplets=couplets), words)

    @Slot()
    def remove(self) -> None:
        """Remove the lead or the couplet that is chosen; it can be taken back."""
        self.flush()
        if self.chosen is None:
            return
        name, number = self.chosen
        words = self.tr("Remove: {what}").format(what=self._title())
        if number < 0:
            self.change(without_couplet(self.key.couplets, name), words)
        else:
            self.change(without_lead(self.key.couplets, name, number), words)

    @Slot(str)
    def _on_bar_asked(self, what: str) -> None:
        self.flush()
        if what == "fit":
            self.graph.fit()
        elif what == "remove":
            self.remove()
        else:
            title = self._title() if self.chosen else ""
            new = self.tr("What the animal shows")
            couplets, self.chosen = done(self.key, what, self.chosen, words=new)
            self.change(couplets, deed_words(what, title))

    @Slot(object)
    def _on_view_chosen(self, view: View) -> None:
        self.flush()
        self.stack.setCurrentIndex(int(view is View.TEXT))
        self.redraw()
        if view is View.TEXT and self.chosen is not None:
            name, number = self.chosen
            start = f"{name} {letter(max(number, 0))}."
            if line := self.text.line_of(start):
                self.text.go_to(line)

    @Slot(str, int, str)
    def _on_graph_led(self, name: str, number: int, goal: str) -> None:
        words = self.tr("{what} goes on to {goal}").format(what=self._title(), goal=goal)
        self.change(led_to(self.key.couplets, name, number, goal=goal), words)

    @Slot()
    def _on_graph_edit_asked(self) -> None:
        (self.form if self.lead is not None else self.head).focus_first()

    @Slot(object)
    def _on_form_changed(self, lead: Lead) -> None:
        if self.chosen is not None and self.lead is not None:
            words = self.tr("Words of {what}").format(what=self._title())
            self.change(with_lead(self.key.couplets, *self.chosen, lead=lead), words)

    @Slot(str, object)
    def _on_head_edited(self, path: str, value: object) -> None:
        one = self.couplet
        if one is None or self.chosen is None:
            return
        words = self.tr("Words of couplet {name}").format(name=one.id)
        if path == "id":
            self.chosen = (str(value), self.chosen[1])
            key = renamed(self.key, EntryKind.COUPLET, one.id, str(value))
        else:
            key = put(self.key, EntryKind.COUPLET, with_value(one, path, value))
        self.state.change(key, words)
