"""What each finding changed."""

from dataclasses import replace

import numpy as np

from idkey.engine.entropy import entropy_bits
from idkey.engine.evidence import usable
from idkey.engine.matrix import Matrix
from idkey.engine.result import Effect
from idkey.engine.weighing import Prior, weigh
from idkey.model.case import Case


def effects(matrix: Matrix, case: Case, prior: Prior | None = None) -> tuple[Effect, ...]:
    """What each finding changed, against the case without it.

    Returns:
        One effect per finding, in the order of the findings; zero for those that say nothing.
    """
    used = prior if case.use_prior else None
    whole = weigh(matrix, case, used)
    left = entropy_bits(whole.support)
    found = []
    for finding in case.findings:
        if not usable(matrix, finding):
            support = float(whole.support[whole.leader])
            found.append(
                Effect(
                    character=finding.character, ruled_out=(), gain_bits=0.0, leader_support=support
                )
            )
            continue
        rest = tuple(f for f in case.findings if f is not finding)
        without = weigh(matrix, replace(case, findings=rest), used)
        rows = np.flatnonzero(whole.ruled_out & ~without.ruled_out)
        found.append(
            Effect(
                character=finding.character,
                ruled_out=tuple(matrix.taxa[row] for row in rows),
                gain_bits=entropy_bits(without.support) - left,
                leader_support=float(without.support[whole.leader]),
            )
        )
    return tuple(found)
