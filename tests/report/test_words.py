"""The sentences a person reads."""

from dataclasses import replace

import pytest

from idkey.engine.compile import compile_key
from idkey.engine.effects import effects
from idkey.engine.questions import questions
from idkey.engine.result import (
    Assessment,
    Blocked,
    Conflict,
    Effect,
    Level,
    Need,
    Question,
    Stake,
    Unmet,
    VerdictKind,
)
from idkey.model.case import Claim, Finding, Specimen
from idkey.model.character import Look, Sex
from idkey.model.score import Score, Shows, Spans
from idkey.report import words
from idkey.report.text import WIDTH, verdict_text
from tests.report.specimens import BROAD, KEY, LABEL, USUALLY, case, chimera, judged

DE = words.in_language("de")
UNKNOWN = Claim(text="Goldbeetle")
LAMP = Claim(text="lamp scorpion", label="lamp")


@pytest.mark.parametrize(
    ("assessment", "kind", "sentence"),
    [
        (
            judged(case("lampa_nigra", 11)),
            VerdictKind.HOLDS,
            "The label holds: among the taxa of this key, the findings establish Lampa nigra, the "
            "one taxon that “Black lamp scorpion” properly covers.",
        ),
        (
            judged(case("lampa_rubra", 11)),
            VerdictKind.CONTRADICTED,
            "The label is contradicted: among the taxa of this key, the findings establish Lampa "
            "rubra, which “Black lamp scorpion” does not cover.",
        ),
        (
            judged(case("lampa_rubra", 7)),
            VerdictKind.CONTRADICTED,
            "The label is contradicted: the findings speak firmly against every taxon that “Black "
            "lamp scorpion” covers; what it is instead is open, and the name goes as far as "
            "Lampa cf. rubra.",
        ),
        (
            judged(case("lampa_nigra", 11, claim=LAMP)),
            VerdictKind.TOO_BROAD,
            "The label is too broad: “Lamp scorpion” covers 2 taxa of this key; among the taxa of "
            "this key, the findings establish Lampa nigra.",
        ),
        (
            judged(case("lampa_nigra", 6, claim=LAMP)),
            VerdictKind.TOO_BROAD,
            "The label is too broad: “Lamp scorpion” covers 2 taxa of this key, the findings leave "
            "only such taxa, and the name goes as far as Lampa cf. nigra.",
        ),
        (
            judged(case("lampa_nigra", 4)),
            VerdictKind.OPEN,
            "Open: the findings do not decide yet, not even on a genus.",
        ),
        (
            judged(case("lampa_nigra", 0)),
            VerdictKind.OPEN,
            "Open: nothing has been seen yet that this key can use.",
        ),
        (
            judged(case("lampa_nigra", 11, claim=UNKNOWN)),
            VerdictKind.LABEL_UNKNOWN,
            "Label not known: this key has no entry for “Goldbeetle”; among the taxa of this key, "
            "the findings establish Lampa nigra.",
        ),
        (
            judged(case("lampa_nigra", 6, claim=Claim())),
            VerdictKind.LABEL_UNKNOWN,
            "No label was given: the findings do not decide yet; among the taxa of this key the "
            "name goes as far as Lampa cf. nigra.",
        ),
        (
            judged(chimera()),
            VerdictKind.OUTSIDE,
            "Outside the key: no taxon of this key explains the findings well enough, so the "
            "animal may be something this key does not cover.",
        ),
    ],
    ids=lambda value: value.value if isinstance(value, VerdictKind) else "",
)
def test_the_verdict_is_one_sentence_that_claims_no_more_than_was_seen(
    assessment: Assessment, kind: VerdictKind, sentence: str
):
    assert assessment.verdict.kind is kind
    assert words.verdict_sentence(KEY, assessment) == sentence


@pytest.mark.parametrize("language", [words.ENGLISH, DE], ids=["en", "de"])
@pytest.mark.parametrize(
    "claim", [case("lampa_nigra", 1).claim, LAMP, UNKNOWN], ids=lambda c: c.text
)
@pytest.mark.parametrize("taxon", [taxon.id for taxon in KEY.taxa])
def test_no_bare_species_name_stands_short_of_established(
    taxon: str, claim: Claim, language: words.Language
):
    for findings in range(12):
        assessment = judged(case(taxon, findings, claim=claim))
        sentence = words.verdict_sentence(KEY, assessment, language)
        named = [t.name for t in KEY.taxa if t.name in sentence]
        settled = assessment.verdict.level in (Level.ESTABLISHED, Level.GROUP)

        assert settled or not named


def test_a_group_that_the_label_covers_in_part_leaves_the_verdict_open():
    known = judged(case("lampa_nigra", 11))
    verdict = replace(
        known.verdict,
        kind=VerdictKind.OPEN,
        level=Level.GROUP,
        taxa=("lampa_nigra", "lampa_rubra"),
        name=replace(known.verdict.name, text="Lampa nigra or Lampa rubra"),
    )
    sentence = words.verdict_sentence(KEY, replace(known, verdict=verdict))
    other = replace(verdict, taxa=("fenestra_alta", "porta_lata"))

    assert sentence.endswith("of which “Black lamp scorpion” covers only Lampa nigra.")
    assert "not firm yet" in words.verdict_sentence(KEY, replace(known, verdict=other))
    german = words.verdict_sentence(KEY, replace(known, verdict=verdict), DE)
    assert "Lampa nigra oder Lampa rubra" in german


def test_a_label_that_covers_nothing_of_the_key_is_told_so():
    outside = replace(LABEL, covers=(), covers_outside=("some brass lamps",))
    key = replace(KEY, labels=(outside,), id="other", digest="")
    known = judged(case("lampa_rubra", 11))

    assert words.verdict_sentence(key, known) == (
        "The label is contradicted: “Black lamp scorpion” covers no taxon of this key; among the "
        "taxa of this key, the findings establish Lampa rubra."
    )
    assert words.covers_words(key, outside) == (
        "“Black lamp scorpion” properly covers nothing in this key, but outside it: some brass "
        "lamps."
    )


def test_cautions_name_the_taxa_and_say_what_to_do():
    warned = {c.stake: c for c in judged(case("lampa_nigra", 0)).cautions}

    assert words.caution_sentence(KEY, warned[Stake.HAZARD]) == (
        "A medically significant species of this key is still possible (Fenestra alta; sting): do "
        "not handle the animal."
    )
    assert words.caution_sentence(KEY, warned[Stake.PERMIT], DE) == (
        "Eine gelistete Art dieses Schlüssels ist noch möglich (Porta lata): das Tier als "
        "gelistet behandeln und vor Ort klären."
    )


def test_a_caution_that_only_such_taxa_keep_up_says_so():
    warned = judged(case("fenestra_alta", 11)).cautions
    listed = judged(case("porta_lata", 11)).cautions

    assert words.caution_sentence(KEY, warned[0]).startswith("Only medically significant")
    assert words.caution_sentence(KEY, listed[0]).startswith("Only permit-listed")


def test_a_caution_says_when_the_danger_is_more_than_possible():
    warned = judged(case("fenestra_alta", 5)).cautions[0]
    papers = judged(case("porta_lata", 5)).cautions
    listed = next(one for one in papers if one.stake is Stake.PERMIT)
    outside = judged(chimera()).cautions

    assert (warned.certain, warned.likely) == (False, True)
    assert words.caution_sentence(KEY, warned).startswith("Most likely this is a medically")
    assert words.caution_sentence(KEY, listed).startswith("Most likely this is a permit-listed")
    assert not any(caution.likely for caution in outside)


def test_the_mixup_warning_says_what_else_why_and_what_decides():
    assert words.mixup_warning(KEY, LABEL) == (
        "Also sold as “Black lamp scorpion”: Lampa rubra and Fenestra alta; not in this key: brass "
        "lamps. Both are dark when young. Look at: Ridge 0; Length. Danger: One of them stings "
        "badly. From hobby practice; no source for the mix-up itself."
    )


def test_a_label_without_known_mixups_is_not_called_safe():
    assert "proves nothing" in words.mixup_warning(KEY, BROAD)


@pytest.mark.parametrize(
    ("finding", "line"),
    [
        (
            Finding(character="ridge_1", states=("ridged",), look=Look.TUB),
            "Ridge 1: ridged (sure, through the tub)",
        ),
        (
            Finding(character="ridge_1", states=("smooth", "ridged")),
            "Ridge 1: smooth or ridged (sure)",
        ),
        (
            Finding(character="ridge_1", states=("smooth",), negated=True),
            "Ridge 1: not smooth (sure)",
        ),
        (Finding(character="length", value=142.25), "Length: 142.25 ± 2 mm (sure)"),
        (
            Finding(character="length", value=142.2517, uncertainty=1.934),
            "Length: 142.3 ± 1.9 mm (sure)",
        ),
        (
            Finding(character="length", value=142.2517, uncertainty=0.0),
            "Length: 142.252 mm (sure)",
        ),
        (Finding(character="length", value=9, uncertainty=0), "Length: 9 mm (sure)"),
        (
            Finding(character="length", unseen=True, look=Look.ABOVE),
            "Length: could not be seen (photo from above)",
        ),
        (Finding(character="gone", states=("old",)), "gone: old (sure)"),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_a_finding_reads_as_one_line(finding: Finding, line: str):
    assert words.finding_words(KEY, finding) == line


@pytest.mark.parametrize(
    ("value", "line"),
    [
        (Spans(low=120, high=220), "120 to 220 mm [a]"),
        (Spans(low=12.5), "from 12.5 mm [a]"),
        (Spans(high=220, n=3), "up to 220 mm (n = 3) [a]"),
        (Spans(mean=7, sd=0.5, n=9), "mean 7 mm (s = 0.5, n = 9) [a]"),
        (Spans(low=5, high=9, mean=7), "5 to 9 mm (mean 7) [a]"),
        (Spans(low=9, high=9), "9 mm [a]"),
    ],
)
def test_a_range_is_printed_with_its_unit_and_source(value: Spans, line: str):
    score = Score(taxon="lampa_nigra", character="length", value=value, sources=("a",))

    assert words.score_words(KEY, score) == line


def test_states_are_printed_with_how_often_for_whom_and_on_what_ground():
    shares = replace(USUALLY, value=Shows({"smooth": 0.75, "ridged": 0.25}), sex=None, stage=None)

    assert words.score_words(KEY, USUALLY) == (
        "male, adult: usually smooth, rarely ridged (from memory) [invented1901]"
    )
    assert words.value_words(KEY, shares) == "smooth 75 %, ridged 25 %"
    assert words.value_words(KEY, KEY.scores[-1]) == "the part is lacking"


def test_a_conflict_says_what_was_seen_and_what_was_expected():
    conflict = judged(case("lampa_rubra", 11)).lineup[-1].conflicts[0]
    near = replace(conflict, near=True)

    assert words.conflict_words(KEY, conflict).startswith("Ridge 0: seen ridged, but the taxon ")
    assert words.conflict_words(KEY, conflict).endswith("shows: smooth [invented1901]")
    assert "next to" in words.conflict_words(KEY, near)
    assert "nothing scored" in words.conflict_words(KEY, Conflict(conflict.finding, ()))


@pytest.mark.parametrize(
    ("unmet", "sentence"),
    [
        (Unmet(need=Need.ANSWERS, have=6, want=10), "A name needs 10 answers; there are 6."),
        (
            Unmet(need=Need.SUPPORT, have=0.85, want=0.99, rivals=("lampa_rubra",)),
            "A name needs 99 % support; there is 85 %. Closest: Lampa rubra.",
        ),
        (
            Unmet(
                need=Need.SEPARATORS, have=1, want=2, rivals=("porta_lata",), characters=("length",)
            ),
            "A name needs 2 independent findings against every rival; too few stand against Porta "
            "lata. This would help: Length.",
        ),
        (
            Unmet(need=Need.FIT, have=0.0213, want=0.05),
            "The findings fit the leading taxon poorly (p = 0.021; wanted at least 0.05).",
        ),
        (
            Unmet(need=Need.FIT, have=0, want=0.05),
            "No finding puts the leading taxon to the test yet.",
        ),
        (
            Unmet(need=Need.PRIOR, have=0, want=1),
            "It holds only while the starting rates of the label count.",
        ),
    ],
    ids=lambda value: value.need.value if isinstance(value, Unmet) else "",
)
def test_each_missing_condition_is_a_plain_sentence(unmet: Unmet, sentence: str):
    assert words.unmet_words(KEY, unmet) == sentence


def test_stakes_compare_the_label_with_what_the_findings_leave():
    settled, open_ = judged(case("fenestra_alta", 11)), judged(case("fenestra_alta", 6))
    claim = settled.case.claim

    assert words.stakes_words(KEY, claim, settled.verdict) == (
        "Danger by the label: mild; by the findings: medically significant.",
        "Climate by the label: moist forest; by the findings: dry land.",
    )
    assert words.stakes_words(KEY, claim, open_.verdict)[0] == (
        "Danger by the label: mild; something worse is still possible."
    )


def test_papers_at_stake_are_told_from_both_sides():
    listed = judged(case("porta_lata", 11))
    claim = replace(listed.case.claim, label="taxon:porta_lata")
    unlisted = replace(judged(case("lampa_nigra", 11)).verdict, stakes=(Stake.PERMIT,))

    assert "does not show" in words.stakes_words(KEY, listed.case.claim, listed.verdict)[0]
    assert "covers is permit-listed" in words.stakes_words(KEY, claim, unlisted)[0]


def test_the_next_step_is_the_best_question_that_may_be_asked():
    now = judged(case("lampa_nigra", 4))
    asked = questions(compile_key(KEY), now)

    assert words.next_step(KEY, now, asked) == (
        "Look next at: Length (photo from above). How long is it?"
    )
    assert words.next_step(KEY, now) == "Look next at: Length. How long is it?"


def test_when_only_handling_is_left_the_next_step_is_to_wait():
    now = _helpless(judged(case("lampa_nigra", 4)))
    left = (_question("ridge_11", Blocked.HANDLING),)

    assert "wait for a moult" in words.next_step(KEY, now, left)


def test_when_nothing_is_left_to_ask_danger_is_assumed():
    now = _helpless(judged(case("lampa_nigra", 4)))
    harmless = replace(now, cautions=())
    left = (_question("ridge_1", Blocked.ANSWERED),)

    assert "most dangerous" in words.next_step(KEY, now, left)
    assert "someone who knows" in words.next_step(KEY, harmless, left)
    assert "most dangerous" not in words.next_step(KEY, harmless, left)


def test_what_could_not_be_seen_is_named_before_the_end_of_the_key():
    unseen = Finding(character="ridge_1", unseen=True)
    now = _helpless(judged(replace(case("lampa_nigra", 4), findings=(unseen,))))
    left = (_question("ridge_1", Blocked.ANSWERED), _question("ridge_2", Blocked.ANSWERED))

    assert words.next_step(KEY, now, left).startswith(
        "What could not be seen would tell more (Ridge 1): look again"
    )


def test_a_sex_that_was_not_said_is_asked_for_when_it_would_open_questions():
    now = _helpless(judged(replace(case("lampa_nigra", 4), specimen=Specimen())))
    said = _helpless(judged(replace(case("lampa_nigra", 4), specimen=Specimen(sex=Sex.MALE))))
    left = (_question("ridge_1", Blocked.SEX),)

    assert words.next_step(KEY, now, left).startswith("Say the sex and the stage")
    assert "sex" not in words.next_step(KEY, said, left)


def test_a_settled_verdict_asks_for_nothing_more_and_a_misfit_for_another_look():
    assert words.next_step(KEY, judged(case("lampa_nigra", 11))).startswith("Nothing more")
    assert words.next_step(KEY, judged(chimera())).startswith("Look at the findings again")


def _helpless(assessment: Assessment) -> Assessment:
    """The same when no character is known that would help."""
    bare = tuple(replace(unmet, characters=()) for unmet in assessment.verdict.unmet)
    return replace(assessment, verdict=replace(assessment.verdict, unmet=bare))


def test_when_the_label_is_settled_what_a_name_still_wants_is_looked_at_next():
    now = judged(case("lampa_rubra", 4))
    spent = tuple(replace(_question(c.id), value=0) for c in KEY.characters)

    assert words.next_step(KEY, now, spent) == (
        "Look next at: Length (through the tub). How long is it?"
    )


def _question(character: str, blocked: Blocked | None = None, splits: tuple[int, int] = (2, 3)):
    return Question(
        character=character,
        look=Look.TUB,
        gain_bits=1,
        effort=1,
        value=1,
        splits=splits,
        blocked=blocked,
    )


@pytest.mark.parametrize(
    ("question", "sentence"),
    [
        (
            _question("ridge_1"),
            "It sets 2 of 3 close rivals apart from the leading taxon; a glance through the tub.",
        ),
        (
            _question("ridge_1", splits=(0, 3)),
            "It tells no close rival apart by itself; a glance through the tub.",
        ),
        (
            _question("ridge_1", splits=(0, 0)),
            "No close rival is left; a glance through the tub.",
        ),
        (_question("ridge_1", Blocked.ANSWERED), "Answered already."),
        (_question("ridge_1", Blocked.REQUIRES), "Another character has to be seen first."),
    ],
)
def test_a_question_says_why_it_is_asked_now_or_not(question: Question, sentence: str):
    assert words.why_question(KEY, question) == sentence


def test_before_anything_was_seen_no_taxon_is_called_the_leading_one():
    said = words.why_question(KEY, _question("ridge_1"), fresh=True)

    assert said == "It divides what is possible best for its trouble; a glance through the tub."


def test_the_effect_of_a_finding_is_told_in_taxa_bits_and_support():
    found = effects(compile_key(KEY), case("lampa_nigra", 3))
    alone = Effect(
        character="ridge_0", ruled_out=("porta_lata",), gain_bits=-0.25, leader_support=0.5
    )

    assert all("Without it the leading taxon has" in words.effect_words(KEY, e) for e in found)
    assert words.effect_words(KEY, alone) == (
        "It alone rules out Porta lata. It raised the doubt by 0.25 bits. Without it the leading "
        "taxon has 50 % support."
    )


def test_starting_rates_in_use_are_shown_with_the_verdict_without_them():
    flat = judged(case("lampa_nigra", 4))
    used = judged(case("lampa_nigra", 4), prior={"lampa_nigra": 0.6, "lampa_rubra": 0.4})
    turned = replace(used, verdict=replace(used.verdict, blind=VerdictKind.OPEN))

    assert words.prior_words(KEY, flat).startswith("Starting rates of the label are not counted")
    assert "Lampa nigra 60 %, Lampa rubra 40 %" in words.prior_words(KEY, used)
    assert words.prior_words(KEY, turned).endswith("Without it the verdict is: Open.")


@pytest.mark.parametrize("language", [words.ENGLISH, DE], ids=["en", "de"])
@pytest.mark.parametrize("findings", [0, 4, 11])
def test_the_text_for_a_till_fits_its_lines_and_starts_with_the_verdict(
    findings: int, language: words.Language
):
    now = judged(case("lampa_rubra", findings))
    lines = verdict_text(KEY, now, (), language).splitlines()

    assert max(map(len, lines)) <= WIDTH
    assert lines[0].startswith(words.verdict_title(now.verdict.kind, language).upper())
    assert "5f5f5f5f5f5f" in lines[-1]
    assert sum(line.startswith("- Ridge") for line in lines) == findings


def test_a_label_over_several_lines_stays_one_line_in_the_text():
    now = judged(case("lampa_nigra", 1, claim=Claim(text="Black\nlamp\t x")))

    assert "Label: “Black lamp x”" in verdict_text(KEY, now)
    assert verdict_text(KEY, judged(case("lampa_nigra", 1, claim=Claim()))).startswith("NO LABEL")


def test_permit_and_hazard_words_say_how_much_is_known():
    listed, plain = KEY.taxon["porta_lata"], KEY.taxon["lampa_nigra"]

    assert words.permit_words(listed.permit) == (
        "CITES Appendix II, EU Annex B (data as of 2024), from memory"
    )
    assert words.permit_words(plain.permit) == "not listed, as far as this key knows"
    assert words.hazard_words(KEY.taxon["fenestra_alta"].hazard) == "medically significant (sting)"
