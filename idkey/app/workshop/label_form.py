"""The page of the labels: what they cover, what hides under them, and what the bench would say."""

from typing import Any

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QFrame, QVBoxLayout

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import (
    Fields,
    character_options,
    source_options,
    taxon_options,
)
from idkey.app.workshop.forms_entries import Entry, EntryKind, free_id
from idkey.app.workshop.forms_field import Options
from idkey.app.workshop.forms_form import Form
from idkey.app.workshop.forms_page import EntryPage
from idkey.app.workshop.label_form_rates import RatesField
from idkey.app.workshop.state import WorkshopState
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.report.label_words import covers_words, mixup_warning
from idkey.report.language import Language
from idkey.report.words import rich

translate = QCoreApplication.translate


class LabelPage(EntryPage):
    """Labels: list and form."""

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        name = translate("label_form", "Labels")
        super().__init__(state, desk, kind=EntryKind.LABEL, name=name)

    def title_of(self, one: Any) -> str:
        """The label as the trade writes it."""
        return str(one.text)

    def detail_of(self, one: Any) -> str:
        """Its spellings, for the search."""
        return " · ".join((one.id, *one.variants))

    def blank(self, key: Key) -> Entry:
        """A label that covers nothing yet."""
        return Label(id=free_id(self.ids(), "label"), text=self.tr("New label"))

    def made(self, form: Form) -> None:
        """Preview, text, what it covers, what is sold under it, what decides, rates."""
        fields = Fields(self.state, self.desk)
        each = self.tr("One a line")
        form.add({"text": fields.line(self.tr("The label as the trade writes it"))})
        form.column.addWidget(self._preview())
        form.add(
            {
                "variants": fields.lines(self.tr("Other spellings and languages"), each),
            }
        )
        self.covers = fields.pick(self.tr("Taxa it properly covers"))
        self.sold_as = fields.pick(self.tr("Other taxa often sold under it"))
        form.add({"covers": self.covers, "sold_as": self.sold_as})
        form.add(
            {
                "covers_outside": fields.lines(self.tr("It covers, outside this key"), each),
                "sold_outside": fields.lines(self.tr("Sold under it, outside this key"), each),
            },
            abreast=True,
        )
        self._add_mixup(form, fields)
        form.head(self.tr("What a wrong label does"))
        form.add(
            {
                "safety": fields.prose(self.tr("To a person")),
                "law": fields.prose(self.tr("To the papers")),
            }
        )
        self._add_rest(form, fields)

    def _add_mixup(self, form: Form, fields: Fields) -> None:
        self.deciding = fields.pick(self.tr("Characters that decide it, best first"))
        evidence: Options = [
            (self.tr("not said"), ""),
            (self.tr("published for the trade"), "trade"),
            (self.tr("published in taxonomy"), "taxonomy"),
            (self.tr("hobby practice, no source"), "common_practice"),
        ]
        form.add(
            {
                "deciding": self.deciding,
                "why": fields.prose(self.tr("Why the mix-up happens")),
                "evidence": fields.choice(self.tr("How the mix-up is known"), evidence),
            }
        )

    def _add_rest(self, form: Form, fields: Fields) -> None:
        form.head(self.tr("What it usually turns out to be, before your own cases"))
        name = self.tr("Starting rates")
        self.rates = RatesField(name, fields, theme=self.desk.theme, key=self.key_now)
        self.rates.title.hide()
        self.sources = fields.sources(self.tr("Sources"))
        form.add(
            {
                "rates": self.rates,
                "sources": self.sources,
                "id": fields.id(self.tr("Id"), self.current_id, self.ids),
            }
        )

    def _preview(self) -> QFrame:
        frame = QFrame()
        frame.setProperty("pane", "doubt")
        head = caption(self.tr("At the bench this label says"), "overline")
        self.preview = caption()
        self.preview.setTextFormat(Qt.TextFormat.RichText)
        column = QVBoxLayout(frame)
        column.setContentsMargins(14, 8, 14, 10)
        column.setSpacing(3)
        column.addWidget(head)
        column.addWidget(self.preview)
        return frame

    def shown(self, editing: Editing, one: Any) -> None:
        """Say what the bench would say; offer what can be chosen."""
        key = editing.key
        self.preview.setText(rich(key, preview_words(key, one, self.desk.language)))
        taxa = taxon_options(key)
        self.covers.offer(taxa)
        self.sold_as.offer(taxa)
        self.deciding.offer(character_options(key))
        self.sources.offer(source_options(key))


def preview_words(key: Key, label: Label, language: Language) -> str:
    """What the bench says of a label before anything is looked at, with its starting rates."""
    parts = [covers_words(key, label, language), mixup_warning(key, label, language)]
    if label.rates is not None:
        ranked = sorted(label.rates.shares.items(), key=lambda item: -item[1])
        shares = ", ".join(
            f"{key.taxon[taxon].name} {language.share(share)}"
            for taxon, share in ranked
            if taxon in key.taxon
        )
        parts.append(translate("label_form", "Usually it is: {shares}.").format(shares=shares))
    return " ".join(parts)
