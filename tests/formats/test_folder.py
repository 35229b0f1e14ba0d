"""A key folder comes back as it was written, and little changes when little is changed."""

import difflib
import hashlib
import json
import shutil
import tempfile
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats.draft import drafted
from idkey.formats.emit import text_of
from idkey.formats.folder import (
    check_key,
    check_values,
    checked,
    digest,
    list_keys,
    read_key,
    write_key,
)
from idkey.formats.plain import canonical, documents
from idkey.formats.problem import KeyProblems
from idkey.formats.texts import parsed_texts
from idkey.formats.write import folder_documents
from idkey.model.character import Look, State
from idkey.model.key import Key
from idkey.model.score import Score, Shows
from idkey.model.source import Source
from idkey.places import keys_folder
from tests.formats.invented import keys
from tests.formats.small_key import FILES, laid_out


def changed(folder: Path, key: Key) -> list[str]:
    """Lines that differ after writing `key` to `folder`, as a diff shows them."""
    before = {file: file.read_text("utf-8") for file in sorted(folder.rglob("*.yaml"))}
    write_key(key, folder)
    found = []
    for file in sorted({*before, *folder.rglob("*.yaml")}):
        old = before.get(file, "").splitlines()
        new = file.read_text("utf-8").splitlines() if file.exists() else []
        lines = difflib.unified_diff(old, new, n=0, lineterm="")
        found += [line for line in lines if line[:3] not in ("---", "+++") and line[:2] != "@@"]
    return found


def with_score(key: Key, taxon: str, character: str, **changes: object) -> Key:
    """`key` with one score changed."""
    return replace(
        key,
        scores=tuple(
            replace(s, **changes) if (s.taxon, s.character) == (taxon, character) else s
            for s in key.scores
        ),
    )


@given(key=keys())
@settings(max_examples=26)
def test_every_key_says_the_same_as_its_files(key: Key):
    contents = {name: text_of(doc).encode() for name, doc in folder_documents(key).items()}

    again, _ = checked(drafted(Path(key.id), parsed_texts(Path(key.id), contents)))

    assert again is not None
    assert replace(again, digest="") == canonical(key)
    assert again.digest == digest(key)


@given(key=keys())
@settings(max_examples=4)
def test_every_key_comes_back_as_it_was_written(key: Key):
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place) / key.id
        write_key(key, folder)

        again = read_key(folder)

    assert replace(again, digest="") == canonical(key)
    assert again.digest == digest(key)


@given(key=keys())
@settings(max_examples=10)
def test_the_digest_ignores_the_order_of_taxa_and_scores_and_nothing_else(key: Key):
    turned = replace(key, taxa=key.taxa[::-1], scores=_turned(key.scores))
    retitled = replace(key, title=key.title + "!")

    assert digest(turned) == digest(key)
    assert digest(retitled) != digest(key)
    whole = json.dumps(documents(key), ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    assert digest(key) == hashlib.sha256(whole.encode()).hexdigest()


def _turned(scores: tuple[Score, ...]) -> tuple[Score, ...]:
    """Cells in reverse, each cell's own scores in their order, which is content."""
    cells: dict[tuple[str, str], list[Score]] = {}
    for score in scores:
        cells.setdefault((score.taxon, score.character), []).append(score)
    return tuple(score for cell in reversed(cells.values()) for score in cell)


@pytest.mark.parametrize("entry", list_keys(keys_folder()), ids=lambda entry: entry.id)
def test_a_shipped_key_comes_back_as_it_was_written(entry, tmp_path: Path):
    key = read_key(entry.folder)
    write_key(key, tmp_path / key.id)

    assert read_key(tmp_path / key.id) == key


def test_writing_an_unchanged_key_touches_no_file(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    times = {file: file.stat().st_mtime_ns for file in folder.rglob("*.yaml")}

    write_key(read_key(folder), folder)

    assert {file: file.stat().st_mtime_ns for file in folder.rglob("*.yaml")} == times


def test_a_changed_score_is_a_changed_line(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = with_score(read_key(folder), "alpha", "tail", value=Shows({"rope": None}))

    assert changed(folder, key) == [
        "-  tail: {shows: [leaf], sources: [novak2020]}",
        "+  tail: {shows: [rope], sources: [novak2020]}",
    ]


def test_a_changed_score_of_one_sex_is_a_changed_line(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = read_key(folder)
    scores = tuple(replace(s, note="seen") if s.sex == "male" else s for s in key.scores)

    assert changed(folder, replace(key, scores=scores)) == [
        "-    - {sex: male, shows: [dark], sources: [novak2020]}",
        "+    - {sex: male, shows: [dark], sources: [novak2020], note: seen}",
    ]


def test_a_taxon_that_is_gone_takes_its_file_along(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = read_key(folder)
    left = replace(
        key,
        taxa=tuple(t for t in key.taxa if t.id != "gamma"),
        scores=tuple(s for s in key.scores if s.taxon != "gamma"),
        couplets=(),
        checks=(),
    )
    write_key(left, folder)

    assert sorted(f.name for f in (folder / "taxa").iterdir()) == ["alpha.yaml", "beta.yaml"]
    assert replace(read_key(folder), digest="") == replace(left, digest="")


def test_comments_stay_with_what_they_are_about(tmp_path: Path):
    text = """\
# Alpha, as drawn for this test.
id: alpha
name: Alpha prima  # a made-up name
# not measured here
size_mm: [40, 50]
scores:
  # shape before colour
  tail: {shows: [leaf], sources: [novak2020]}  # plate 3
  # from life
  # and from the plate
  colour: {shows: {dark: usually, pale: 0.2}, sources: [novak2020]}
  length: {low: 40, high: 50, mean: 44.5, sd: 2, n: 12, sources: [novak2020]}
# the end
"""
    folder = laid_out(tmp_path, {**FILES, "taxa/alpha.yaml": text})
    key = with_score(read_key(folder), "alpha", "tail", value=Shows({"rope": None}))

    write_key(key, folder)

    after = (folder / "taxa" / "alpha.yaml").read_text("utf-8")
    assert after == text.replace("tail: {shows: [leaf]", "tail: {shows: [rope]")


HAND_WRITTEN = """\
# How the tail of each is built.
characters:
- id:   tail     # the first thing to look at
  name: 'Tail'
  question: >-
    Which shape
    has the tail?
  rule_of_thumb: false

  # in this order
  looks: [tub,
          photo_above]
  kind: categorical
  states:
  # lost
  - {id: none, label: none}
  - id: leaf  # the usual one
    label: like a leaf

  - {id: rope, label: like a rope}
  sources:
    - novak2020   # page 3

# Colour next.
- id: colour
  name: Colour
  question: Which colour has the back?
  kind: categorical
  looks: [tub, photo_above]
  states:
    - {id: dark, label: dark, colours: ["#202020"]}
    - {id: pale, label: pale}

- {id: length, name: Length, question: "How long?", kind: measurement, unit: mm, looks: [uv]}
# The end.
"""


def edited(key: Key, character: str, **changes: object) -> Key:
    """`key` with fields of a character changed."""
    new = (replace(c, **changes) if c.id == character else c for c in key.characters)
    return replace(key, characters=tuple(new))


HAND_EDITS = [
    ("nothing", lambda key: key, []),
    (
        "a plain field",
        lambda key: edited(key, "tail", name="Shape of the tail"),
        ["-  name: 'Tail'", "+  name: Shape of the tail"],
    ),
    (
        "a folded field",
        lambda key: edited(key, "tail", question="Which?"),
        ["-  question: >-", "-    Which shape", "-    has the tail?", '+  question: "Which?"'],
    ),
    (
        "a field that was not there",
        lambda key: edited(key, "tail", how="From above."),
        ["+  how: From above."],
    ),
    (
        "a label within a state",
        lambda key: edited(
            key,
            "tail",
            states=tuple(
                replace(s, label="a fan") if s.id == "leaf" else s
                for s in key.character["tail"].states
            ),
        ),
        ["-    label: like a leaf", "+    label: a fan"],
    ),
    (
        "a state more",
        lambda key: edited(
            key,
            "tail",
            states=(*key.character["tail"].states, State(id="club", label="club")),
        ),
        ["+", "+  - id: club", "+    label: club"],
    ),
    (
        "a list on several lines",
        lambda key: edited(key, "tail", looks=(Look.TUB,)),
        ["-  looks: [tub,", "-          photo_above]", "+  looks: [tub]"],
    ),
    (
        "a source more",
        lambda key: replace(
            edited(key, "tail", sources=("novak2020", "x")),
            sources=(*key.sources, Source(id="x", citation="X")),
        ),
        ["+    - x", "+  x:", "+    citation: X"],
    ),
    (
        "a field that goes",
        lambda key: edited(key, "tail", sources=()),
        ["-  sources:", "-    - novak2020   # page 3"],
    ),
    (
        "a flow entry",
        lambda key: edited(key, "length", unit="cm"),
        [
            '-- {id: length, name: Length, question: "How long?", kind: measurement, unit: mm, '
            "looks: [uv]}",
            "+- id: length",
            "+  name: Length",
            '+  question: "How long?"',
            "+  kind: measurement",
            "+  looks: [uv]",
            "+  unit: cm",
        ],
    ),
]


@pytest.mark.parametrize(
    ("edit", "diff"), [row[1:] for row in HAND_EDITS], ids=[row[0] for row in HAND_EDITS]
)
def test_a_hand_written_file_changes_in_the_lines_that_say_something_else(
    tmp_path: Path, edit, diff: list[str]
):
    folder = laid_out(tmp_path, {**FILES, "characters.yaml": HAND_WRITTEN})
    key = edit(read_key(folder))

    assert changed(folder, key) == diff
    assert replace(read_key(folder), digest="") == replace(canonical(key), digest="")


def test_comments_follow_an_entry_that_moves(tmp_path: Path):
    text = FILES["characters.yaml"].replace("  - id: length", "  # by tape\n  - id: length")
    folder = laid_out(tmp_path, {**FILES, "characters.yaml": text})
    key = read_key(folder)

    write_key(replace(key, characters=key.characters[::-1]), folder)

    after = (folder / "characters.yaml").read_text("utf-8")
    assert after.startswith("characters:\n  # by tape\n  - id: length\n")
    assert sorted(after.splitlines()) == sorted(text.splitlines())


def test_a_comment_goes_with_the_score_it_is_about(tmp_path: Path):
    text = FILES["taxa/alpha.yaml"].replace("  colour", "  # odd\n  colour")
    folder = laid_out(tmp_path, {**FILES, "taxa/alpha.yaml": text})
    key = read_key(folder)
    left = (s for s in key.scores if (s.taxon, s.character) != ("alpha", "colour"))

    write_key(replace(key, scores=tuple(left)), folder)

    assert "odd" not in (folder / "taxa" / "alpha.yaml").read_text("utf-8")


def test_a_hash_inside_a_text_is_no_comment(tmp_path: Path):
    text = (
        'format: 1\nid: small\ntitle: "Small\n  # one"\n'
        "scope: |\n  # two\n  three\nversion: 1.0.0\n"
    )
    folder = laid_out(tmp_path, {**FILES, "key.yaml": text})
    key = read_key(folder)
    write_key(replace(key, version="1.0.1"), folder)

    assert (folder / "key.yaml").read_text("utf-8").splitlines() == [
        "format: 1",
        "id: small",
        'title: "Small',
        '  # one"',
        "scope: |",
        "  # two",
        "  three",
        "version: 1.0.1",
    ]


def test_a_key_with_errors_is_not_written(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = with_score(read_key(folder), "alpha", "tail", value=Shows({"dark": None}))

    with pytest.raises(KeyProblems, match="'dark' is a state of 'colour', not of 'tail'"):
        write_key(key, folder)

    assert (folder / "taxa" / "alpha.yaml").read_text("utf-8") == FILES["taxa/alpha.yaml"]


def test_mistakes_of_a_key_in_memory_have_the_places_of_its_files(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    wrong = with_score(key, "alpha", "tail", value=Shows({"dark": None}), sources=("novac",))

    found = check_values(wrong, Path("small"))

    assert [(str(p), p.loc) for p in found] == [
        (
            f"{Path('small/taxa/alpha.yaml')}:5:18: 'dark' is a state of 'colour', "
            "not of 'tail'. Known: none, leaf, rope.",
            ("scores", "tail", "shows", 0),
        ),
        (
            f"{Path('small/taxa/alpha.yaml')}:5:35: Unknown source 'novac'. Known: novak2020.",
            ("scores", "tail", "sources", 0),
        ),
    ]


def test_a_score_for_nobody_is_refused_when_written(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    stray = replace(key.scores[0], taxon="delta")

    with pytest.raises(IdKeyError, match="has a score for 'delta', which it does not define"):
        write_key(replace(key, scores=(*key.scores, stray)), tmp_path / "new")

    assert not (tmp_path / "new").exists()


def test_a_lead_that_asks_for_a_character_twice_is_refused_when_written(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    first, second = key.couplets
    lead = replace(first.leads[0], sees=first.leads[0].sees * 2)
    wrong = replace(key, couplets=(replace(first, leads=(lead, first.leads[1])), second))

    with pytest.raises(IdKeyError, match=r"The lead 'Tail like a leaf\.' asks for 'tail' twice"):
        write_key(wrong, tmp_path / "new")


def test_a_place_that_cannot_be_written_leaves_the_old_key(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = replace(read_key(folder), version="1.1.0")
    (folder / ".key.yaml.new").mkdir()

    with pytest.raises(IdKeyError, match="The key could not be written to"):
        write_key(replace(with_score(key, "alpha", "tail", note="new")), folder)

    assert {f.name for f in (folder / "taxa").iterdir()} == {
        "alpha.yaml",
        "beta.yaml",
        "gamma.yaml",
    }
    assert (folder / "taxa" / "alpha.yaml").read_text("utf-8") == FILES["taxa/alpha.yaml"]
    assert (folder / "key.yaml").read_text("utf-8") == FILES["key.yaml"]


def test_files_that_could_not_be_read_are_kept_beside_the_new_ones(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = read_key(folder)
    (folder / "labels.yaml").write_text("labels: [  # not finished", "utf-8")

    write_key(key, folder)

    assert (folder / "labels.yaml.bak").read_text("utf-8") == "labels: [  # not finished"
    assert read_key(folder) == key


def edits(key: Key) -> st.SearchStrategy[Key]:
    """The key with one thing changed, added or removed."""
    scores = [
        replace(key, scores=(*key.scores[:n], *key.scores[n + 1 :])) for n in range(len(key.scores))
    ]
    notes = [
        replace(key, scores=tuple(replace(s, note="new") if s is old else s for s in key.scores))
        for old in key.scores
    ]
    labels = [
        replace(key, labels=(*key.labels[:n], *key.labels[n + 1 :])) for n in range(len(key.labels))
    ]
    renamed = [
        replace(key, taxa=tuple(replace(t, note="new: #") if t is old else t for t in key.taxa))
        for old in key.taxa
    ]
    worded = [edited(key, c.id, how="Look.", pitfalls="") for c in key.characters]
    leads = [
        replace(
            key,
            couplets=tuple(
                replace(c, leads=(replace(c.leads[0], remark="new"), *c.leads[:0:-1]))
                if c is old
                else c
                for c in key.couplets
            ),
        )
        for old in key.couplets
    ]
    return st.sampled_from([*scores, *notes, *labels, *renamed, *worded, *leads])


SHIPPED = [read_key(entry.folder) for entry in list_keys(keys_folder())]


@given(data=st.data())
@settings(max_examples=8)
def test_no_edit_of_a_shipped_key_touches_many_lines(
    data: st.DataObject, tmp_path_factory: pytest.TempPathFactory
):
    key = data.draw(st.sampled_from(SHIPPED))
    new = data.draw(edits(key))
    folder = tmp_path_factory.mktemp("edit") / key.id
    shutil.copytree(keys_folder() / key.id, folder)

    lines = changed(folder, new)

    assert replace(read_key(folder), digest="") == replace(canonical(new), digest="")
    assert len(lines) <= 40


@given(old=keys(), new=keys())
@settings(max_examples=4)
def test_any_key_can_be_written_over_any_other(
    old: Key, new: Key, tmp_path_factory: pytest.TempPathFactory
):
    folder = tmp_path_factory.mktemp("over") / "made_up"
    write_key(old, folder)
    write_key(new, folder)

    assert replace(read_key(folder), digest="") == canonical(new)


def test_keys_are_listed_by_title_and_broken_ones_say_why(tmp_path: Path):
    laid_out(tmp_path, FILES)
    for name, text in {
        "b": "title: Another\nversion: 0.1.0",
        "c": "title: [",
        "d": "id: d",
    }.items():
        (tmp_path / name).mkdir()
        (tmp_path / name / "key.yaml").write_text(text, "utf-8")
    (tmp_path / "no_key").mkdir()

    found = list_keys(tmp_path)

    assert [(e.id, e.title, e.version) for e in found] == [
        ("b", "Another", "0.1.0"),
        ("c", "c", ""),
        ("d", "d", ""),
        ("small", "Small invented key", "1.0.0"),
    ]
    assert "key.yaml:2:1: A bracket that was opened is never closed" in found[1].problem
    assert found[2].problem == "d/key.yaml has no title or version."
    assert list_keys(tmp_path / "nowhere") == ()


def test_states_that_yaml_takes_for_values_stay_words(tmp_path: Path):
    text = FILES["characters.yaml"].replace("{id: rope,", "{id: no,").replace("id: pale", "id: yes")
    others = {
        name: FILES[name].replace("rope", "no").replace("pale", "yes")
        for name in ("couplets.yaml", "taxa/alpha.yaml", "taxa/beta.yaml")
    }

    key, problems = check_key(laid_out(tmp_path, {**FILES, "characters.yaml": text, **others}))

    assert problems == ()
    assert key is not None
    assert key.character["tail"].state_ids == ("none", "leaf", "no")
    assert key.character["colour"].state_ids == ("dark", "yes")
