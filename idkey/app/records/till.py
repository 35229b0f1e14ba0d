"""Sales from elsewhere: tables of a till, a watched folder, documents that come back."""

from collections.abc import Callable
from html import escape
from pathlib import Path

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from idkey.app.parts.captions import button, caption
from idkey.app.parts.columns import filled
from idkey.app.parts.fitting import beside
from idkey.app.parts.jobs import Jobs
from idkey.app.parts.messages import message_for
from idkey.app.parts.prose import bullets, paragraph
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.sheet import prose_page
from idkey.app.parts.theme import Theme
from idkey.app.parts.worded import worded
from idkey.app.records.columns_dialog import ColumnsDialog
from idkey.app.records.latest import Latest
from idkey.app.records.sales import Sales, Table
from idkey.app.records.till_watch import TillWatch
from idkey.report.checking import Checked
from idkey.report.language import Language
from idkey.report.verify import verify_words
from idkey.store.till_list import TakenIn
from idkey.store.watching import Attached


class TillPage(QWidget):
    """Takes sales in, writes them out, watches the till's folder, checks documents.

    Args:
        sales: What is done off the UI thread.
        watch: The watched folder.
        theme: The look.
        language: Language of fields and answers.
        jobs: Where the work is done.
    """

    def __init__(
        self, sales: Sales, watch: TillWatch, theme: Theme, *, language: Language, jobs: Jobs
    ) -> None:
        super().__init__()
        self._sales, self._theme, self._language = sales, theme, language
        self.watch = watch
        self._works = {name: Latest(jobs, self) for name in ("table", "taken", "out", "checked")}
        self.take = button(self.tr("Take in a table …"), "main")
        self.write = button(self.tr("Write a table …"))
        self.buyers = QCheckBox(self.tr("with references to buyers"))
        self.taken = self._browser(self.tr("What became of the table"))
        self.choose = button(self.tr("Watch a folder …"))
        self.stop = button(self.tr("Stop watching"))
        self.where = caption(rank="soft")
        self.log = self._browser(self.tr("Rationales that were attached"))
        self.check = button(self.tr("Check a document …"))
        self._checked_file = ""
        self.answer = self._browser(self.tr("What the check found"))
        self._lay_out()
        self._connect()
        self._show_watch()

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self.watch.busy or any(one.busy for one in self._works.values())

    def refresh(self) -> None:
        """Nothing is counted here."""

    def take_in(self, file: Path) -> None:
        """Read a table; the columns are asked for next."""
        self._works["table"].ask(lambda _: self._sales.read(file))

    def write_out(self, file: Path) -> None:
        """Write the sales of all cases as CSV."""
        buyers = self.buyers.isChecked()
        self._works["out"].ask(lambda _: self._sales.write(file, buyers=buyers))

    def check_document(self, file: Path) -> None:
        """Hold a rationale against the record and the key in hand."""
        language = self._language
        self._checked_file = file.name
        self.answer.setPlainText(self.tr("Reading {file} …").format(file=file.name))
        self._works["checked"].ask(lambda _: self._sales.checked(file, language))

    def _browser(self, name: str) -> QTextBrowser:
        made = prose_page(name, self._theme)
        made.setMinimumHeight(self._theme.px(84))
        return made

    def _lay_out(self) -> None:
        text = self.tr(
            "A table of the till (CSV) adds prices, dates, buyers and papers to the sales of this "
            "book, by the number of the sale. What a line leaves empty stays as it was noted."
        )
        sales = self._card(self.tr("Sales of the till"), text)
        sales.addLayout(_row(self.take, self.write))
        sales.addWidget(self.buyers)
        sales.addWidget(self.taken, 1)
        text = self.tr(
            "The till keeps one file or folder per sale, named by its number: the rationale of "
            "each case that went out with it is put beside it, once. This works while the window "
            "is open."
        )
        watched = self._card(self.tr("Watched folder"), text)
        watched.addLayout(_row(self.choose, self.stop))
        watched.addWidget(self.where)
        watched.addWidget(self.log, 1)
        text = self.tr(
            "A rationale that somebody brings back, as PDF or JSON: is it whole, does it match "
            "the record, and would the key in hand still say the same?"
        )
        back = self._card(self.tr("A rationale comes back"), text)
        back.addLayout(_row(self.check))
        back.addWidget(self.answer, 1)
        left, right = QVBoxLayout(), QVBoxLayout()
        for part in (sales, back):
            left.addWidget(_holder(part), 1)
        right.addWidget(_holder(watched))
        row = beside(self._theme)
        row.setSpacing(16)
        for side in (left, right):
            side.setSpacing(12)
            row.addLayout(side, 1)
        column = QVBoxLayout()
        column.addLayout(row)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(filled(column)))

    def _card(self, title: str, said: str) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(8)
        column.addWidget(caption(title, "strong"))
        column.addWidget(caption(said, "soft"))
        return column

    def _connect(self) -> None:
        self.take.clicked.connect(self._on_take_clicked)
        self.write.clicked.connect(self._on_write_clicked)
        self.choose.clicked.connect(self._on_choose_clicked)
        self.stop.clicked.connect(self.watch.stop)
        self.check.clicked.connect(self._on_check_clicked)
        self.watch.changed.connect(self._show_watch)
        self.watch.failed.connect(self._on_watch_failed)
        answers: dict[str, tuple[Callable[..., None], QTextBrowser]] = {
            "table": (self._on_table, self.taken),
            "taken": (self._on_taken, self.taken),
            "out": (self._on_out, self.taken),
            "checked": (self._on_checked, self.answer),
        }
        for name, (slot, where) in answers.items():
            self._works[name].answered.connect(slot)
            self._works[name].failed.connect(lambda error, page=where: _tell(page, error))

    @Slot()
    def _show_watch(self) -> None:
        folder = self.watch.folder
        self.stop.setVisible(folder is not None)
        none = self.tr("No folder is watched.")
        text = self.tr("Watching {folder}").format(folder=folder)
        self.where.setText(none if folder is None else text)
        self.log.setHtml(
            f"<body>{bullets(escape(self._attached(a)) for a in self.watch.log)}</body>"
        )

    def _attached(self, one: Attached) -> str:
        if one.file is None:
            return self.tr("Sale {sale}: {problem}").format(
                sale=one.sale, problem=worded(one.problem)
            )
        return self.tr("Sale {sale}: {file}").format(sale=one.sale, file=one.file.name)

    @Slot(object)
    def _on_watch_failed(self, error: Exception) -> None:
        self.where.setText(message_for(error).text)

    @Slot()
    def _on_take_clicked(self) -> None:
        title = self.tr("Table of the till")
        chosen, _ = QFileDialog.getOpenFileName(self, title, str(Path.home()), "CSV (*.csv *.txt)")
        if chosen:
            self.take_in(Path(chosen))

    @Slot()
    def _on_write_clicked(self) -> None:
        title, start = self.tr("Where to write"), str(Path.home() / "sales.csv")
        chosen, _ = QFileDialog.getSaveFileName(self, title, start, "CSV (*.csv)")
        if chosen:
            self.write_out(Path(chosen))

    @Slot()
    def _on_choose_clicked(self) -> None:
        start = str(self.watch.folder or Path.home())
        chosen = QFileDialog.getExistingDirectory(self, self.tr("Folder of the till"), start)
        if chosen:
            self.watch.start(Path(chosen))

    @Slot()
    def _on_check_clicked(self) -> None:
        title = self.tr("A rationale")
        kinds = "PDF, JSON (*.pdf *.json)"
        chosen, _ = QFileDialog.getOpenFileName(self, title, str(Path.home()), kinds)
        if chosen:
            self.check_document(Path(chosen))

    @Slot(object)
    def _on_table(self, table: Table) -> None:
        dialog = ColumnsDialog(
            table.sample, table.mapping, theme=self._theme, language=self._language, parent=self
        )
        works, sales = self._works, self._sales
        dialog.told.connect(
            lambda chosen: works["taken"].ask(lambda _: sales.take_in(table, chosen))
        )
        dialog.open()

    @Slot(object)
    def _on_taken(self, done: TakenIn) -> None:
        said = self.tr("Cases with a new or corrected sale: {n}.").format(n=len(done.attached))
        lines = [
            self.tr("Line {line}: sale {number} belongs to no case of this book.").format(
                line=one.line, number=one.sale.number
            )
            for one in done.unmatched
        ]
        html = paragraph(escape(said)) + bullets(map(escape, (*lines, *map(worded, done.problems))))
        self.taken.setHtml(f"<body>{html}</body>")

    @Slot(object)
    def _on_out(self, file: Path) -> None:
        said = self.tr("Written: {file}").format(file=file)
        self.taken.setHtml(f"<body>{paragraph(escape(said))}</body>")

    @Slot(object)
    def _on_checked(self, found: Checked) -> None:
        good = self.tr("✓ Nothing speaks against this document.")
        bad = self.tr("✗ Something does not match: do not rely on this document.")
        head = paragraph(escape(good if found.good else bad), "" if found.good else "hazard")
        head = f"{paragraph(escape(self._checked_file), 'soft')}{head}"
        lines = (*verify_words(found.result, self._language).splitlines(), *found.remarks)
        self.answer.setHtml(f"<body>{head}{bullets(map(escape, lines))}</body>")


def _row(*parts: QWidget) -> QHBoxLayout:
    row = QHBoxLayout()
    row.setSpacing(8)
    for part in parts:
        row.addWidget(part)
    row.addStretch(1)
    return row


def _holder(column: QVBoxLayout) -> QFrame:
    card = QFrame()
    card.setProperty("pane", "card")
    card.setLayout(column)
    return card


def _tell(page: QTextBrowser, error: Exception) -> None:
    page.setHtml(f"<body>{paragraph(escape(message_for(error).text), 'doubt')}</body>")
