"""Couplets built from the scores, beside the written ones; taken over in one step."""

from dataclasses import replace

from PySide6.QtCore import Qt, QUrl, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.jobs import Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.sheet import prose_page
from idkey.app.records.latest import Latest
from idkey.app.workshop.build_options import BuildOptions
from idkey.app.workshop.build_table import BuildTable
from idkey.app.workshop.building import BuildResult, built, with_built
from idkey.app.workshop.couplet_preview import READING, preview_html
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.state import WorkshopState
from idkey.report.printed_key import Layout

NARROW = 640
"""Width in pixels at 100 % below which the result stands below the options."""

LEAST_PREVIEW = 260
"""Least height of the built couplets, in pixels at 100 %."""


class BuildPage(LivePage):
    """Builds couplets, compares them, and takes them over.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self._desk = desk
        self._latest = Latest(state.errands, self)
        self.result: BuildResult | None = None
        self.options = BuildOptions(desk.theme)
        self.table = BuildTable(desk.language)
        self.verdict = caption(rank="soft")
        self.take = button(self.tr("Take these couplets over"), "main")
        self.take.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.preview = prose_page(self.tr("The built couplets"), desk.theme)
        self.preview.setTextInteractionFlags(READING)
        self._found = QWidget()
        self._sides = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()
        self.options.build.clicked.connect(self._on_build_clicked)
        self.options.stop.clicked.connect(self._on_stop_clicked)
        self.take.clicked.connect(self._on_take_clicked)
        self.preview.anchorClicked.connect(self._on_link)
        self._latest.answered.connect(self._on_built)
        self._latest.failed.connect(self._on_failed)
        self.follow()

    @property
    def busy(self) -> bool:
        """Whether something is being built."""
        return self._latest.busy

    def close_work(self) -> None:
        """Stop building."""
        self._latest.drop()

    def focus_first(self) -> None:
        """Put the focus on the button that builds."""
        self.options.build.setFocus(Qt.FocusReason.OtherFocusReason)

    def draw(self, editing: Editing) -> None:
        """Follow the key: what may be kept, whether it can be built, whether the result fits."""
        key = editing.key
        if self.result is not None and self.result.key.id != key.id:
            self.result = None
        self.options.offer_opening(len(key.couplets))
        sound = editing.sound or (editing.checking and not editing.problems)
        self.options.build.setEnabled(sound and not self.busy)
        errors = self.tr("Mend the errors of the key first: see the line at the foot.")
        if not self.busy:
            self.options.said.setText("" if sound else errors)
        self._show_result(editing)

    def _show_result(self, editing: Editing) -> None:
        found = self.result
        self._found.setVisible(found is not None)
        if found is None:
            return
        fits = found.fits(editing.key)
        taken = found.couplets == editing.key.couplets
        self.take.setEnabled(fits and not taken)
        if taken:
            self.verdict.setText(
                self.tr("These are the couplets of the key now; take back brings the others back.")
            )
        elif not fits:
            self.verdict.setText(self.tr("The scores have changed since: build again."))
        elif found.exact:
            self.verdict.setText(self.tr("No couplets from these scores take less effort."))
        else:
            self.verdict.setText(
                self.tr(
                    "The best that was found; the words of the leads are made from the scores, "
                    "so read them once."
                )
            )

    def _lay_out(self) -> None:
        found = QVBoxLayout(self._found)
        found.setContentsMargins(0, 0, 0, 0)
        found.setSpacing(10)
        head = QHBoxLayout()
        head.setSpacing(12)
        head.addWidget(self.verdict, 1)
        head.addWidget(self.take, 0, Qt.AlignmentFlag.AlignTop)
        found.addWidget(self.table)
        found.addLayout(head)
        found.addWidget(self.preview, 1)
        self._found.setProperty("pane", "clear")
        self.preview.setMinimumHeight(self._desk.theme.px(LEAST_PREVIEW))
        left = QVBoxLayout()
        left.addWidget(self.options)
        left.addStretch(1)
        right = QVBoxLayout()
        right.addWidget(self._found, 1)
        right.addStretch(0)
        self._sides.setContentsMargins(4, 0, 8, 0)
        self._sides.setSpacing(14)
        self._sides.addLayout(left, 2)
        self._sides.addLayout(right, 3)
        page = QWidget()
        page.setLayout(self._sides)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 4, 0, 4)
        column.addWidget(scrolled(page))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the result below the options where they would not fit beside each other."""
        super().resizeEvent(event)
        narrow = event.size().width() < self._desk.theme.px(NARROW)
        way = QBoxLayout.Direction
        self._sides.setDirection(way.TopToBottom if narrow else way.LeftToRight)

    @Slot()
    def _on_build_clicked(self) -> None:
        editing = self.state.editing
        if editing is None:
            return
        key, wish, store = editing.key, self.options.wish, self.state.store

        def work(tick: Tick) -> BuildResult:  # on a pool thread
            return built(key, wish, store, tick)

        self.options.show_running(running=True)
        self.options.said.setText(self.tr("Building …"))
        self.options.stop.setFocus(Qt.FocusReason.OtherFocusReason)
        self._latest.ask(work)

    @Slot()
    def _on_stop_clicked(self) -> None:
        self._latest.drop()
        self._end(self.tr("Stopped; nothing was changed."))

    @Slot(object)
    def _on_built(self, found: BuildResult) -> None:
        self.result = found
        self.table.show_result(found)
        shown = replace(found.key, couplets=found.couplets)
        desk = self._desk
        html = preview_html(shown, Layout.BRACKETED, desk.language, px=desk.theme.px)
        self.preview.setHtml(f"<body>{html}</body>")
        self._end("")

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self._end(message_for(error).text)

    def _end(self, said: str) -> None:
        self.options.show_running(running=False)
        self.options.said.setText(said)
        self.options.build.setFocus(Qt.FocusReason.OtherFocusReason)
        if self.state.editing is not None:
            self._show_result(self.state.editing)

    @Slot(QUrl)
    def _on_link(self, url: QUrl) -> None:
        self.preview.scrollToAnchor(f"c{url.toString().partition(':')[2]}")

    @Slot()
    def _on_take_clicked(self) -> None:
        editing = self.state.editing
        if editing is not None and self.result is not None:
            words = self.tr("{n} built couplets").format(n=len(self.result.couplets))
            self.state.change(with_built(editing.key, self.result), words)
