"""A walk through every place of the window, page by page and dialog by dialog."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QDialog,
    QGraphicsView,
    QHeaderView,
    QLineEdit,
    QPlainTextEdit,
    QTextBrowser,
    QTextEdit,
    QWidget,
)

from idkey import places
from idkey.app.bench.state import BenchState
from idkey.app.library.part import Part as LibraryPart
from idkey.app.library.view import LibraryView
from idkey.app.records.case import Deed
from idkey.app.records.view import Part as RecordsPart
from idkey.app.window.window import Window
from idkey.app.workshop.trouble_dialog import TroubleDialog
from idkey.app.workshop.view import WorkshopView
from idkey.engine.sample import sample_case
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key
from idkey.formats.package import write_package
from idkey.report.recorded import judged
from idkey.store.drill_log import Exercise
from idkey.store.record import Sale, VerdictSummary

CONTROLS = (
    QAbstractButton,
    QLineEdit,
    QComboBox,
    QAbstractItemView,
    QTextBrowser,
    QTextEdit,
    QPlainTextEdit,
    QGraphicsView,
)

SHEET = "Taxon,Height (mm),Leaf\nHerba alba,120,round\nHerba nigra,80,long\n"
TILL = "Beleg;Summe\nLSV-1;65,00\nLSV-9;1\n"


@dataclass(frozen=True, slots=True)
class Stop:
    """A place that is in front.

    Attributes:
        name: What it is called in a test that fails.
        shown: The widget that is to be looked at.
    """

    name: str
    shown: QWidget


@dataclass(frozen=True, slots=True)
class Tour:
    """What the walk needs.

    Attributes:
        window: The window.
        state: The state of its bench.
        data: The folder of the person's own data, which the window was made with.
        settle: Waits until a condition holds, and until layouts have come to rest.
    """

    window: Window
    state: BenchState
    data: Path
    settle: Callable[[Callable[[], bool]], None]

    def all(self) -> Iterator[Stop]:
        """Every place, in the order of the rail."""
        yield from self.bench()
        yield from self.records()
        yield from self.drill()
        yield from self.workshop()
        yield from self.library()
        yield from self.dialogs()

    def bench(self) -> Iterator[Stop]:
        """The bench with each page of its middle, the plates and the photo tool."""
        window, middle = self.window, self.window.bench.middle
        yield self._stop("bench: start")
        self.state.put_on_bench(sample_case(self.state.session.key))
        self.settle(lambda: self.state.session.question is not None)
        yield self._stop("bench: question")
        middle.ask("total_length")
        yield self._stop("bench: number")
        middle.open_note()
        yield self._stop("bench: note")
        middle.open_reasons()
        yield self._stop("bench: reasons")
        middle.open_taxon("pandinus_imperator")
        yield self._stop("bench: taxon")
        middle.open_comparison(("pandinus_imperator", "heterometrus_spinifer"))
        yield self._stop("bench: comparison")
        middle.leave()
        window.commands.run("couplets")
        yield self._stop("bench: couplets")
        window.commands.run("couplets")
        window.commands.run("palette")
        yield self._stop("bench: palette")
        window.palette_view.hide()
        yield from self._over("bench: plates", lambda: window.commands.run("plates"))
        middle.ask("total_length")
        measure = window.rooms.photo.measure
        yield from self._over("photo: length", lambda: measure("total_length"))
        yield from self._over("photo: colour", lambda: measure("telson_colour"))

    def records(self) -> Iterator[Stop]:
        """The pages of the records, and what they ask."""
        store, key = self.state.keeper.store, self.state.session.key
        case = replace(sample_case(key), id="first-case", by="RB")
        store.save(case, VerdictSummary.of(judged(store, key, case)))
        store.attach_sale(case.id, Sale(number="LSV-1", buyer="buyer 12"))
        self.window.commands.run("records")
        view = self.window.rooms.records
        assert view is not None
        self.settle(lambda: not view.busy)
        for part in RecordsPart:
            view._turn_to(part)
            self.settle(lambda: not view.busy)
            yield self._stop(f"records: {part.value}")
        view._turn_to(RecordsPart.CASES)
        self.settle(lambda: not view.busy)
        page = view.cases.case
        for deed in Deed:
            if deed in (Deed.OPEN, Deed.WRITE, Deed.COPY, Deed.EXPORT):
                continue
            clicked = page.buttons[deed].click if deed in page.buttons else None
            click = clicked or page.actions_more[deed].trigger
            yield from self._over(f"records: {deed.value}", click)
        file = self.data / "till.csv"
        file.write_text(TILL, "utf-8")
        yield from self._over("records: columns", lambda: view.till.take_in(file))

    def drill(self) -> Iterator[Stop]:
        """The drill from the start to the figures."""
        self.window.commands.run("drill")
        view = self.window.rooms.drill
        assert view is not None
        state = view._state
        quiet = lambda: not state.busy and not state.drill.busy  # noqa: E731
        self.settle(quiet)
        yield self._stop("drill: nobody")
        state.choose_person("RB")
        self.settle(quiet)
        yield self._stop("drill: start")
        for exercise in Exercise:
            state.start(exercise)
            self.settle(quiet)
            yield self._stop(f"drill: {exercise.value}")
            state.leave_exercise()
            self.settle(quiet)
        state.open_progress()
        self.settle(quiet)
        yield self._stop("drill: progress")
        state.open_people()
        self.settle(quiet)
        yield self._stop("drill: everybody")

    def workshop(self) -> Iterator[Stop]:
        """The pages of the workshop over a copy of a key."""
        self.window.commands.run("workshop")
        view = self.window.rooms.workshop
        assert isinstance(view, WorkshopView)
        yield self._stop("workshop: start")
        keys = view._state.shelf.keys()
        entry = next(one for one in keys if one.folder == shipped())
        yield from self._over("workshop: copy", lambda: view.start.copy_asked.emit(entry))
        view.open(view._state.shelf.copy(shipped(), "my-leaves"))
        self.settle(lambda: view._state.editing is not None)
        for page in view._pages:
            view.go_to(page)
            self.settle(lambda: True)
            yield self._stop(f"workshop: {page}")
        error = IdKeyError("my-leaves could not be written.", "Make room.")
        trouble = TroubleDialog(error, self.window._desk.theme, self.window)
        yield from self._over("workshop: not saved", trouble.open)

    def library(self) -> Iterator[Stop]:
        """The pages of the library, a key and a sheet that arrive, and a new key."""
        self.window.commands.run("library")
        view = next(w for w in self.window.findChildren(LibraryView))
        state = view._state
        quiet = lambda: not state.busy  # noqa: E731
        self.settle(quiet)
        yield self._stop("library: keys")
        for part in (LibraryPart.VERSIONS, LibraryPart.JOIN):
            view.show_part(part)
            self.settle(quiet)
            yield self._stop(f"library: {part.value}")
        package = self.data / "leaves.idkey"
        write_package(read_key(shipped()), package)
        for name, file in (("arrival", package), ("sheet", self.data / "new.csv")):
            if name == "sheet":
                file.write_text(SHEET, "utf-8")
            view.show_part(LibraryPart.KEYS)
            view.take_in(file)
            self.settle(quiet)
            yield self._stop(f"library: {name}")

    def dialogs(self) -> Iterator[Stop]:
        """What stands over any place."""
        self.window.commands.run("bench")
        yield from self._over("manual", lambda: self.window.commands.run("manual"))
        yield from self._over("about", lambda: self.window.commands.run("about"))
        yield from self._over("rationale", lambda: self.window.commands.run("rationale"))

    def _stop(self, name: str) -> Stop:
        self.settle(lambda: True)
        return Stop(name, self.window)

    def _over(self, name: str, opening: Callable[[], object]) -> Iterator[Stop]:
        """Open something that stands over the window, and put it away afterwards."""
        before = set(_over_window(self.window))
        opening()
        found: list[QWidget] = []

        def there() -> bool:
            found[:] = [one for one in _over_window(self.window) if one not in before]
            return bool(found)

        self.settle(there)
        yield Stop(name, found[0])
        found[0].close()
        self.settle(lambda: True)


def controls(root: QWidget) -> list[QWidget]:
    """What can be worked with: not the inside of a compound widget."""
    return [
        one
        for one in root.findChildren(QWidget)
        if one.isVisible()
        and isinstance(one, CONTROLS)
        and not isinstance(one, QHeaderView)
        and not isinstance(one.parent(), QComboBox)
        and not one.objectName().startswith("qt_")
    ]


def shipped() -> Path:
    """A small key that comes with the program."""
    return places.keys_folder() / "kitchen-leaves"


def _over_window(window: QWidget) -> list[QWidget]:
    tops = [w for w in QApplication.topLevelWidgets() if w is not window.window()]
    return [w for w in tops if w.isVisible() and (isinstance(w, QDialog) or w.isWindow())]
