"""The animal as found so far, over the line-up."""

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from idkey.app.bench.as_found import AsFound
from idkey.app.bench.lineup_view import LineupView
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.model.case import Finding
from idkey.model.character import Look


@pytest.fixture
def lineup(qtbot: QtBot, state: BenchState, desk: Desk) -> LineupView:
    view = LineupView(desk)
    qtbot.addWidget(view)
    view.resize(300, 520)
    view.show_session(state.session)
    view.show()
    return view


def note(state: BenchState, lineup: LineupView, character: str, what: str | float) -> AsFound:
    states = (what,) if isinstance(what, str) else ()
    value = None if isinstance(what, str) else what
    state.observe(Finding(character=character, states=states, value=value, look=Look.TUB))
    lineup.show_session(state.session)
    return lineup.as_found


def picture(qtbot: QtBot, found: AsFound, desk: Desk, before: QImage | None = None) -> QImage:
    qtbot.waitUntil(
        lambda: found.picture is not None and found.picture.toImage() != before, timeout=20_000
    )
    assert found.picture is not None
    return found.picture.toImage()


def test_it_is_away_until_a_finding_shows_on_the_drawing(lineup: LineupView, state: BenchState):
    assert not lineup.as_found.isVisible()

    note(state, lineup, "sternum_shape", "pentagonal")
    assert not lineup.as_found.isVisible(), "the drawing is from above: a sternum is not on it"

    found = note(state, lineup, "telson_colour", "yellow")
    assert found.isVisible()
    assert "Yellow" in found.accessibleDescription()
    assert "not known yet" in found.accessibleDescription()


@pytest.mark.slow
def test_each_finding_changes_the_drawing_and_taking_it_back_undoes_that(
    qtbot: QtBot, lineup: LineupView, state: BenchState, desk: Desk
):
    found = note(state, lineup, "telson_colour", "yellow")
    first = picture(qtbot, found, desk)
    second = picture(qtbot, note(state, lineup, "leg_colour", "yellow"), desk, first)
    assert hatched(second) < hatched(first)

    state.withdraw("leg_colour")
    lineup.show_session(state.session)

    qtbot.waitUntil(lambda: found.picture is not None and found.picture.toImage() == first)


def test_it_stands_at_the_scale_of_the_taxa_once_its_length_is_known(
    qtbot: QtBot, lineup: LineupView, state: BenchState, desk: Desk
):
    found = note(state, lineup, "telson_colour", "yellow")
    assert not found.scaled
    assert "not to scale" in found.accessibleDescription()
    filled = picture(qtbot, found, desk)

    found = note(state, lineup, "total_length", 60.0)

    assert found.scaled
    small = picture(qtbot, found, desk, filled)
    assert small.size() == filled.size()
    assert ink(small) < 0.5 * ink(filled)


def test_another_case_does_not_show_the_animal_of_the_one_before(
    qtbot: QtBot, lineup: LineupView, state: BenchState, desk: Desk
):
    picture(qtbot, note(state, lineup, "telson_colour", "yellow"), desk)

    state.new_case()
    lineup.show_session(state.session)

    assert lineup.as_found.picture is None
    assert not lineup.as_found.isVisible()


def test_where_the_line_up_is_low_the_taxa_keep_the_room(lineup: LineupView, state: BenchState):
    note(state, lineup, "telson_colour", "yellow")
    lineup.resize(QSize(300, 240))
    assert not lineup.as_found.isVisible()

    lineup.resize(QSize(300, 520))

    assert lineup.as_found.isVisible()


def ink(image: QImage) -> int:
    """Pixels that are not empty."""
    alpha = image.convertToFormat(QImage.Format.Format_Alpha8)
    return sum(
        alpha.pixelColor(x, y).alpha() > 40
        for x in range(alpha.width())
        for y in range(alpha.height())
    )


def hatched(image: QImage) -> int:
    """Pixels of the grey that stands for the unknown."""
    return sum(
        abs(c.red() - 0xCF) + abs(c.green() - 0xC8) + abs(c.blue() - 0xBB) < 30 and c.alpha() > 200
        for x in range(image.width())
        for y in range(image.height())
        for c in (image.pixelColor(x, y),)
    )
