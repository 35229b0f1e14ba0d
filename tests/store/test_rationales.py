"""Rationales that were handed out can be looked up by their document."""

from dataclasses import replace

import pytest

from idkey.store.book import Store
from idkey.store.codec import sha256
from idkey.store.faults import Missing
from idkey.store.rationales import Rationale, put_rationale, rationale_with, rationales_of
from tests.store.cases import EXAMPLE, example

PDF = b"%PDF-1.7 not really"
GIVEN = Rationale(
    digest=sha256(PDF), case_id=EXAMPLE.id, revision=1, sale="2025-0042", file="2025-0042.pdf"
)


def test_a_rationale_is_found_by_its_document_and_by_its_case(store: Store):
    store.save(EXAMPLE, None)
    put_rationale(store, GIVEN, by="RB")

    assert rationale_with(store, sha256(PDF)) == GIVEN
    assert rationales_of(store, EXAMPLE.id) == (GIVEN,)
    assert store.verify() == ()


def test_the_same_document_again_adds_nothing(store: Store):
    store.save(EXAMPLE, None)
    put_rationale(store, GIVEN)
    put_rationale(store, GIVEN)

    assert store.save(example(2), None).entry == 3


def test_a_re_issue_stands_beside_the_first(store: Store):
    store.save(EXAMPLE, None)
    put_rationale(store, GIVEN)
    store.save(replace(EXAMPLE, note="after the moult"), None)
    again = replace(GIVEN, digest=sha256(b"new"), revision=2)
    put_rationale(store, again)

    assert rationales_of(store, EXAMPLE.id) == (GIVEN, again)


def test_a_document_of_a_revision_that_was_never_saved_is_refused(store: Store):
    store.save(EXAMPLE, None)

    with pytest.raises(Missing, match="no revision 2 of case"):
        put_rationale(store, replace(GIVEN, revision=2))
    assert rationale_with(store, GIVEN.digest) is None
