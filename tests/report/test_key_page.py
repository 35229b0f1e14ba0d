"""The page on a key: what it says, and that the pages in docs/keys are the ones it says."""

import re
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.engine.audit import audit
from idkey.formats.folder import list_keys, read_key
from idkey.model.check import Check, CheckKind
from idkey.model.couplet import Sees
from idkey.model.key import Key
from idkey.model.source import Basis, Source
from idkey.model.taxon import Permit, Taxon
from idkey.places import keys_folder
from idkey.report.key_doubts import separated
from idkey.report.key_page import key_page, pages, write_pages
from idkey.report.markdown import amount, escaped, in_italics, table
from tests.engine.small_keys import key_of, number_character, spans, states_character

DOCS = Path(__file__).parents[2] / "docs" / "keys"
SHIPPED = list_keys(keys_folder())
MEND = "Run: python -m idkey.report.key_page docs/keys"


def _small(**more: object) -> Key:
    """Three taxa: a and b share everything but a remembered length, c is grey."""
    key = key_of(
        [
            states_character("colour", ("black", "grey"), rule_of_thumb=True),
            number_character("length"),
        ],
        {
            "a": {"colour": "black", "length": spans(10, 12, n=50)},
            "b": {"colour": "black", "length": spans(90, 95, n=50)},
            "c": {"colour": "grey", "length": None},
        },
    )
    scores = tuple(
        replace(score, basis=Basis.MEMORY, note="Conflict: nobody | knows")
        if score.character == "length" and score.taxon == "b"
        else score
        for score in key.scores
    )
    return replace(key, scores=scores, **more)


def _section(page: str, title: str) -> str:
    found = re.search(rf"^## {re.escape(title)}.*?(?=^## |\Z)", page, re.DOTALL | re.MULTILINE)
    assert found, f"no section {title!r}"
    return found[0]


@pytest.mark.parametrize("entry", SHIPPED, ids=lambda entry: entry.id)
def test_the_pages_in_docs_are_the_ones_the_key_makes(entry):
    made = pages(read_key(entry.folder))

    assert {name: (DOCS / f"{name}.md").read_text("utf-8") for name in made} == made, MEND


def test_docs_hold_no_page_of_a_key_that_is_gone():
    known = {name for entry in SHIPPED for name in (entry.id, f"{entry.id}-couplets")}

    assert {file.stem for file in DOCS.glob("*.md")} <= known, MEND


def test_the_command_writes_a_page_for_every_shipped_key(tmp_path: Path):
    written = write_pages(tmp_path / "new" / "folder")

    assert {entry.id for entry in SHIPPED} <= {file.stem for file in written}
    assert all(file.read_text("utf-8").startswith("# ") for file in written)


def test_the_command_without_a_folder_says_how_it_is_called():
    done = subprocess.run(
        [sys.executable, "-m", "idkey.report.key_page"], capture_output=True, text=True, check=False
    )

    assert done.returncode == 1
    assert done.stderr.strip() == "Say where to: python -m idkey.report.key_page docs/keys"


def test_cells_are_told_by_their_evidence():
    evidence = _section(key_page(_small()), "How much is known, and on what evidence")

    assert "The matrix has 6 cells, of which 5 are filled\n(83 %)." in evidence
    assert "| printed | 4 | 80 % |" in evidence
    assert "| from memory | 1 | 20 % |" in evidence


def test_cells_that_rest_on_retold_or_unread_works_are_told():
    sources = (
        Source(id="ency", citation="An encyclopaedia", kind="encyclopedia", seen=True),
        Source(id="old", citation="An old book", kind="primary"),
    )
    key = _small(sources=sources)
    first, second, *rest = key.scores
    scores = (replace(first, sources=("ency",)), replace(second, sources=("old",)), *rest)
    page = key_page(replace(key, scores=scores))

    assert "texts): 1. Only on works that nobody read for this key:\n1." in page
    assert "| `old` | An old book | no |" in page
    assert "| `ency` | An encyclopaedia | yes |" in page


def test_couplets_by_hand_stand_beside_the_built_ones_with_what_they_cost():
    key = read_key(keys_folder() / "kitchen-leaves")
    costs = _section(key_page(key), "Couplets, written by hand and built from the scores")
    rows = [line.split(" | ") for line in costs.splitlines() if line.startswith("| ")][1:]
    printed = pages(key)["kitchen-leaves-couplets"]

    assert rows[1][0] == "| written by hand"
    assert len(rows) > 2
    assert all(row[0].startswith("| built: ") for row in rows[2:])
    assert all(float(row[2]) >= float(row[4]) for row in rows[1:]), "nothing is below its bound"
    assert printed.count("```text") == 2
    assert all(taxon.name in printed.rpartition("## Built")[2] for taxon in key.taxa)


def test_pairs_no_character_parts_are_listed_with_how_much_was_compared():
    key = _small()
    alike = replace(key, scores=tuple(s for s in key.scores if s.character == "colour"))
    apart = _section(key_page(alike), "What it cannot tell apart")

    assert "| *Genus a*, *Genus b* | 1 |" in apart
    assert "*Genus c*" not in apart


def test_a_pair_told_apart_by_memory_alone_comes_first_among_what_to_verify():
    memory = _section(key_page(_small()), "From memory: for someone to verify")

    assert "| *Genus a*, *Genus b* | length |" in memory
    assert "Wholly or partly from memory: 1 value." in memory
    assert "| length | 90 to 95 mm (n = 50) | *Genus b* | Conflict: nobody \\| knows |" in memory


def test_permits_from_memory_are_listed_for_someone_to_verify():
    taxa = tuple(
        Taxon(id=t, name=f"Genus {t}", permit=Permit(cites="II", from_memory=t == "b"))
        for t in "abc"
    )
    page = key_page(_small(taxa=taxa))

    assert "Permit entries not seen in an official text: *Genus b*." in page
    assert "| CITES II (from memory) | 2 of 2 |" in page


def test_scores_whose_note_starts_with_conflict_are_where_sources_disagree():
    disagree = _section(key_page(_small()), "Where sources disagree")

    assert "nobody \\| knows" in disagree
    assert disagree.count("*Genus") == 1


def test_a_rule_of_thumb_is_put_to_the_test_on_the_pairs_it_leaves_together():
    thumbs = _section(key_page(_small()), "Rules of thumb, put to the test")

    assert "1 of the 3 pairs of scored taxa\nshares a state;\nall are scored." in thumbs
    assert "| black | *Genus a*, *Genus b* |" in thumbs


def test_a_statement_that_the_scores_contradict_is_called_out():
    sees = (Sees(character="colour", states=("grey",)),)
    wrong = Check(id="k1", kind=CheckKind.MATRIX, statement="A is grey.", sees=sees, remain=("a",))
    told = Check(id="k2", kind=CheckKind.LITERATURE, statement="It is said.")
    checks = _section(key_page(_small(checks=(wrong, told))), "Published statements")

    assert "0 of 1 statement that can be computed agree" in checks
    assert "| k1: A is grey. | DISAGREES |" in checks
    assert "| k2: It is said. | not computed |" in checks


def test_weaknesses_may_be_handed_in_and_are_looked_for_otherwise():
    key = _small()

    assert key_page(key, audit(key)) == key_page(key)
    assert "Characters that tell no two taxa apart: none." in key_page(key, ())


def test_a_form_in_parentheses_stands_upright_behind_its_italic_name():
    taxa = (Taxon(id="a", name="Genus alpha (lowland form)"),)
    key = replace(_small(), taxa=taxa, scores=())

    assert in_italics(key, "Sold as Genus alpha.") == "Sold as *Genus alpha*."
    assert "| *Genus alpha* (lowland form) |" in key_page(key)


def test_every_pair_is_looked_at_once():
    key = read_key(keys_folder() / "kitchen-leaves")
    pairs = [pair for pair, _ in separated(key)]

    assert len(pairs) == len(set(map(frozenset, pairs))) == 12 * 11 // 2


@given(st.lists(st.lists(st.text(), min_size=2, max_size=2), min_size=1, max_size=4))
def test_whatever_a_cell_says_the_table_keeps_its_rows_and_columns(rows: list[list[str]]):
    lines = list(table(("one", "two"), [[escaped(cell) for cell in row] for row in rows]))
    bars = [len(re.findall(r"(?<!\\)(?:\\\\)*\|", line)) for line in lines[:-1]]

    assert len(lines) == len(rows) + 3
    assert set(bars) == {3}
    assert not any("\n" in line for line in lines)


@pytest.mark.parametrize(
    ("number", "words"), [(0, "no pairs"), (1, "1 pair"), (2, "2 pairs")], ids=str
)
def test_amounts_read_as_people_say_them(number: int, words: str):
    assert amount(number, "pair", "pairs") == words
