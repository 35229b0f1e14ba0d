"""A keeper practises with the keyboard alone, from initials to the paper."""

from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget

from idkey import places
from idkey.app.drill.now import Place
from idkey.app.drill.state import DrillState
from idkey.app.drill.view import DrillView
from idkey.app.parts.desk import Desk
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.pictures import Pictures
from idkey.app.parts.theme import Theme
from idkey.drill.beginning import Bench
from idkey.drill.casework import RunCase
from idkey.drill.conclusion import Outcome
from idkey.drill.deck import shop_shares
from idkey.drill.exercises import NEITHER, NameState, TellPair
from idkey.drill.item import pair_item
from idkey.model.key import Key
from idkey.report.language import ENGLISH
from idkey.store.book import Store
from idkey.store.drill_log import Exercise, put_trial, trials_of
from tests.drill.learners import Learner

K = Qt.Key
FIRM = pair_item("heterometrus_spinifer", "pandinus_imperator", "manus_surface")


class Trainee:
    """Somebody at the keyboard."""

    def __init__(self, qtbot, state: DrillState, view: DrillView) -> None:
        self.qtbot, self.state, self.view = qtbot, state, view

    @property
    def run(self):
        return self.state.drill.run

    def presses(self, key: Qt.Key, modifier=Qt.KeyboardModifier.NoModifier) -> None:
        self.qtbot.keyClick(self._focus(), key, modifier)
        self.settles()

    def types(self, text: str) -> None:
        self.qtbot.keyClicks(self._focus(), text)

    def digit(self, number: int) -> None:
        self.presses(K(int(K.Key_0) + number))

    def settles(self) -> None:
        busy = self.state
        self.qtbot.waitUntil(lambda: not busy.busy and not busy.drill.busy, timeout=60_000)

    def _focus(self) -> QWidget:
        widget = QApplication.focusWidget()
        assert widget is not None, "nothing has the focus"
        return widget


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(tmp_path / "book.sqlite") as book:
        yield book


@pytest.fixture
def trainee(qtbot, qapp: QApplication, store: Store, tmp_path: Path) -> Iterator[Trainee]:
    qapp.setStyle("Fusion")
    theme = Theme(qapp)
    keys = KeyLibrary(places.keys_folder(), "large-dark-scorpions")
    pictures = Pictures(places.images_folder())
    state = DrillState(store, keys, images=places.images_folder(), attestations=tmp_path / "papers")
    view = DrillView(state, Desk(theme, pictures, ENGLISH))
    qtbot.addWidget(view)
    view.resize(1000, 700)
    view.show()
    view.activateWindow()
    view.open()
    somebody = Trainee(qtbot, state, view)
    somebody.settles()
    yield somebody
    state.close()
    pictures.close()


@pytest.fixture
def begun(trainee: Trainee) -> Trainee:
    """RB has said who practises."""
    trainee.types("RB")
    trainee.presses(K.Key_Return)
    return trainee


def state_number(run: NameState, state: str) -> int:
    return run.character.state_ids.index(state) + 1


def test_initials_are_enough_to_begin(begun: Trainee):
    assert begun.state.drill.person == "RB"
    assert begun.view.start_page.all.hasFocus()
    assert begun.view.start_page.cards[0].counts.text() == "8 new"


def test_a_state_is_named_wrongly_and_the_screen_says_what_and_where(begun: Trainee, store: Store):
    begun.digit(1)
    run = begun.run
    while run.character.kind.numeric:  # numbers have their own story
        begun.presses(K.Key_X)
        begun.presses(K.Key_Return)
        run = begun.run
    assert isinstance(run, NameState)
    wrong = next(state for state in run.character.state_ids if state != run.truth)
    begun.digit(state_number(run, wrong))
    naming = begun.view.naming
    captions = [plate.accessibleName() for plate in naming.compared.plates]

    assert run.character.state(str(run.truth)).label in naming.feedback.headline.text()
    assert run.character.how in naming.feedback.text.text()
    assert [run.character.state(wrong).label in captions[0], naming.feedback.isVisible()] == [
        True,
        True,
    ]
    assert trials_of(store, "RB")[-1].correct is False
    begun.presses(K.Key_Return)
    assert begun.run is not None
    assert begun.run.item != run.item


def test_a_state_is_named_rightly_with_the_arrows_and_enter(begun: Trainee, store: Store):
    begun.digit(1)
    while begun.run.character.kind.numeric:
        begun.presses(K.Key_X)
        begun.presses(K.Key_Return)
    run = begun.run
    for _ in range(state_number(run, str(run.truth)) - 1):
        begun.presses(K.Key_Down)
    begun.presses(K.Key_Return)

    assert begun.run.correct
    assert begun.view.naming.feedback.headline.text().startswith("Right")
    assert trials_of(store, "RB")[-1].correct


def test_a_number_is_read_from_its_plate(begun: Trainee):
    begun.digit(1)
    for _ in range(20):
        if begun.run.character.kind.numeric:
            break
        begun.digit(state_number(begun.run, str(begun.run.truth)))
        begun.presses(K.Key_Return)
    run = begun.run
    begun.types("much")
    begun.presses(K.Key_Return)
    refused = begun.view.naming.number.wrong.text()
    begun.view.naming.number.field.selectAll()
    begun.types(f"{run.truth:.3f}".replace(".", ","))
    begun.presses(K.Key_Return)

    assert "12.5" in refused
    assert begun.run.correct


def test_a_pair_is_told_apart_after_a_detour(begun: Trainee, store: Store):
    begun.digit(2)
    run = begun.run
    assert isinstance(run, TellPair)
    idle = next(n for n, one in enumerate(run.choices, start=1) if one != run.item.character)
    begun.digit(idle)
    begun.digit(0)
    tells = begun.run.open_choices.index(run.item.character) + 1
    begun.digit(tells)
    begun.digit(run.pair.index(run.truth) + 1)
    kept = trials_of(store, "RB")[-1]

    assert begun.run.looks[1] == NEITHER
    assert (kept.correct, kept.rating, kept.said) == (True, 2, run.truth)
    assert "shorter way" in begun.view.telling.feedback.headline.text()
    assert [plate.isVisible() for plate in begun.view.telling.compared.plates].count(True) in (0, 2)


def test_a_pair_decided_on_what_is_the_same_on_both_is_told_to_be_luck(begun: Trainee):
    begun.digit(2)
    run = begun.run
    idle = next(n for n, one in enumerate(run.choices, start=1) if one != run.item.character)
    begun.digit(idle)
    begun.digit(run.pair.index(run.truth) + 1)

    assert not begun.run.correct
    assert "does not show that" in begun.view.telling.feedback.headline.text()


@pytest.mark.slow
def test_a_whole_case_is_run_to_the_verdict_that_its_findings_carry(begun: Trainee, store: Store):
    begun.digit(3)
    assert isinstance(begun.run, RunCase)
    while (best := next(iter(begun.run.worth_asking), None)) is not None:
        if begun.run.assessment.verdict.kind.value != "open":
            break
        look(begun, best)
    begun.presses(K.Key_C)
    view, run = begun.view.casework, begun.run
    kinds = [row.row.name for row in view.concluding.answers.rows]
    carried = run.assessment.verdict.kind.value
    begun.digit(kinds.index(carried if carried in kinds else "open") + 1)
    begun.digit(1 if run.wary else 2)
    begun.digit(1 if run.listed else 2)
    kept = trials_of(store, "RB")[-1]

    assert begun.run.outcome in (Outcome.RIGHT, Outcome.MISREAD)
    assert begun.run.hazard_right
    assert kept.exercise is Exercise.CASE
    assert kept.case.handled == 0
    assert "sure eye" in view.feedback.text.text()


def look(begun: Trainee, character: str) -> None:
    """Find a character in the list, look at it the fair way, and say what is there."""
    run = begun.run
    fair = min(run.fair_ways(character), key=lambda one: one.effort)
    rows = begun.view.casework.ways.rows
    wanted = next(n for n, row in enumerate(rows) if row[:2] == (character, fair))
    begun.presses(K.Key_Home)
    for _ in range(wanted):
        begun.qtbot.keyClick(begun.view.casework.list, K.Key_Down)
    begun.presses(K.Key_Return)
    if begun.run.open_look is None:
        return
    truth = run.individual.shown(character)
    if isinstance(truth, float):
        begun.types(f"{truth:.4f}")
        begun.presses(K.Key_Return)
    else:
        begun.digit(run.key.character[character].state_ids.index(truth) + 1)


def test_a_case_can_be_thought_over_before_it_is_concluded(begun: Trainee):
    begun.digit(3)
    begun.presses(K.Key_C)
    begun.presses(K.Key_B)

    assert not begun.run.done
    assert begun.view.casework.list.isVisible()
    assert begun.view.casework.list.hasFocus()


def test_esc_leads_back_step_by_step(begun: Trainee, qtbot):
    begun.digit(2)
    begun.presses(K.Key_Escape)
    assert begun.state.drill.place is Place.START
    with qtbot.waitSignal(begun.view.left):
        begun.presses(K.Key_Escape)


def test_progress_people_and_the_paper_by_keyboard(
    begun: Trainee, tmp_path: Path, practised: Callable[[], None]
):
    practised()
    begun.presses(K.Key_E, Qt.KeyboardModifier.ControlModifier)
    people = begun.view.people_page
    assert people.person == "AK"
    begun.presses(K.Key_Return)
    assert begun.view.progress_page.title.text() == "What AK has shown"
    begun.presses(K.Key_A)
    papers = list((tmp_path / "papers").iterdir())

    assert [paper.name[:15] for paper in papers] == ["attestation-AK-"]
    assert papers[0].read_bytes().startswith(b"%PDF")
    assert begun.state.drill.person == "RB", "looking at AK is not practising as AK"


@pytest.fixture
def practised(store: Store) -> Callable[[], None]:
    """AK has told one pair apart 36 times."""

    def practise() -> None:
        key: Key = KeyLibrary(places.keys_folder(), "large-dark-scorpions")["large-dark-scorpions"]
        learner = Learner(name="AK")
        learner.at = datetime(2025, 11, 20, 9, 0, tzinfo=UTC)
        for trial in learner.works_through(Bench(key, shop_shares(key, {})), [FIRM], times=36):
            put_trial(store, trial)

    return practise
