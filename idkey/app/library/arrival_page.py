"""A key that came in, before it is taken: what it is, what was lost, what it would change."""

from html import escape

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from idkey.app.library.change_list import ChangeList
from idkey.app.library.coverage_bar import CoverageView
from idkey.app.library.key_html import listed, numbers_html
from idkey.app.library.text_page import TextPage
from idkey.app.library.welcome import Welcome
from idkey.app.library.words import form_words, key_size_words, step_words
from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.prose import head, paragraph, toned
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.worded import worded
from idkey.formats.compare import next_version, step
from idkey.report.rerun_words import altered_words
from idkey.store.reruns import Alteration

_UNBOUNDED = 16_777_215
"""What Qt takes for no bound."""

MOST = 40
"""Notes, taxa and cases that are listed; the rest is counted."""


class ArrivalPage(QWidget):
    """Shows a `Welcome`.

    Args:
        desk: Look, drawings, language.

    Signals:
        left(): The person does not want it.
        taken(own: str, replaces: bool): The person wants it: under another id when `own` is not
            empty, or in the place of the one that is here.
    """

    left = Signal()
    taken = Signal(str, bool)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.welcome: Welcome | None = None
        self.title = caption(rank="lead")
        self.about = caption(rank="soft")
        self.coverage = CoverageView(desk.theme)
        self.text = TextPage(desk.theme)
        self.verdict = caption()
        self.report = TextPage(desk.theme)
        self.changes = ChangeList(desk)
        self.back = KeyButton(self.tr("Back"), "Esc", desk.theme, "quiet")
        self.add = button(self.tr("Add to my keys"), "main")
        self.replace = button(self.tr("Replace mine"))
        self.own = QLineEdit()
        self.own.setAccessibleName(self.tr("Id of the second key"))
        self.both = button(self.tr("Keep both, this one as"))
        self._lay_out()
        self.report.fitted.connect(self._on_report_fitted)
        self.back.clicked.connect(self.left)
        self.add.clicked.connect(self._on_add_clicked)
        self.replace.clicked.connect(self._on_replace_clicked)
        self.both.clicked.connect(self._on_both_clicked)

    def show_welcome(self, welcome: Welcome, free_id: str) -> None:
        """Show what came in.

        Args:
            welcome: The arrival.
            free_id: An id under which it can stand beside the one that is here.
        """
        self.welcome = welcome
        key = welcome.arrival.key
        self.title.setText(key.title)
        text = self.tr("{file}: {form}. Id {id}, version {version}, {size}.")
        self.about.setText(
            text.format(
                file=welcome.arrival.file.name,
                form=form_words(welcome.arrival.form),
                id=key.id,
                version=key.version,
                size=key_size_words(key),
            )
        )
        self.coverage.show_coverage(welcome.counts.coverage)
        self.text.show_html(numbers_html(key, welcome.counts) + self._taxa(welcome))
        self.verdict.setText(self._verdict(welcome))
        self.report.show_html(self._report(welcome))
        self._on_report_fitted(self.report.height())
        self.changes.setVisible(bool(welcome.changes))
        self.changes.show_changes(welcome.changes)
        new = welcome.here is None
        self.add.setVisible(new)
        self.replace.setVisible(welcome.replaceable)
        for part in (self.both, self.own):
            part.setVisible(not new and not welcome.same)
        self.own.setText(free_id)

    def focus_first(self) -> None:
        """Put the focus on what is most likely wanted."""
        for one in (self.add, self.replace, self.both, self.back):
            if one.isVisibleTo(self):
                one.setFocus(Qt.FocusReason.OtherFocusReason)
                return

    def _lay_out(self) -> None:
        px = self._desk.theme.px
        heading = QHBoxLayout()
        names = QVBoxLayout()
        names.addWidget(self.title)
        names.addWidget(self.about)
        heading.addLayout(names, 1)
        heading.addWidget(self.back, 0, Qt.AlignmentFlag.AlignTop)
        inner = QWidget()
        told = QVBoxLayout(inner)
        told.setContentsMargins(0, 0, px(6), 0)
        told.addWidget(self.coverage)
        told.addWidget(self.text)
        told.addStretch(1)
        right = QVBoxLayout()
        right.setSpacing(px(8))
        self._told = scrolled(_only(self.verdict, self.report))
        right.addWidget(self._told, 3)
        right.addWidget(self.changes, 4)
        body = QHBoxLayout()
        body.setSpacing(px(16))
        body.addWidget(_card(scrolled(inner), px(14)), 9)
        body.addWidget(_card(right, px(14)), 11)
        deeds = QHBoxLayout()
        deeds.addStretch(1)
        self.own.setMaximumWidth(px(260))
        for part in (self.both, self.own, self.replace, self.add):
            deeds.addWidget(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(px(10))
        column.addLayout(heading)
        column.addLayout(body, 1)
        column.addLayout(deeds)

    def _taxa(self, welcome: Welcome) -> str:
        taxa = welcome.arrival.key.taxa
        names = (escape(f"{taxon.name} {taxon.authority}".strip()) for taxon in taxa)
        return head(self.tr("Taxa")) + listed(names, len(taxa), MOST)

    def _verdict(self, welcome: Welcome) -> str:
        if welcome.same:
            return self.tr("The very same key is here already; there is nothing to add.")
        if welcome.here is None:
            return self.tr("No key here has this id. It can be added as it is.")
        if welcome.here_key is None:
            return self.tr("A key with this id is here, but it is broken.")
        if not welcome.here.own:
            text = self.tr(
                "A key with this id came with the program (version {here}), which is not "
                "replaced. This one can stand beside it under another id."
            )
            return text.format(here=welcome.here_key.version)
        text = self.tr(
            "You have a key with this id in version {here}; this one is version {came}. From "
            "yours to this one {step}; after version {here} would come {next}. When it is "
            "replaced, yours is kept among the removed keys."
        )
        return text.format(
            here=welcome.here_key.version,
            came=welcome.arrival.key.version,
            step=step_words(step(welcome.changes)),
            next=next_version(welcome.here_key.version, welcome.changes),
        )

    def _report(self, welcome: Welcome) -> str:
        notes = welcome.arrival.notes
        if notes:
            told = head(self.tr("What was left out, changed or assumed"))
            told += listed((escape(worded(note)) for note in notes), len(notes), MOST)
        else:
            told = paragraph(escape(self.tr("Nothing was left out and nothing was assumed.")))
        if welcome.altered:
            text = self.tr("Recorded cases that would be judged otherwise: {n}")
            said = text.format(n=len(welcome.altered))
            cases = (escape(self._case(one)) for one in welcome.altered)
            told += head(said) + listed(cases, len(welcome.altered), MOST)
        elif welcome.replaceable and welcome.changes:
            text = self.tr("No recorded case would be judged otherwise.")
            told += paragraph(toned("soft", escape(text)))
        return told

    def _case(self, one: Alteration) -> str:
        case, words = one.stored.case, altered_words(one.before, one.after, self._desk.language)
        return f"{case.claim.text or case.id[:8]}: {' '.join(words)}"

    @Slot(int)
    def _on_report_fitted(self, high: int) -> None:
        """Leave the room that the report does not need to the changes."""
        changes = self.welcome is not None and bool(self.welcome.changes)
        px = self._desk.theme.px
        whole = high + self.verdict.heightForWidth(self.report.width()) + px(14)
        most = min(whole, px(250)) if changes else _UNBOUNDED
        self._told.setMaximumHeight(most)

    @Slot()
    def _on_add_clicked(self) -> None:
        self.taken.emit("", False)

    @Slot()
    def _on_replace_clicked(self) -> None:
        self.taken.emit("", True)

    @Slot()
    def _on_both_clicked(self) -> None:
        self.taken.emit(self.own.text().strip(), False)


def _only(*parts: QWidget) -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 0, 0, 0)
    for part in parts:
        column.addWidget(part)
    column.addStretch(1)
    return page


def _card(content: QWidget | QVBoxLayout, room: int) -> QFrame:
    card = QFrame()
    card.setProperty("pane", "card")
    if isinstance(content, QWidget):
        column = QVBoxLayout(card)
        column.addWidget(content)
    else:
        column = content
        card.setLayout(column)
    column.setContentsMargins(room, room, room - 4, room)
    return card
