"""The page of the taxa: names, dangers, papers, and the portrait drawn from the scores."""

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.desk import Desk
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields, source_options
from idkey.app.workshop.forms_entries import Entry, EntryKind, free_id
from idkey.app.workshop.forms_field import Field, Options
from idkey.app.workshop.forms_form import Form, value_at
from idkey.app.workshop.forms_page import EntryPage
from idkey.app.workshop.forms_pick import PickField
from idkey.app.workshop.forms_typed import TypedField
from idkey.app.workshop.forms_values import SIZE
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.taxon_portrait import TaxonPortrait
from idkey.model.key import Key
from idkey.model.taxon import Climate, Danger, Taxon
from idkey.report.terms import climate_words, danger_words

translate = QCoreApplication.translate

_SUGGESTED = ("family", "subfamily", "rank", "group", "permit.since", "permit.as_of")
_SOURCED = ("hazard.sources", "permit.sources", "sources")


class TaxonPage(EntryPage):
    """Taxa: list and form."""

    naming = "name"

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        name = translate("taxon_form", "Taxa")
        super().__init__(state, desk, kind=EntryKind.TAXON, name=name)

    def title_of(self, one: Any) -> str:
        """Its accepted name."""
        return str(one.name)

    def detail_of(self, one: Any) -> str:
        """Other names, for the search."""
        return " · ".join((one.id, one.authority, *one.vernacular, *one.synonyms))

    def blank(self, key: Key) -> Entry:
        """A taxon without anything said about it."""
        name = self.tr("New taxon")
        return Taxon(id=free_id(self.ids(), name), name=name)

    def copied(self, one: Any) -> Any:
        """A copy that is not taken for the same taxon."""
        return replace(one, name=self.tr("{name} (copy)").format(name=one.name))

    def made(self, form: Form) -> None:
        """Portrait, names, life, danger, papers, the rest."""
        fields = Fields(self.state, self.desk)
        self.portrait = TaxonPortrait(self.desk)
        form.column.insertWidget(0, self.portrait)
        form.add(self._names(fields), abreast=True)
        form.add(self._ranks(fields), abreast=True)
        form.add(self._lists(fields), abreast=True)
        form.head(self.tr("Danger to people"))
        form.add(self._hazard(fields), abreast=True)
        form.add(self._hazard_more(fields))
        form.head(self.tr("Papers – law changes, so say how old the data is"))
        form.add(self._lists_of_law(fields), abreast=True)
        form.add(self._dates_of_law(fields), abreast=True)
        form.add(self._permit_more(fields))
        form.head(self.tr("Where it lives, and its size"))
        form.add({"range": fields.prose(self.tr("Range"))})
        form.add(self._life(fields), abreast=True)
        form.add(
            {
                "size": fields.line(self.tr("Size in words, with unit")),
                "climate_note": fields.prose(self.tr("More about the climate")),
            }
        )
        form.head(self.tr("Notes and sources"))
        form.add(
            {
                "note": fields.prose(self.tr("Note")),
                "sources": fields.sources(self.tr("Sources")),
                "id": fields.id(self.tr("Id (file name)"), self.current_id, self.ids),
            }
        )

    def _names(self, fields: Fields) -> dict[str, Field]:
        hint = self.tr("Author, year; in brackets where the genus changed")
        return {
            "name": fields.line(self.tr("Accepted name"), self.tr("Genus species")),
            "authority": fields.line(self.tr("Authority"), hint),
        }

    def _ranks(self, fields: Fields) -> dict[str, Field]:
        return {
            "family": fields.line(self.tr("Family")),
            "subfamily": fields.line(self.tr("Subfamily")),
            "rank": fields.line(self.tr("Rank")),
            "group": fields.line(self.tr("Species group")),
        }

    def _lists(self, fields: Fields) -> dict[str, Field]:
        each = self.tr("One a line")
        return {
            "vernacular": fields.lines(self.tr("Everyday names"), each),
            "synonyms": fields.lines(self.tr("Synonyms"), each),
        }

    def _hazard(self, fields: Fields) -> dict[str, Field]:
        language = self.desk.language
        levels = [(danger_words(level, language), level) for level in Danger]
        means = fields.pick(self.tr("By what"), add=self.tr("Add …"))
        means.offer(
            [(self.tr("sting"), "sting"), (self.tr("bite"), "bite"), (self.tr("hairs"), "hairs")]
        )
        return {
            "hazard.level": fields.choice(self.tr("Worst usual outcome"), levels),
            "hazard.means": means,
        }

    def _hazard_more(self, fields: Fields) -> dict[str, Field]:
        return {
            "hazard.note": fields.prose(self.tr("More about the danger")),
            "hazard.sources": fields.sources(self.tr("Sources for the danger")),
        }

    def _lists_of_law(self, fields: Fields) -> dict[str, Field]:
        none = (self.tr("not listed"), "")
        cites: Options = [none, *((one, one) for one in ("I", "II", "III"))]
        annexes: Options = [none, *((one, one) for one in ("A", "B", "C", "D"))]
        return {
            "permit.cites": fields.choice(self.tr("CITES Appendix"), cites),
            "permit.eu": fields.choice(self.tr("EU Annex (338/97)"), annexes),
        }

    def _dates_of_law(self, fields: Fields) -> dict[str, Field]:
        return {
            "permit.since": fields.line(self.tr("Listed since")),
            "permit.as_of": fields.line(self.tr("Data as of"), self.tr("2026-01-31 or 2026")),
        }

    def _permit_more(self, fields: Fields) -> dict[str, Field]:
        return {
            "permit.from_memory": fields.flag(
                self.tr("From memory"), self.tr("No official text was seen.")
            ),
            "permit.listed_as": fields.lines(self.tr("Names the lists use"), self.tr("One a line")),
            "permit.note": fields.prose(self.tr("More about the papers")),
            "permit.sources": fields.sources(self.tr("Sources for the papers")),
        }

    def _life(self, fields: Fields) -> dict[str, Field]:
        climates = [(climate_words(one, self.desk.language), one) for one in Climate]
        return {
            "climate": fields.choice(self.tr("Climate"), climates),
            "size_mm": fields.typed(self.tr("Adult length in mm"), SIZE, self.tr("120 – 220")),
        }

    def shown(self, editing: Editing, one: Any) -> None:
        """Draw the portrait, offer sources and words in use."""
        self.portrait.show_taxon(editing.key, one.id)
        sources = source_options(editing.key)
        for path in _SOURCED:
            field = self.form.fields[path]
            if isinstance(field, PickField):
                field.offer(sources)
        for path in _SUGGESTED:
            line = self.form.fields[path]
            if isinstance(line, TypedField):
                line.suggest(value_at(taxon, path) for taxon in editing.key.taxa)
