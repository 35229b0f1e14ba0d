"""A spreadsheet that becomes a key: what each column is taken for, and what does not fit."""

from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.records.latest import Latest
from idkey.errors import IdKeyError
from idkey.formats.arrival import Grid
from idkey.formats.imported import Imported
from idkey.formats.problem import KeyProblems, Problem
from idkey.formats.sheet import Sheet, headed
from idkey.formats.sheet_guess import Column, guess
from idkey.formats.sheet_key import key_from_sheet


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetSession:
    """A sheet on its way to a key.

    Attributes:
        file: Where it is from.
        sheets: All sheets of the file.
        title: Title the key shall have.
        number: Which of them is looked at.
        columns: What each of its columns is taken for; empty while it is being guessed.
        problems: What does not fit, by cell.
        trouble: What else keeps it from becoming a key; empty for nothing.
        result: The key it makes; None while something does not fit.
        checking: Whether problems and result are of a moment ago.
    """

    file: Path
    sheets: tuple[Sheet, ...]
    title: str = ""
    number: int = 0
    columns: tuple[Column, ...] = ()
    problems: tuple[Problem, ...] = ()
    trouble: str = ""
    result: Imported | None = None
    checking: bool = True

    @property
    def sheet(self) -> Sheet:
        """The sheet that is looked at."""
        return self.sheets[self.number]


class SheetState(QObject):
    """Holds the session; every change is worked out off the UI thread.

    Args:
        parent: Owner.

    Signals:
        changed(session: SheetSession): After each change, and when the key has been worked out.
    """

    changed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.session: SheetSession | None = None
        self._jobs = Jobs(threads=1, parent=self)
        self._working = Latest(self._jobs, self)
        self._working.answered.connect(self._on_worked)
        self._working.failed.connect(self._on_failed)

    @property
    def busy(self) -> bool:
        """Whether the key is still being worked out."""
        return self._working.busy

    def close(self) -> bool:
        """Let go of work under way."""
        return self._jobs.close()

    def show(self, grid: Grid) -> None:
        """Begin with a spreadsheet."""
        sheets = tuple(map(headed, grid.sheets))
        self._show(SheetSession(file=grid.file, sheets=sheets, title=grid.file.stem))

    @Slot(str)
    def set_title(self, title: str) -> None:
        """Say what the key shall be called."""
        if self.session is not None:
            self.session = replace(self.session, title=title)

    @Slot(int)
    def choose_sheet(self, number: int) -> None:
        """Look at another sheet of the file."""
        if self.session is not None and number != self.session.number:
            self._show(replace(self.session, number=number, columns=(), problems=(), result=None))

    @Slot(object)
    def set_column(self, column: Column) -> None:
        """Say what a column is."""
        session = self.session
        if session is None or session.columns[column.index] == column:
            return
        columns = list(session.columns)
        columns[column.index] = column
        self._show(replace(session, columns=tuple(columns)))

    def set_cell(self, row: int, column: int, text: str) -> None:
        """Correct a cell; the file stays as it is."""
        session = self.session
        if session is None or session.sheet.cell(row, column) == text:
            return
        rows = list(session.sheet.rows)
        cells = list(rows[row])
        cells += [""] * (column + 1 - len(cells))
        cells[column] = text
        rows[row] = tuple(cells)
        sheets = list(session.sheets)
        sheets[session.number] = replace(session.sheet, rows=tuple(rows))
        self._show(replace(session, sheets=tuple(sheets)))

    def _show(self, session: SheetSession) -> None:
        self.session = replace(session, checking=True)
        asked = self.session

        def work(tick: Tick) -> SheetSession:  # on a pool thread
            columns = asked.columns or guess(asked.sheet)
            return worked_out(replace(asked, columns=columns), tick)

        self._working.ask(work)
        self.changed.emit(self.session)

    @Slot(object)
    def _on_worked(self, session: SheetSession) -> None:
        if self.session is not None:  # the title may have been typed meanwhile
            self.session = replace(session, title=self.session.title)
            self.changed.emit(self.session)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        if self.session is not None:
            trouble = message_for(error).text
            self.session = replace(self.session, trouble=trouble, result=None, checking=False)
            self.changed.emit(self.session)


def worked_out(session: SheetSession, tick: Tick) -> SheetSession:
    """The session with the key its sheet makes, or what keeps it from making one."""
    problems: tuple[Problem, ...] = ()
    trouble = ""
    result = None
    try:
        result = key_from_sheet(session.sheet, session.columns, session.file, tick=tick)
    except KeyProblems as err:
        problems = err.problems
    except IdKeyError as err:
        trouble = message_for(err).text
    return replace(session, problems=problems, trouble=trouble, result=result, checking=False)
