"""The engine held against printed numbers and general libraries."""

import heapq
import math
from itertools import combinations

import numpy as np
import pytest
from scipy import stats
from sklearn.metrics import mutual_info_score

from idkey.engine.compile import compile_key
from idkey.engine.diagnosis import diagnosis, smallest_cover
from idkey.engine.entropy import entropy_bits, information_bits
from idkey.engine.grower import grow
from idkey.engine.intervals import animals_to_examine, most_wrong, unseen_chance, wilson
from idkey.engine.likeness import gower
from idkey.engine.questions import gains
from idkey.engine.splits import Splits
from idkey.engine.tree import cost
from idkey.engine.weighing import weigh
from idkey.model.case import Case, Finding
from idkey.model.couplet import Sees
from idkey.model.score import Shows
from tests.engine.small_keys import binary_key, key_of, states_character

QUINLAN = "Quinlan 1986, Machine Learning 1: 81-106, table 1 and section 4 (table from memory)"
WEATHER = [
    "sunny hot high false N",
    "sunny hot high true N",
    "overcast hot high false P",
    "rain mild high false P",
    "rain cool normal false P",
    "rain cool normal true N",
    "overcast cool normal true P",
    "sunny mild high false N",
    "sunny cool normal false P",
    "rain mild normal false P",
    "sunny mild normal true P",
    "overcast mild high true P",
    "overcast hot normal false P",
    "rain mild high true N",
]
ATTRIBUTES = ("outlook", "temperature", "humidity", "windy")


@pytest.fixture(scope="module")
def weather():
    """The fourteen mornings as taxa of a key."""
    rows = [line.split() for line in WEATHER]
    characters = [
        states_character(name, sorted({row[n] for row in rows}))
        for n, name in enumerate(ATTRIBUTES)
    ]
    table = {f"day{d}": dict(zip(ATTRIBUTES, row, strict=False)) for d, row in enumerate(rows)}
    matrix = compile_key(key_of(characters, table))
    return matrix, np.array([row[4] == "P" for row in rows])


@pytest.mark.parametrize(
    ("attribute", "bits"),
    [("outlook", 0.246750), ("temperature", 0.029223), ("humidity", 0.151836), ("windy", 0.048127)],
)
def test_gains_of_the_weather_table_of_quinlan_1986(weather, attribute: str, bits: float):
    matrix, play = weather
    support = np.append(np.full(14, 1 / 14), 0.0)
    groups = np.vstack([np.append(play, False), np.append(~play, False)])

    found = gains(matrix, support, groups)[ATTRIBUTES.index(attribute)]

    assert found == pytest.approx(bits, abs=2e-6), QUINLAN


@pytest.mark.parametrize("place", range(4), ids=ATTRIBUTES)
def test_gain_is_the_mutual_information_of_scikit_learn(weather, place: int):
    matrix, play = weather
    support = np.append(np.full(14, 1 / 14), 0.0)
    groups = np.vstack([np.append(play, False), np.append(~play, False)])
    column = [line.split()[place] for line in WEATHER]

    found = gains(matrix, support, groups)[place]

    assert found == pytest.approx(mutual_info_score(column, play) / math.log(2), abs=2e-6)


def test_entropy_is_that_of_scipy_and_the_weather_class_of_quinlan_1986():
    assert entropy_bits(np.array([9 / 14, 5 / 14])) == pytest.approx(0.940286, abs=1e-6), QUINLAN
    shares = np.random.default_rng(3).dirichlet(np.ones(9))
    assert entropy_bits(shares) == pytest.approx(stats.entropy(shares, base=2))


def test_information_of_a_table_is_that_of_scikit_learn():
    joint = np.random.default_rng(5).integers(1, 30, size=(3, 4))
    rows = np.repeat(np.arange(3), joint.sum(axis=1))
    columns = np.concatenate([np.repeat(np.arange(4), row) for row in joint])

    assert information_bits(joint) == pytest.approx(mutual_info_score(rows, columns) / math.log(2))


WILLCOX = (
    "worked in the manner of Willcox, Lapage, Bascomb & Curtis 1973, J. Gen. Microbiol. 77: 317 "
    "and Willcox, Lapage & Holmes 1980, Antonie van Leeuwenhoek 46: 233; numbers made up"
)
POSITIVE = ((0.99, 0.90, 0.10, 0.01), (0.95, 0.20, 0.05, 0.01), (0.01, 0.85, 0.90, 0.60))


@pytest.mark.parametrize(
    ("result", "scores"),
    [
        pytest.param("++--", (0.815981, 0.183670, 0.000349), id="typical of the first taxon"),
        pytest.param("+--+", None, id="hand-multiplied"),
        pytest.param("-+++", None, id="hand-multiplied, third taxon"),
    ],
)
def test_support_is_the_normalised_likelihood_of_willcox_et_al_1980(result, scores):
    characters = [states_character(f"test{n}", ("+", "-")) for n in range(4)]
    table = {
        f"taxon{t}": {f"test{n}": Shows({"+": p, "-": 1 - p}) for n, p in enumerate(row)}
        for t, row in enumerate(POSITIVE)
    }
    findings = tuple(Finding(character=f"test{n}", states=(s,)) for n, s in enumerate(result))
    by_hand = [
        math.prod(p if s == "+" else 1 - p for p, s in zip(row, result, strict=True))
        for row in POSITIVE
    ]

    found = weigh(compile_key(key_of(characters, table)), Case(id="1", key="k", findings=findings))

    shares = found.support[:-1] / found.support[:-1].sum()
    assert shares == pytest.approx(np.array(by_hand) / sum(by_hand), rel=1e-5), WILLCOX
    if scores:
        assert shares == pytest.approx(scores, abs=1e-6), WILLCOX


EIG = "4 equal taxa, one character that halves them; recomputed with scipy.stats.entropy"


@pytest.mark.parametrize(
    ("error", "last", "bits"),
    [
        pytest.param(0.0, "b", 1.0, id="clean: one bit"),
        pytest.param(0.1, "b", 0.5310044064107189, id="10 % error: 1 - h(0.1)"),
        pytest.param(0.0, Shows({"a": 0.5, "b": 0.5}), 0.3692038992627079, id="one polymorphic"),
    ],
)
def test_expected_information_with_error_and_polymorphism(error, last, bits):
    table = {"w": {"c": "a"}, "x": {"c": "a"}, "y": {"c": "b"}, "z": {"c": last}}
    if isinstance(last, Shows):
        table = {"w": {"c": "a"}, "x": {"c": "b"}, "y": {"c": "b"}, "z": {"c": last}}
    matrix = compile_key(key_of([states_character("c", ("a", "b"), error=error)], table))

    found = gains(matrix, np.array([0.25, 0.25, 0.25, 0.25, 0.0]))[0]

    p = matrix.seen[:-1].astype(float)
    again = stats.entropy(p.mean(axis=0), base=2) - stats.entropy(p, base=2, axis=1).mean()
    assert found == pytest.approx(again, abs=2e-6)
    if not isinstance(last, Shows):
        assert found == pytest.approx(bits, abs=2e-6), EIG


NEWCOMBE = "Newcombe 1998, Statistics in Medicine 17: 857-872, table I, method 3"


@pytest.mark.parametrize(
    ("hits", "trials", "low", "high"),
    [
        (81, 263, 0.2553, 0.3662),
        (15, 148, 0.0624, 0.1605),
        (0, 20, 0.0, 0.1611),
        (1, 29, 0.0061, 0.1718),
    ],
)
def test_wilson_intervals_of_newcombe_1998_table_1(hits, trials, low, high):
    found = wilson(hits, trials)

    assert (round(found.low, 4), round(found.high, 4)) == (low, high), NEWCOMBE


@pytest.mark.parametrize(
    ("lot", "wrong", "examined", "found"), [(50, 5, 10, 0), (100, 7, 31, 2), (12, 3, 12, 3)]
)
def test_lot_chances_are_hypergeometric_as_in_scipy(lot, wrong, examined, found):
    chance = unseen_chance(lot, wrong, examined, found)

    assert chance == pytest.approx(stats.hypergeom.cdf(found, lot, wrong, examined))


def test_the_sample_of_a_lot_is_the_smallest_that_shows_a_wrong_animal():
    for lot, share in ((20, 0.1), (100, 0.05), (500, 0.02)):
        wrong = int(share * lot) + 1
        enough = animals_to_examine(lot, share)

        assert stats.hypergeom.pmf(0, lot, wrong, enough) <= 0.05
        assert stats.hypergeom.pmf(0, lot, wrong, enough - 1) > 0.05


def test_most_wrong_is_the_largest_number_that_could_have_gone_unseen():
    most = most_wrong(100, 20, 0)

    assert stats.hypergeom.cdf(0, 100, most, 20) > 0.05 >= stats.hypergeom.cdf(0, 100, most + 1, 20)


GOWER = "five patients after Everitt, recomputed; Gower 1971, Biometrics 27: 857-871"
PATIENTS = np.array(
    [[120, 1, 1, 1, 1], [150, 2, 2, 1, 2], [110, 3, 2, 2, 3], [145, 1, 1, 2, 3], [120, 1, 1, 2, 1]],
    float,
)


def test_gower_similarity_of_the_five_patients():
    expected = {
        (0, 1): 0.25,
        (0, 2): 0.15,
        (0, 3): 0.475,
        (0, 4): 0.80,
        (1, 2): 0.20,
        (1, 3): 0.175,
        (1, 4): 0.05,
        (2, 3): 0.425,
        (2, 4): 0.35,
        (3, 4): 0.675,
    }
    ranges = np.ptp(PATIENTS, axis=0)
    matching = np.array([False, True, True, True, True])

    found = gower(PATIENTS, ranges, matching=matching)

    assert {pair: round(float(found[pair]), 4) for pair in expected} == expected, GOWER


HUFFMAN = "Huffman 1952, Proc. IRE 40: 1098-1101 (numbers from memory)"


def huffman(weights: list[float], leads: int = 2) -> float:
    """Mean length of the best code, by Huffman's own construction."""
    heap = sorted(weights)
    first = 2 + (len(heap) - 2) % (leads - 1) if leads > 2 else 2
    total = 0.0
    while len(heap) > 1:
        size = first or leads
        first = 0
        merged = sum(heapq.heappop(heap) for _ in range(min(size, len(heap))))
        heapq.heappush(heap, merged)
        total += merged
    return total


def divisions(
    members: int, rows: list[tuple[int, ...]], effort: list[float] | None = None
) -> Splits:
    """Two-lead divisions: each row lists the taxa on the first branch."""
    share = np.zeros((members, 2 * len(rows)), np.float32)
    for n, row in enumerate(rows):
        inside = np.isin(np.arange(members), row)
        share[:, 2 * n], share[:, 2 * n + 1] = inside, ~inside
    sees = tuple(Sees(character=f"c{n}", states=(s,)) for n in range(len(rows)) for s in "01")
    return Splits(
        share=share,
        known=np.ones((members, len(rows)), bool),
        lacking=np.zeros((members, len(rows)), bool),
        sees=sees,
        starts=2 * np.arange(len(rows)),
        character=np.arange(len(rows)),
        effort=np.array(effort or [1.0] * len(rows)),
    )


def test_huffman_1952_example_of_thirteen_messages():
    assert huffman([0.20, 0.18] + [0.10] * 3 + [0.06] * 2 + [0.04] * 4 + [0.03, 0.01]) == (
        pytest.approx(3.42)
    ), HUFFMAN
    assert huffman([0.22, 0.20, 0.18, 0.15, 0.10, 0.08, 0.05, 0.02], 4) == pytest.approx(1.47)


def test_with_every_subset_as_a_character_the_built_key_is_huffmans_tree():
    weights = np.array([0.30, 0.25, 0.20, 0.12, 0.08, 0.05])
    subsets = [c for size in (1, 2, 3) for c in combinations(range(6), size)]
    ways = divisions(6, subsets)

    tree, exact = grow(ways, weights)

    assert exact
    assert cost(tree, ways, weights).questions == pytest.approx(2.38), "Garey 1972, from memory"
    assert huffman(list(weights)) == pytest.approx(2.38)


HYAFIL = "Hyafil & Rivest 1976, Inf. Process. Lett. 5: 15-17: tests are all subsets of at most 3"


@pytest.mark.parametrize(("taxa", "total"), [(2, 2), (3, 5), (4, 8), (5, 12), (6, 16), (7, 20)])
def test_total_path_lengths_of_hyafil_and_rivest_1976(taxa: int, total: int):
    subsets = [c for size in (1, 2, 3) for c in combinations(range(taxa), size) if size < taxa]
    ways = divisions(taxa, subsets)
    weights = np.full(taxa, 1 / taxa)

    tree, _ = grow(ways, weights)

    assert round(cost(tree, ways, weights).questions * taxa, 6) == total, HYAFIL


GREEDY_FAILS = (
    ("01100 01001 01111 10011 01101 11100", 16),
    ("01011 00010 11101 11111 01010 01101 01000 10101", 24),
)


@pytest.mark.parametrize(("rows", "total"), GREEDY_FAILS)
def test_the_built_key_is_the_best_where_plain_greedy_is_not(rows: str, total: int):
    matrix = [[int(v) for v in row] for row in rows.split()]
    ways = divisions(
        len(matrix),
        [tuple(t for t, row in enumerate(matrix) if row[c]) for c in range(len(matrix[0]))],
    )
    weights = np.full(len(matrix), 1 / len(matrix))

    tree, exact = grow(ways, weights)

    assert exact
    assert round(cost(tree, ways, weights).questions * len(matrix), 6) == total


COVER = [
    [int(v) for v in row] for row in ["000000", "110000", "101001", "011010", "000111", "111101"]
]


def test_smallest_test_set_of_the_six_by_six_matrix_is_three_as_by_brute_force():
    pairs = list(combinations(range(6), 2))
    masks = [
        sum(1 << n for n, (a, b) in enumerate(pairs) if COVER[a][c] != COVER[b][c])
        for c in range(6)
    ]
    found = smallest_cover(masks)
    everything = (1 << len(pairs)) - 1

    brute = min(
        size
        for size in range(1, 7)
        for chosen in combinations(masks, size)
        if _union(chosen) == everything
    )
    assert (len(found.chosen), found.proved) == (brute, True) == (3, True)


def _union(masks: tuple[int, ...]) -> int:
    total = 0
    for mask in masks:
        total |= mask
    return total


@pytest.mark.parametrize("taxon", range(6))
def test_each_taxon_of_that_matrix_needs_two_characters(taxon: int):
    found = diagnosis(compile_key(binary_key(COVER)), f"t{taxon}")

    apart = all(
        any(COVER[taxon][int(c[1:])] != COVER[other][int(c[1:])] for c in found.characters)
        for other in range(6)
        if other != taxon
    )
    assert (len(found.characters), found.proved, apart) == (2, True, True)


def test_exact_cover_beats_greedy_on_the_textbook_gap():
    elements = [{1, 2, 3, 4}, {1, 2, 5}, {3, 4, 6}]
    masks = [sum(1 << e for e in one) for one in elements]

    assert smallest_cover(masks).chosen == (1, 2)
