"""An attestation says what was shown, and refuses when that is thin."""

import io
import json
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from pypdf import PdfReader

from idkey import places
from idkey.drill.beginning import Bench
from idkey.drill.deck import shop_shares
from idkey.drill.item import pair_item
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key
from idkey.model.key import Key
from idkey.report.attestation import ThinEvidence, attestation_of, fewest_right
from idkey.report.attestation_page import ATTACHMENT, attestation_pdf, write_attestation
from idkey.report.language import in_language
from idkey.store.drill_log import Trial
from tests.drill.learners import Learner

FIRM = pair_item("heterometrus_spinifer", "pandinus_imperator", "manus_surface")
SHAKY = pair_item("heterometrus_laoticus", "pandinus_imperator", "bothriotaxy")
NOW = datetime(2025, 11, 30, 12, 0, tzinfo=UTC)


@pytest.fixture(scope="module")
def key() -> Key:
    return read_key(places.keys_folder() / "large-dark-scorpions")


@pytest.fixture(scope="module")
def trials(key: Key) -> list[Trial]:
    """70 decisions on each pair; one of them is a coin toss."""
    learner = Learner(misjudges={SHAKY.taxa: 0.5})
    learner.works_through(Bench(key, shop_shares(key, {})), [FIRM, SHAKY], times=70)
    kept = [replace(t, number=n, digest=f"{n:064x}") for n, t in enumerate(learner.trials, 1)]
    return [replace(t, at=(NOW - timedelta(hours=140 - n)).isoformat()) for n, t in enumerate(kept)]


def text_of(pdf: bytes) -> str:
    return " ".join(" ".join(p.extract_text() for p in PdfReader(io.BytesIO(pdf)).pages).split())


def test_only_the_pair_that_was_shown_is_attested(key: Key, trials: list[Trial]):
    found = attestation_of(key, trials, NOW)
    (pair,) = found.pairs

    assert pair.names == ("Heterometrus spinifer", "Pandinus imperator")
    assert (pair.right, pair.trials, pair.high) == (60, 60, 1.0)
    assert pair.low == pytest.approx(60 / (60 + 1.96**2), abs=1e-3)
    assert (found.others, found.elsewhere, found.entries) == (1, 0, 140)


def test_the_paper_says_who_what_how_often_when_and_on_which_key(key: Key, trials: list[Trial]):
    text = text_of(attestation_pdf(attestation_of(key, trials, NOW)))

    for said in (
        "What RB can tell apart",
        "30 November 2025",
        "60 of 60",
        "94 % to 100 %",
        "Heterometrus spinifer",
        key.character["manus_surface"].name,
        f"version {key.version}",
        key.digest,
        trials[-1].digest,
        "One more pair was practised and is not attested.",
        "no licence and no qualification",
        "not living animals",
    ):
        assert said in text, said
    assert "laoticus" not in text


def test_the_data_is_attached_and_equal_attestations_give_equal_bytes(
    key: Key, trials: list[Trial]
):
    found = attestation_of(key, trials, NOW)
    pdf = attestation_pdf(found)
    (data,) = PdfReader(io.BytesIO(pdf)).attachments[ATTACHMENT]

    assert json.loads(data)["pairs"][0]["right"] == 60
    assert attestation_pdf(found) == pdf


def test_it_is_also_said_in_german(key: Key, trials: list[Trial]):
    found = attestation_of(key, trials, NOW, language=in_language("de"))
    text = text_of(attestation_pdf(found))

    assert "Was RB unterscheiden kann" in text
    assert "60 von 60" in text
    assert "30. November 2025" in text


@pytest.mark.parametrize(
    ("part", "problem"),
    [
        pytest.param(lambda _: [], "no answer is in the drill log", id="nothing"),
        pytest.param(lambda trials: trials[:68], "told apart in 34 of 34", id="34 of 34"),
        pytest.param(
            lambda trials: [t for t in trials if t.item == SHAKY.name], "laoticus", id="coin tosses"
        ),
        pytest.param(
            lambda trials: [replace(t, key_digest="old") for t in trials],
            "no pair was practised on this version",
            id="another version of the key",
        ),
    ],
)
def test_thin_evidence_is_refused_with_what_is_missing(
    key: Key, trials: list[Trial], part, problem
):
    with pytest.raises(ThinEvidence) as refused:
        attestation_of(key, part(trials), NOW)

    assert problem in refused.value.problem
    assert "35 right decisions" in refused.value.remedy


def test_35_in_a_row_are_enough_and_the_threshold_decides(key: Key, trials: list[Trial]):
    firm = [trial for trial in trials if trial.item == FIRM.name]

    assert attestation_of(key, firm[:35], NOW).pairs[0].trials == 35
    assert fewest_right(0.9) == 35
    assert fewest_right(0.95) == 73
    with pytest.raises(ThinEvidence):
        attestation_of(key, firm[:35], NOW, threshold=0.95)


def test_answers_on_an_older_version_are_counted_apart(key: Key, trials: list[Trial]):
    older = [replace(t, key_digest="old") for t in trials[:50]]
    found = attestation_of(key, [*older, *trials[50:]], NOW)

    assert found.elsewhere == 50
    assert found.pairs[0].trials == 45


def test_two_people_on_one_paper_are_refused(key: Key, trials: list[Trial]):
    with pytest.raises(ValueError, match="one person"):
        attestation_of(key, [trials[0], replace(trials[1], person="AK")], NOW)


def test_it_is_written_in_one_step_or_not_at_all(key: Key, trials: list[Trial], tmp_path):
    found = attestation_of(key, trials, NOW)
    write_attestation(tmp_path / "a.pdf", found)

    assert (tmp_path / "a.pdf").read_bytes() == attestation_pdf(found)
    assert [file.name for file in tmp_path.iterdir()] == ["a.pdf"]
    with pytest.raises(IdKeyError, match="cannot be written"):
        write_attestation(tmp_path / "no" / "a.pdf", found)
