"""The window around the bench: tray, palette, commands, messages."""

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QInputDialog

from idkey.app.bench.rationale_dialog import RationaleDialog
from idkey.app.bench.session import Mode
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.messages import message_for
from idkey.app.parts.page import Page
from idkey.app.parts.theme import Scheme, Theme
from idkey.app.window.frame import first_size
from idkey.app.window.window import Window
from idkey.engine.result import VerdictKind
from idkey.engine.sample import sample_case
from idkey.errors import IdKeyError
from idkey.model.case import Claim, Finding

KEY = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def window(state: BenchState, desk: Desk, qtbot, tmp_path) -> Iterator[Window]:
    made = Window(state, desk, rationales=tmp_path / "rationales")
    qtbot.addWidget(made)
    made.resize(1280, 800)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    made.focus_first()
    qtbot.waitUntil(made.bench.claim.label.hasFocus)
    yield made
    made.close_work()


def press(qtbot, key: Qt.Key, modifier=Qt.KeyboardModifier.NoModifier) -> None:
    qtbot.keyClick(QApplication.focusWidget(), key, modifier)


def find(qtbot, text: str) -> None:
    press(qtbot, KEY.Key_K, CTRL)
    qtbot.keyClicks(QApplication.focusWidget(), text)
    press(qtbot, KEY.Key_Return)


def test_the_palette_reaches_a_command(window: Window, state: BenchState, qtbot):
    find(qtbot, "couplets")

    assert state.session.mode is Mode.COUPLETS


def test_the_palette_reaches_a_question_by_a_synonym(window: Window, qtbot):
    find(qtbot, "brustplatte")

    assert window.bench.middle.question.character is not None
    assert window.bench.middle.question.character.id == "sternum_shape"


def test_the_palette_reaches_a_taxon(window: Window, qtbot):
    find(qtbot, "pandinus imp")

    assert window.bench.middle.page is Page.TAXON
    assert window.bench.middle.taxon.taxon == "pandinus_imperator"


def test_the_palette_reaches_an_earlier_case(window: Window, state: BenchState, qtbot):
    state.claim(Claim(text="Lantern Street special"))
    wanted = state.session.case.id
    state.leave_case()
    state.keeper.flush()
    find(qtbot, "lantern street sp")

    assert state.session.case.id == wanted


def test_escape_leaves_the_palette_and_does_nothing(window: Window, state: BenchState, qtbot):
    before = state.session
    press(qtbot, KEY.Key_K, CTRL)
    qtbot.keyClicks(QApplication.focusWidget(), "sample")
    press(qtbot, KEY.Key_Escape)

    assert window.palette_view.isHidden()
    assert state.session is before


def test_the_sample_case_is_one_key_away_and_opened_again_not_twice(
    window: Window, state: BenchState, qtbot
):
    press(qtbot, KEY.Key_F2)
    first = state.session.case
    state.keeper.flush()
    press(qtbot, KEY.Key_N, CTRL)
    press(qtbot, KEY.Key_F2)

    assert first == sample_case(state.session.key)
    assert state.session.case == first
    assert state.session.reasoned.assessment.verdict.kind is VerdictKind.CONTRADICTED


def test_a_shipment_is_copied_into_the_tray_and_walked_through(
    window: Window, state: BenchState, qtbot
):
    qtbot.keyClicks(QApplication.focusWidget(), "Emperor scorpion")
    press(qtbot, KEY.Key_Return)
    press(qtbot, KEY.Key_D, CTRL)
    dialog = window.findChild(QInputDialog)
    dialog.setIntValue(11)
    dialog.accept()
    first = state.session.case.id
    press(qtbot, KEY.Key_PageDown, CTRL)

    assert [row.label for row in window.rail.rows.rows] == ["Emperor scorpion"] * 12
    assert state.session.case.id == window.rail.rows.rows[1].case_id != first


def test_the_tray_shows_verdicts_and_opens_a_case_with_enter(
    window: Window, state: BenchState, qtbot
):
    press(qtbot, KEY.Key_F2)
    press(qtbot, KEY.Key_N, CTRL)
    kinds = [row.kind for row in window.rail.rows.rows]
    window.rail.list.setFocus()
    window.rail.list.setCurrentIndex(window.rail.rows.index(0))
    press(qtbot, KEY.Key_Return)

    assert kinds[0] is VerdictKind.CONTRADICTED
    assert state.session.case.id == window.rail.rows.rows[0].case_id


def test_commands_that_make_no_sense_now_are_off(window: Window, state: BenchState):
    before = {c: window.commands[c].isEnabled() for c in ("undo", "redo", "next_case", "mixups")}
    state.claim(Claim(text="Emperor scorpion"))
    state.copy_claim(1)
    state.observe(Finding(character="sternum_shape", states=("pentagonal",)))
    state.undo()
    after = {c: window.commands[c].isEnabled() for c in before}

    assert not any(before.values())
    assert all(after.values())


def test_the_menu_holds_every_command_by_group(window: Window):
    menu = window.commands.menu()
    inside = [action.objectName() for part in menu.actions() for action in part.menu().actions()]
    menu.deleteLater()

    assert {"new_case", "undo", "palette", "dark"} <= set(inside)
    assert len(inside) == len(set(inside))


def test_text_grows_and_shrinks_within_bounds(window: Window, theme: Theme):
    for _ in range(12):
        window.commands.run("larger")
    largest = theme.scale
    for _ in range(24):
        window.commands.run("smaller")
    smallest = theme.scale
    window.commands.run("usual_size")

    assert (largest, smallest, theme.scale) == (200, 80, 100)


def test_colours_are_chosen_by_command(window: Window, theme: Theme):
    window.commands.run("dark")
    dark = theme.dark
    window.commands.run("light")
    light = theme.dark
    window.commands.run("system")

    assert (dark, light, theme.scheme) == (True, False, Scheme.SYSTEM)


def test_an_error_becomes_a_line_that_says_what_to_do(window: Window, state: BenchState):
    state.keeper.store.save(replace(state.session.case, id="other", key="gone"), None)
    window.rail.case_asked.emit("other")

    assert "'gone'" in window.notice.text
    assert "library" in window.notice.text


def test_a_message_of_ours_is_shown_as_it_was_written():
    message = message_for(IdKeyError("The book is damaged.", "Restore a backup."))

    assert (message.problem, message.remedy) == ("The book is damaged.", "Restore a backup.")


def test_an_unexpected_error_is_told_by_a_code_and_logged_whole(caplog):
    message = message_for(RuntimeError("secret detail"))
    code = message.remedy.split()[-1].rstrip(".")

    assert "secret" not in message.problem + message.remedy
    assert code in caplog.text
    assert "secret detail" in caplog.text


@pytest.mark.parametrize(
    ("free", "size"),
    [
        ((1920, 1040), (1280, 800)),
        ((1366, 728), (1280, 700)),
        ((1280, 800), (1264, 752)),
        ((1024, 768), (1008, 720)),
        ((1000, 700), (1000, 700)),
    ],
)
def test_the_first_window_fits_the_screen_with_its_borders(
    free: tuple[int, int], size: tuple[int, int]
):
    assert first_size(*free) == size


def test_a_rationale_needs_a_signature(window: Window, state: BenchState, qtbot):
    state.put_on_bench(replace(sample_case(state.session.key), by=""))
    window.writing.open()
    dialog = window.findChild(RationaleDialog)
    unsigned = dialog.write.isEnabled()
    qtbot.keyClicks(dialog.initials, "mk")
    signed = dialog.write.isEnabled()
    preview = dialog.preview.toPlainText()
    dialog.close()

    assert (unsigned, signed) == (False, True)
    assert "Label contradicted" in preview
    assert "Look-alikes" in preview


def test_what_was_typed_for_a_rationale_is_kept_until_it_is_written(
    window: Window, state: BenchState, keeper: Keeper, qtbot
):
    state.put_on_bench(sample_case(state.session.key))
    window.commands.run("rationale")
    dialog = window.findChild(RationaleDialog)
    qtbot.keyClicks(dialog.number, "A-17")
    dialog.reject()
    keeper.flush()
    kept = state.drafted("sale")
    qtbot.waitUntil(lambda: window.findChild(RationaleDialog) is None)
    window.commands.run("rationale")
    dialog = window.findChild(RationaleDialog)
    again = dialog.number.text()
    dialog.initials.setText("mk")
    dialog.write.click()
    qtbot.waitUntil(lambda: bool(dialog.said.text()) and not dialog.show_pdf.isHidden())
    keeper.flush()
    dialog.close()

    assert "A-17" in kept
    assert again == "A-17"
    assert state.drafted("sale") == ""


def test_a_rationale_is_written_in_the_language_of_the_buyer_and_that_stays_with_the_case(
    window: Window, state: BenchState, keeper: Keeper, qtbot, tmp_path
):
    case = sample_case(state.session.key)
    state.put_on_bench(case)
    window.writing.open()
    dialog = window.findChild(RationaleDialog)
    first = dialog.preview.toPlainText()
    dialog.language.choose("de")
    german = dialog.preview.toPlainText()
    dialog.write.click()
    qtbot.waitUntil(lambda: not dialog.show_pdf.isHidden())
    keeper.flush()
    dialog.close()
    (file,) = (tmp_path / "rationales").glob("*.json")
    written = file.read_text("utf-8")
    qtbot.waitUntil(lambda: window.findChild(RationaleDialog) is None)
    window.writing.open()
    offered = window.findChild(RationaleDialog).language.chosen

    assert "Label contradicted" in first
    assert "Etikett widerlegt" in german
    assert "What was seen" not in german
    assert '"language": "de"' in written
    assert keeper.store.case(case.id).case.language == "de"
    assert offered == "de"


def test_a_rationale_that_cannot_be_written_says_where_and_what_to_do(
    window: Window, state: BenchState, qtbot, tmp_path
):
    (tmp_path / "rationales").write_text("a file, no folder")
    state.put_on_bench(sample_case(state.session.key))
    window.writing.open()
    dialog = window.findChild(RationaleDialog)
    dialog.write.click()
    qtbot.waitUntil(lambda: "Choose another folder" in dialog.said.text(), timeout=20_000)

    assert str(tmp_path) in dialog.said.text()
    assert dialog.write.isEnabled()
    dialog.close()
