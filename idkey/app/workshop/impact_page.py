"""What saving would change: the changes in words, and what they do."""

from dataclasses import dataclass, replace

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QTextBrowser, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.jobs import Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.sheet import prose_page
from idkey.app.records.latest import Latest
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.impact_html import cases_html, changes_html, effects_html
from idkey.app.workshop.state import WorkshopState
from idkey.model.key import Key
from idkey.report.impact import CaseImpact, Impact, case_impacts, impact
from idkey.store.book import Store


@dataclass(frozen=True, slots=True)
class Reruns:
    """Recorded cases judged with the key as saved and as changed."""

    altered: tuple[CaseImpact, ...]
    looked: int


class ImpactPage(LivePage):
    """Shows what the unsaved changes do; looks only while it is on the screen.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self._desk = desk
        self._key: Key | None = None
        self._cases = Latest(state.errands, self)
        self._effects = Latest(state.errands, self)
        self.found: Impact | None = None
        self.said = caption(rank="soft")
        self.version = button(role="main")
        self.version.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.version.hide()
        self.stop = button(self.tr("Stop"), "link")
        self.stop.hide()
        self.running = caption(rank="small")
        self.changes = prose_page(self.tr("What changed"), desk.theme)
        self.effects = prose_page(self.tr("What the changes do"), desk.theme)
        self._panes = QWidget()
        self._told = self._cases_told = ""
        self._lay_out()
        self.version.clicked.connect(self._on_version_clicked)
        self.stop.clicked.connect(self._on_stop_clicked)
        self._effects.answered.connect(self._on_effects)
        self._effects.failed.connect(self._on_failed)
        self._cases.answered.connect(self._on_cases)
        self._cases.failed.connect(self._on_failed)
        self.follow()

    @property
    def busy(self) -> bool:
        """Whether something is still being looked at."""
        return self._effects.busy or self._cases.busy

    def close_work(self) -> None:
        """Stop looking."""
        self._effects.drop()
        self._cases.drop()

    def focus_first(self) -> None:
        """Put the focus on what changed."""
        if self._panes.isVisible():
            self.changes.setFocus(Qt.FocusReason.OtherFocusReason)

    def draw(self, editing: Editing) -> None:
        """Look at the changes again, when the key is another and its mistakes are known."""
        if editing.checking or editing.key is self._key:
            return
        self._key = editing.key
        self.found = None
        self.version.hide()
        self.close_work()
        self.running.setText("")
        if not editing.dirty:
            self._say(self.tr("Nothing has changed since the key was saved."))
        elif not editing.sound:
            self._say(self.tr("What the changes do can be said once the key has no errors."))
        else:
            self._ask(editing.saved, editing.key)

    def _ask(self, old: Key, new: Key) -> None:
        store, language = self.state.store, self._desk.language

        def effects(tick: Tick) -> Impact:  # on a pool thread
            return impact(old, new, language, tick=tick)

        self._say(self.tr("Looking …"), asked=True)
        self._effects.ask(effects)
        self.stop.show()
        if store is not None:
            self.running.setText(self.tr("Judging the recorded cases again …"))
            self._cases.ask(lambda tick: reruns(store, old, new, tick))

    def _say(self, text: str, *, asked: bool = False) -> None:
        self.said.setText(text)
        self.changes.setHtml("")
        self._told = self._cases_told = ""
        self._show()
        self.stop.hide()
        self._panes.setVisible(asked)

    @Slot(object)
    def _on_effects(self, found: Impact) -> None:
        editing = self.state.editing
        if editing is None:
            return
        self.found = found
        self.stop.setVisible(self.busy)
        one, many = self.tr("One change since the key was saved."), self.tr("{n} changes.")
        self.said.setText(one if len(found.changes) == 1 else many.format(n=len(found.changes)))
        self.changes.setHtml(f"<body>{changes_html(found, editing.key)}</body>")
        self._told = effects_html(found, editing.key, self._desk.language)
        self._show()
        wanted = found.version != editing.key.version and bool(found.changes)
        self.version.setVisible(wanted)
        self.version.setText(self.tr("Make it version {n}").format(n=found.version))

    @Slot(object)
    def _on_cases(self, found: Reruns) -> None:
        self.stop.setVisible(self.busy)
        self.running.setText("")
        self._cases_told = cases_html(found.altered, found.looked, self._desk.language)
        self._show()

    def _show(self) -> None:
        self.effects.setHtml(f"<body>{self._cases_told}{self._told}</body>")

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.stop.hide()
        self.running.setText(message_for(error).text)

    @Slot()
    def _on_stop_clicked(self) -> None:
        if self._effects.busy:
            self._say(self.tr("Stopped: what the changes do was not looked at to the end."))
        self.close_work()
        self.stop.hide()
        self.running.setText(self.tr("Stopped: the recorded cases were not all judged again."))

    @Slot()
    def _on_version_clicked(self) -> None:
        editing = self.state.editing
        if editing is not None and self.found is not None:
            words = self.tr("Version {n}").format(n=self.found.version)
            self.state.change(replace(editing.key, version=self.found.version), words)

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.setSpacing(10)
        head.addWidget(self.said, 1)
        head.addWidget(self.version)
        foot = QHBoxLayout()
        foot.addWidget(self.running, 1)
        foot.addWidget(self.stop)
        body = QHBoxLayout(self._panes)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(14)
        for part, wide in ((self.changes, 2), (self.effects, 3)):
            body.addWidget(_card(part), wide)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 4, 4)
        column.setSpacing(10)
        column.addLayout(head)
        column.addWidget(self._panes, 1000)
        column.addLayout(foot)
        column.addStretch(1)


def reruns(store: Store, old: Key, new: Key, tick: Tick) -> Reruns:  # on a pool thread
    """Judge every recorded case of the key twice."""
    looked = 0

    def counted(done: int, total: int) -> None:
        nonlocal looked
        looked = done
        tick(done, total)

    return Reruns(tuple(case_impacts(store, old, new, counted)), looked)


def _card(part: QTextBrowser) -> QFrame:
    card = QFrame()
    card.setProperty("pane", "card")
    column = QVBoxLayout(card)
    column.setContentsMargins(14, 10, 8, 10)
    column.addWidget(caption(part.accessibleName(), "strong"))
    column.addWidget(part, 1)
    return card
