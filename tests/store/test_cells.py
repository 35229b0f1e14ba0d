"""No cell of ours becomes a formula in a spreadsheet."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.store.cells import harmless, told


@given(st.text("=+-@'\t\r\n 1a＝") | st.text())
def test_a_cell_reads_back_as_it_was(cell: str):
    assert told(harmless(cell)) == cell


@given(st.text())
def test_no_cell_begins_like_a_formula_unless_it_is_a_number(cell: str):
    written = harmless(cell)

    number = written.lstrip("+-").replace(",", ".", 1).replace(".", "", 1).isdigit()
    assert number or not written.lstrip(" ").startswith(("=", "+", "-", "@", "\t", "\r"))


@pytest.mark.parametrize(
    "cell",
    ["=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "\r=1", " =1", "＝1", "'=1", "-"],
)
def test_what_a_spreadsheet_would_compute_gets_an_apostrophe(cell: str):
    assert harmless(cell) == "'" + cell


@pytest.mark.parametrize("cell", ["", "Mossy Corner", "-12.50", "+3", "4,5", "a=b", "O'Neil"])
def test_what_is_harmless_stays_as_it_is(cell: str):
    assert harmless(cell) == cell
