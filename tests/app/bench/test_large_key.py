"""A key of 1,000 taxa: the case stands at once, and the key is read behind it."""

import time
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.bench.fetcher import MANY
from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.key_library import KeyLibrary
from idkey.engine.compile import compile_key
from idkey.engine.result import Stake
from idkey.engine.sample import SAMPLE_KEY
from idkey.model.case import Claim, Finding, Specimen
from idkey.model.character import Sex
from idkey.model.key import Key
from idkey.store.book import Store
from tests.app.one_key import OneKey
from tests.bench.synthetic import world

pytestmark = pytest.mark.slow  # the key alone takes a second to make up


@pytest.fixture(scope="module")
def large() -> Key:
    return world(3, taxa=1000).known


@pytest.fixture
def state(large: Key, keeper: Keeper) -> Iterator[BenchState]:
    made = BenchState(OneKey(large), keeper)
    yield made
    made.close()


@pytest.fixture
def bench(state: BenchState, desk: Desk, qtbot) -> Iterator[BenchView]:
    view = BenchView(state, desk)
    qtbot.addWidget(view)
    with qtbot.waitExposed(view):
        view.show()
    yield view
    view.close_work()


def answer(state: BenchState, number: int) -> None:
    state.observe(Finding(character=f"c{number}", states=("s0",)))


def test_the_case_stands_at_once_with_every_caution_and_the_question_follows(
    state: BenchState, bench: BenchView, qtbot
):
    bench.activateWindow()
    state.claim(Claim(text="Emperor scorpion"))
    bench.middle.focus_answer()
    reading = (state.session.reading, bench.verdict.sentence, bench.verdict.hazard.text)
    qtbot.waitUntil(lambda: not state.session.thinking, timeout=20_000)

    assert reading[0], "compiling takes longer than showing the window does"
    assert reading[1].startswith("Reading the key")
    assert "Do not handle" in reading[2]
    assert bench.middle.question.character is state.session.character
    assert QApplication.focusWidget() in bench.middle.question.grid.tiles


def test_opening_a_key_takes_the_screen_a_fraction_of_compiling_it(large: Key, keeper: Keeper):
    began = time.thread_time()
    state = BenchState(OneKey(large), keeper)
    opened = time.thread_time() - began
    state.close()
    began = time.thread_time()
    compile_key(large)
    compiled = time.thread_time() - began

    assert opened < compiled / 4


def test_only_the_newest_answer_counts_and_cautions_stay_meanwhile(
    state: BenchState, bench: BenchView, keeper: Keeper, store: Store, qtbot
):
    shown: list[str] = []
    state.changed.connect(lambda _: shown.append(bench.verdict.hazard.text))
    for number in range(4):
        answer(state, number)
    state.describe(Specimen(sex=Sex.MALE))
    qtbot.waitUntil(lambda: not state.session.thinking, timeout=20_000)
    keeper.flush()
    stored = store.case(state.session.case.id)

    assert state.session.reasoned.assessment.case == state.session.case
    assert stored.summary is not None
    assert [r.number for r in store.revisions(stored.case.id)] == [1, 2, 3, 4, 5, 6]
    assert len(shown) == 6
    assert all("Do not handle" in text for text in shown)


def test_every_case_of_a_tray_is_worked_out_in_turn(state: BenchState, qtbot):
    state.claim(Claim(text="Emperor scorpion"))
    began = time.thread_time()
    state.copy_claim(11)
    spent = time.thread_time() - began
    qtbot.waitUntil(lambda: not any(s.thinking for s in state.tray()), timeout=20_000)

    assert spent < 0.5
    for session in state.tray():
        assert session.reasoned.assessment.case == session.case
        assert {c.stake for c in session.reasoned.assessment.cautions} == set(Stake) - {
            Stake.CLIMATE
        }


def test_a_large_key_of_ones_own_is_read_behind_the_bench(
    large: Key, keeper: Keeper, desk: Desk, tmp_path: Path, qtbot
):
    few = replace(large, id="many", title="Many", taxa=large.taxa[:MANY], scores=(), digest="")
    own = KeyLibrary(places.keys_folder(), SAMPLE_KEY, own=tmp_path / "keys")
    own.add(answerable(few))
    state = BenchState(own, keeper)
    heard: list[bool] = []
    state.fetcher.fetching.connect(heard.append)
    before = state.session.key.id
    state.new_case("many")
    meanwhile = state.session.key.id
    qtbot.waitUntil(lambda: state.session.key.id == "many", timeout=20_000)
    state.new_case("many")
    state.close()

    assert meanwhile == before == SAMPLE_KEY
    assert heard == [True, False]


def answerable(key: Key) -> Key:
    """The key with words where its maker left them out."""
    characters = tuple(
        replace(c, question="What is it?", states=tuple(replace(s, label=s.id) for s in c.states))
        for c in key.characters
    )
    return replace(key, characters=characters)
