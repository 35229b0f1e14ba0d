"""What shop labels are printed on, as a person chose it."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from idkey.report.label_stock import STOCKS

USUAL = "roll 62x29"
"""Stock to start with."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelChoice:
    """What labels are printed on.

    Attributes:
        stock: One of `idkey.report.label_stock.STOCKS`.
        used: Labels of the first page that are gone.
        cut: Whether lines show where to cut.
    """

    stock: str = USUAL
    used: int = 0
    cut: bool = False

    @classmethod
    def kept(cls, kept: Mapping[str, Any]) -> "LabelChoice":
        """The choice of last time; what makes no sense any more is left out."""
        stock = str(kept.get("stock", ""))
        return cls(stock=stock if stock in STOCKS else USUAL, cut=kept.get("cut") is True)

    def to_keep(self) -> dict[str, Any]:
        """What is worth remembering for the next time."""
        return {"stock": self.stock, "cut": self.cut}
