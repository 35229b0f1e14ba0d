"""Couplets as text: nothing is lost on the way there and back, every mistake names its line."""

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings

from idkey import places
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.workshop.couplet_edit import (
    led_to,
    renumbered,
    split_below,
    taxa_below,
    with_lead,
    without_couplet,
    without_lead,
)
from idkey.app.workshop.couplet_facts import couplet_facts
from idkey.app.workshop.couplet_layout import END_ROWS, couplet, height, layout
from idkey.app.workshop.couplet_text import couplets_of_text, couplets_text, letter
from idkey.model.couplet import Couplet, Lead
from idkey.model.key import Key
from tests.formats.invented import keys as invented_keys


def test_the_text_of_every_shipped_key_reads_back_the_same(keys: KeyLibrary):
    for key in keys.values():
        text = couplets_text(key.couplets)

        assert couplets_of_text(text, key) == (key.couplets, ())
        assert len(key.couplets) > 3
    assert len(keys) == 4


@settings(max_examples=25)
@given(invented_keys())
def test_the_text_of_any_key_reads_back_the_same(key: Key):
    read, mistakes = couplets_of_text(couplets_text(key.couplets), key)

    assert (read, mistakes) == (key.couplets, ())


@pytest.mark.parametrize(
    ("old", "new", "line", "problem", "remedy"),
    [
        ("1 a.", "1 a", 2, "is no lead", "1 a. What the animal shows -> 2"),
        ("-> 3\n", "-> 33x\n", 2, "no couplet or taxon '33x'", "Write -> and behind it"),
        ("-> 3\n", "\n", 2, "Lead 1 a goes nowhere", "Write -> and behind it"),
        ("1 b.", "1 a.", 4, "Lead 1 a is there twice", "another letter"),
        ("= thick;", "= thik;", 3, "no state 'metasoma_robustness = thik'", "'thick'?"),
        ("chela_robustness", "chela_robustnes", 3, "'chela_robustnes'", "'chela_robustness'?"),
        ("  sees: metasoma_robustness = thick", "  seas: x = y", 3, "belongs to nothing", "sees:"),
        ("  sees: metasoma_robustness = thick;", "  sees: x;", 3, "asks for nothing", "state;"),
    ],
)
def test_a_mistake_names_its_line_and_the_mend(
    key: Key, old: str, new: str, line: int, problem: str, remedy: str
):
    text = couplets_text(key.couplets)
    assert old in text

    read, mistakes = couplets_of_text(text.replace(old, new, 1), key)

    assert read is None
    assert mistakes[0].line == line
    assert problem in mistakes[0].problem
    assert remedy in mistakes[0].remedy


def test_a_lone_lead_and_a_range_upside_down_are_told(key: Key):
    text = "1 a. Long. -> pandinus_imperator\n  sees: total_length = 9..5; total_length = x"

    read, mistakes = couplets_of_text(text, key)

    assert read is None
    assert [one.line for one in mistakes] == [1, 2, 2]


def test_taxa_may_be_written_by_their_names_and_leads_without_a_blank(key: Key):
    text = "1a. Dark. -> Pandinus imperator, pandinopsis_dictator\n1 b. Pale. → Scorpio fuscus"

    read, _ = couplets_of_text(text, key)

    assert read is not None
    assert [lead.taxa for lead in read[0].leads] == [
        ("pandinus_imperator", "pandinopsis_dictator"),
        ("scorpio_fuscus",),
    ]


def test_a_couplet_that_goes_leaves_its_taxa_to_what_led_there(key: Key):
    lead = next(lead for lead in key.couplets[0].leads if lead.to == "3")
    below = taxa_below(key.couplets, "3")

    kept = without_couplet(key.couplets, "3")

    assert "3" not in {one.id for one in kept}
    assert replace(lead, to="", taxa=below) in kept[0].leads
    assert set(taxa_below(kept, "1")) == set(taxa_below(key.couplets, "1"))


def test_a_couplet_left_with_one_lead_is_passed_over():
    leads = (Lead(statement="A", to="2"), Lead(statement="B", taxa=("x",)))
    below = (Lead(statement="C", taxa=("y",)), Lead(statement="D", taxa=("z",), remark="near"))
    both = (Couplet(id="1", leads=leads), Couplet(id="2", leads=below))

    kept = without_lead(both, "2", 0)

    first = Lead(statement="A", taxa=("z",), remark="near")
    assert kept == (Couplet(id="1", leads=(first, leads[1])),)
    assert without_lead(kept, "1", 0) == ()


def test_a_couplet_below_an_end_splits_it(key: Key):
    lead = next(
        (one.id, n) for one in key.couplets for n, lead in enumerate(one.leads) if lead.taxa
    )
    split = split_below(key.couplets, *lead, words="Shows …")
    facts = couplet_facts(replace(key, couplets=split))

    assert len(split) == len(key.couplets) + 1
    assert facts.unreached == frozenset()
    assert set(taxa_below(split, "1")) == set(taxa_below(key.couplets, "1"))


def test_circles_lost_goals_and_unreached_couplets_are_facts(key: Key):
    shipped = couplet_facts(key)
    assert not any(fact.circles or fact.lost for fact in shipped.leads.values())
    assert not shipped.unreached

    circle = led_to(key.couplets, "3", 0, goal="1")
    lost = led_to(circle, "3", 1, goal="nowhere")
    facts = couplet_facts(replace(key, couplets=lost))

    assert facts.leads["3", 0].circles
    assert facts.leads["3", 1].lost
    assert facts.unreached == {"5", "6"} | (facts.unreached - {"5", "6"})


def test_a_lead_against_the_matrix_names_the_taxa(key: Key):
    ends = replace(key.couplets[0].leads[0], to="", taxa=("pandinus_imperator",))
    couplets = with_lead(key.couplets, "1", 0, lead=ends)

    facts = couplet_facts(replace(key, couplets=couplets))

    assert facts.leads["1", 0].wrong == ("pandinus_imperator",)


def test_cards_of_the_graph_do_not_overlap_and_all_are_there(keys: KeyLibrary):
    for key in keys.values():
        spots = layout(key.couplets)
        columns: dict[int, list[tuple[float, float]]] = {}
        for (name, end), spot in spots.items():
            rows = END_ROWS - 0.25 if end >= 0 else height(key.couplet[name])
            columns.setdefault(spot.column, []).append((spot.top, spot.top + rows))

        ends = sum(bool(lead.taxa) for one in key.couplets for lead in one.leads)
        assert len(spots) == len(key.couplets) + ends
        assert spots[couplet(key.couplets[0].id)].column == 0
        for cards in columns.values():
            cards.sort()
            assert all(low[1] <= high[0] for low, high in pairwise(cards))


def test_a_chain_of_a_thousand_couplets_is_laid_out():
    ends = Lead(statement="end", taxa=("x",))
    chain = tuple(
        Couplet(id=str(n), leads=(Lead(statement="on", to=str(n + 1)), ends)) for n in range(1000)
    )

    spots = layout(chain)

    assert spots[couplet("999")].column == 999


def test_numbers_follow_the_order(key: Key):
    turned = (key.couplets[0], *reversed(key.couplets[1:]))

    numbered = renumbered(turned)

    assert [one.id for one in numbered] == [str(n + 1) for n in range(len(turned))]
    assert set(taxa_below(numbered, "1")) == set(taxa_below(key.couplets, "1"))


def test_letters_go_on_after_z():
    assert [letter(n) for n in (0, 25, 26, 52)] == ["a", "z", "aa", "ba"]


def test_the_example_of_the_manual_is_read(key: Key):
    page = (places.docs_folder() / "howto" / "edit-entries-and-couplets.md").read_text("utf-8")
    example = page.split("```text\n")[1].split("```")[0]

    read, mistakes = couplets_of_text(example, key)

    assert not mistakes
    assert read is not None
    assert [one.id for one in read] == ["1", "2"]
    assert read[0].leads[0].sees[1].low == 120
    assert read[0].leads[1].taxa == ("pandinus_gambiensis", "pandinus_imperator")
