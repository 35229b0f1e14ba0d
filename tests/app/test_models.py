"""Rows and tables show tuples, and keep to Qt's rules for models."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from idkey.app.bench.comparison import ComparedRow, Contrast, compared
from idkey.app.bench.ledger_view import LedgerView
from idkey.app.bench.lineup_rows import RowKind, lineup_rows
from idkey.app.bench.lineup_view import LineupView
from idkey.app.bench.others_rows import other_rows
from idkey.app.bench.others_view import OthersView
from idkey.app.bench.range_strip import Band, axis, bands
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.table import TableColumn, TableModel
from idkey.app.window.palette import Entry, Palette, found
from idkey.model.case import Claim, Finding
from idkey.model.key import Key
from idkey.report.language import ENGLISH

DISPLAY = int(Qt.ItemDataRole.DisplayRole)
SPOKEN = int(Qt.ItemDataRole.AccessibleTextRole)


def test_rows_keep_to_the_rules_of_models(qtmodeltester):
    model = RowsModel({DISPLAY: str}, chooses=lambda row: row != "heading")
    model.replace(("heading", "one", "two"))

    qtmodeltester.check(model)


def test_rows_that_cannot_be_chosen_are_passed_over():
    model = RowsModel({DISPLAY: str}, chooses=lambda row: row != "heading")
    model.replace(("heading", "one"))

    assert not model.flags(model.index(0)) & Qt.ItemFlag.ItemIsSelectable
    assert model.flags(model.index(1)) & Qt.ItemFlag.ItemIsSelectable


def test_rows_changed_in_place_are_told_as_changed(qtbot):
    model = RowsModel({DISPLAY: str})
    model.replace(("a", "b"))

    with qtbot.waitSignal(model.dataChanged), qtbot.assertNotEmitted(model.modelReset):
        model.replace(("a", "c"))


def test_a_table_keeps_to_the_rules_of_models(qtmodeltester):
    model = TableModel({DISPLAY: str})
    model.replace(("a", "b"), (TableColumn("up", str.upper), TableColumn("twice", lambda r: r * 2)))

    qtmodeltester.check(model)
    assert model.data(model.index(1, 0)) == "B"
    assert model.headerData(1, Qt.Orientation.Horizontal) == "twice"


def test_the_line_up_starts_with_every_taxon_and_something_else(state: BenchState):
    rows = lineup_rows(state.session, unfolded=False)

    assert [row.kind for row in rows].count(RowKind.STANDING) == len(state.session.key.taxa)
    assert rows[-1].kind is RowKind.OUTSIDE
    assert not any(row.leads for row in rows)


def test_what_is_ruled_out_is_folded_away_with_its_reason(state: BenchState):
    state.observe(Finding(character="sternum_shape", states=("pentagonal",)))

    folded = lineup_rows(state.session, unfolded=False)
    rows = lineup_rows(state.session, unfolded=True)
    gone = [row for row in rows if row.kind is RowKind.GONE]

    assert folded[-1].kind is RowKind.FOLD
    assert str(len(gone)) in folded[-1].name
    assert {row.reason for row in gone} == {"Sternum shape"}
    assert all("ruled out" in row.spoken(ENGLISH) for row in gone)


def test_dangers_and_papers_are_spoken_too(state: BenchState):
    spoken = {row.taxon: row.spoken(ENGLISH) for row in lineup_rows(state.session, unfolded=True)}

    assert "medically significant" in spoken["androctonus_crassicauda"]
    assert "permit-listed" in spoken["pandinus_imperator"]
    assert "medically significant" not in spoken["pandinus_imperator"]


def test_other_questions_are_grouped_by_how_one_looks_best_first(state: BenchState):
    rows = other_rows(state.session, "", ENGLISH)
    values = {q.character: q for q in state.session.reasoned.questions}
    groups: list[list[float]] = []
    for row in rows:
        if not row.character:
            groups.append([])
        elif values[row.character].blocked is None:
            groups[-1].append(values[row.character].value)

    assert len([row for row in rows if row.character]) == len(state.session.key.characters)
    assert max(row.worth for row in rows) == pytest.approx(1.0)
    assert all(group == sorted(group, reverse=True) for group in groups)


@pytest.mark.parametrize(
    ("sought", "character"),
    [
        ("sternum", "sternum_shape"),
        ("breastplate", "sternum_shape"),
        ("Brustplatte", "sternum_shape"),
        ("FIVE sided", "sternum_shape"),
    ],
)
def test_a_question_is_found_by_any_word_or_synonym(state: BenchState, sought: str, character: str):
    rows = other_rows(state.session, sought, ENGLISH)

    assert character in {row.character for row in rows}
    assert len(rows) < len(state.session.key.characters)


def test_an_answered_question_says_what_was_seen(state: BenchState):
    state.observe(Finding(character="sternum_shape", states=("pentagonal",)))
    row = next(r for r in other_rows(state.session, "", ENGLISH) if r.character == "sternum_shape")

    assert (row.answered, row.question) == (True, "Five-sided")


def test_a_question_that_waits_for_something_says_what(state: BenchState):
    rows = {row.character: row for row in other_rows(state.session, "", ENGLISH)}

    assert "sex" in rows["pectinal_teeth_male"].blocked
    assert rows["pectinal_teeth_male"].worth == 0


def test_a_comparison_shows_the_plainest_differences_first(key: Key):
    rows = compared(key, ("pandinus_imperator", "androctonus_crassicauda"))
    contrasts = [row.contrast for row in rows]

    assert contrasts == sorted(contrasts)
    assert contrasts[0] is Contrast.DIFFERENT


def test_a_taxon_compared_with_itself_differs_in_nothing(key: Key):
    rows = compared(key, ("pandinus_imperator", "pandinus_imperator"))

    assert {row.contrast for row in rows} == {Contrast.ALIKE}


def test_the_comparison_table_keeps_to_the_rules_of_models(key: Key, qtmodeltester):
    model: TableModel[ComparedRow] = TableModel({DISPLAY: lambda cell: str(cell)})
    rows = compared(key, ("pandinus_imperator", "heterometrus_spinifer"))
    model.replace(rows, (TableColumn("Character", lambda row: row),))

    qtmodeltester.check(model)


def test_bands_are_those_of_the_scored_candidates(key: Key):
    character = key.character["total_length"]

    shown = bands(key, character, ("pandinus_imperator", "nobody"))

    assert shown == (Band(name="Pandinus imperator", low=120, high=220),)


def test_an_axis_holds_every_band_and_the_animal():
    low, high = axis((Band(name="a", low=10, high=None), Band(name="b", low=None, high=40)), 55)

    assert low < 10
    assert high > 55
    assert axis((), None) == (0.0, 1.0)


def test_the_palette_finds_by_every_word_and_starts_with_what_begins_so():
    entries = [
        Entry("a", "1", "Wide telson"),
        Entry("a", "2", "Telson width"),
        Entry("a", "3", "Claw", words="telson"),
    ]

    assert [entry.name for entry in found(entries, "telson")] == ["2", "1", "3"]
    assert [entry.name for entry in found(entries, "tel wid")] == ["2", "1"]
    assert found(entries, "zebra") == ()


def test_the_views_models_keep_to_the_rules(state: BenchState, desk: Desk, qtbot, qtmodeltester):
    state.claim(Claim(text="Emperor scorpion"))
    state.observe(Finding(character="sternum_shape", states=("pentagonal",)))
    lineup, ledger, others = LineupView(desk), LedgerView(desk), OthersView(desk)
    for view in (lineup, ledger, others):
        qtbot.addWidget(view)
        view.show_session(state.session)

        qtmodeltester.check(view.rows)
        row = view.rows.index(0)
        assert row.data(SPOKEN)
        assert row.data(ROW_ROLE) is not None


def test_a_palette_model_keeps_to_the_rules(desk: Desk, qtbot, qtmodeltester):
    parent = QWidget()
    qtbot.addWidget(parent)
    palette = Palette(desk.theme, parent)
    palette.open([Entry("a", "1", "One"), Entry("a", "2", "Two")])

    qtmodeltester.check(palette.rows)
