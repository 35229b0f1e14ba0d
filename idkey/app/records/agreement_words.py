"""How far two keepers agree, in words for the counter."""

from PySide6.QtCore import QCoreApplication

from idkey.engine.agreement import Kappa
from idkey.report.language import Language
from idkey.store.opinions import Agreement

translate = QCoreApplication.translate

FEW = 20
"""Animals below which the figure is said to be rough. Source: common practice, no source."""

_BANDS = (0.2, 0.4, 0.6, 0.8)
"""Limits of the words for kappa: Landis & Koch 1977, Biometrics 33: 159-174, page 165."""


def strength(kappa: float) -> str:
    """How much better than guessing a kappa is, in words."""
    words = (
        translate("agreement", "hardly better"),
        translate("agreement", "a little better"),
        translate("agreement", "better"),
        translate("agreement", "much better"),
        translate("agreement", "about as well as two people can"),
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
            "Only one name came up, so guessing would have done as well: these animals cannot "
            "show whether the two agree.",
        )
    return f"{said} {kappa_words(found.taxa, language)}"


def kappa_words(kappa: Kappa, language: Language) -> str:
    """Cohen's kappa with its interval, in plain words."""
    guessed = translate(
        "agreement", "Guessing, with each name as often as here, would give {guessed} of {n}."
    ).format(guessed=language.number(round(kappa.expected * kappa.pairs, 1)), n=kappa.pairs)
    told = figures(kappa, language)
    if kappa.kappa <= 0 or (kappa.low <= 0 < kappa.error):
        return f"{guessed} " + translate(
            "agreement", "So these animals do not show that the two do better (kappa {kappa})."
        ).format(kappa=told)
    said = translate("agreement", "The two did {strength} (kappa {kappa})").format(
        strength=strength(kappa.kappa), kappa=told
    )
    few = translate("agreement", "; {n} animals are few, so take it as rough").format(n=kappa.pairs)
    return f"{guessed} {said}{few if kappa.pairs < FEW else ''}."


def figures(kappa: Kappa, language: Language) -> str:
    """Cohen's kappa with its 95 % interval; without one where all pairs were alike or unlike."""
    value = _figure(kappa.kappa, language)
    if kappa.error <= 0:
        return value
    return translate("agreement", "{kappa}, 95 %: {low} to {high}").format(
        kappa=value, low=_figure(kappa.low, language), high=_figure(kappa.high, language)
    )


def _figure(value: float, language: Language) -> str:
    return f"{value:.2f}".replace(".", language.decimal)
