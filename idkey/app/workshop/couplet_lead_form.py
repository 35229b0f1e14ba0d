"""The form of one lead: what the animal shows, what that means, where it goes, and agreement."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QCoreApplication, Signal, Slot

from idkey.app.parts.captions import caption, restyle
from idkey.app.parts.desk import Desk
from idkey.app.workshop.couplet_facts import LeadFact
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields, taxon_options
from idkey.app.workshop.form_sees import SeesField
from idkey.app.workshop.forms_field import ChoiceField, Field
from idkey.app.workshop.forms_form import Form, with_value
from idkey.model.couplet import Lead, Sees
from idkey.model.key import Key
from idkey.report.names import name_of

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class Going:
    """Where a lead goes: on to a couplet, or to its end in taxa."""

    to: str
    taxa: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Written:
    """A lead as the form holds it."""

    statement: str
    sees: tuple[Sees, ...]
    going: Going
    remark: str


def written(lead: Lead) -> Written:
    """A lead as the form holds it."""
    return Written(lead.statement, lead.sees, Going(lead.to, lead.taxa), lead.remark)


def lead_of(one: Written) -> Lead:
    """The lead that a form holds."""
    going = one.going
    return Lead(
        statement=one.statement, sees=one.sees, to=going.to, taxa=going.taxa, remark=one.remark
    )


class GoalField(Field):
    """On to a couplet, or taxa.

    Args:
        name: What it is called.
        fields: Makes fields.
        desk: Look, drawings, language.
        below: Taxa a couplet can lead to.
    """

    def __init__(
        self, name: str, fields: Fields, *, desk: Desk, below: Callable[[str], tuple[str, ...]]
    ) -> None:
        super().__init__(name, desk.theme)
        self._below = below
        self._value = Going("", ())
        self.way = ChoiceField(name, desk.theme, options=())
        self.way.title.hide()
        self.taxa = fields.pick(self.tr("Taxa it ends in"))
        self.taxa.title.hide()
        self.taxa.least = 1
        self.put(self.way)
        self.column.insertWidget(2, self.taxa)
        self.way.edited.connect(self._on_way_edited)
        self.taxa.edited.connect(self._on_taxa_edited)

    def offer_key(self, key: Key, but: str) -> None:
        """Offer the couplets of a key, but for the one the lead is in, and its taxa."""
        on = self.tr("goes on to couplet {id}: {lead}")
        couplets = [
            (on.format(id=one.id, lead=_short(one.leads[0].statement)), one.id)
            for one in key.couplets
            if one.id != but
        ]
        self.way.offer([(self.tr("ends in these taxa"), ""), *couplets])
        self.taxa.offer(taxon_options(key))

    def show_value(self, value: Any) -> None:
        """Show where it goes."""
        self._value = value
        self.way.show_value(value.to)
        self.taxa.show_value(value.taxa)
        self.taxa.setVisible(not value.to)

    @Slot(object)
    def _on_way_edited(self, to: str) -> None:
        old = self._value
        if to:
            self.edited.emit(Going(to, ()))
        elif old.to and (taxa := self._below(old.to)):
            self.edited.emit(Going("", taxa))
        else:
            self.way.show_value(old.to)

    @Slot(object)
    def _on_taxa_edited(self, taxa: tuple[str, ...]) -> None:
        if taxa:
            self.edited.emit(Going("", taxa))


class LeadForm(Form):
    """One lead.

    Args:
        fields: Makes fields.
        desk: Look, drawings, language.
        below: Taxa a couplet can lead to.

    Signals:
        changed(lead: object): The lead is to be another one.
    """

    changed = Signal(object)

    def __init__(self, fields: Fields, desk: Desk, below: Callable[[str], tuple[str, ...]]) -> None:
        super().__init__(desk.theme)
        self._lead: Lead | None = None
        self.agreement = caption(rank="soft")
        self.goal = GoalField(self.tr("Where it goes"), fields, desk=desk, below=below)
        self.sees = SeesField(
            self.tr("What that means for the characters"), fields, theme=desk.theme
        )
        self.column.addWidget(self.agreement)
        self.add({"statement": fields.prose(self.tr("What the animal shows, as a sentence"))})
        self.add({"sees": self.sees, "going": self.goal})
        self.add({"remark": fields.prose(self.tr("Remark: what cannot be told apart, a caution"))})
        self.edited.connect(self._on_edited)

    def show_lead(self, editing: Editing, lead: Lead, couplet: str, *, owner: str) -> None:
        """Show a lead of a couplet; `owner` tells leads apart."""
        self._lead = lead
        self.sees.offer(editing.key.characters, editing)
        self.goal.offer_key(editing.key, but=couplet)
        self.show_entry(written(lead), owner)

    def say_facts(self, key: Key, fact: LeadFact | None) -> None:
        """Say whether the matrix agrees with the lead."""
        words, tone = agreement_words(key, fact)
        self.agreement.setText(words)
        restyle(self.agreement, "tone", tone)

    def say_problems(self, found: Mapping[str, tuple[str, ...]]) -> None:
        """Say what is wrong beside the fields."""
        named: dict[str, tuple[str, ...]] = {}
        for path, words in found.items():
            place = f"going.{path}" if path.split(".")[0] in ("to", "taxa") else path
            named[place] = (*named.get(place, ()), *words)
        self.show_problems(named)

    @Slot(str, object)
    def _on_edited(self, path: str, value: object) -> None:
        if self._lead is not None:
            self.changed.emit(lead_of(with_value(written(self._lead), path, value)))


def agreement_words(key: Key, fact: LeadFact | None) -> tuple[str, str]:
    """Whether the matrix agrees with a lead, and the tone of it."""
    if fact is None:
        return "", ""
    if fact.lost:
        return translate("couplets", "⚠ The couplet it names is not there."), "doubt"
    if fact.circles:
        return translate("couplets", "⚠ It leads back to where it came from."), "doubt"
    if fact.wrong:
        words = translate("couplets", "⚠ The scores speak against it for: {taxa}.")
        names = (name_of(key, taxon) for taxon in fact.wrong)
        return words.format(taxa=", ".join(names)), "doubt"
    if len(fact.taxa) == 1:
        words = translate("couplets", "✓ It agrees with the scores of the taxon it leads to.")
    else:
        words = translate("couplets", "✓ It agrees with the scores of all {n} taxa it leads to.")
    return words.format(n=len(fact.taxa)), ""


def _short(text: str) -> str:
    return text if len(text) <= 40 else f"{text[:39]}…"
