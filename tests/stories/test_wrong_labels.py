"""Wrong labels: an emperor that is none, and a black scorpion that is dangerous."""

from idkey.engine.result import Stake, VerdictKind
from tests.stories.conftest import CTRL, KEY, Keeper


def answer(keeper: Keeper, character: str, *states: str) -> None:
    """Find a question in the palette, and answer it with number keys."""
    ask(keeper, character)
    ids = keeper.session.key.character[character].state_ids
    if len(states) > 1:
        keeper.presses(KEY.Key_S)
    for state in states:
        keeper.presses(KEY(int(KEY.Key_1) + ids.index(state)))
    keeper.presses(KEY.Key_Return)
    assert keeper.session.case.finding(character).states == states


def ask(keeper: Keeper, character: str) -> None:
    keeper.presses(KEY.Key_K, CTRL)
    keeper.types(keeper.session.key.character[character].name)
    keeper.presses(KEY.Key_Return)
    assert keeper.session.asked == character


def count(keeper: Keeper, character: str, number: str) -> None:
    ask(keeper, character)
    keeper.types(number)
    keeper.presses(KEY.Key_Return)


def stakes(keeper: Keeper) -> set[Stake]:
    return {caution.stake for caution in keeper.session.reasoned.assessment.cautions}


def test_a_forest_scorpion_sold_as_an_emperor_is_contradicted(keeper: Keeper):
    keeper.types("Emperor scorpion")
    keeper.presses(KEY.Key_Return)
    answer(keeper, "sternum_shape", "pentagonal")
    answer(keeper, "stridulatory_organ", "coxal_rasp_on_leg_I")
    answer(keeper, "bothriotaxy", "type_C_ortho")
    count(keeper, "chela_i_trichobothria", "2")
    answer(keeper, "chela_robustness", "robust")
    answer(keeper, "telson_colour", "dark")
    answer(keeper, "manus_surface", "smooth_carinae_margins")

    verdict = keeper.session.reasoned.assessment.verdict
    assert verdict.kind is VerdictKind.CONTRADICTED
    assert "contradicted" in keeper.bench.verdict.sentence


def test_a_parabuthus_sold_as_a_black_scorpion_warns_at_once_and_until_it_is_ruled_out(
    keeper: Keeper,
):
    assert "Do not handle" in keeper.bench.verdict.hazard.text

    keeper.types("Black scorpion")
    keeper.presses(KEY.Key_Return)
    assert "Do not handle" in keeper.bench.verdict.hazard.text
    assert "Parabuthus" in keeper.bench.middle.note.text

    answer(keeper, "metasoma_robustness", "thick")
    answer(keeper, "chela_robustness", "slender")
    assert "Do not handle" in keeper.bench.verdict.hazard.text
    answer(keeper, "sternum_shape", "triangular")
    assert "Do not handle" in keeper.bench.verdict.hazard.text
    dangerous = keeper.session.reasoned.assessment.standing[0].taxon
    assert keeper.session.key.taxon[dangerous].dangerous

    for _ in range(3):
        keeper.presses(KEY.Key_Z, CTRL)
    assert keeper.session.case.findings == ()
    answer(keeper, "metasoma_robustness", "slender")
    answer(keeper, "chela_robustness", "robust")
    answer(keeper, "sternum_shape", "pentagonal")
    assert "Do not handle" in keeper.bench.verdict.hazard.text
    answer(keeper, "bothriotaxy", "type_C_ortho")

    assert Stake.HAZARD not in stakes(keeper)
    assert keeper.bench.verdict.hazard.text == ""
