"""A key from its documents where nothing has to be checked, because the program made them."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from idkey.formats import assemble
from idkey.formats.character_document import CharacterDoc, CheckDoc, CoupletDoc
from idkey.formats.key_document import KeyDoc, LabelDoc, SourceDoc
from idkey.formats.taxon_document import ScoreDoc, TaxonDoc
from idkey.formats.write import as_written
from idkey.model.key import Key
from idkey.model.score import Score

_CONTENT = ("taxa", "characters", "labels", "couplets", "sources", "checks")


def whole(documents: Mapping[str, Any]) -> Key:
    """The key whose documents these are; no digest.

    Args:
        documents: What `plain.documents` gave, or a mixture of such.

    Raises:
        ValueError: An entry is impossible in itself.
    """
    said = as_written(documents)
    plain = {name: said.pop(name) for name in _CONTENT}
    scores = tuple(score for taxon in plain["taxa"] for score in _scores(taxon))
    return replace(
        assemble.key_head(KeyDoc(**said)),
        taxa=tuple(assemble.taxon(TaxonDoc(**{**p, "scores": {}})) for p in plain["taxa"]),
        characters=tuple(assemble.character(CharacterDoc(**p)) for p in plain["characters"]),
        scores=scores,
        labels=tuple(assemble.label(LabelDoc(**p)) for p in plain["labels"]),
        couplets=tuple(assemble.couplet(CoupletDoc(**p)) for p in plain["couplets"]),
        sources=tuple(assemble.source(n, SourceDoc(**p)) for n, p in plain["sources"].items()),
        checks=tuple(assemble.check(CheckDoc(**p)) for p in plain["checks"]),
    )


def _scores(taxon: Mapping[str, Any]) -> list[Score]:
    found = []
    for character, cell in taxon.get("scores", {}).items():
        for plain in cell if isinstance(cell, list) else [cell]:
            found.append(assemble.score(taxon["id"], character, ScoreDoc(**plain)))
    return found
