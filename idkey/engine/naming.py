"""The name to write, in open nomenclature.

Source: Sigovini, Keppel & Tagliapietra 2016, Methods Ecol. Evol. 7: 1217-1225, for the signs;
ICZN article 5.3, signs are no part of the name; Darwin Core (2026) for the formulas.
"""

from idkey.engine.result import OpenName
from idkey.model.taxon import Taxon

UNNAMED = OpenName(text="not identified")


def species(taxon: Taxon) -> OpenName:
    """A certain name."""
    size = len(taxon.name)
    return OpenName(
        text=taxon.name, certain=taxon.name, rank=taxon.rank, formula="A", italic=((0, size),)
    )


def either(taxa: tuple[Taxon, ...]) -> OpenName:
    """Two or three taxa that the evidence leaves; the certain part is what they share."""
    text, spans = "", []
    for number, taxon in enumerate(taxa):
        text += " or " if number else ""
        spans.append((len(text), len(text) + len(taxon.name)))
        text += taxon.name
    certain, rank = _shared(taxa)
    formula = "A or B" if len(taxa) == 2 else " or ".join("ABC"[: len(taxa)])
    return OpenName(text=text, certain=certain, rank=rank, formula=formula, italic=tuple(spans))


def group(taxa: tuple[Taxon, ...]) -> OpenName:
    """Members of one named group that cannot be split here."""
    genus, name = taxa[0].genus, taxa[0].group
    text = f"{genus} gr. {name}"
    spans = ((0, len(genus)), (len(text) - len(name), len(text)))
    return OpenName(
        text=text, certain=genus, rank="genus", qualifier=f"gr. {name}", formula="A", italic=spans
    )


def compared(taxon: Taxon) -> OpenName:
    """The genus is certain and one species fits best, but is not proved."""
    text = f"{taxon.genus} cf. {taxon.epithet}"
    start = len(text) - len(taxon.epithet)
    return OpenName(
        text=text,
        certain=taxon.genus,
        rank="genus",
        qualifier=f"cf. {taxon.epithet}",
        formula="A cf.",
        italic=((0, len(taxon.genus)), (start, len(text))),
    )


def unknown_species(genus: str) -> OpenName:
    """Only the genus is certain."""
    return OpenName(
        text=f"{genus} sp.",
        certain=genus,
        rank="genus",
        qualifier="sp.",
        formula="A",
        italic=((0, len(genus)),),
    )


def unknown_genus(family: str, genus: str = "") -> OpenName:
    """Only the family is certain; `genus` is the likely one, empty when none is."""
    if not genus:
        return OpenName(
            text=f"{family} indet.", certain=family, rank="family", qualifier="indet.", formula="A"
        )
    text = f"{family}, {genus} gen. inc."
    start = len(family) + 2
    return OpenName(
        text=text,
        certain=family,
        rank="family",
        qualifier=f"{genus} gen. inc.",
        formula="A ?",
        italic=((start, start + len(genus)),),
    )


def _shared(taxa: tuple[Taxon, ...]) -> tuple[str, str]:
    if len({t.genus for t in taxa}) == 1:
        return taxa[0].genus, "genus"
    if len({t.family for t in taxa}) == 1 and taxa[0].family:
        return taxa[0].family, "family"
    return "", ""
