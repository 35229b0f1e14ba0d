"""What the screens of the drill show, as one value."""

from dataclasses import dataclass, field
from enum import StrEnum
from pathlib import Path

from idkey.app.drill.plan import Everybody, Plan, Report, Wish
from idkey.drill.beginning import Run
from idkey.model.key import Key
from idkey.store.drill_log import Trial


class Place(StrEnum):
    """Where in the drill one is."""

    START = "start"
    EXERCISE = "exercise"
    PROGRESS = "progress"
    PEOPLE = "people"


@dataclass(frozen=True, kw_only=True)
class Drill:
    """Everything the screens show.

    Attributes:
        key: The key.
        person: Initials or alias; empty for nobody yet.
        place: Where one is.
        busy: Whether something is being laid out.
        plan: What is to be done; None while it is laid out for the first time.
        trials: The person's trials with the key, those of now included.
        sitting: Trials since the exercise was begun.
        wish: What is practised.
        run: The exercise under way; None between two.
        subject: Whom the report is about.
        report: What they have shown; None until it was asked for.
        everybody: What a supervisor sees; None until it was asked for.
        problem: What went wrong last; None when nothing did.
        written: Where the last attestation went; None when there is none.
    """

    key: Key
    person: str = ""
    place: Place = Place.START
    busy: bool = False
    plan: Plan | None = None
    trials: tuple[Trial, ...] = ()
    sitting: tuple[Trial, ...] = ()
    wish: Wish = field(default_factory=Wish)
    run: Run | None = None
    subject: str = ""
    report: Report | None = None
    everybody: Everybody | None = None
    problem: BaseException | None = None
    written: Path | None = None
