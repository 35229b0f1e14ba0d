"""Choices that only the window offers, in words."""

from PySide6.QtCore import QCoreApplication

from idkey.model.case import Aim, Care

translate = QCoreApplication.translate


def aim_words(aim: Aim) -> str:
    """What the person needs to know."""
    return {
        Aim.LABEL: translate("words", "Is the label right?"),
        Aim.TAXON: translate("words", "What is it?"),
        Aim.HAZARD: translate("words", "Can it hurt?"),
        Aim.PERMIT: translate("words", "Does it need papers?"),
    }[aim]


def care_words(care: Care) -> str:
    """How the looking was done."""
    return {
        Care.CAREFUL: translate("words", "Looked with care"),
        Care.ORDINARY: translate("words", "Looked as usual"),
        Care.HURRIED: translate("words", "Looked in a hurry"),
    }[care]


def reading_words() -> str:
    """What stands where nothing can be said yet."""
    return translate("words", "Reading the key …")


def upper_first(text: str) -> str:
    """The text with a capital to start with."""
    return text[:1].upper() + text[1:]
