"""The whole bench: every area says what the person wants, the state does it."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QPushButton

from idkey.app.bench.claim_view import ClaimView
from idkey.app.bench.lead_card import LEAST_WIDTH
from idkey.app.bench.lineup_rows import RowKind
from idkey.app.bench.session import Mode
from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.page import Page
from idkey.app.parts.rows import ROW_ROLE
from idkey.engine.sample import sample_case
from idkey.model.case import Aim, Care, Finding, Specimen
from idkey.model.character import Sex, Stage

KEY = Qt.Key
LEFT = Qt.MouseButton.LeftButton
FIVE_SIDED = Finding(character="sternum_shape", states=("pentagonal",))


@pytest.fixture
def bench(state: BenchState, desk: Desk, qtbot) -> BenchView:
    view = BenchView(state, desk)
    qtbot.addWidget(view)
    view.resize(1216, 800)
    with qtbot.waitExposed(view):
        view.show()
    view.activateWindow()
    view.claim.focus_label()
    qtbot.waitUntil(view.claim.label.hasFocus)
    yield view
    view.close_work()


def press(qtbot, *keys: Qt.Key) -> None:
    for key in keys:
        qtbot.keyClick(QApplication.focusWidget(), key)


def label(qtbot, text: str) -> None:
    qtbot.keyClicks(QApplication.focusWidget(), text)
    press(qtbot, KEY.Key_Return)


def test_an_empty_bench_says_what_to_do(bench: BenchView):
    assert bench.middle.page is Page.START
    assert "Do not handle" in bench.verdict.hazard.text


def test_a_label_warns_of_mix_ups_before_any_finding(bench: BenchView, qtbot):
    label(qtbot, "Emperor scorpion")

    assert bench.middle.page is Page.QUESTION
    assert bench.middle.note.isVisible()
    assert "Heterometrus" in bench.middle.note.text
    assert QApplication.focusWidget() in bench.middle.question.grid.tiles


def test_the_warning_goes_once_something_was_seen_and_can_be_called_back(
    bench: BenchView, state: BenchState, qtbot
):
    label(qtbot, "Emperor scorpion")
    state.observe(FIVE_SIDED)
    gone = bench.middle.note.isHidden()
    bench.middle.open_note()

    assert gone
    assert bench.middle.note.isVisible()


def test_the_warning_keeps_to_one_line_while_something_is_looked_at_and_opens_again(
    bench: BenchView, state: BenchState, qtbot
):
    label(qtbot, "Emperor scorpion")
    whole = bench.middle.note.height()
    bench.middle.ask("sternum_shape")
    qtbot.waitUntil(lambda: bench.middle.note.height() < whole / 2)
    bench.middle.note.opened.emit()

    qtbot.waitUntil(lambda: bench.middle.note.height() >= whole)
    assert state.session.asked == "sternum_shape"


def test_a_deciding_character_opens_its_question(bench: BenchView, state: BenchState, qtbot):
    label(qtbot, "Emperor scorpion")
    decides = state.session.label
    assert decides is not None
    bench.middle.note.asked.emit(decides.deciding[0])

    assert bench.middle.question.character is not None
    assert bench.middle.question.character.id == decides.deciding[0]


def test_arrows_choose_among_offers_and_enter_takes_one(bench: BenchView, state: BenchState, qtbot):
    qtbot.keyClicks(bench.claim.label, "emper")
    offered = bench.offers.texts
    press(qtbot, KEY.Key_Down, KEY.Key_Return)

    assert offered
    assert state.session.case.claim.text == offered[0]
    assert state.session.label is not None
    assert bench.offers.isHidden()


def test_escape_puts_the_offers_away_and_keeps_the_text(bench: BenchView, qtbot):
    qtbot.keyClicks(bench.claim.label, "emper")
    press(qtbot, KEY.Key_Escape)

    assert bench.offers.isHidden()
    assert bench.claim.label.text() == "emper"


def test_a_label_the_key_does_not_know_offers_what_comes_near(
    bench: BenchView, state: BenchState, qtbot
):
    label(qtbot, "Emporer skorpion")
    near = state.session.matches
    bench.middle.note.label_chosen.emit(near[0].label)

    assert near
    assert state.session.label is not None
    assert state.session.case.claim.text == "Emporer skorpion"


def test_choosing_what_the_label_meant_goes_on_to_the_answer(bench: BenchView, qtbot):
    label(qtbot, "Emporer skorpion")
    qtbot.mouseClick(bench.middle.note.findChildren(QPushButton, "L01")[0], LEFT)

    assert QApplication.focusWidget() in bench.middle.question.grid.tiles
    press(qtbot, KEY.Key_2)
    assert bench.middle.question.grid.tiles[1].isChecked()


def test_tab_goes_through_the_note_and_the_card_as_they_stand(bench: BenchView, qtbot):
    label(qtbot, "Emperor scorpion")
    tiles = bench.middle.question.grid.tiles
    after_tiles = tiles[-1].nextInFocusChain()
    while after_tiles.focusPolicy() is Qt.FocusPolicy.NoFocus or not after_tiles.isVisible():
        after_tiles = after_tiles.nextInFocusChain()
    bench.middle.note.findChildren(QPushButton, "manus_surface")[-1].setFocus()
    press(qtbot, KEY.Key_Tab)
    after_note = QApplication.focusWidget()

    assert bench.middle.question.isAncestorOf(after_tiles)
    assert bench.middle.isAncestorOf(after_note)
    assert not bench.middle.note.isAncestorOf(after_note)


def test_when_nothing_is_left_to_ask_the_focus_stands_on_what_is_seen(
    bench: BenchView, state: BenchState, qtbot
):
    label(qtbot, "Emperor scorpion")
    while state.session.character is not None:
        press(qtbot, KEY.Key_X)

    assert QApplication.focusWidget().isVisible()
    told = [label.text() for label in bench.middle.question.findChildren(QLabel)]
    assert any("that opens" in text or "could not be seen" in text for text in told)


def test_undo_from_an_empty_number_takes_the_last_finding_back(
    bench: BenchView, state: BenchState, qtbot
):
    undo = QShortcut(QKeySequence.StandardKey.Undo, bench)
    undo.activated.connect(state.undo)
    label(qtbot, "Emperor scorpion")
    state.observe(FIVE_SIDED)
    bench.middle.ask("total_length")
    qtbot.keyClick(QApplication.focusWidget(), KEY.Key_Z, Qt.KeyboardModifier.ControlModifier)

    assert state.session.case.findings == ()


def test_a_long_label_is_read_from_its_beginning(bench: BenchView, qtbot):
    text = "giant black jungle scorpion, extra large, very rare, from the rain forest"
    label(qtbot, text)

    assert bench.claim.label.cursorPosition() == 0
    assert text in bench.claim.label.toolTip()


def test_enter_in_a_small_field_of_the_tag_goes_on_to_the_question(bench: BenchView, qtbot):
    label(qtbot, "Emperor scorpion")
    bench.claim.focus_label()
    press(qtbot, KEY.Key_Tab)
    qtbot.keyClicks(QApplication.focusWidget(), "Lantern Street")
    press(qtbot, KEY.Key_Return)

    assert QApplication.focusWidget() in bench.middle.question.grid.tiles


def test_small_fields_of_the_tag_are_kept_without_leaving_them(
    bench: BenchView, state: BenchState, qtbot
):
    label(qtbot, "Emperor scorpion")
    bench.claim.focus_label()
    press(qtbot, KEY.Key_Tab)
    qtbot.keyClicks(QApplication.focusWidget(), "Lantern Street Vivarium")
    press(qtbot, KEY.Key_Tab)

    assert state.session.case.claim.supplier == "Lantern Street Vivarium"
    assert QApplication.focusWidget().accessibleName() == "Arrived on"


def test_what_is_typed_in_a_small_field_is_there_after_a_kill(
    bench: BenchView, state: BenchState, keeper: Keeper, keys: KeyLibrary, desk: Desk, qtbot
):
    label(qtbot, "Emperor scorpion")
    bench.claim.focus_label()
    press(qtbot, KEY.Key_Tab)
    qtbot.keyClicks(QApplication.focusWidget(), "Lantern Str")
    keeper.flush()  # and nothing else: the field was never left

    again = BenchState(keys, keeper)
    again.resume()
    tag = ClaimView(desk.theme)
    qtbot.addWidget(tag)
    tag.show_claim(again.session.case.claim, "", again.drafted("tag"))
    again.close()

    fields = {field.accessibleName(): field.text() for field in tag.findChildren(QLineEdit)}
    assert again.session.case.claim.supplier == ""
    assert fields["Supplier"] == "Lantern Str"
    assert fields["What the label says"] == "Emperor scorpion"


def test_an_answer_moves_on_to_the_next_question_and_into_the_ledger(
    bench: BenchView, state: BenchState, qtbot
):
    label(qtbot, "Emperor scorpion")
    bench.middle.ask("sternum_shape")
    press(qtbot, KEY.Key_2, KEY.Key_Return)

    row = bench.ledger.rows.rows[0]
    assert (row.name, row.seen) == ("Sternum shape", "Five-sided")
    assert row.effect == "ruled out 6"
    assert state.session.question is not None
    assert bench.middle.question.character is state.session.character
    assert QApplication.focusWidget() in bench.middle.question.grid.tiles


def test_a_finding_is_corrected_from_the_ledger_with_enter(
    bench: BenchView, state: BenchState, qtbot
):
    state.observe(FIVE_SIDED)
    bench.ledger.list.setFocus()
    bench.ledger.list.setCurrentIndex(bench.ledger.rows.index(0))
    press(qtbot, KEY.Key_Return, KEY.Key_1, KEY.Key_Return)

    found = state.session.case.finding("sternum_shape")
    assert found is not None
    assert found.states == ("triangular",)


def test_a_finding_is_withdrawn_from_the_ledger_with_delete(
    bench: BenchView, state: BenchState, qtbot
):
    state.observe(FIVE_SIDED)
    bench.ledger.list.setFocus()
    bench.ledger.list.setCurrentIndex(bench.ledger.rows.index(0))
    press(qtbot, KEY.Key_Delete)

    assert state.session.case.findings == ()
    assert bench.ledger.list.isHidden()


def test_the_ledger_can_be_read_by_what_findings_changed(bench: BenchView, state: BenchState):
    state.put_on_bench(sample_case(state.session.key))
    by_time = [row.character for row in bench.ledger.rows.rows]
    bench.ledger.order_by_effect()
    by_effect = [row.character for row in bench.ledger.rows.rows]

    assert by_time == [f.character for f in state.session.case.findings]
    assert sorted(by_time) == sorted(by_effect)
    assert by_time != by_effect


def test_f6_goes_round_all_areas(bench: BenchView, state: BenchState, qtbot):
    label(qtbot, "Emperor scorpion")
    state.observe(FIVE_SIDED)
    bench.claim.focus_label()
    qtbot.waitUntil(bench.middle.others.isVisible)
    visited = []
    for _ in range(len(bench.areas())):
        bench.next_area(1)
        visited.append(QApplication.focusWidget())

    assert visited[0] in bench.middle.question.grid.tiles
    assert visited[1:] == [
        bench.middle.others.list,
        bench.lineup.list,
        bench.ledger.list,
        bench.claim.label,
    ]


def test_the_fold_opens_and_a_taxon_is_read_with_enter(bench: BenchView, state: BenchState, qtbot):
    state.observe(FIVE_SIDED)
    kinds = [row.kind for row in bench.lineup.rows.rows]
    bench.lineup.list.setFocus()
    bench.lineup.list.setCurrentIndex(bench.lineup.rows.index(kinds.index(RowKind.FOLD)))
    press(qtbot, KEY.Key_Return)
    gone = next(r for r in bench.lineup.rows.rows if r.kind is RowKind.GONE)
    bench.lineup.list.setCurrentIndex(bench.lineup.rows.index(bench.lineup.rows.rows.index(gone)))
    press(qtbot, KEY.Key_Return)

    assert bench.middle.page is Page.TAXON
    assert bench.middle.taxon.taxon == gone.taxon
    assert "It would come back without: Sternum shape." in bench.middle.taxon.text.toPlainText()


def test_a_sheet_says_names_range_papers_labels_and_sources(
    bench: BenchView, state: BenchState, qtbot
):
    bench.middle.open_taxon("pandinus_imperator")
    qtbot.waitUntil(lambda: not bench.middle.busy, timeout=20_000)
    text = bench.middle.taxon.text.toPlainText()

    for word in ("Scorpionidae", "West Africa", "Appendix II", "Emperor scorpion", "Told from"):
        assert word in text
    assert "Sources" in text
    press(qtbot, KEY.Key_Escape)
    assert bench.middle.page is Page.START


def test_two_chosen_taxa_are_laid_side_by_side(bench: BenchView, state: BenchState, qtbot):
    state.observe(FIVE_SIDED)
    for number in (0, 1):
        index = bench.lineup.rows.index(number)
        qtbot.mouseClick(
            bench.lineup.list.viewport(),
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.ControlModifier,
            bench.lineup.list.visualRect(index).center(),
        )
    bench.lineup.compare()

    chosen = tuple(row.taxon for row in bench.lineup.rows.rows[:2])
    assert bench.middle.page is Page.COMPARISON
    assert bench.middle.comparison.taxa == chosen
    assert bench.middle.comparison.model.columnCount() == 3


def test_choosing_two_opens_the_comparison_and_a_third_joins_it(
    bench: BenchView, state: BenchState, qtbot
):
    state.put_on_bench(sample_case(state.session.key))
    names = bench.lineup.list
    names.setFocus()
    names.setCurrentIndex(bench.lineup.rows.index(0))
    seen = []
    for _ in range(2):
        qtbot.keyClick(names, KEY.Key_Down, Qt.KeyboardModifier.ShiftModifier)
        seen.append((bench.middle.page, len(bench.middle.comparison.taxa), names.hasFocus()))

    assert seen == [(Page.COMPARISON, 2, True), (Page.COMPARISON, 3, True)]


def test_the_reasons_name_what_is_missing_and_link_to_it(
    bench: BenchView, state: BenchState, qtbot
):
    state.put_on_bench(sample_case(state.session.key))
    bench.middle.open_reasons()
    qtbot.waitUntil(lambda: not bench.middle.busy, timeout=20_000)
    text = bench.middle.reasons.text.toPlainText()
    missing = state.session.reasoned.assessment.verdict.unmet
    bench.middle.reasons.linked.emit("character", "carapace_surface")

    assert "What is missing for a name" in text
    assert "The closest rivals" in text
    assert missing
    assert bench.middle.page is Page.QUESTION
    assert state.session.asked == "carapace_surface"


def test_couplets_and_free_choice_change_at_any_moment_and_lose_nothing(
    bench: BenchView, state: BenchState, qtbot
):
    state.observe(FIVE_SIDED)
    state.go_by(Mode.COUPLETS)
    bench.middle.focus_answer()
    press(qtbot, KEY.Key_2, KEY.Key_Return)
    walked = state.session.case
    state.go_by(Mode.FREE)

    assert [step.couplet for step in walked.walk] == ["1"]
    assert walked.finding("sternum_shape") is not None
    assert len(walked.findings) == 2
    assert state.session.case == walked
    assert bench.middle.page is Page.QUESTION


def test_a_lead_that_findings_decide_is_marked(bench: BenchView, state: BenchState):
    state.observe(Finding(character="metasoma_robustness", states=("thick",)))
    state.go_by(Mode.COUPLETS)

    assert [card.isChecked() for card in bench.middle.walk.cards] == [True, False]


def test_both_could_be_right_follows_both(bench: BenchView, state: BenchState, qtbot):
    state.go_by(Mode.COUPLETS)
    bench.middle.focus_answer()
    press(qtbot, KEY.Key_B, KEY.Key_Return)

    assert state.session.case.walk[0].leads == (0, 1)
    press(qtbot, KEY.Key_Backspace)
    assert state.session.case.walk == ()


def test_a_walk_against_the_findings_says_so(bench: BenchView, state: BenchState):
    state.take("1", (1,))
    state.observe(Finding(character="metasoma_robustness", states=("thick",)))
    state.go_by(Mode.COUPLETS)

    assert "speak against the lead taken at 1b" in bench.middle.walk.clash


def test_a_walk_to_its_end_names_the_taxa(bench: BenchView, state: BenchState):
    while couplets := state.couplets():
        state.take(couplets[0].id, (0,))
    state.go_by(Mode.COUPLETS)

    assert bench.middle.walk.cards == ()
    assert "taxon:" in bench.middle.walk.note


@pytest.mark.parametrize("aim", list(Aim))
def test_an_aim_is_chosen_in_words(bench: BenchView, state: BenchState, aim: Aim):
    bench.middle.bar.pick_aim(aim)

    assert state.session.case.aim is aim


def test_sex_stage_and_care_are_said_in_one_menu(bench: BenchView, state: BenchState):
    animal = bench.middle.bar.animal
    by_text = {action.text(): action for action in animal.menu().actions()}
    by_text["Male"].trigger()
    by_text["Adult"].trigger()
    by_text["Looked in a hurry"].trigger()

    case = state.session.case
    assert case.specimen == Specimen(sex=Sex.MALE, stage=Stage.ADULT)
    assert animal.text() == "Male, adult"
    assert case.care is Care.HURRIED


def test_a_term_is_explained_where_it_stands(bench: BenchView, state: BenchState, qtbot):
    bench.middle.ask("sternum_shape")
    press(qtbot, KEY.Key_G)
    shown, text = bench.term.isVisible(), bench.term.text
    press(qtbot, KEY.Key_Escape)

    assert shown
    assert "hind legs" in text
    assert bench.term.isHidden()
    assert QApplication.focusWidget() in bench.middle.question.grid.tiles


def test_a_drawing_is_seen_large_and_turned(bench: BenchView, state: BenchState, qtbot):
    bench.middle.ask("sternum_shape")
    press(qtbot, KEY.Key_Z)
    first = QApplication.focusWidget().accessibleName()
    press(qtbot, KEY.Key_Right)
    second = QApplication.focusWidget().accessibleName()
    press(qtbot, KEY.Key_Escape)

    assert first.startswith("Triangular")
    assert second.startswith("Five-sided")
    assert QApplication.focusWidget() in bench.middle.question.grid.tiles


def test_the_selection_of_the_line_up_stays_with_its_taxon(bench: BenchView, state: BenchState):
    wanted = next(
        n for n, row in enumerate(bench.lineup.rows.rows) if row.taxon == "pandinus_imperator"
    )
    bench.lineup.list.setCurrentIndex(bench.lineup.rows.index(wanted))
    state.observe(FIVE_SIDED)

    chosen = [index.data(ROW_ROLE).taxon for index in bench.lineup.list.selectedIndexes()]
    assert chosen == ["pandinus_imperator"]


@pytest.mark.parametrize("width", [620, 936, 1216])
def test_every_lead_of_a_couplet_is_seen_whole(
    bench: BenchView, state: BenchState, qtbot, width: int
):
    state.new_case("ornamental-tarantulas")
    bench.resize(width, 700)
    state.go_by(Mode.COUPLETS)
    for couplet, lead in (("1", 1), ("2", 1), ("3", 2)):
        state.take(couplet, (lead,))
    view = bench.middle.walk
    qtbot.waitUntil(lambda: len(view.cards) == 5)
    qtbot.wait(50)  # until the layouts are done
    inner = view.cards[0].parentWidget()
    seen = inner.parentWidget().width()

    assert inner.width() <= seen
    assert all(card.geometry().right() < seen for card in view.cards)
    assert all(card.width() >= LEAST_WIDTH for card in view.cards)


@pytest.mark.parametrize("width", [620, 936, 1216, 2400])
def test_no_area_is_cut_off_at_any_width(bench: BenchView, qtbot, width: int):
    bench.resize(width, 760)
    areas = (bench.claim, bench.verdict, bench.middle, bench.lineup, bench.ledger)

    def inside() -> bool:
        lefts = [(area, area.mapTo(bench, area.rect().topLeft()).x()) for area in areas]
        return all(left >= 0 and left + area.width() <= width for area, left in lefts)

    qtbot.waitUntil(inside)
    assert bench.middle.width() >= min(width // 2, 500)


@pytest.fixture
def largest(state: BenchState, desk: Desk, qtbot) -> Iterator[BenchView]:
    scheme = desk.theme.scheme
    desk.theme.choose(scheme, 200)
    view = BenchView(state, desk)
    qtbot.addWidget(view)
    view.resize(912, 700)  # a window of 1000 without its rail
    with qtbot.waitExposed(view):
        view.show()
    yield view
    view.close_work()
    desk.theme.choose(scheme, 100)


def test_with_the_largest_text_nothing_is_wider_than_the_smallest_window(
    largest: BenchView, state: BenchState
):
    state.put_on_bench(sample_case(state.session.key))
    middle, wide = largest.middle, {}
    for open_page in (middle.focus_answer, middle.open_reasons, middle.leave):
        open_page()
        QApplication.processEvents()
        wide[middle.page] = middle.mapTo(largest, middle.rect().topRight()).x()

    assert all(right < 912 for right in wide.values()), wide
