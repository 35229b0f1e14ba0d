"""What a person reads when a verdict rests on a rule of thumb."""

from dataclasses import replace

import pytest

from idkey.engine.compile import compile_key
from idkey.engine.result import Assessment
from idkey.engine.thumbs import Failure, Leaning, leaning
from idkey.report import words
from idkey.report.rationale import rationale
from idkey.report.text import verdict_text
from tests.report.specimens import KEY, LABEL, case, judged

DE = words.in_language("de")


@pytest.fixture(scope="module")
def now() -> Assessment:
    """An established animal."""
    return judged(case("lampa_nigra", 11))


def leant(now: Assessment, **more) -> Leaning:
    """Its verdict resting on the first ridge."""
    open_ = judged(case("lampa_nigra", 4)).verdict
    rule = Failure(character="ridge_0", alike=("porta_lata",), torn=(), scored=4)
    return replace(Leaning(failures=(rule,), without=open_, instead=("length", "ridge_11")), **more)


def test_the_warning_names_the_rule_what_breaks_it_and_what_to_look_at(now: Assessment):
    first, second, third = words.thumb_words(KEY, leant(now), now.verdict)

    assert first == (
        "Rests on a rule of thumb: Ridge 0. Without it: “Open”. "
        "Common practice, no published source for the rule."
    )
    assert second == "Ridge 0: in this key Porta lata can show the same; 4 of 4 taxa are scored."
    assert third == "Look at this instead: Length; Ridge 11."


def test_a_name_that_rests_on_a_rule_is_not_called_settled(now: Assessment):
    assert words.next_step(KEY, now).startswith("Nothing more")
    assert words.next_step(KEY, now, leaning=leant(now)) == "Look next at: Length. How long is it?"


def test_a_label_that_a_rule_of_thumb_would_decide_says_so():
    rules = replace(
        KEY, characters=tuple(replace(c, rule_of_thumb=c.id == "ridge_0") for c in KEY.characters)
    )

    assert "A rule of thumb, no proof by itself: Ridge 0." in words.mixup_warning(rules, LABEL)
    assert "rule of thumb" not in words.mixup_warning(KEY, LABEL)


def test_nothing_to_look_at_instead_is_said_and_kept_cautions_are_told(now: Assessment):
    bare = leant(now, instead=(), kept=("fenestra_alta",))

    said = " ".join(words.thumb_words(KEY, bare, now.verdict))

    assert "has nothing else to look at now" in said
    assert said.endswith("nothing but a rule of thumb speaks firmly enough against Fenestra alta.")


def test_a_rule_that_holds_in_the_key_is_not_said_to_be_proved(now: Assessment):
    rule = Failure(character="ridge_0", alike=("lampa_nigra",), torn=(), scored=4)

    whole = words.thumb_words(KEY, leant(now, failures=(rule,)), now.verdict)[1]
    part = words.thumb_words(KEY, leant(now, failures=(replace(rule, scored=2),)), now.verdict)[1]

    assert whole.endswith("beyond the key nobody has tested it.")
    assert part.endswith("but only 2 of 4 taxa are scored.")


def test_the_same_in_german(now: Assessment):
    said = words.thumb_words(KEY, leant(now), now.verdict, DE)

    assert said[0].startswith("Beruht auf einer Faustregel: Ridge 0. Ohne sie: „Offen“. Gängige")
    assert said[-1] == "Stattdessen ansehen: Length; Ridge 11."


def test_text_and_rationale_carry_the_warning():
    rules = replace(KEY, characters=tuple(
        replace(c, rule_of_thumb=c.id in ("ridge_0", "ridge_2", "ridge_4", "ridge_6"))
        for c in KEY.characters
    ))  # fmt: skip
    matrix = compile_key(rules)
    now = judged(case("lampa_nigra", 10))
    found = leaning(matrix, now)

    assert found is not None
    assert "rule" in words.thumb_line(rules, found, now.verdict)
    assert "\nRules of thumb:\n- " in verdict_text(rules, now, leaning=found)
    assert rationale(rules, now).thumbs == words.thumb_words(rules, found, now.verdict)
    assert rationale(KEY, now).thumbs == ()


@pytest.mark.parametrize(
    ("value", "said"),
    [
        (0.9896, "98.9 %"),
        (0.98999999, "98.9 %"),
        (0.985, "98.5 %"),
        (0.99, "99 %"),
        (0.984, "98 %"),
    ],
)
def test_a_support_short_of_what_a_name_needs_never_reads_as_reached(value: float, said: str):
    assert words.ENGLISH.share(value) == said
    assert DE.share(value) == said.replace(".", ",")
