"""Cautions, verdicts and names on small made-up keys."""

from dataclasses import replace

import pytest

from idkey.engine import naming
from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.effects import effects
from idkey.engine.questions import questions
from idkey.engine.result import Blocked, Level, Need, Stake, VerdictKind
from idkey.engine.whatif import turns, way_back
from idkey.model.case import Aim, Case, Certainty, Claim, Finding, Specimen
from idkey.model.character import Look, Requirement, Sex, Stage
from idkey.model.label import Label
from idkey.model.score import Inapplicable, Score, Shows
from idkey.model.taxon import Climate, Danger, Hazard, Permit, Taxon
from tests.engine.small_keys import key_of, states_character

NAMES = tuple(f"c{n}" for n in range(12))
MILD = Taxon(id="mild", name="Alpha mitis", family="Fam", climate=Climate.MOIST_FOREST)
WILD = Taxon(
    id="wild",
    name="Beta saeva",
    family="Bad",
    hazard=Hazard(level=Danger.SIGNIFICANT),
    climate=Climate.ARID,
)
RARE = Taxon(id="rare", name="Alpha rara", family="Fam", permit=Permit(cites="II"))
LABELS = (
    Label(id="M", text="Mild one", covers=("mild",), sold_as=("wild",), deciding=("c0",)),
    Label(id="A", text="Any alpha", covers=("mild", "rare")),
    Label(id="W", text="Wild one", covers=("wild",)),
    Label(id="N", text="Black one", sold_as=("mild", "wild")),
)
ROWS = {
    "mild": dict.fromkeys(NAMES, "x"),
    "wild": dict.fromkeys(NAMES, "y"),
    "rare": {n: "x" if i < 6 else "z" for i, n in enumerate(NAMES)},
}


@pytest.fixture(scope="module")
def matrix():
    """Three taxa that differ in six to twelve of twelve characters."""
    characters = [states_character(n, ("x", "y", "z"), error=0.1) for n in NAMES]
    return compile_key(key_of(characters, ROWS, taxa=(MILD, WILD, RARE), labels=LABELS))


def seen(count: int, state: str = "x", label: str = "", **more) -> Case:
    """A case with that state on the first `count` characters."""
    findings = tuple(Finding(character=n, states=(state,)) for n in NAMES[:count])
    claim = Claim(text=label, label=label)
    return Case(id="1", key="small", claim=claim, findings=findings, **more)


def test_findings_without_end_leave_no_taxon_at_nothing_and_none_at_all():
    names = tuple(f"c{n}" for n in range(40))
    rows = {"mild": dict.fromkeys(names, "x"), "wild": dict.fromkeys(names, "y")}
    key = key_of([states_character(n, ("x", "y")) for n in names], rows)
    seen = tuple(Finding(character=n, states=("x",)) for n in names[:14])
    first, last = assess(compile_key(key), Case(id="1", key=key.id, findings=seen)).lineup

    assert 0 < last.support < 1e-12 < 0.5 < first.support < 1


def test_before_any_finding_every_danger_and_permit_is_possible(matrix):
    cautions = assess(matrix, seen(0)).cautions

    assert [(c.stake, c.taxa) for c in cautions] == [
        (Stake.HAZARD, ("wild",)),
        (Stake.PERMIT, ("rare",)),
    ]


def test_one_finding_never_lets_a_danger_go_and_enough_of_them_do(matrix):
    stands = [
        any(c.stake is Stake.HAZARD for c in assess(matrix, seen(n)).cautions) for n in range(8)
    ]

    assert stands[:3] == [True, True, True]
    assert stands[7] is False


def test_guesses_never_let_a_danger_go(matrix):
    case = seen(12)
    guesses = tuple(replace(f, certainty=Certainty.GUESS) for f in case.findings)

    cautions = assess(matrix, replace(case, findings=guesses)).cautions

    assert Stake.HAZARD in [c.stake for c in cautions]


def test_an_unscored_danger_is_never_dismissed():
    characters = [states_character(n, ("x", "y", "z"), error=0.1) for n in NAMES]
    rows = ROWS | {"wild": dict.fromkeys(NAMES)}
    bare = compile_key(key_of(characters, rows, taxa=(MILD, WILD, RARE)))

    cautions = assess(bare, seen(12)).cautions

    assert ("wild",) in [c.taxa for c in cautions if c.stake is Stake.HAZARD]


def test_a_prior_never_lets_a_danger_go(matrix):
    prior = {"mild": 0.999998, "wild": 1e-6, "rare": 1e-6}

    found = assess(matrix, seen(2, use_prior=True), prior)

    assert Stake.HAZARD in [c.stake for c in found.cautions]
    assert found.prior


def test_a_name_needs_ten_answers_or_eight_when_there_are_no_more(matrix):
    levels = [assess(matrix, seen(n)).verdict.level for n in range(13)]

    assert Level.ESTABLISHED not in levels[:8]
    assert levels[10:] == [Level.ESTABLISHED] * 3
    short = assess(matrix, seen(6)).verdict
    assert Need.ANSWERS in [u.need for u in short.unmet]


@pytest.mark.parametrize(
    ("label", "kind"),
    [
        ("M", VerdictKind.HOLDS),
        ("A", VerdictKind.TOO_BROAD),
        ("W", VerdictKind.CONTRADICTED),
        ("N", VerdictKind.TOO_BROAD),
        ("", VerdictKind.LABEL_UNKNOWN),
    ],
)
def test_the_verdict_on_the_label_follows_what_it_covers(matrix, label: str, kind: VerdictKind):
    verdict = assess(matrix, seen(12, label=label)).verdict

    assert (verdict.kind, verdict.taxa, verdict.name.text) == (kind, ("mild",), "Alpha mitis")


def test_a_contradicted_label_names_what_is_at_stake_and_what_contradicts_it(matrix):
    verdict = assess(matrix, seen(12, label="W")).verdict

    assert verdict.stakes == (Stake.CLIMATE,)  # the animal is milder than its label says
    assert set(verdict.contradicted) == set(NAMES)


def test_an_animal_that_fits_nothing_is_outside_and_every_danger_stands_again(matrix):
    odd = tuple(Finding(character=n, states=("xyz"[i % 3],)) for i, n in enumerate(NAMES))
    found = assess(matrix, Case(id="1", key="small", findings=odd, claim=Claim(label="M")))

    assert (found.verdict.kind, found.verdict.level) == (VerdictKind.OUTSIDE, Level.OUTSIDE)
    assert found.verdict.name.certain == ""
    assert ("wild",) in [c.taxa for c in found.cautions if c.stake is Stake.HAZARD]


def test_twins_end_as_a_pair_that_holds_both():
    twin = replace(MILD, id="twin", name="Alpha gemina")
    characters = [states_character(n, ("x", "y", "z"), error=0.1) for n in NAMES]
    rows = {"mild": ROWS["mild"], "twin": ROWS["mild"], "wild": ROWS["wild"]}
    pair = compile_key(key_of(characters, rows, taxa=(MILD, twin, WILD), labels=LABELS))

    verdict = assess(pair, seen(12, label="W")).verdict

    assert verdict.level is Level.GROUP
    assert set(verdict.taxa) == {"mild", "twin"}
    assert verdict.name.text == "Alpha mitis or Alpha gemina"
    assert (verdict.name.certain, verdict.name.formula) == ("Alpha", "A or B")
    assert verdict.kind is VerdictKind.CONTRADICTED


def test_no_question_asks_for_handling_while_a_danger_is_possible():
    lens = [states_character(n, ("x", "y", "z"), error=0.1, looks=(Look.LENS,)) for n in NAMES[:6]]
    tub = [states_character(n, ("x", "y", "z"), error=0.1) for n in NAMES[6:]]
    matrix = compile_key(key_of([*lens, *tub], ROWS, taxa=(MILD, WILD, RARE)))

    asked = questions(matrix, assess(matrix, seen(0)))

    assert {q.character for q in asked if q.blocked is Blocked.HANDLING} == set(NAMES[:6])
    assert all(q.look is Look.TUB for q in asked if q.blocked is None)


def test_each_aim_asks_about_its_own_parts(matrix):
    first = {
        aim: questions(matrix, assess(matrix, seen(0, label="M")), aim)[0].gain_bits for aim in Aim
    }

    assert first[Aim.TAXON] > first[Aim.HAZARD] > 0
    assert first[Aim.PERMIT] > 0


def test_a_character_of_one_sex_waits_until_the_sex_is_known():
    characters = [
        states_character("c0", ("x", "y", "z"), sex=Sex.MALE),
        states_character("c1", ("x", "y", "z"), stage=Stage.ADULT),
    ]
    key = key_of(characters, {t: {n: r[n] for n in NAMES[:2]} for t, r in ROWS.items()})

    def blocked(specimen: Specimen) -> dict[str, Blocked | None]:
        matrix = compile_key(key, specimen)
        asked = questions(matrix, assess(matrix, seen(0, specimen=specimen)))
        return {q.character: q.blocked for q in asked}

    assert blocked(Specimen()) == {"c0": Blocked.SEX, "c1": None}
    assert blocked(Specimen(sex=Sex.MALE)) == {"c0": None, "c1": None}
    assert blocked(Specimen(sex=Sex.FEMALE, stage=Stage.JUVENILE)) == {
        "c0": Blocked.SEX,
        "c1": Blocked.STAGE,
    }


def test_a_dependent_character_waits_and_a_missing_part_conflicts():
    tooth = states_character("tooth", ("there", "none"))
    shape = states_character(
        "shape", ("hooked", "straight"), requires=Requirement(character="tooth", states=("there",))
    )
    rows = {
        "one": {"tooth": "there", "shape": "hooked"},
        "two": {"tooth": "there", "shape": "straight"},
        "bald": {"tooth": "none", "shape": None},
    }
    matrix = compile_key(key_of([tooth, shape], rows))
    bare = Case(id="1", key="small")

    waiting = {q.character: q.blocked for q in questions(matrix, assess(matrix, bare))}
    hooked = bare.observe(Finding(character="shape", states=("hooked",)))

    assert waiting["shape"] is Blocked.REQUIRES
    assert {c.taxon for c in assess(matrix, hooked).ruled_out} == {"two", "bald"}


def test_scores_of_both_sexes_are_mixed_until_the_sex_is_known():
    characters = [states_character("c0", ("x", "y"))]
    key = key_of(characters, {"one": {"c0": None}, "two": {"c0": "y"}})
    scores = (
        *key.scores,
        Score(taxon="one", character="c0", value=Shows({"x": None}), sex=Sex.MALE),
        Score(taxon="one", character="c0", value=Shows({"y": None}), sex=Sex.FEMALE),
    )
    key = replace(key, scores=scores)
    case = seen(1, "x")

    def standing(specimen: Specimen) -> set[str]:
        found = assess(compile_key(key, specimen), replace(case, specimen=specimen))
        return {c.taxon for c in found.standing}

    assert standing(Specimen()) == {"one"}
    assert standing(Specimen(sex=Sex.FEMALE)) == set()


def test_an_inapplicable_score_excludes_once_the_part_is_seen():
    key = key_of(
        [states_character("c0", ("x", "y"))], {"one": {"c0": Inapplicable()}, "two": {"c0": "x"}}
    )

    found = assess(compile_key(key), seen(1, "x"))

    assert [c.taxon for c in found.ruled_out] == ["one"]


def test_the_way_back_of_a_ruled_out_taxon_is_the_fewest_findings(matrix):
    found = assess(matrix, seen(3))
    back = way_back(matrix, found, "wild")

    assert set(back.withdraw) == {"c0", "c1", "c2"}
    assert way_back(matrix, found, "mild").withdraw == ()


def test_what_would_change_the_verdict_changes_it(matrix):
    found = assess(matrix, seen(7, label="M"))

    for turn in turns(matrix, found):
        case = found.case
        for finding in turn.findings:
            case = case.observe(finding)
        then = assess(matrix, case).verdict
        assert (then.kind, then.level) != (found.verdict.kind, found.verdict.level)


def test_the_effect_of_a_finding_is_against_the_case_without_it(matrix):
    first = effects(matrix, seen(1))[0]

    assert first.ruled_out == ("wild",)
    assert first.gain_bits > 0


@pytest.mark.parametrize(
    ("name", "text", "certain", "formula"),
    [
        (naming.species(MILD), "Alpha mitis", "Alpha mitis", "A"),
        (naming.compared(MILD), "Alpha cf. mitis", "Alpha", "A cf."),
        (naming.unknown_species("Alpha"), "Alpha sp.", "Alpha", "A"),
        (naming.unknown_genus("Fam", "Alpha"), "Fam, Alpha gen. inc.", "Fam", "A ?"),
        (naming.unknown_genus("Fam"), "Fam indet.", "Fam", "A"),
        (naming.either((MILD, WILD)), "Alpha mitis or Beta saeva", "", "A or B"),
        (naming.group((replace(MILD, group="mitis"),)), "Alpha gr. mitis", "Alpha", "A"),
    ],
)
def test_names_follow_sigovini_et_al_2016_and_iczn_5_3(name, text, certain, formula):
    assert (name.text, name.certain, name.formula) == (text, certain, formula)
    for start, end in name.italic:
        assert not {"cf.", "sp.", "gr.", "or", "inc.", "gen."} & set(text[start:end].split())
