"""A small map of the couplets, with the way walked."""

from collections.abc import Mapping

import networkx as nx
from PySide6.QtCore import QLineF, QPointF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.bench.session import Session
from idkey.app.parts.desk import Desk
from idkey.engine import walk

Places = Mapping[str, tuple[float, float]]


def places(drawn: "nx.DiGraph[str]") -> Places:
    """Where each node stands, x and y from 0 to 1: depth downwards, order of leads across.

    A cyclic graph has no depth; it gives no places.
    """
    if not nx.is_directed_acyclic_graph(drawn):
        return {}
    rows = [sorted(row, key=list(drawn.nodes).index) for row in nx.topological_generations(drawn)]
    depth = max(len(rows) - 1, 1)
    found = {}
    for y, row in enumerate(rows):
        for x, node in enumerate(row):
            found[node] = ((x + 0.5) / len(row), y / depth)
    return found


class CoupletMap(QWidget):
    """Couplets as dots, ends as squares, the way walked as a thick line.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._theme = desk.theme
        self._drawn: nx.DiGraph[str] = nx.DiGraph()
        self._places: Places = {}
        self._walked: frozenset[tuple[str, str]] = frozenset()
        self._here: frozenset[str] = frozenset()
        self._key: object = None
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Map of the couplets"))

    def show_session(self, session: Session) -> None:
        """Show the couplets of a key and the way of a case."""
        if session.key is not self._key:
            self._key = session.key
            self._drawn = walk.graph(session.key.couplets)
            self._places = places(self._drawn)
        self._here = frozenset(couplet.id for couplet in walk.here(session.key, session.case))
        walked = set()
        for step in session.case.walk:
            couplet = session.key.couplet.get(step.couplet)
            for number in step.leads if couplet else ():
                lead = couplet.leads[number] if couplet else None
                for goal in ((lead.to,) if lead.to else lead.taxa) if lead else ():
                    walked.add((step.couplet, goal))
        self._walked = frozenset(walked)
        steps = len(session.case.walk)
        self.setAccessibleDescription(self.tr("%n step(s) taken", "", steps))
        self.update()

    def sizeHint(self) -> QSize:
        """A narrow column."""
        return QSize(self._theme.px(150), self._theme.px(160))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the map."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = self._theme.colour
        for one, other in self._drawn.edges:
            if one in self._places and other in self._places:
                walked = (one, other) in self._walked
                painter.setPen(QPen(colour("accent" if walked else "line"), 3 if walked else 1))
                painter.drawLine(QLineF(self._point(one), self._point(other)))
        reached = {goal for _, goal in self._walked} | {start for start, _ in self._walked}
        for node in self._places:
            self._draw_node(painter, node, walked=node in reached)
        painter.end()

    def _draw_node(self, painter: QPainter, node: str, *, walked: bool) -> None:
        colour, place = self._theme.colour, self._point(node)
        size = 4.5 if walked else 2.5
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour("accent" if walked else "outline"))
        if self._drawn.nodes[node].get("couplet"):
            painter.drawEllipse(place, size, size)
        else:
            painter.drawRect(
                int(place.x() - size), int(place.y() - size), int(2 * size), int(2 * size)
            )
        if node in self._here:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(colour("ink"), 2))
            painter.drawEllipse(place, 7, 7)

    def _point(self, node: str) -> QPointF:
        x, y = self._places[node]
        room = 10
        if self.isRightToLeft():
            x = 1 - x
        return QPointF(room + x * (self.width() - 2 * room), room + y * (self.height() - 2 * room))
