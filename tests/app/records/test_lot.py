"""The lot check as a person meets it."""

from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pytestqt.qtbot import QtBot

from idkey.app.parts.jobs import Jobs
from idkey.app.parts.theme import Theme
from idkey.app.records.lot import LotPanel, lot_answer
from idkey.engine.intervals import unseen_chance
from idkey.report.language import ENGLISH


@pytest.fixture
def panel(theme: Theme, qtbot: QtBot) -> Iterator[LotPanel]:
    jobs = Jobs(threads=1)
    made = LotPanel(theme, ENGLISH, jobs)
    qtbot.addWidget(made)
    yield made
    jobs.close()


def answered(panel: LotPanel, qtbot: QtBot) -> str:
    """What it says once it is worked out."""
    qtbot.waitUntil(lambda: not panel.busy)
    return f"{panel.answer.text()} {panel.why.text()} {panel.shown.text()}"


def test_the_answer_comes_with_its_reason(panel: LotPanel, qtbot: QtBot):
    said = answered(panel, qtbot)

    assert said.startswith("Look at 25 of the 40.")
    assert "If 3 or more of the 40 were wrong" in said
    assert "no more than 2 are wrong" in said


def test_a_look_says_what_may_be_left(panel: LotPanel, qtbot: QtBot):
    panel.looked.setText("11")
    panel.found.setText("1")

    assert "1 wrong among 11: with 95 % confidence no more than 13" in answered(panel, qtbot)


@pytest.mark.parametrize(
    ("field", "text", "said"),
    [("lot", "", "size of the lot"), ("sure", "0", "both shares"), ("looked", "41", "No more")],
)
def test_counts_that_make_no_sense_are_told(
    panel: LotPanel, qtbot: QtBot, field: str, text: str, said: str
):
    getattr(panel, field).setText(text)

    assert said in answered(panel, qtbot)
    assert panel.answer.text() == "–"


@given(st.integers(1, 120), st.integers(0, 99), st.integers(1, 99))
def test_one_animal_fewer_would_not_do(lot: int, share: int, sure: int):
    told = lot_answer(lot, share / 100, confidence=sure / 100, looked=None, found=0)

    assert told.missed <= 1 - sure / 100 + 1e-12
    fewer = unseen_chance(lot, told.allowed + 1, told.examine - 1)
    assert told.examine == 1 or fewer > 1 - sure / 100 - 1e-12
