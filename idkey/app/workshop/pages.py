"""The pages of the workshop, in order."""

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from idkey.app.parts.desk import Desk
from idkey.app.workshop.audit_page import AuditPage
from idkey.app.workshop.build_page import BuildPage
from idkey.app.workshop.diagnosis_page import DiagnosisPage
from idkey.app.workshop.impact_page import ImpactPage
from idkey.app.workshop.matrix_page import MatrixPage, shows_cell
from idkey.app.workshop.observed_page import ObservedPage
from idkey.app.workshop.print_page import PrintPage
from idkey.app.workshop.state import WorkshopState

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkshopPage:
    """A page: built when somebody first goes there.

    Attributes:
        id: Stable name.
        title: What it is called.
        made: Builds it; it listens to `state.changed` itself, and draws `state.editing` at once.
        shows: Whether it can show a place that was asked for (a `Problem` or a `Remark`).
    """

    id: str
    title: str
    made: Callable[[WorkshopState, Desk], QWidget]
    shows: Callable[[object], bool] = lambda _: False


def workshop_pages() -> tuple[WorkshopPage, ...]:
    """All pages. A page with a method ``show_place(place)`` is told the place asked for."""
    return (
        WorkshopPage(
            id="matrix",
            title=translate("workshop", "Matrix"),
            made=MatrixPage,
            shows=shows_cell,
        ),
        WorkshopPage(id="audit", title=translate("workshop", "What to mend"), made=AuditPage),
        WorkshopPage(id="build", title=translate("workshop", "Build couplets"), made=BuildPage),
        WorkshopPage(id="diagnosis", title=translate("workshop", "Diagnoses"), made=DiagnosisPage),
        WorkshopPage(id="print", title=translate("workshop", "Print"), made=PrintPage),
        WorkshopPage(
            id="observed", title=translate("workshop", "What people misread"), made=ObservedPage
        ),
        WorkshopPage(id="impact", title=translate("workshop", "What changes"), made=ImpactPage),
    )
