"""A PDF in preparation: the font, the colours, the footer, tags for readers that speak."""

import hashlib
import unicodedata
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Literal

from fpdf import FPDF
from fpdf.fonts import TTFFont

from idkey import places
from idkey.errors import IdKeyError
from idkey.report.paper.about import About, packet

Colour = tuple[int, int, int]

INK: Colour = (29, 29, 27)
SOFT: Colour = (92, 95, 102)
HAIR: Colour = (201, 204, 209)
WASH: Colour = (245, 246, 247)
ACCENT: Colour = (11, 85, 99)
HAZARD: Colour = (154, 52, 18)
HAZARD_WASH: Colour = (253, 241, 234)
PERMIT: Colour = (11, 79, 128)
PERMIT_WASH: Colour = (238, 245, 251)

MM_PER_PT = 25.4 / 72

Style = Literal["", "B", "I", "BI"]
_STYLES: dict[str, Style] = {"Regular": "", "Bold": "B", "Italic": "I", "BoldItalic": "BI"}

Tag = Literal["/H1", "/H2", "/P", "/Artifact"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Margins:
    """White space around a page, in mm."""

    left: float = 17
    right: float = 17
    top: float = 14
    bottom: float = 16


_PAGE = Margins()


class Sheet(FPDF):
    """A document with the shipped font embedded, archivable (PDF/A-3u), with tagged text.

    Args:
        size: Width and height of a page in mm; A4 by default.
        margins: White space around it.
        footer: Text at the foot of each page; empty for none, and then no page number.
        page_words: Sentence for the page number with ``{page}`` and ``{pages}``.
        dense: Whether type is set smaller, so that a short document fits on one page.
    """

    def __init__(
        self,
        size: tuple[float, float] = (210, 297),
        margins: Margins = Margins(),
        *,
        footer: str = "",
        page_words: str = "{page} / {pages}",
        dense: bool = False,
    ) -> None:
        super().__init__(format=size, enforce_compliance="PDF/A-3U")
        self.margins = margins
        self._footer_text = footer
        self._page_words = page_words
        self.set_margins(margins.left, margins.top, margins.right)
        self.set_auto_page_break(False)
        self.c_margin = 0
        self.dense = dense
        self._add_fonts()
        self.add_page()

    def _add_fonts(self) -> None:
        files = places.font_files()
        for file in files:
            style = file.stem.rpartition("-")[2]
            if style in _STYLES:
                self.add_font(places.FONT_FAMILY, _STYLES[style], file)
        if len(self.fonts) < len(_STYLES):
            raise IdKeyError(
                "The font for papers is not complete.",
                "Put the files of images/fonts back, or install the program again.",
            )
        self._known = frozenset(
            sign for font in self.fonts.values() if isinstance(font, TTFFont) for sign in font.cmap
        )

    @property
    def width(self) -> float:
        """Width between the margins."""
        return float(self.w) - self.margins.left - self.margins.right

    @property
    def floor(self) -> float:
        """Lowest y that text may reach."""
        return float(self.h) - self.margins.bottom

    def room(self, height: float) -> bool:
        """Make room for `height` from the current y; whether that took a new page."""
        if self.get_y() + height <= self.floor or self.get_y() <= self.margins.top:
            return False
        self.add_page()
        self.set_xy(self.margins.left, self.margins.top)
        return True

    def font(self, size: float, style: Style = "", colour: Colour = INK) -> None:
        """Set font size in pt, style and colour."""
        self.set_font(places.FONT_FAMILY, style, size)
        self.set_text_color(*colour)

    def measure(self, text: str, size: float, style: Style = "") -> float:
        """Width of a text in mm; it holds only signs of the font."""
        font = self.fonts[f"{places.FONT_FAMILY.lower()}{style}"]
        return font.get_text_width(text, size, None)[1] * MM_PER_PT

    def printable(self, text: str) -> str:
        """The text with signs the font lacks written as their code, so that none gets lost."""
        return "".join(map(self._sign, unicodedata.normalize("NFC", text)))

    def _sign(self, sign: str) -> str:
        if sign == "\n" or ord(sign) in self._known:
            return sign
        return " " if sign.isspace() else f"[U+{ord(sign):04X}]"

    @contextmanager
    def tagged(self, tag: Tag) -> Iterator[None]:
        """Mark what is written inside as a heading, a paragraph, or as mere decoration."""
        if tag == "/Artifact":
            self._out("/Artifact BMC")
        else:
            mcid = self.struct_builder.next_mcid_for_page(self.page)
            self._add_marked_content(struct_type=tag, mcid=mcid)
            self._out(f"{tag} <</MCID {mcid}>> BDC")
        yield
        self._out("EMC")

    def rule(self, y: float, colour: Colour = HAIR, *, weight: float = 0.2) -> None:
        """A line across the page at `y`."""
        with self.tagged("/Artifact"):
            self.set_draw_color(*colour)
            self.set_line_width(weight)
            self.line(self.margins.left, y, self.w - self.margins.right, y)

    def finished(self) -> bytes:
        """The document; nothing can be added afterwards."""
        document = bytes(self.output())
        self.close()
        return document

    def close(self) -> None:
        """Close the font files."""
        for font in self.fonts.values():
            if isinstance(font, TTFFont):
                font.close()

    def describe(self, about: About) -> None:
        """Set title, author and the like, for programs that list papers."""
        self.set_lang(about.language)
        self.set_title(about.title)
        self.set_creation_date(about.made)
        self.set_xmp_metadata(packet(about))

    def file_id(self) -> str:
        """Identifier of the file, from its metadata: equal papers, equal bytes."""
        number = hashlib.sha256(str(self.xmp_metadata).encode()).hexdigest()[:32]
        return f"<{number}><{number}>"

    def footer(self) -> None:
        """The footer of a page; the library calls it."""
        if not self._footer_text:
            return
        y = self.h - self.margins.bottom + 5
        self.rule(y)
        with self.tagged("/Artifact"):
            self.font(7, "", SOFT)
            self.set_xy(self.margins.left, y + 1)
            self.cell(self.width * 0.8, 4, self._footer_text, align="L")
            self.set_xy(self.margins.left, y + 1)
            total = self._page_words.format(page=self.page_no(), pages="{nb}")
            self.cell(self.width, 4, total, align="R")
