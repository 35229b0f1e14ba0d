"""The kitchen leaves: a small key to learn from, whose comments explain every field."""

import re

import pytest

from idkey.engine.assess import assess
from idkey.engine.audit import Weakness, agrees, audit
from idkey.engine.checks import failed_checks, run_checks
from idkey.engine.compile import compile_key
from idkey.engine.labels import match_labels
from idkey.engine.result import Level, VerdictKind
from idkey.engine.walk import reachable
from idkey.formats.character_document import (
    CharacterDoc,
    CheckDoc,
    CoupletDoc,
    LeadDoc,
    StateDoc,
)
from idkey.formats.folder import check_key, read_key
from idkey.formats.key_document import KeyDoc, LabelDoc, SourceDoc
from idkey.formats.taxon_document import ScoreDoc, TaxonDoc
from idkey.model.case import Case, Claim, Finding
from idkey.model.character import Character, Kind
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.score import Inapplicable, Shows, Spans
from idkey.model.source import Basis
from idkey.model.taxon import Danger, Taxon
from idkey.places import keys_folder

FOLDER = keys_folder() / "kitchen-leaves"
KEY = read_key(FOLDER)
OF_ANIMALS = {"sex", "stage", "subfamily", "rank"}
"""Fields that leaves do not need and the comments only touch on."""


def _typical(key: Key, taxon: str) -> tuple[Finding, ...]:
    """What a typical leaf shows: the first state, the middle of a range."""
    found: dict[str, Finding] = {}
    for character in key.characters:
        cell = key.cells.get((taxon, character.id))
        if cell and _asked(character, found):
            value = cell[0].value
            if isinstance(value, Shows):
                state = next(iter(value.states))
                found[character.id] = Finding(character=character.id, states=(state,))
            elif isinstance(value, Spans) and value.low is not None and value.high is not None:
                middle = (value.low + value.high) / 2
                found[character.id] = Finding(character=character.id, value=middle)
    return tuple(found.values())


def _asked(character: Character, found: dict[str, Finding]) -> bool:
    needed = character.requires
    if needed is None:
        return True
    before = found.get(needed.character)
    return before is not None and bool(set(before.states) & set(needed.states))


def test_the_folder_has_no_mistakes_at_all():
    key, problems = check_key(FOLDER)

    assert key is not None
    assert problems == ()


def test_it_is_small_and_shows_every_kind_of_character():
    inapplicable = [s for s in KEY.scores if isinstance(s.value, Inapplicable)]

    assert (len(KEY.taxa), len(KEY.characters)) == (12, 14)
    assert {c.kind for c in KEY.characters} == set(Kind)
    assert [c.id for c in KEY.characters if c.requires] == ["tooth_form"]
    assert {s.taxon for s in inapplicable} == {"chives"}
    assert not [c for c in KEY.characters if c.sex or c.stage]


def test_every_value_is_marked_as_common_practice_and_nothing_can_hurt():
    assert {score.basis for score in KEY.scores} == {Basis.COMMON_PRACTICE}
    assert {taxon.hazard.level for taxon in KEY.taxa} == {Danger.HARMLESS}
    assert not [taxon for taxon in KEY.taxa if taxon.listed]


@pytest.mark.parametrize(
    ("file", "documents"),
    [
        ("key.yaml", [KeyDoc]),
        ("characters.yaml", [CharacterDoc, StateDoc]),
        ("taxa/basil.yaml", [TaxonDoc, ScoreDoc]),
        ("labels.yaml", [LabelDoc]),
        ("couplets.yaml", [CoupletDoc, LeadDoc]),
        ("checks.yaml", [CheckDoc]),
        ("sources.yaml", [SourceDoc]),
    ],
)
def test_the_comments_and_the_text_show_an_author_every_field(file: str, documents: list[type]):
    text = (FOLDER / file).read_text("utf-8")
    fields = {name for document in documents for name in document.model_fields}
    missing = {f for f in fields - OF_ANIMALS if not re.search(rf"\b{f}\b", text)}

    assert missing == set()


def test_each_file_is_explained_before_its_first_line():
    files = [*FOLDER.glob("*.yaml"), FOLDER / "taxa/basil.yaml"]

    assert len(files) == 7
    assert [f.name for f in files if not f.read_text("utf-8").startswith("# ")] == []


def test_all_statements_hold_and_no_weakness_is_left_but_the_pair():
    found = [r for r in audit(KEY) if r.weakness is not Weakness.FRAGILE]
    found = [r for r in found if r.about != ("exercise",)]

    assert len(run_checks(KEY)) == len(KEY.checks) == 4
    assert failed_checks(KEY) == ()
    assert [(r.weakness, r.about) for r in found] == [
        (Weakness.INSEPARABLE, ("marjoram", "oregano"))
    ]


def test_couplets_reach_every_leaf_and_agree_with_the_scores():
    below = reachable(KEY.couplets)

    assert below["1"] == {taxon.id for taxon in KEY.taxa}
    for couplet in KEY.couplets:
        for lead in couplet.leads:
            for taxon in below[lead.to] if lead.to else lead.taxa:
                assert agrees(KEY, taxon, lead), (couplet.id, lead.statement, taxon)


@pytest.mark.parametrize("taxon", KEY.taxa, ids=lambda taxon: taxon.id)
def test_a_typical_leaf_is_named_and_the_pair_as_a_pair(taxon: Taxon):
    case = Case(id="leaf", key=KEY.id, findings=_typical(KEY, taxon.id))
    verdict = assess(compile_key(KEY), case).verdict
    pair = taxon.group == "vulgare"

    assert verdict.level is (Level.GROUP if pair else Level.ESTABLISHED)
    assert taxon.id in verdict.taxa
    assert verdict.name.text == ("Origanum gr. vulgare" if pair else taxon.name)


def _verdict(label: str, taxon: str) -> VerdictKind:
    claim = Claim(text=label, label=match_labels(KEY, label)[0].label)
    case = Case(id="leaf", key=KEY.id, claim=claim, findings=_typical(KEY, taxon))
    return assess(compile_key(KEY), case).verdict.kind


@pytest.mark.parametrize(
    ("label", "taxon", "kind"),
    [
        ("Flat parsley", "parsley", VerdictKind.HOLDS),
        ("Flat parsley", "coriander", VerdictKind.CONTRADICTED),
        ("cilantro", "coriander", VerdictKind.HOLDS),
        ("Mint", "lemon_balm", VerdictKind.CONTRADICTED),
        ("Mint", "spearmint", VerdictKind.TOO_BROAD),
        ("Rosmarinus officinalis", "rosemary", VerdictKind.HOLDS),
        ("Oregano", "marjoram", VerdictKind.OPEN),
    ],
)
def test_the_labels_show_every_kind_of_verdict(label: str, taxon: str, kind: VerdictKind):
    assert _verdict(label, taxon) is kind


@pytest.mark.parametrize("label", KEY.labels, ids=lambda label: label.id)
def test_a_label_of_the_exercise_says_why_and_what_decides(label: Label):
    assert label.why
    assert label.deciding
    assert match_labels(KEY, label.text)[0].label == label.id
