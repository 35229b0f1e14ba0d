"""The FORMAT and MATRIX commands of NEXUS: signs into cells."""

import re
from dataclasses import dataclass

from idkey.errors import IdKeyError

MOST_CELLS = 1_000_000
"""Taxa times characters; ten thousand taxa of a hundred characters."""

_MEND = "Export the matrix again with states (DATATYPE=STANDARD)."
_ROW_NAME = re.compile(r"\s*(?:'((?:[^']|'')*)'|\"([^\"]*)\"|(\S+))")
_CELL = re.compile(r"\s*(?:([({])([^(){}]*)([)}])|(\S))")
_END = re.compile(r"\s*\Z")
_CLOSES = {"(": ")", "{": "}"}


@dataclass(frozen=True, slots=True)
class Cell:
    """What a taxon shows, as signs.

    Attributes:
        symbols: The signs, in the order given; none for unknown.
        gap: Whether the cell is not applicable.
        uncertain: Whether only one of the signs holds, but not known which.
    """

    symbols: tuple[str, ...] = ()
    gap: bool = False
    uncertain: bool = False


@dataclass(frozen=True, slots=True)
class Format:
    """The FORMAT command.

    Attributes:
        symbols: Signs of the states, in order.
        missing: Sign for unknown.
        gap: Sign for not applicable; empty when the file has none.
        interleaved: Whether the matrix comes in several strips.
        case: Whether capitals differ from small letters.
    """

    symbols: str = "01"
    missing: str = "?"
    gap: str = ""
    interleaved: bool = False
    case: bool = False

    @classmethod
    def of(cls, text: str, name: str) -> "Format":
        """The format that a FORMAT command describes.

        Raises:
            IdKeyError: The matrix holds something other than states, or is laid out sideways.
        """
        kind = _option(text, "DATATYPE") or "STANDARD"
        if kind.upper() != "STANDARD":
            raise IdKeyError(f"The matrix in {name} is {kind[:20].lower()}, not states.", _MEND)
        for word in ("TRANSPOSE", "NOLABELS", "TOKENS"):
            if re.search(rf"\b{word}\b", text, re.IGNORECASE):
                raise IdKeyError(f"The matrix in {name} is laid out as {word}.", _MEND)
        found = re.search(r"SYMBOLS\s*=\s*\"([^\"]*)\"", text, re.IGNORECASE)
        symbols = "".join(dict.fromkeys("".join(found[1].split()))) if found else "01"
        interleave = re.search(r"\bINTERLEAVE\b(?!\s*=\s*NO)", text, re.IGNORECASE)
        return cls(
            symbols=symbols,
            missing=(_option(text, "MISSING") or "?")[0],
            gap=(_option(text, "GAP") or " ")[0].strip(),
            interleaved=bool(interleave),
            case=bool(re.search(r"\bRESPECTCASE\b", text, re.IGNORECASE)),
        )

    def cell(self, sign: str) -> Cell:
        """The cell that a single sign stands for."""
        if sign == self.missing:
            return Cell()
        if sign == self.gap:
            return Cell(gap=True)
        return Cell((self._known(sign),))

    def several(self, signs: str, opened: str) -> Cell:
        """The cell that signs in brackets stand for."""
        kept = [s for s in signs if not s.isspace() and s != ","]
        if self.missing in kept:
            return Cell()
        named = tuple(dict.fromkeys(self._known(s) for s in kept if s != self.gap))
        if not named:
            return Cell(gap=self.gap in kept and bool(kept))
        return Cell(named, uncertain=opened == "{" and len(named) > 1)

    def _known(self, sign: str) -> str:
        if self.case or sign in self.symbols:
            return sign
        other = sign.swapcase()
        return other if other in self.symbols else sign


def _option(text: str, name: str) -> str | None:
    found = re.search(rf"\b{name}\s*=\s*(\S+)", text, re.IGNORECASE)
    return found[1] if found else None


def rows(text: str, count: int, layout: Format, name: str) -> dict[str, list[Cell]]:
    """The cells per taxon of a MATRIX command.

    Args:
        text: What follows the word MATRIX.
        count: Characters per taxon.
        layout: What the signs mean.
        name: Name of the file.

    Raises:
        IdKeyError: A row is too short or too long, or a bracket is not closed.
    """
    found: dict[str, list[Cell]] = {}
    if layout.interleaved:
        for line in text.splitlines():
            if line.strip():
                taxon, at = _taxon(line, 0)
                cells = found.setdefault(taxon, [])
                cells += [_cell(match, layout, name) for match in _CELL.finditer(line, at)]
                _check_size(len(found) * max(count, len(cells)), name)
    else:
        _in_turn(text, count, layout, name, found)
    for taxon, cells in found.items():
        if len(cells) != count:
            raise IdKeyError(
                f"The row '{taxon[:60]}' in {name} has {len(cells)} cells, not {count}.",
                "Compare the row with its neighbours and NCHAR.",
            )
    if not found:
        raise IdKeyError(f"The matrix in {name} is empty.", _MEND)
    return found


def _in_turn(
    text: str, count: int, layout: Format, name: str, found: dict[str, list[Cell]]
) -> None:
    at = 0
    while not _END.match(text, at):
        taxon, at = _taxon(text, at)
        if taxon in found:
            raise IdKeyError(f"The row '{taxon[:60]}' is twice in {name}.", "Remove one.")
        cells: list[Cell] = []
        while len(cells) < count:
            match = _CELL.match(text, at)
            if match is None:
                break
            cells.append(_cell(match, layout, name))
            at = match.end()
        found[taxon] = cells
        _check_size(len(found) * count, name)
        if len(cells) < count:
            return


def _taxon(text: str, at: int) -> tuple[str, int]:
    match = _ROW_NAME.match(text, at)
    if match is None:
        return "", len(text)
    quoted, double, word = match.groups()
    if quoted is not None:
        own = quoted.replace("''", "'")
    else:
        own = double if double is not None else word.replace("_", " ")
    return " ".join(own.split()), match.end()


def _check_size(cells: int, name: str) -> None:
    if cells > MOST_CELLS:
        raise IdKeyError(f"The matrix in {name} is larger than any key.", "Split it.")


def _cell(match: re.Match[str], layout: Format, name: str) -> Cell:
    opened, inside, closed, single = match.groups()
    if single is not None:
        if single in "(){}":
            raise IdKeyError(f"A bracket in the matrix of {name} has no partner.", "Add it.")
        return layout.cell(single)
    if _CLOSES[opened] != closed:
        raise IdKeyError(f"'{opened}' in the matrix of {name} ends in '{closed}'.", "Mend it.")
    return layout.several(inside, opened)
