"""The rates as a table that a spreadsheet opens without computing anything."""

import csv
from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from idkey.store.book import Store
from idkey.store.cells import harmless
from idkey.store.rates_table import COLUMNS, rates_table
from idkey.store.record import VerdictSummary
from tests.store.cases import EXAMPLE, example


def saved(store: Store, number: int, kind: str, day: str, supplier: str = "Mossy Corner") -> None:
    claim = replace(EXAMPLE.claim, date=day, supplier=supplier)
    store.save(example(number, claim=claim), VerdictSummary(kind=kind, level="open"))


def rows(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(text.splitlines()))


def test_labels_and_suppliers_have_a_line_for_all_time_and_for_each_month(store: Store):
    saved(store, 1, "holds", "2025-09-02")
    saved(store, 2, "contradicted", "2025-10-02")
    saved(store, 3, "open", "2025-10-03")
    text, lines = rates_table(store, {"asian_forest_scorpion": "Asian Forest Scorpion"})
    found = rows(text)

    assert len(found) == lines == 6
    assert {(r["counted_by"], r["name"]) for r in found} == {
        ("label", "Asian Forest Scorpion"),
        ("supplier", "Mossy Corner"),
    }
    whole = found[0]
    assert [whole[name] for name in COLUMNS[2:]] == [
        "all", "3", "2", "1", "0", "1", "0.5000", "0.0945", "0.9055",
    ]  # fmt: skip
    assert [(r["period"], r["decided"]) for r in found[1:3]] == [("2025-09", "1"), ("2025-10", "1")]


def test_without_a_decided_case_no_share_is_made_up(store: Store):
    saved(store, 1, "open", "2025-09-02")

    assert rows(rates_table(store, {})[0])[0]["share_contradicted"] == ""


def test_a_supplier_that_looks_like_a_formula_is_text(store: Store):
    saved(store, 1, "holds", "2025-09-02", supplier="=HYPERLINK(1)")
    names = {"asian_forest_scorpion": "+cmd|' /C calc'!A0"}
    cells = [cell for row in csv.reader(rates_table(store, names)[0].splitlines()) for cell in row]

    assert "'=HYPERLINK(1)" in cells
    assert "'+cmd|' /C calc'!A0" in cells


@given(st.text(max_size=8))
def test_no_cell_begins_like_a_formula(text: str):
    assert harmless(text)[:1] not in ("=", "@", "\t", "\r")
