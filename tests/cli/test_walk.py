"""A case walked in text from label to reasons."""

from dataclasses import replace

import pytest

from idkey.cli.arrival import arrived
from idkey.cli.findings import finding
from idkey.cli.judging import judged, new_case
from idkey.cli.opening import opened, shipped
from idkey.cli.walk import Walk, understood
from idkey.errors import IdKeyError, Stopped
from idkey.model.case import Aim, Case, Certainty, Specimen
from idkey.model.character import Sex, Stage
from tests.cli.script import Script

KEY = opened("large-dark-scorpions")
KEYS = [opened(folder.name) for folder in shipped()]


def walk(script: Script, *findings: str) -> Case:
    """The case at the end of a walk that starts with some findings."""
    case = replace(new_case(KEY), aim=Aim.TAXON)
    for text in findings:
        case = case.observe(finding(KEY, text))
    return Walk(script.console, KEY, case).to_the_end()


def first_question() -> str:
    """The character that is asked first."""
    return judged(KEY, replace(new_case(KEY), aim=Aim.TAXON)).open[0].character


def test_a_known_label_finds_its_key_and_warns_before_any_finding():
    script = Script("Emperor scorpion", "1", "3", "3")

    key, case = arrived(script.console, KEYS)

    assert key.id == "large-dark-scorpions"
    assert case.claim.text == "Emperor scorpion"
    assert key.label[case.claim.label].covers == ("pandinus_imperator",)
    assert case.specimen == Specimen(sex=Sex.MALE, stage=Stage.ADULT)
    assert "Also sold as “Emperor scorpion”" in script.text


def test_a_near_label_is_offered_and_never_taken_without_asking():
    script = Script("Emperor scorpin", "1", "", "", "")

    _, case = arrived(script.console, KEYS)

    assert "Is one of these meant?" in script.text
    assert KEY.label[case.claim.label].text == "Emperor scorpion"


def test_without_a_label_the_key_is_chosen_and_the_label_is_no_aim():
    place = [key.id for key in KEYS].index("kitchen-leaves")
    script = Script("", "99", str(place + 1), "")

    key, case = arrived(script.console, KEYS)

    assert key.id == "kitchen-leaves"
    assert case.aim is Aim.TAXON
    assert f"Please give a number from 1 to {len(KEYS)}." in script.text
    assert "Its sex?" not in script.text


def test_the_end_of_input_stops_at_any_question():
    with pytest.raises(Stopped):
        arrived(Script("Emperor scorpion").console, KEYS)


def test_each_answer_becomes_a_finding_and_the_next_question_follows():
    script = Script("1", "stop", "left over")

    case = walk(script)

    assert [one.character for one in case.findings] == [first_question()]
    assert case.findings[0].states == KEY.character[first_question()].state_ids[:1]
    assert case.findings[0].at
    assert case.findings[0].look is not None
    assert script.left == ("left over",)


def test_undo_takes_the_answer_back_and_asks_again():
    script = Script("1", "u", "?", "stop")

    case = walk(script)

    assert case.finding(first_question()) is not None
    assert case.findings[0].unseen
    assert len(case.findings) == 1


def test_undo_at_the_start_says_that_there_is_nothing():
    script = Script("u", "stop")

    assert walk(script).findings == ()
    assert "There is no answer to undo." in script.text


def test_why_tells_what_the_question_splits_and_what_ruled_taxa_out():
    script = Script("why", "stop")

    walk(script, "sternum_shape=triangular", "telson_colour=yellow")

    assert "Found: Sternum shape: Three-sided" in script.text or "Found: Sternum" in script.text
    assert "rivals" in script.text
    assert "Ruled out: Pandinus imperator." in script.text


def test_another_question_can_be_chosen():
    wanted = judged(KEY, replace(new_case(KEY), aim=Aim.TAXON)).open[2].character
    script = Script("o", "3", "?", "stop")

    assert [one.character for one in walk(script).findings] == [wanted]


def test_an_answer_that_makes_no_sense_changes_nothing_and_says_what_would():
    script = Script("77", "purple", "stop")

    assert walk(script).findings == ()
    assert "There is no answer 77 here." in script.text
    assert "There are:" in script.text


def test_a_question_is_shown_once_until_something_changes():
    script = Script("why", "why", "77", "stop")

    walk(script)

    question = KEY.character[first_question()].question
    assert sum(question in line for line in script.said) == 1


def test_a_danger_stays_on_screen_until_it_is_ruled_out():
    script = Script("stop")
    walk(script, "telson_colour=dark")
    assert "do not handle the animal" in script.text

    script = Script("stop")
    walk(
        script,
        "sternum_shape=pentagonal",
        "chela_robustness=robust",
        "metasoma_robustness=slender",
        "stridulatory_organ=coxal_rasp_on_leg_I",
        "manus_shape=rounded_bulged",
        "bothriotaxy=type_C_ortho",
    )
    assert "do not handle the animal" not in script.text


@pytest.mark.parametrize(
    ("answer", "states", "negated", "certainty"),
    [
        ("1", ("dark",), False, Certainty.SURE),
        ("1,3", ("dark", "yellow"), False, Certainty.SURE),
        ("!2", ("reddish",), True, Certainty.SURE),
        ("2?", ("reddish",), False, Certainty.LIKELY),
        ("yellow??", ("yellow",), False, Certainty.GUESS),
    ],
)
def test_an_answer_by_number(answer: str, states: tuple[str, ...], negated: bool, certainty):
    found = understood(KEY.character["telson_colour"], answer)

    assert (found.states, found.negated, found.certainty) == (states, negated, certainty)


def test_a_number_is_a_number_and_not_the_place_of_a_state():
    assert understood(KEY.character["pectinal_teeth_male"], "17±1").value == 17


def test_a_number_that_no_state_has_is_refused():
    with pytest.raises(IdKeyError):
        understood(KEY.character["telson_colour"], "4")
