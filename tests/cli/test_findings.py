"""Findings as they are typed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.cli.findings import finding
from idkey.cli.opening import opened
from idkey.errors import IdKeyError
from idkey.model.case import Certainty, Finding
from idkey.model.character import Character

KEY = opened("large-dark-scorpions")
SIGNS = {Certainty.SURE: "", Certainty.LIKELY: "?", Certainty.GUESS: "??"}

sure = st.sampled_from(Certainty)
stated = st.sampled_from([c for c in KEY.characters if not c.kind.numeric])
numbered = st.sampled_from([c for c in KEY.characters if c.kind.numeric])


@given(character=stated, certainty=sure, negated=st.booleans(), data=st.data())
def test_every_choice_of_states_can_be_typed(
    character: Character, certainty: Certainty, negated: bool, data: st.DataObject
):
    states = data.draw(st.lists(st.sampled_from(character.state_ids), min_size=1, unique=True))
    text = f"{character.id}={'!' * negated}{'|'.join(states)}{SIGNS[certainty]}"

    assert finding(KEY, text) == Finding(
        character=character.id, states=tuple(states), negated=negated, certainty=certainty
    )


@given(
    character=numbered,
    value=st.decimals(0, 500, places=2),
    spread=st.none() | st.decimals(0, 20, places=1),
    sign=st.sampled_from(["±", "+-", "+/-"]),
)
def test_every_number_can_be_typed(character: Character, value, spread, sign: str):
    text = f"{character.id}={value}" + (f"{sign}{spread}" if spread is not None else "")

    assert finding(KEY, text) == Finding(
        character=character.id,
        value=float(value),
        uncertainty=None if spread is None else float(spread),
    )


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "telson_colour=unseen", Finding(character="telson_colour", unseen=True), id="unseen"
        ),
        pytest.param(
            "total_length = 112,5 mm",
            Finding(character="total_length", value=112.5),
            id="a decimal comma and the unit",
        ),
        pytest.param(
            "Telson colour=Yellow",
            Finding(character="telson_colour", states=("yellow",)),
            id="the term and the words on the tile",
        ),
        pytest.param(
            "telson_colour=dark,reddish?",
            Finding(
                character="telson_colour",
                states=("dark", "reddish"),
                certainty=Certainty.LIKELY,
            ),
            id="a comma instead of a bar",
        ),
    ],
)
def test_a_text(text: str, meant: Finding):
    assert finding(KEY, text) == meant


@pytest.mark.parametrize(
    ("text", "problem", "remedy"),
    [
        (
            "telson_color=dark",
            "There is no character 'telson_color'.",
            "Did you mean telson_colour?",
        ),
        (
            "telson_colour=redish",
            "There is no telson_colour state 'redish'.",
            "Did you mean reddish? There are: dark, reddish, yellow.",
        ),
        ("total_length=long", "'long' is no number for total_length.", "Write it in mm"),
        (
            "total_length=12 cm",
            "total_length is measured in mm, not in 'cm'.",
            "Convert the number",
        ),
        ("total_length=-3", "'-3' is no number for total_length.", "Write it in mm"),
        ("telson_colour", "'telson_colour' is no finding.", "character=state"),
        ("telson_colour=", "'telson_colour=' is no finding.", "character=state"),
        ("telson_colour=!", "There is no telson_colour state ''.", "There are: dark"),
    ],
)
def test_a_mistake_names_what_is_near_and_what_exists(text: str, problem: str, remedy: str):
    with pytest.raises(IdKeyError) as told:
        finding(KEY, text)

    assert told.value.problem == problem
    assert remedy in told.value.remedy
