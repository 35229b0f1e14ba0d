"""Whether a rationale is what was written, and whether a key still says the same."""

import io
import json
import tempfile
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pypdf import PdfReader, PdfWriter

from idkey.errors import IdKeyError
from idkey.model.case import Finding
from idkey.model.score import Shows
from idkey.report.notes import PictureNote
from idkey.report.pdf import ATTACHMENT, pdf_bytes, write_pdf
from idkey.report.rationale import DIGEST, rationale, rationale_digest, rationale_json
from idkey.report.reasons import Rationale
from idkey.report.verify import Pages, VerifyResult, verify, verify_words
from idkey.report.words import in_language
from tests.report.specimens import KEY, case, judged

FOUND = rationale(KEY, judged(case("lampa_rubra", 11)))
RECORD = rationale_json(FOUND)


@pytest.fixture(scope="module")
def paper(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The rationale as it was handed over."""
    path = tmp_path_factory.mktemp("paper") / "rationale.pdf"
    write_pdf(path, FOUND)
    return path


def _json(folder: Path, text: str) -> Path:
    path = folder / "rationale.json"
    path.write_text(text, "utf-8")
    return path


def test_an_untouched_paper_passes_every_check(paper: Path):
    result = verify(paper, record=RECORD, key=KEY)

    assert result.good
    assert (result.intact, result.pages, result.same_as_record) == (True, Pages.SAME, True)
    assert (result.same_key, result.changes) == (True, ())
    assert result.digest == rationale_digest(FOUND)
    assert verify_words(result).splitlines()[-1] == (
        "It was made with the key in hand, which answers the same."
    )


def test_untouched_data_pass_without_pages(tmp_path: Path):
    result = verify(_json(tmp_path, RECORD))

    assert result.good
    assert result.pages is Pages.NONE
    assert "only the record shows a forgery" in verify_words(result)


@settings(max_examples=25)
@given(st.data())
def test_any_change_of_a_sentence_breaks_the_digest(data: st.DataObject):
    fields = json.loads(RECORD)
    texts = [name for name, value in fields.items() if isinstance(value, str) and name != DIGEST]
    name = data.draw(st.sampled_from([n for n in texts if n not in ("kind", "level")]))
    fields[name] += data.draw(st.text("abc .", min_size=1, max_size=3))
    result = _checked(json.dumps(fields))

    assert not result.intact
    assert not result.good


def _checked(text: str) -> VerifyResult:
    with tempfile.TemporaryDirectory() as folder:
        return verify(_json(Path(folder), text))


def test_data_rewritten_with_a_new_digest_are_found_out_by_the_record(tmp_path: Path):
    forged = rationale_json(replace(FOUND, heading="Lampa aurea"))
    result = verify(_json(tmp_path, forged), record=RECORD)

    assert result.intact
    assert result.same_as_record is False
    assert not result.good
    assert "trust the record" in verify_words(result)


def test_pages_of_another_animal_around_the_data_are_found_out(tmp_path: Path):
    other = rationale(KEY, judged(case("lampa_nigra", 11)))
    writer = PdfWriter()
    writer.append(PdfReader(io.BytesIO(pdf_bytes(other))), import_outline=False)
    writer.add_attachment(ATTACHMENT, RECORD.encode())
    path = tmp_path / "mixed.pdf"
    writer.write(path)
    result = verify(path)

    assert result.intact
    assert result.pages is Pages.DIFFERENT
    assert not result.good
    assert "do not say what its data say" in verify_words(result)


@pytest.mark.parametrize(
    "found",
    [
        replace(FOUND, key=replace(FOUND.key, program="0.0.0")),
        replace(FOUND, pictures=(PictureNote(id="p"),)),
        replace(FOUND, findings=(replace(FOUND.findings[0], figures=("figures/gone.svg",)),)),
    ],
    ids=["other program", "photographs", "drawing gone"],
)
def test_pages_that_cannot_be_laid_out_again_are_not_judged(tmp_path: Path, found: Rationale):
    path = tmp_path / "rationale.pdf"
    write_pdf(path, found)
    result = verify(path)

    assert result.pages is Pages.UNTOLD
    assert result.good
    assert "were not compared" in verify_words(result)


def test_a_key_that_answers_otherwise_is_told_with_then_and_now(tmp_path: Path):
    swapped = tuple(
        replace(score, value=Shows({"ridged": None}))
        if score.taxon == "lampa_nigra" and isinstance(score.value, Shows)
        else score
        for score in KEY.scores
    )
    newer = replace(KEY, scores=swapped, version="2.0.0", digest="77" * 32)
    held = _json(tmp_path, rationale_json(rationale(KEY, judged(case("lampa_nigra", 11)))))
    result = verify(held, key=newer)

    assert result.same_key is False
    assert {change.what for change in result.changes} >= {"verdict", "name"}
    assert result.good
    assert "The key in hand answers otherwise: name was Lampa nigra, and is now" in verify_words(
        result
    )


def test_a_key_without_a_character_that_was_seen_is_asked_with_the_rest(tmp_path: Path):
    seen = case("lampa_rubra", 11).observe(Finding(character="length", value=120))
    smaller = replace(
        KEY,
        characters=tuple(c for c in KEY.characters if c.id != "length"),
        scores=tuple(s for s in KEY.scores if s.character != "length"),
        digest="88" * 32,
    )
    held = _json(tmp_path, rationale_json(rationale(KEY, judged(seen))))
    result = verify(held, key=smaller)

    assert result.changes == ()
    assert verify_words(result).endswith("The key has changed since; it still answers the same.")


def test_the_result_is_told_in_german_too(tmp_path: Path):
    result = verify(_json(tmp_path, RECORD), record=RECORD)

    assert "unversehrt" in verify_words(result, in_language("de"))
    assert "Es sagt, was die Akte sagt." in verify_words(result, in_language("de"))


@pytest.mark.parametrize(
    ("content", "message"),
    [
        (b"%PDF-1.7 torn", "is a broken PDF|has no rationale inside"),
        (b"\x00\x01", "not JSON"),
        (b"{}", "gives no form number"),
    ],
)
def test_a_file_that_is_no_rationale_is_named_with_a_remedy(
    tmp_path: Path, content: bytes, message: str
):
    path = tmp_path / "file"
    path.write_bytes(content)

    with pytest.raises(IdKeyError, match=message) as caught:
        verify(path)

    assert caught.value.remedy


def test_a_pdf_without_data_says_that_the_original_is_wanted(tmp_path: Path, paper: Path):
    writer = PdfWriter()
    for page in PdfReader(paper).pages:
        writer.add_page(page)
    path = tmp_path / "printed-again.pdf"
    writer.write(path)

    with pytest.raises(IdKeyError, match="no rationale inside") as caught:
        verify(path)

    assert "original" in caught.value.remedy


def test_a_missing_file_is_named(tmp_path: Path):
    with pytest.raises(IdKeyError, match="cannot be read"):
        verify(tmp_path / "missing.pdf")
