"""The truthfulness bench as a table.

Run: ``python -m tests.bench.truth_report --out docs/truth.md`` (about a quarter of an hour
on one core; ``--keys 4 --animals 60`` for a look). Seeds are fixed.
"""

import argparse
from dataclasses import replace
from pathlib import Path

import numpy as np

from idkey.engine.compile import compile_key
from idkey.engine.fit import fit_p
from idkey.engine.intervals import wilson
from idkey.engine.matrix import Matrix
from idkey.engine.result import VerdictKind
from idkey.engine.simulate import animal, looked_at
from idkey.engine.weighing import weigh
from idkey.formats.folder import read_key
from idkey.model.case import Aim, Case, Claim, Finding, Specimen
from idkey.model.key import Key
from tests.bench.couplet_walk import walked
from tests.bench.synthetic import World, world
from tests.bench.truth import (
    Setting,
    Tally,
    adaptive,
    calibration,
    printed_order,
    random_order,
    run,
)

ORDERS = {"adaptive": adaptive, "printed order": printed_order, "random": random_order}
SHIPPED = (
    "large-dark-scorpions",
    "red-kneed-tarantulas",
    "ornamental-tarantulas",
    "kitchen-leaves",
)


def percent(tally: Tally, name: str, given: str = "") -> str:
    """``"0.2 % (3/1500, up to 0.6)"``."""
    share, hits, base = tally.share(name, given)
    if not base:
        return "-"
    return f"{100 * share:.2f} % ({hits}/{base}, up to {100 * wilson(hits, base).high:.2f})"


def natives(keys: int, animals: int) -> dict[str, Tally]:
    """Animals of made-up keys, asked in three orders; the true error is 5 to 15 %."""
    found = {name: Tally() for name in ORDERS}
    for seed in range(keys):
        made = world(seed)
        matrix = compile_key(made.known)
        for name, choose in ORDERS.items():
            chance = np.random.default_rng(1000 + seed)
            number = animals if name == "adaptive" else max(animals // 12, 12)
            most = 25 if name != "adaptive" else 16
            setting = Setting(error=made.error.__getitem__, most=most)
            for n in range(number):
                drawn = animal(made.truth, f"taxon_{n % 12}", chance, Specimen())
                row = run(matrix, drawn, choose, setting, chance=chance, truth=made.truth)
                found[name].rows.append(row | {"dangerous": float(n % 12 in (1, 9))})
        print("natives", seed, flush=True)
    return found


def aliens(keys: int, animals: int) -> Tally:
    """Animals whose own taxon was removed from the key."""
    found = Tally()
    for seed in range(keys):
        made = world(seed)
        chance = np.random.default_rng(2000 + seed)
        for taxon in made.known.taxa:
            matrix = compile_key(without(made.known, taxon.id))
            apart = nearest(made.truth, taxon.id)
            for _ in range(max(animals // 60, 1)):
                drawn = animal(made.truth, taxon.id, chance, Specimen())
                row = run(
                    matrix,
                    drawn,
                    adaptive,
                    Setting(error=made.error.__getitem__),
                    chance=chance,
                    truth=made.truth,
                )
                found.rows.append(row | {"far": float(apart >= 3), "near": float(apart < 3)})
        print("aliens", seed, flush=True)
    return found


def without(key: Key, taxon: str) -> Key:
    """The key without one taxon."""
    return replace(
        key,
        taxa=tuple(t for t in key.taxa if t.id != taxon),
        scores=tuple(s for s in key.scores if s.taxon != taxon),
    )


def nearest(key: Key, taxon: str) -> int:
    """Categorical characters in which a taxon surely differs from its nearest relative."""
    counts = []
    for other in key.taxa:
        if other.id != taxon:
            counts.append(
                sum(
                    _differ(key, taxon, other.id, c.id)
                    for c in key.characters
                    if not c.kind.numeric
                )
            )
    return min(counts)


def _differ(key: Key, one: str, other: str, character: str) -> bool:
    sets = [set(key.cells[t, character][0].value.states) for t in (one, other)]  # type: ignore[union-attr]
    return not sets[0] & sets[1]


def alarms(keys: int, animals: int, answers: int = 12) -> Tally:
    """False alarms of the fit on natives, after a fixed number of answers in random order."""
    found = Tally()
    for seed in range(keys):
        made = world(seed)
        matrix = compile_key(made.known)
        chance = np.random.default_rng(3000 + seed)
        names = [c.id for c in made.truth.characters]
        for n in range(animals):
            drawn = animal(made.truth, f"taxon_{n % 12}", chance, Specimen())
            asked = chance.permutation(names)[:answers]
            seen = tuple(
                looked_at(made.truth, drawn, c, chance, error=made.error[c]) for c in asked
            )
            found.rows.append(_alarm(matrix, seen))
    return found


def _alarm(matrix: Matrix, findings: tuple[Finding, ...]) -> dict[str, float]:
    weighing = weigh(matrix, Case(id="b", key=matrix.key.id, findings=findings))
    fit = fit_p(matrix, weighing, weighing.leader) or 1.0
    return {"low": float(fit < 0.05), "very_low": float(fit < 0.01)}


def labels(keys: int, animals: int) -> tuple[Tally, Tally]:
    """The same animals under a label, right or wrong by halves: label only, and full name."""
    found = (Tally(), Tally())
    for seed in range(keys):
        made = world(seed)
        matrix = compile_key(made.known)
        for tally, aim in zip(found, (Aim.LABEL, Aim.TAXON), strict=True):
            chance = np.random.default_rng(4000 + seed)
            for n in range(animals):
                tally.rows.append(_labelled(made, matrix, n, aim, chance))
        print("labels", seed, flush=True)
    return found


def _labelled(
    made: World, matrix: Matrix, number: int, aim: Aim, chance: np.random.Generator
) -> dict[str, float]:
    truth = number % 12
    claimed = truth if number % 2 else int(chance.integers(12))
    drawn = animal(made.truth, f"taxon_{truth}", chance, Specimen())
    claim = Claim(text="x", label=f"taxon:taxon_{claimed}")
    row = run(
        matrix,
        drawn,
        adaptive,
        Setting(error=made.error.__getitem__, aim=aim),
        chance=chance,
        claim=claim,
        truth=made.truth,
    )
    kind = list(VerdictKind)[int(row["kind"])]
    said = kind in (VerdictKind.HOLDS, VerdictKind.CONTRADICTED)
    right = VerdictKind.HOLDS if claimed == truth else VerdictKind.CONTRADICTED
    return row | {
        "said": float(said),
        "label_wrong": float(said and kind is not right),
        "label_right": float(kind is right),
        "mislabelled": float(claimed != truth),
    }


def shipped(name: str, error: float, animals: int, order: str) -> Tally:
    """Animals drawn from a shipped key, a fifth of the characters out of sight."""
    key = read_key(Path("keys") / name)
    chance = np.random.default_rng(5000)
    matrices: dict[Specimen, Matrix] = {}
    found = Tally()
    for n in range(animals):
        taxon = key.taxa[n % len(key.taxa)]
        drawn = animal(key, taxon.id, chance)
        matrix = matrices.setdefault(drawn.specimen, compile_key(key, drawn.specimen))
        if order == "couplets":
            row = walked(matrix, drawn, chance, error=error, blind=0.2)
        else:
            setting = Setting(error=lambda _: error, blind=0.2, most=20)
            row = run(matrix, drawn, ORDERS[order], setting, chance=chance)
        found.rows.append(row | {"dangerous": float(taxon.dangerous)})
    return found


def gaps(name: str, animals: int, *, grouped: bool) -> Tally:
    """Calibration of a shipped key after ten answers in random order, its own gaps included."""
    key = read_key(Path("keys") / name)
    if not grouped:
        loose = tuple(replace(character, group="") for character in key.characters)
        key = replace(key, characters=loose)
    chance = np.random.default_rng(6000)
    matrices: dict[Specimen, Matrix] = {}
    found = Tally()
    for n in range(animals):
        taxon = key.taxa[n % len(key.taxa)].id
        drawn = animal(key, taxon, chance)
        matrix = matrices.setdefault(drawn.specimen, compile_key(key, drawn.specimen))
        usable = [c for c in key.characters if c.suits(drawn.specimen.sex, drawn.specimen.stage)]
        asked = [usable[int(place)] for place in chance.permutation(len(usable))[:10]]
        seen = tuple(
            looked_at(key, drawn, c.id, chance, error=c.error_rate, blind=0.2) for c in asked
        )
        weighing = weigh(matrix, Case(id="b", key=name, findings=seen))
        among = weighing.support[:-1] / weighing.support[:-1].sum()
        right = matrix.taxa[weighing.leader] == taxon
        found.rows.append({"top": float(among.max()), "best_right": float(right)})
    return found


def _gap_lines(animals: int) -> list[str]:
    lines = [
        "## Are the shares honest on the shipped keys?",
        "",
        "Share of the leader among the taxa against how often it is right, after ten "
        "answers in random order. The simulated characters vary independently, so the "
        "second pair of columns, where dependence groups are switched off, is the fair test "
        "of the gaps; with the groups on, the engine trusts such animals less than it "
        "could, on purpose.",
        "",
        "| key | ECE | share, right | ECE without groups (<= 0.03) | share, right |",
        "|---|---|---|---|---|",
    ]
    for name in SHIPPED:
        cells = []
        for grouped in (True, False):
            tally = gaps(name, animals, grouped=grouped)
            share, right = tally.mean("top"), tally.mean("best_right")
            cells += [f"{calibration(tally)[0]:.3f}", f"{share:.2f}, {right:.2f}"]
        lines.append(f"| {name} | " + " | ".join(cells) + " |")
        print(lines[-1], flush=True)
    return [*lines, ""]


def report(keys: int, animals: int) -> str:
    """Everything as Markdown."""
    lines = [
        "# How often idkey is right, wrong and silent",
        "",
        "Made by `python -m tests.bench.truth_report --out docs/truth.md`; seeds fixed.",
        "",
        f"{keys} made-up keys of 12 taxa and 25 characters (two thirds of the taxa with a "
        f"look-alike one or two characters away, 12 % polymorphic, 5 % unscored), {animals} "
        "animals each. The observer errs in 5 to 15 % of characters; the engine assumes "
        "10 %. Brackets: count, and upper limit of the 95 % Wilson interval.",
        "",
    ]
    lines += _native_lines(natives(keys, animals))
    lines += _alien_lines(aliens(keys, animals), alarms(keys, animals))
    lines += _label_lines(*labels(keys, max(animals // 5, 12)))
    lines += _gap_lines(max(animals * 5, 200))
    lines += _shipped_lines(max(animals // 2, 104))
    return "\n".join(lines) + "\n"


def _native_lines(found: dict[str, Tally]) -> list[str]:
    own = found["adaptive"]
    ece, brier = calibration(own)
    ratio = own.mean("to95") / found["printed order"].mean("to95")
    again = own.mean("to95") / found["random"].mean("to95")
    return [
        "## Animals of the key",
        "",
        "| figure | value | wanted |",
        "|---|---|---|",
        f"| established to one taxon | {percent(own, 'established')} | |",
        f"| wrong among them | {percent(own, 'wrong_named', 'established')} | <= 0.3 %, up to 1 |",
        f"| ended as a group | {percent(own, 'group')} | |",
        f"| groups without the truth | {percent(own, 'wrong_group', 'group')} | <= 0.5 % |",
        f"| called outside the key | {percent(own, 'outside')} | |",
        f"| danger dismissed at any step | {percent(own, 'hazard_lost', 'dangerous')} | <= 0.1 % |",
        f"| no caution at all at any step | {percent(own, 'unwarned', 'dangerous')} | <= 0.1 % |",
        f"| calibration error (ECE) | {ece:.4f} | <= 0.02 |",
        f"| Brier score | {brier:.4f} | |",
        f"| questions, mean | {own.mean('asked'):.2f} | |",
        f"| questions to 0.95, against printed order | {ratio:.2f} x | <= 0.45 |",
        f"| questions to 0.95, against random order | {again:.2f} x | |",
        "",
    ]


def _alien_lines(found: Tally, fit: Tally) -> list[str]:
    far = Tally([r for r in found.rows if r["far"]])
    near = Tally([r for r in found.rows if r["near"]])
    return [
        "## Animals whose taxon was removed from the key",
        "",
        "| figure | value | wanted |",
        "|---|---|---|",
        f"| three or more differences: wrongly named | {percent(far, 'established')} | <= 2 % |",
        f"| three or more: called outside | {percent(far, 'outside')} | |",
        f"| three or more: ended as a group | {percent(far, 'group')} | |",
        f"| at most two differences: named | {percent(near, 'established')} | cannot be noticed |",
        f"| false alarms of the fit at p < 0.05, 12 answers | {percent(fit, 'low')} | 2 to 6 % |",
        f"| false alarms at p < 0.01 | {percent(fit, 'very_low')} | |",
        "",
    ]


def _label_lines(label: Tally, full: Tally) -> list[str]:
    ratio = label.mean("decided_at") / full.mean("asked")
    wrong = Tally([r for r in label.rows if r["mislabelled"]])
    named = Tally([r for r in full.rows if r["established"]])
    named_ratio = wrong.mean("decided_at") / named.mean("asked")
    return [
        "## Is the label right?",
        "",
        "| figure | value | wanted |",
        "|---|---|---|",
        f"| label verdict right | {percent(label, 'label_right')} | |",
        f"| label verdict wrong | {percent(label, 'label_wrong')} | |",
        f"| wrong among those that decide | {percent(label, 'label_wrong', 'said')} | |",
        f"| questions where it decides | {label.mean('decided_at'):.2f} | |",
        f"| against full identification, groups included | {ratio:.2f} x | <= 0.6 |",
        f"| wrong labels: questions until contradicted | {wrong.mean('decided_at'):.2f} | |",
        f"| the same against a full name | {named_ratio:.2f} x | <= 0.6 |",
        "",
        "A right label of one taxon holds only once that taxon is established, which is the full "
        "identification; what is quicker is finding out that a label is wrong.",
        "",
    ]


def _shipped_lines(animals: int) -> list[str]:
    lines = [
        "## The shipped keys",
        "",
        f"{animals} animals each, sex and stage drawn, 20 % of characters out of sight.",
        "",
        "Couplets alone are the classical walk: one slip leads astray, and nothing notices. In the "
        "program the line-up, the cautions and the verdict are judged from the findings during a "
        "walk, too.",
        "",
        "| key | error | order | established | wrong among them | group | group without "
        "truth | danger dismissed | ECE | questions |",
        "|---" * 10 + "|",
    ]
    for name in SHIPPED:
        for error in (0.0, 0.05, 0.10, 0.15):
            orders = (
                ("adaptive", "printed order", "random", "couplets")
                if error == 0.10
                else ("adaptive",)
            )
            for order in orders:
                t = shipped(name, error, animals, order)
                ece = f"{calibration(t)[0]:.3f}" if order != "couplets" else "-"
                lines.append(
                    f"| {name} | {error:.0%} | {order} | {percent(t, 'established')} | "
                    f"{percent(t, 'wrong_named', 'established')} | {percent(t, 'group')} | "
                    f"{percent(t, 'wrong_group', 'group')} | "
                    f"{percent(t, 'hazard_lost', 'dangerous')} | {ece} | "
                    f"{t.mean('asked'):.1f} |"
                )
                print(lines[-1], flush=True)
    return [*lines, ""]


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--keys", type=int, default=20)
    parser.add_argument("--animals", type=int, default=300)
    parser.add_argument("--out", type=Path)
    given = parser.parse_args()
    text = report(given.keys, given.animals)
    print(text)
    if given.out:
        given.out.write_text(text, encoding="utf-8")
