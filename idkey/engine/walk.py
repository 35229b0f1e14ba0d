"""Walking a case by couplets; every lead taken becomes findings."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

import networkx as nx

from idkey.model.case import Case, Finding, Step
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key


@dataclass(frozen=True, slots=True)
class End:
    """Where a branch of a walk ends: taxa, and what cannot be told apart there."""

    taxa: tuple[str, ...]
    remark: str = ""


def here(key: Key, case: Case) -> tuple[Couplet, ...]:
    """The couplets a walk stands at: one, several after "both could be right", none at an end."""
    return tuple(key.couplet[c] for c in _front(key, case)[0])


def ends(key: Key, case: Case) -> tuple[End, ...]:
    """The ends the walk has reached."""
    return _front(key, case)[1]


def _front(key: Key, case: Case) -> tuple[tuple[str, ...], tuple[End, ...]]:
    if not key.couplets:
        return (), ()
    open_: list[str] = [key.couplets[0].id]
    done: list[End] = []
    for step in case.walk:
        if step.couplet not in open_ or step.couplet not in key.couplet:
            continue
        open_.remove(step.couplet)
        for number in step.leads:
            lead = key.couplet[step.couplet].leads[number]
            if lead.to and lead.to not in open_:
                open_.append(lead.to)
            elif lead.taxa:
                done.append(End(lead.taxa, lead.remark))
    return tuple(open_), tuple(done)


def take(key: Key, case: Case, couplet: str, leads: tuple[int, ...]) -> Case:
    """The case after taking one lead, or several ("both could be right").

    One lead adds a finding for each character it stands for and nobody has looked at yet; a
    finding that is there stays as it was seen. Several leads add "one of these" where they
    speak of the same character.

    Args:
        key: The key.
        case: The case.
        couplet: Id of the couplet stood at.
        leads: Lead numbers from 0; at least one.

    Raises:
        ValueError: The walk does not stand at that couplet, or there is no such lead.
    """
    standing = {c.id: c for c in here(key, case)}
    if couplet not in standing:
        raise ValueError(f"the walk does not stand at couplet {couplet!r}")
    all_leads = standing[couplet].leads
    if not leads or not all(0 <= number < len(all_leads) for number in leads):
        raise ValueError(f"couplet {couplet!r} has no such lead")
    name = f"{couplet}/{'+'.join(str(n + 1) for n in leads)}"
    for sees in _common([all_leads[number] for number in leads]):
        if case.finding(sees.character) is None and (found := _finding(sees, name)):
            case = case.observe(found)
    return replace(case, walk=(*case.walk, Step(couplet=couplet, leads=leads)))


def _common(leads: list[Lead]) -> tuple[Sees, ...]:
    """What the leads say together: on each character all of them speak of, any of their states."""
    if len(leads) == 1:
        return leads[0].sees
    found = []
    for first in leads[0].sees:
        same = [s for lead in leads for s in lead.sees if s.character == first.character]
        if len(same) == len(leads) and all(s.states for s in same):
            states = tuple(dict.fromkeys(state for s in same for state in s.states))
            found.append(replace(first, states=states))
    return tuple(found)


def _finding(sees: Sees, lead: str) -> Finding | None:
    """The finding a lead stands for; a one-sided range says no number and gives none."""
    if sees.states:
        return Finding(character=sees.character, states=sees.states, lead=lead)
    if sees.low is None or sees.high is None:
        return None
    middle, half = (sees.low + sees.high) / 2, (sees.high - sees.low) / 2
    spread = half / 3**0.5
    return Finding(character=sees.character, value=middle, uncertainty=spread, lead=lead)


def back(case: Case) -> Case:
    """The case one step earlier in the walk; findings that the step alone made go with it."""
    if not case.walk:
        return case
    last = case.walk[-1]
    name = f"{last.couplet}/{'+'.join(str(n + 1) for n in last.leads)}"
    kept = tuple(f for f in case.findings if f.lead != name)
    return replace(case, walk=case.walk[:-1], findings=kept)


def decided(case: Case, couplet: Couplet) -> tuple[int, ...]:
    """Numbers of the leads that the findings allow; all of them when nothing decides."""
    allowed = tuple(n for n, lead in enumerate(couplet.leads) if not _denied(case, lead))
    return allowed or tuple(range(len(couplet.leads)))


def _denied(case: Case, lead: Lead) -> bool:
    return any(_against(case.finding(sees.character), sees) for sees in lead.sees)


def _against(finding: Finding | None, sees: Sees) -> bool:
    if finding is None or finding.unseen:
        return False
    if finding.value is not None:
        low = sees.low is not None and finding.value < sees.low
        high = sees.high is not None and finding.value > sees.high
        return low or high
    shared = set(finding.states) & set(sees.states)
    if finding.negated:
        return bool(sees.states) and set(sees.states) <= set(finding.states)
    return bool(sees.states) and not shared


def graph(couplets: tuple[Couplet, ...]) -> "nx.DiGraph[str]":
    """The couplets as a directed graph: couplet ids and taxon ids as nodes, leads as edges."""
    drawn: nx.DiGraph[str] = nx.DiGraph()
    for couplet in couplets:
        drawn.add_node(couplet.id, couplet=True)
        for number, lead in enumerate(couplet.leads):
            for goal in (lead.to,) if lead.to else lead.taxa:
                drawn.add_edge(couplet.id, goal, lead=number)
    return drawn


def reachable(couplets: tuple[Couplet, ...]) -> Mapping[str, frozenset[str]]:
    """Taxa each couplet can still lead to; raises networkx's error on a cycle."""
    ids = {couplet.id for couplet in couplets}
    found: dict[str, frozenset[str]] = {}
    drawn = graph(couplets)
    for node in reversed(list(nx.topological_sort(drawn))):
        if node in ids:
            below = (found.get(goal, frozenset([goal])) for goal in drawn.successors(node))
            found[node] = frozenset().union(*below)
    return found
