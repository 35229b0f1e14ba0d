"""A key whose every text is markup, and what of a window would obey it."""

import dataclasses
from collections.abc import Iterator, Mapping
from itertools import product
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import Qt as GuiQt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QGroupBox,
    QLabel,
    QTextEdit,
    QWidget,
)

from idkey.model.key import Key

MARKUP = ' <img src="planted.png"><b>x</b>&amp; &x'
"""What every text ends in."""

_PLANTED = 'src="planted.png"'
_TEXTS = """
    title scope authors cautions glossary label detail figure_credit figure_licence question
    definition how pitfalls group words statement names origin independence remark note text
    variants covers_outside sold_outside why evidence safety law citation name authority family
    subfamily synonyms vernacular range size climate_note listed_as since as_of means licence
"""
_FREE = frozenset(_TEXTS.split())
_MOST_ROWS = 40


def marked_up(key: Key, key_id: str) -> Key:
    """The key under another id, with markup in every text a person may write."""
    return dataclasses.replace(_marked(key, key), id=key_id, digest="")


def _marked(value: Any, owner: Any, name: str = "") -> Any:
    if isinstance(value, str):
        return value + MARKUP if name in _FREE and type(value) is str else value
    if isinstance(value, tuple):
        return tuple(_marked(one, owner, name) for one in value)
    if isinstance(value, Mapping):
        return {word: _marked(one, owner, name) for word, one in value.items()}
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        fields = [field for field in dataclasses.fields(value) if field.init]
        changed = {f.name: _marked(getattr(value, f.name), value, f.name) for f in fields}
        return dataclasses.replace(value, **changed)
    return value


def obeyed(window: QWidget) -> Iterator[str]:
    """Where below a window markup is obeyed, or a plain ``&`` taken for a shortcut."""
    for widget in (window, *window.findChildren(QWidget)):
        where = f"{type(widget).__name__} in {type(widget.parent()).__name__}"
        if _rich(widget.toolTip()):
            yield f"tip of {where}"
        if isinstance(widget, QLabel) and _label_obeys(widget):
            yield f"text of {where}"
        if isinstance(widget, QTextEdit) and _PLANTED in widget.toHtml().replace("&quot;", ""):
            yield f"page of {where}"
        if isinstance(widget, QAbstractButton) and " &x" in widget.text():
            yield f"sign & of {where}"
        if isinstance(widget, QGroupBox) and " &x" in widget.title():
            yield f"sign & of {where}"
        if isinstance(widget, QAbstractItemView):
            yield from (f"tip of row of {where}" for _ in _obeying_rows(widget))


def shown(window: QWidget) -> int:
    """In how many labels, pages and buttons the markup stands as text."""
    labels = [label.text() for label in window.findChildren(QLabel)]
    pages = [page.toPlainText() for page in window.findChildren(QTextEdit)]
    return sum("planted.png" in text for text in (*labels, *pages))


def _label_obeys(label: QLabel) -> bool:
    kinds = Qt.TextFormat
    if label.textFormat() in (kinds.RichText, kinds.MarkdownText):
        return _PLANTED in label.text()
    return label.textFormat() == kinds.AutoText and _rich(label.text())


def _rich(text: str) -> bool:
    return _PLANTED in text and GuiQt.mightBeRichText(text)


def _obeying_rows(view: QAbstractItemView) -> Iterator[int]:
    model = view.model()
    cells = product(range(_MOST_ROWS), range(_MOST_ROWS)) if model is not None else ()
    for row, column in cells:
        index = model.index(row, column)
        if index.isValid() and _rich(str(index.data(Qt.ItemDataRole.ToolTipRole) or "")):
            yield row
            return
