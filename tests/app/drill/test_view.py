"""The drill's screens: what they show, in words too, at every size and in both schemes."""

import shutil
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QLineEdit, QVBoxLayout, QWidget

from idkey import places
from idkey.app.drill.answers import Answers, Mark, Row
from idkey.app.drill.confusion import ConfusionTable
from idkey.app.drill.plate import Plate
from idkey.app.drill.state import DrillState
from idkey.app.drill.view import DrillView
from idkey.app.parts.desk import Desk
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.plots import Bar, Bars
from idkey.app.parts.theme import Scheme, Theme
from idkey.drill.exercises import NameState, TellPair
from idkey.drill.item import pair_item, state_item
from idkey.drill.progress import Confusion
from idkey.engine.intervals import wilson
from idkey.report.language import in_language
from idkey.store.book import Store
from idkey.store.drill_log import Exercise, put_trial
from tests.drill.learners import Learner

FIRM = pair_item("heterometrus_spinifer", "pandinus_imperator", "manus_surface")
COLOURS = [state_item("telson_colour", state) for state in ("reddish", "dark")]


class Screen:
    """The drill on a window, and a way to wait for it."""

    def __init__(self, qtbot, state: DrillState, desk: Desk) -> None:
        self.qtbot, self.state, self.desk = qtbot, state, desk
        self.view = self.made()

    def made(self) -> DrillView:
        """The view, as the program makes it again when the look changes."""
        view = DrillView(self.state, self.desk)
        self.qtbot.addWidget(view)
        view.resize(1000, 700)
        view.show()
        view.activateWindow()
        return view

    def remade(self) -> DrillView:
        self.view.hide()
        self.view = self.made()
        return self.view

    def settles(self) -> None:
        self.qtbot.waitUntil(
            lambda: not self.state.busy and not self.state.drill.busy, timeout=60_000
        )


@pytest.fixture
def screen(qtbot, store: Store, keys: KeyLibrary, desk: Desk, tmp_path: Path):
    state = DrillState(store, keys, images=places.images_folder(), attestations=tmp_path / "papers")
    made = Screen(qtbot, state, desk)
    made.view.open()
    made.settles()
    state.choose_person("RB")
    made.settles()
    yield made
    state.close()


@pytest.fixture
def experienced(screen: Screen, store: Store) -> Screen:
    """RB has answered 72 pictures, and takes reddish stings for dark ones."""
    learner = Learner(confuses={("telson_colour", "reddish"): ("dark", 0.5)})
    learner.works_through(screen.state.drill.plan.bench, [*COLOURS, FIRM], times=24)
    for trial in learner.trials:
        put_trial(store, trial)
    screen.state.open()
    screen.settles()
    return screen


def begun(screen: Screen, exercise: Exercise):
    screen.state.start(exercise)
    screen.settles()
    return screen.state.drill.run


def test_everything_that_can_be_pressed_or_filled_has_a_name(screen: Screen):
    parts = screen.view.findChildren(QAbstractButton) + screen.view.findChildren(QLineEdit)
    nameless = [
        part.objectName() or type(part).__name__
        for part in parts
        if not (part.accessibleName() or getattr(part, "text", str)())
        and not part.objectName().startswith("qt_")
        and not part.isHidden()  # the foot names its button when it has something to offer
        and part is not screen.view.naming.number.field
        and part is not screen.view.casework.number.field
    ]

    assert nameless == []


def test_the_start_counts_what_is_due_by_exercise(experienced: Screen):
    page = experienced.view.start_page
    agenda = experienced.state.drill.plan.agenda
    for card in page.cards:
        part = agenda.of(card.exercise)
        if part.due:
            assert f"{len(part.due)} to see again" in card.counts.text()
        if part.fresh:
            assert f"{len(part.fresh)} new" in card.counts.text()

    assert "Telson colour" in page.weak.text()


def test_a_change_of_look_keeps_the_exercise_and_its_answer(screen: Screen, theme: Theme):
    run = begun(screen, Exercise.STATE)
    assert isinstance(run, NameState)
    screen.state.apply(run.say(None))
    screen.settles()
    theme.choose(Scheme.DARK, 100)
    view = screen.remade()
    theme.choose(Scheme.LIGHT, 100)

    assert view.naming.feedback.isVisible()
    assert view.naming.question.text() == run.character.question


def test_a_decided_pair_is_shown_whole_again_after_a_change_of_look(screen: Screen):
    run = begun(screen, Exercise.PAIR)
    assert isinstance(run, TellPair)
    screen.state.apply(run.look(run.item.character))
    screen.state.apply(screen.state.drill.run.decide(run.truth))
    screen.settles()
    rows = screen.remade().telling.answers.rows

    assert [(row.row.name, row.mark) for row in rows if row.mark is not Mark.NONE] == [
        (run.truth, Mark.RIGHT)
    ]


@pytest.mark.parametrize("scale", [100, 200])
def test_every_page_fits_the_smallest_window(experienced: Screen, theme: Theme, scale: int):
    theme.choose(Scheme.LIGHT, scale)
    view = experienced.remade()
    for turn in (
        lambda: experienced.state.start(Exercise.CASE),
        experienced.state.open_progress,
        experienced.state.open_people,
    ):
        turn()
        experienced.settles()
        assert not view.grab().isNull()
        assert view.width() <= 1000
    theme.choose(Scheme.LIGHT, 100)


def test_a_right_answer_is_marked_by_sign_and_word_and_a_wrong_one_too(qtbot, theme: Theme):
    host = QWidget()
    qtbot.addWidget(host)
    answers = Answers(theme, host)
    answers.setParent(host)
    answers.replace([Row(name=n, text=n, detail="why") for n in ("a", "b", "c")])
    answers.show_marks("b", "a")

    assert [row.mark for row in answers.rows] == [Mark.WRONG, Mark.RIGHT, Mark.NONE]
    assert answers.rows[0].accessibleDescription() == "wrong, why"
    assert not any(row.isEnabled() for row in answers.rows)


def test_answers_take_digits_only_while_the_focus_is_inside(qtbot, theme: Theme):
    host, outside = QWidget(), QLineEdit()
    for widget in (host, outside):
        qtbot.addWidget(widget)
        widget.show()
    answers = Answers(theme, host)
    QVBoxLayout(host).addWidget(answers)
    answers.replace([Row(name="a", text="a"), Row(name="b", text="b")])
    heard: list[str] = []
    answers.chosen.connect(heard.append)
    outside.activateWindow()
    qtbot.waitUntil(outside.isActiveWindow)
    outside.setFocus()
    qtbot.keyClick(outside, Qt.Key.Key_2)
    host.activateWindow()
    qtbot.waitUntil(host.isActiveWindow)
    answers.focus()
    qtbot.keyClick(answers.rows[0], Qt.Key.Key_2)

    assert outside.text() == "2"
    assert heard == ["b"]


def test_a_confusion_is_told_in_words_as_well(qtbot, theme: Theme):
    table = ConfusionTable(theme)
    qtbot.addWidget(table)
    table.show_table(Confusion(("a", "b"), ((5, 0, 0), (3, 1, 2))), str.upper)

    assert table.accessibleDescription() == "B taken for A: 3; B taken for cannot tell: 2"
    assert not table.grab().isNull()


def test_a_table_without_mistakes_has_no_column_for_cannot_tell(qtbot, theme: Theme):
    table = ConfusionTable(theme)
    qtbot.addWidget(table)
    table.show_table(Confusion(("a", "b"), ((5, 0, 0), (0, 1, 0))), str)
    narrow = table.sizeHint().width()
    table.show_table(Confusion(("a", "b"), ((5, 0, 0), (0, 1, 1))), str)

    assert table.sizeHint().width() > narrow


def test_shares_are_told_in_words_as_well(qtbot, theme: Theme):
    bars = Bars("Pairs", theme)
    qtbot.addWidget(bars)
    bars.show_bars([Bar(name="a / b", counts="35 of 35", interval=wilson(35, 35), firm=True)])

    assert bars.accessibleDescription() == "a / b: 35 of 35, 90% – 100%"
    assert not bars.grab().isNull()


def test_a_plate_says_what_it_waits_for_and_what_there_is_no_drawing_of(qtbot, theme: Theme):
    plate = Plate(theme)
    qtbot.addWidget(plate)
    plate.show_drawing(None, "granular", caption="Surface")
    waiting = plate.drawn
    plate.show_drawing(b"", "granular", caption="Surface")

    assert (waiting, plate.drawn, plate.words) == (False, False, "granular")
    assert plate.accessibleName() == "Surface granular"
    assert not plate.grab().isNull()


def test_the_paper_is_refused_in_words_at_the_foot(experienced: Screen):
    experienced.state.open_people()
    experienced.settles()
    experienced.view.people_page.print.click()
    experienced.settles()

    assert "Nothing can be attested for RB yet" in experienced.view.notice.text
    assert "35 right decisions" in experienced.view.notice.text


def test_the_paper_speaks_the_language_of_the_window(experienced: Screen, desk: Desk):
    german = replace(desk, language=in_language("de"))
    view = DrillView(experienced.state, german)
    experienced.qtbot.addWidget(view)
    experienced.state.open_people()
    experienced.settles()
    view.people_page.attestation_asked.emit("RB")
    experienced.settles()

    assert "Für RB kann noch nichts nachgewiesen werden" in view.notice._text.text()


def test_the_report_shows_the_confusion_that_there_is(experienced: Screen):
    experienced.state.open_progress()
    experienced.settles()
    page = experienced.view.progress_page

    assert page.choice.currentText().startswith("Telson colour (")
    assert "Reddish brown taken for Dark, like the body" in page.table.accessibleDescription()
    assert "H. spinifer / P. imperator: 24 of 24" in page.pairs.accessibleDescription()


def test_pictures_of_a_key_without_portraits_leave_no_empty_plate(screen: Screen):
    screen.state.choose_key("kitchen-leaves")
    screen.settles()
    run = begun(screen, Exercise.PAIR)
    assert isinstance(run, TellPair)
    screen.state.apply(run.look(run.choices[0]))
    screen.settles()
    telling = screen.view.telling

    assert telling.close_up.isVisible()
    assert not telling.animal.isVisible()


def test_who_practises_stands_in_the_list_among_others(experienced: Screen, store: Store):
    other = Learner(name="AA")
    for trial in other.works_through(experienced.state.drill.plan.bench, COLOURS):
        put_trial(store, trial)
    experienced.state.open()
    experienced.settles()
    people = experienced.view.start_page.people

    assert [people.itemText(n) for n in range(people.count())] == ["AA", "RB"]
    assert people.currentText() == experienced.state.drill.person == "RB"


def test_a_key_without_portraits_says_so_where_one_begins(screen: Screen):
    shown = screen.view.start_page.bare.isVisible()
    screen.state.choose_key("kitchen-leaves")
    screen.settles()

    assert not shown
    assert screen.view.start_page.keys.currentText() == screen.state.drill.key.title
    assert screen.view.start_page.bare.isVisible()
    assert "close-ups only" in screen.view.start_page.bare.text()


def test_drawings_of_two_people_for_one_picture_are_the_same(
    screen: Screen, keys: KeyLibrary, tmp_path: Path, store: Store
):
    run = begun(screen, Exercise.STATE)
    figures = screen.state.figures
    screen.qtbot.waitUntil(
        lambda: bool(figures.close_up(run.key, run.individual, run.item.character)), timeout=20_000
    )
    one = figures.close_up(run.key, run.individual, run.item.character)
    other_state = DrillState(store, keys, images=places.images_folder(), attestations=tmp_path)
    again = other_state.figures
    screen.qtbot.waitUntil(
        lambda: bool(again.close_up(run.key, run.individual, run.item.character)), timeout=20_000
    )
    different = replace(run.individual, seed=run.individual.seed + 1)

    assert again.close_up(run.key, run.individual, run.item.character) == one
    assert again.close_up(run.key, different, run.item.character) is None
    other_state.close()


def test_a_key_of_ones_own_is_practised_with_the_drawings_beside_it(
    qtbot, store: Store, tmp_path: Path
):
    home = tmp_path / "keys" / "my-leaves"
    shutil.copytree(places.keys_folder() / "kitchen-leaves", home)
    drawings = places.images_folder() / "figures" / "kitchen-leaves"
    shutil.copytree(drawings, home / "images")
    text = (home / "key.yaml").read_text("utf-8")
    (home / "key.yaml").write_text(text.replace("kitchen-leaves", "my-leaves", 1), "utf-8")
    keys = KeyLibrary(places.keys_folder(), "my-leaves", own=tmp_path / "keys")
    state = DrillState(store, keys, images=places.images_folder(), attestations=tmp_path)
    state.open()
    qtbot.waitUntil(lambda: state.drill.plan is not None, timeout=20_000)
    kinds = {offer.item.exercise for offer in state.drill.plan.offers}
    character = state.drill.key.characters[0]
    drawn = state.figures.drawing(state.drill.key, character.id, character.state_ids[0])
    state.close()

    assert state.drill.key.id == "my-leaves"
    assert Exercise.STATE in kinds
    assert b"<svg" in drawn
