"""The matrix of the key to large dark scorpions: complete, sourced, flagged, well named."""

import re
from collections import Counter

import pytest

from idkey.engine.colour import ciede2000, lab_of_hex
from idkey.formats.folder import read_key
from idkey.model.character import Look
from idkey.model.key import Key
from idkey.model.score import Shows
from idkey.model.source import Basis
from idkey.model.taxon import Taxon
from idkey.places import keys_folder

KEY = read_key(keys_folder() / "large-dark-scorpions")

DANGEROUS = {
    "androctonus_bicolor",
    "androctonus_crassicauda",
    "hottentotta_gentili",
    "parabuthus_transvaalicus",
    "parabuthus_villosus",
}
LISTED = {
    "pandinus_imperator": "Pandinus imperator",
    "pandinus_gambiensis": "Pandinus gambiensis",
    "pandinopsis_dictator": "Pandinus dictator",
}
NEVER_SHOWN = {
    "manus_surface": {"granules_forming_carinae": "seen in animals outside the key"},
    "telson_setation": {"glabrous": "the other end of the scale"},
    "vesicle_aculeus": {"aculeus_longer": "the other end of the scale"},
    "cuticle_lustre": {"moderate": "the middle of the scale"},
    "juvenile_telson_colour": {"as_body": "what a young animal of an unscored species may show"},
}
NEVER_CITED = {
    "kovarik2009": "named as the place to look; only its list of families was seen",
}
ORIGINAL_GENUS_NOT_SEEN = {
    "androctonus_crassicauda",
    "centruroides_gracilis",
    "hadogenes_troglodytes",
    "hottentotta_gentili",
    "nebo_hierichonticus",
    "opisthacanthus_asper",
    "opistophthalmus_wahlbergii",
    "scorpio_fuscus",
}
AUTHORITY = re.compile(
    r"^\(?(?:[A-Z]\.)*(?:[A-Z]\. )?[A-Z][^\W\d_]+(?: & [A-Z][^\W\d_]+)?, 1[789]\d\d\)?$|"
    r"^\(?[A-Z][^\W\d_]+, 20\d\d\)?$"
)


@pytest.fixture(scope="module")
def key() -> Key:
    return KEY


def test_nothing_was_lost_between_the_collected_facts_and_the_key(key: Key) -> None:
    parts = (key.taxa, key.characters, key.scores, key.labels, key.sources, key.checks)
    sizes = tuple(map(len, parts))

    assert sizes == (26, 40, 513, 30, 117, 42)


def test_every_score_keeps_its_evidence_class(key: Key) -> None:
    classes = Counter(score.basis for score in key.scores)

    assert classes == {
        Basis.SOURCE: 331,
        Basis.INFERRED: 33,
        Basis.PARTLY_MEMORY: 37,
        Basis.MEMORY: 112,
    }


def test_a_score_says_memory_among_its_sources_exactly_when_memory_is_behind_it(key: Key) -> None:
    recalled = {Basis.MEMORY, Basis.PARTLY_MEMORY}
    wrong = [
        (score.taxon, score.character)
        for score in key.scores
        if (score.basis in recalled) != ("memory" in score.sources)
    ]

    assert wrong == []


def test_every_score_and_check_names_a_source(key: Key) -> None:
    sources = [x.sources for x in key.scores] + [x.sources for x in key.checks]

    assert all(sources)


def _citing(key: Key) -> list[tuple[str, ...]]:
    cited = [score.sources for score in key.scores]
    cited += [character.sources for character in key.characters]
    cited += [label.sources for label in key.labels]
    cited += [check.sources for check in key.checks]
    for taxon in key.taxa:
        cited += [taxon.sources, taxon.hazard.sources, taxon.permit.sources]
    return cited


def test_cited_sources_exist_and_each_source_is_cited_or_reported_by_one_that_is(key: Key) -> None:
    cited = {source for sources in _citing(key) for source in sources}
    reports = " ".join(s.scope for s in key.sources if "Reports" in s.scope)
    reported = {source.id for source in key.sources if source.id in reports}

    assert cited <= set(key.source)
    assert set(key.source) - cited - reported == set(NEVER_CITED)


def test_no_state_is_never_shown_without_a_reason(key: Key) -> None:
    shown = {
        (score.character, state)
        for score in key.scores
        if isinstance(score.value, Shows)
        for state in score.value.states
    }
    unused = {(c.id, s.id) for c in key.characters for s in c.states} - shown

    assert unused == {(c, state) for c, states in NEVER_SHOWN.items() for state in states}


def test_every_character_can_be_asked_in_plain_words(key: Key) -> None:
    short = [
        c.id
        for c in key.characters
        if not (c.question.endswith("?") and c.definition and c.how and c.pitfalls and c.words)
    ]

    assert short == []


def test_looks_run_from_the_least_trouble_to_the_most(key: Key) -> None:
    order = list(Look)
    mixed = [c.id for c in key.characters if list(c.looks) != sorted(c.looks, key=order.index)]

    assert mixed == []


def test_no_character_depends_on_handling_alone(key: Key) -> None:
    handled = [c.id for c in key.characters if all(look.handling for look in c.looks)]

    assert handled == []


def test_sex_limited_characters_are_scored_for_that_sex_only(key: Key) -> None:
    stray = [
        (score.taxon, score.character)
        for score in key.scores
        if (only := key.character[score.character].sex) and score.sex is not only
    ]

    assert stray == []


def test_shops_lean_on_telson_colour_claw_texture_and_claw_colour(key: Key) -> None:
    thumbs = {c.id for c in key.characters if c.rule_of_thumb}

    assert thumbs == {"telson_colour", "manus_surface", "chela_colour"}


@pytest.mark.parametrize("state", ["reddish", "dark"])
def test_neither_telson_colour_parts_emperors_from_forest_scorpions(key: Key, state: str) -> None:
    shows = {
        score.taxon
        for score in key.scores
        if score.character == "telson_colour"
        and isinstance(score.value, Shows)
        and state in score.value.states
    }

    assert {"pandinus_imperator", "heterometrus_spinifer", "heterometrus_longimanus"} <= shows


def test_reference_colours_of_different_states_differ_to_the_eye(key: Key) -> None:
    close = [
        (c.id, one.id, other.id)
        for c in key.characters
        for n, one in enumerate(c.states)
        for other in c.states[n + 1 :]
        for a in one.colours
        for b in other.colours
        if float(ciede2000(lab_of_hex(a), lab_of_hex(b))) < 10
    ]

    assert close == []


def test_every_state_of_a_colour_character_has_a_reference_colour(key: Key) -> None:
    bare = [
        (c.id, state.id)
        for c in key.characters
        if c.id.endswith("_colour")
        for state in c.states
        if not state.colours
    ]

    assert bare == []


def test_dangerous_taxa_are_flagged_and_no_others(key: Key) -> None:
    assert {taxon.id for taxon in key.taxa if taxon.dangerous} == DANGEROUS


def test_every_taxon_says_how_it_can_hurt_and_on_whose_word(key: Key) -> None:
    silent = [t.id for t in key.taxa if t.hazard.means != ("sting",) or not t.hazard.sources]

    assert silent == []


@pytest.mark.parametrize(("taxon", "name"), LISTED.items(), ids=LISTED)
def test_listed_taxa_are_in_appendix_ii_and_annex_b_under_the_printed_name(
    key: Key, taxon: str, name: str
) -> None:
    permit = key.taxon[taxon].permit

    assert (permit.cites, permit.eu) == ("II", "B")
    assert name in permit.listed_as
    assert "memory" in permit.sources


def test_all_other_taxa_are_unlisted_and_say_that_this_is_from_memory(key: Key) -> None:
    others = [taxon for taxon in key.taxa if taxon.id not in LISTED]

    assert not any(taxon.listed for taxon in others)
    assert all(taxon.permit.from_memory and "memory" in taxon.permit.note for taxon in others)


@pytest.mark.parametrize("taxon", KEY.taxa, ids=lambda taxon: taxon.id)
def test_authority_is_well_formed(taxon: Taxon) -> None:
    opens, closes = taxon.authority.startswith("("), taxon.authority.endswith(")")

    assert AUTHORITY.match(taxon.authority)
    assert opens == closes


def _original_genus(taxon: Taxon) -> str:
    """Genus of the combination printed with the bare authority; empty when none is given."""
    bare = taxon.authority.strip("()")
    for synonym in taxon.synonyms:
        if synonym.endswith(bare) and taxon.epithet[:5] in synonym:
            return synonym.split(" ", 1)[0]
    return ""


@pytest.mark.parametrize("taxon", KEY.taxa, ids=lambda taxon: taxon.id)
def test_parentheses_say_whether_the_genus_has_changed_iczn_1999_article_51(taxon: Taxon) -> None:
    original = _original_genus(taxon)
    changed = taxon.authority.startswith("(")

    if original:
        assert changed == (original != taxon.genus)
    else:
        assert changed == (taxon.id in ORIGINAL_GENUS_NOT_SEEN)
