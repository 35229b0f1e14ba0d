"""Which scores of a cell hold for the specimen at hand, and which cells cannot be scored."""

from itertools import product

from idkey.model.case import Specimen
from idkey.model.character import Character, Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Score, Shows

JUVENILE_SHARE = 0.3
"""Share of juveniles among animals whose stage nobody told. Source: common practice, no source."""


def parts(
    scores: tuple[Score, ...], character: Character, specimen: Specimen
) -> tuple[tuple[float, Score | None], ...]:
    """The scores that may hold, each with its share; None stands for "not scored".

    An unknown sex or stage mixes the scores of the possible ones; a character of one sex or
    stage only is scored for that one.

    Returns:
        Pairs of share and score; shares sum to one.
    """
    mixed: dict[int, tuple[float, Score | None]] = {}
    for sex, stage in product(_sexes(character, specimen), _stages(character, specimen)):
        score = _closest(scores, sex, stage)
        share = mixed.get(id(score), (0.0, score))[0]
        mixed[id(score)] = (share + _share(stage, character, specimen), score)
    total = sum(share for share, _ in mixed.values())
    return tuple((share / total, score) for share, score in mixed.values())


def _sexes(character: Character, specimen: Specimen) -> tuple[Sex, ...]:
    known = character.sex or specimen.sex
    return (known,) if known else tuple(Sex)


def _stages(character: Character, specimen: Specimen) -> tuple[Stage, ...]:
    known = character.stage or specimen.stage
    return (known,) if known else tuple(Stage)


def _share(stage: Stage, character: Character, specimen: Specimen) -> float:
    if character.stage or specimen.stage:
        return 1.0
    return JUVENILE_SHARE if stage is Stage.JUVENILE else 1.0 - JUVENILE_SHARE


def _closest(scores: tuple[Score, ...], sex: Sex, stage: Stage) -> Score | None:
    """The score that fits that sex and stage and says most about them."""
    fitting = [s for s in scores if s.sex in (None, sex) and s.stage in (None, stage)]
    return max(fitting, key=lambda s: (s.sex is not None) + (s.stage is not None), default=None)


def doubtful(character: Character, specimen: Specimen) -> bool:
    """Whether the character is for one sex or stage and nobody told that of the specimen."""
    return (character.sex is not None and specimen.sex is None) or (
        character.stage is not None and specimen.stage is None
    )


def never_arises(key: Key, taxon: str, character: Character) -> bool:
    """Whether the taxon is scored for what the character depends on, and never shows it."""
    needed = character.requires
    if needed is None:
        return False
    values = [score.value for score in key.cells.get((taxon, needed.character), ())]
    return bool(values) and not any(
        isinstance(value, Shows) and set(value.states) & set(needed.states) for value in values
    )
