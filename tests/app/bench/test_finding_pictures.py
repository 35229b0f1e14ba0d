"""A picture goes straight onto a finding: pasted, dropped, seen large, taken off, undone."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent, QGuiApplication, QImage
from PySide6.QtWidgets import QApplication

from idkey.app.bench.finding_pictures import FindingPictures
from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.parts.arrivals import Arrivals
from idkey.app.parts.desk import Desk
from idkey.errors import IdKeyError
from idkey.model.case import Finding
from idkey.photo.shelf import PictureShelf

KEY = Qt.Key
SHAPE = Finding(character="sternum_shape", states=("pentagonal",))
COLOUR = Finding(character="telson_colour", states=("dark",))


@pytest.fixture
def shelf(tmp_path: Path) -> PictureShelf:
    return PictureShelf(tmp_path / "pictures")


@pytest.fixture
def bench(state: BenchState, desk: Desk, qtbot) -> Iterator[BenchView]:
    view = BenchView(state, desk)
    qtbot.addWidget(view)
    view.resize(1216, 800)
    state.observe(SHAPE)
    state.observe(COLOUR)
    with qtbot.waitExposed(view):
        view.show()
    view.activateWindow()
    yield view
    view.close_work()


@pytest.fixture
def pictures(
    bench: BenchView, state: BenchState, shelf: PictureShelf, desk: Desk
) -> Iterator[FindingPictures]:
    made = FindingPictures(bench, state, shelf=shelf, desk=desk)
    yield made
    made.close_work()


def photo(file: Path, colour: str) -> Path:
    exif = Image.Exif()
    exif[0x010F] = "a camera"
    Image.new("RGB", (80, 60), colour).save(file, exif=exif)
    return file


def current(bench: BenchView, row: int) -> None:
    bench.ledger.list.setFocus()
    bench.ledger.list.setCurrentIndex(bench.ledger.rows.index(row))


def kept(state: BenchState, character: str) -> tuple[str, ...]:
    finding = state.session.case.finding(character)
    return () if finding is None else finding.pictures


def test_a_dropped_file_is_kept_bare_and_shown_in_its_row(
    pictures: FindingPictures,
    bench: BenchView,
    state: BenchState,
    shelf: PictureShelf,
    tmp_path: Path,
    qtbot,
):
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(photo(tmp_path / "one.jpg", "red")))])
    strip = bench.ledger.list
    place = strip.visualRect(bench.ledger.rows.index(1)).center()
    strip.dropEvent(
        QDropEvent(
            QPointF(place),
            Qt.DropAction.CopyAction,
            mime,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
    )
    qtbot.waitUntil(lambda: bool(kept(state, "telson_colour")))
    (picture,) = kept(state, "telson_colour")

    assert kept(state, "sternum_shape") == ()
    assert bench.ledger.rows.rows[1].pictures == (picture,)
    assert "1 picture" in bench.ledger.rows.rows[1].spoken
    assert not shelf.image(picture).getexif()


def test_a_picture_is_pasted_seen_large_with_the_mouse_taken_off_and_brought_back(
    pictures: FindingPictures, bench: BenchView, state: BenchState, qtbot
):
    image = QImage(90, 70, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.blue)
    QGuiApplication.clipboard().setImage(image)
    current(bench, 0)
    qtbot.keyClick(bench.ledger.list, KEY.Key_V, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: bool(kept(state, "sternum_shape")))
    pasted = kept(state, "sternum_shape")
    qtbot.waitUntil(lambda: bench.ledger.list.visualRect(bench.ledger.rows.index(0)).width() > 200)
    corner = bench.ledger.list.picture_place(bench.ledger.rows.index(0))
    qtbot.mouseClick(bench.ledger.list.viewport(), Qt.MouseButton.LeftButton, pos=corner)
    large = (pictures.viewer.isVisible(), pictures.viewer.picture, pictures.viewer.accessibleName())
    qtbot.keyClick(pictures.viewer, KEY.Key_Delete)
    bare = kept(state, "sternum_shape")
    state.undo()

    assert large[:2] == (True, pasted[0])
    assert large[2].startswith("Sternum shape: Five-sided")
    assert bare == ()
    assert pictures.viewer.isHidden()
    assert QApplication.focusWidget() is bench.ledger.list
    assert kept(state, "sternum_shape") == pasted


def test_a_correction_keeps_the_pictures_and_a_case_left_meanwhile_gets_its_own(
    pictures: FindingPictures, bench: BenchView, state: BenchState, tmp_path: Path, qtbot
):
    here = state.session.case.id
    files = (photo(tmp_path / "a.jpg", "red"), tmp_path / "missing.jpg")
    with qtbot.waitSignal(pictures.failed) as failed:
        pictures.take("sternum_shape", Arrivals(files))
        state.new_case()
    state.open_case(here)
    state.observe(Finding(character="sternum_shape", states=("triangular",)))
    finding = state.session.case.finding("sternum_shape")

    assert isinstance(failed.args[0], IdKeyError)
    assert finding is not None
    assert finding.states == ("triangular",)
    assert len(finding.pictures) == 1


def test_a_picture_whose_file_is_gone_says_so(
    pictures: FindingPictures, bench: BenchView, state: BenchState, qtbot
):
    state.add_pictures(state.session.case.id, "sternum_shape", ("0" * 64,))
    current(bench, 0)
    qtbot.keyClick(bench.ledger.list, KEY.Key_P)

    qtbot.waitUntil(lambda: "no longer in" in pictures.viewer.trouble)
