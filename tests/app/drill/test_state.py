"""The drill keeps every answer at once, plans from the log, and never blocks the window."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from idkey import places
from idkey.app.drill.now import Place
from idkey.app.drill.state import DrillState
from idkey.app.parts.key_library import KeyLibrary
from idkey.drill.casework import RunCase
from idkey.drill.conclusion import Conclusion
from idkey.drill.exercises import NameState, TellPair
from idkey.drill.item import pair_item
from idkey.engine.result import VerdictKind
from idkey.report.attestation import ThinEvidence
from idkey.store.book import Store
from idkey.store.drill_log import Exercise, put_trial, trials_of
from tests.drill.learners import Learner

NOW = datetime(2025, 11, 30, 9, 0, tzinfo=UTC)
FIRM = pair_item("heterometrus_spinifer", "pandinus_imperator", "manus_surface")


class Clock:
    """A clock one sets."""

    def __init__(self) -> None:
        self.at, self.seconds = NOW, 100.0

    def now(self) -> datetime:
        return self.at

    def ticks(self) -> float:
        return self.seconds

    def passes(self, seconds: float) -> None:
        self.seconds += seconds
        self.at += timedelta(seconds=seconds)


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def drill(qtbot, store: Store, keys: KeyLibrary, tmp_path: Path, clock: Clock):
    assert qtbot is not None  # the state lives on the event loop of the application
    made = DrillState(
        store,
        keys,
        images=places.images_folder(),
        attestations=tmp_path / "papers",
        now=clock.now,
        ticks=clock.ticks,
    )
    yield made
    made.close()


@pytest.fixture
def settles(qtbot, drill: DrillState):
    """Waits until nothing is under way."""

    def wait() -> None:
        qtbot.waitUntil(lambda: not drill.busy and not drill.drill.busy, timeout=30_000)

    return wait


@pytest.fixture
def begun(drill: DrillState, settles) -> DrillState:
    """RB is at the start with nothing answered yet."""
    drill.open()
    settles()
    drill.choose_person("RB")
    settles()
    return drill


def test_nobody_practises_until_somebody_says_so(drill: DrillState, settles):
    drill.open()
    settles()
    drill.start(Exercise.STATE)

    assert drill.drill.person == ""
    assert drill.drill.place is Place.START


def test_who_practised_last_is_remembered(begun: DrillState, store: Store):
    assert store.setting("drill_person") == "RB"
    assert begun.drill.plan.agenda.fresh


def test_an_answer_is_in_the_book_with_its_time_and_rating(
    begun: DrillState, settles, store: Store, clock: Clock
):
    begun.start(Exercise.STATE)
    settles()
    run = begun.drill.run
    assert isinstance(run, NameState)
    clock.passes(4.2)
    begun.apply(run.say(run.truth))
    settles()
    (kept,) = trials_of(store, "RB")

    assert (kept.correct, kept.millis, kept.rating) == (True, 4200, 3)
    assert kept.at == "2025-11-30T09:00:04.200Z"
    assert begun.drill.sitting == begun.drill.trials != ()


def test_what_is_not_answered_is_not_kept(begun: DrillState, settles, store: Store):
    begun.start(Exercise.PAIR)
    settles()
    run = begun.drill.run
    assert isinstance(run, TellPair)
    begun.apply(run.look(run.choices[0]))
    begun.leave_exercise()
    settles()

    assert trials_of(store) == ()
    assert begun.drill.place is Place.START


def test_the_first_answer_stands_at_the_screen_too(begun: DrillState, settles, store: Store):
    begun.start(Exercise.STATE)
    settles()
    run = begun.drill.run
    done = run.say(None)
    begun.apply(done)
    begun.apply(run.say(run.truth))
    settles()

    assert begun.drill.run is done
    assert len(trials_of(store)) == 1


def test_going_on_brings_another_item_and_a_wrong_one_comes_back(begun: DrillState, settles):
    begun.start(Exercise.STATE)
    settles()
    first = begun.drill.run.item
    begun.apply(begun.drill.run.say(None))
    begun.go_on()
    settles()
    second = begun.drill.run.item
    met = set()
    for _ in range(12):
        begun.apply(begun.drill.run.say(begun.drill.run.truth))
        begun.go_on()
        settles()
        if begun.drill.run is None:
            break
        met.add(begun.drill.run.item)

    assert second != first
    assert first in met, "what was wrong is seen again in the same sitting"


def test_a_case_is_laid_out_and_kept_with_its_marks(begun: DrillState, settles, store: Store):
    begun.start(Exercise.CASE)
    settles()
    run = begun.drill.run
    assert isinstance(run, RunCase)
    begun.apply(run.conclude(Conclusion(verdict=VerdictKind.OPEN, hazard=True, permit=True)))
    settles()
    (kept,) = trials_of(store)

    assert kept.case is not None
    assert kept.case.findings == 0
    assert kept.correct is False


def test_another_key_has_another_deck(begun: DrillState, settles):
    begun.choose_key("kitchen-leaves")
    settles()

    assert begun.drill.key.id == "kitchen-leaves"
    assert begun.drill.person == "RB"
    assert begun.drill.plan.bench.key.id == "kitchen-leaves"


def test_everybody_and_one_person_can_be_looked_at_without_practising_as_them(
    begun: DrillState, settles, store: Store
):
    learner = Learner(name="AK")
    for trial in learner.works_through(begun.drill.plan.bench, [FIRM], times=6):
        put_trial(store, trial)
    begun.open_people()
    settles()
    begun.open_progress("AK")
    settles()

    assert [one.person for one in begun.drill.everybody.standings] == ["AK"]
    assert begun.drill.report.trials == 6
    assert (begun.drill.subject, begun.drill.person) == ("AK", "RB")


def test_thin_evidence_becomes_a_message_and_firm_evidence_a_paper(
    begun: DrillState, settles, store: Store
):
    learner = Learner(name="AK")
    for trial in learner.works_through(begun.drill.plan.bench, [FIRM], times=35):
        put_trial(store, trial)
    begun.attest("RB")
    settles()
    refused = begun.drill.problem
    begun.attest("AK")
    settles()

    assert isinstance(refused, ThinEvidence)
    assert begun.drill.problem is None
    assert begun.drill.written.name == "attestation-AK-2025-11-30.pdf"
    assert begun.drill.written.read_bytes().startswith(b"%PDF")


def test_an_answer_that_could_not_be_written_is_written_with_the_next(
    qtbot, keys: KeyLibrary, tmp_path: Path
):
    with Store.open(tmp_path / "shared.sqlite", wait_seconds=0.1) as store:
        drill = DrillState(store, keys, images=places.images_folder(), attestations=tmp_path)

        def settles() -> None:
            qtbot.waitUntil(lambda: not drill.busy and not drill.drill.busy, timeout=30_000)

        drill.open()
        settles()
        drill.choose_person("RB")
        settles()
        drill.start(Exercise.STATE)
        settles()
        with store.database.writes():  # somebody else holds the book
            drill.apply(drill.drill.run.say(None))
            settles()
            problem = drill.drill.problem
        drill.go_on()
        settles()
        drill.apply(drill.drill.run.say(None))
        settles()
        numbers = [trial.number for trial in trials_of(store, "RB")]
        drill.close()

    assert "in use by another program" in problem.problem
    assert numbers == [1, 2]
