"""The rationale on paper, read back by another library."""

import io
import re
from dataclasses import replace
from pathlib import Path

import pytest
import zxingcpp
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image
from pypdf import PdfReader

from idkey import places
from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key
from idkey.model.case import Case, Claim, Finding
from idkey.model.character import Look
from idkey.report.notes import PictureNote
from idkey.report.pdf import ATTACHMENT, pdf_bytes, write_pdf
from idkey.report.rationale import rationale, rationale_digest, rationale_from, rationale_json
from idkey.report.reasons import Rationale
from tests.report.specimens import KEY, case, chimera, judged


def written(one: Case, language: str = "en") -> Rationale:
    """The rationale of a case on the small key."""
    return rationale(KEY, judged(one), language=language)


def _read(found: Rationale, **more: object) -> PdfReader:
    return PdfReader(io.BytesIO(pdf_bytes(found, **more)))  # type: ignore[arg-type]


def _text(reader: PdfReader) -> str:
    return re.sub(r"\s+", " ", " ".join(page.extract_text() for page in reader.pages))


def _width(image: bytes) -> int:
    with Image.open(io.BytesIO(image)) as opened:
        return opened.width


@pytest.fixture(scope="module")
def short() -> Rationale:
    """A label that is contradicted by a plain animal."""
    return written(case("lampa_rubra", 11))


@pytest.fixture(scope="module")
def paper(short: Rationale) -> PdfReader:
    """Its PDF, read by pypdf."""
    return _read(short)


def test_the_attached_data_is_the_rationale(short: Rationale, paper: PdfReader):
    attached = paper.attachments[ATTACHMENT][0]

    assert attached.decode("utf-8") == rationale_json(short)
    assert rationale_from(attached.decode("utf-8"))[0] == short


def test_the_square_code_holds_case_and_digest(short: Rationale, paper: PdfReader):
    with Image.open(io.BytesIO(paper.pages[0].images[0].data)) as image:
        codes = zxingcpp.read_barcodes(image.convert("L"))

    assert codes[0].text == (
        f"idkey rationale\ncase {short.case.id}\nsha256 {rationale_digest(short)}"
    )


def test_a_short_case_fits_on_one_page(paper: PdfReader):
    assert len(paper.pages) == 1


def test_the_page_says_verdict_claim_findings_look_alikes_and_what_was_not_seen(
    short: Rationale, paper: PdfReader
):
    text = _text(paper)
    wanted = [
        short.title,
        short.sentence,
        "Black Lamp Scorpion, CB",
        "Lantern Street Vivarium",
        "3 November 2025",
        *(finding.name for finding in short.findings),
        *(alike.name for alike in short.look_alikes),
        "Ridge 0: ridged; it shows smooth [1]",
        "Not looked at: Length *; Ridge 11.",
        "Inventor A. 1901",
        "5f" * 32,
        "Determined by RB",
        "Second look by",
        "no safety clearance",
        "Page 1 of 1",
        rationale_digest(short)[:16],
    ]

    assert [words for words in wanted if words not in text] == []


def test_metadata_bookmarks_language_and_tags_are_set(short: Rationale, paper: PdfReader):
    about, root = paper.xmp_metadata, paper.root_object
    assert about is not None

    assert about.dc_title == {"x-default": "Identification rationale: Lampa rubra"}
    assert about.dc_creator == ["RB"]
    assert about.pdf_keywords == f"case {short.case.id}, sha256 {rationale_digest(short)}"
    assert "What was seen" in [entry.title for entry in paper.outline]
    assert root["/Lang"] == "en"
    assert bool(root["/MarkInfo"]["/Marked"])
    assert b"<pdfaid:part>3</pdfaid:part>" in about.stream.get_data()


def test_every_font_is_embedded(paper: PdfReader):
    fonts = paper.pages[0]["/Resources"]["/Font"].values()
    descriptors = [
        font.get_object()["/DescendantFonts"][0].get_object()["/FontDescriptor"].get_object()
        for font in fonts
    ]

    assert descriptors
    assert all("/FontFile2" in descriptor for descriptor in descriptors)


def test_names_are_set_in_italics_and_signs_are_not():
    reader = _read(written(case("fenestra_alta", 6)))
    styles: dict[str, str] = {}

    def visit(text: str, _cm: object, _tm: object, font: dict[str, str], _size: float) -> None:
        if text.strip() and font:
            styles.setdefault(text.strip(), font["/BaseFont"])

    reader.pages[0].extract_text(visitor_text=visit)

    assert "Italic" in styles["Fenestra"]
    assert "Italic" not in styles["cf."]


def test_equal_rationales_give_equal_bytes(short: Rationale):
    assert pdf_bytes(short) == pdf_bytes(rationale_from(rationale_json(short))[0])


def test_a_possible_danger_and_permit_stand_above_the_findings():
    found = written(case("lampa_nigra", 4))
    text = _text(_read(found))

    assert all(notice.sentence in text for notice in found.notices)
    assert text.index(found.notices[0].sentence) < text.index("What was seen")


def test_outside_the_key_is_said_in_german():
    found = written(chimera(), "de")
    text = _text(_read(found))

    assert "Außerhalb des Schlüssels" in text
    assert "Seite 1 von" in text
    assert "Nicht bestimmt" in text


@pytest.mark.slow
def test_a_long_case_runs_over_pages_and_numbers_them():
    start = case("lampa_nigra", 11)
    noted = tuple(
        replace(finding, note="seen twice in daylight and once more by lamp " * 3, by="RB")
        for finding in start.findings
    )
    claim = replace(start.claim, text="Black lamp scorpion, grown female from the big hall. " * 40)
    reader = _read(written(replace(start, findings=noted, claim=claim)))
    pages = len(reader.pages)

    assert pages >= 2
    assert f"Page {pages} of {pages}" in reader.pages[-1].extract_text()


def _first_page(words: int) -> str:
    """The first page of a rationale that a remark of so many words makes long."""
    one = case("lampa_nigra", 11)
    long = replace(one.findings[0], note="word " * words)
    reader = _read(written(replace(one, findings=(long, *one.findings[1:]))))
    return reader.pages[0].extract_text()


@pytest.mark.slow
def test_a_heading_stays_with_the_table_below_it():
    low, high = 0, 600
    while high - low > 1:  # the longest remark that leaves the heading on the first page
        middle = (low + high) // 2
        fits = "Look-alikes, and what" in _first_page(middle)
        low, high = (middle, high) if fits else (low, middle)

    assert "What separates the animal from it" in _first_page(low)
    assert "ruled out" in _first_page(low)


@pytest.mark.slow
@settings(max_examples=4)
@given(st.text(max_size=300))
def test_any_label_is_printed_and_attached_word_for_word(label: str):
    found = written(case("lampa_nigra", 1, claim=Claim(text=label)))
    data = _read(found).attachments[ATTACHMENT][0].decode("utf-8")

    assert rationale_from(data)[0].case.claim.text == found.case.claim.text


def test_a_case_without_anything_still_makes_a_page():
    bare = Case(id="c", key=KEY.id)
    found = rationale(KEY, judged(bare))
    text = _text(_read(found))

    assert "No label" in text
    assert "Nothing yet." in text


def test_a_picture_is_shown_without_what_the_camera_wrote(tmp_path: Path):
    file = tmp_path / "photo.jpg"
    exif = Image.Exif()
    exif[0x010F] = "Secret Camera"
    Image.new("RGB", (2400, 1200), (120, 80, 40)).save(file, exif=exif)
    seen = Finding(character="ridge_0", states=("smooth",), pictures=("p1",))
    found = replace(
        written(case("lampa_nigra", 3).observe(seen)),
        pictures=(PictureNote(id="p1", caption="Ridge 0, left"), PictureNote(id="lost")),
    )
    data = pdf_bytes(found, pictures={"p1": file})
    reader = PdfReader(io.BytesIO(data))

    assert b"Secret Camera" not in data
    assert "Ridge 0, left" in _text(reader)
    assert max(_width(image.data) for page in reader.pages for image in page.images) == 1400


def test_a_file_is_replaced_whole_or_not_at_all(tmp_path: Path, short: Rationale):
    path = tmp_path / "rationale.pdf"
    path.write_text("old")
    write_pdf(path, short)

    assert path.read_bytes().startswith(b"%PDF")
    assert [file.name for file in tmp_path.iterdir() if file.is_file()] == ["rationale.pdf"]


def test_a_folder_that_is_not_there_is_named_with_a_remedy(tmp_path: Path, short: Rationale):
    with pytest.raises(IdKeyError, match=r"missing.+cannot be written") as caught:
        write_pdf(tmp_path / "missing" / "a.pdf", short)

    assert "another folder" in caught.value.remedy


def test_a_figure_that_came_with_the_key_is_printed_with_its_terms():
    key = read_key(places.keys_folder() / "large-dark-scorpions")
    borrowed = "figures/large-dark-scorpions/sternum_shape/pentagonal.svg"
    terms = {"figure": borrowed, "figure_credit": "A. Novák", "figure_licence": "CC0-1.0"}
    theirs = replace(
        key,
        characters=tuple(
            replace(c, states=tuple(replace(s, **terms) for s in c.states))
            if c.id == "sternum_shape"
            else c
            for c in key.characters
        ),
    )
    seen = (Finding(character="sternum_shape", states=("triangular",), look=Look.BELOW),)
    one = Case(id="c", key=key.id, findings=seen)

    found = rationale(theirs, assess(compile_key(theirs), one))

    assert found.findings[0].figures == (borrowed,)
    assert "(A. Novák, CC0-1.0)" in _text(_read(found))
    assert rationale(key, assess(compile_key(key), one)).findings[0].figure_terms == ""


@pytest.mark.slow
def test_drawings_of_the_key_are_shown_in_the_embedded_font():
    key = read_key(places.keys_folder() / "large-dark-scorpions")
    seen = (
        Finding(character="sternum_shape", states=("triangular",), look=Look.BELOW),
        Finding(character="trichobothrial_pattern", states=("type_a",), look=Look.UV),
    )
    one = Case(id="c", key=key.id, findings=seen)
    found = rationale(key, assess(compile_key(key), one))
    reader = _read(found)
    text = _text(reader)
    fonts = {
        str(font.get_object()["/BaseFont"])
        for page in reader.pages
        for font in page["/Resources"]["/Font"].values()
    }

    assert found.findings[0].figures == (
        "figures/large-dark-scorpions/sternum_shape/triangular.svg",
    )
    assert "As drawn in the key" in text
    assert "Sternum shape: Triangular" in text
    assert all("IdkeySans" in font for font in fonts)


def test_a_drawing_outside_the_image_folder_is_not_shown(short: Rationale):
    outside = "../pyproject.toml"
    one = replace(short.findings[0], figures=(outside, "figures/none.svg"))
    text = _text(_read(replace(short, findings=(one, *short.findings[1:]))))

    assert (places.images_folder() / outside).is_file()
    assert "As drawn in the key" not in text
