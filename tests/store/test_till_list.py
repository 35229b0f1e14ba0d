"""Tables of sales, from a till and to a spreadsheet."""

import csv
import io

import pytest

from idkey.errors import IdKeyError
from idkey.store.book import Store
from idkey.store.day import iso_day
from idkey.store.record import Papers, Sale, VerdictSummary
from idkey.store.till_list import (
    columns_in,
    remember,
    remembered,
    sale_table,
    take_in,
    till_lines,
)
from tests.store.cases import EXAMPLE, example

TILL = (
    "Beleg;Datum;Betrag;Kunde;Tier\r\n"
    "2025-0042;8.11.2025;45,00 €;B-1733;case-000001\r\n"
    ";9.11.2025;1,00 €;;\r\n"
    "2025-0043;31.2.2025;12,00 €;B-2;case-000002\r\n"
    "2025-0044;10.11.2025;9,00 €;B-3;\r\n"
)
MAPPING = {
    "number": "Beleg",
    "date": "Datum",
    "price": "Betrag",
    "buyer": "Kunde",
    "case": "Tier",
}


@pytest.fixture
def book(store: Store) -> Store:
    store.save(example(1), None)
    store.save(example(2), None)
    return store


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "cp1252"])
def test_the_sales_of_a_till_go_to_their_cases(book: Store, encoding: str):
    taken = take_in(book, TILL.encode(encoding), MAPPING, by="MT")

    assert taken.attached == ("case-000001", "case-000002")
    assert [line.sale.number for line in taken.unmatched] == ["2025-0044"]
    assert taken.problems == (
        "Line 3 has no sale number and was left out.",
        "Line 4: '31.2.2025' is no date; it was left empty.",
    )
    assert book.sales("case-000001") == (
        Sale(number="2025-0042", date="2025-11-08", price="45,00 €", buyer="B-1733"),
    )


def test_taking_the_same_table_in_twice_adds_nothing(book: Store):
    take_in(book, TILL.encode(), MAPPING)
    before = book.save(example(3), None).entry
    take_in(book, TILL.encode(), MAPPING)

    assert book.save(example(4), None).entry == before + 1


def test_a_line_without_a_case_goes_to_the_cases_that_have_the_sale(book: Store):
    book.attach_sale("case-000002", Sale(number="2025-0044", papers=Papers(source="C")))
    take_in(book, TILL.encode(), MAPPING)

    assert book.sales("case-000002")[1] == Sale(
        number="2025-0044",
        date="2025-11-10",
        price="9,00 €",
        buyer="B-3",
        papers=Papers(source="C"),
    )


def test_a_line_that_names_an_unknown_case_is_unmatched(book: Store):
    content = b"number,case\n7,nowhere\n"

    taken = take_in(book, content, {"number": "number", "case": "case"})

    assert [line.case_id for line in taken.unmatched] == ["nowhere"]
    assert taken.attached == ()


def test_the_columns_of_a_till_are_remembered(store: Store):
    columns = columns_in(TILL.encode())
    first = remembered(store, columns)
    remember(store, columns, MAPPING)

    assert columns == ("Beleg", "Datum", "Betrag", "Kunde", "Tier")
    assert first == {}
    assert remembered(store, columns) == MAPPING
    assert remembered(store, (*columns, "more")) == {}


def test_columns_named_as_our_fields_are_known_without_being_told(store: Store):
    assert remembered(store, ("Number", "DATE", "Papers Source", "x")) == {
        "number": "Number",
        "date": "DATE",
        "papers_source": "Papers Source",
    }


@pytest.mark.parametrize("mapping", [{"number": "Nummer"}, {"weather": "Beleg"}, {"date": "Datum"}])
def test_a_mapping_that_cannot_work_is_not_remembered(store: Store, mapping: dict[str, str]):
    with pytest.raises(ValueError, match=r"mapping goes|needs a column"):
        remember(store, columns_in(TILL.encode()), mapping)


@pytest.mark.parametrize("content", [b"", b"\n\n", b"just a line of text\n"])
def test_a_file_that_is_no_table_is_refused(content: bytes):
    with pytest.raises(IdKeyError, match="is no table") as caught:
        columns_in(content)
    assert "CSV" in caught.value.remedy


def test_a_table_without_the_number_lists_its_columns():
    with pytest.raises(IdKeyError, match="no column 'Nr'") as caught:
        till_lines(TILL.encode(), {"number": "Nr"})
    assert "Beleg, Datum" in caught.value.remedy


def test_our_table_can_be_read_back_and_holds_no_formula(book: Store):
    evil = Sale(number="=1+1", price="-5", buyer="@x", note="+cmd", papers=Papers(source="C"))
    summary = VerdictSummary(
        kind="contradicted", level="open", name="=cf.", cautions=("hazard", "permit")
    )
    book.save(EXAMPLE, summary)
    book.attach_sale(EXAMPLE.id, evil)
    table = sale_table(book, [EXAMPLE.id, "case-000001"], buyers=True)
    rows = list(csv.DictReader(io.StringIO(table)))
    lines, _ = till_lines(table.encode(), remembered(book, columns_in(table.encode())))

    assert not any(cell.startswith(("=", "+", "@")) for row in rows for cell in row.values())
    assert [(line.case_id, line.sale) for line in lines] == [(EXAMPLE.id, evil)]
    assert rows[0]["cautions"] == "hazard permit"
    assert rows[1]["case"] == "case-000001"
    assert rows[1]["number"] == ""


def test_who_bought_is_left_out_unless_asked_for(book: Store):
    book.attach_sale("case-000001", Sale(number="1", buyer="B-1733"))

    assert "B-1733" not in sale_table(book, ["case-000001"])
    assert "B-1733" in sale_table(book, ["case-000001"], buyers=True)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("", ""),
        ("2025-11-08", "2025-11-08"),
        ("2025-11-08T10:00:00", "2025-11-08"),
        ("8.11.2025", "2025-11-08"),
        ("08/11/2025", "2025-11-08"),
        ("11/25/2025", None),
        ("yesterday", None),
    ],
)
def test_days_are_read(text: str, day: str | None):
    assert iso_day(text) == day
