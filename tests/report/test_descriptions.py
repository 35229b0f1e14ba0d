"""Taxa in words."""

from dataclasses import replace

import pytest

from idkey.engine.compile import compile_key
from idkey.model.score import Shows
from idkey.report.descriptions import description, description_text, diagnosis_sentence
from idkey.report.words import in_language
from tests.report.specimens import KEY, USUALLY

MATRIX = compile_key(KEY)


def test_a_description_tells_everything_scored_with_its_sources():
    text = " ".join(description_text(KEY, "fenestra_alta").split())

    assert text.startswith("Fenestra alta Fenestridae. Danger: medically significant (sting).")
    assert "Ridge 1: ridged [invented1901]" in text
    assert "Length: 60 to 90 mm [invented1901]." in text
    assert "Nothing scored" not in text


def test_permits_stand_in_the_head_and_memory_is_told():
    found = description(KEY, "porta_lata")
    length = found.parts[-1].statements[-1]

    assert (
        "Papers: CITES Appendix II, EU Annex B (data as of 2024), from memory; check locally."
        in found.head
    )
    assert length.text == "Length: the part is lacking (from memory)"


def test_what_is_not_scored_is_named_and_conflicts_stay_visible():
    noted = replace(USUALLY, note="Another text says ridged.")
    scores = (noted, *(s for s in KEY.scores if s.character not in ("ridge_0", "length")))
    found = description(replace(KEY, scores=scores, digest="1"), "lampa_nigra")

    assert found.name == "Lampa nigra Inventor, 1901"
    assert found.unscored == ("Length",)
    assert found.parts[0].statements[0].note == "Another text says ridged."


def test_parts_are_told_under_their_own_heading():
    parts = tuple(
        replace(c, part="back_plates" if c.id == "ridge_0" else c.part) for c in KEY.characters
    )
    text = description_text(replace(KEY, characters=parts, digest="2"), "lampa_nigra")

    assert "Back plates. Ridge 0: smooth [invented1901]." in text
    assert "Whole animal. Ridge 1: smooth" in text


def test_an_unknown_taxon_is_a_key_error():
    with pytest.raises(KeyError, match="nobody"):
        description(KEY, "nobody")


def test_a_diagnosis_names_the_fewest_characters():
    assert diagnosis_sentence(MATRIX, "lampa_nigra") == (
        "Lampa nigra: told apart within this key by Ridge 0: smooth; Ridge 1: smooth."
    )
    assert diagnosis_sentence(MATRIX, "lampa_nigra", in_language("de")).startswith(
        "Lampa nigra: in diesem Schlüssel zu erkennen an"
    )


def test_a_diagnosis_names_the_taxa_it_cannot_tell():
    same = tuple(
        replace(score, value=Shows({"smooth": None}))
        if score.taxon == "lampa_rubra" and score.character.startswith("ridge")
        else score
        for score in KEY.scores
        if score.character != "length"
    )
    characters = tuple(c for c in KEY.characters if c.id != "length")
    twins = compile_key(replace(KEY, scores=same, characters=characters, digest="3"))

    assert diagnosis_sentence(twins, "lampa_nigra").endswith("Not surely told from Lampa rubra.")


def test_a_taxon_nothing_tells_apart_says_so():
    blank = compile_key(
        replace(KEY, scores=tuple(s for s in KEY.scores if s.taxon != "lampa_nigra"), digest="4")
    )

    assert diagnosis_sentence(blank, "lampa_nigra") == (
        "Lampa nigra: no character of this key tells it surely apart."
    )


def test_a_margin_that_cannot_be_had_is_told():
    few = tuple(c for c in KEY.characters if c.id in ("ridge_0", "ridge_1", "ridge_3"))
    ids = {c.id for c in few}
    small = compile_key(
        replace(
            KEY,
            characters=few,
            scores=tuple(s for s in KEY.scores if s.character in ids),
            digest="5",
        )
    )

    assert "Fewer than 2 characters tell Lampa rubra." in diagnosis_sentence(
        small, "lampa_nigra", margin=2
    )
