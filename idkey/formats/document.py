"""What the documents of a key folder have in common: names, texts, numbers."""

from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Discriminator, Field, StringConstraints, Tag

LONGEST_ID = 100
LONGEST_TEXT = 20_000

ID_PATTERN = r"^[A-Za-z0-9][A-Za-z0-9_.-]*$"

Id = Annotated[str, StringConstraints(pattern=ID_PATTERN, max_length=LONGEST_ID)]
Text = Annotated[str, StringConstraints(max_length=LONGEST_TEXT)]
Words = Annotated[str, StringConstraints(min_length=1, max_length=LONGEST_TEXT)]
Number = Annotated[float, Field(allow_inf_nan=False)]
Share = Annotated[float, Field(gt=0, le=1, allow_inf_nan=False)]


class Document(BaseModel):
    """A mapping of a key file; a field that is not known is a mistake."""

    model_config = ConfigDict(extra="forbid", frozen=True, use_attribute_docstrings=True)


class RangeDoc(Document):
    """A number that is asked for; a single value is written as two equal bounds."""

    low: Number | None = None
    """Smallest value that fits, in the unit of the character; left out: no lower bound."""
    high: Number | None = None
    """Largest value that fits; left out: no upper bound."""


def _spelling(value: Any) -> str:
    return "states" if isinstance(value, list) else "range"


SeesDoc = dict[
    Id,
    Annotated[
        Annotated[Annotated[tuple[Id, ...], Field(min_length=1)], Tag("states")]
        | Annotated[RangeDoc, Tag("range")],
        Discriminator(_spelling),
    ],
]
"""Character id to states (one of which shows) or to a range."""
