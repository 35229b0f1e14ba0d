"""A page of the workshop with the entries of one kind: a list, and a form for one of them."""

from dataclasses import replace
from typing import Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QScrollArea, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.scrolling import scrolled
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_confirm import Confirm, uses_words
from idkey.app.workshop.forms_entries import (
    ORDERED,
    Entry,
    EntryKind,
    added,
    duplicated,
    entries,
    entry,
    free_id,
    moved,
    put,
)
from idkey.app.workshop.forms_form import Form, with_value
from idkey.app.workshop.forms_list import EntryList, EntryRow
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.forms_problems import place_of, problems_of
from idkey.app.workshop.forms_references import removed, renamed, uses
from idkey.app.workshop.forms_split import side_by_side
from idkey.app.workshop.state import WorkshopState
from idkey.formats.problem import Problem
from idkey.model.key import Key

WIDEST = 760
"""Width of a form at 100 % text, in pixels: longer lines are hard to read."""


class EntryPage(LivePage):
    """The entries of one kind of the key on the table.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
        kind: Kind of the entries.
        name: What they are called.

    Attributes:
        form: The form for one entry.
        naming: Path of the name from which a new entry takes its id; empty for none.
    """

    naming = ""

    def __init__(self, state: WorkshopState, desk: Desk, *, kind: EntryKind, name: str) -> None:
        super().__init__(state)
        self.desk, self.kind = desk, kind
        self._current = ""
        self._unnamed: set[str] = set()
        self.list = EntryList(name, desk, ordered=kind in ORDERED)
        self.confirm = Confirm()
        self.form = Form(desk.theme)
        self.nothing = caption(self.tr("Nothing here yet. Add the first one."), "soft")
        self.pane: QScrollArea = scrolled(self._framed())
        self.made(self.form)
        self._lay_out()
        self._connect()
        self.follow()

    def made(self, form: Form) -> None:
        """Put the fields into the form."""
        raise NotImplementedError

    def title_of(self, one: Any) -> str:
        """What an entry is called."""
        raise NotImplementedError

    def detail_of(self, one: Any) -> str:
        """More about an entry, for the search."""
        return str(one.id)

    def mark_of(self, _: Any) -> str:
        """A sign before the entry in the list; empty for none."""
        return ""

    def blank(self, key: Key) -> Entry:
        """A new entry."""
        raise NotImplementedError

    def copied(self, one: Any) -> Any:
        """The copy of an entry before it is put into the key."""
        return one

    def copy_from(self, key: Key, _: str) -> Key:
        """The key before an entry of it is copied."""
        return key

    def changed(self, key: Key, one: Any, path: str, value: Any) -> Key:
        """The key after a field was given another value."""
        return put(key, self.kind, with_value(one, path, value))

    def renamed(self, key: Key, old: str, new: str) -> Key:
        """The key after an entry got another id."""
        return renamed(key, self.kind, old, new)

    def shown(self, editing: Editing, one: Any) -> None:
        """Show what the form does not show by itself, and offer what can be chosen."""

    @property
    def current(self) -> Entry | None:
        """The entry shown, if any."""
        return entry(self.key, self.kind, self._current) if self.state.editing else None

    def key_now(self) -> Key:
        """The key as it is now, for parts that ask later."""
        return self.key

    def current_id(self) -> str:
        """Id of the entry shown; empty when there is none."""
        return self._current

    def ids(self) -> tuple[str, ...]:
        """Ids in use."""
        return tuple(one.id for one in entries(self.key, self.kind))

    def focus_first(self) -> None:
        """Put the focus into the list."""
        self.list.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def close_work(self) -> None:
        """The same as `flush`, when the page is left for good."""
        self.flush()

    def flush(self) -> None:
        """Make what was typed a step."""
        if self.state.editing is not None:
            self.form.flush()

    def show_place(self, place: object) -> None:
        """Go to the entry and the field of a mistake, or to the entry of a remark."""
        self.fresh()
        if isinstance(place, Problem):
            found = place_of(self.key, place)
            if found is not None and found[0] is self.kind:
                self.list.choose(found[1])
                self.form.reach(found[2])
                return
        about = getattr(place, "about", ())
        known = next((one for one in about if one in self.ids()), None)
        if known is not None:
            self.list.choose(known)
            self.focus_first()

    def draw(self, editing: Editing) -> None:
        """Show the entries of the key on the table."""
        found = entries(editing.key, self.kind)
        ids = [one.id for one in found]
        if self._current not in ids:
            shown = [row.id for row in self.list.rows.rows]
            before = shown.index(self._current) if self._current in shown else 0
            self._current = ids[min(before, len(ids) - 1)] if ids else ""
        problems = problems_of(editing, self.kind)
        rows = tuple(
            EntryRow(
                id=one.id,
                title=f"{self.mark_of(one)} {self.title_of(one) or one.id}".strip(),
                detail=self.detail_of(one),
                wrong=one.id in problems,
            )
            for one in found
        )
        self.list.show_rows(rows, self._current)
        one = self.current
        self.form.setVisible(one is not None)
        self.nothing.setVisible(one is None)
        if one is not None:
            self.shown(editing, one)
            self.form.show_entry(one, f"{editing.folder}/{self.kind}/{one.id}")
            self.form.show_problems(problems.get(one.id, {}))

    def _framed(self) -> QWidget:
        frame = QWidget()
        column = QVBoxLayout(frame)
        column.setContentsMargins(8, 0, 0, 0)
        column.addWidget(self.nothing)
        column.addWidget(self.form)
        column.addStretch(1)
        self.form.setMaximumWidth(self.desk.theme.px(WIDEST))
        return frame

    def _lay_out(self) -> None:
        row = QVBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(side_by_side((self.list, self.confirm), self.pane, self.desk.theme))

    def _connect(self) -> None:
        self.list.chosen.connect(self._on_list_chosen)
        self.list.add_asked.connect(self.add)
        self.list.copy_asked.connect(self.copy)
        self.list.remove_asked.connect(self.ask_remove)
        self.list.moved.connect(self._on_list_moved)
        self.form.edited.connect(self._on_form_edited)

    def id_words(self, name: str) -> str:
        """What of the name of a new entry goes into its id; empty while it says too little."""
        return name

    @Slot()
    def add(self) -> None:
        """Add a new entry behind the one shown, and go to it."""
        self.flush()
        new, after = self.blank(self.key), self._current
        self._current = new.id
        self._unnamed.add(new.id)
        words = self.tr("New: {name}").format(name=self.title_of(new))
        self.state.change(added(self.key, self.kind, new, after=after), words)
        self.form.choose_first()

    @Slot()
    def copy(self) -> None:
        """Add a copy of the entry shown, and go to it."""
        self.flush()
        one = self.current
        if one is None:
            return
        new_id = free_id(self.ids(), f"{one.id}_2")
        key = duplicated(self.copy_from(self.key, one.id), self.kind, one.id, new_id)
        copy = entry(key, self.kind, new_id)
        key = put(put(key, self.kind, one), self.kind, replace(self.copied(copy), id=new_id))
        self._current = new_id
        self._unnamed.add(new_id)
        self.state.change(key, self.tr("Copy of {name}").format(name=self.title_of(one)))
        self.form.choose_first()

    @Slot()
    def ask_remove(self) -> None:
        """Remove the entry shown; when other things name it, ask first."""
        self.flush()
        one = self.current
        if one is None:
            return
        found = uses(self.key, self.kind, one.id)
        if not found.any:
            self.remove()
            return
        text = self.tr("{name} is named by others, which will let go of it: {uses}.")
        self.confirm.ask(
            text.format(name=self.title_of(one), uses=uses_words(found)),
            self.tr("Remove it everywhere"),
            self.remove,
        )

    def remove(self) -> None:
        """Remove the entry shown, and every mention of it."""
        one = self.current
        if one is not None:
            words = self.tr("Remove {name}").format(name=self.title_of(one))
            self.state.change(removed(self.key, self.kind, one.id), words)
            self.focus_first()

    @Slot(str)
    def _on_list_chosen(self, name: str) -> None:
        self.flush()
        self.confirm.put_away()
        self._current = name
        self.redraw()
        self.pane.verticalScrollBar().setValue(0)

    @Slot(int)
    def _on_list_moved(self, steps: int) -> None:
        one = self.current
        if one is not None:
            words = self.tr("Place of {name}").format(name=self.title_of(one))
            self.state.change(moved(self.key, self.kind, one.id, steps), words)

    @Slot(str, object)
    def _on_form_edited(self, path: str, value: object) -> None:
        one = self.current
        if one is None:
            return
        field = self.form.fields[path].name
        words = self.tr("{field} of {name}").format(field=field, name=self.title_of(one))
        if path == "id":
            self._current = str(value)
            key = self.renamed(self.key, one.id, str(value))
        else:
            key = self.changed(self.key, one, path, value)
            named = self.id_words(str(value)) if path == self.naming else ""
            if named and one.id in self._unnamed:
                self._unnamed.discard(one.id)
                key = self._named_after(key, one.id, named)
        self.state.change(key, words)

    def _named_after(self, key: Key, name: str, words: str) -> Key:
        """The key with a new entry's id made from its name."""
        others = {other for other in self.ids() if other != name}
        self._current = free_id(others, words.lower())
        return self.renamed(key, name, self._current)
