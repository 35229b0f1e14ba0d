"""Couplets as a graph: chosen with mouse or keys, led elsewhere by dragging a lead."""

from PySide6.QtCore import QPoint, QPointF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QWheelEvent
from PySide6.QtWidgets import QGraphicsScene, QGraphicsView

from idkey.app.parts.desk import Desk
from idkey.app.parts.tips import tip
from idkey.app.workshop.couplet_cards import (
    CARD,
    END,
    Card,
    CardItem,
    Ending,
    EndItem,
    LeadLine,
    place_of,
)
from idkey.app.workshop.couplet_facts import CoupletFacts, LeadPlace
from idkey.app.workshop.couplet_layout import couplet, layout
from idkey.app.workshop.couplet_text import letter
from idkey.model.couplet import Lead
from idkey.model.key import Key
from idkey.report.names import name_of

NEAREST, FARTHEST = 1.6, 0.22
"""How far the sheet can be brought near and moved away."""

DRAG = 8
"""Pixels after which a press becomes a drag."""


class CoupletGraph(QGraphicsView):
    """The couplets as cards and lines.

    Args:
        desk: Look, drawings, language.

    Signals:
        picked(couplet: str, lead: int): A lead was chosen, or with -1 a couplet.
        led(couplet: str, lead: int, goal: str): A lead was dragged onto another couplet.
        remove_asked(): What is chosen is to go.
        edit_asked(): What is chosen is to be edited in the form.
    """

    picked = Signal(str, int)
    led = Signal(str, int, str)
    remove_asked = Signal()
    edit_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._theme = desk.theme
        self._key: Key | None = None
        self._order: tuple[LeadPlace, ...] = ()
        self._chosen: LeadPlace | None = None
        self._drawn: object = None
        self._pressed: tuple[QPoint, LeadPlace] | None = None
        self._rubber: LeadLine | None = None
        self.cards: dict[str, CardItem] = {}
        self.sheet = QGraphicsScene(self)
        self.setScene(self.sheet)
        self.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.setAccessibleName(self.tr("Couplets as a graph"))
        self.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setBackgroundBrush(desk.theme.colour("ground"))
        self.setToolTip(
            self.tr(
                "Drag a lead onto another couplet to lead it there. Arrows move, Delete removes."
            )
        )

    def show_key(
        self, key: Key, facts: CoupletFacts, wrong: frozenset[str], *, chosen: LeadPlace | None
    ) -> None:
        """Show the couplets of a key.

        Args:
            key: The key.
            facts: How its couplets stand.
            wrong: Ids of couplets with mistakes.
            chosen: The lead that is chosen, or with -1 the couplet.
        """
        names = tuple((taxon.name, taxon.dangerous) for taxon in key.taxa)
        drawn = (key.couplets, facts, wrong, names, chosen)
        if drawn == self._drawn:
            return
        moved = chosen != self._chosen
        self._drawn, self._key, self._chosen = drawn, key, chosen
        self._order = tuple((one.id, n) for one in key.couplets for n in range(-1, len(one.leads)))
        self._draw(key, facts, wrong)
        if moved and chosen is not None and chosen[0] in self.cards:
            self.ensureVisible(self.cards[chosen[0]], 30, 30)
        self.setAccessibleDescription(self._words(key))

    def fit(self) -> None:
        """Show the whole sheet."""
        self.fitInView(self.sheet.sceneRect(), Qt.AspectRatioMode.KeepAspectRatio)
        if self.transform().m11() > 1:
            self.resetTransform()
        elif self.transform().m11() < FARTHEST:
            self.resetTransform()
            self.scale(FARTHEST, FARTHEST)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move between leads, follow them, remove, edit."""
        keys = Qt.Key
        step = {keys.Key_Up: -1, keys.Key_Down: 1}.get(keys(event.key()))
        if step is not None:
            self._step(step)
        elif event.key() == (keys.Key_Left if self._theme.mirrored else keys.Key_Right):
            self._follow()
        elif event.key() in (keys.Key_Left, keys.Key_Right):
            self._go_back()
        elif event.key() == keys.Key_Delete:
            self.remove_asked.emit()
        elif event.key() in (keys.Key_Return, keys.Key_Enter):
            self.edit_asked.emit()
        elif event.key() in (keys.Key_Plus, keys.Key_Minus):
            self._zoom(1.2 if event.key() == keys.Key_Plus else 1 / 1.2)
        elif event.key() == keys.Key_0:
            self.fit()
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """With Ctrl it brings the sheet near."""
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._zoom(1.15 if event.angleDelta().y() > 0 else 1 / 1.15)
        else:
            super().wheelEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose what is pressed."""
        place = self.place_at(event.position().toPoint())
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        if place is not None and event.button() is Qt.MouseButton.LeftButton:
            self._pressed = (event.position().toPoint(), place)
            self.picked.emit(*place)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Draw the lead that is being dragged."""
        if self._pressed is None or self._pressed[1][1] < 0:
            return
        here = event.position().toPoint()
        if self._rubber is None and (here - self._pressed[0]).manhattanLength() < DRAG:
            return
        name, lead = self._pressed[1]
        if name not in self.cards:
            return
        card = self.cards[name]
        start = card.mapToScene(card.port(lead))
        self._drop_rubber()
        self._rubber = LeadLine(start, self.mapToScene(here), self._theme, tone="accent")
        self._rubber.setZValue(1)
        self.sheet.addItem(self._rubber)
        goal = self._goal_at(here)
        for other in self.cards.values():
            target = goal == other.card.id
            if other.target != target:
                other.target = target
                other.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Lead it to where it is dropped."""
        pressed, dragged = self._pressed, self._rubber is not None
        self._pressed = None
        self._drop_rubber()
        goal = self._goal_at(event.position().toPoint())
        for card in self.cards.values():
            card.target = False
            card.update()
        if pressed is not None and dragged and goal and goal != pressed[1][0]:
            self.led.emit(*pressed[1], goal)

    def place_at(self, point: QPoint) -> LeadPlace | None:
        """The lead or couplet at a point of the view; of an end the lead that ends there."""
        for item in self.items(point):
            if isinstance(item, CardItem):
                y = item.mapFromScene(self.mapToScene(point)).y()
                return item.card.id, item.row_at(y)
            if isinstance(item, EndItem):
                return self._ends[item]
        return None

    def point_of(self, name: str, lead: int) -> QPoint:
        """Where in the view the row of a lead is; -1 for the head of the couplet."""
        card = self.cards[name]
        middle = card.port(lead) - QPointF(card.frame().width() / 2, 0)
        return self.mapFromScene(card.mapToScene(middle))

    def _goal_at(self, point: QPoint) -> str:
        cards = (item.card.id for item in self.items(point) if isinstance(item, CardItem))
        return next(cards, "")

    def _drop_rubber(self) -> None:
        if self._rubber is not None:
            self.sheet.removeItem(self._rubber)
            self._rubber = None

    def _draw(self, key: Key, facts: CoupletFacts, wrong: frozenset[str]) -> None:
        self.sheet.clear()
        self._rubber, self.cards = None, {}
        self._ends: dict[EndItem, LeadPlace] = {}
        spots = layout(key.couplets)
        for one in key.couplets:
            chosen = self._chosen
            card = CardItem(
                Card(
                    id=one.id,
                    leads=tuple((letter(n), lead.statement) for n, lead in enumerate(one.leads)),
                    facts=tuple(facts.leads.get((one.id, n)) for n in range(len(one.leads))),
                    chosen=chosen[1] if chosen is not None and chosen[0] == one.id else None,
                    reached=one.id not in facts.unreached,
                    wrong=one.id in wrong,
                ),
                self._theme,
            )
            spot = spots[couplet(one.id)]
            card.setPos(place_of(spot, CARD, self._theme))
            card.setToolTip(tip("\n".join(f"{mark}  {words}" for mark, words in card.card.leads)))
            self.cards[one.id] = card
            self.sheet.addItem(card)
        for one in key.couplets:
            for number, lead in enumerate(one.leads):
                end = spots.get((one.id, number))
                at = place_of(end, END, self._theme) if end else None
                self._draw_lead(key, (one.id, number), lead, at=at, facts=facts)
        self.sheet.setSceneRect(self.sheet.itemsBoundingRect().adjusted(-12, -12, 12, 12))

    def _draw_lead(
        self, key: Key, place: LeadPlace, lead: Lead, *, at: QPointF | None, facts: CoupletFacts
    ) -> None:
        card, chosen = self.cards[place[0]], place == self._chosen
        if at is not None:
            known = [key.taxon[taxon] for taxon in lead.taxa if taxon in key.taxon]
            names = tuple(taxon.name for taxon in known) or lead.taxa
            danger = any(taxon.dangerous for taxon in known)
            item = EndItem(Ending(names=names, dangerous=danger, chosen=chosen), self._theme)
            item.setPos(at)
            self._ends[item] = place
            self.sheet.addItem(item)
            goal = item.mapToScene(item.entry())
        elif lead.to in self.cards:
            target = self.cards[lead.to]
            goal = target.mapToScene(target.entry())
        else:
            return
        fact = facts.leads.get(place)
        tone = "accent" if chosen else "doubt" if fact is not None and fact.circles else "outline"
        start = card.mapToScene(card.port(place[1]))
        self.sheet.addItem(LeadLine(start, goal, self._theme, tone=tone))

    def _step(self, steps: int) -> None:
        if self._order:
            here = self._order.index(self._chosen) if self._chosen in self._order else -steps
            there = min(max(here + steps, 0), len(self._order) - 1)
            self.picked.emit(*self._order[there])

    def _follow(self) -> None:
        lead = self._lead()
        if lead is not None and lead.to in self.cards:
            self.picked.emit(lead.to, -1)
        elif self._chosen is not None and self._chosen[1] < 0:
            self.picked.emit(self._chosen[0], 0)

    def _go_back(self) -> None:
        if self._key is None or self._chosen is None:
            return
        if self._chosen[1] >= 0:
            self.picked.emit(self._chosen[0], -1)
            return
        for one in self._key.couplets:
            for number, lead in enumerate(one.leads):
                if lead.to == self._chosen[0]:
                    self.picked.emit(one.id, number)
                    return

    def _lead(self) -> Lead | None:
        if self._key is None or self._chosen is None or self._chosen[1] < 0:
            return None
        found = self._key.couplet.get(self._chosen[0])
        return found.leads[self._chosen[1]] if found else None

    def _zoom(self, times: float) -> None:
        if FARTHEST <= self.transform().m11() * times <= NEAREST:
            self.scale(times, times)

    def _words(self, key: Key) -> str:
        """What is chosen, in words, for readers that speak."""
        lead = self._lead()
        if lead is None or self._chosen is None:
            return self._chosen[0] if self._chosen else ""
        names = ", ".join(name_of(key, taxon) for taxon in lead.taxa)
        name = f"{self._chosen[0]} {letter(self._chosen[1])}"
        return f"{name}. {lead.statement} → {lead.to or names}"
