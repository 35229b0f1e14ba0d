"""Choices that only the window offers, in words."""

from PySide6.QtCore import QCoreApplication

from idkey.model.case import Aim, Care
from idkey.model.character import State

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


def credit_words(state: State) -> str:
    """Who made the figure of a state, and how it may be used; empty when it says neither."""
    credit, licence = state.figure_credit.strip(), state.figure_licence.strip()
    if credit and licence:
        text = translate("words", "Picture: {credit}, {licence}")
        return text.format(credit=credit, licence=licence)
    if credit or licence:
        return translate("words", "Picture: {credit}").format(credit=credit or licence)
    return ""
