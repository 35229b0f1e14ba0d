"""The parts of the animal: plates to point at, and what is seen on each part."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from idkey.app.bench.plate_groups import found_groups, part_groups
from idkey.app.bench.plate_view import PlateView
from idkey.app.bench.session import Session
from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.parts.desk import Desk
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.theme import Scheme
from idkey.model.case import Finding
from idkey.model.character import Look
from idkey.report.language import in_language

_GREY = QImage.Format.Format_Grayscale8
KEYS_WITH_PLATES = ("large-dark-scorpions", "red-kneed-tarantulas", "ornamental-tarantulas")


@pytest.fixture
def host(qtbot: QtBot) -> QWidget:
    window = QWidget()
    window.resize(1000, 700)
    qtbot.addWidget(window)
    window.show()
    return window


@pytest.fixture
def plates(qtbot: QtBot, state: BenchState, desk: Desk, host: QWidget) -> PlateView:
    view = PlateView(state.session, desk, host)
    view.open()
    qtbot.waitExposed(view)
    return view


def listed(view: PlateView) -> list[str]:
    return [button.entry.character for button in view.list.buttons]


def seen_on(session: Session, part: str) -> list[str]:
    return [c.id for c in session.key.characters if c.part == part]


@pytest.mark.parametrize("name", KEYS_WITH_PLATES)
def test_every_character_of_a_key_is_listed_once_under_its_part(
    state: BenchState, desk: Desk, name: str
):
    state.new_case(name)
    key = state.session.key

    groups = part_groups(state.session, desk.pictures.plates(key), desk.language)

    found = [(entry.character, group.part) for group in groups for entry in group.entries]
    assert sorted(found) == sorted((c.id, c.part) for c in key.characters)


def test_a_search_finds_parts_in_both_languages_characters_and_states(
    state: BenchState, desk: Desk
):
    groups = part_groups(state.session, desk.pictures.plates(state.session.key), desk.language)

    def parts(search: str) -> set[str]:
        return {group.part for group in found_groups(groups, search=search)}

    assert parts("stachel") == parts("STING (telson)") == {"telson"}
    assert "chela" in parts("manus")
    assert parts("no such thing") == set()


def test_a_click_on_a_part_lists_its_characters_and_one_more_asks(
    qtbot: QtBot, plates: PlateView, state: BenchState
):
    spot = plates.canvas.place_of("telson").toPoint()
    qtbot.mouseMove(plates.canvas, spot)
    qtbot.mouseClick(plates.canvas, Qt.MouseButton.LeftButton, pos=spot)
    assert plates.canvas.marked == "telson"
    assert listed(plates) == seen_on(state.session, "telson")

    with qtbot.waitSignal(plates.asked) as asked:
        qtbot.mouseClick(plates.list.buttons[0], Qt.MouseButton.LeftButton)

    assert asked.args == [seen_on(state.session, "telson")[0]]
    assert not plates.isVisible()


def test_the_keyboard_alone_finds_a_part_and_asks(qtbot: QtBot, plates: PlateView):
    plates.canvas.setFocus(Qt.FocusReason.TabFocusReason)
    while plates.canvas.marked != "carapace":
        qtbot.keyClick(plates.canvas, Qt.Key.Key_Down)
    assert plates.canvas.accessibleDescription() == "carapace"
    qtbot.keyClick(plates.canvas, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: plates.focusWidget() is plates.list.buttons[0])
    assert {b.entry.character for b in plates.list.buttons} >= {"carapace_front"}

    with qtbot.waitSignal(plates.asked) as asked:
        qtbot.keyClick(plates.list.buttons[0], Qt.Key.Key_Return)

    assert asked.args == [plates.list.buttons[0].entry.character]


def test_a_part_that_only_lies_below_turns_the_animal(qtbot: QtBot, plates: PlateView):
    qtbot.keyClicks(plates.search, "combs")

    assert plates.canvas.plate is not None
    assert plates.canvas.plate.id == "below"
    assert plates.views.value.id == "below"
    assert plates.canvas.marked == "pectines"


def test_a_part_nothing_is_seen_on_is_marked_and_says_so(qtbot: QtBot, plates: PlateView):
    qtbot.keyClicks(plates.search, "chelicerae")
    assert plates.canvas.marked == "chelicerae"
    assert "on this part" in plates.empty.text()
    assert plates.empty.isVisible()

    qtbot.keyClicks(plates.search, " xyz")

    assert "called that" in plates.empty.text()


def test_what_was_seen_stands_on_its_button(state: BenchState, desk: Desk, host: QWidget):
    key = state.session.key
    colour = key.character["telson_colour"]
    state.observe(Finding(character=colour.id, states=(colour.states[1].id,), look=Look.TUB))

    view = PlateView(state.session, desk, host)
    view.choose("telson")

    button = next(b for b in view.list.buttons if b.entry.character == colour.id)
    assert button.entry.answered
    assert colour.states[1].label.lower() in button.accessibleDescription().lower()


def test_beside_the_animal_nothing_is_chosen(qtbot: QtBot, plates: PlateView, state: BenchState):
    plates.choose("telson")

    qtbot.mouseClick(plates.canvas, Qt.MouseButton.LeftButton, pos=QPoint(4, 4))

    assert plates.part == ""
    assert len(listed(plates)) == len(state.session.key.characters)


def test_the_marked_part_looks_different_without_its_colour(qtbot: QtBot, plates: PlateView):
    before = plates.canvas.grab().toImage().convertToFormat(_GREY)

    plates.canvas.mark("carapace")

    after = plates.canvas.grab().toImage().convertToFormat(_GREY)
    darker = sum(
        before.pixelColor(x, y).lightness() - after.pixelColor(x, y).lightness() > 60
        for x in range(0, before.width(), 2)
        for y in range(0, before.height(), 2)
    )
    assert darker > 40, "the outline around the part"


def test_the_names_speak_the_language_in_both_schemes(state: BenchState, desk: Desk, host: QWidget):
    german = Desk(desk.theme, desk.pictures, in_language("de"))
    for scheme in (Scheme.DARK, Scheme.LIGHT):
        desk.theme.choose(scheme, 100)
        view = PlateView(state.session, german, host)
        view.canvas.mark("metasoma")
        assert view.canvas.accessibleDescription() == "Schwanz (Metasoma)"
        assert view.canvas.accessibleName().endswith("Von oben")


def test_the_card_leads_to_the_part_and_the_part_back_to_the_card(
    qtbot: QtBot, state: BenchState, desk: Desk
):
    bench = BenchView(state, desk)
    qtbot.addWidget(bench)
    bench.resize(1000, 700)
    bench.show()
    bench.middle.ask("telson_colour")
    where = bench.middle.question.where
    assert "sting (telson)" in where.text()

    where.click()
    view = bench.findChild(PlateView)
    assert isinstance(view, PlateView)
    assert view.part == "telson"
    view.choose("legs")
    view.list.buttons[0].click()

    assert state.session.asked == view.list.buttons[0].entry.character
    bench.close_work()


def test_a_key_without_a_body_plan_has_no_way_there_and_a_plain_list(
    qtbot: QtBot, keys: KeyLibrary, state: BenchState, desk: Desk, host: QWidget
):
    state.new_case("kitchen-leaves")
    key = keys["kitchen-leaves"]
    assert not key.body_plan

    view = PlateView(state.session, desk, host)

    assert view.canvas.isHidden()
    assert len(listed(view)) == len(key.characters)
