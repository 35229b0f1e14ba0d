"""The engine on open data it has never seen; sources in tests/data/README.md."""

from dataclasses import replace
from itertools import combinations

import numpy as np
import pytest

from idkey.engine.build import build
from idkey.engine.compile import compile_key
from idkey.engine.diagnosis import smallest_cover
from idkey.model.score import Score, Shows
from tests.bench.datasets import compare, iris, penguins, scat, zoo
from tests.bench.learned import Table, learn, read

pytestmark = pytest.mark.slow


@pytest.mark.parametrize(("ratio", "least"), [(False, 0.955), (True, 0.975)])
def test_held_out_penguins_of_gorman_et_al_2014_are_named(ratio: bool, least: float):
    found = compare(penguins(ratio=ratio), repeats=1)

    assert found["idkey"] >= least
    assert found["wrong among those"] <= 0.025
    assert found["calibration error"] <= 0.03


def test_held_out_irises_of_fisher_1936_are_named_as_well_as_by_naive_bayes():
    found = compare(iris(), repeats=1)

    assert found["idkey"] >= found["naive Bayes"] - 0.02
    assert found["wrong among those"] <= 0.03


@pytest.mark.filterwarnings("ignore:The least populated class")
def test_held_out_zoo_animals_of_forsyth_1990_get_their_class():
    found = compare(zoo(), repeats=2)

    assert found["idkey"] >= 0.92
    assert not found["wrong among established"] > 0


def test_droppings_of_reid_2015_hang_together_and_are_weighed_as_groups():
    found = compare(scat(grouped=True), repeats=1)

    assert found["wrong among those"] <= 0.05
    assert not found["wrong among established"] > 0.05


@pytest.fixture(scope="module")
def species():
    """The zoo as a key of species: one row of each distinct profile."""
    rows = read("zoo.csv")
    states = tuple(c for c in rows[0] if c not in ("name", "type"))
    numbered = [row | {"name": f"{row['name']} {n}"} for n, row in enumerate(rows)]
    profiles = {tuple(row[c] for c in states): row for row in numbered}
    table = Table(name="zoo-species", rows=tuple(profiles.values()), label="name",
                  states=states, error=0.0)  # fmt: skip
    key = learn(table, table.rows)
    exact = list(table.rows)
    return key, exact, states


def test_the_zoo_has_59_profiles_and_11_characters_tell_them_apart(species):
    _, rows, states = species
    pairs = list(combinations(rows, 2))
    masks = [sum(1 << n for n, (a, b) in enumerate(pairs) if a[c] != b[c]) for c in states]

    found = smallest_cover(masks)

    assert len(rows) == 59
    assert (len(found.chosen), found.proved) == (11, True)


def test_a_key_of_the_zoo_leads_to_59_ends_in_under_4_88_questions(species):

    key, rows, states = species
    pure = tuple(
        Score(taxon=row["name"], character=c, value=Shows({row[c]: None}))
        for row in rows
        for c in states
    )

    built = build(compile_key(replace(key, scores=pure)))

    assert built.together == ()
    assert built.cost.leaves == 59
    assert built.cost.questions <= 4.88
    assert np.isclose(built.cost.effort, built.cost.questions)
