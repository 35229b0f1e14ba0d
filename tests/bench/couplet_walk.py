"""Animals identified by the key's own couplets."""

import numpy as np

from idkey.engine import walk
from idkey.engine.matrix import Matrix
from idkey.engine.simulate import Animal, looked_at
from idkey.model.case import Case
from idkey.model.couplet import Couplet


def walked(
    matrix: Matrix, drawn: Animal, chance: np.random.Generator, *, error: float, blind: float
) -> dict[str, float]:
    """One animal walked to an end; more than three taxa at the ends count as open."""
    key = matrix.key
    case = Case(id="bench", key=key.id, specimen=matrix.specimen)
    asked = 0
    while (standing := walk.here(key, case)) and asked < 40:
        couplet = standing[0]
        for name in _characters(couplet):
            if case.finding(name) is None:
                case = case.observe(looked_at(key, drawn, name, chance, error=error, blind=blind))
                asked += 1
        case = walk.take(key, case, couplet.id, walk.decided(case, couplet))
    taxa = {taxon for end in walk.ends(key, case) for taxon in end.taxa}
    right = drawn.taxon in taxa
    named, group = len(taxa) == 1, 2 <= len(taxa) <= 3
    return {
        "asked": asked,
        "to95": float("nan"),
        "established": float(named),
        "wrong_named": float(named and not right),
        "group": float(group),
        "wrong_group": float(group and not right),
        "hazard_lost": float(not right),
        "top": 1.0,
        "best_right": float(right),
    }


def _characters(couplet: Couplet) -> list[str]:
    return list(dict.fromkeys(s.character for lead in couplet.leads for s in lead.sees))
