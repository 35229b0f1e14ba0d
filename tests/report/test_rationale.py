"""The written reasons as data."""

import json
from dataclasses import replace
from pathlib import Path

import jsonschema
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.engine.assess import assess
from idkey.engine.compile import compiled
from idkey.engine.result import VerdictKind
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key
from idkey.model.case import Case, Finding
from idkey.model.character import Look, Sex, Stage
from idkey.places import keys_folder
from idkey.report.language import ENGLISH
from idkey.report.rationale import (
    DIGEST,
    rationale,
    rationale_digest,
    rationale_from,
    rationale_json,
)
from idkey.report.rationale_schema import FILE, rationale_schema
from idkey.report.reasons import Rationale, Tie, Unseen, agreed
from idkey.store.record import Revision, Sale
from tests.report.specimens import KEY, STATES, case, judged

SCHEMA = Path(__file__).parents[2] / "docs" / "schemas" / FILE
SALE = Sale(
    number="2025-117", date="2025-11-08", price="65.00", buyer="B-17 Buyer", note="till note"
)
REVISION = Revision(
    case_id="x",
    number=3,
    entry=9,
    at="2025-11-05T10:00:00Z",
    by="RB",
    digest="a" * 64,
    previous="0",
)

_findings = st.lists(
    st.builds(
        Finding,
        character=st.sampled_from([f"ridge_{n}" for n in range(12)]),
        states=st.sampled_from([STATES[:1], STATES[1:], STATES]),
        negated=st.just(False),
        look=st.none() | st.sampled_from(Look),
        note=st.text(max_size=8),
    ),
    max_size=12,
    unique_by=lambda finding: finding.character,
)


def written(one: Case, **more: object) -> Rationale:
    """The rationale of a case on the small key."""
    return rationale(KEY, judged(one), **more)  # type: ignore[arg-type]


@settings(max_examples=25)
@given(_findings, st.text(max_size=20))
def test_json_gives_the_same_rationale_back(findings: list[Finding], label: str):
    start = case("lampa_nigra", 0)
    found = written(
        replace(start, findings=tuple(findings), claim=replace(start.claim, text=label))
    )

    assert rationale_from(rationale_json(found)) == (found, rationale_digest(found))


@pytest.mark.parametrize("findings", [0, 6, 11])
def test_json_is_valid_under_the_shipped_schema(findings: int):
    found = written(case("fenestra_alta", findings), sale=SALE, revision=REVISION)

    jsonschema.validate(json.loads(rationale_json(found)), json.loads(SCHEMA.read_text("utf-8")))


def test_the_schema_refuses_a_rationale_without_verdict():
    fields = json.loads(rationale_json(written(case("lampa_nigra", 3))))
    del fields["kind"]

    with pytest.raises(jsonschema.ValidationError, match="'kind' is a required property"):
        jsonschema.validate(fields, json.loads(rationale_schema()))


def test_the_shipped_schema_is_up_to_date():
    assert SCHEMA.read_text("utf-8") == rationale_schema(), (
        "run: python -m idkey.report.rationale_schema docs/schemas"
    )


def test_each_field_of_the_schema_is_explained():
    schema = json.loads(rationale_schema())
    silent = [name for name, field in schema["properties"].items() if not field.get("description")]

    assert silent == []


@given(st.floats(0, 1))
def test_no_share_of_a_document_claims_nothing_or_all(share: float):
    held = agreed(share)

    assert 0 < held < 1
    assert abs(held - share) <= 1e-9
    assert ENGLISH.share(held) not in ("0 %", "100 %")


def test_a_look_alike_that_is_far_behind_is_not_said_to_be_impossible():
    key = read_key(keys_folder() / SAMPLE_KEY)
    sample = sample_case(key)
    found = rationale(key, assess(compiled(key, sample.specimen, sample.care), sample))
    alike = {one.taxon: one.support for one in found.look_alikes}

    assert alike["pandinus_imperator"] < 1e-6
    assert {ENGLISH.share(share) for share in alike.values()}.isdisjoint({"0 %", "100 %"})


def test_what_is_for_the_shop_alone_stays_out():
    start = case("lampa_nigra", 4)
    private = replace(
        start, note="told to keep quiet", claim=replace(start.claim, price="199 for friends")
    )
    text = rationale_json(written(private, sale=SALE))

    assert "2025-117" in text
    assert not [
        word for word in ("keep quiet", "199 for friends", "B-17", "till note") if word in text
    ]


def test_two_rationales_that_differ_in_a_word_differ_in_their_digest():
    one = written(case("lampa_nigra", 4))
    other = replace(one, sentence=one.sentence + " ")

    assert rationale_digest(one) != rationale_digest(other)


def test_works_are_numbered_in_order_and_every_number_is_cited():
    found = written(case("lampa_rubra", 11))

    assert [(r.number, r.id, r.seen) for r in found.references] == [(1, "invented1901", True)]
    assert found.cited(("invented1901", "unused1902")) == "[1]"
    assert found.cited(()) == ""


def test_what_the_label_covers_comes_first_among_the_look_alikes():
    found = written(case("lampa_rubra", 11))
    ties = {alike.taxon: alike.tie for alike in found.look_alikes}

    assert list(ties.items()) == [
        ("lampa_nigra", Tie.COVERED),
        ("fenestra_alta", Tie.SOLD_AS),
        ("porta_lata", Tie.RIVAL),
    ]
    assert found.others == 0


def test_each_ruled_out_look_alike_says_what_separates_it():
    found = written(case("lampa_rubra", 11))
    first = found.look_alikes[0]

    assert first.ruled_out
    assert first.apart[0].seen == "ridged"
    assert first.apart[0].shows[0].text == "smooth"
    assert all(alike.apart for alike in found.look_alikes)


def test_before_any_finding_danger_is_compared_and_help_is_named():
    found = written(replace(case("lampa_nigra", 0), claim=replace(case("x_", 0).claim, label="")))
    alike = {one.taxon: one for one in found.look_alikes}

    assert alike["fenestra_alta"].tie is Tie.DANGER
    assert alike["fenestra_alta"].hazard == "medically significant (sting)"
    assert alike["fenestra_alta"].help
    assert found.claim.covers == ""


def test_what_was_not_looked_at_is_told_by_reason_the_deciding_ones_first():
    hidden = replace(
        case("lampa_nigra", 4),
        findings=(*case("lampa_nigra", 4).findings, Finding(character="ridge_5", unseen=True)),
    )
    found = written(hidden)
    reasons = {one.character: one.reason for one in found.unseen}

    assert found.unseen[0].character == "length"
    assert found.unseen[0].deciding
    assert reasons["ridge_5"] is Unseen.LOOKED
    assert reasons["ridge_11"] is Unseen.HANDLING
    assert reasons["ridge_6"] is Unseen.NOT_ASKED
    assert "ridge_0" not in reasons


def test_findings_say_whether_the_leading_taxon_explains_them():
    seen = case("lampa_nigra", 11)
    slip = replace(seen.findings[2], states=("ridged",))
    found = written(seen.observe(slip).observe(Finding(character="length", unseen=True)))
    fits = {one.character: one.fits for one in found.findings}

    assert fits["ridge_1"] is True
    assert fits["ridge_2"] is False
    assert fits["length"] is None


def test_the_prior_in_use_is_written_down_with_the_verdict_without_it():
    shares = {"lampa_nigra": 0.98, "lampa_rubra": 0.02}
    found = rationale(KEY, judged(case("lampa_nigra", 8), prior=shares))

    assert found.prior.used
    assert found.prior.shares == tuple(sorted(shares.items()))
    assert found.prior.without in (None, *VerdictKind)
    assert not written(case("lampa_nigra", 8)).prior.used


def test_a_german_rationale_speaks_german_and_keeps_its_data():
    english, german = (
        written(case("lampa_nigra", 11)),
        written(case("lampa_nigra", 11), language="de"),
    )

    assert german.title == "Etikett stimmt"
    assert german.sentence.startswith("Das Etikett stimmt: Unter den Taxa")
    assert (german.case, german.kind, german.name) == (english.case, english.kind, english.name)


def test_sex_stage_and_record_are_carried_over():
    grown = replace(
        case("lampa_nigra", 2),
        specimen=replace(case("x_", 0).specimen, sex=Sex.MALE, stage=Stage.ADULT),
    )
    found = written(grown, revision=REVISION)

    assert found.case.specimen.sex is Sex.MALE
    assert found.at == REVISION.at
    assert found.revision is not None
    assert found.revision.number == 3


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("{", "The file is not JSON"),
        ("[1]", "The file holds no rationale."),
        ('{"format": 1}', "The record lacks the field"),
        ('{"format": 99}', "The record is written in form 99"),
    ],
)
def test_what_is_no_rationale_is_refused_with_a_remedy(text: str, message: str):
    with pytest.raises(IdKeyError, match=message) as caught:
        rationale_from(text)

    assert caught.value.remedy


def test_a_digest_that_is_no_text_counts_as_none():
    fields = {**json.loads(rationale_json(written(case("lampa_nigra", 1)))), DIGEST: 7}

    assert rationale_from(json.dumps(fields))[1] == ""
