"""English and German, from one catalogue."""

from string import Formatter

import pytest

from idkey.report.language import CODES, ENGLISH, in_language
from tests.report.phrases_used import phrases_used

GERMAN = in_language("de")


def _placeholders(text: str) -> set[str]:
    return {name for _, name, _, _ in Formatter().parse(text) if name}


@pytest.mark.parametrize("code", CODES[1:])
def test_every_sentence_in_the_code_has_a_translation(code: str):
    known = in_language(code).phrases

    assert not {text: place for text, place in phrases_used().items() if text not in known}


@pytest.mark.parametrize("code", CODES[1:])
def test_the_catalogue_keeps_no_sentence_that_nobody_says(code: str):
    assert set(in_language(code).phrases) - set(phrases_used()) == set()


@pytest.mark.parametrize("code", CODES[1:])
def test_a_translation_fills_the_same_placeholders(code: str):
    wrong = {
        english: text
        for english, text in in_language(code).phrases.items()
        if _placeholders(english) != _placeholders(text)
    }

    assert not wrong


def test_a_locale_is_taken_by_its_language():
    assert in_language("de_AT").code == "de"
    assert in_language("en-GB") is ENGLISH


def test_a_language_without_a_catalogue_is_refused():
    with pytest.raises(ValueError, match="no sentences in 'fr'"):
        in_language("fr")


def test_braces_in_what_is_filled_in_stay_as_they_are():
    assert ENGLISH.say("Label: {label}", label="{taxa}") == "Label: {taxa}"


def test_lists_are_joined_in_words():
    assert ENGLISH.join(["a", "b", "c"]) == "a, b and c"
    assert GERMAN.join(["a", "b"], "or") == "a oder b"
    assert ENGLISH.join([]) == ""


def test_numbers_and_days_follow_the_language():
    assert ENGLISH.number(1.5) == "1.5"
    assert GERMAN.number(1.5) == "1,5"
    assert ENGLISH.day("2025-11-03") == "3 November 2025"
    assert GERMAN.day("2025-03-04T08:30:00Z") == "4. März 2025"
    assert ENGLISH.day("last week") == "last week"


@pytest.mark.parametrize(
    ("share", "words"),
    [(0.0, "0 %"), (0.004, "<1 %"), (0.5, "50 %"), (0.996, ">99 %"), (1.0, "100 %")],
)
def test_a_share_claims_neither_none_nor_all_unless_it_is(share: float, words: str):
    assert ENGLISH.share(share) == words
