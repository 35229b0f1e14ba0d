"""Builds the program once its parts are there, and takes it apart again."""

from contextlib import suppress
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QObject, Slot

from idkey import places
from idkey.app.bench.place import keys_left
from idkey.app.bench.session import Session
from idkey.app.bench.state import PLACE, BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper, kept_setting
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.pictures import Pictures
from idkey.app.parts.theme import Theme
from idkey.app.window.frame import Frame
from idkey.app.window.library_room import made_library
from idkey.app.window.rooms import made_drill, made_workshop
from idkey.app.window.translation import Translation
from idkey.app.window.window import Window
from idkey.engine.sample import SAMPLE_KEY
from idkey.errors import IdKeyError
from idkey.report.language import in_language
from idkey.store.book import Store


@dataclass(frozen=True, slots=True, kw_only=True)
class Folders:
    """Where things are.

    Attributes:
        data: The user's own data.
        keys: The keys.
        images: The drawings.
    """

    data: Path
    keys: Path
    images: Path


@dataclass(frozen=True, slots=True)
class Opened:
    """What takes time to open."""

    store: Store
    keys: KeyLibrary


def opened(folders: Folders) -> Opened:  # on a pool thread
    """Open the record book, and read the key to start with and those of the open cases.

    Raises:
        IdKeyError: The book or the key cannot be read.
    """
    store = Store.open(places.record_book(folders.data))
    try:
        keys = KeyLibrary(folders.keys, SAMPLE_KEY, own=folders.data / "keys")
        keys[next(iter(keys))]
        for key in keys_left(kept_setting(store, PLACE), store):
            with suppress(IdKeyError):  # the case itself says so where it is opened
                keys.get(key)
    except BaseException:
        store.close()
        raise
    return Opened(store, keys)


class Program(QObject):
    """The running program: a state, a desk, and a window that is made again when the look changes.

    Args:
        frame: The frame on the screen.
        theme: The look.
        translation: The language of the window.
        folders: Where things are.
        parts: What was opened.
        resume: Whether the cases that were open last time are opened again.
    """

    def __init__(
        self,
        frame: Frame,
        theme: Theme,
        translation: Translation,
        *,
        folders: Folders,
        parts: Opened,
        resume: bool = True,
    ) -> None:
        super().__init__(frame)
        self._frame = frame
        self._theme = theme
        self._translation = translation
        self.folders = folders
        self.keeper = Keeper(parts.store, self)
        libraries = (folders.keys, folders.data / "keys")
        self.pictures = Pictures(folders.images, self, libraries=libraries)
        self.state = BenchState(parts.keys, self.keeper, self)
        self.drill = made_drill(self.state, folders.data)
        self.workshop = made_workshop(self.state, folders.data)
        self.library = made_library(self.state)
        if resume:
            self.state.resume()
        self._take_over_label()
        self.window = self._made_window()
        self.state.changed.connect(self._on_state_changed)
        self._on_state_changed(self.state.session)
        theme.changed.connect(self._on_theme_changed)

    def close(self) -> None:
        """Finish what was asked for, and let go of everything."""
        self.window.close_work()
        self.drill.close()
        self.workshop.close()
        self.library.close()
        self.pictures.close()
        self.state.close()
        self.keeper.close()
        self.keeper.store.close()

    def _take_over_label(self) -> None:
        """What was typed while records and keys were opening is not lost."""
        text = self._frame.claim.label.text()
        if text:
            if not self.state.session.blank:
                self.state.new_case()
            self.state.type_label(text)

    def _made_window(self) -> Window:
        desk = Desk(self._theme, self.pictures, in_language(self._translation.code))
        window = Window(
            self.state,
            desk,
            rationales=self.folders.data / "rationales",
            drill=self.drill,
            workshop=self.workshop,
            library=self.library,
        )
        window.language_wanted.connect(self._on_language_wanted)
        window.ended.connect(self._on_window_ended)
        self._frame.put(window)
        window.show()
        window.focus_first()
        return window

    def _remake(self) -> None:
        """Make the window anew, and go to where one was."""
        place = self.window.rooms.place
        self.window.close_work()
        self.window = self._made_window()
        if place != self.window.rooms.place:
            self.window.commands.run(place)

    @Slot(object)
    def _on_state_changed(self, session: Session) -> None:
        label = session.case.claim.text
        self._frame.setWindowTitle(f"{label} – idkey" if label else "idkey")

    @Slot()
    def _on_theme_changed(self) -> None:
        memory = self._frame.memory
        scheme, scale = self._theme.scheme.value, self._theme.scale
        self._frame.memory = replace(memory, scheme=scheme, scale=scale)
        self._frame.keep()
        self._remake()

    @Slot(str)
    def _on_language_wanted(self, code: str) -> None:
        self._frame.memory = replace(self._frame.memory, language=code)
        self._frame.keep()
        self._translation.speak(code)
        self._remake()

    @Slot()
    def _on_window_ended(self) -> None:
        self._frame.close()
