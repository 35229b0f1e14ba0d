"""The page of the published checks: what is stated, and whether the matrix agrees."""

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QFrame, QVBoxLayout

from idkey.app.parts.captions import caption, restyle
from idkey.app.parts.desk import Desk
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields, source_options, taxon_options
from idkey.app.workshop.form_sees import SeesField
from idkey.app.workshop.forms_entries import Entry, EntryKind, free_id
from idkey.app.workshop.forms_field import Options
from idkey.app.workshop.forms_form import Form
from idkey.app.workshop.forms_page import EntryPage
from idkey.app.workshop.state import WorkshopState
from idkey.engine.checks import CheckResult, run_checks
from idkey.model.character import Sex, Stage
from idkey.model.check import Check, CheckKind
from idkey.model.key import Key
from idkey.report.names import name_of
from idkey.report.terms import sex_words, stage_words

translate = QCoreApplication.translate


def check_results(key: Key) -> Mapping[str, CheckResult]:
    """How each check that can be computed stands; nothing while checks name what is not there."""
    try:
        return {result.check.id: result for result in run_checks(key)}
    except KeyError:
        return {}


class CheckPage(EntryPage):
    """Checks: list and form, with the result beside each."""

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        self._of: Key | None = None
        self._results: Mapping[str, CheckResult] = {}
        name = translate("check_form", "Checks")
        super().__init__(state, desk, kind=EntryKind.CHECK, name=name)

    def title_of(self, one: Any) -> str:
        """Its id and what it states."""
        return f"{one.id}: {one.statement}"

    def mark_of(self, one: Any) -> str:
        """Whether the matrix agrees."""
        result = self._result(one.id)
        if result is None:
            return "–"
        return "✓" if result.passed else "✗"

    def blank(self, key: Key) -> Entry:
        """A statement that asks nothing yet."""
        return Check(
            id=free_id(self.ids(), "check"),
            kind=CheckKind.MATRIX,
            statement=self.tr("What is stated, in your own words"),
        )

    def made(self, form: Form) -> None:
        """Result, statement, what is seen, what follows, where from."""
        fields = Fields(self.state, self.desk)
        form.column.insertWidget(0, self._result_frame())
        kinds: Options = [
            (self.tr("these findings leave these taxa"), CheckKind.MATRIX),
            (self.tr("this label means these taxa"), CheckKind.NAME),
            (self.tr("where a label comes from"), CheckKind.LABEL_ORIGIN),
            (self.tr("stated in print, not computed"), CheckKind.LITERATURE),
        ]
        form.add(
            {
                "statement": fields.prose(self.tr("What is stated")),
                "kind": fields.choice(self.tr("What it is about"), kinds),
            }
        )
        self.sees = SeesField(self.tr("What is seen"), fields, theme=self.desk.theme)
        form.add({"sees": self.sees})
        self._add_specimen(form, fields)
        form.head(self.tr("What follows"))
        self.remain = fields.pick(self.tr("Taxa that must stay possible"))
        self.exclude = fields.pick(self.tr("Taxa that must be ruled out"))
        form.add({"remain": self.remain, "exclude": self.exclude})
        form.head(self.tr("Where it comes from"))
        self.sources = fields.sources(self.tr("Sources"))
        form.add(
            {
                "independence": fields.line(
                    self.tr("Does it rest on the same text as the scores?")
                ),
                "note": fields.prose(self.tr("Note")),
                "sources": self.sources,
                "id": fields.id(self.tr("Id"), self.current_id, self.ids),
            }
        )

    def _add_specimen(self, form: Form, fields: Fields) -> None:
        language = self.desk.language
        sexes = [(self.tr("not said"), None), *((sex_words(s, language), s) for s in Sex)]
        stages = [(self.tr("not said"), None), *((stage_words(s, language), s) for s in Stage)]
        form.add(
            {
                "sex": fields.choice(self.tr("Sex of the specimen"), sexes),
                "stage": fields.choice(self.tr("Its stage"), stages),
            },
            abreast=True,
        )
        form.add(
            {
                "names": fields.lines(self.tr("Label texts"), self.tr("One a line")),
                "origin": fields.line(self.tr("Country or region")),
            },
            abreast=True,
        )

    def _result_frame(self) -> QFrame:
        self.frame = QFrame()
        self.result = caption()
        column = QVBoxLayout(self.frame)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self.result)
        return self.frame

    def shown(self, editing: Editing, one: Any) -> None:
        """Say how it stands; hide what does not belong to its kind."""
        result = self._result(one.id)
        self._say(editing.key, result)
        self.sees.offer(editing.key.characters, editing)
        taxa = taxon_options(editing.key)
        self.remain.offer(taxa)
        self.exclude.offer(taxa)
        self.sources.offer(source_options(editing.key))
        named = one.kind in (CheckKind.NAME, CheckKind.LABEL_ORIGIN)
        fields = self.form.fields
        fields["names"].setVisible(named or bool(one.names))
        fields["origin"].setVisible(one.kind is CheckKind.LABEL_ORIGIN or bool(one.origin))
        for path in ("sees", "sex", "stage"):
            fields[path].setVisible(one.kind is not CheckKind.NAME or bool(one.sees))

    def _say(self, key: Key, result: CheckResult | None) -> None:
        if result is None:
            words = self.tr("– Not computed: it is kept for people to read.")
        elif result.passed:
            words = self.tr("✓ The matrix agrees.")
        else:
            words = "✗ " + " ".join(self._faults(key, result))
        self.result.setText(words)
        wrong = result is not None and not result.passed
        restyle(self.frame, "pane", "doubt" if wrong else "quiet")

    def _faults(self, key: Key, result: CheckResult) -> list[str]:
        found = []
        for taxa, words in (
            (result.wrongly_excluded, self.tr("The matrix rules out what must stay: {taxa}.")),
            (result.wrongly_kept, self.tr("The matrix leaves what must go: {taxa}.")),
        ):
            if taxa:
                found.append(words.format(taxa=", ".join(name_of(key, one) for one in taxa)))
        return found

    def _result(self, name: str) -> CheckResult | None:
        key = self.key
        if key is not self._of:
            self._of, self._results = key, check_results(key)
        return self._results.get(name)
