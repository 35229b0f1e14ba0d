"""Published statements that a key must agree with."""

from dataclasses import dataclass
from enum import StrEnum

from idkey.model.character import Sex, Stage
from idkey.model.couplet import Sees


class CheckKind(StrEnum):
    """What a published statement is about."""

    MATRIX = "matrix"
    LABEL_ORIGIN = "label_origin"
    NAME = "name"
    LITERATURE = "literature"


@dataclass(frozen=True, slots=True, kw_only=True)
class Check:
    """A published statement: these findings leave and exclude these taxa.

    Attributes:
        id: Stable name.
        kind: Only `MATRIX` and `NAME` can be computed.
        statement: The statement in our own words.
        sees: What is observed; the printed ranges are taken as they stand.
        sex: Sex of the specimen; None when the statement does not say.
        stage: Stage of the specimen.
        names: Label text that must lead to `remain` (NAME).
        remain: Taxa that must not be excluded.
        exclude: Taxa that must be excluded.
        origin: Country or region the statement rests on (LABEL_ORIGIN).
        independence: Whether the statement rests on the same text as the scores.
        note: Remark.
        sources: Source ids.
    """

    id: str
    kind: CheckKind
    statement: str
    sees: tuple[Sees, ...] = ()
    sex: Sex | None = None
    stage: Stage | None = None
    names: tuple[str, ...] = ()
    remain: tuple[str, ...] = ()
    exclude: tuple[str, ...] = ()
    origin: str = ""
    independence: str = ""
    note: str = ""
    sources: tuple[str, ...] = ()
