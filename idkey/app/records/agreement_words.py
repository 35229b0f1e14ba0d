"""How far two keepers agree, in words for the counter."""

from PySide6.QtCore import QCoreApplication

from idkey.engine.agreement import Kappa
from idkey.report.language import Language
from idkey.store.opinions import Agreement

translate = QCoreApplication.translate

FEW = 20
"""Animals below which the figure is said to be rough. Source: common practice, no source."""

_BANDS = (0.0, 0.2, 0.4, 0.6, 0.8)
"""Limits of the words for kappa: Landis & Koch 1977, Biometrics 33: 159-174, page 165."""


def strength(kappa: float) -> str:
    """A kappa in words."""
    words = (
        translate("agreement", "not more often than by chance"),
        translate("agreement", "hardly more often than by chance"),
        translate("agreement", "fairly often"),
        translate("agreement", "moderately often"),
        translate("agreement", "mostly"),
        translate("agreement", "nearly always"),
    )
    return words[sum(kappa > limit for limit in _BANDS)]


def agreement_words(found: Agreement, language: Language) -> str:
    """How far second opinions agree with the first, over all animals; never empty."""
    if not found.decided:
        return translate(
            "agreement", "No animal has two verdicts yet, so nothing can be said over all animals."
        )
    said = translate(
        "agreement", "Over all animals determined twice: the same name for {same} of {n}."
    ).format(same=found.same_taxa, n=found.decided)
    if found.taxa is None:
        return f"{said} " + translate(
            "agreement",
            "Chance alone would give as much, as only one name came up: kappa says nothing yet.",
        )
    return f"{said} {kappa_words(found.taxa, language)}"


def kappa_words(kappa: Kappa, language: Language) -> str:
    """Cohen's kappa with its interval, as a sentence in plain words."""
    low, high = strength(kappa.low), strength(kappa.high)
    said = translate("agreement", "Chance set aside, they agree {strength}").format(
        strength=strength(kappa.kappa)
    )
    figures = translate("agreement", "(Cohen’s kappa {kappa}, 95 % interval {low} to {high})")
    figures = figures.format(
        kappa=_figure(kappa.kappa, language),
        low=_figure(kappa.low, language),
        high=_figure(kappa.high, language),
    )
    said = f"{said} {figures}."
    if low != high:
        open_ = translate(
            "agreement", "From {n} animals it may be anything from “{low}” to “{high}”."
        )
        said += " " + open_.format(n=kappa.pairs, low=low, high=high)
    elif kappa.pairs < FEW:
        said += " " + translate("agreement", "{n} animals are few: take it as rough.").format(
            n=kappa.pairs
        )
    return said


def _figure(value: float, language: Language) -> str:
    return f"{value:.2f}".replace(".", language.decimal)
