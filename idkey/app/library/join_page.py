"""Two people's edits of one key joined: three versions above, what clashes below."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QWidget

from idkey.app.library.card_below import card_below
from idkey.app.library.clash_table import ClashTable
from idkey.app.library.editions import Edition, EditionChoice
from idkey.app.library.flowing import flowing
from idkey.app.library.join_state import Joining, JoinState
from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import beside
from idkey.app.parts.messages import message_for
from idkey.app.parts.worded import worded
from idkey.formats.merge import Side

MOST = 4
"""Problems of the joined key that are told."""


class JoinPage(QWidget):
    """Chooses three versions, decides clashes, and goes on with the joined key.

    Args:
        desk: Look, drawings, language.
        state: The join; it outlives the page.

    Signals:
        made(key: object): The person wants to go on with this `Key`.
    """

    made = Signal(object)

    def __init__(self, desk: Desk, state: JoinState) -> None:
        super().__init__()
        self._desk = desk
        self.state = state
        self.base = EditionChoice(self.tr("Both began with"), desk)
        self.mine = EditionChoice(self.tr("Mine"), desk)
        self.theirs = EditionChoice(self.tr("Theirs"), desk)
        self.said = caption()
        self.wrong = caption(tone="doubt")
        self.table = ClashTable(desk.theme)
        self.all_mine = button(self.tr("Take mine everywhere"))
        self.all_theirs = button(self.tr("Take theirs everywhere"))
        self.go_on = button(self.tr("Go on with the joined key"), "main")
        self._lay_out()
        self._connect()
        self._show()

    def offer(self, found: tuple[Edition, ...]) -> None:
        """Offer the versions that are here; a join under way goes on."""
        chosen = self.state.chosen
        for number, choice in enumerate((self.base, self.mine, self.theirs)):
            choice.offer(found)
            if chosen:
                choice.choose_quietly(chosen[number])
        if not chosen:
            self._on_chosen()

    def focus_first(self) -> None:
        """Put the focus on the clashes, or where the versions are chosen."""
        clashes = self.state.joining is not None and self.state.joining.clashes
        first = self.table if clashes else self.base.choice
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        px = self._desk.theme.px
        row = beside(self._desk.theme)
        row.setSpacing(px(12))
        for choice in (self.base, self.mine, self.theirs):
            row.addWidget(choice, 1)
        inside, whole = card_below(self, row, self._desk.theme)
        for part in (self.said, self.wrong):
            inside.addWidget(part)
        inside.addWidget(self.table, 1)
        deeds = (self.all_mine, self.all_theirs, self.go_on)
        whole.addWidget(flowing(deeds, px(8)))

    def _connect(self) -> None:
        for choice in (self.base, self.mine, self.theirs):
            choice.chosen.connect(self._on_chosen)
        self.state.changed.connect(self._on_state_changed)
        self.state.failed.connect(self._on_failed)
        self.table.decided.connect(self.state.decide)
        self.all_mine.clicked.connect(self._on_all_mine_clicked)
        self.all_theirs.clicked.connect(self._on_all_theirs_clicked)
        self.go_on.clicked.connect(self._on_go_on_clicked)

    def _show(self) -> None:
        joining = self.state.joining
        self.table.show_joining(joining)
        clashes = joining is not None and bool(joining.clashes)
        self.table.setVisible(clashes)
        for one in (self.all_mine, self.all_theirs):
            one.setVisible(clashes)
        ready = joining is not None and joining.key is not None and not joining.checking
        self.go_on.setEnabled(ready and joining is not None and not joining.errors)
        self.said.setText(self._words(joining))
        self.wrong.setText("" if joining is None else self._errors(joining))
        self.wrong.setVisible(bool(self.wrong.text()))

    def _words(self, joining: Joining | None) -> str:
        if joining is None:
            if self.state.busy:
                return self.tr("Being joined …")
            return self.tr(
                "Choose the version both began with, yours, and theirs. What only one of you "
                "changed is taken; where both changed the same thing, you decide."
            )
        if joining.mine.id != joining.theirs.id or joining.base.id != joining.mine.id:
            same = self.tr("These are not versions of one key; joining them makes little sense.")
        else:
            same = ""
        if not joining.clashes:
            told = self.tr("Nothing clashes: what each of you changed stands side by side.")
        else:
            text = self.tr(
                "Changed by both: {n}; undecided: {open}. Those stand as ticked. M takes mine, "
                "T takes theirs."
            )
            told = text.format(n=len(joining.clashes), open=joining.open)
        version = ""
        if joining.key is not None:
            version = self.tr("The joined key is version {version}.")
            version = version.format(version=joining.key.version)
        return " ".join(filter(None, (same, told, version)))

    def _errors(self, joining: Joining) -> str:
        errors = joining.errors
        if not errors:
            return ""
        lines = [f"{worded(problem.problem)} {worded(problem.remedy)}" for problem in errors[:MOST]]
        if len(errors) > MOST:
            lines.append(self.tr("… and {n} more").format(n=len(errors) - MOST))
        head = self.tr("The joined key cannot be used like that; decide otherwise:")
        return "\n".join((head, *lines))

    @Slot()
    def _on_chosen(self) -> None:
        chosen = (self.base.edition, self.mine.edition, self.theirs.edition)
        base, mine, theirs = chosen
        if base is None or mine is None or theirs is None or mine == theirs:
            self.state.leave()
            return
        self.state.join(base, mine, theirs)

    @Slot()
    def _on_state_changed(self) -> None:
        self._show()

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.state.leave()
        self.wrong.setText(message_for(error).text)
        self.wrong.setVisible(True)

    @Slot()
    def _on_all_mine_clicked(self) -> None:
        self.table.decide_all(Side.MINE)

    @Slot()
    def _on_all_theirs_clicked(self) -> None:
        self.table.decide_all(Side.THEIRS)

    @Slot()
    def _on_go_on_clicked(self) -> None:
        joining = self.state.joining
        if joining is not None and joining.key is not None:
            self.made.emit(joining.key)
