"""The short cut through canonical taxon files says what YAML says, or nothing."""

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.formats.emit import text_of
from idkey.formats.score_lines import split_scores
from idkey.formats.write import folder_documents
from idkey.formats.yaml_text import parse_yaml
from idkey.model.key import Key
from tests.formats.invented import PLAIN_WORDS, keys
from tests.formats.small_key import FILES

FILE = Path("x.yaml")


def the_long_way(text: str) -> tuple[object, list[str]]:
    """What YAML says: a comment in front keeps the short cut out without changing anything."""
    yaml, problems = parse_yaml(FILE, "# -\x85\n" + text)
    return (None if yaml is None else yaml.plain), [p.problem for p in problems]


def either_way(text: str) -> tuple[object, list[str]]:
    yaml, problems = parse_yaml(FILE, text)
    return (None if yaml is None else yaml.plain), [p.problem for p in problems]


@given(key=keys(PLAIN_WORDS), data=st.data())
@settings(max_examples=20)
def test_both_ways_say_the_same_of_any_text(key: Key, data: st.DataObject):
    documents = folder_documents(key)
    name = data.draw(st.sampled_from([n for n in documents if n.startswith("taxa/")]))
    text = text_of(documents[name])
    for _ in range(data.draw(st.integers(0, 3))):
        place = data.draw(st.integers(0, len(text)))
        taken = data.draw(st.integers(0, 2))
        new = data.draw(st.text("\"'{}[]:,#-&*!|>? \n\t\\a1~é\r", max_size=3))
        text = text[:place] + new + text[place + taken :]

    assert either_way(text) == the_long_way(text)


@pytest.mark.parametrize("name", ["taxa/alpha.yaml", "taxa/beta.yaml", "taxa/gamma.yaml"])
def test_canonical_files_take_the_short_cut(name: str):
    found = split_scores(FILES[name])

    assert found is not None
    assert {"scores": found[1]}.items() <= the_long_way(FILES[name])[0].items()


def test_line_ends_of_windows_take_the_short_cut():
    text = FILES["taxa/beta.yaml"]

    assert split_scores(text.replace("\n", "\r\n")) == split_scores(text) is not None


HEAD = "id: a\nname: A\nscores:\n"


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("id: a\nname: A\n", id="no scores"),
        pytest.param(HEAD + "  t: {shows: [a, a}\n", id="a bracket is missing"),
        pytest.param(HEAD + "  t: {shows: [a], shows: [b]}\n", id="a field twice"),
        pytest.param(HEAD + "  t: {shows: [a]}\n  t: {shows: [b]}\n", id="a character twice"),
        pytest.param(HEAD + "  t:\n", id="a character without score"),
        pytest.param(HEAD + "  t:\n  u: {low: 1}\n", id="a character without score in between"),
        pytest.param(HEAD + "  t: {low: 1}\n    - {low: 2}\n", id="an item below a single score"),
        pytest.param(HEAD + "  t: &a {low: 1}\n", id="an anchor"),
        pytest.param(HEAD + '  t: {note: "\\u00e9"}\n', id="an escape that JSON reads otherwise"),
        pytest.param(HEAD + '  t: {note: "a\tb"}\n', id="a tab"),
        pytest.param(HEAD + '  t: {note: "a\x85b"}\n', id="a line end of its own kind"),
        pytest.param(HEAD + "  t: {low: 1}\nrange: here\n", id="something below the scores"),
        pytest.param(HEAD + "  t: {low: 1}\n---\n  u: {low: 2}\n", id="a second document"),
        pytest.param(HEAD + "  t: {null: 1}\n", id="a field called null"),
        pytest.param(HEAD + "  t: {low: 1}\n   u: {low: 2}\n", id="uneven indentation"),
    ],
)
def test_whatever_is_not_canonical_goes_the_long_way(text: str):
    assert split_scores(text) is None


@pytest.mark.parametrize(
    "head",
    [
        pytest.param('note: "open\n', id="an open quote"),
        pytest.param("note: [open\n", id="an open bracket"),
        pytest.param("- a\n", id="a list"),
        pytest.param("scores: 1\n", id="scores twice"),
        pytest.param("a: b\n...\n", id="a document that has ended"),
        pytest.param("a: b\na: c\n", id="a field twice"),
    ],
)
def test_a_head_that_does_not_end_above_the_scores_goes_the_long_way(head: str):
    text = f"{head}scores:\n  t: {{low: 1}}\n"

    assert either_way(text) == the_long_way(text)
