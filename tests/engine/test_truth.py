"""A small, seeded slice of the truthfulness bench; the full one is in docs/truth.md."""

import numpy as np
import pytest
from sklearn.tree import DecisionTreeClassifier

from idkey.engine.compile import compile_key
from idkey.engine.grower import grow
from idkey.engine.questions import gains
from idkey.engine.simulate import animal
from idkey.engine.splits import Splits
from idkey.engine.tree import cost
from idkey.engine.weighing import weigh
from idkey.model.case import Case, Finding, Specimen
from idkey.model.couplet import Sees
from tests.bench.synthetic import world
from tests.bench.truth import Setting, Tally, adaptive, calibration, printed_order, run


@pytest.fixture(scope="module")
def tallies():
    """Forty-eight animals of each of four made-up keys, asked for a name in two orders."""
    found = {adaptive: Tally(), printed_order: Tally()}
    for seed in range(4):
        made = world(seed)
        matrix = compile_key(made.known)
        for choose, tally in found.items():
            chance = np.random.default_rng(100 + seed)
            for n in range(48 if choose is adaptive else 12):
                drawn = animal(made.truth, f"taxon_{n % 12}", chance, Specimen())
                setting = Setting(error=made.error.__getitem__)
                tally.rows.append(
                    run(matrix, drawn, choose, setting, chance=chance, truth=made.truth)
                )
    return found


@pytest.mark.slow
def test_names_are_right_groups_hold_the_truth_and_danger_is_warned_of(tallies):
    own = tallies[adaptive]

    assert own.share("established")[0] > 0.3
    assert own.share("wrong_named", "established")[1] == 0
    assert own.share("wrong_group", "group")[1] <= 1
    assert own.share("hazard_lost")[1] <= 1  # of 32 animals; how often at large: docs/truth.md
    assert own.share("unwarned")[1] == 0


@pytest.mark.slow
def test_the_shares_are_honest_and_the_best_question_saves_half_of_them(tallies):
    error, _ = calibration(tallies[adaptive])

    assert error <= 0.05
    assert tallies[adaptive].mean("to95") <= 0.6 * tallies[printed_order].mean("to95")


def test_single_precision_costs_no_information():
    matrix = compile_key(world(9).known)
    support = np.random.default_rng(1).dirichlet(np.ones(13))

    found = gains(matrix, support)

    exact = []
    for number in range(len(matrix.key.characters)):
        part = matrix.seen[:, matrix.columns(number)].astype(float)
        mixture = support @ part
        inner = -(part * np.log2(part, where=part > 0, out=np.zeros_like(part))).sum(axis=1)
        exact.append(-(mixture * np.log2(mixture)).sum() - support @ inner)
    assert np.abs(found - exact).max() < 0.0001
    assert np.argmax(found) == np.argmax(exact)


def test_conflicts_agree_with_plain_bit_sets():
    made = world(11)
    key, matrix = made.known, compile_key(made.known)
    names = [c for c in key.characters if not c.kind.numeric][:8]
    findings = tuple(Finding(character=c.id, states=(c.state_ids[0],)) for c in names)

    found = weigh(matrix, Case(id="1", key=key.id, findings=findings))

    for row, taxon in enumerate(matrix.taxa):
        cells = [key.cells.get((taxon, c.id)) for c in names]
        count = sum(
            1
            for c, cell in zip(names, cells, strict=True)
            if cell and c.state_ids[0] not in cell[0].value.states
        )
        assert found.firm[row] == count


@pytest.mark.filterwarnings("ignore:The number of unique classes")
@pytest.mark.parametrize("seed", range(4))
def test_a_built_key_is_no_longer_than_the_tree_of_scikit_learn(seed: int):
    codes = np.random.default_rng(seed).integers(0, 2, (24, 14))
    codes = np.unique(codes, axis=0)
    taxa, characters = codes.shape
    share = np.stack([codes == 0, codes == 1], axis=2).reshape(taxa, -1).astype(np.float32)
    sees = tuple(Sees(character=f"c{n}", states=(s,)) for n in range(characters) for s in "01")
    ways = Splits(
        share=share,
        known=np.ones((taxa, characters), bool),
        lacking=np.zeros((taxa, characters), bool),
        starts=2 * np.arange(characters),
        effort=np.ones(characters),
        sees=sees,
        character=np.arange(characters),
    )
    weights = np.full(taxa, 1 / taxa)

    tree, _ = grow(ways, weights)

    fitted = DecisionTreeClassifier(criterion="entropy", random_state=0)
    fitted.fit(codes, [f"t{n}" for n in range(taxa)])
    other = fitted.decision_path(codes).sum(axis=1).mean() - 1
    assert cost(tree, ways, weights).questions <= other + 1e-9
