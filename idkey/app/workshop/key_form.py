"""The page of the key itself: title, scope, authors, cautions, glossary."""

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.scrolling import scrolled
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields
from idkey.app.workshop.forms_form import Form, with_value
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.forms_page import WIDEST
from idkey.app.workshop.forms_problems import head_problems, path_of
from idkey.app.workshop.forms_values import GLOSSARY
from idkey.app.workshop.state import WorkshopState
from idkey.figures.portrait import PLANS
from idkey.formats.problem import Problem

LICENCES = ("CC0-1.0", "CC-BY-4.0", "CC-BY-SA-4.0", "CC-BY-NC-4.0", "MIT")
"""SPDX identifiers offered while one types."""


class KeyPage(LivePage):
    """The key on the table as a whole.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self.desk = desk
        self.form = Form(desk.theme)
        self.form.setMaximumWidth(desk.theme.px(WIDEST))
        self.identity = caption(rank="soft")
        self._fill()
        frame = QWidget()
        column = QVBoxLayout(frame)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.form)
        column.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(frame))
        self.form.edited.connect(self._on_form_edited)
        self.follow()

    def draw(self, editing: Editing) -> None:
        """Show the key on the table."""
        key = editing.key
        counts = self.tr("{taxa} taxa · {characters} characters · {scores} scores")
        text = counts.format(
            taxa=len(key.taxa), characters=len(key.characters), scores=len(key.scores)
        )
        self.identity.setText(f"{key.id} · {text}")
        self.form.show_entry(key, f"{editing.folder}/key")
        self.form.show_problems(head_problems(editing))

    def show_place(self, place: object) -> None:
        """Go to the field of a mistake."""
        self.fresh()
        if isinstance(place, Problem):
            self.form.reach(path_of(place.loc))

    def focus_first(self) -> None:
        """Put the focus into the title."""
        self.form.focus_first()

    def flush(self) -> None:
        """Make what was typed a step."""
        if self.state.editing is not None:
            self.form.flush()

    def close_work(self) -> None:
        """Make what was typed a step."""
        self.flush()

    def _fill(self) -> None:
        fields, form = Fields(self.state, self.desk), self.form
        each = self.tr("One a line")
        plans = [(self.tr("none"), ""), *((plan, plan) for plan in PLANS)]
        licence = fields.line(self.tr("Licence"), self.tr("such as CC-BY-4.0"))
        licence.suggest(LICENCES)
        form.column.addWidget(self.identity)
        form.add({"title": fields.line(self.tr("Title"))})
        form.add(
            {
                "version": fields.line(self.tr("Version"), self.tr("such as 1.0.0")),
                "licence": licence,
                "body_plan": fields.choice(self.tr("Portraits are drawn as"), plans),
            },
            abreast=True,
        )
        cautions = self.tr("Cautions, shown with every verdict of this key")
        form.add(
            {
                "scope": fields.prose(self.tr("What it covers, and what it does not")),
                "authors": fields.lines(self.tr("Authors, each with what they did"), each),
                "cautions": fields.lines(cautions, each),
                "glossary": fields.typed(
                    self.tr("Glossary"), GLOSSARY, self.tr("term: explanation, one a line")
                ),
            }
        )

    @Slot(str, object)
    def _on_form_edited(self, path: str, value: object) -> None:
        if self.state.editing is not None:
            words = self.tr("{field} of the key").format(field=self.form.fields[path].name)
            self.state.change(with_value(self.state.editing.key, path, value), words)
