"""A buyer can be forgotten, bytes and all, and the chain stays valid."""

from pathlib import Path

import pytest
from sqlalchemy import text

from idkey.store.backups import back_up, backup_folder, restore
from idkey.store.book import Store
from idkey.store.erasing import erase_buyer
from idkey.store.record import ChainFault, Sale
from tests.store.cases import EXAMPLE, example

BUYER = "Q7-Windermere-1733"


@pytest.fixture
def book(store: Store) -> Store:
    """Two sales to one buyer, one of them corrected, and one to another."""
    for number in (1, 2, 3):
        store.save(example(number), None)
    for case_id in ("case-000001", "case-000002"):
        store.attach_sale(case_id, Sale(number="42", buyer=BUYER))
    store.attach_sale("case-000001", Sale(number="42", buyer=BUYER, price="5"))
    store.attach_sale("case-000003", Sale(number="43", buyer="other"))
    store.put_draft("sale", f"buyer: {BUYER}")
    store.put_draft("else", "kept")
    return store


def test_a_buyer_is_gone_from_sales_and_drafts_and_the_chain_is_valid(book: Store):
    erased = erase_buyer(book, BUYER)

    assert (erased.sales, erased.drafts) == (2, 1)
    assert (erased.kept_in, erased.unreadable) == ((), ())
    assert book.sales("case-000001") == (Sale(number="42", price="5"),)
    assert book.sales("case-000003")[0].buyer == "other"
    assert (book.draft("sale"), book.draft("else")) == ("", "kept")
    assert book.verify() == ()


def test_no_byte_of_the_buyer_is_left_in_any_file(tmp_path: Path):
    file = tmp_path / "idkey.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
        store.attach_sale(EXAMPLE.id, Sale(number="42", buyer=BUYER))
        store.put_draft("sale", BUYER)
        store.back_up()
        before = holding(tmp_path)
        erased = erase_buyer(store, BUYER)
        after = holding(tmp_path)

    assert len(before) >= 2
    assert erased.backups == 1
    assert after == []
    assert holding(tmp_path) == []


def test_a_restored_backup_no_longer_names_the_buyer(tmp_path: Path):
    file = tmp_path / "idkey.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
        store.attach_sale(EXAMPLE.id, Sale(number="42", buyer=BUYER))
        back_up(file)
        erase_buyer(store, BUYER)
    restore(file)
    with Store.open(file) as store:
        assert store.sales(EXAMPLE.id) == (Sale(number="42"),)
        assert store.verify() == ()


def test_a_buyer_named_in_a_remark_is_reported_since_the_chain_keeps_it(book: Store):
    book.save(example(2, note=f"sold to {BUYER}"), None)

    assert erase_buyer(book, BUYER).kept_in == ("case-000002",)


def test_a_copy_that_cannot_be_cleaned_is_named(tmp_path: Path):
    file = tmp_path / "idkey.sqlite3"
    with Store.open(file) as store:
        store.save(EXAMPLE, None)
        back_up(file)
        broken = backup_folder(file) / "idkey.replaced-1"
        broken.write_bytes(b"x" * 3000)

        assert erase_buyer(store, BUYER).unreadable == (broken,)


def test_a_log_that_another_program_holds_on_to_is_named(tmp_path: Path):
    file = tmp_path / "idkey.sqlite3"
    with Store.open(file, wait_seconds=0.1) as store, Store.open(file) as other:
        store.save(EXAMPLE, None)
        with other.database.reads() as connection:
            connection.execute(text("SELECT * FROM cases")).all()
            store.attach_sale(EXAMPLE.id, Sale(number="42", buyer=BUYER))

            assert erase_buyer(store, BUYER).unreadable == (file.with_name(file.name + "-wal"),)


def test_a_buyer_exchanged_behind_the_back_of_the_book_is_found(book: Store):
    with book.database.writes() as connection:
        connection.execute(text("UPDATE sales SET buyer = 'someone' WHERE number = '43'"))

    assert book.verify() == (
        ChainFault(
            entry=7,
            case_id="case-000003",
            number=0,
            problem="The buyer of sale 43 is not the one that was noted.",
        ),
    )


def test_nobody_cannot_be_erased(store: Store):
    with pytest.raises(ValueError, match="names nobody"):
        erase_buyer(store, " ")


def holding(folder: Path) -> list[str]:
    files = (file for file in folder.rglob("*") if file.is_file())
    return [file.name for file in files if BUYER.encode() in file.read_bytes()]
