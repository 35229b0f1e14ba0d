"""The labels, couplets and published checks of the key to large dark scorpions at work."""

from collections import Counter

import pytest

from idkey.engine.assess import assess
from idkey.engine.checks import left_by, run_checks
from idkey.engine.compile import compile_key
from idkey.engine.labels import label_entry, match_labels, name_only
from idkey.engine.result import Level, Stake, VerdictKind
from idkey.engine.walk import reachable
from idkey.formats.folder import read_key
from idkey.model.case import Aim, Case, Claim, Finding, Specimen
from idkey.model.character import Sex, Stage
from idkey.model.check import Check, CheckKind
from idkey.model.couplet import Lead
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.taxon import Taxon
from idkey.places import keys_folder

KEY = read_key(keys_folder() / "large-dark-scorpions")
DANGEROUS = {taxon.id for taxon in KEY.taxa if taxon.dangerous}
LISTED = {taxon.id for taxon in KEY.taxa if taxon.listed}
LEADS = [(c.id, number) for c in KEY.couplets for number in range(len(c.leads))]
COMPUTED = [c for c in KEY.checks if c.kind in (CheckKind.MATRIX, CheckKind.NAME)]


@pytest.fixture(scope="module")
def key() -> Key:
    return KEY


def _lead(key: Key, place: tuple[str, int]) -> Lead:
    return key.couplet[place[0]].leads[place[1]]


def _below(key: Key, lead: Lead) -> frozenset[str]:
    return reachable(key.couplets)[lead.to] if lead.to else frozenset(lead.taxa)


@pytest.mark.parametrize("taxon", KEY.taxa, ids=lambda taxon: taxon.id)
def test_name_old_combinations_and_listed_names_lead_to_the_taxon(key: Key, taxon: Taxon) -> None:
    misapplied = {"Heterometrus petersii", "Palamnaeus spinifer"}
    names = [taxon.name, *map(name_only, taxon.synonyms), *taxon.permit.listed_as]
    for name in set(names) - misapplied:
        best = match_labels(key, name)[0]
        entry = label_entry(key, best.label)

        assert best.exact, name
        assert entry is not None, name
        assert taxon.id in entry.covers, name


def test_no_spelling_stands_for_two_labels(key: Key) -> None:
    spellings = Counter(
        spelling.casefold() for label in key.labels for spelling in {label.text, *label.variants}
    )

    assert [spelling for spelling, times in spellings.items() if times > 1] == []


@pytest.mark.parametrize("label", KEY.labels, ids=lambda label: label.id)
def test_every_label_warns_with_a_reason_and_characters_that_need_no_handling(
    label: Label,
) -> None:
    open_ways = [
        character
        for character in label.deciding
        if any(not look.handling for look in KEY.character[character].looks)
    ]

    assert label.why
    assert len(open_ways) >= 2
    assert label.sold_as or label.sold_outside
    assert label.rates is None


def test_labels_that_can_hide_a_dangerous_animal_say_what_to_do(key: Key) -> None:
    unsaid = [
        label.id
        for label in key.labels
        if DANGEROUS & {*label.covers, *label.sold_as} and not label.safety
    ]

    assert unsaid == []


def test_labels_that_cover_a_listed_animal_speak_of_the_law(key: Key) -> None:
    unsaid = [label.id for label in key.labels if LISTED & set(label.covers) and not label.law]

    assert set(unsaid) <= {"L04"}


@pytest.mark.parametrize("check", COMPUTED, ids=lambda check: f"{check.id}-{check.sources[0]}")
def test_matrix_and_names_agree_with_what_was_published(key: Key, check: Check) -> None:
    result = next(r for r in run_checks(key) if r.check.id == check.id)

    assert result.wrongly_excluded == ()
    assert result.wrongly_kept == ()


def test_checks_keep_their_kinds(key: Key) -> None:
    kinds = Counter(check.kind for check in key.checks)

    assert kinds == {
        CheckKind.MATRIX: 32,
        CheckKind.LABEL_ORIGIN: 3,
        CheckKind.NAME: 3,
        CheckKind.LITERATURE: 4,
    }


def test_the_couplets_reach_every_taxon(key: Key) -> None:
    start = key.couplets[0].id

    assert reachable(key.couplets)[start] == set(key.taxon)


@pytest.mark.parametrize("place", LEADS, ids=lambda place: f"{place[0]}-{place[1] + 1}")
def test_every_taxon_below_a_lead_can_show_what_the_lead_says(
    key: Key, place: tuple[str, int]
) -> None:
    lead = _lead(key, place)
    able = left_by(key, lead.sees, Specimen())

    assert lead.sees
    assert _below(key, lead) - set(able) == set()


def test_each_dangerous_taxon_comes_out_within_five_couplets(key: Key) -> None:
    def deepest(couplet: str, depth: int) -> int:
        return max(
            (deepest(lead.to, depth + 1) if lead.to else depth)
            for lead in key.couplet[couplet].leads
            if _below(key, lead) & DANGEROUS
        )

    assert deepest(key.couplets[0].id, 1) <= 5


def test_no_dangerous_taxon_is_left_once_the_sternum_was_seen_to_be_five_sided(key: Key) -> None:
    sternum = key.couplet["2"].leads[1]

    assert sternum.sees[0].states == ("pentagonal",)
    assert _below(key, sternum) & DANGEROUS == set()


def test_leads_that_end_in_several_taxa_say_what_a_name_would_need(key: Key) -> None:
    silent = [
        place for place in LEADS if len(_lead(key, place).taxa) > 1 and not _lead(key, place).remark
    ]

    assert silent == []


def _case(label: str, *findings: Finding, aim: Aim = Aim.LABEL) -> Case:
    claim = Claim(text=KEY.label[label].text, label=label)
    return Case(id="made-up", key=KEY.id, claim=claim, findings=findings, aim=aim)


def _seen(**states: str) -> tuple[Finding, ...]:
    return tuple(Finding(character=c, states=(state,)) for c, state in states.items())


def test_a_forest_scorpion_sold_as_emperor_is_contradicted(key: Key) -> None:
    specimen = Specimen(sex=Sex.MALE, stage=Stage.ADULT)
    findings = _seen(
        manus_surface="smooth_reticulate",
        body_compression="none",
        subaculear_tubercle="absent",
        manus_shape="weakly_lobiform",
        metasoma_robustness="slender",
        stridulatory_organ="coxal_rasp_on_leg_I",
        body_colour="black",
        bothriotaxy="type_C_ortho",
        vesicle_aculeus="vesicle_longer",
        carapace_surface="smooth_disc_granular_margins",
    )
    length = Finding(character="total_length", value=118.0)
    case = _case("L01", *findings, length)

    verdict = assess(compile_key(key, specimen), case).verdict

    assert verdict.kind is VerdictKind.CONTRADICTED


def test_an_emperor_is_not_told_from_its_listed_relatives_and_keeps_the_permit_caution(
    key: Key,
) -> None:
    specimen = Specimen(sex=Sex.MALE, stage=Stage.ADULT)
    findings = _seen(
        manus_surface="granular",
        chela_robustness="robust",
        body_colour="black",
        metasoma_robustness="slender",
        body_compression="none",
        stridulatory_organ="coxal_rasp_on_pedipalp",
        bothriotaxy="type_C_neo",
        male_manus_depression="absent",
        cuticle_lustre="high",
        leg_colour="dark",
    )
    numbers = {"total_length": 170.0, "chela_i_trichobothria": 3, "chela_total_trichobothria": 30}
    measured = (Finding(character=c, value=value) for c, value in numbers.items())
    held = assess(compile_key(key, specimen), _case("L02", *findings, *measured))

    assert held.verdict.kind is VerdictKind.TOO_BROAD
    assert held.verdict.level is not Level.ESTABLISHED
    assert [(c.stake, set(c.taxa)) for c in held.cautions] == [(Stake.PERMIT, LISTED)]


def test_a_black_scorpion_is_cautioned_as_dangerous_before_anything_was_seen(key: Key) -> None:
    held = assess(compile_key(key), _case("L25"))

    cautioned = next(c for c in held.cautions if c.stake is Stake.HAZARD)
    assert set(cautioned.taxa) == DANGEROUS


def test_a_parabuthus_sold_as_black_scorpion_keeps_its_caution_to_the_end(key: Key) -> None:
    findings = _seen(
        metasoma_robustness="thick",
        chela_robustness="slender",
        sternum_shape="triangular",
        telson_width="as_wide",
        tergite_carinae="one_median",
        body_setation="moderate",
        pectine_colour="pale",
        body_colour="black",
        body_compression="none",
        stridulatory_organ="metasomal_dorsal",
    )
    matrix = compile_key(key, Specimen(stage=Stage.ADULT))
    stakes = [
        {c.stake for c in assess(matrix, _case("L25", *findings[:n])).cautions}
        for n in range(len(findings) + 1)
    ]

    assert all(Stake.HAZARD in seen for seen in stakes)
