"""The pages of the workshop, in order."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from idkey.app.parts.desk import Desk
from idkey.app.workshop.audit_page import AuditPage
from idkey.app.workshop.build_page import BuildPage
from idkey.app.workshop.character_form import CharacterPage
from idkey.app.workshop.check_form import CheckPage
from idkey.app.workshop.couplet_page import CoupletPage
from idkey.app.workshop.diagnosis_page import DiagnosisPage
from idkey.app.workshop.forms_entries import EntryKind
from idkey.app.workshop.forms_places import shows_key, shows_place
from idkey.app.workshop.impact_page import ImpactPage
from idkey.app.workshop.key_form import KeyPage
from idkey.app.workshop.label_form import LabelPage
from idkey.app.workshop.matrix_page import MatrixPage
from idkey.app.workshop.matrix_places import shows_cell
from idkey.app.workshop.observed_page import ObservedPage
from idkey.app.workshop.print_page import PrintPage
from idkey.app.workshop.source_form import SourcePage
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.taxon_form import TaxonPage
from idkey.formats.problem import Problem

translate = QCoreApplication.translate


Made = Callable[[WorkshopState, Desk], QWidget]


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkshopPage:
    """A page: built when somebody first goes there.

    Attributes:
        id: Stable name.
        title: What it is called.
        made: Builds it; it listens to `state.changed` itself, and draws `state.editing` at once.
        shows: Whether it can show a place that was asked for (a `Problem` or a `Remark`); of a
            problem its file counts, and the first step of the way into it, if it goes on.
        begins: Whether another kind of work begins with it: writing, checking, handing on.
    """

    id: str
    title: str
    made: Made
    shows: Callable[[object], bool] = lambda _: False
    begins: bool = False


def mistakes_by_page(
    pages: Iterable[WorkshopPage], problems: Iterable[Problem]
) -> Mapping[str, int]:
    """How many of the problems each page can show, by its id.

    A key out of a spreadsheet may have a hundred thousand; no page is asked about each of them.
    """
    alike: dict[object, list[Problem]] = {}
    for one in problems:
        alike.setdefault((one.file, one.loc[:1], len(one.loc) > 1), []).append(one)
    return {
        page.id: sum(len(group) for group in alike.values() if page.shows(group[0]))
        for page in pages
    }


def workshop_pages() -> tuple[WorkshopPage, ...]:
    """All pages. A page with a method ``show_place(place)`` is told the place asked for."""
    return (
        WorkshopPage(
            id="matrix",
            title=translate("workshop", "Matrix"),
            made=MatrixPage,
            shows=shows_cell,
        ),
        *_form_pages(),
        *_checking_pages(),
        WorkshopPage(
            id="diagnosis",
            title=translate("workshop", "Diagnoses"),
            made=DiagnosisPage,
            begins=True,
        ),
        WorkshopPage(id="print", title=translate("workshop", "Print"), made=PrintPage),
    )


def _checking_pages() -> tuple[WorkshopPage, ...]:
    mend = translate("workshop", "What to mend")
    drill = translate("workshop", "Misread in drill")
    return (
        WorkshopPage(id="audit", title=mend, made=AuditPage, begins=True),
        WorkshopPage(id="impact", title=translate("workshop", "What changes"), made=ImpactPage),
        WorkshopPage(id="observed", title=drill, made=ObservedPage),
    )


def _form_pages() -> tuple[WorkshopPage, ...]:
    kind = EntryKind
    forms: tuple[tuple[str, str, Made, EntryKind], ...] = (
        ("characters", translate("workshop", "Characters"), CharacterPage, kind.CHARACTER),
        ("taxa", translate("workshop", "Taxa"), TaxonPage, kind.TAXON),
        ("labels", translate("workshop", "Labels"), LabelPage, kind.LABEL),
        ("couplets", translate("workshop", "Couplets"), CoupletPage, kind.COUPLET),
        ("sources", translate("workshop", "Sources"), SourcePage, kind.SOURCE),
        ("checks", translate("workshop", "Checks"), CheckPage, kind.CHECK),
    )
    pages = [
        WorkshopPage(id=own, title=title, made=made, shows=shows_place(entry))
        for own, title, made, entry in forms
    ]
    title = translate("workshop", "Key itself")
    itself = WorkshopPage(id="key", title=title, made=KeyPage, shows=shows_key)
    built = translate("workshop", "Build couplets")
    build = WorkshopPage(id="build", title=built, made=BuildPage)
    return (*pages[:4], build, itself, *pages[4:])
