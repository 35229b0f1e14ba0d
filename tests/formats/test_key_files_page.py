"""The page for authors shows a key that opens, and says what the program says."""

import re
from pathlib import Path

from idkey.formats.folder import check_key, read_key, write_key
from idkey.formats.schemas import schemas

PAGE = (Path(__file__).parents[2] / "docs" / "key-files.md").read_text("utf-8")


def example(folder: Path) -> Path:
    """The key on the page, laid out below `folder`."""
    key = folder / "little-geckos"
    (key / "taxa").mkdir(parents=True)
    for name, text in re.findall(r"^### (\S+\.yaml)\n\n```yaml\n(.*?)^```$", PAGE, re.M | re.S):
        (key / name).write_text(text, "utf-8")
    return key


def test_the_key_on_the_page_opens_and_only_warns_of_the_score_from_memory(tmp_path: Path):
    folder = example(tmp_path)
    key, problems = check_key(folder)

    assert key is not None
    assert len(list(folder.rglob("*.yaml"))) == 8
    assert (len(key.taxa), len(key.characters), len(key.scores)) == (2, 3, 7)
    assert (len(key.labels), len(key.couplets), len(key.checks)) == (1, 2, 1)
    assert [p.problem for p in problems] == ["The score of 'svl' names no source."]


def test_the_message_on_the_page_is_the_one_the_checker_gives(tmp_path: Path):
    folder = example(tmp_path)
    file = folder / "taxa" / "alpha_prima.yaml"
    file.write_text(file.read_text("utf-8").replace("{leaf: usually", "{clear: usually"), "utf-8")

    _, problems = check_key(folder)

    shown = str(problems[0]).replace(f"{tmp_path}/", "")
    assert shown in PAGE


def test_the_key_on_the_page_is_left_as_it_is_when_saved(tmp_path: Path):
    folder = example(tmp_path)
    before = {file: file.read_text("utf-8") for file in folder.rglob("*.yaml")}

    write_key(read_key(folder), folder)

    assert {file: file.read_text("utf-8") for file in folder.rglob("*.yaml")} == before


def test_the_schemas_the_page_speaks_of_are_there():
    named = set(re.findall(r"docs/schemas/(\S+\.json)", PAGE))

    assert named
    assert named <= set(schemas())
