"""The sheet of one taxon."""

from html import escape

from PySide6.QtCore import QSize, Signal, Slot

from idkey.app.bench.session import Session
from idkey.app.bench.taxon_html import (
    diagnosis_html,
    facts_html,
    labels_html,
    sources_html,
    standing_html,
)
from idkey.app.parts.captions import button
from idkey.app.parts.desk import Desk
from idkey.app.parts.sheet import Sheet
from idkey.engine.diagnosis import Diagnosis
from idkey.engine.whatif import Return


class TaxonSheet(Sheet):
    """Everything the key says about a taxon, and how it stands in this case.

    Args:
        desk: Look, drawings, language.

    Signals:
        comparison_asked(taxa: object): The person wants it beside the leader.
    """

    comparison_asked = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.taxon = ""
        self._compare = button(self.tr("Compare with the leader"), "quiet")
        self._session: Session | None = None
        self.add_action(self._compare)
        self._compare.clicked.connect(self._on_compare_clicked)

    def show_taxon(
        self, session: Session, taxon: str, *, way_back: Return | None, diagnosis: Diagnosis | None
    ) -> None:
        """Show a taxon of the key.

        Args:
            session: The session.
            taxon: Taxon id.
            way_back: What speaks against it; None while that is being worked out.
            diagnosis: What tells it from the others; None while that is being worked out.
        """
        key, language = session.key, self.desk.language
        known = key.taxon[taxon]
        self._session, self.taxon = session, taxon
        authority = f' <span style="font-weight: 400">{escape(known.authority)}</span>'
        self.title.setText(f"<i>{escape(known.name)}</i>{authority if known.authority else ''}")
        self.show_portrait()
        parts = [
            facts_html(key, known, language),
            standing_html(key, way_back, language),
            diagnosis_html(key, diagnosis, language) if diagnosis else "",
            labels_html(key, taxon),
            sources_html(key, known),
        ]
        self.show_html("".join(parts))
        self._compare.setEnabled(self._leader() not in ("", taxon))

    def show_portrait(self) -> None:
        """Show the portrait, as soon as it is drawn."""
        if self._session is None:
            return
        px = self.desk.theme.px
        portrait = self.desk.pictures.portrait(
            self._session.key,
            self.taxon,
            size=QSize(px(344), px(152) if self.height() > px(460) else px(104)),
            ratio=self.devicePixelRatioF(),
            scaled=False,
        )
        self.show_picture(portrait)

    def _leader(self) -> str:
        if self._session is None:
            return ""
        standing = self._session.reasoned.assessment.standing
        return standing[0].taxon if standing else ""

    @Slot()
    def _on_compare_clicked(self) -> None:
        self.comparison_asked.emit((self._leader(), self.taxon))
