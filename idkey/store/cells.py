"""Cells of a table that a spreadsheet cannot take for a formula."""

import re

_FORMULA = re.compile(r"[\s']*[=+\-@＝＋－＠]|[\t\r\n]|'*[\t\r\n]")
_NUMBER = re.compile(r"[+-]?\d+(?:[.,]\d+)?")


def harmless(cell: str) -> str:
    """`cell` with an apostrophe before it where a spreadsheet would compute it.

    A plain number stays a number. `told` of the result is `cell` again.

    Source: OWASP, "CSV Injection": cells that begin with ``=``, ``+``, ``-``, ``@``, tab or
    carriage return; blanks before them, and their wide forms, are treated alike here.
    """
    return "'" + cell if _FORMULA.match(cell) and not _NUMBER.fullmatch(cell) else cell


def told(cell: str) -> str:
    """What a cell written by `harmless` says."""
    bare = cell[1:]
    return bare if cell.startswith("'") and harmless(bare) == cell else cell
