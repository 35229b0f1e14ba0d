"""An answer on the card becomes the finding a person meant."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.app.parts.answer import Answer, read_number
from idkey.model.case import Certainty, Finding
from idkey.model.character import Look
from idkey.model.key import Key


def test_marking_another_state_moves_the_mark():
    assert Answer().mark("a").mark("b").marked == ("b",)


def test_several_keeps_every_mark_and_one_alone_keeps_the_first():
    several = Answer(several=True).mark("a").mark("b")

    assert several.marked == ("a", "b")
    assert several.severally(False).marked == ("a",)


def test_marking_twice_takes_the_mark_away():
    assert Answer().mark("a").mark("a").marked == ()


def test_marks_become_a_finding_in_the_order_of_the_key(key: Key):
    character = key.character["chela_robustness"]
    answer = Answer(several=True, certainty=Certainty.LIKELY, look=Look.ABOVE, note="blurred")

    finding = answer.mark("robust").mark("slender").finding(character)

    assert finding == Finding(
        character="chela_robustness",
        states=("slender", "robust"),
        certainty=Certainty.LIKELY,
        look=Look.ABOVE,
        note="blurred",
    )


def test_none_of_these_without_a_mark_means_none_of_all(key: Key):
    character = key.character["sternum_shape"]

    finding = Answer().finding(character, negated=True)

    assert finding is not None
    assert (finding.negated, finding.states) == (True, character.state_ids)


def test_nothing_marked_is_no_finding(key: Key):
    assert Answer().finding(key.character["sternum_shape"]) is None


def test_a_number_becomes_a_finding_with_its_uncertainty(key: Key):
    character = key.character["total_length"]

    finding = Answer(number="112,5", spread="3").finding(character)

    assert finding is not None
    assert (finding.value, finding.uncertainty) == (112.5, 3.0)


@pytest.mark.parametrize("text", ["", "twelve", "-3", "nan", "inf", "1.2.3", "12 mm"])
def test_what_is_no_number_of_nought_or_more_is_not_taken_for_one(text: str):
    assert read_number(text) is None


@given(st.floats(min_value=0, max_value=1e9, allow_nan=False))
def test_a_number_can_be_written_with_a_comma_or_a_point(number: float):
    assert read_number(f"{number!r}") == number
    assert read_number(f" {number!r}".replace(".", ",")) == number


@given(
    st.builds(
        Answer,
        marked=st.lists(st.text(min_size=1), max_size=3).map(tuple),
        several=st.booleans(),
        number=st.text(max_size=8),
        spread=st.text(max_size=8),
        certainty=st.sampled_from(Certainty),
        look=st.sampled_from(Look),
        note=st.text(max_size=20),
    )
)
def test_an_answer_kept_as_a_draft_comes_back_as_it_was(answer: Answer):
    assert Answer.from_text(answer.text(), answer.look) == answer


@pytest.mark.parametrize("text", ["", "{", "[]", '{"marked": 3}', '{"marked": [], "several": 1}'])
def test_a_draft_that_cannot_be_read_is_a_fresh_answer(text: str):
    assert Answer.from_text(text, Look.LENS) == Answer(look=Look.LENS)


def test_an_untouched_answer_leaves_no_draft():
    assert Answer(look=Look.BELOW).text() == ""


def test_a_finding_goes_back_onto_the_card():
    finding = Finding(character="x", states=("a", "b"), certainty=Certainty.GUESS, note="n")

    answer = Answer.of(finding, Look.TUB)

    assert (answer.marked, answer.several) == (("a", "b"), True)
    assert (answer.certainty, answer.look, answer.note) == (Certainty.GUESS, Look.TUB, "n")
