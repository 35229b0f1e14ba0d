"""Two versions of a key side by side: what changed from one to the other."""

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QHBoxLayout, QWidget

from idkey.app.library.card_below import card_below
from idkey.app.library.change_list import ChangeList
from idkey.app.library.editions import Edition, EditionChoice
from idkey.app.library.words import step_words
from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.worded import window_language
from idkey.app.records.latest import Latest
from idkey.formats.compare import Change, next_version, step
from idkey.model.key import Key
from idkey.report.key_changes import worded_changes

Compared = tuple[Key, Key, tuple[Change, ...]]


class VersionsPage(QWidget):
    """The older one, the newer one, and the changes.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._jobs = Jobs(threads=1, parent=self)
        self._comparing = Latest(self._jobs, self)
        self.older = EditionChoice(self.tr("Earlier version"), desk)
        self.newer = EditionChoice(self.tr("Later version"), desk)
        self.swap = button("⇄")
        self.swap.setAccessibleName(self.tr("Swap the two"))
        self.swap.setToolTip(self.tr("Swap the two"))
        self.said = caption()
        self.changes = ChangeList(desk)
        row = QHBoxLayout()
        row.setSpacing(desk.theme.px(10))
        row.addWidget(self.older, 1)
        row.addWidget(self.swap, 0, Qt.AlignmentFlag.AlignBottom)
        row.addWidget(self.newer, 1)
        inside, _ = card_below(self, row, desk.theme)
        inside.addWidget(self.said)
        inside.addWidget(self.changes, 1)
        self.older.chosen.connect(self.compare)
        self.newer.chosen.connect(self.compare)
        self.swap.clicked.connect(self._on_swap_clicked)
        self._comparing.answered.connect(self._on_compared)
        self._comparing.failed.connect(self._on_failed)

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._comparing.busy

    def close_work(self) -> bool:
        """Let go of work under way."""
        return self._jobs.close()

    def offer(self, found: tuple[Edition, ...]) -> None:
        """Offer the versions that are here."""
        self.older.offer(found)
        self.newer.offer(found)
        self.compare()

    def focus_first(self) -> None:
        """Put the focus on the first choice."""
        self.older.choice.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def compare(self) -> None:
        """Lay the two that are chosen side by side."""
        older, newer = self.older.edition, self.newer.edition
        self.changes.show_changes(())
        if older is None or newer is None or older == newer:
            self._comparing.drop()
            text = self.tr(
                "Choose two versions of a key: one that is here, one that was replaced or "
                "removed, or a file from disk."
            )
            self.said.setText(text)
            return
        self.said.setText(self.tr("Being compared …"))

        language = window_language()

        def work(tick: Tick) -> Compared:  # on a pool thread
            old = older.read()
            tick(1, 3)
            new = newer.read()
            tick(2, 3)
            return old, new, worded_changes(old, new, language)

        self._comparing.ask(work)

    @Slot(object)
    def _on_compared(self, found: Compared) -> None:
        old, new, told = found
        self.changes.show_changes(told)
        if not told:
            self.said.setText(self.tr("The two say the same."))
            return
        text = self.tr(
            "Changes from {old} to {new}: {n}; {step}. After {old} should come {next} or later."
        )
        words = text.format(
            n=len(told),
            old=old.version,
            new=new.version,
            step=step_words(step(told)),
            next=next_version(old.version, told),
        )
        if old.id != new.id:
            other = self.tr("These are two keys, {old} and {new}, not two versions of one.")
            words = f"{other.format(old=old.id, new=new.id)} {words}"
        self.said.setText(words)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.said.setText(message_for(error).text)

    @Slot()
    def _on_swap_clicked(self) -> None:
        older, newer = self.older.edition, self.newer.edition
        if older is not None and newer is not None:
            self.older.choose_quietly(newer)
            self.newer.choose_quietly(older)
            self.compare()
