"""Permit fields in words, in every language, and on the paper."""

from dataclasses import fields, replace
from itertools import product

import pytest
from pypdf import PdfReader

from idkey.cli.opening import opened
from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.report.language import CODES, in_language
from idkey.report.pdf import write_pdf
from idkey.report.permit_words import (
    CODES as LISTS,
)
from idkey.report.permit_words import (
    check_locally,
    code_words,
    field_words,
    gap_words,
    permit_needed,
)
from idkey.report.rationale import rationale
from idkey.store.permits import Fault, Gap
from idkey.store.record import Papers


@pytest.fixture(scope="module")
def key() -> Key:
    return opened(SAMPLE_KEY)


def judged(key: Key, case: Case):
    return assess(compile_key(key, case.specimen, case.care), case)


@pytest.mark.parametrize("code", CODES)
def test_every_field_code_and_fault_has_words(code: str):
    language = in_language(code)
    names = [one.name for one in fields(Papers)]

    assert all(field_words(name, language) for name in names)
    for field, codes in LISTS.items():
        assert all(code_words(field, one.code, language) != one.code for one in codes)
    for name, fault in product(names, Fault):
        assert gap_words(Gap(field=name, fault=fault, given="x"), language).endswith(".")


def test_a_code_nobody_knows_stays_as_it_was_written():
    assert code_words("source", "Q?") == "Q?"


def test_the_lists_ask_as_long_as_a_listed_taxon_is_possible(key: Key):
    blank = replace(sample_case(key), findings=())
    permit, taxa = permit_needed(key, judged(key, blank))

    assert permit.listed
    assert "Pandinus imperator" in taxa


def test_the_document_shows_what_is_noted_what_is_missing_and_whom_to_ask(key: Key, tmp_path):
    blank = replace(sample_case(key), findings=())
    papers = Papers(source="C", document="DE-0815/25")
    found = rationale(key, judged(key, blank), papers=papers, language="de")
    write_pdf(tmp_path / "r.pdf", found)
    pages = PdfReader(tmp_path / "r.pdf").pages
    text = " ".join(" ".join(page.extract_text() for page in pages).split())

    assert found.papers is not None
    assert "Herkunftscode: C: in Gefangenschaft gezüchtet" in text
    assert "Der Zweckcode fehlt" in text
    assert "vor Ort klären, mit der Behörde" in text
    assert check_locally(in_language("de")) == found.papers.check


def test_without_papers_the_document_has_no_such_part(key: Key):
    assert rationale(key, judged(key, sample_case(key))).papers is None
    assert rationale(key, judged(key, sample_case(key)), papers=Papers()).papers is None
