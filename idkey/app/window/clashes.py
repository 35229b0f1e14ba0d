"""Two counters at one animal: say so, and offer to go on from the other one's state."""

from PySide6.QtCore import QObject, Slot

from idkey.app.bench.state import BenchState
from idkey.app.parts.changes import change_words
from idkey.app.parts.keeper import Clash
from idkey.app.parts.messages import Message, message_for
from idkey.app.parts.moments import moment
from idkey.app.parts.notice import Notice
from idkey.errors import IdKeyError


class Clashes(QObject):
    """Tells of each clash in the notice.

    Args:
        state: The state of the bench.
        notice: Where it is told.
        parent: Owner.
    """

    def __init__(self, state: BenchState, notice: Notice, parent: QObject) -> None:
        super().__init__(parent)
        self._state = state
        self._notice = notice
        self._clash: Clash | None = None
        state.keeper.clashed.connect(self._on_clashed)
        notice.taken.connect(self._on_taken)

    def _message(self, clash: Clash) -> Message:
        case = self._state.keeper.store.case(clash.case_id).case
        about = case.claim.text or clash.case_id[:8]
        if not clash.at:
            said = self.tr("The record book was exchanged or restored while “{animal}” was open.")
            return Message(
                said.format(animal=about),
                self.tr("Your state was added to it as revision {ours}.").format(ours=clash.ours),
            )
        said = self.tr("{who} saved “{animal}” on {when}, after you opened it. Changed: {what}.")
        what = change_words(clash.changed, self._state.keys.get(case.key))
        problem = said.format(
            who=clash.by or self.tr("Another counter"),
            animal=about,
            when=moment(clash.at),
            what=what or self.tr("the verdict"),
        )
        kept = self.tr(
            "Nothing is overwritten: theirs is kept as revision {theirs}, yours as revision "
            "{ours}, which counts for now. Look at theirs before you go on."
        )
        return Message(problem, kept.format(theirs=clash.theirs, ours=clash.ours))

    @Slot(object)
    def _on_clashed(self, clash: Clash) -> None:
        self._clash = clash
        offer = self.tr("Go on from theirs") if clash.at and clash.theirs else ""
        self._notice.say(self._message(clash), offer=offer)

    @Slot()
    def _on_taken(self) -> None:
        clash, self._clash = self._clash, None
        if clash is None:
            return
        try:
            theirs = self._state.keeper.store.case(clash.case_id, clash.theirs)
            self._state.put_on_bench(theirs.case)
        except IdKeyError as err:
            self._notice.say(message_for(err))
