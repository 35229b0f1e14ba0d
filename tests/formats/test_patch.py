"""Whatever the layout of a hand-written file, the new content arrives in it whole."""

from dataclasses import replace
from pathlib import Path

import pytest

from idkey.formats.folder import read_key, write_key
from idkey.formats.plain import canonical
from idkey.model.key import Key
from tests.formats.small_key import FILES, laid_out

LAYOUTS = {
    "a mapping in brackets": "{format: 1, id: small, title: Small, version: 1.0.0, scope: Old.}\n",
    "two fields on a line": '"format": 1\nid: small\ntitle: Small\nversion: 1.0.0\nscope: Old.\n',
    "line ends of old Macs": "format: 1\rid: small\rtitle: Small\rversion: 1.0.0\rscope: Old.\r",
    "no end of the last line": "format: 1\nid: small\ntitle: Small\nversion: 1.0.0\nscope: Old.",
    "a block text": (
        "format: 1\nid: small\nscope: |\n  Old.\n\n\n# here\ntitle: Small\nversion: 1.0.0\n"
    ),
    "a start and an end": (
        "---\nformat: 1\nid: small\ntitle: Small\nversion: 1.0.0\nscope: Old.\n...\n"
    ),
    "lists in many ways": (
        "format: 1\nid: small\ntitle: Small\nversion: 1.0.0\nscope: Old.\n"
        "cautions:\n-\n  One.\n- Two.\nauthors:\n    -   A  # first\n    - B\n"
    ),
    "names in quotes": (
        "'format': 1\n'id': small\n\"title\": Small\nversion: 1.0.0\n? scope\n: Old.\n"
    ),
}


def renewed(key: Key) -> Key:
    return replace(
        key,
        scope="New: a text.",
        cautions=("One.", "Three."),
        authors=("A", "B", "C"),
        glossary={"a: b": "c"},
    )


@pytest.mark.parametrize("text", LAYOUTS.values(), ids=LAYOUTS)
def test_any_layout_takes_the_change(tmp_path: Path, text: str):
    folder = laid_out(tmp_path, {**FILES, "key.yaml": text})
    key = renewed(read_key(folder))
    write_key(key, folder)

    assert replace(read_key(folder), digest="") == replace(canonical(key), digest="")


def test_an_entry_with_its_dash_on_a_line_of_its_own_takes_the_change(tmp_path: Path):
    text = FILES["labels.yaml"].replace("  - id: leafy\n    text", "  -\n    id: leafy\n    text")
    folder = laid_out(tmp_path, {**FILES, "labels.yaml": text})
    key = read_key(folder)
    new = replace(key, labels=(replace(key.labels[0], why="New."),))
    write_key(new, folder)

    assert read_key(folder).labels == new.labels


def test_a_comment_above_a_field_that_goes_stays_when_a_blank_line_parts_them(tmp_path: Path):
    text = FILES["taxa/alpha.yaml"].replace("size_mm", "# Measures by hand.\n\n# the type\nsize_mm")
    folder = laid_out(tmp_path, {**FILES, "taxa/alpha.yaml": text})
    key = read_key(folder)
    taxa = tuple(replace(t, size_mm=(None, None)) if t.id == "alpha" else t for t in key.taxa)
    write_key(replace(key, taxa=taxa), folder)

    after = (folder / "taxa" / "alpha.yaml").read_text("utf-8")
    assert "# Measures by hand.\n\nscores:" in after
    assert "the type" not in after


def test_a_comment_behind_a_value_that_becomes_a_block_moves_above_it(tmp_path: Path):
    text = FILES["taxa/alpha.yaml"].replace(
        "scores:", "hazard: {level: harmless}  # by hand\nscores:"
    )
    folder = laid_out(tmp_path, {**FILES, "taxa/alpha.yaml": text})
    key = read_key(folder)
    hazard = replace(key.taxon["alpha"].hazard, note="Bites.")
    taxa = tuple(replace(t, hazard=hazard) if t.id == "alpha" else t for t in key.taxa)
    write_key(replace(key, taxa=taxa), folder)

    after = (folder / "taxa" / "alpha.yaml").read_text("utf-8")
    assert "# by hand\nhazard:\n  level: harmless\n  note: Bites.\n" in after


def test_a_lead_that_changes_its_place_keeps_its_lines(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = read_key(folder)
    first, second = key.couplets
    turned = replace(second, leads=second.leads[::-1])
    write_key(replace(key, couplets=(first, turned)), folder)

    after = (folder / "couplets.yaml").read_text("utf-8").splitlines()
    before = FILES["couplets.yaml"].splitlines()
    assert after == [*before[:-2], before[-1], before[-2]]
