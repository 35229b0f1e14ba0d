"""A key folder comes back as it was written, and little changes when little is changed."""

import difflib
import tempfile
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings

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
from idkey.formats.plain import canonical
from idkey.formats.problem import KeyProblems
from idkey.formats.texts import parsed_texts
from idkey.formats.write import folder_documents
from idkey.model.key import Key
from idkey.model.score import Score, Shows
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
@settings(max_examples=80)
def test_every_key_says_the_same_as_its_files(key: Key):
    contents = {name: text_of(doc).encode() for name, doc in folder_documents(key).items()}

    again, _ = checked(drafted(Path(key.id), parsed_texts(Path(key.id), contents)))

    assert again is not None
    assert replace(again, digest="") == canonical(key)
    assert again.digest == digest(key)


@given(key=keys())
@settings(max_examples=10)
def test_every_key_comes_back_as_it_was_written(key: Key):
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place) / key.id
        write_key(key, folder)

        again = read_key(folder)

    assert replace(again, digest="") == canonical(key)
    assert again.digest == digest(key)


@given(key=keys())
@settings(max_examples=30)
def test_the_digest_ignores_the_order_of_taxa_and_scores_and_nothing_else(key: Key):
    turned = replace(key, taxa=key.taxa[::-1], scores=_turned(key.scores))
    retitled = replace(key, title=key.title + "!")

    assert digest(turned) == digest(key)
    assert digest(retitled) != digest(key)


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


def test_comments_follow_an_entry_that_moves(tmp_path: Path):
    text = FILES["characters.yaml"].replace("  - id: length", "  # by tape\n  - id: length")
    folder = laid_out(tmp_path, {**FILES, "characters.yaml": text})
    key = read_key(folder)

    write_key(replace(key, characters=key.characters[::-1]), folder)

    after = (folder / "characters.yaml").read_text("utf-8")
    assert after.startswith("characters:\n  # by tape\n  - id: length\n")


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
        'title: "Small # one"',
        "version: 1.0.1",
        'scope: "# two\\nthree\\n"',
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
