"""Mistakes in a body plan are told with their place, like mistakes in a key."""

from pathlib import Path

import pytest

from idkey.figures.binding import BindingProblems, read_binding
from idkey.figures.catalogue import CATALOGUE
from idkey.figures.portrait import PLANS
from idkey.figures.traits import Trait
from idkey.figures.turning import mistakes_against, turned_knobs
from idkey.formats.folder import list_keys, read_key
from idkey.model.character import Sex, Stage
from idkey.places import images_folder, keys_folder

PLAN = PLANS["scorpion"]
SCORPIONS = read_key(keys_folder() / "large-dark-scorpions")
GOOD = """\
length:
  - {character: total_length}
telson:
  - {character: telson_colour, which: {dark: 2}}
tooth:
  - {character: subaculear_tubercle, values: {absent: 0, weak: 0.1}, sex: male}
claw_form:
  - {character: chela_robustness, values: {robust: lobed}}
"""


def _file(tmp_path: Path, text: str) -> Path:
    file = tmp_path / "plan.yaml"
    file.write_text(text, "utf-8")
    return file


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ("telson:", "telsn:", "3:1: Unknown knob 'telsn'. Did you mean 'telson'?"),
        (
            "character: total_length",
            "charakter: total_length",
            "2:5: A source names no character. Write 'character: its id'.",
        ),
        ("sex: male", "sx: male", "6:70: Unknown field 'sx'. Did you mean 'sex'?"),
        ("sex: male", "sex: mal", "6:75: Unknown sex 'mal'. Did you mean 'male'?"),
        ("weak: 0.1", "weak: high", "6:64: 'high' is not a number. Write digits only."),
        ("weak: 0.1", "weak: 7", "6:64: 7 is out of bounds. Write 0 to 0.5."),
        (
            "robust: lobed}",
            "robust: lobd}",
            "8:52: Unknown choice 'lobd'. Did you mean 'lobed'?",
        ),
        (
            "which: {dark: 2}",
            "values: {dark: black}",
            "4:47: 'black' is not a colour. Write it as \"#rrggbb\".",
        ),
        ("dark: 2", "dark: 0", "4:46: '0' is no place. Count from 1."),
        ("which: {dark: 2}", "which: dark", "4:39: 'which' is not a mapping."),
        (
            "length:\n  - {character: total_length}",
            "length: total_length\nx:",
            "1:9: 'length' is not a list. Start each source with '-'.",
        ),
        (GOOD, "- telson\n", "1:1: The file is not a list of knobs."),
        ("telson:", "length:", "3:1: 'length' is given twice. Keep one of them."),
        ("telson:", "telson: &x", "3:9: The file uses an anchor (&x)."),
    ],
)
def test_a_mistake_is_told_with_its_place_and_its_mend(
    tmp_path: Path, old: str, new: str, message: str
):
    file = _file(tmp_path, GOOD.replace(old, new))

    with pytest.raises(BindingProblems) as caught:
        read_binding(file, PLAN)

    assert f"{file}:{message}" in str(caught.value)
    assert caught.value.remedy


def test_all_mistakes_are_told_together_in_the_order_of_lines(tmp_path: Path):
    file = _file(tmp_path, GOOD.replace("lobed}", "x}").replace("telson:", "tail_:"))

    with pytest.raises(BindingProblems) as caught:
        read_binding(file, PLAN)

    assert [problem.line for problem in caught.value.problems] == [3, 8]


def test_a_file_that_is_not_there_is_told_too(tmp_path: Path):
    with pytest.raises(BindingProblems, match="cannot be read"):
        read_binding(tmp_path / "none.yaml", PLAN)


def test_characters_and_states_that_no_key_has_are_told(tmp_path: Path):
    text = GOOD.replace("telson_colour", "telson_color").replace("absent: 0", "abscent: 0")
    binding = read_binding(_file(tmp_path, text), PLAN)

    told = [str(problem) for problem in mistakes_against(binding, [SCORPIONS])]

    assert [line.split("plan.yaml:")[1] for line in told] == [
        "4:17: Unknown character 'telson_color'. Did you mean 'telson_colour'?",
        "6:47: 'subaculear_tubercle' has no state 'abscent'. Did you mean 'absent'?",
    ]


@pytest.mark.parametrize("plan", PLANS)
def test_the_shipped_bindings_fit_the_shipped_keys(plan: str):
    keys = [read_key(entry.folder) for entry in list_keys(keys_folder())]
    binding = read_binding(images_folder() / "bodyplans" / f"{plan}.yaml", PLANS[plan])

    used = [key for key in keys if key.body_plan == plan]

    assert {key.id for key in used} <= set(CATALOGUE)
    assert not mistakes_against(binding, used)


@pytest.mark.parametrize("plan", PLANS)
def test_every_knob_is_bound_to_something(plan: str):
    binding = read_binding(images_folder() / "bodyplans" / f"{plan}.yaml", PLANS[plan])

    assert set(binding.sources) == set(PLANS[plan].knobs)


def test_the_first_known_character_decides_and_sex_and_stage_are_heeded(tmp_path: Path):
    text = """\
claw_ratio:
  - {character: chela_lw_male, sex: male}
  - {character: chela_lw_female, sex: female}
  - {character: chela_robustness, values: {robust: 2}}
telson:
  - {character: juvenile_telson_colour, stage: juvenile}
  - {character: telson_colour}
"""
    binding = read_binding(_file(tmp_path, text), PLAN)
    traits = {
        "chela_lw_male": Trait(value=4.0),
        "chela_robustness": Trait(state="robust"),
        "telson_colour": Trait(state="dark"),
        "juvenile_telson_colour": Trait(state="white_yellow"),
    }

    def turned(sex: Sex | None, stage: Stage | None) -> dict[str, object]:
        values = turned_knobs(PLAN, binding, key=SCORPIONS, traits=traits, specimen=(sex, stage))
        return dict(values.known)

    dark = SCORPIONS.character["telson_colour"].state("dark").colours[0].lower()
    pale = SCORPIONS.character["juvenile_telson_colour"].state("white_yellow").colours[0].lower()
    assert turned(Sex.MALE, Stage.ADULT) == {"claw_ratio": 4.0, "telson": dark}
    assert turned(Sex.FEMALE, Stage.JUVENILE) == {"claw_ratio": 2.0, "telson": pale}
    assert turned(None, None) == {"claw_ratio": 2.0, "telson": dark}


def test_a_number_outside_what_can_be_drawn_is_drawn_at_the_edge(tmp_path: Path):
    binding = read_binding(_file(tmp_path, "claw_ratio:\n  - {character: chela_lw_male}\n"), PLAN)

    values = turned_knobs(PLAN, binding, key=SCORPIONS, traits={"chela_lw_male": Trait(value=99.0)})

    assert values.number("claw_ratio", 0) == PLAN.knobs["claw_ratio"].high
