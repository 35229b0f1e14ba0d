"""Where couplets and their ends stand on the sheet: depth across, order of leads downwards."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from idkey.model.couplet import Couplet

Node = tuple[str, int]
"""A couplet as (id, -1); an end as (id, number of the lead from 0)."""


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on the sheet: column from 0, and the top of the card in units of one row."""

    column: int
    top: float


def couplet(name: str) -> Node:
    """The node of a couplet."""
    return name, -1


def height(one: Couplet) -> float:
    """Rows a couplet takes: its head and one for each lead."""
    return 1.0 + len(one.leads)


END_ROWS = 1.25
"""Rows an end takes, with the gap below it."""

GAP_ROWS = 0.75
"""Rows between two couplets of a column."""


def layout(couplets: tuple[Couplet, ...]) -> Mapping[Node, Spot]:
    """A spot for every couplet and every end.

    The start stands at the left; each couplet stands one column behind the first one that leads
    to it, at the height of what it leads to. What no lead comes to follows below.
    """
    known = {one.id: one for one in couplets}
    made = _Sheet(known)
    for one in couplets:
        if couplet(one.id) not in made.spots:
            made.grow(one.id)
    return made.spots


class _Sheet:
    def __init__(self, known: Mapping[str, Couplet]) -> None:
        self.spots: dict[Node, Spot] = {}
        self._known = known
        self._free: dict[int, float] = {}
        self._floor = 0.0

    def grow(self, start: str) -> None:
        """Place a couplet and everything below it that has no place yet."""
        seen = {start}
        todo: list[tuple[str, int, Iterator[Node], list[Node]]] = [
            (start, 0, iter(self._goals(start)), [])
        ]
        while todo:
            name, column, goals, placed = todo[-1]
            goal = next(goals, None)
            if goal is None:
                todo.pop()
                self._place(name, column, placed)
            elif goal[1] >= 0:
                placed.append(goal)
                self._set(goal, column + 1, self._next(column + 1), END_ROWS)
            elif goal[0] not in seen and goal not in self.spots:
                seen.add(goal[0])
                placed.append(goal)
                todo.append((goal[0], column + 1, iter(self._goals(goal[0])), []))
        self._floor = max(self._free.values(), default=0.0) + GAP_ROWS

    def _goals(self, name: str) -> Iterator[Node]:
        for number, lead in enumerate(self._known[name].leads):
            if lead.taxa:
                yield name, number
            elif lead.to in self._known:
                yield couplet(lead.to)

    def _place(self, name: str, column: int, placed: list[Node]) -> None:
        rows = height(self._known[name])
        top = self._next(column)
        if placed:
            first, last = self.spots[placed[0]].top, self.spots[placed[-1]].top
            top = max(top, (first + last) / 2 - rows / 2 + 0.5)
        self._set(couplet(name), column, top, rows + GAP_ROWS)

    def _next(self, column: int) -> float:
        return max(self._free.get(column, 0.0), self._floor)

    def _set(self, node: Node, column: int, top: float, rows: float) -> None:
        self.spots[node] = Spot(column, top)
        self._free[column] = top + rows
