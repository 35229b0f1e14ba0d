"""Pictures of practised animals: close-ups, plates and portraits, varied for each animal."""

from collections import OrderedDict
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.drill.plate import plate
from idkey.drill.specimen import Individual
from idkey.drill.variation import varied
from idkey.errors import IdKeyError
from idkey.figures.own import shown_figure
from idkey.figures.portrait import View, portrait
from idkey.model.key import Key

KEPT = 60
"""How many drawings are kept as text."""

PORTRAIT = ":portrait"
"""Name of the whole animal among the things that can be drawn; no character id can be this."""


def drawn_characters(images: Path, key: Key, libraries: tuple[Path, ...] = ()) -> frozenset[str]:
    """Ids of the characters all of whose states have a drawing that can be varied.

    Args:
        images: Folder of the drawings.
        key: The key.
        libraries: Folders with one folder per key, where a key may have drawings of its own.
    """
    return frozenset(
        character.id
        for character in key.characters
        if character.states
        and all(
            _svg(images, libraries, key, character=character.id, state=state)
            for state in character.state_ids
        )
    )


def _svg(
    images: Path, libraries: tuple[Path, ...], key: Key, *, character: str, state: str
) -> Path | None:
    path = shown_figure(images, libraries, key, character=character, state=state)
    return path if path is not None and path.suffix == ".svg" else None


class DrillFigures(QObject):
    """Draws one animal at a time, off the UI thread.

    Args:
        images: Folder of the drawings.
        parent: Owner.
        libraries: Folders with one folder per key, where a key may have drawings of its own.

    Signals:
        arrived(): A drawing that was asked for is there; ask again.
    """

    arrived = Signal()

    def __init__(
        self,
        images: Path,
        parent: QObject | None = None,
        *,
        libraries: tuple[Path, ...] = (),
    ) -> None:
        super().__init__(parent)
        self._images = images
        self._libraries = libraries
        self._jobs = Jobs(threads=1, parent=self)
        self._kept: OrderedDict[tuple[str, int, str], bytes | None] = OrderedDict()

    @property
    def busy(self) -> bool:
        """Whether something is being drawn."""
        return self._jobs.busy

    def close(self) -> None:
        """Let go of drawing under way."""
        self._jobs.close()

    def close_up(self, key: Key, one: Individual, character: str) -> bytes | None:
        """What an animal shows on a character, as SVG.

        Returns:
            None while it is being drawn; empty when there is no drawing of it.
        """
        shown = one.shown(character)
        if shown is None:
            return b""
        described = key.character[character]
        if isinstance(shown, float):
            return self._asked(
                key, one, character, lambda: plate(described, shown, one.seed, one.variation)
            )
        path = self._svg(key, character, shown)
        if path is None:
            return b""
        return self._asked(
            key,
            one,
            character,
            lambda: varied(path.read_text("utf-8"), one.variation, letters=False),
        )

    def portrait(self, key: Key, one: Individual) -> bytes | None:
        """The whole animal, as SVG.

        Returns:
            None while it is being drawn; empty when the key has no portraits.
        """
        if not key.body_plan:
            return b""
        kind, view = one.kind, View(width=460, height=330)

        def drawn() -> str:
            text = portrait(key, one.animal.shown, sex=kind.sex, stage=kind.stage, view=view)
            return varied(text, one.variation) if text else ""

        return self._asked(key, one, PORTRAIT, drawn)

    def drawing(self, key: Key, character: str, state: str) -> bytes:
        """The key's own drawing of a state, as SVG; empty when there is none."""
        path = self._svg(key, character, state)
        return path.read_bytes() if path else b""

    def _svg(self, key: Key, character: str, state: str) -> Path | None:
        return _svg(self._images, self._libraries, key, character=character, state=state)

    def _asked(
        self, key: Key, one: Individual, what: str, drawn: Callable[[], str]
    ) -> bytes | None:
        place = (key.id, one.seed, what)
        if place not in self._kept:
            self._kept[place] = None
            while len(self._kept) > KEPT:
                self._kept.popitem(last=False)
            self._start(place, drawn)
        return self._kept[place]

    def _start(self, place: tuple[str, int, str], drawn: Callable[[], str]) -> None:
        def work(tick: Tick) -> tuple[tuple[str, int, str], bytes]:  # on a pool thread
            tick(0, 1)
            try:
                return place, drawn().encode("utf-8")
            except (IdKeyError, OSError):
                return place, b""

        job = Job(work)
        job.succeeded.connect(self._on_succeeded)
        self._jobs.start(job)

    @Slot(object)
    def _on_succeeded(self, found: tuple[tuple[str, int, str], bytes]) -> None:
        place, text = found
        self._kept[place] = text
        self.arrived.emit()
