"""The contact sheet, as a picture and as pages."""

import io
from pathlib import Path

import pytest
from click.testing import CliRunner
from PIL import Image
from pypdf import PdfReader
from PySide6.QtGui import QColor, QImage

from idkey.app.contact_sheet import GROUNDS, Paper, Picture, Row, image, main, rows
from idkey.formats.folder import read_key
from idkey.places import keys_folder

KEY = "large-dark-scorpions"
SPOT = (
    b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 3" width="4" height="3">'
    b'<path fill="#ff0000" d="M0 0h4v3h-4z"/></svg>'
)


@pytest.fixture(autouse=True)
def _application(qapp: object) -> None:
    """Painting needs an application."""


def _row(heading: str, count: int) -> Row:
    return Row(heading, tuple(Picture(SPOT, f"{heading} {i}") for i in range(count)))


def test_rows_share_a_shelf_as_far_as_they_fit():
    paper = Paper(columns=5)
    a, b, c, d = _row("a", 2), _row("b", 3), _row("c", 7), _row("d", 1)

    assert paper.shelves([a, b, c, d]) == ((a, b), (c,), (d,))
    assert paper.height((c,)) - paper.height((a, b)) == pytest.approx(140)


@pytest.mark.parametrize("ground", GROUNDS)
def test_every_picture_is_painted_in_its_place(ground: str):
    paper = Paper(tile=40, columns=3, ground=ground)

    sheet = image([_row("a", 2), _row("b", 4)], paper)

    red = QColor("#ff0000")
    places = [(x, y) for y in (50, 134, 184) for x in (30, 80, 130)]
    seen = [sheet.pixelColor(x, y) == red for x, y in places]
    assert seen == [True, True, False, True, True, True, True, False, False]


def test_a_photograph_of_the_author_is_painted_as_well():
    raw = io.BytesIO()
    Image.new("RGB", (40, 40), "#0000ff").save(raw, "PNG")
    row = Row("a", (Picture(raw.getvalue(), "Mine · Picture: Ana, CC0"),))

    sheet = image([row], Paper(tile=40, columns=1))

    assert sheet.pixelColor(30, 50) == QColor("#0000ff")
    assert sheet.pixelColor(13, 50) != QColor("#0000ff"), "it is not stretched"


@pytest.mark.slow
def test_one_command_makes_a_picture_of_every_drawing(tmp_path: Path):
    out = tmp_path / "sheet.png"

    ended = CliRunner().invoke(main, [str(out), "--key", KEY, "--tile", "60"])

    assert ended.exit_code == 0, ended.output
    drawn = sum(len(row.pictures) for row in rows(read_key(keys_folder() / KEY)))
    assert f"{drawn} drawings" in ended.output
    assert QImage(str(out)).width() == Paper(tile=60).width


@pytest.mark.slow
def test_one_command_makes_pages_of_every_drawing(tmp_path: Path):
    out = tmp_path / "sheet.pdf"

    ended = CliRunner().invoke(main, [str(out), "--key", KEY])

    assert ended.exit_code == 0, ended.output
    assert len(PdfReader(out).pages) >= 2


def test_a_sheet_that_cannot_be_written_is_told(tmp_path: Path):
    out = tmp_path / "nowhere" / "sheet.png"

    ended = CliRunner().invoke(main, [str(out), "--key", "kitchen-leaves", "--tile", "40"])

    assert ended.exit_code == 1
    assert "cannot be written. Choose a folder that exists." in ended.output
