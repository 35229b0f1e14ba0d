"""Choices that only the window offers, in words."""

from PySide6.QtCore import QCoreApplication

from idkey.model.case import Aim, Care

_tr = QCoreApplication.translate


def aim_words(aim: Aim) -> str:
    """What the person needs to know."""
    return {
        Aim.LABEL: _tr("words", "Is the label right?"),
        Aim.TAXON: _tr("words", "What is it?"),
        Aim.HAZARD: _tr("words", "Can it hurt?"),
        Aim.PERMIT: _tr("words", "Does it need papers?"),
    }[aim]


def care_words(care: Care) -> str:
    """How the looking was done."""
    return {
        Care.CAREFUL: _tr("words", "Looked with care"),
        Care.ORDINARY: _tr("words", "Looked as usual"),
        Care.HURRIED: _tr("words", "Looked in a hurry"),
    }[care]


def upper_first(text: str) -> str:
    """The text with a capital to start with."""
    return text[:1].upper() + text[1:]
