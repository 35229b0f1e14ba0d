"""How far second opinions agree, over all animals and character by character."""

from collections.abc import Sequence
from html import escape

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QVBoxLayout

from idkey.app.parts.captions import caption
from idkey.app.records.agreement_words import agreement_words, figures
from idkey.engine.agreement import CharacterAgreement
from idkey.model.key import Key
from idkey.report.language import Language
from idkey.store.opinions import Agreement


class AgreementPanel(QFrame):
    """Shows agreement per key, the characters people differ on most at the top.

    Args:
        language: Language of the numbers.
    """

    def __init__(self, language: Language) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._language = language
        self.said = caption()
        self.said.setTextFormat(Qt.TextFormat.RichText)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 14)
        column.setSpacing(8)
        column.addWidget(caption(self.tr("Second opinions"), "strong"))
        column.addWidget(self.said)
        self.show_agreement(())

    def show_agreement(self, found: Sequence[tuple[Key, Agreement]]) -> None:
        """Show other figures."""
        if not found:
            self.said.setText(
                escape(
                    self.tr(
                        "Nobody has given one yet. A second keeper can determine an animal of the "
                        "records again, blind; how far the two agree is told here."
                    )
                )
            )
            return
        self.said.setText("".join(self._key(key, told) for key, told in found))

    def _key(self, key: Key, told: Agreement) -> str:
        rows = sorted(told.characters, key=lambda one: (one.same / one.both, -one.both))
        cells = "".join(self._row(key, one) for one in rows)
        names = (self.tr("Character"), self.tr("Same"), self.tr("Kappa"))
        top = "".join(f"<td><small>{escape(name)}</small></td>" for name in names)
        table = f"<table cellspacing=4><tr>{top}</tr>{cells}</table>" if cells else ""
        said = escape(agreement_words(told, self._language))
        return f"<p><b>{escape(key.title)}</b></p><p>{said}</p>{table}"

    def _row(self, key: Key, one: CharacterAgreement) -> str:
        known = key.character.get(one.character)
        name = known.name if known is not None else one.character
        same = self.tr("{same} of {n}").format(same=one.same, n=one.both)
        kappa = figures(one.kappa, self._language) if one.kappa is not None else "–"
        cells = (name, same, kappa)
        return "<tr>" + "".join(f"<td>{escape(cell)}&nbsp;</td>" for cell in cells) + "</tr>"
