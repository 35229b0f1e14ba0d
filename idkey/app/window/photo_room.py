"""The photo tool over the bench: what it measures goes into the ledger."""

from PySide6.QtCore import QObject, Slot

from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.parts.desk import Desk
from idkey.app.photo.tool import open_for
from idkey.model.case import Finding
from idkey.photo.shelf import PictureShelf


class PhotoRoom(QObject):
    """Opens the photo tool for a character of the animal on the bench.

    Args:
        bench: The bench; its question card offers to measure from now on.
        state: The state of the bench.
        shelf: Where pictures are kept.
        desk: Look, drawings, language.
    """

    def __init__(
        self, bench: BenchView, state: BenchState, *, shelf: PictureShelf, desk: Desk
    ) -> None:
        super().__init__(bench)
        self._bench, self._state = bench, state
        self._shelf, self._desk = shelf, desk
        bench.middle.question.measure_asked.connect(self.measure)
        bench.middle.question.entry.offer_measuring(True)

    @Slot(str)
    def measure(self, name: str) -> None:
        """Open the photo tool for a character of the key."""
        session = self._state.session
        character = session.key.character.get(name)
        if character is None:
            return
        case = session.case
        tool = open_for(
            self._bench,
            session.key,
            character,
            self._shelf,
            desk=self._desk,
            ids=tuple(dict.fromkeys(p for f in case.findings for p in f.pictures)),
            earlier=case.finding(name),
        )
        tool.measured.connect(self._on_measured)

    def measure_question(self) -> None:
        """Open the photo tool for the question on the card; without one, choose one first."""
        question = self._state.session.question
        if question is not None:
            self.measure(question.character)
        else:
            self._bench.middle.open_questions()

    @Slot(object)
    def _on_measured(self, finding: Finding) -> None:
        self._state.observe(finding)
