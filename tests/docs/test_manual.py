"""The manual can be built, reached page by page, read in the program, and does what it says."""

import os
import re
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
import yaml
from PySide6.QtCore import Qt, QUrl
from PySide6.QtSvg import QSvgRenderer

from idkey import places
from idkey.app.parts.desk import Desk
from idkey.app.window.about import AboutDialog, parts
from idkey.app.window.help_view import HelpView
from idkey.cli.commands import main
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.formats.folder import check_key, read_key
from idkey.store.book import Store
from tests.docs.command_page import page

ROOT = Path(__file__).parents[2]
DOCS = ROOT / "docs"
LINK = re.compile(r"\]\(([^)#:\s]+)(?:#[^)]*)?\)")
WRITTEN = [
    *(DOCS / name for name in ("tutorial.md", "tutorial-key.md", "formats.md")),
    *sorted((DOCS / "howto").glob("*.md")),
]
"""Pages whose commands are for the reader to try."""


def blocks(file: Path, language: str) -> list[str]:
    """Code of one language on a page."""
    return re.findall(rf"```{language}\n(.*?)```", file.read_text("utf-8"), re.DOTALL)


def commands() -> list[tuple[str, list[str]]]:
    """Lines that run `idkey-cli`, as page and words."""
    return [
        (file.stem, words)
        for file in WRITTEN
        for block in blocks(file, "sh")
        for line in block.replace("\\\n", " ").splitlines()
        if "idkey-cli" in (words := shlex.split(line))
    ]


@pytest.mark.slow
def test_the_manual_is_built_without_a_warning(tmp_path: Path):
    command = [sys.executable, "-m", "mkdocs", "build", "--strict", "--site-dir", str(tmp_path)]

    built = subprocess.run(
        [*command, "-f", ".docs/mkdocs.yml"],
        cwd=ROOT,
        env={**os.environ, "NO_MKDOCS_2_WARNING": "1"},
        capture_output=True,
        text=True,
        check=False,
    )

    assert built.returncode == 0, built.stderr
    assert (tmp_path / "howto" / "check-a-label" / "index.html").is_file()


def test_every_page_is_reached_from_the_first_one():
    seen: set[Path] = set()
    waiting = [DOCS / "index.md"]
    while waiting:
        file = waiting.pop()
        if file in seen or file.suffix != ".md":
            continue
        seen.add(file)
        links = LINK.findall(file.read_text("utf-8"))
        waiting.extend((file.parent / link).resolve() for link in links)

    assert {file.relative_to(DOCS).as_posix() for file in DOCS.rglob("*.md")} == {
        file.relative_to(DOCS).as_posix() for file in seen
    }


def test_every_page_of_the_site_is_in_its_list():
    text = (ROOT / ".docs" / "mkdocs.yml").read_text("utf-8")

    listed = re.findall(r"- (\S+\.md)$", text, re.MULTILINE)

    assert sorted(listed) == sorted(f.relative_to(DOCS).as_posix() for f in DOCS.rglob("*.md"))


@pytest.mark.parametrize(("where", "words"), commands(), ids=lambda part: str(part)[:40])
def test_a_command_line_of_the_manual_runs(
    where: str,
    words: list[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
):
    if where == "tutorial-key":
        garden_key(tmp_path)
    if "records" in words:
        with Store.open(places.data_folder() / "records.sqlite") as book:
            book.save(sample_case(read_key(places.keys_folder() / SAMPLE_KEY)), None)
    arguments = [str(ROOT / w) if w.startswith("keys/") else w for w in after_the_name(words)]
    monkeypatch.chdir(tmp_path)

    code = main(arguments)

    assert code in (0, 1)
    assert capsys.readouterr().err == ""


def after_the_name(words: list[str]) -> list[str]:
    """The arguments of a command line, without what stands before them."""
    return words[words.index("idkey-cli") + 1 :]


def garden_key(folder: Path) -> Path:
    """The copy that the tutorial makes."""
    copy = folder / "garden-leaves"
    shutil.copytree(places.keys_folder() / "kitchen-leaves", copy)
    file = copy / "key.yaml"
    renamed = re.sub(r"^id: .*", "id: garden-leaves", file.read_text("utf-8"), flags=re.MULTILINE)
    file.write_text(renamed, "utf-8")
    return copy


def test_the_mistake_of_the_tutorial_is_found_and_mended_as_it_says(tmp_path: Path):
    copy = garden_key(tmp_path)
    file = copy / "taxa" / "coriander.yaml"
    text = file.read_text("utf-8")
    file.write_text(text.replace("tooth_form: {shows: [rounded]", "tooth_form: {shows: [round]"))

    _, problems = check_key(copy)

    (said,) = blocks(DOCS / "tutorial-key.md", "text")
    assert [str(p).partition(": ")[2] for p in problems] == [said.strip()]


def test_the_python_of_the_formats_page_runs(tmp_path: Path):
    (tmp_path / "keys").symlink_to(places.keys_folder(), target_is_directory=True)
    (code,) = blocks(DOCS / "formats.md", "python")

    ended = subprocess.run(
        [sys.executable, "-c", code],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=False,
    )

    assert ended.returncode == 0, ended.stderr


def test_scores_shown_to_authors_are_yaml_of_the_right_shape():
    (block,) = blocks(DOCS / "howto" / "write-a-key.md", "yaml")

    scores = yaml.safe_load(block)

    assert set(scores) == {"telson_colour", "total_length"}
    assert scores["total_length"]["n"] == 15


def test_the_page_of_the_command_line_is_the_commands_own_help():
    written = (DOCS / "command-line.md").read_text("utf-8")

    assert written == page(), "run: python -m tests.docs.command_page docs/command-line.md"


def test_error_rates_told_are_those_that_were_measured():
    told = (DOCS / "verdicts.md").read_text("utf-8")
    measured = (DOCS / "truth.md").read_text("utf-8")
    shares = re.findall(r"([\d.]+) % of ([\d,]+)\D*up to ([\d.]+) %", told)
    none = re.findall(r"none of ([\d,]+) \(up to ([\d.]+) %\)", told)
    rows = [rf"{p} % \(\d+/{n.replace(',', '')}, up to {up}\)" for p, n, up in shares]
    rows += [rf"0\.00 % \(0/{n.replace(',', '')}, up to {up}\)" for n, up in none]

    assert len(rows) == 4
    assert [row for row in rows if not re.search(row, measured)] == []


@pytest.mark.usefixtures("qapp")
def test_the_picture_of_the_layers_names_every_part_of_the_program():
    text = (DOCS / "architecture.svg").read_text("utf-8")

    renderer = QSvgRenderer(str(DOCS / "architecture.svg"))

    own = {f.stem for f in (ROOT / "idkey").iterdir() if not f.name.startswith("_")}
    assert renderer.isValid()
    assert {name for name in own if not re.search(rf"\b{name}\b", text)} == set()


def test_a_link_of_the_manual_is_followed_inside_the_program(desk: Desk, qtbot):
    manual = HelpView(places.docs_folder(), desk)
    qtbot.addWidget(manual)

    manual.text.anchorClicked.emit(QUrl("howto/check-a-label.md"))
    there = manual.page
    manual.text.anchorClicked.emit(QUrl("../verdicts.md"))
    on = manual.page
    qtbot.mouseClick(manual.back, Qt.MouseButton.LeftButton)

    assert (there, on, manual.page) == (
        "howto/check-a-label.md",
        "verdicts.md",
        "howto/check-a-label.md",
    )
    assert "Check a label" in manual.text.toPlainText()


@pytest.mark.parametrize("link", ["../README.md", "file:///etc/hostname", "missing.md"])
def test_a_link_out_of_the_manual_is_not_followed(desk: Desk, qtbot, link: str):
    manual = HelpView(places.docs_folder(), desk)
    qtbot.addWidget(manual)

    manual.text.anchorClicked.emit(QUrl(link))

    assert manual.page == "index.md"


def test_about_names_version_and_licence_of_every_library_in_use(desk: Desk, qtbot):
    dialog = AboutDialog(desk)
    qtbot.addWidget(dialog)

    text = dialog.text.toPlainText()

    names = {part.name.lower().replace("-", "_") for part in parts()}
    assert {"pyside6_essentials", "shiboken6", "sqlalchemy", "numpy", "pillow"} - names == set()
    assert [part.name for part in parts() if not part.licence or part.version not in text] == []
    assert "SIL Open Font License" in text
    assert "LGPL" in text
