"""NEXUS: what we write, two other readers read alike; what we read ends in a key or in words."""

import io
from contextlib import suppress
from dataclasses import replace
from pathlib import Path
from typing import Any

import dendropy
import pytest
from Bio.Nexus import Nexus
from hypothesis import example, given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats.arrival import read_arrival
from idkey.formats.folder import read_key
from idkey.formats.nexus import SYMBOLS, nexus_text, write_nexus
from idkey.formats.nexus_bins import Bins, bins
from idkey.formats.nexus_reading import LARGEST_NEXUS, parse_nexus
from idkey.formats.plain import canonical
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Shows, Spans
from idkey.model.taxon import Danger
from idkey.places import keys_folder
from tests.formats.invented import keys
from tests.formats.small_key import FILES, laid_out

Matrix = list[list[set[str]]]


def cells(key: Key) -> Matrix:
    """The signs per taxon and character with states, as the format can hold them."""
    key = canonical(key)
    shown = [character for character in key.characters if character.states]
    found = []
    for taxon in key.taxa:
        row = []
        for character in shown:
            signs: set[str] = set()
            for score in key.cells.get((taxon.id, character.id), ()):
                if isinstance(score.value, Shows):
                    signs |= {SYMBOLS[character.state_ids.index(s)] for s in score.value.states}
                elif isinstance(score.value, Inapplicable):
                    signs.add("-")
            row.append(signs if signs == {"-"} else signs - {"-"})
        found.append(row)
    return found


def without_numbers(key: Key) -> Key:
    """The key with its characters of states only."""
    kept = tuple(c for c in key.characters if c.states)
    ids = {c.id for c in kept}
    return replace(
        key,
        characters=kept,
        scores=tuple(s for s in key.scores if s.character in ids),
        couplets=(),
        labels=(),
        checks=(),
    )


def with_states() -> st.SearchStrategy[Key]:
    return keys().map(without_numbers).filter(lambda key: key.characters)


@given(key=with_states())
@settings(max_examples=10)
def test_what_is_written_is_read_back_with_every_cell(key: Key):
    text, _ = nexus_text(key)
    found = parse_nexus(text.encode(), "made_up.nex").key

    # the ids are made from the names, so rows may come in another order
    names = [taxon.name for taxon in found.taxa]
    order = sorted(range(len(names)), key=lambda n: text.index(f"'{names[n]}'"))
    assert [cells(found)[n] for n in order] == cells(key)


@given(key=with_states())
@settings(max_examples=6)
def test_dendropy_and_biopython_read_the_same_cells(key: Key):
    text, _ = nexus_text(key)
    expected = cells(key)

    assert read_by_biopython(text) == expected
    assert read_by_dendropy(text) == expected


def read_by_biopython(text: str) -> Matrix:
    found = Nexus.Nexus(io.StringIO(text))
    return [[set(c["d"]) - {"?"} for c in found.matrix[name]] for name in found.taxlabels]


def read_by_dendropy(text: str) -> Matrix:
    found = dendropy.StandardCharacterMatrix.get(data=text, schema="nexus")
    return [[_signs(state) for state in found[taxon]] for taxon in found.taxon_namespace]


def _signs(state: Any) -> set[str]:
    if state.symbol == "?":
        return set()
    return {s.symbol for s in state.member_states} if state.member_states else {state.symbol}


@pytest.mark.parametrize("name", ["large-dark-scorpions", "red-kneed-tarantulas"])
def test_a_shipped_key_is_read_by_both_with_names_and_labels(name: str, tmp_path: Path):
    key = read_key(keys_folder() / name)
    left = write_nexus(key, tmp_path / "k.nex")
    text = (tmp_path / "k.nex").read_text("utf-8")

    ours = parse_nexus((tmp_path / "k.nex").read_bytes(), "k.nex")
    theirs = Nexus.Nexus(io.StringIO(text))
    assert read_by_biopython(text) == read_by_dendropy(text)
    assert theirs.taxlabels == [taxon.name for taxon in key.taxa]
    assert [c.name for c in ours.key.characters] == list(theirs.charlabels.values())
    assert "How often a state occurs was left out; every state counts alike." in left
    assert all(taxon.hazard.level is Danger.SIGNIFICANT for taxon in ours.key.taxa)
    assert all(character.looks == (Look.LENS,) for character in ours.key.characters)


TINY = """\
#NEXUS
[made up for this test [nested]]
BEGIN TAXA;
  DIMENSIONS NTAX=3;
  TAXLABELS Alpha_prima Beta_secunda 'Gamma cf. tertia';
END;
BEGIN CHARACTERS;
  DIMENSIONS NCHAR=3;
  FORMAT DATATYPE=STANDARD SYMBOLS="012" MISSING=? GAP=-;
  CHARSTATELABELS
    1 'Tail''s shape' / leaf rope none ,
    2 Spots / present 'dropped or worn' ,
    3 Spines / short long
  ;
  MATRIX
    Alpha_prima         0{01}(02)
    Beta_secunda        10-
    'Gamma cf. tertia'  2?1
  ;
END;
"""


def test_no_two_taxa_are_written_under_one_name(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    names = {"alpha": "Same", "beta": "same", "gamma": "Alpha"}
    named = tuple(replace(taxon, name=names[taxon.id]) for taxon in key.taxa)

    text, _ = nexus_text(replace(key, taxa=named))

    assert "TAXLABELS 'alpha' 'beta' 'Alpha 2';" in text


def test_a_small_file_is_read_as_it_is_meant():
    found = parse_nexus(TINY.replace("{01}(02)", "{01}(01)").encode(), "tiny.nex").key
    scores = {(s.taxon, s.character): s for s in found.scores}

    assert [t.name for t in found.taxa] == ["Alpha prima", "Beta secunda", "Gamma cf. tertia"]
    assert [c.name for c in found.characters] == ["Tail's shape", "Spots", "Spines"]
    assert found.character["spots"].state_ids == ("present", "dropped_or_worn")
    assert scores["alpha_prima", "tail_s_shape"].value == Shows({"leaf": None})
    assert scores["alpha_prima", "spots"].note == "one of these; which one is not known"
    assert scores["alpha_prima", "spines"].note == ""
    assert scores["beta_secunda", "spines"].value == Inapplicable()
    assert ("gamma_cf_tertia", "spots") not in scores


SAME = [
    ("SYMBOLS with blanks", 'SYMBOLS="012"', 'SYMBOLS="0 1 2"'),
    ("commas in braces", "{01}(02)", "{0,1}(0 2)"),
    ("blanks between cells", "0{01}(02)", "0 {01} (02)"),
    ("a DATA block", "BEGIN CHARACTERS", "begin data"),
    ("labels before the format", "  FORMAT", "  CHARLABELS a b c;\n  FORMAT"),
    ("no blank before a comma", " ,", ","),
    ("a comment in the matrix", "  MATRIX\n", "  MATRIX [0 = first]\n"),
    ("a row over two lines", "0{01}(02)", "0\n   {01}(02)"),
    ("line ends of Windows", "\n", "\r\n"),
    ("old line ends of Macs", "\n", "\r"),
    ("double quotes", "'dropped or worn'", '"dropped or worn"'),
    ("ENDBLOCK", "END;", "ENDBLOCK;"),
    ("no end at all", "  ;\nEND;\n", "  ;\n"),
]


@pytest.mark.parametrize(("_", "old", "new"), SAME, ids=[row[0] for row in SAME])
def test_a_variant_means_the_same(_: str, old: str, new: str):
    assert old in TINY
    found = parse_nexus(TINY.replace(old, new).encode(), "tiny.nex")

    assert found == parse_nexus(TINY.encode(), "tiny.nex")


def test_an_interleaved_matrix_is_put_together():
    text = TINY.replace("GAP=-;", "GAP=- INTERLEAVE;").replace(
        TINY[TINY.index("    Alpha_prima    ") : TINY.index("  ;\nEND;\n", 400)],
        "Alpha_prima 0{01}\nBeta_secunda 10\n'Gamma cf. tertia' 2?\n\n"
        "Alpha_prima (02)\nBeta_secunda -\n'Gamma cf. tertia' 1\n",
    )

    assert parse_nexus(text.encode(), "tiny.nex") == parse_nexus(TINY.encode(), "tiny.nex")


def test_state_labels_may_stand_in_a_command_of_their_own():
    text = TINY[: TINY.index("  CHARSTATELABELS")] + (
        "  CHARLABELS 'Tail''s shape' Spots Spines;\n"
        "  STATELABELS 1 leaf rope none, 2 present 'dropped or worn', 3 short long;\n"
    )
    text += TINY[TINY.index("  MATRIX") :]

    assert parse_nexus(text.encode(), "tiny.nex") == parse_nexus(TINY.encode(), "tiny.nex")


def test_what_is_not_understood_is_told():
    text = (
        TINY.replace("Spots / present 'dropped or worn'", "Spots").replace("{01}", "0")
        + "BEGIN TREES;\n TREE a = (1,2);\nEND;\n"
    )

    found = parse_nexus(text.encode("cp1252").replace(b"leaf", b"l\xe4nglich"), "tiny.nex")

    assert found.notes[:3] == (
        "The file is not UTF-8; it was read as Windows-1252.",
        "The block TREES was left out.",
        "The character 'Spots' was left out, because it has no two states.",
    )
    assert found.key.characters[0].states[0].label == "länglich"


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ("#NEXUS", "#NEWICK", "x.nex does not start with #NEXUS."),
        ("nested]]", "nested]", "A comment in x.nex is never closed."),
        ("STANDARD", "CONTINUOUS", "The matrix in x.nex is continuous, not states."),
        ("GAP=-", "TRANSPOSE", "The matrix in x.nex is laid out as TRANSPOSE."),
        ("NCHAR=3", "", "x.nex does not say how many characters it has (NCHAR)."),
        ("NCHAR=3", "NCHAR=5000000", "The matrix in x.nex is larger than any key."),
        ("2?1", "2?", "The row 'Gamma cf. tertia' in x.nex has 2 cells, not 3."),
        ("(02)", "(02", "A bracket in the matrix of x.nex has no partner."),
        ("(02)", "(02}", "'(' in the matrix of x.nex ends in '}'."),
        ("Beta_secunda        1", "Alpha_prima 1", "The row 'Alpha prima' is twice in x.nex."),
        ("BEGIN CHARACTERS", "BEGIN TREES", "x.nex holds no matrix of states."),
        (TINY[TINY.index("    Alpha_prima    ") : TINY.index("2?1") + 3], "", "The matrix in x"),
    ],
)
def test_bad_nexus_ends_in_words(old: str, new: str, message: str):
    assert old in TINY
    with pytest.raises(IdKeyError) as caught:
        parse_nexus(TINY.replace(old, new).encode(), "x.nex")

    assert caught.value.problem.startswith(message)
    assert caught.value.remedy


def test_a_matrix_that_tells_nothing_apart_is_refused():
    text = TINY.replace("/ leaf rope none", "").replace("/ present 'dropped or worn'", "")
    text = text.replace("/ short long", "").replace("0{01}(02)", "000").replace("10-", "000")

    with pytest.raises(IdKeyError, match=r"No character in x\.nex has two states or more"):
        parse_nexus(text.replace("2?1", "000").encode(), "x.nex")


def test_a_key_of_equal_numbers_cannot_be_written(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    only = replace(key, characters=(key.character["length"],), scores=(), couplets=(), labels=())

    with pytest.raises(IdKeyError, match="has no character that NEXUS can hold"):
        nexus_text(only)


def test_a_character_of_too_many_states_is_left_out_and_told(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    many = Character(
        id="many",
        name="Many",
        question="?",
        kind=Kind.CATEGORICAL,
        looks=(Look.TUB,),
        states=tuple(State(id=f"s{n}", label=f"{n}") for n in range(35)),
    )

    _, left = nexus_text(replace(key, characters=(*key.characters, many)))

    assert "The character 'Many' was left out, because it has more than 34 states." in left


@pytest.mark.parametrize(
    ("ranges", "expected"),
    [
        ([], None),
        ([Spans(low=1, high=2)], None),
        ([Spans(low=1, high=2), Spans(low=1, high=2)], None),
        ([Spans(low=1, high=2), Spans(low=3, high=4)], (3,)),
        ([Spans(mean=1), Spans(mean=5), Spans(mean=9)], (5, 9)),
        ([Spans(high=2), Spans(high=5)], (2,)),
        ([Spans(low=float(n), high=n + 0.5) for n in range(20)], (1, 5, 10, 15, 19)),
    ],
)
def test_numbers_are_cut_where_ranges_start(ranges: list[Spans], expected: tuple[float, ...]):
    found = bins(ranges, "mm")

    assert (None if found is None else found.cuts) == expected


@given(
    st.lists(st.tuples(st.integers(0, 50), st.integers(0, 20)), min_size=1, max_size=8),
    st.floats(0, 70),
)
def test_a_value_in_a_range_lies_in_a_class_of_the_range(
    ranges: list[tuple[int, int]], value: float
):
    spans = [Spans(low=low, high=low + more) for low, more in ranges]
    found = bins(spans, "") or Bins((1,))
    own = found.classes(Spans(low=value, high=value))

    assert len(own) == 1
    for one in spans:
        if one.low <= value <= one.high:
            assert own[0] in found.classes(one)


def test_labels_of_classes_carry_the_unit():
    assert Bins((2, 3.5), "mm").labels() == ("under 2 mm", "2 to under 3.5 mm", "3.5 mm or more")


def test_a_file_that_cannot_be_read_or_written_is_told(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))

    with pytest.raises(IdKeyError, match=r"no\.nex cannot be read"):
        read_arrival(tmp_path / "no.nex")
    with pytest.raises(IdKeyError, match=r"k\.nex could not be written"):
        write_nexus(key, tmp_path / "no folder" / "k.nex")


def test_a_text_beyond_any_sense_is_not_read():
    with pytest.raises(IdKeyError, match=r"k\.nex is larger than 8 MB"):
        parse_nexus(bytes(LARGEST_NEXUS + 1), "k.nex")


@given(
    place=st.integers(6, len(TINY)),
    taken=st.integers(0, 30),
    new=st.text("()[]{}'\";,/=01?-\n aN\0é", max_size=8) | st.just("\\N{SNOWMAN}" * 50),
)
@example(place=6, taken=len(TINY), new="")
@settings(max_examples=60)
def test_no_damage_does_more_than_be_refused(place: int, taken: int, new: str):
    with suppress(IdKeyError):
        parse_nexus((TINY[:place] + new + TINY[place + taken :]).encode(), "x.nex")


CORPUS = sorted((Path(__file__).parent / "corpus" / "nexus").iterdir())


@pytest.mark.parametrize("file", CORPUS, ids=lambda file: file.name)
def test_the_bad_files_of_the_corpus_are_refused(file: Path):
    with pytest.raises(IdKeyError):
        parse_nexus(file.read_bytes(), file.name)
