"""Couplets on paper."""

import io
import re
from dataclasses import replace
from html import escape
from html.parser import HTMLParser
from pathlib import Path

import pytest
from PIL import Image
from pypdf import PdfReader

from idkey import places
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key
from idkey.model.couplet import Couplet, Lead
from idkey.report.printed_figures import Drawings, lead_figures
from idkey.report.printed_html import printed_html
from idkey.report.printed_key import Layout, printed_key, printed_text
from idkey.report.printed_pdf import printed_bytes, write_printed_key
from idkey.report.words import in_language
from tests.report.specimens import KEY

COUPLETS = (
    Couplet(
        id="1",
        note="Look through the tub.",
        leads=(
            Lead(statement="Ridge 0 smooth.", to="2"),
            Lead(statement="Ridge 0 <ridged> & rough", to="4"),
        ),
    ),
    Couplet(
        id="2",
        leads=(
            Lead(statement="Ridge 1 smooth", taxa=("lampa_nigra",), remark="Dark when young."),
            Lead(statement="Ridge 1 ridged", taxa=("fenestra_alta",)),
            Lead(statement="Ridge 1 not seen", to="4"),
        ),
    ),
    Couplet(
        id="4",
        leads=(
            Lead(statement="Longer than 100 mm", taxa=("lampa_rubra", "lampa_nigra")),
            Lead(statement="Shorter", taxa=("porta_lata",)),
        ),
    ),
    Couplet(
        id="9",
        leads=(
            Lead(statement="Never reached", taxa=("porta_lata",)),
            Lead(statement="Nor this", taxa=("lampa_nigra",)),
        ),
    ),
)
COUPLED = replace(KEY, id="coupled", couplets=COUPLETS, digest="6a" * 32)
SHIPPED = ("large-dark-scorpions", "ornamental-tarantulas", "red-kneed-tarantulas")


class _Page(HTMLParser):
    """Collects tags, link targets and text."""

    def __init__(self) -> None:
        super().__init__()
        self.links: list[str] = []
        self.anchors: list[str] = []
        self.tags: set[str] = set()
        self.text = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        found = dict(attrs)
        if tag == "a":
            self.links.append((found.get("href") or "").removeprefix("#"))
        if found.get("id"):
            self.anchors.append(found["id"] or "")

    def handle_data(self, data: str) -> None:
        self.text += data


def _page(html: str) -> _Page:
    page = _Page()
    page.feed(html)
    return page


def test_a_bracketed_key_says_where_each_couplet_is_reached_from():
    assert printed_text(COUPLED).splitlines() == [
        "Lamps and doors, version 1.2.0",
        "",
        "       [Look through the tub.]",
        "1      Ridge 0 smooth … 2",
        "–      Ridge 0 <ridged> & rough … 4",
        "2(1)   Ridge 1 smooth … Lampa nigra",
        "       Dark when young.",
        "–      Ridge 1 ridged … Fenestra alta (medically significant)",
        "–      Ridge 1 not seen … 4",
        "4(1)   Longer than 100 mm … Lampa rubra or Lampa nigra",
        "–      Shorter … Porta lata (permit-listed)",
    ]


def test_an_indented_key_puts_what_follows_below_and_refers_back_the_second_time():
    assert printed_text(COUPLED, Layout.INDENTED, in_language("de")).splitlines() == [
        "Lamps and doors, Version 1.2.0",
        "",
        "     [Look through the tub.]",
        "1    Ridge 0 smooth:",
        "  2    Ridge 1 smooth … Lampa nigra",
        "       Dark when young.",
        "  2′   Ridge 1 ridged … Fenestra alta (medizinisch bedeutsam)",
        "  2′′  Ridge 1 not seen:",
        "    4    Longer than 100 mm … Lampa rubra oder Lampa nigra",
        "    4′   Shorter … Porta lata (gelistet)",
        "1′   Ridge 0 <ridged> & rough … 4",
    ]


def test_couplets_that_nobody_reaches_are_left_out():
    assert {lead.couplet for lead in printed_key(COUPLED)} == {"1", "2", "4"}
    assert printed_key(KEY) == ()


@pytest.mark.parametrize("layout", Layout)
def test_the_page_escapes_every_text_and_its_links_lead_somewhere(layout: Layout):
    html = printed_html(replace(COUPLED, title="Lamps <script>alert(1)</script>"), layout)
    page = _page(html)

    assert "<script" not in html
    assert "Ridge 0 <ridged> & rough" in page.text
    assert set(page.links) <= set(page.anchors)
    assert {"i", "main"} <= page.tags


def test_danger_is_marked_by_shape_and_word():
    page = _page(printed_html(COUPLED))

    assert "Fenestra alta ⚠ medically significant" in page.text
    assert "Porta lata permit-listed" in page.text


@pytest.mark.parametrize("layout", Layout)
def test_every_lead_is_on_the_printed_pages(layout: Layout):
    reader = PdfReader(io.BytesIO(printed_bytes(COUPLED, layout)))
    text = re.sub(r"\s+", " ", " ".join(page.extract_text() for page in reader.pages))
    leads = printed_key(COUPLED, layout)

    assert [lead.statement for lead in leads if lead.statement not in text] == []
    assert "Medically significant." in text
    assert "Dark when young." in text


@pytest.mark.parametrize("layout", Layout)
@pytest.mark.parametrize("name", SHIPPED)
def test_every_reachable_couplet_and_end_of_a_shipped_key_is_printed(name: str, layout: Layout):
    key = read_key(places.keys_folder() / name)
    leads = printed_key(key, layout)
    ends = {key.taxon[t].name for c in key.couplets for lead in c.leads for t in lead.taxa}

    assert {lead.couplet for lead in leads} == {couplet.id for couplet in key.couplets}
    assert {end for lead in leads for end in lead.ends} == ends
    assert max(map(len, printed_text(key, layout).splitlines())) <= 78


def test_drawings_stand_beside_the_leads_and_the_page_needs_no_other_file():
    key = read_key(places.keys_folder() / "kitchen-leaves")
    images = Drawings(places.images_folder())
    leads = printed_key(key)
    drawn = [figure for lead in leads for figure in lead_figures(key, lead, images)]
    page = printed_html(key, drawings=images)
    pdf = printed_bytes(key, drawings=images)
    text = re.sub(r"\s+", " ", " ".join(p.extract_text() for p in PdfReader(io.BytesIO(pdf)).pages))

    assert len(drawn) >= len(leads) - 2
    assert page.count("<img ") == page.count('src="data:image/') == len(drawn)
    assert all(f'alt="{escape(figure.words)}"' in page for figure in drawn)
    assert [lead.statement for lead in leads if lead.statement not in text] == []
    assert len(pdf) > 2 * len(printed_bytes(key))


def test_a_picture_of_the_author_is_printed_with_credit_and_licence(tmp_path: Path):
    key = read_key(places.keys_folder() / "kitchen-leaves")
    Image.new("RGB", (8, 6), "#884422").save(tmp_path / "mine.png")
    first = next(
        sees
        for lead in printed_key(key)
        for sees in key.couplet[lead.couplet].leads[lead.place].sees
        if sees.states
    )
    terms = {"figure": "mine.png", "figure_credit": "A. <Novák>", "figure_licence": "CC-BY-4.0"}
    characters = tuple(
        replace(c, states=tuple(replace(s, **terms) for s in c.states))
        if c.id == first.character
        else c
        for c in key.characters
    )
    mine = replace(key, characters=characters)

    page = printed_html(mine, drawings=Drawings(tmp_path))
    pdf = PdfReader(io.BytesIO(printed_bytes(mine, drawings=Drawings(tmp_path))))
    text = re.sub(r"\s+", " ", " ".join(p.extract_text() for p in pdf.pages))

    assert "A. &lt;Novák&gt;, CC-BY-4.0" in page
    assert "A. <Novák>, CC-BY-4.0" in text
    assert "Pictures:" not in printed_html(key, drawings=Drawings(places.images_folder()))


def test_a_key_that_is_not_saved_says_so_on_every_page():
    pages = PdfReader(io.BytesIO(printed_bytes(replace(COUPLED, digest="")))).pages

    assert all("draft, not saved" in page.extract_text() for page in pages)


def test_a_key_without_couplets_and_a_missing_folder_are_told(tmp_path: Path):
    with pytest.raises(IdKeyError, match="no couplets to print"):
        write_printed_key(tmp_path / "a.pdf", KEY)
    with pytest.raises(IdKeyError, match="cannot be written"):
        write_printed_key(tmp_path / "gone" / "a.pdf", COUPLED)
    write_printed_key(tmp_path / "a.pdf", COUPLED)

    assert len(PdfReader(tmp_path / "a.pdf").pages) == 1
