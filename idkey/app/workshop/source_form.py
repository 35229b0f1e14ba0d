"""The page of the sources: what is cited, and how much of it was seen."""

import re
from typing import Any

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields
from idkey.app.workshop.forms_entries import Entry, EntryKind, free_id
from idkey.app.workshop.forms_form import Form
from idkey.app.workshop.forms_page import EntryPage
from idkey.app.workshop.state import WorkshopState
from idkey.model.key import Key
from idkey.model.source import Source

translate = QCoreApplication.translate


class SourcePage(EntryPage):
    """Sources: list and form."""

    naming = "citation"

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        name = translate("source_form", "Sources")
        super().__init__(state, desk, kind=EntryKind.SOURCE, name=name)

    def title_of(self, one: Any) -> str:
        """Its id, which is how scores cite it."""
        return str(one.id)

    def detail_of(self, one: Any) -> str:
        """The work, for the search."""
        return f"{one.citation} · {one.kind}"

    def id_words(self, name: str) -> str:
        """Its first author and its year, as soon as both stand there."""
        author, year = re.search(r"\w+", name), re.search(r"\b\d{4}\w?\b", name)
        return f"{author[0]} {year[0]}" if author and year else ""

    def blank(self, key: Key) -> Entry:
        """A work nobody has seen yet."""
        citation = self.tr("Author, year, title, place")
        return Source(id=free_id(self.ids(), "new_source"), citation=citation)

    def made(self, form: Form) -> None:
        """The work, where it was read, how much of it was seen."""
        fields = Fields(self.state, self.desk)
        self.cited = caption(rank="soft")
        self.sort = fields.line(self.tr("Kind of work"), self.tr("primary, institution, legal …"))
        scope = self.tr("Only a part? Which one")
        seen = fields.flag(
            self.tr("I have seen it"), self.tr("The text itself, not a mention of it.")
        )
        form.add(
            {
                "citation": fields.prose(self.tr("Author, year, title and place")),
                "url": fields.line(self.tr("Where it was read")),
            }
        )
        form.add(
            {"kind": self.sort, "id": fields.id(self.tr("Id"), self.current_id, self.ids)},
            abreast=True,
        )
        form.add(
            {
                "seen": seen,
                "scope": fields.prose(scope, self.tr("Empty when all of it was seen")),
            }
        )
        form.column.addWidget(self.cited)

    def shown(self, editing: Editing, one: Any) -> None:
        """Say how often it is cited; offer kinds in use."""
        count = sum(one.id in score.sources for score in editing.key.scores)
        if count == 1:
            self.cited.setText(self.tr("1 score rests on it."))
        else:
            self.cited.setText(self.tr("{n} scores rest on it.").format(n=count))
        self.sort.suggest(source.kind for source in editing.key.sources)
