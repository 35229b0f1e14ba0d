"""The page of the characters: what is asked, its states, how to look, how far to trust it."""

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QCoreApplication, Slot

from idkey.app.parts.desk import Desk
from idkey.app.workshop.character_edit import (
    with_character_id,
    with_figures_named,
    with_kind,
    with_state_id,
    without_state,
)
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields, source_options
from idkey.app.workshop.form_sees import RequireField, askable
from idkey.app.workshop.forms_confirm import uses_words
from idkey.app.workshop.forms_entries import Entry, EntryKind, free_id
from idkey.app.workshop.forms_field import Field, Options
from idkey.app.workshop.forms_form import Form, value_at
from idkey.app.workshop.forms_page import EntryPage
from idkey.app.workshop.forms_references import Uses, changes
from idkey.app.workshop.forms_typed import TypedField
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.state_form_tiles import StatesField
from idkey.model.character import Character, Kind, Look, Reliability, Sex, Stage, State
from idkey.model.key import Key
from idkey.report.terms import look_words, sex_words, stage_words

translate = QCoreApplication.translate


class CharacterPage(EntryPage):
    """Characters: list and form."""

    naming = "name"

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        name = translate("character_form", "Characters")
        super().__init__(state, desk, kind=EntryKind.CHARACTER, name=name)

    def title_of(self, one: Any) -> str:
        """Its term."""
        return str(one.name)

    def detail_of(self, one: Any) -> str:
        """Its question, words and states, for the search."""
        states = (state.label for state in one.states)
        return " · ".join((one.question, one.id, *one.words, *states))

    def blank(self, key: Key) -> Entry:
        """A character with two states."""
        name = self.tr("New character")
        first, second = self._two()
        return Character(
            id=free_id(self.ids(), name),
            name=name,
            question=self.tr("What does one see?"),
            kind=Kind.CATEGORICAL,
            looks=(Look.TUB,),
            states=(State(id="state_1", label=first), State(id="state_2", label=second)),
        )

    def copied(self, one: Any) -> Any:
        """A copy that is not taken for the same character."""
        return replace(one, name=self.tr("{name} (copy)").format(name=one.name))

    def copy_from(self, key: Key, name: str) -> Key:
        """The drawings go along with a copy."""
        return with_figures_named(key, self._folder(), name)

    def renamed(self, key: Key, old: str, new: str) -> Key:
        """The drawings stay."""
        return with_character_id(key, self._folder(), old, new)

    def made(self, form: Form) -> None:
        """What is asked, states, looking, trust, when, found by."""
        fields = Fields(self.state, self.desk)
        form.add(
            {
                "name": fields.line(self.tr("Name: the term of the trade")),
                "question": fields.prose(self.tr("Question in plain words")),
            }
        )
        form.add(self._sort(fields), abreast=True)
        self.states = StatesField(self.tr("States"), fields, self.desk)
        form.add({"states": self.states})
        form.head(self.tr("How to look"))
        form.add(self._looking(fields))
        form.head(self.tr("How far to trust it"))
        form.add(self._trust(fields), abreast=True)
        form.add(self._numbers(fields), abreast=True)
        more = self.tr("Shops lean on it more than it can bear.")
        form.add({"rule_of_thumb": fields.flag(self.tr("A rule of thumb"), more)})
        form.head(self.tr("When it applies"))
        form.add(self._when(fields), abreast=True)
        self.requires = RequireField(
            self.tr("Only where another character shows"), fields, theme=self.desk.theme, most=1
        )
        form.add({"requires": self.requires})
        form.head(self.tr("Found by, and from where"))
        form.add(self._found(fields))
        self._connect_states()

    def _sort(self, fields: Fields) -> dict[str, Field]:
        kinds: Options = [
            (self.tr("states, in no order"), Kind.CATEGORICAL),
            (self.tr("states, from least to most"), Kind.ORDINAL),
            (self.tr("a count"), Kind.COUNT),
            (self.tr("a measurement"), Kind.MEASUREMENT),
            (self.tr("a ratio"), Kind.RATIO),
        ]
        return {
            "kind": fields.choice(self.tr("Kind"), kinds),
            "unit": fields.line(self.tr("Unit"), self.tr("such as mm")),
            "part": fields.line(self.tr("Part of the body"), self.tr("such as telson")),
        }

    def _looking(self, fields: Fields) -> dict[str, Field]:
        looks = fields.pick(self.tr("Ways of looking, easiest first"))
        looks.least = 1
        looks.offer([(look_words(look, self.desk.language), look) for look in Look])
        return {
            "looks": looks,
            "definition": fields.prose(self.tr("What exactly is looked at")),
            "how": fields.prose(self.tr("How to look, in one sentence")),
            "pitfalls": fields.prose(self.tr("What commonly goes wrong")),
        }

    def _trust(self, fields: Fields) -> dict[str, Field]:
        classes: Options = [
            (self.tr("high"), Reliability.HIGH),
            (self.tr("medium"), Reliability.MEDIUM),
            (self.tr("low"), Reliability.LOW),
        ]
        return {
            "reliability": fields.choice(self.tr("Observers agree"), classes),
            "error": fields.number(
                self.tr("Measured error rate"),
                lambda x: 0 <= x < 1,
                self.tr("A rate lies between 0 and 1, such as 0.08."),
            ),
        }

    def _numbers(self, fields: Fields) -> dict[str, Field]:
        return {
            "effort": fields.number(
                self.tr("Trouble (a glance is 1)"),
                lambda x: x > 0,
                self.tr("It must be above 0."),
            ),
            "uncertainty": fields.number(
                self.tr("Uncertainty of one measurement"),
                lambda x: x >= 0,
                self.tr("It must not be below 0."),
            ),
        }

    def _when(self, fields: Fields) -> dict[str, Field]:
        language = self.desk.language
        sexes = [(self.tr("both"), None), *((sex_words(sex, language), sex) for sex in Sex)]
        stages = [(self.tr("all"), None), *((stage_words(one, language), one) for one in Stage)]
        return {
            "sex": fields.choice(self.tr("Sex"), sexes),
            "stage": fields.choice(self.tr("Stage"), stages),
            "group": fields.line(self.tr("Weighed as one with")),
        }

    def _found(self, fields: Fields) -> dict[str, Field]:
        self.sources = fields.sources(self.tr("Sources"))
        return {
            "words": fields.lines(self.tr("Other words people search for"), self.tr("One a line")),
            "sources": self.sources,
            "id": fields.id(self.tr("Id"), self.current_id, self.ids),
        }

    def shown(self, editing: Editing, one: Any) -> None:
        """Offer what can be chosen; hide what does not belong to the kind."""
        self.states.show_key(editing.key, editing.folder, one)
        self.requires.offer(askable(editing.key, but=one.id), editing)
        self.sources.offer(source_options(editing.key))
        for path in ("unit", "uncertainty"):
            has = bool(value_at(one, path)) or one.kind.numeric
            self.form.fields[path].setVisible(has)
        for path in ("unit", "part", "group"):
            line = self.form.fields[path]
            if isinstance(line, TypedField):
                line.suggest(value_at(other, path) for other in editing.key.characters)

    def _connect_states(self) -> None:
        self.states.renamed.connect(self._on_state_renamed)
        self.states.remove_asked.connect(self._on_state_remove_asked)
        self.states.one.failed.connect(self.state.failed)

    def _folder(self) -> Any:
        assert self.state.editing is not None
        return self.state.editing.folder

    def _two(self) -> tuple[str, str]:
        return self.tr("First state"), self.tr("Second state")

    @Slot(str, object)
    def _on_form_edited(self, path: str, value: object) -> None:
        one = self.current
        if path != "kind" or not isinstance(one, Character):
            super()._on_form_edited(path, value)
            return
        kind = Kind(str(value))
        key = with_kind(self.key, one.id, kind, words=self._two())
        words = self.tr("Kind of {name}").format(name=one.name)
        lost = changes(self.key, key)
        if lost == Uses(characters=(one.id,)):
            self.state.change(key, words)
            return
        self.form.fields["kind"].show_value(one.kind)
        text = self.tr("Between states and numbers nothing can be kept. This changes: {uses}.")
        self.confirm.ask(
            text.format(uses=uses_words(lost)),
            self.tr("Change the kind"),
            lambda: self.state.change(key, words),
        )

    @Slot(str, str)
    def _on_state_renamed(self, old: str, new: str) -> None:
        words = self.tr("Id of the state {name}").format(name=old)
        key = with_state_id(self.key, self._folder(), self._current, old=old, new=new)
        self.state.change(key, words)

    @Slot(str)
    def _on_state_remove_asked(self, state: str) -> None:
        one = self.current
        if not isinstance(one, Character) or len(one.states) < 2:
            return
        key = without_state(self.key, one.id, state)
        label = one.state(state).label
        words = self.tr("Remove the state {name}").format(name=label)
        found = replace(changes(self.key, key), characters=())
        if not found.any and key.scores == self.key.scores:
            self.state.change(key, words)
            return
        text = self.tr("{name} is named by scores, leads or checks, which will let go of it.")
        self.confirm.ask(
            f"{text.format(name=label)} {uses_words(found)}".strip(),
            self.tr("Remove it everywhere"),
            lambda: self.state.change(key, words),
        )
