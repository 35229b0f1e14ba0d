"""What a label usually turns out to be, before looking at the animal."""

from collections.abc import Mapping
from dataclasses import dataclass

from idkey.engine.intervals import Interval, wilson
from idkey.model.key import Key
from idkey.model.label import Label

EVEN_ANIMALS = 2.0
"""Animals the even start over all taxa is worth; keeps every taxon possible."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelPrior:
    """The prior in use for a label, so that it can be shown.

    Attributes:
        shares: Share per taxon id; sums to one.
        started: Animals the key's own rates are worth; 0 when nobody has counted.
        counted: Own decided cases behind it.
        rates: Per taxon id the share among the own cases, with its Wilson interval.
    """

    shares: Mapping[str, float]
    started: float
    counted: int
    rates: Mapping[str, Interval]


def label_prior(key: Key, label: Label, outcomes: Mapping[str, int]) -> LabelPrior:
    """The prior under a label.

    Mean of a Dirichlet distribution: an even start, the key's starting rates, and the shop's
    own established cases. The case being judged must not be among them.

    Args:
        key: The key.
        label: The confirmed label entry.
        outcomes: Own established cases under that label, per taxon id.

    Raises:
        ValueError: A count is negative or of a taxon that the key lacks.
    """
    if any(n < 0 or taxon not in key.taxon for taxon, n in outcomes.items()):
        raise ValueError("outcomes count taxa of the key")
    weight = {taxon.id: EVEN_ANIMALS / len(key.taxa) for taxon in key.taxa}
    if label.rates is not None:
        for taxon, share in label.rates.shares.items():
            weight[taxon] += share * label.rates.animals
    for taxon, number in outcomes.items():
        weight[taxon] += number
    total, counted = sum(weight.values()), sum(outcomes.values())
    return LabelPrior(
        shares={taxon: one / total for taxon, one in weight.items()},
        started=label.rates.animals if label.rates else 0.0,
        counted=counted,
        rates={taxon: wilson(n, counted) for taxon, n in outcomes.items()},
    )
