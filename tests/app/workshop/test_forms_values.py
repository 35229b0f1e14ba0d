"""What is typed into fields is read as it is meant, and a value's text reads back the same."""

from collections.abc import Mapping

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.app.workshop.forms_values import (
    BOUND,
    COLOURS,
    GLOSSARY,
    LINES,
    SIZE,
    Reading,
    UnreadError,
    id_reading,
    number_reading,
    shares_reading,
)
from idkey.model.key import Key
from tests.formats.invented import NUMBERS, WORDS

RATE = number_reading(lambda x: 0 <= x < 1, "A rate.")


@settings(max_examples=30)
@given(
    words=st.lists(WORDS, max_size=4).map(tuple),
    glossary=st.dictionaries(WORDS, WORDS | st.just(""), max_size=4),
    low=st.none() | NUMBERS,
    more=st.floats(0, 1e6),
)
def test_the_text_of_a_value_reads_back_the_same(
    words: tuple[str, ...], glossary: Mapping[str, str], low: float | None, more: float
):
    size = (low, None if low is None else low + more)

    assert LINES.value(LINES.text(words)) == words
    assert dict(GLOSSARY.value(GLOSSARY.text(glossary))) == glossary
    assert BOUND.value(BOUND.text((low,))) == (low,)
    assert SIZE.value(SIZE.text(size)) == size


@pytest.mark.parametrize(
    ("reading", "text", "value"),
    [
        (SIZE, "120-220", (120, 220)),
        (SIZE, "120 to 220 mm", (120, 220)),
        (SIZE, "– 220", (None, 220)),
        (SIZE, "150", (150, 150)),
        (RATE, "0,08", 0.08),
        (RATE, " ", None),
        (COLOURS, "#17161A, #26252a", ("#17161A", "#26252a")),
        (GLOSSARY, "manus: The hand.\n\nsetae:", {"manus": "The hand.", "setae": ""}),
    ],
)
def test_what_people_write_is_understood(reading: Reading, text: str, value: object):
    assert reading.value(text) == value


@pytest.mark.parametrize(
    ("reading", "text", "words"),
    [
        (SIZE, "220–120", "smaller number comes first"),
        (SIZE, "1–2–3", "120 – 220"),
        (RATE, "1.5", "A rate."),
        (RATE, "inf", "Write digits"),
        (RATE, "some", "“some” is no number"),
        (COLOURS, "black", "#rrggbb"),
        (GLOSSARY, "manus", "explains nothing"),
        (GLOSSARY, "a: b\na: c", "explained twice"),
        (id_reading(lambda: "a", lambda: ("a", "b")), "b", "is taken"),
        (id_reading(lambda: "a", lambda: ("a", "b")), "b c", "no blanks"),
    ],
)
def test_what_cannot_be_read_says_how_to_write_it(reading: Reading, text: str, words: str):
    with pytest.raises(UnreadError, match=words):
        reading.value(text)


def test_shares_go_by_names_and_per_cent(key: Key):
    reading = shares_reading(lambda: key)

    shares = reading.value("Pandinus imperator 60%\npandinus_gambiensis 0.25")

    assert shares == {"pandinus_imperator": 0.6, "pandinus_gambiensis": 0.25}
    assert reading.value(reading.text(shares)) == shares
    for wrong in ("Nobody 0.5", "Pandinus imperator 3", "Pandinus imperator x"):
        with pytest.raises(UnreadError):
            reading.value(wrong)
