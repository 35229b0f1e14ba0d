"""How the pages lie on which versions of a key are chosen: choices, and a card below them."""

from PySide6.QtWidgets import QFrame, QLayout, QVBoxLayout, QWidget

from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.theme import Theme


def card_below(page: QWidget, choices: QLayout, theme: Theme) -> tuple[QVBoxLayout, QVBoxLayout]:
    """Lay choices over a card in a pane that scrolls where large text needs it.

    Args:
        page: The page.
        choices: What is chosen.
        theme: The look.

    Returns:
        The inside of the card, and the whole, to which more can be added below.
    """
    px = theme.px
    card = QFrame()
    card.setProperty("pane", "card")
    inside = QVBoxLayout(card)
    inside.setContentsMargins(px(14), px(12), px(14), px(12))
    inside.setSpacing(px(8))
    pane = QWidget()
    around = QVBoxLayout(page)
    around.setContentsMargins(0, 0, 0, 0)
    around.addWidget(scrolled(pane))
    whole = QVBoxLayout(pane)
    whole.setContentsMargins(0, 0, 0, 0)
    whole.setSpacing(px(12))
    whole.addLayout(choices)
    whole.addWidget(card, 1)
    return inside, whole
