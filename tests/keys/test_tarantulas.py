"""The two tarantula keys agree with themselves, with what was published, and claim no more."""

import re
from itertools import product

import pytest

from idkey.engine.assess import assess
from idkey.engine.audit import agrees
from idkey.engine.checks import left_by, run_checks
from idkey.engine.compile import compile_key
from idkey.engine.labels import label_entry, match_labels, name_only
from idkey.engine.questions import questions
from idkey.engine.result import Level, Stake
from idkey.engine.walk import graph, reachable
from idkey.formats.folder import check_key, read_key
from idkey.model.case import Case, Finding, Specimen
from idkey.model.character import Character, Look, Sex, Stage
from idkey.model.check import Check
from idkey.model.couplet import Couplet, Sees
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.score import Shows, Spans
from idkey.model.source import Basis
from idkey.model.taxon import Taxon
from idkey.places import keys_folder

RED_KNEED, ORNAMENTAL = "red-kneed-tarantulas", "ornamental-tarantulas"
KEYS = {name: read_key(keys_folder() / name) for name in (RED_KNEED, ORNAMENTAL)}
BOTH = pytest.mark.parametrize("key", KEYS.values(), ids=KEYS.keys())
SPECIES = pytest.mark.parametrize(
    "taxon", [taxon for key in KEYS.values() for taxon in key.taxa], ids=lambda taxon: taxon.id
)
TAXA = pytest.mark.parametrize(
    ("key", "taxon"),
    [pytest.param(key, taxon, id=taxon.id) for key in KEYS.values() for taxon in key.taxa],
)
PAIR = ("brachypelma_smithi", "brachypelma_hamorii")
AUTHORITY = re.compile(r"^(?P<open>\()?[A-Z][^()]*, (17|18|19|20)\d\d(?(open)\))$")


def _findings(key: Key, taxon: str, specimen: Specimen) -> list[list[Finding]]:
    """Per character that a live animal can show: each finding an animal of `taxon` may give."""
    found = []
    for character in key.characters:
        cell = key.cells.get((taxon, character.id))
        if cell and _live(character) and character.suits(specimen.sex, specimen.stage):
            value = cell[0].value
            if isinstance(value, Shows):
                found.append([Finding(character=character.id, states=(s,)) for s in value.states])
            elif isinstance(value, Spans):
                ends = [x for x in (value.low, value.high) if x is not None]
                found.append([Finding(character=character.id, value=x) for x in ends])
    return found


def _live(character: Character) -> bool:
    return any(look not in (Look.MOULT, Look.DEAD) for look in character.looks)


def test_the_two_keys_hold_what_was_compiled():
    taxa, scores, labels, checks = (
        sum(len(getattr(key, part)) for key in KEYS.values())
        for part in ("taxa", "cells", "labels", "checks")
    )
    characters = {c.id for key in KEYS.values() for c in key.characters}
    sources = {s.id for key in KEYS.values() for s in key.sources}

    assert (taxa, len(characters), scores) == (31, 31, 264)
    assert (labels, checks, len(sources)) == (25, 24, 77)


@BOTH
def test_the_folder_has_no_mistakes_but_labels_of_animals_that_are_not_in_the_key(key: Key):
    _, problems = check_key(keys_folder() / key.id)
    covered_elsewhere = {label.text for label in key.labels if not (label.covers or label.sold_as)}

    assert all(any(f"'{text}'" in p.problem for text in covered_elsewhere) for p in problems)


@BOTH
def test_every_character_has_what_a_keeper_needs_at_the_counter(key: Key):
    for character in key.characters:
        assert character.question.endswith("?"), character.id
        assert character.definition, character.id
        assert character.how, character.id
        assert character.pitfalls, character.id
        assert character.part, character.id
        assert character.words, character.id
        assert character.sources, character.id


@BOTH
def test_every_score_tells_its_source_and_memory_is_never_passed_off_as_print(key: Key):
    for score in key.scores:
        kinds = {key.source[source].kind for source in score.sources}

        assert kinds, (score.taxon, score.character)
        assert (kinds == {"memory"}) == (score.basis is Basis.MEMORY), score


@BOTH
def test_couplets_reach_every_taxon_and_run_in_no_circle(key: Key):
    reached = reachable(key.couplets)  # raises on a circle

    assert reached[key.couplets[0].id] == {taxon.id for taxon in key.taxa}


@pytest.mark.parametrize(
    ("key", "couplet"),
    [
        pytest.param(key, couplet, id=f"{key.id} couplet {couplet.id}")
        for key in KEYS.values()
        for couplet in key.couplets
    ],
)
def test_no_lead_contradicts_the_scores_of_a_taxon_below_it(key: Key, couplet: Couplet):
    below = reachable(key.couplets)
    for lead in couplet.leads:
        taxa = below[lead.to] if lead.to else lead.taxa

        assert [taxon for taxon in taxa if not agrees(key, taxon, lead)] == []


@BOTH
def test_an_end_with_several_taxa_says_what_would_be_needed(key: Key):
    ends = [lead for couplet in key.couplets for lead in couplet.leads if len(lead.taxa) > 1]

    assert ends
    for lead in ends:
        assert re.search(r"need|would|decides", lead.remark), lead.statement


@pytest.mark.parametrize(
    ("key", "check"),
    [
        pytest.param(key, check, id=f"{check.id} {' '.join(check.sources)}")
        for key in KEYS.values()
        for check in key.checks
    ],
)
def test_the_scores_agree_with_the_published_statement(key: Key, check: Check):
    result = next(r for r in run_checks(key) if r.check == check)

    assert result.wrongly_excluded == ()
    assert result.wrongly_kept == ()


@SPECIES
def test_the_authority_is_written_as_the_code_wants_it(taxon: Taxon):
    """ICZN 1999, article 51: author and year, in parentheses where the genus changed."""
    assert AUTHORITY.match(taxon.authority), taxon.authority
    bare = taxon.authority.strip("()")
    first = [s for s in taxon.synonyms if s.endswith(bare) and s.split()[0] != taxon.genus]
    if first:
        assert taxon.authority == f"({bare})", first


def test_some_authorities_are_held_against_an_original_genus():
    known = [
        taxon.id
        for key in KEYS.values()
        for taxon in key.taxa
        if any(s.endswith(taxon.authority.strip("()")) for s in taxon.synonyms)
    ]

    assert {"brachypelma_emilia", "tliltocatl_verdezi"} <= set(known)


@TAXA
def test_older_names_are_found_and_mean_the_animal_that_bears_the_new_one(key: Key, taxon: Taxon):
    for synonym in taxon.synonyms:
        match = match_labels(key, name_only(synonym))[0]
        entry = label_entry(key, match.label)

        assert match.exact, synonym
        assert entry is not None
        assert taxon.id in entry.covers, synonym


@TAXA
def test_every_animal_is_flagged_as_permit_listed_until_the_contrary_is_shown(
    key: Key, taxon: Taxon
):
    permit = taxon.permit
    said = assess(compile_key(key), Case(id="new", key=key.id)).cautions
    caution = next(c for c in said if c.stake is Stake.PERMIT)

    assert (permit.cites, permit.eu) == ("II", "B")
    assert permit.from_memory, "the EU annex was not seen in print"
    assert permit.as_of
    assert permit.since
    assert permit.note
    assert taxon.id in caution.taxa


def test_hair_throwers_are_mild_and_ornamentals_medically_significant_fuchs_et_al_2014():
    for taxon in KEYS[RED_KNEED].taxa:
        assert not taxon.dangerous
        assert "hairs" in taxon.hazard.means
    for taxon in KEYS[ORNAMENTAL].taxa:
        assert taxon.dangerous
        assert taxon.hazard.means == ("bite",)
        assert "fuchs_2014" in taxon.hazard.sources


def test_no_question_about_an_ornamental_means_handling_it():
    key = KEYS[ORNAMENTAL]
    matrix = compile_key(key)
    asked = questions(matrix, assess(matrix, Case(id="new", key=key.id)))

    assert asked
    assert not [q for q in asked if q.blocked is None and q.look.handling]


@pytest.mark.parametrize("sex", Sex)
@pytest.mark.parametrize(("me", "other"), [PAIR, PAIR[::-1]], ids=PAIR)
def test_whatever_a_live_red_kneed_spider_shows_the_other_species_stays_mendoza_francke_2017(
    me: str, other: str, sex: Sex
):
    key = KEYS[RED_KNEED]
    specimen = Specimen(sex=sex, stage=Stage.ADULT)
    matrix = compile_key(key, specimen)
    offered = _findings(key, me, specimen)
    assert len(offered) >= 8

    for findings in product(*offered):
        case = Case(id="pair", key=key.id, specimen=specimen, findings=findings)
        said = assess(matrix, case)

        assert other in [candidate.taxon for candidate in said.standing]
        assert said.verdict.level is not Level.ESTABLISHED


def test_a_moult_of_an_adult_female_speaks_for_one_of_the_red_kneed_pair():
    key = KEYS[RED_KNEED]
    female = Specimen(sex=Sex.FEMALE, stage=Stage.ADULT)
    left = left_by(key, [Sees(character="baseplate", states=("elliptical",))], female)

    assert PAIR[1] in left
    assert PAIR[0] not in left


def test_the_couplets_end_at_the_red_kneed_pair_without_a_microscope():
    key = KEYS[RED_KNEED]
    ends = [lead for c in key.couplets for lead in c.leads if set(PAIR) & set(lead.taxa)]

    assert [set(lead.taxa) for lead in ends] == [set(PAIR)]
    assert "microscope" in ends[0].remark
    assert "barcode" in ends[0].remark


@pytest.mark.parametrize("ground", ["white", "bluish_grey_or_grey"])
def test_regalis_and_rajaei_stay_a_pair_whatever_the_hind_legs_look_like(ground: str):
    key = KEYS[ORNAMENTAL]
    seen = [
        Sees(character="v_abd_band", states=("present",)),
        Sees(character="v_leg1_ground", states=("yellow",)),
        Sees(character="v_leg4_ground", states=(ground,)),
    ]
    left = left_by(key, seen, Specimen())

    assert set(left) == {"poecilotheria_regalis", "poecilotheria_rajaei"}


def test_a_picture_of_a_red_rump_from_above_never_ends_in_plain_vagans_trt_2022():
    key = KEYS[RED_KNEED]
    specimen = Specimen(stage=Stage.ADULT)
    shown = {"leg_rings": "none", "patella": "plain_dark", "abd_setae": "red",
             "carapace": "uniform_black", "setae_curl": "straight"}  # fmt: skip
    findings = tuple(Finding(character=c, states=(s,)) for c, s in shown.items())
    case = Case(id="rump", key=key.id, specimen=specimen, findings=findings)
    said = assess(compile_key(key, specimen), case)
    standing = {candidate.taxon for candidate in said.standing}

    assert said.verdict.level is Level.OPEN
    assert {"tliltocatl_vagans", "tliltocatl_kahlenbergi", "tliltocatl_sabulosus"} <= standing


@pytest.mark.parametrize(
    ("key", "label"),
    [
        pytest.param(key, label, id=label.text)
        for key in KEYS.values()
        for label in key.labels
        if label.covers or label.sold_as
    ],
)
def test_a_label_says_why_it_misleads_and_what_decides_it(key: Key, label: Label):
    assert label.why
    assert label.deciding
    assert label.law
    assert label.safety
    assert label.evidence in {"trade", "taxonomy", "common_practice"}
    assert label.rates is None, "nobody has counted"
    assert match_labels(key, label.text)[0].label == label.id


@BOTH
def test_the_page_of_couplets_draws_as_a_graph_from_one_start(key: Key):
    drawn = graph(key.couplets)
    starts = [node for node in drawn if not drawn.in_degree(node)]

    assert starts == [key.couplets[0].id]
