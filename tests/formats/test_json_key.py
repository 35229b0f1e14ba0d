"""A key comes back from JSON as it was, and bad JSON ends in words."""

import json
from contextlib import suppress
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats.arrival import read_arrival
from idkey.formats.folder import digest, read_key
from idkey.formats.json_key import LARGEST_JSON, _texts, parse_json, write_json
from idkey.formats.plain import canonical
from idkey.formats.problem import KeyProblems
from idkey.model.key import Key
from idkey.places import keys_folder
from tests.formats.invented import keys
from tests.formats.small_key import FILES, laid_out

FILE = Path("key.json")


@given(key=keys())
@settings(max_examples=10)
def test_every_key_comes_back_from_json(key: Key):
    again = parse_json(write_json(key).encode(), FILE)

    assert replace(again, digest="") == canonical(key)
    assert again.digest == digest(key)


def test_a_shipped_key_comes_back_from_json(tmp_path: Path):
    key = read_key(keys_folder() / "large-dark-scorpions")
    (tmp_path / "k.json").write_text(write_json(key), "utf-8")

    assert parse_json((tmp_path / "k.json").read_bytes(), tmp_path / "k.json") == key


def test_a_mistake_is_told_with_its_line_in_the_json(tmp_path: Path):
    text = write_json(read_key(laid_out(tmp_path, FILES)))
    wrong = text.replace('"leaf"\n     ],\n     "sources"', '"dark"\n     ],\n     "sources"', 1)
    pairs = zip(text.split("\n"), wrong.split("\n"), strict=True)
    line = next(n for n, (old, new) in enumerate(pairs, 1) if old != new)

    with pytest.raises(KeyProblems) as caught:
        parse_json(wrong.encode(), FILE)

    assert [str(p) for p in caught.value.problems] == [
        f"key.json:{line}:7: 'dark' is a state of 'colour', not of 'tail'. Known: none, leaf, rope."
    ]


def test_a_mistake_in_json_that_is_no_yaml_is_told_without_a_line(tmp_path: Path):
    text = write_json(read_key(laid_out(tmp_path, FILES)))
    wrong = json.dumps({**json.loads(text), "version": "one", "scope": "\U0001f98e"})

    with pytest.raises(KeyProblems, match=r"key\.json:1:1: 'one' is not a semantic version"):
        parse_json(wrong.encode(), FILE)


@pytest.mark.parametrize(
    ("raw", "message"),
    [
        (b"", "key.json:1:1: This is no JSON."),
        (b'{"a": 1,\n "b": }', "key.json:2:7: This is no JSON."),
        (b"[]", "key.json is JSON, but no key."),
        (b'{"a": 1, "a": 2}', "key.json is no key: 'a' is given twice in one place."),
        (b'{"a": NaN}', "key.json is no key: NaN is no number."),
        (b'{"a": Infinity}', "key.json is no key: Infinity is no number."),
        (b"\xff\xfe{\0", "key.json is not UTF-8 text."),
        (b"[" * 100_000, "key.json is no key: it is nested deeper than any key."),
        (b"[" * 41 + b"]" * 41, "key.json is no key: it is nested deeper than any key."),
        (b'{"taxa": [{"id": "a"}, {"id": "a"}]}', "The taxon 'a' is twice in key.json."),
        (b'{"a": ' + b"9" * 5000 + b"}", "key.json is no key: "),
    ],
    ids=str,
)
def test_what_is_no_key_is_refused_in_words(raw: bytes, message: str):
    with pytest.raises(IdKeyError) as caught:
        parse_json(raw, FILE)

    assert caught.value.problem.startswith(message)
    assert caught.value.remedy


@pytest.mark.parametrize("part", ["taxa", "characters", "labels", "couplets", "sources", "checks"])
@pytest.mark.parametrize("value", [3, "x", [3], [None], [[]], {"x": 1}, [{"id": 3}]], ids=str)
def test_a_part_of_the_wrong_shape_is_refused_in_words(part: str, value: object, tmp_path: Path):
    whole = json.loads(write_json(read_key(laid_out(tmp_path, FILES))))
    raw = json.dumps({**whole, part: value}).encode()

    with pytest.raises(KeyProblems) as caught:
        parse_json(raw, FILE)

    assert all(problem.remedy for problem in caught.value.problems)


def test_a_file_that_cannot_be_read_is_told(tmp_path: Path):
    with pytest.raises(IdKeyError, match=r"no\.json cannot be read: "):
        read_arrival(tmp_path / "no.json")


def test_a_text_beyond_any_sense_is_not_read():
    with pytest.raises(IdKeyError, match=r"k\.json is larger than 64 MB"):
        parse_json(bytes(LARGEST_JSON + 1), Path("k.json"))


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: (
        st.lists(inner, max_size=3)
        | st.dictionaries(
            st.sampled_from(
                [
                    "id",
                    "name",
                    "taxa",
                    "characters",
                    "labels",
                    "couplets",
                    "sources",
                    "checks",
                    "format",
                    "title",
                    "version",
                    "states",
                    "scores",
                    "shows",
                    "sees",
                    "leads",
                    "to",
                ]
            ),
            inner,
            max_size=5,
        )
    ),
    max_leaves=30,
)


@given(value=JSON)
@settings(max_examples=60)
def test_no_json_at_all_does_more_than_be_refused(value: object):
    with suppress(IdKeyError):
        parse_json(json.dumps(value).encode(), FILE)


CORPUS = sorted((Path(__file__).parent / "corpus" / "json").iterdir())


@pytest.mark.parametrize("file", CORPUS, ids=lambda file: file.name)
def test_the_bad_files_of_the_corpus_are_refused(file: Path):
    with pytest.raises(IdKeyError):
        parse_json(file.read_bytes(), file)


def test_places_of_a_large_document_are_looked_up_once_for_all_its_parts():
    """Each taxon once looked its places up anew: a thousand taxa with remarks took an hour."""
    text = write_json(Key(id="x", title="X", version="1.0.0"))
    plain = {**json.loads(text), "taxa": [{"id": "a"}, {"id": "b"}]}
    texts = _texts(Path("x.json"), json.dumps(plain), plain)

    first, second = texts.files["taxa/a.yaml"], texts.files["taxa/b.yaml"]
    assert first.root is second.root is texts.files["key.yaml"].root
    assert first.place(("id",)) != second.place(("id",)) != (1, 1)
