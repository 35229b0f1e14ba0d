"""Diagnoses and descriptions of all taxa, out of the scores as they are now."""

from dataclasses import dataclass
from html import escape
from pathlib import Path

from PySide6.QtCore import QModelIndex, Qt, Slot
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListView,
    QPushButton,
    QVBoxLayout,
)

from idkey.app.parts.captions import button, caption
from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.jobs import Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.segments import Segments
from idkey.app.parts.sheet import page_style, prose_page
from idkey.app.records.latest import Latest
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.printing import Form, write_text
from idkey.app.workshop.state import WorkshopState
from idkey.engine.compile import compile_key
from idkey.engine.matrix import Matrix
from idkey.model.key import Key
from idkey.report.taxon_text import taxa_page, taxa_text, taxon_html


@dataclass(frozen=True, slots=True)
class TaxonRow:
    """A taxon as the list shows it."""

    id: str
    name: str


class DiagnosisPage(LivePage):
    """A list of taxa, and what is to be said of the current one.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self._desk = desk
        self._key: Key | None = None
        self._matrix: Matrix | None = None
        self._looking = Latest(state.errands, self)
        self._writing = Latest(state.errands, self)
        self.words = QLineEdit()
        self.words.setPlaceholderText(self.tr("Search a taxon …"))
        self.words.setAccessibleName(self.tr("Search a taxon"))
        self.words.setClearButtonEnabled(True)
        self.rows: RowsModel[TaxonRow] = RowsModel(
            {
                int(Qt.ItemDataRole.DisplayRole): lambda row: row.name,
                int(Qt.ItemDataRole.ToolTipRole): lambda row: row.name,
            },
            parent=self,
        )
        self.list = self._made_list()
        self.margin = Segments(
            self.tr("Characters wanted against each other taxon"), (1, 2, 3), str
        )
        self.described = QCheckBox(self.tr("With description"))
        self.described.setChecked(True)
        self.text = prose_page(self.tr("Diagnosis and description"), desk.theme)
        self.text.document().setDefaultStyleSheet(_style(desk))
        self.copy = button(self.tr("Copy"))
        self.copy.setToolTip(self.tr("Copy the text of this taxon"))
        self.saves = {form: button(self._save_title(form)) for form in (Form.HTML, Form.TEXT)}
        self.said = caption(rank="small")
        self._lay_out()
        self._connect()
        self.follow()

    def _made_list(self) -> QListView:
        made = QListView()
        made.setModel(self.rows)
        made.setUniformItemSizes(True)
        made.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        made.setTextElideMode(Qt.TextElideMode.ElideRight)
        made.setAccessibleName(self.tr("Taxa"))
        airy(made, self._desk.theme)
        return made

    @property
    def busy(self) -> bool:
        """Whether something is worked out or written."""
        return self._looking.busy or self._writing.busy

    def focus_first(self) -> None:
        """Put the focus on the taxa."""
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def draw(self, editing: Editing) -> None:
        """Follow the key, once it has no errors."""
        if editing.checking or editing.key is self._key:
            return
        if not editing.sound:
            self.said.setText(self.tr("Shown as of the last key without errors."))
            return
        self._key, self._matrix = editing.key, None
        self.said.setText("")
        self._filter()
        self._look()

    def write(self, form: Form, file: Path) -> None:
        """Write what is to be said of all taxa to a file."""
        key, known, language = self._key, self._matrix, self._desk.language
        margin, described = self.margin.value, self.described.isChecked()
        if key is None:
            return

        def work(_: Tick) -> Path:  # on a pool thread
            matrix, taxa = known or compile_key(key), [taxon.id for taxon in key.taxa]
            made = taxa_page if form is Form.HTML else taxa_text
            text = made(matrix, taxa, language, margin=margin, described=described)
            write_text(file, text)
            return file

        self.said.setText(self.tr("Writing …"))
        self._writing.ask(work)

    def _filter(self) -> None:
        assert self._key is not None
        wanted = self.words.text().casefold()
        here = self.list.currentIndex().data(ROW_ROLE)
        rows = tuple(
            TaxonRow(taxon.id, taxon.name)
            for taxon in self._key.taxa
            if wanted in taxon.name.casefold()
        )
        self.rows.replace(rows)
        ids = [row.id for row in rows]
        if rows:
            row = ids.index(here.id) if here is not None and here.id in ids else 0
            self.list.setCurrentIndex(self.rows.index(row))

    def _look(self) -> None:
        """Work out what is to be said of the current taxon."""
        row = self.list.currentIndex().data(ROW_ROLE)
        key, known, language = self._key, self._matrix, self._desk.language
        margin, described = self.margin.value, self.described.isChecked()
        if key is None or row is None:
            self._looking.drop()  # its answer would be of a key that is no more
            self.text.setHtml("")
            return

        def work(_: Tick) -> tuple[Matrix, str]:  # on a pool thread
            matrix = known or compile_key(key)
            told = taxon_html(matrix, row.id, language, margin=margin, described=described)
            return matrix, told

        self._looking.ask(work)

    def _save_title(self, form: Form) -> str:
        return self.tr("All as HTML …") if form is Form.HTML else self.tr("All as text …")

    def _lay_out(self) -> None:
        head = FlowRow(10)
        head.add(caption(self.tr("Characters per rival"), "soft", wraps=False))
        for part in (self.margin, self.described):
            head.add(part)
        for pressed in (self.copy, *self.saves.values()):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
            head.add(pressed)
        left = QVBoxLayout()
        left.setSpacing(6)
        left.addWidget(self.words)
        left.addWidget(self.list, 1)
        card = QFrame()
        card.setProperty("pane", "card")
        inner = QVBoxLayout(card)
        inner.setContentsMargins(14, 6, 8, 8)
        inner.addWidget(self.text)
        body = QHBoxLayout()
        body.setSpacing(12)
        body.addLayout(left, 2)
        body.addWidget(card, 5)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 4, 4)
        column.setSpacing(8)
        column.addWidget(head)
        column.addLayout(body, 1)
        column.addWidget(self.said)

    def _connect(self) -> None:
        self.words.textChanged.connect(self._on_words_changed)
        self.list.selectionModel().currentChanged.connect(self._on_current_changed)
        self.margin.chosen.connect(self._on_wanted)
        self.described.toggled.connect(self._on_wanted)
        self.copy.clicked.connect(self._on_copy_clicked)
        for form, save in self.saves.items():
            save.setProperty("form", form.value)
            save.clicked.connect(self._on_save_clicked)
        self._looking.answered.connect(self._on_looked)
        self._writing.answered.connect(self._on_written)
        for work in (self._looking, self._writing):
            work.failed.connect(self._on_failed)

    @Slot()
    def _on_words_changed(self) -> None:
        if self._key is not None:
            self._filter()
            self._look()

    @Slot(QModelIndex, QModelIndex)
    def _on_current_changed(self, _: QModelIndex, __: QModelIndex) -> None:
        self._look()

    @Slot()
    def _on_wanted(self) -> None:
        self._look()

    @Slot(object)
    def _on_looked(self, found: tuple[Matrix, str]) -> None:
        self._matrix = found[0]
        self.text.setHtml(f"<body>{found[1]}</body>")

    @Slot()
    def _on_copy_clicked(self) -> None:
        QGuiApplication.clipboard().setText(self.text.toPlainText())
        self.said.setText(self.tr("Copied."))

    @Slot()
    def _on_save_clicked(self) -> None:
        pressed = self.sender()
        if self._key is None or not isinstance(pressed, QPushButton):
            return
        form = Form(pressed.property("form"))
        name = f"{self._key.id}-{self._key.version}-taxa{form.ending}"
        title, kind = self.tr("Where to write"), f"{form.name} (*{form.ending})"
        chosen, _ = QFileDialog.getSaveFileName(self, title, str(Path.home() / name), kind)
        if chosen:
            self.write(form, Path(chosen))

    @Slot(object)
    def _on_written(self, file: Path) -> None:
        self.said.setText(self.tr("Written: {file}").format(file=file))

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.said.setText(message_for(error).text)


def _style(desk: Desk) -> str:
    soft, px = escape(desk.theme.colours.soft), desk.theme.px
    return (
        f"{page_style(desk.theme)} h2 {{ font-size: {px(18)}px; margin-top: {px(6)}px; }}"
        f" .sources {{ color: {soft}; font-size: {px(12)}px; }}"
    )
