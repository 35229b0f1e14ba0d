r"""Texts on one line: new lines, backslashes and blanks at the ends are written with signs."""

import re

_SIGN = re.compile(r"\\(.)", re.DOTALL)


def packed(text: str) -> str:
    """A text on one line."""
    line = text.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r")
    line = line.replace("->", "-\\>").replace("→", "\\→")
    if line[:1].isspace():
        line = "\\_" + line
    return line + "\\_" if line[-1:].isspace() else line


def unpacked(line: str) -> str:
    """The text again; blanks at the ends of the line are none of it."""
    return _SIGN.sub(lambda found: _SIGNS.get(found[1], found[1]), line.strip())


_SIGNS = {"n": "\n", "r": "\r", "_": "", "c": ":"}
