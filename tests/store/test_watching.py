"""A watched folder gets the rationale of each sale, once."""

from pathlib import Path

import pytest

from idkey.errors import IdKeyError
from idkey.store.book import Store
from idkey.store.codec import sha256
from idkey.store.rationales import rationales_of
from idkey.store.record import Sale, StoredCase
from idkey.store.watching import SaleFolder
from tests.store.cases import example


def document(stored: StoredCase, sale: Sale) -> bytes:
    """A small document that names what it is about."""
    return f"{stored.case.id} {stored.revision.number} {sale.number}".encode()


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "till"
    made.mkdir()
    return made


@pytest.fixture
def book(store: Store) -> Store:
    for number in (1, 2):
        store.save(example(number), None)
    store.attach_sale("case-000001", Sale(number="2025/0042"))
    return store


def test_a_sale_in_the_folder_gets_its_rationale_beside_it(book: Store, folder: Path):
    (folder / "2025-0042.txt").touch()
    (done,) = SaleFolder(book, folder, document).poll()

    assert done.file == folder / "2025-0042 rationale case0000.pdf"
    assert done.file.read_bytes() == b"case-000001 1 2025/0042"
    (noted,) = rationales_of(book, "case-000001")
    assert (noted.digest, noted.sale) == (sha256(done.file.read_bytes()), "2025/0042")
    assert sorted(file.name for file in folder.iterdir()) == [
        "2025-0042 rationale case0000.pdf",
        "2025-0042.txt",
    ]


def test_a_folder_named_by_the_sale_gets_it_inside(book: Store, folder: Path):
    (folder / "2025_0042").mkdir()
    (done,) = SaleFolder(book, folder, document).poll()

    assert done.file is not None
    assert done.file.parent == folder / "2025_0042"


def test_it_is_written_once_also_after_the_case_has_changed(book: Store, folder: Path):
    (folder / "2025-0042.txt").touch()
    watch = SaleFolder(book, folder, document)
    first = watch.poll()
    book.save(example(1, note="second look"), None)

    assert len(first) == 1
    assert watch.poll() == ()
    assert SaleFolder(book, folder, document).poll() == ()


def test_a_sale_noted_later_is_attached_at_the_next_poll(book: Store, folder: Path):
    (folder / "77.txt").touch()
    watch = SaleFolder(book, folder, document)
    before = watch.poll()
    book.attach_sale("case-000002", Sale(number="77"))

    assert before == ()
    assert [done.case_id for done in watch.poll()] == ["case-000002"]


def test_a_number_that_only_begins_alike_is_another_sale(book: Store, folder: Path):
    (folder / "2025-004.txt").touch()
    (folder / "2025.txt").touch()
    (folder / "---.txt").touch()

    assert SaleFolder(book, folder, document).poll() == ()


def test_what_fails_says_why_and_is_tried_again(book: Store, folder: Path):
    def failing(_stored: StoredCase, _sale: Sale) -> bytes:
        raise IdKeyError("The key is missing.", "Install it.")

    (folder / "2025-0042.txt").touch()
    (failed,) = SaleFolder(book, folder, failing).poll()
    (done,) = SaleFolder(book, folder, document).poll()

    assert (failed.file, failed.problem) == (None, "The key is missing. Install it.")
    assert done.file is not None


def test_a_folder_that_is_gone_is_named(book: Store, folder: Path):
    with pytest.raises(IdKeyError, match="cannot be read"):
        SaleFolder(book, folder / "gone", document).poll()
