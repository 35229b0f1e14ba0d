"""Names in sentences."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.report.language import ENGLISH
from idkey.report.names import listing, rich, runs, scientific_names
from tests.report.specimens import KEY

NAMES = scientific_names(KEY)


@given(st.text(max_size=60), st.sampled_from([t.name for t in KEY.taxa]), st.text(max_size=20))
def test_the_pieces_join_to_the_text(ahead: str, name: str, after: str):
    text = f"{ahead} {name} {after}"

    assert "".join(piece for piece, _ in runs(NAMES, text)) == text


@pytest.mark.parametrize(
    ("text", "html"),
    [
        ("It is Lampa nigra.", "It is <i>Lampa nigra</i>."),
        ("Lampa cf. nigra", "<i>Lampa</i> cf. <i>nigra</i>"),
        ("Lampa sp., Portidae", "<i>Lampa</i> sp., Portidae"),
        ("L. rubra or L. nigra", "<i>L. rubra</i> or <i>L. nigra</i>"),
        ("Lampas are <b>", "Lampas are &lt;b&gt;"),
        ("", ""),
    ],
)
def test_signs_stand_upright_between_italic_names(text: str, html: str):
    """ICZN article 5.3: such signs are no part of the name."""
    assert rich(KEY, text) == html


def test_without_names_a_text_is_one_upright_piece():
    assert runs((), "Lampa nigra") == (("Lampa nigra", False),)


def test_a_long_list_says_how_many_more_there_are():
    taxa = [taxon.id for taxon in KEY.taxa]

    assert listing(KEY, taxa, ENGLISH, most=3) == "Lampa nigra, Lampa rubra and 2 more"


def test_a_taxon_of_another_key_version_keeps_its_id():
    assert listing(KEY, ["gone"], ENGLISH) == "gone"
