"""Every control has a name, a role and a place in the order of the keyboard (QAccessible)."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QLineEdit,
    QTextBrowser,
    QWidget,
)

from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.window.commands import COMMANDS
from idkey.app.window.window import Window
from idkey.engine.sample import sample_case
from tests.app.everywhere import controls

ROLES = {
    QLineEdit: {QAccessible.Role.EditableText},
    QComboBox: {QAccessible.Role.ComboBox},
    QTextBrowser: {QAccessible.Role.StaticText, QAccessible.Role.EditableText},
    QAbstractItemView: {QAccessible.Role.List, QAccessible.Role.Table},
    QAbstractButton: {
        QAccessible.Role.Button,
        QAccessible.Role.CheckBox,
        QAccessible.Role.RadioButton,
        QAccessible.Role.ButtonMenu,
    },
}


@pytest.fixture
def window(state: BenchState, desk: Desk, qtbot, tmp_path) -> Iterator[Window]:
    made = Window(state, desk, rationales=tmp_path)
    qtbot.addWidget(made)
    made.resize(1280, 800)
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.close_work()


def pages(window: Window, state: BenchState) -> Iterator[str]:
    """Bring every page of the bench to the front."""
    middle = window.bench.middle
    yield "start"
    state.put_on_bench(sample_case(state.session.key))
    yield "question"
    middle.ask("total_length")
    yield "number"
    middle.open_note()
    yield "note"
    middle.open_reasons()
    yield "reasons"
    middle.open_taxon("pandinus_imperator")
    yield "taxon"
    middle.open_comparison(("pandinus_imperator", "heterometrus_spinifer"))
    yield "comparison"
    middle.leave()
    window.commands.run("couplets")
    yield "couplets"
    window.commands.run("palette")
    yield "palette"


def test_every_control_of_every_page_has_a_name_and_its_role(window: Window, state: BenchState):
    nameless, odd = [], []
    for page in pages(window, state):
        for control in controls(window):
            seen = QAccessible.queryAccessibleInterface(control)
            if not seen.text(QAccessible.Text.Name).strip():
                nameless.append((page, control))
            kind = next(k for k in ROLES if isinstance(control, k))
            if seen.role() not in ROLES[kind]:
                odd.append((page, control, seen.role()))

    assert not nameless
    assert not odd


def test_tab_reaches_every_control_of_the_bench(window: Window, state: BenchState, qtbot):
    state.put_on_bench(sample_case(state.session.key))
    qtbot.waitUntil(window.bench.middle.others.isVisible)
    window.bench.claim.label.setFocus()
    first, reached = window.bench.claim.label, set()
    widget: QWidget = first
    for _ in range(400):
        widget = widget.nextInFocusChain()
        if widget.isVisible() and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            reached.add(widget)
        if widget is first:
            break
    wanted = {
        control
        for control in controls(window.bench)
        if control.isEnabled() and control.focusPolicy() != Qt.FocusPolicy.NoFocus
    }

    assert wanted <= reached | {first}


def test_a_control_that_has_the_focus_looks_different(window: Window, state: BenchState, qtbot):
    state.put_on_bench(sample_case(state.session.key))
    window.activateWindow()
    same = []
    for control in controls(window.bench):
        if not control.isEnabled() or control.focusPolicy() == Qt.FocusPolicy.NoFocus:
            continue
        if isinstance(control, QAbstractItemView):
            continue  # the current row shows it
        control.clearFocus()
        before = control.grab().toImage()
        control.setFocus(Qt.FocusReason.TabFocusReason)
        if control.grab().toImage() == before:
            same.append(control)

    assert not same


def test_every_command_has_a_title_and_no_two_share_a_key(window: Window):
    keys = [command.key for command in COMMANDS if command.key]

    assert all(command.title for command in COMMANDS)
    assert len(keys) == len(set(keys))
    assert {action.text() for action in window.actions()} >= {c.title for c in COMMANDS}


def test_keys_without_modifiers_work_only_inside_their_card_wcag_2_2_criterion_2_1_4():
    plain = [c.key for c in COMMANDS if c.key and len(c.key) == 1]

    assert plain == []
