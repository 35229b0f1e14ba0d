"""A caution that comes back says so in words and is spoken, not only coloured."""

from collections.abc import Iterator

import pytest

from idkey.app.bench.state import BenchState
from idkey.app.bench.verdict_view import VerdictView
from idkey.app.parts.desk import Desk
from idkey.engine.result import Stake
from idkey.engine.sample import sample_case
from idkey.model.case import Finding

FAT_TAILED = {
    "metasoma_robustness": "thick",
    "chela_robustness": "slender",
    "sternum_shape": "triangular",
    "body_compression": "none",
}
"""What sets the fat-tailed scorpions apart through a lid."""


@pytest.fixture
def verdict(state: BenchState, desk: Desk, qtbot) -> Iterator[VerdictView]:
    view = VerdictView(desk)
    qtbot.addWidget(view)
    state.changed.connect(view.show_session)
    view.show_session(state.session)
    yield view
    state.changed.disconnect(view.show_session)


def harmless(state: BenchState) -> bool:
    cautions = state.session.reasoned.assessment.cautions
    return all(caution.stake is not Stake.HAZARD for caution in cautions)


def test_a_caution_that_comes_back_says_again_and_a_new_case_does_not(
    verdict: VerdictView, state: BenchState
):
    first = verdict.hazard.text
    sample = sample_case(state.session.key)
    for finding in sample.findings:
        state.observe(finding)
    gone = (harmless(state), verdict.hazard.text)
    for finding in sample.findings:
        state.withdraw(finding.character)
    back, spoken = verdict.hazard.text, verdict.hazard.accessibleName()
    state.new_case()

    assert "Again" not in first
    assert gone == (True, "")
    assert "Again: do not handle." in back
    assert "possible again" in spoken
    assert verdict.hazard.text == first


def test_a_caution_that_comes_back_is_spoken_at_once(verdict: VerdictView, state: BenchState):
    spoken: list[str] = []
    verdict.hazard.spoken.connect(spoken.append)
    sample = sample_case(state.session.key)
    for finding in sample.findings:
        state.observe(finding)
    before = list(spoken)
    while state.session.past and not spoken:
        state.undo()

    assert before == []
    assert spoken[0].startswith("Again")


def test_a_danger_that_is_likely_is_not_called_possible(verdict: VerdictView, state: BenchState):
    for character, states in FAT_TAILED.items():
        state.observe(Finding(character=character, states=(states,)))

    assert "Most likely" in verdict.hazard.text
