"""What is asked of the builder of couplets, as a form."""

from PySide6.QtWidgets import QCheckBox, QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout

from idkey.app.parts.captions import button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.segments import Segments
from idkey.app.parts.theme import Theme
from idkey.app.workshop.building import BuildWish, Goal


class BuildOptions(QFrame):
    """Aim, number of leads, danger first, opening, weights; and the button that builds.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self.goal = Segments(self.tr("What to build for"), Goal, self._goal_title)
        leads = self.tr("Leads of a couplet")
        self.leads = Segments(leads, (False, True), self._leads_title)
        self.danger = QCheckBox(self.tr("Dangerous animals first"))
        self.danger.setToolTip(
            self.tr(
                "Tell them from the rest first, and ask nothing that means handling while a "
                "medically significant species is still possible."
            )
        )
        self.keep = Choice(self.tr("Opening that stays as it is written"), theme)
        self.weights = Choice(self.tr("How often each taxon comes in"), theme)
        self.weights.offer(
            (
                (self.tr("all alike"), False),
                (self.tr("as rates and cases say"), True),
            )
        )
        self.build = button(self.tr("Build couplets"), "main")
        self.stop = button(self.tr("Stop"))
        self.stop.hide()
        self.said = caption(rank="small")
        self.offer_opening(0)
        self._lay_out()

    @property
    def wish(self) -> BuildWish:
        """What is asked."""
        return BuildWish(
            goal=self.goal.value,
            two_leads=self.leads.value,
            danger_first=self.danger.isChecked(),
            keep=self.keep.chosen,
            as_seen=self.weights.chosen,
        )

    def offer_opening(self, written: int) -> None:
        """Offer to keep up to all but one of the written couplets; what was chosen stays."""
        held = self.keep.chosen or 0
        items: list[tuple[str, object]] = [(self.tr("none: build all of it"), 0)]
        if written > 1:
            items.append((self.tr("the first couplet"), 1))
        text = self.tr("the first {n} couplets")
        items += [(text.format(n=n), n) for n in range(2, written)]
        self.keep.offer(items)
        self.keep.choose(min(held, max(written - 1, 0)))

    def show_running(self, *, running: bool) -> None:
        """Show whether something is being built."""
        self.build.setVisible(not running)
        self.stop.setVisible(running)

    def _goal_title(self, goal: Goal) -> str:
        return self.tr("Little effort") if goal is Goal.EFFORT else self.tr("Few couplets")

    def _leads_title(self, two: bool) -> str:
        return self.tr("Two") if two else self.tr("One per state")

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 16, 18, 16)
        column.setSpacing(6)
        column.addWidget(caption(self.tr("Couplets from the scores"), "lead"))
        for part in (self.goal, self.leads):
            column.addWidget(caption(part.accessibleName(), "overline"))
            column.addWidget(part)
        for choice in (self.keep, self.weights):
            choice.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
            column.addWidget(caption(choice.accessibleName(), "overline"))
            column.addWidget(choice)
        column.addSpacing(4)
        column.addWidget(self.danger)
        column.addSpacing(8)
        row = QHBoxLayout()
        row.addWidget(self.build)
        row.addWidget(self.stop)
        row.addStretch(1)
        column.addLayout(row)
        column.addWidget(self.said)
        column.addStretch(1)
        for pressed in (self.build, self.stop):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
