"""The couplets as they are printed: preview, PDF, HTML and text."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QSize, Qt, QUrl, Slot
from PySide6.QtGui import QPixmap, QTextDocument
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFrame,
    QPushButton,
    QVBoxLayout,
)

from idkey import places
from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.jobs import Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.rendering import on_plate
from idkey.app.parts.segments import Segments
from idkey.app.parts.sheet import prose_page
from idkey.app.records.latest import Latest
from idkey.app.workshop.couplet_preview import READING, preview_html
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.printing import Form, printed
from idkey.app.workshop.state import WorkshopState
from idkey.model.key import Key
from idkey.report.printed_figures import Drawings, LeadFigure, lead_figures
from idkey.report.printed_key import Layout, PrintedLead

FIGURE = (88, 66)
"""Width and height of a drawing in the preview, in pixels at 100 %."""


class PrintPage(LivePage):
    """Shows the printed key and writes it to a file.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self._desk = desk
        self._key: Key | None = None
        self._latest = Latest(state.errands, self)
        self.layout_choice = Segments(self.tr("Layout"), Layout, self._layout_title)
        self.figures = QCheckBox(self.tr("With drawings"))
        self.figures.setChecked(True)
        self.saves = {form: button(self._save_title(form)) for form in Form}
        self.said = caption(rank="small")
        self.preview = prose_page(self.tr("The printed key"), desk.theme)
        self.preview.setTextInteractionFlags(READING)
        self._lay_out()
        self.layout_choice.chosen.connect(self._on_wanted)
        self.figures.toggled.connect(self._on_wanted)
        self.preview.anchorClicked.connect(self._on_link)
        self._latest.answered.connect(self._on_written)
        self._latest.failed.connect(self._on_failed)
        self.follow()

    @property
    def busy(self) -> bool:
        """Whether a file is being written."""
        return self._latest.busy

    def focus_first(self) -> None:
        """Put the focus on the printed key."""
        self.preview.setFocus(Qt.FocusReason.OtherFocusReason)

    def draw(self, editing: Editing) -> None:
        """Show the key as it is now."""
        if editing.key is not self._key:
            self._key = editing.key
            self._show()

    def write(self, form: Form, file: Path) -> None:
        """Write the printed key to a file."""
        key, layout, language = self._key, self.layout_choice.value, self._desk.language
        drawings = self._drawings
        if key is None:
            return

        def work(_: Tick) -> Path:  # on a pool thread
            return printed(key, form, file, layout=layout, language=language, drawings=drawings)

        self.said.setText(self.tr("Writing …"))
        self._latest.ask(work)

    @property
    def _drawings(self) -> Drawings | None:
        """Where the drawings are: beside the key, then those of the program; None for none."""
        editing = self.state.editing
        if editing is None or not self.figures.isChecked():
            return None
        return Drawings(places.images_folder(), (editing.folder.parent,))

    def _show(self) -> None:
        key = self._key
        if key is None:
            return
        for save in self.saves.values():
            save.setEnabled(bool(key.couplets))
        if not key.couplets:
            text = self.tr(
                "The key has no couplets yet. Write them, or build them from the scores."
            )
            self.preview.setPlainText(text)
            return
        layout, desk = self.layout_choice.value, self._desk
        place = self.preview.verticalScrollBar().value()
        html = preview_html(
            key, layout, desk.language, px=desk.theme.px, figures=self._figure_html(key)
        )
        self.preview.setHtml(f"<body>{html}</body>")
        self.preview.verticalScrollBar().setValue(place)

    def _figure_html(self, key: Key) -> Callable[[PrintedLead], str]:
        drawings = self._drawings
        wide, high = (self._desk.theme.px(side) for side in FIGURE)

        def html(lead: PrintedLead) -> str:
            drawn = [] if drawings is None else list(lead_figures(key, lead, drawings))
            tags = [
                f'<img src="{self._kept(key, figure)}" width="{wide}" height="{high}">&nbsp;'
                for figure in drawn
            ]
            return f"<br>{''.join(tags)}" if tags else ""

        return html

    def _kept(self, key: Key, figure: LeadFigure) -> str:
        """Name under which the page finds a drawing."""
        name = f"figure:{figure.character}/{figure.state}"
        url, document = QUrl(name), self.preview.document()
        kind = QTextDocument.ResourceType.ImageResource
        document.addResource(kind, url, self._plate(key, figure))
        return url.toString()

    def _plate(self, key: Key, figure: LeadFigure) -> QPixmap:
        """The drawing on the plate it stands on everywhere in the window."""
        theme, ratio = self._desk.theme, self.devicePixelRatioF()
        size = QSize(*(theme.px(side) for side in FIGURE))
        inner = size - QSize(theme.px(8), theme.px(8))
        character = key.character[figure.character]
        if figure.state:
            state = character.state(figure.state)
            drawn = self._desk.pictures.tile(key, character, state, size=inner, ratio=ratio)
        else:
            drawn = self._desk.pictures.measure(key, character, size=inner, ratio=ratio)
        return on_plate(drawn, size, ratio=ratio, theme=theme)

    def _layout_title(self, layout: Layout) -> str:
        bracketed = layout is Layout.BRACKETED
        return self.tr("Bracketed") if bracketed else self.tr("Indented")

    def _save_title(self, form: Form) -> str:
        return {
            Form.PDF: self.tr("Save as PDF …"),
            Form.HTML: self.tr("Save as HTML …"),
            Form.TEXT: self.tr("Save as text …"),
        }[form]

    def _lay_out(self) -> None:
        head = FlowRow(10)
        for part in (self.layout_choice, self.figures):
            head.add(part)
        for form, save in self.saves.items():
            save.setAutoDefault(True)  # Enter presses it, outside a dialog too
            save.setProperty("form", form.value)
            save.clicked.connect(self._on_save_clicked)
            head.add(save)
        card = QFrame()
        card.setProperty("pane", "card")
        inner = QVBoxLayout(card)
        inner.setContentsMargins(14, 8, 8, 8)
        inner.addWidget(self.preview)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 4, 4)
        column.setSpacing(8)
        column.addWidget(head)
        column.addWidget(card, 1)
        column.addWidget(self.said)

    @Slot()
    def _on_wanted(self) -> None:
        self._show()

    @Slot(QUrl)
    def _on_link(self, url: QUrl) -> None:
        self.preview.scrollToAnchor(f"c{url.toString().partition(':')[2]}")

    @Slot()
    def _on_save_clicked(self) -> None:
        pressed = self.sender()
        if self._key is None or not isinstance(pressed, QPushButton):
            return
        form = Form(pressed.property("form"))
        name = f"{self._key.id}-{self._key.version}{form.ending}"
        kind = f"{form.name} (*{form.ending})"
        title = self.tr("Where to write")
        chosen, _ = QFileDialog.getSaveFileName(self, title, str(Path.home() / name), kind)
        if chosen:
            self.write(form, Path(chosen))

    @Slot(object)
    def _on_written(self, file: Path) -> None:
        self.said.setText(self.tr("Written: {file}").format(file=file))

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.said.setText(message_for(error).text)
