"""About the program: its version, and under what terms its parts are used."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from html import escape
from importlib import metadata

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from idkey import __version__, places
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import fit
from idkey.app.parts.prose import head, paragraph
from idkey.app.parts.sheet import prose_page
from idkey.bootstrap import requirement

_NAME = re.compile(r"[A-Za-z0-9._-]+")
_LONGEST = 60
"""Some packages put their whole licence where its name belongs."""


@dataclass(frozen=True, slots=True, order=True)
class Part:
    """A library the program is made of.

    Attributes:
        name: As its makers write it.
        version: The one in use.
        licence: SPDX expression, or what its makers say in a few words; empty when unsaid.
    """

    name: str
    version: str
    licence: str


def parts() -> tuple[Part, ...]:
    """Python, and every library in use, with the libraries those need; by name."""
    waiting = list(requirement.from_checkout() or _required("idkey"))
    found: dict[str, Part] = {}
    while waiting:
        named = _NAME.match(waiting.pop())
        if named is None:
            continue
        name = re.sub(r"[-_.]+", "-", named[0]).lower()
        if name in found:
            continue
        try:
            about = metadata.metadata(name)
        except metadata.PackageNotFoundError:  # an extra, or for another system
            continue
        found[name] = Part(about["Name"], about["Version"], _licence(about))
        waiting.extend(_required(name))
    return tuple(sorted(found.values(), key=lambda part: part.name.casefold()))


class AboutDialog(QDialog):
    """Version, terms and parts.

    Args:
        desk: Look, drawings, language.
        parent: Owner.
    """

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("About idkey"))
        fit(self, (desk.theme.px(620), desk.theme.px(560)), parent)
        self.text = prose_page(self.tr("About idkey"), desk.theme)
        self.text.setHtml(f"<body>{self._html()}</body>")
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addWidget(self.text, 1)
        column.addWidget(buttons)

    def _html(self) -> str:
        qt = self.tr(
            "Qt and PySide6 are used under the LGPL, version 3: they are separate libraries that "
            "may be replaced by others of the same kind."
        )
        rest = self.tr(
            "Each key names its own licence. The drawings are part of the program. The font is "
            "under the SIL Open Font License; its text is in {file}."
        ).format(file=places.images_folder() / "fonts" / "OFL.txt")
        caution = self.tr(
            "A name is an opinion on evidence. A determination is no safety clearance, and permit "
            "law is to be checked locally."
        )
        terms = self.tr("The program is under the MIT licence. It opens no network connection.")
        return "".join(
            (
                head(f"idkey {__version__}"),
                paragraph(escape(terms)),
                paragraph(escape(caution), "doubt"),
                paragraph(escape(rest)),
                paragraph(escape(qt)),
                head(self.tr("Parts")),
                _table(parts()),
            )
        )


def _table(rows: Iterable[Part]) -> str:
    lines = (
        f"<tr><td>{escape(part.name)}</td><td>{escape(part.version)}</td>"
        f"<td>{escape(part.licence)}</td></tr>"
        for part in rows
    )
    return f"<table>{''.join(lines)}</table>"


def _required(name: str) -> list[str]:
    try:
        lines = metadata.requires(name) or []
    except metadata.PackageNotFoundError:
        return []
    return [line for line in lines if "extra ==" not in line]


def _licence(about: metadata.PackageMetadata) -> str:
    if "License-Expression" in about:
        return about["License-Expression"].strip()
    classes = about.get_all("Classifier") or []
    named = [text.rpartition(" :: ")[2] for text in classes if text.startswith("License :: OSI")]
    plain = about["License"].strip().split("\n")[0] if "License" in about else ""
    return ", ".join(named) or (plain if len(plain) <= _LONGEST else "")
