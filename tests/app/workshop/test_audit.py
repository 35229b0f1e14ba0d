"""What is wrong or weak about a key under the pen, and the way there."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from idkey.app.parts.desk import Desk
from idkey.app.workshop.audit_page import AuditPage
from idkey.app.workshop.audit_rows import Weight
from idkey.app.workshop.audit_strip import AuditStrip
from idkey.engine.audit import Remark, Weakness
from idkey.formats.problem import Problem
from tests.app.workshop.table import Table


@pytest.fixture
def page(qtbot, table: Table, desk: Desk) -> AuditPage:
    made = AuditPage(table.state, desk)
    qtbot.addWidget(made)
    made.show()
    return made


def break_a_lead(table: Table) -> None:
    key = table.editing.key
    first = key.couplets[0]
    lead = replace(first.leads[0], to="nowhere", taxa=())
    broken = replace(first, leads=(lead, *first.leads[1:]))
    table.state.change(replace(key, couplets=(broken, *key.couplets[1:])), "A lead")
    table.checked()


def test_a_mistake_shows_as_one_types_and_enter_goes_there(qtbot, table: Table, page: AuditPage):
    asked: list[object] = []
    table.state.asked.connect(asked.append)
    assert {row.weight for row in page.rows.rows} == {Weight.REMARK}

    break_a_lead(table)
    worst = page.rows.rows[0]
    page.list.setCurrentIndex(page.rows.index(0))
    qtbot.keyClick(page.list, Qt.Key.Key_Return)

    assert worst.weight is Weight.ERROR
    assert "'nowhere'" in worst.what
    assert worst.place.startswith("couplets.yaml, line ")
    assert page.mend.text() == worst.mend
    assert asked == [worst.about]
    assert isinstance(worst.about, Problem)

    table.state.undo()
    table.checked()

    assert {row.weight for row in page.rows.rows} == {Weight.REMARK}


def test_one_kind_and_words_leave_what_has_both(page: AuditPage):
    rows = range(page.sort.count())
    page.sort.setCurrentIndex(next(n for n in rows if page.sort.value(n) is Weakness.INSEPARABLE))
    kind = page.rows.rows
    page.words.setText("androctonus BICOLOR")

    assert {row.sort for row in kind} == {Weakness.INSEPARABLE}
    assert [row.what for row in page.rows.rows] == [
        "Androctonus bicolor and Androctonus crassicauda: no character sets them apart."
    ]
    assert isinstance(page.rows.rows[0].about, Remark)

    page.words.setText("no such word")

    assert page.nothing.isVisible()
    assert not page.list.isVisible()


def test_the_strip_names_the_first_mistake_and_goes_there(qtbot, table: Table, desk: Desk):
    strip = AuditStrip(table.state, desk)
    qtbot.addWidget(strip)
    strip.resize(900, 36)
    strip.show()
    asked: list[object] = []
    table.state.asked.connect(asked.append)
    calm = strip.go.isVisible()
    break_a_lead(table)
    qtbot.mouseClick(strip.go, Qt.MouseButton.LeftButton)

    assert not calm
    assert strip.counts.text().startswith("1 error")
    assert "nowhere" in strip.first.text()
    assert len(asked) == 1
