"""A key from a stranger is text in every place of the program, whatever it writes."""

from collections.abc import Callable, Iterator

import pytest

from idkey import places
from idkey.app.bench.session import Mode
from idkey.app.library.part import Part
from idkey.app.workshop.pages import workshop_pages
from idkey.formats.folder import read_key, write_key
from idkey.formats.package import write_package
from idkey.model.case import Claim, Finding
from tests.hardening.markup import MARKUP, marked_up, obeyed, shown
from tests.stories.conftest import Keeper

pytestmark = pytest.mark.slow

HOSTILE = "a-strangers-key"


@pytest.fixture
def keeper(opens: Callable[[], Keeper]) -> Keeper:
    """The program, with a stranger's key on the bench."""
    key = marked_up(read_key(places.keys_folder() / "kitchen-leaves"), HOSTILE)
    write_key(key, places.data_folder() / "keys" / HOSTILE)
    made = opens()
    made.program.state.new_case(HOSTILE)
    return made


def stops_on_bench(keeper: Keeper) -> Iterator[str]:
    state, middle = keeper.program.state, keeper.bench.middle
    yield "start"
    key = state.session.key
    state.claim(Claim(text=key.labels[0].text, supplier=MARKUP, origin=MARKUP))
    yield "label"
    for character in key.characters[:3]:
        middle.ask(character.id)
        yield f"question {character.id}"
        if character.states:
            first = character.states[0].id
            state.observe(Finding(character=character.id, states=(first,), note=MARKUP))
    middle.open_note()
    yield "note"
    middle.open_reasons()
    yield "reasons"
    middle.open_taxon(key.taxa[0].id)
    yield "taxon"
    middle.open_comparison(tuple(taxon.id for taxon in key.taxa[:3]))
    yield "comparison"
    middle.leave()
    middle.open_questions()
    yield "questions"
    middle.leave()
    state.go_by(Mode.COUPLETS)
    yield "couplets"


def stops_elsewhere(keeper: Keeper) -> Iterator[str]:
    program, rooms = keeper.program, keeper.program.window.rooms
    program.window.commands.run("records")
    keeper.qtbot.waitUntil(lambda: not rooms.records.busy, timeout=60_000)
    yield "records"
    program.window.commands.run("drill")
    program.drill.choose_key(HOSTILE)
    keeper.qtbot.waitUntil(lambda: not program.drill.busy, timeout=60_000)
    yield "drill"
    program.drill.start()
    keeper.qtbot.waitUntil(lambda: not program.drill.busy, timeout=60_000)
    yield "drill exercise"
    yield from stops_in_the_library(keeper)
    rooms.edit_key(places.data_folder() / "keys" / HOSTILE)
    keeper.qtbot.waitUntil(lambda: not program.workshop.busy, timeout=60_000)
    for page in workshop_pages():
        rooms.workshop.go_to(page.id)
        keeper.qtbot.waitUntil(lambda: not program.workshop.busy, timeout=60_000)
        yield f"workshop {page.id}"


def stops_in_the_library(keeper: Keeper) -> Iterator[str]:
    program, library = keeper.program, keeper.program.library
    program.window.commands.run("library")
    keeper.qtbot.waitUntil(lambda: not library.busy, timeout=60_000)
    view = program.window.rooms.library.view
    view.shelf.list.look_at(HOSTILE)
    yield "library"
    for part in (Part.VERSIONS, Part.JOIN):
        view.show_part(part)
        yield f"library {part}"
    file = places.data_folder() / '<b>odd<img src="planted.png">.idkey'
    write_package(program.state.session.key, file)
    view.take_in(file)
    keeper.qtbot.waitUntil(lambda: view.stack.currentWidget() is view.arrival, timeout=60_000)
    yield "arrival"


def test_no_place_obeys_the_markup_of_a_key(keeper: Keeper):
    found: dict[str, set[str]] = {}
    seen: dict[str, int] = {}
    for stops in (stops_on_bench, stops_elsewhere):
        for stop in stops(keeper):
            keeper.settles()
            found[stop] = set(obeyed(keeper.start.frame))
            seen[stop] = shown(keeper.start.frame)

        assert {stop: what for stop, what in found.items() if what} == {}
    assert min(seen.values()) > 0, seen
