"""Changes of many cells at once: nothing gets lost, nothing is half done."""

from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.app.workshop.matrix_edit import (
    Block,
    cleared,
    copied,
    copied_cell,
    filled_down,
    filled_right,
    pasted,
    typed,
    with_cells,
)
from idkey.formats.folder import read_key
from idkey.formats.plain import canonical
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Shows, Spans
from tests.formats import small_key
from tests.formats.invented import keys

SOME = settings(max_examples=10)


def whole(key: Key) -> Block:
    return Block(taxa=tuple(t.id for t in key.taxa), characters=tuple(c.id for c in key.characters))


@SOME
@given(keys())
def test_pasting_what_was_copied_changes_nothing(key: Key):
    key = canonical(key)
    block = whole(key)
    edit = pasted(key, copied(key, block), block, block)

    assert edit.mistakes == ()
    assert with_cells(key, edit.cells) is key


@SOME
@given(keys(), st.data())
def test_clearing_a_block_empties_it_and_leaves_the_rest(key: Key, data: st.DataObject):
    key = canonical(key)
    taxa = data.draw(st.sets(st.sampled_from([t.id for t in key.taxa]), min_size=1))
    characters = data.draw(st.sets(st.sampled_from([c.id for c in key.characters]), min_size=1))
    block = Block(taxa=tuple(sorted(taxa)), characters=tuple(sorted(characters)))
    after = with_cells(key, cleared(block).cells)

    assert not any(cell in after.cells for cell in block.cells)
    outside = {cell: own for cell, own in key.cells.items() if cell not in block.cells}
    assert dict(after.cells) == outside
    assert canonical(after) == after, "the order is that of the files"
    assert with_cells(after, {c: key.cells.get(c, ()) for c in block.cells}) == key


@SOME
@given(keys(), st.data())
def test_filling_down_gives_every_row_what_the_first_has(key: Key, data: st.DataObject):
    key = canonical(key)
    block = whole(key)
    edit = filled_down(key, block)
    after = with_cells(key, edit.cells)

    assert edit.mistakes == ()
    for taxon, character in block.cells:
        above = key.cells.get((block.taxa[0], character), ())
        said = tuple(replace(score, taxon=taxon) for score in above)
        assert after.cells.get((taxon, character), ()) == said
    assert canonical(after) == after


@pytest.fixture
def key(tmp_path: Path) -> Key:
    return read_key(small_key.laid_out(tmp_path, small_key.FILES))


def test_one_bad_cell_leaves_everything_as_it_was_and_is_named(key: Key):
    block = whole(key)
    rows = copied(key, block).splitlines()
    cells = rows[0].split("\t")
    cells[0] = "no such state"
    edit = pasted(key, "\n".join(["\t".join(cells), *rows[1:]]), block, block)

    assert edit.cells == {}
    (mistake,) = edit.mistakes
    assert mistake.cell == block.cells[0]
    assert "no such state" in mistake.problem
    assert mistake.remedy


def test_what_would_stand_outside_the_matrix_is_told(key: Key):
    block = whole(key)
    corner = Block(taxa=block.taxa[-1:], characters=block.characters[-1:])
    edit = pasted(key, copied(key, block), corner, corner)

    assert edit.cells == {}
    assert ("", "") in {m.cell for m in edit.mistakes}


def test_one_value_fills_the_chosen_block(key: Key):
    numeric = next(c for c in key.characters if c.kind.numeric)
    block = Block(taxa=tuple(t.id for t in key.taxa), characters=(numeric.id,))
    after = with_cells(key, pasted(key, "12 to 14\n", block, block).cells)

    values = [after.cells[cell][0].value for cell in block.cells]
    assert values == [Spans(low=12, high=14)] * len(block.taxa)


def test_filling_right_tells_what_the_other_character_cannot_show(key: Key):
    states = next(c for c in key.characters if not c.kind.numeric)
    numeric = next(c for c in key.characters if c.kind.numeric)
    taxon = key.taxa[0].id
    block = Block(taxa=(taxon,), characters=(states.id, numeric.id))
    lacking = with_cells(key, typed(key, (taxon, states.id), "n/a").cells)
    assert lacking.cells[taxon, states.id][0].value == Inapplicable()
    after = with_cells(lacking, filled_right(lacking, block).cells)
    assert after.cells[taxon, numeric.id][0].value == Inapplicable()

    named = with_cells(key, typed(key, (taxon, states.id), states.states[0].id).cells)
    edit = filled_right(named, block)
    assert edit.cells == {}
    assert edit.mistakes[0].cell == (taxon, numeric.id)


def test_a_state_may_be_cut_short_and_keeps_where_it_comes_from(key: Key):
    states = next(c for c in key.characters if not c.kind.numeric)
    taxon = next(t.id for t in key.taxa if (t.id, states.id) in key.cells)
    before = key.cells[taxon, states.id][0]
    wanted = states.states[-1]
    edit = typed(key, (taxon, states.id), wanted.label[-4:].upper())

    (score,) = edit.cells[taxon, states.id]
    assert score == replace(before, value=Shows({wanted.id: None}))
    assert copied_cell(with_cells(key, edit.cells), (taxon, states.id)) == wanted.id
    assert typed(key, (taxon, states.id), "like").mistakes, "leaf or rope"


def test_a_changed_value_from_a_spreadsheet_has_no_source_of_its_own(key: Key):
    numeric = next(c for c in key.characters if c.kind.numeric)
    taxon = next(t.id for t in key.taxa if (t.id, numeric.id) in key.cells)
    block = Block(taxa=(taxon,), characters=(numeric.id,))
    before = key.cells[taxon, numeric.id]
    assert any(score.sources for score in before)

    (score,) = pasted(key, "9999", block, block).cells[taxon, numeric.id]
    assert score.sources == ()


def test_scores_out_of_order_are_exchanged_all_the_same(key: Key):
    cell = ("alpha", "tail")
    mixed = replace(key, scores=tuple(reversed(key.scores)))
    after = with_cells(mixed, typed(mixed, cell, "rope").cells)

    assert canonical(after).scores == with_cells(key, typed(key, cell, "rope").cells).scores
    assert replace(after).cells == after.cells, "what was carried on is what it works out"
