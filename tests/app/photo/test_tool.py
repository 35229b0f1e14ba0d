"""The photo tool on a real window: by mouse, by keys alone, with whole and broken pictures."""

import math
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PIL import Image, ImageDraw
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import (
    QDragEnterEvent,
    QDropEvent,
    QGuiApplication,
    QImage,
    QMouseEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QDialog,
    QLineEdit,
    QListView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from idkey.app.parts.desk import Desk
from idkey.app.photo import tool as photo_tool
from idkey.app.photo.sketch import Pen, Ref
from idkey.app.photo.tool import PhotoTool
from idkey.engine.measure import Lie
from idkey.engine.strokes import Edge
from idkey.engine.tilt import Tilt
from idkey.model.case import Finding
from idkey.model.character import Look
from idkey.model.key import Key
from idkey.photo.marks import Neutral, Point, marks_of
from idkey.photo.shelf import PictureShelf
from tests.photo.pictures import put, saved

LENGTH, RATIO, COUNT = "total_length", "chela_lw_male", "pectinal_teeth_male"
COLOUR, SURFACE = "telson_colour", "manus_surface"


@pytest.fixture
def shelf(tmp_path: Path) -> PictureShelf:
    return PictureShelf(tmp_path / "pictures")


@pytest.fixture
def open_tool(
    key: Key, desk: Desk, shelf: PictureShelf, qtbot: QtBot
) -> Iterator[Callable[..., PhotoTool]]:
    """Opens tools on characters, at 1000 by 700, and closes them."""
    made: list[PhotoTool] = []

    def opened(character: str, *ids: str, earlier: Finding | None = None) -> PhotoTool:
        tool = PhotoTool(key, key.character[character], desk, shelf=shelf, ids=ids)
        qtbot.addWidget(tool)
        tool.resize(1000, 700)
        tool.show()
        tool.activateWindow()
        qtbot.waitUntil(tool.isActiveWindow)
        tool.resume(earlier)
        settle(tool, qtbot)
        made.append(tool)
        return tool

    yield opened
    for tool in made:
        tool.close_work()


def settle(tool: PhotoTool, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not tool.state.busy and not tool.other.busy)


def leaf() -> Image.Image:
    """A bar of 600 by 200 pixels and a ruler of 400 on a light table, with a grey card."""
    image = Image.new("RGB", (1200, 900), "#d8d2c4")
    draw = ImageDraw.Draw(image)
    draw.rectangle((300, 200, 900, 400), fill="#7a3220")
    draw.rectangle((300, 700, 700, 760), fill="#ffffff", outline="#000000")
    draw.rectangle((950, 600, 1150, 800), fill="#767676")
    return image


def click(tool: PhotoTool, qtbot: QtBot, *points: Point) -> None:
    for point in points:
        qtbot.mouseClick(tool.canvas, Qt.MouseButton.LeftButton, pos=place(tool, point))


def place(tool: PhotoTool, point: Point) -> QPoint:
    assert tool.canvas.hand is not None
    x, y = tool.canvas.hand.sight.on_screen(point)
    return QPoint(round(x), round(y))


def drag(tool: PhotoTool, qtbot: QtBot, start: Point, end: Point) -> None:
    left, canvas = Qt.MouseButton.LeftButton, tool.canvas
    qtbot.mousePress(canvas, left, pos=place(tool, start))
    moved = QMouseEvent(
        QEvent.Type.MouseMove,
        QPointF(place(tool, end)),
        QPointF(canvas.mapToGlobal(place(tool, end))),
        Qt.MouseButton.NoButton,
        left,
        Qt.KeyboardModifier.NoModifier,
    )
    QGuiApplication.sendEvent(canvas, moved)
    qtbot.mouseRelease(canvas, left, pos=place(tool, end))


def keys(tool: PhotoTool, qtbot: QtBot, *pressed: Qt.Key) -> None:
    for key in pressed:
        qtbot.keyClick(tool.canvas, key)


def heard(tool: PhotoTool) -> list[Finding]:
    found: list[Finding] = []
    tool.measured.connect(found.append)
    return found


def press(widget: QAbstractButton, qtbot: QtBot) -> None:
    qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)


def test_a_ratio_is_measured_with_four_clicks(open_tool, shelf, qtbot):
    picture = shelf.add_bytes(saved(leaf()))
    tool = open_tool(RATIO, picture.id)
    found = heard(tool)

    click(tool, qtbot, (300, 300), (900, 300), (600, 200), (600, 400))
    press(tool.result.take, qtbot)

    (finding,) = found
    assert finding.character == RATIO
    assert finding.value == pytest.approx(3.0, abs=0.08)
    assert finding.uncertainty is not None
    assert 0.005 < finding.uncertainty < 0.08
    assert finding.look is Look.ABOVE
    assert finding.pictures == (picture.id,)
    marks = marks_of(finding.marks)
    assert (len(marks.lines), len(marks.others)) == (1, 1)


def test_a_length_needs_a_ruler_and_its_length(open_tool, shelf, qtbot):
    tool = open_tool(LENGTH, shelf.add_bytes(saved(leaf())).id)
    found = heard(tool)

    click(tool, qtbot, (300, 300), (900, 300), (300, 730), (700, 730))
    assert not tool.result.take.isEnabled()
    assert tool.result.number.text() == "How long is the ruler line?"
    qtbot.keyClicks(tool.panel.ruler, "40")
    qtbot.keyClicks(tool.panel.ruler_error, "0,2")
    press(tool.result.take, qtbot)

    (finding,) = found
    assert finding.value == pytest.approx(60, abs=1.5)
    assert marks_of(finding.marks).ruler == 40
    assert marks_of(finding.marks).ruler_error == 0.2


def test_several_repeats_go_round_from_line_to_line(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)

    for down, across in ((230, 420), (300, 560), (370, 760)):
        click(tool, qtbot, (300, down), (900, down), (across, 200), (across, 400))

    marks = tool.state.session.sketch.marks
    assert (len(marks.lines), len(marks.others)) == (3, 3)
    assert tool.state.session.problem is None, marks
    assert tool.state.session.found.click_px < 2


def test_keys_alone_measure_a_ratio(open_tool, shelf, qtbot):
    """Arrow keys steer, Space puts, N picks a point, arrows nudge it, Ctrl+Enter takes it."""
    key = Qt.Key
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    found = heard(tool)
    assert tool.canvas.hasFocus()

    keys(tool, qtbot, key.Key_Space, *[key.Key_Right] * 24, key.Key_Space)
    keys(tool, qtbot, *[key.Key_Left] * 10, key.Key_Space, *[key.Key_Down] * 8, key.Key_Space)
    before = tool.state.session.sketch.marks.lines[0][0]
    keys(tool, qtbot, key.Key_N, key.Key_Left, key.Key_Left, key.Key_Up, key.Key_Space)
    qtbot.keyClick(tool.canvas, key.Key_Return, Qt.KeyboardModifier.ControlModifier)

    (finding,) = found
    marks = marks_of(finding.marks)
    assert marks.lines[0][0] == pytest.approx((before[0] - 2, before[1] - 1), abs=0.02)
    assert finding.value == pytest.approx(3.0, abs=0.1)


def test_a_point_is_dragged_to_where_it_belongs(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    click(tool, qtbot, (300, 300), (800, 300))

    drag(tool, qtbot, (800, 300), (900, 320))

    (line,) = tool.state.session.sketch.marks.lines
    assert line[1] == pytest.approx((900, 320), abs=2)
    assert tool.state.session.sketch.chosen == Ref(Pen.LINE, 0, 1)


def test_dragging_the_picture_pans_and_draws_nothing(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    for _ in range(5):
        press(tool.bar.larger, qtbot)
    before = tool.canvas.hand.sight

    drag(tool, qtbot, (600, 450), (560, 420))

    assert tool.canvas.hand.sight.centre != before.centre
    assert tool.canvas.hand.sight.scale == before.scale
    assert tool.state.session.sketch.marks.empty


def test_the_wheel_zooms_about_the_mouse(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    there = place(tool, (700, 300))

    turn = QWheelEvent(
        QPointF(there), QPointF(there), QPoint(), QPoint(0, 360), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QGuiApplication.sendEvent(tool.canvas, turn)

    sight = tool.canvas.hand.sight
    assert sight.zoom == pytest.approx(1.25**3)
    assert math.dist(sight.on_screen((700, 300)), (there.x(), there.y())) < 2
    press(tool.bar.whole, qtbot)
    assert tool.canvas.hand.sight.zoom == pytest.approx(1)


def test_a_line_with_joints_ends_with_a_double_click(open_tool, shelf, qtbot):
    tool = open_tool(LENGTH, shelf.add_bytes(saved(leaf())).id)
    tool.panel.bent.click()

    click(tool, qtbot, (300, 300), (600, 200), (900, 300))
    qtbot.mouseDClick(tool.canvas, Qt.MouseButton.LeftButton, pos=place(tool, (900, 300)))

    (line,) = tool.state.session.sketch.marks.lines
    assert len(line) == 3


def test_what_the_person_says_about_the_picture_changes_the_uncertainty(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    click(tool, qtbot, (300, 300), (900, 300), (600, 200), (600, 400))
    flat = tool.state.session.found.uncertainty

    for segments, number in ((tool.panel.tilt, 2), (tool.panel.lie, 1), (tool.panel.edge, 2)):
        press(segments.findChildren(QAbstractButton)[number], qtbot)

    marks = tool.state.session.sketch.marks
    assert (marks.tilt, marks.lie, marks.edge) == (Tilt.CLEAR, Lie.APART, Edge.SOFT)
    assert tool.state.session.found.uncertainty > 5 * flat


def test_steps_are_taken_back_and_done_again(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    click(tool, qtbot, (300, 300), (900, 300), (600, 200), (600, 400))

    press(tool.bar.undo, qtbot)
    assert tool.state.session.sketch.marks.others == ()
    press(tool.bar.redo, qtbot)
    assert len(tool.state.session.sketch.marks.others) == 1


def test_things_are_counted_by_clicks_and_one_may_be_doubtful(open_tool, shelf, qtbot):
    tool = open_tool(COUNT, shelf.add_bytes(saved(leaf())).id)
    found = heard(tool)

    click(tool, qtbot, (350, 300), (450, 300), (550, 300), (650, 300))
    keys(tool, qtbot, Qt.Key.Key_D)
    press(tool.result.take, qtbot)

    (finding,) = found
    assert finding.value == 3.5
    assert finding.uncertainty == 0.5
    assert [spot.doubtful for spot in marks_of(finding.marks).spots] == [False] * 3 + [True]


def test_counting_works_by_buttons_too(open_tool, shelf, qtbot):
    tool = open_tool(COUNT, shelf.add_bytes(saved(leaf())).id)
    click(tool, qtbot, (350, 300), (450, 300))
    doubtful, back = tool.panel.findChildren(QAbstractButton)

    press(doubtful, qtbot)
    assert tool.state.session.found.value == 1.5
    press(back, qtbot)
    assert tool.state.session.found.value == 1


def test_numbers_choose_the_line_and_c_the_joints(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)

    keys(tool, qtbot, Qt.Key.Key_2, Qt.Key.Key_C)

    assert tool.state.session.sketch.pen is Pen.OTHER
    assert tool.state.session.sketch.bent
    keys(tool, qtbot, Qt.Key.Key_1)
    assert tool.state.session.sketch.pen is Pen.LINE


def test_a_shelf_that_cannot_be_written_is_said_and_the_marks_stay(
    open_tool, shelf, tmp_path, qtbot
):
    tool = open_tool(COUNT, shelf.add_bytes(saved(leaf())).id)
    shelf.folder = put(tmp_path, "no-folder", b"")

    click(tool, qtbot, (350, 300))

    assert "cannot be kept" in tool.notice.text
    assert len(tool.state.session.sketch.marks.spots) == 1


def test_a_colour_is_a_suggestion_and_the_person_names_the_state(open_tool, shelf, qtbot):
    tool = open_tool(COLOUR, shelf.add_bytes(saved(leaf(), "PNG")).id)
    found = heard(tool)

    drag(tool, qtbot, (400, 250), (600, 350))
    press(tool.panel.pens.findChildren(QAbstractButton)[1], qtbot)
    drag(tool, qtbot, (980, 640), (1120, 760))
    settle(tool, qtbot)

    assert tool.state.session.looked.suggestions[0].state.id == "reddish"
    assert "Reddish" in tool.panel.said.text()
    assert found == []  # nothing is noted by itself
    assert not tool.strip.note.isEnabled()
    press(tool.strip.tiles[1], qtbot)
    press(tool.strip.note, qtbot)
    (finding,) = found
    assert finding.states == ("reddish",)
    assert finding.value is None
    assert marks_of(finding.marks).patch is not None


def test_another_reference_and_a_fresh_moult_are_told_to_the_colour(open_tool, shelf, qtbot):
    tool = open_tool(COLOUR, shelf.add_bytes(saved(leaf())).id)
    drag(tool, qtbot, (400, 250), (600, 350))
    press(tool.panel.pens.findChildren(QAbstractButton)[1], qtbot)
    drag(tool, qtbot, (980, 640), (1120, 760))

    tool.panel.moulted.click()
    tool.panel.reference.setCurrentIndex(2)
    tool.panel.reference.activated.emit(2)
    settle(tool, qtbot)

    assert tool.state.session.sketch.marks.reference is Neutral.OTHER
    assert "freshly moulted" in tool.panel.warned.text()
    assert "lightness is left open" in tool.panel.warned.text()


def test_a_surface_stands_beside_the_drawn_states_and_a_flat_patch_is_not_judged(
    open_tool, shelf, qtbot
):
    tool = open_tool(SURFACE, shelf.add_bytes(saved(leaf())).id)
    found = heard(tool)

    drag(tool, qtbot, (20, 500), (180, 660))
    settle(tool, qtbot)

    assert "cannot show a fine surface" in tool.panel.said.text()
    assert len(tool.strip.tiles) == 7
    assert all(tile.picture is not None for tile in tool.strip.tiles)
    keys(tool, qtbot, Qt.Key.Key_1, Qt.Key.Key_4)
    qtbot.keyClick(tool.canvas, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    (finding,) = found
    assert finding.states == ("smooth", "rounded_granules")


def test_a_file_that_is_dropped_is_kept_and_shown(open_tool, shelf, tmp_path, qtbot):
    tool = open_tool(RATIO)
    assert tool.state.session.loaded is None
    file = put(tmp_path, "animal.jpg", saved(leaf()))
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(file))])

    left, plain = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    copy = Qt.DropAction.CopyAction
    enter = QDragEnterEvent(QPoint(9, 9), copy, mime, left, plain)
    QGuiApplication.sendEvent(tool, enter)
    assert enter.isAccepted()
    QGuiApplication.sendEvent(tool, QDropEvent(QPointF(9, 9), copy, mime, left, plain))
    settle(tool, qtbot)

    (picture_id,) = shelf.ids()
    assert tool.state.session.shown == picture_id
    assert tool.thumbs.rows.rowCount() == 1
    assert file.exists()


def test_a_picture_is_pasted(open_tool, qtbot):
    tool = open_tool(RATIO)
    image = QImage(300, 200, QImage.Format.Format_RGB32)
    image.fill("#884422")
    QGuiApplication.clipboard().setImage(image)

    qtbot.keyClick(tool.canvas, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    settle(tool, qtbot)

    assert tool.state.session.loaded.image.size == (300, 200)
    assert tool.state.session.loaded.picture.media_type == "image/png"


def test_a_file_that_is_no_picture_is_refused_in_words_and_nothing_is_lost(
    open_tool, shelf, tmp_path, qtbot
):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    click(tool, qtbot, (300, 300), (900, 300))

    tool.state.add_files((put(tmp_path, "notes.txt", b"no picture"),))
    settle(tool, qtbot)

    assert "notes.txt is not a picture" in tool.notice.text
    assert len(tool.state.session.sketch.marks.lines) == 1
    assert tool.state.session.loaded is not None


def test_a_missing_picture_is_shown_as_missing(open_tool, shelf, qtbot):
    whole, lost = shelf.add_bytes(saved(leaf())), "0" * 64

    tool = open_tool(RATIO, whole.id, lost)

    assert "missing" in tool.canvas.empty_words
    assert "no longer in" in tool.notice.text
    model = tool.thumbs.model()
    tip = model.data(model.index(1, 0), Qt.ItemDataRole.ToolTipRole)
    assert tip == "Picture 2: its file is missing"
    tool.thumbs.setCurrentIndex(model.index(0, 0))
    settle(tool, qtbot)
    assert tool.state.session.loaded is not None
    assert tool.notice.text == ""


def test_marks_that_were_not_noted_are_there_again(open_tool, shelf, qtbot):
    picture = shelf.add_bytes(saved(leaf()))
    first = open_tool(COUNT, picture.id)
    click(first, qtbot, (350, 300), (450, 300))
    drawn = first.state.session.sketch.marks.spots

    again = open_tool(COUNT, picture.id)

    spots = again.state.session.sketch.marks.spots
    assert [(spot.x, spot.y) for spot in spots] == [
        (round(spot.x, 2), round(spot.y, 2)) for spot in drawn
    ]
    assert len(spots) == 2


def test_the_marks_of_an_earlier_finding_come_back_with_their_picture(open_tool, shelf, qtbot):
    picture = shelf.add_bytes(saved(leaf()))
    tool = open_tool(COUNT, picture.id)
    found = heard(tool)
    click(tool, qtbot, (350, 300), (450, 300), (550, 300))
    press(tool.result.take, qtbot)

    again = open_tool(COUNT, earlier=found[0])

    assert shelf.draft(picture.id, COUNT) == ""
    assert again.state.session.shown == picture.id
    assert again.state.session.found.value == 3


def test_two_pictures_are_compared_with_one_zoom(open_tool, shelf, qtbot):
    one, other = shelf.add_bytes(saved(leaf())), shelf.add_bytes(saved(leaf().rotate(5)))
    tool = open_tool(SURFACE, one.id, other.id)

    press(tool.compare, qtbot)
    settle(tool, qtbot)
    press(tool.bar.larger, qtbot)

    assert tool.other.choice.itemText(0) == "Picture 1"
    mine, theirs = tool.canvas.hand.sight, tool.other.canvas.hand.sight
    assert theirs.zoom == pytest.approx(mine.zoom)
    assert theirs.centre == pytest.approx(mine.centre)
    tool.other.canvas.zoom(1.25)
    assert tool.canvas.hand.sight.zoom == pytest.approx(1.25**2)


def test_a_picture_is_compared_with_a_drawing(open_tool, shelf, qtbot):
    tool = open_tool(SURFACE, shelf.add_bytes(saved(leaf())).id)

    press(tool.compare, qtbot)

    names = [tool.other.choice.itemText(n) for n in range(tool.other.choice.count())]
    assert "Drawing: Smooth" in names
    assert tool.other.canvas.hand is not None


def test_the_magnifier_follows_the_mouse_and_can_be_put_away(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)
    qtbot.mouseMove(tool.canvas, place(tool, (600, 300)))
    with_loupe = tool.canvas.grab().toImage()

    keys(tool, qtbot, Qt.Key.Key_M)

    assert tool.canvas.grab().toImage() != with_loupe
    assert not tool.canvas.magnifies


@pytest.mark.parametrize("character", [LENGTH, RATIO, COUNT, COLOUR, SURFACE])
def test_every_control_has_a_name_for_readers_that_speak(open_tool, character: str):
    tool = open_tool(character)

    kinds = (QAbstractButton, QComboBox, QLineEdit, QListView)
    silent = [
        widget
        for widget in tool.findChildren(QWidget)
        if isinstance(widget, kinds)
        and not widget.parent().inherits("QComboBoxPrivateContainer")  # the popup of a list
        and not widget.accessibleName()
        and not (isinstance(widget, QAbstractButton) and widget.text())
        and widget.focusPolicy() != Qt.FocusPolicy.NoFocus
        and not widget.objectName().startswith("qt_")
        and not widget.isHidden()  # an offer that there is none of
    ]
    assert silent == []
    assert tool.canvas.accessibleName() == "Picture"


def test_the_canvas_says_where_the_crosshair_is(open_tool, shelf, qtbot):
    tool = open_tool(RATIO, shelf.add_bytes(saved(leaf())).id)

    keys(tool, qtbot, Qt.Key.Key_Space, Qt.Key.Key_Right)

    assert tool.canvas.accessibleDescription().endswith("1 points drawn.")


def test_the_tool_opens_over_a_window_and_closes_once_a_number_is_taken(
    key: Key, desk: Desk, shelf: PictureShelf, qtbot: QtBot
):
    window = QWidget()
    qtbot.addWidget(window)
    window.resize(900, 650)
    window.show()
    picture = shelf.add_bytes(saved(leaf()))

    tool = photo_tool.open_for(
        window, key, key.character[COUNT], shelf, desk=desk, ids=(picture.id,)
    )
    found = heard(tool)
    settle(tool, qtbot)
    dialog = tool.window()
    assert isinstance(dialog, QDialog)
    assert dialog.size() == window.size()
    click(tool, qtbot, (350, 300))
    keys(tool, qtbot, Qt.Key.Key_Return)
    assert dialog.isVisible()
    qtbot.keyClick(tool.canvas, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)

    assert not dialog.isVisible()
    assert found[0].value >= 1


def test_escape_leaves_once_nothing_is_open(
    key: Key, desk: Desk, shelf: PictureShelf, qtbot: QtBot
):
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    picture = shelf.add_bytes(saved(leaf()))
    tool = photo_tool.open_for(
        window, key, key.character[RATIO], shelf, desk=desk, ids=(picture.id,)
    )
    settle(tool, qtbot)
    dialog = tool.window()

    keys(tool, qtbot, Qt.Key.Key_Space, Qt.Key.Key_Escape)
    assert dialog.isVisible()
    keys(tool, qtbot, Qt.Key.Key_Escape)
    assert not dialog.isVisible()
