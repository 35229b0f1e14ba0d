"""The bench says when a verdict rests on a rule of thumb of the trade."""

from dataclasses import replace

import pytest

from idkey.app.bench.reasons_view import ReasonsView
from idkey.app.bench.state import BenchState
from idkey.app.bench.verdict_view import VerdictView
from idkey.app.parts.desk import Desk
from idkey.engine.result import VerdictKind
from idkey.model.case import Case, Claim, Finding, Specimen
from idkey.model.character import Sex, Stage

SEEN = (
    Finding(character="manus_surface", states=("smooth",)),
    Finding(character="body_setation", states=("moderate",)),
    Finding(character="bothriotaxy", states=("type_C_ortho",)),
    Finding(character="total_length", value=113.0),
)
"""Smooth claws, so it cannot be an emperor, says the trade."""


@pytest.fixture
def case(state: BenchState) -> Case:
    return replace(
        state.session.case,
        claim=Claim(text="Emperor scorpion", label="L01"),
        specimen=Specimen(sex=Sex.MALE, stage=Stage.ADULT),
        findings=SEEN,
    )


def test_smooth_claws_against_an_emperor_are_told_as_a_rule_of_thumb(
    state: BenchState, case: Case, desk: Desk, qtbot
):
    verdict, reasons = VerdictView(desk), ReasonsView(desk)
    qtbot.addWidget(verdict)
    qtbot.addWidget(reasons)
    state.put_on_bench(case)
    qtbot.waitUntil(lambda: not state.session.thinking, timeout=20_000)

    verdict.show_session(state.session)
    reasons.show_session(state.session)

    assert state.session.reasoned.assessment.verdict.kind is VerdictKind.CONTRADICTED
    assert verdict.thumb.startswith("Rests on a rule of thumb: Manus surface. Without it: “Open”")
    text = reasons.text.toPlainText()
    assert "no published source for the rule" in text
    assert "Heterometrus longimanus" in text
    assert 'href="character:manus_surface"' in reasons.text.toHtml()


def test_without_the_rule_of_thumb_nothing_is_said(
    state: BenchState, case: Case, desk: Desk, qtbot
):
    verdict = VerdictView(desk)
    qtbot.addWidget(verdict)
    state.put_on_bench(replace(case, findings=SEEN[1:]))
    qtbot.waitUntil(lambda: not state.session.thinking, timeout=20_000)

    verdict.show_session(state.session)

    assert verdict.thumb == ""
