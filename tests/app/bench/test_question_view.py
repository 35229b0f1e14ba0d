"""The question card: tiles, number keys, numbers, and the other answers."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QPushButton

from idkey.app.bench.question_view import QuestionView
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.tile_grid import TileGrid
from idkey.model.case import Certainty, Finding
from idkey.model.character import Look

KEY = Qt.Key


@pytest.fixture
def card(state: BenchState, desk: Desk, qtbot) -> QuestionView:
    view = QuestionView(desk)
    qtbot.addWidget(view)
    view.resize(700, 500)
    state.ask("chela_robustness")
    view.show_session(state.session)
    with qtbot.waitExposed(view):
        view.show()
    view.activateWindow()
    view.focus_answer()
    qtbot.waitUntil(lambda: QApplication.focusWidget() in view.grid.tiles)
    return view


def press(qtbot, *keys: Qt.Key) -> None:
    for key in keys:
        qtbot.keyClick(QApplication.focusWidget(), key)


def told(card: QuestionView) -> list[Finding]:
    found: list[Finding] = []
    card.observed.connect(found.append)
    return found


def test_a_number_key_marks_a_tile_and_enter_notes_it(card: QuestionView, qtbot):
    found = told(card)
    press(qtbot, KEY.Key_3, KEY.Key_Return)

    assert [f.states for f in found] == [("robust",)]
    assert found[0].certainty is Certainty.SURE
    assert found[0].look is Look.TUB


def test_enter_without_a_mark_notes_nothing(card: QuestionView, qtbot):
    found = told(card)
    press(qtbot, KEY.Key_Return)

    assert found == []


def test_arrows_move_and_space_marks(card: QuestionView, qtbot):
    found = told(card)
    press(qtbot, KEY.Key_Right, KEY.Key_Space, KEY.Key_Return)

    assert [f.states for f in found] == [("intermediate",)]


def test_several_apply_keeps_both_marks(card: QuestionView, qtbot):
    found = told(card)
    press(qtbot, KEY.Key_S, KEY.Key_1, KEY.Key_2, KEY.Key_Return)

    assert [f.states for f in found] == [("slender", "intermediate")]


def test_none_of_these_denies_what_is_marked(card: QuestionView, qtbot):
    found = told(card)
    press(qtbot, KEY.Key_1, KEY.Key_N)

    assert [(f.states, f.negated) for f in found] == [(("slender",), True)]


def test_cannot_see_it_is_noted_with_the_means(card: QuestionView, qtbot):
    found = told(card)
    press(qtbot, KEY.Key_X)

    assert [(f.unseen, f.look) for f in found] == [(True, Look.TUB)]


def test_a_click_on_a_tile_marks_it(card: QuestionView, qtbot):
    qtbot.mouseClick(card.grid.tiles[1], Qt.MouseButton.LeftButton)

    assert card.answer.marked == ("intermediate",)
    assert [tile.isChecked() for tile in card.grid.tiles] == [False, True, False]


def test_a_remark_is_typed_where_letters_are_letters(card: QuestionView, qtbot):
    found = told(card)
    press(qtbot, KEY.Key_2, KEY.Key_R)
    qtbot.keyClicks(QApplication.focusWidget(), "x marks 3 s")
    press(qtbot, KEY.Key_Return)

    assert [(f.states, f.note) for f in found] == [(("intermediate",), "x marks 3 s")]


def test_every_change_of_an_answer_is_told_as_a_draft(card: QuestionView, qtbot):
    drafts: list[str] = []
    card.drafted.connect(lambda character, text: drafts.append(f"{character} {text}"))
    press(qtbot, KEY.Key_1, KEY.Key_1)

    assert '"slender"' in drafts[0]
    assert drafts[-1] == "chela_robustness "


def test_a_draft_stands_on_the_card_again(state: BenchState, card: QuestionView, desk: Desk, qtbot):
    drafts: list[str] = []
    card.drafted.connect(lambda _, text: drafts.append(text))
    press(qtbot, KEY.Key_2)

    again = QuestionView(desk)
    qtbot.addWidget(again)
    again.show_session(state.session, drafts[-1])

    assert again.answer.marked == ("intermediate",)


def test_a_finding_stands_on_the_card_to_be_corrected(state: BenchState, desk: Desk, qtbot):
    state.observe(Finding(character="chela_robustness", states=("slender",), note="young"))
    state.ask("chela_robustness")
    view = QuestionView(desk)
    qtbot.addWidget(view)
    view.show_session(state.session)

    assert view.answer.marked == ("slender",)
    assert view.bar.note.text() == "young"


def test_a_number_is_noted_with_its_uncertainty(state: BenchState, card: QuestionView, qtbot):
    found = told(card)
    state.ask("total_length")
    card.show_session(state.session)
    card.focus_answer()
    qtbot.keyClicks(card.entry.number, "112,5")
    qtbot.keyClicks(card.entry.spread, "3")
    qtbot.keyClick(card.entry.number, KEY.Key_Return)

    assert [(f.value, f.uncertainty) for f in found] == [(112.5, 3.0)]


def test_the_keys_of_the_card_are_digits_in_a_number(state: BenchState, card: QuestionView, qtbot):
    state.ask("pectinal_teeth_male")
    card.show_session(state.session)
    card.focus_answer()
    qtbot.keyClicks(QApplication.focusWidget(), "17")

    assert card.entry.number.text() == "17"


def test_a_number_leaves_the_letters_to_the_card(state: BenchState, card: QuestionView, qtbot):
    found: list[Finding] = []
    card.observed.connect(found.append)
    state.ask("pectinal_teeth_male")
    card.show_session(state.session)
    card.focus_answer()
    qtbot.keyClick(card.entry.number, KEY.Key_X)

    assert [f.unseen for f in found] == [True]


def test_an_uncertainty_that_cannot_be_read_is_not_passed_over(
    state: BenchState, card: QuestionView, qtbot
):
    found: list[Finding] = []
    card.observed.connect(found.append)
    state.ask("total_length")
    card.show_session(state.session)
    qtbot.keyClicks(card.entry.number, "112")
    qtbot.keyClicks(card.entry.spread, "1.2.3")
    qtbot.keyClick(card.entry.spread, KEY.Key_Return)

    assert found == []
    assert "number" in card.entry.complaint


def test_a_number_in_another_unit_is_pointed_at(state: BenchState, card: QuestionView, qtbot):
    state.ask("total_length")
    card.show_session(state.session)
    qtbot.keyClicks(card.entry.number, "11.2")
    said = card.entry.complaint
    card.entry.number.clear()
    qtbot.keyClicks(card.entry.number, "112")

    assert "mm" in said
    assert card.entry.complaint == ""


def test_what_is_no_number_is_said_at_once(state: BenchState, card: QuestionView, qtbot):
    state.ask("total_length")
    card.show_session(state.session)
    qtbot.keyClicks(card.entry.number, "1.2.3")

    assert "number" in card.entry.complaint


def test_tiles_have_drawings_words_and_numbers(card: QuestionView):
    assert [tile.text() for tile in card.grid.tiles] == ["Slim", "In between", "Broad"]
    assert all(tile.picture is not None for tile in card.grid.tiles)


@pytest.mark.parametrize("width", [180, 320, 560, 820, 1600])
def test_tiles_fill_their_rows_evenly_and_stay_inside(card: QuestionView, qtbot, width: int):
    grid: TileGrid = card.grid
    qtbot.addWidget(grid)
    grid.setParent(None)
    with qtbot.waitExposed(grid):
        grid.show()
    grid.resize(width, 900)
    boxes = [tile.geometry() for tile in grid.tiles]

    assert all(box.left() >= 0 and box.right() <= width for box in boxes)
    assert not any(a.intersects(b) for n, a in enumerate(boxes) for b in boxes[n + 1 :])
    assert grid.heightForWidth(width) == max(box.bottom() for box in boxes) + 1


def test_tiles_run_from_the_right_where_text_does(card: QuestionView, qtbot):
    card.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    card.resize(701, 500)
    boxes = [tile.geometry().left() for tile in card.grid.tiles]

    assert boxes == sorted(boxes, reverse=True)


def test_the_large_drawing_is_asked_for_with_z(card: QuestionView, qtbot):
    with qtbot.waitSignal(card.large_asked) as asked:
        press(qtbot, KEY.Key_Right, KEY.Key_Z)

    assert asked.args == ["intermediate"]


def test_the_magnifier_on_a_tile_shows_it_large_and_marks_nothing(card: QuestionView, qtbot):
    tile = card.grid.tiles[2]
    with qtbot.waitSignal(card.large_asked) as asked:
        qtbot.mouseClick(
            tile, Qt.MouseButton.LeftButton, pos=QPoint(20, tile.picture_room().height() - 8)
        )

    assert asked.args == ["robust"]
    assert card.answer.marked == ()


def test_the_card_says_why_now_and_what_goes_wrong(card: QuestionView):
    assert "Chosen for: Is the label right?" in card.reasons
    assert "longimanus" in card.reasons


def test_no_label_of_a_tile_is_cut(card: QuestionView, state: BenchState):
    cut = []
    for width in (420, 620, 900):
        card.resize(width, 700)
        for character in state.session.key.characters:
            if character.states:
                state.ask(character.id)
                card.show_session(state.session)
                for tile in card.grid.tiles:
                    if tile.picture_expected and tile.lines_at(tile.width()) > tile.lines:
                        cut.append((width, tile.state.label))

    assert cut == []


def test_all_candidates_can_be_laid_on_the_strip(card: QuestionView, state: BenchState, qtbot):
    state.ask("total_length")
    card.show_session(state.session)
    strip = card.entry.strip

    def laid() -> int:
        return len(strip.accessibleDescription().split("; "))

    at_first = laid()
    more = next(b for b in card.findChildren(QPushButton) if b.text().startswith("Show all"))
    qtbot.mouseClick(more, Qt.MouseButton.LeftButton)

    assert at_first < len(strip.every)
    assert laid() == len(strip.every)
    assert len(strip.every) > 7
    assert more.text() == "Show fewer"
