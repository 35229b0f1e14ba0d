"""From an exercise that is done to the trial that is kept."""

from collections.abc import Sequence
from datetime import UTC, datetime

from idkey.drill.beginning import Run
from idkey.drill.casework import RunCase
from idkey.drill.exercises import TellPair
from idkey.drill.rating import rating_of
from idkey.store.drill_log import Trial


def trial_of(run: Run, person: str, before: Sequence[Trial], *, at: datetime, millis: int) -> Trial:
    """The trial of an exercise that is done.

    Args:
        run: The exercise.
        person: Initials or alias.
        before: The person's earlier trials, oldest first.
        at: When it was answered, aware of its zone.
        millis: Time from picture to answer, in milliseconds.

    Raises:
        ValueError: It is not done yet.
    """
    if not run.done:
        raise ValueError("an exercise is kept when it is done")
    exercise = run.item.exercise
    rating = rating_of(
        before, exercise, run.item.name, correct=run.correct, slips=run.slips, millis=millis
    )
    pair = run if isinstance(run, TellPair) else None
    return Trial(
        person=person,
        at=at.astimezone(UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z"),
        key=run.key.id,
        key_version=run.key.version,
        key_digest=run.key.digest,
        exercise=exercise,
        item=run.item.name,
        seed=run.individual.seed,
        correct=run.correct,
        millis=millis,
        rating=int(rating),
        taxon=run.individual.animal.taxon,
        said=pair.said if pair else "",
        pair=pair.pair if pair else (),
        first_look=pair.first_look if pair else "",
        sightings=run.sightings,
        case=run.marks if isinstance(run, RunCase) else None,
    )
