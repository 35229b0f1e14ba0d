"""A picture of every screen, light and dark, for people to look at."""

from collections.abc import Callable, Iterator
from itertools import pairwise

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from idkey.app.parts.colours import DARK, LIGHT
from idkey.app.parts.page import Page
from idkey.app.parts.theme import Scheme
from idkey.app.workshop.shelf import Shelf
from idkey.engine.sample import SAMPLE_KEY
from tests.stories.conftest import CTRL, KEY, Keeper

pytestmark = pytest.mark.slow

DIALOGS = {"rationale", "plates"}


def screens(keeper: Keeper) -> Iterator[tuple[str, QImage]]:
    """Go through the program as a keeper would, with a stop at every screen."""
    middle = keeper.bench.middle
    yield "start", keeper.keeps("start")
    keeper.types("Asian forest scorpion")
    keeper.presses(KEY.Key_Return)
    yield "label", keeper.keeps("label")
    keeper.presses(KEY.Key_F2)
    keeper.presses(KEY.Key_F3)
    yield "bench", keeper.keeps("bench")
    middle.ask("metasoma_pct_male")
    keeper.types("48")
    yield "number", keeper.keeps("number")
    keeper.presses(KEY.Key_F5)
    yield "mixups", keeper.keeps("mixups")
    keeper.presses(KEY.Key_F4)
    yield "reasons", keeper.keeps("reasons")
    middle.open_taxon("heterometrus_silenus")
    yield "taxon", keeper.keeps("taxon")
    middle.open_comparison(("heterometrus_silenus", "pandinus_imperator", "heterometrus_cimrmani"))
    yield "comparison", keeper.keeps("comparison")
    keeper.presses(KEY.Key_Escape)
    keeper.presses(KEY.Key_F7)
    yield "couplets", keeper.keeps("couplets")
    keeper.presses(KEY.Key_F7)
    keeper.presses(KEY.Key_K, CTRL)
    keeper.types("tel")
    yield "palette", keeper.keeps("palette")
    keeper.presses(KEY.Key_Escape)
    keeper.presses(KEY.Key_R, CTRL)
    dialog = QApplication.activeModalWidget()
    assert dialog is not None
    yield "rationale", keeper.keeps("rationale", dialog)
    dialog.close()
    yield from places_of(keeper)


def places_of(keeper: Keeper) -> Iterator[tuple[str, QImage]]:
    """The other places of the program, each once what it reads is there."""
    program, rooms = keeper.program, keeper.program.window.rooms
    program.window.commands.run("plates")
    plates = QApplication.activeModalWidget()
    assert plates is not None
    yield "plates", keeper.keeps("plates", plates)
    plates.close()
    program.window.commands.run("records")
    keeper.qtbot.waitUntil(lambda: not rooms.records.busy, timeout=60_000)
    yield "records", keeper.keeps("records")
    program.window.commands.run("drill")
    keeper.qtbot.waitUntil(lambda: not program.drill.busy, timeout=60_000)
    yield "drill", keeper.keeps("drill")
    shelf = Shelf.usual(program.folders.data)
    own = shelf.own / "own-scorpions"
    rooms.edit_key(own if own.is_dir() else shelf.copy(shelf.shipped / SAMPLE_KEY, own.name))
    keeper.qtbot.waitUntil(lambda: not program.workshop.busy, timeout=60_000)
    yield "workshop", keeper.keeps("workshop")
    program.window.commands.run("library")
    keeper.qtbot.waitUntil(lambda: not program.library.busy, timeout=60_000)
    yield "library", keeper.keeps("library")


@pytest.mark.parametrize("scheme", [Scheme.LIGHT, Scheme.DARK], ids=["light", "dark"])
def test_every_screen_shows_something_of_its_own_in_its_colours(
    opens: Callable[[], Keeper], scheme: Scheme
):
    keeper = opens()
    keeper.start.theme.choose(scheme, 100)
    keeper.suffix = f"-{scheme.value}"
    seen = dict(screens(keeper))
    keeper.start.theme.choose(Scheme.SYSTEM, 100)

    ground = (DARK if scheme is Scheme.DARK else LIGHT).ground.lower()
    assert len(seen) == 16
    assert all(one != other for one, other in pairwise(seen.values()))
    assert {image.pixelColor(70, 400).name() for n, image in seen.items() if n not in DIALOGS} == {
        ground
    }


@pytest.mark.parametrize("size", [(1000, 700), (1280, 800), (2560, 1440)])
def test_the_bench_needs_no_scrolling_at_usual_sizes(keeper: Keeper, size: tuple[int, int]):
    keeper.start.frame.resize(*size)
    keeper.presses(KEY.Key_F2)
    keeper.settles()

    assert keeper.bench.middle.page is Page.QUESTION
    assert keeper.bench.overflow == 0


def test_another_look_leaves_one_in_the_place_where_one_is(keeper: Keeper):
    theme, program = keeper.start.theme, keeper.program
    program.window.commands.run("workshop")
    theme.choose(theme.scheme, 110)

    assert program.window.rooms.place == "workshop"
    theme.choose(theme.scheme, 100)
