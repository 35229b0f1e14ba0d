"""One plain case of our own, and others like it."""

from dataclasses import replace

from idkey.model.case import Case, Claim, Finding
from idkey.model.character import Look

EXAMPLE = Case(
    id="7d6b0f5e-0001-4c1e-9a53-2f6f5f6f0001",
    key="demo",
    key_version="1.0.0",
    claim=Claim(
        text="Asian Forest Scorpion",
        label="asian_forest_scorpion",
        supplier="Lantern Street Vivarium",
        date="2025-11-03",
    ),
    findings=(Finding(character="sternum_shape", states=("pentagonal",), look=Look.BELOW),),
    by="RB",
    created="2025-11-04T08:30:00Z",
)


def example(number: int, **changes: object) -> Case:
    """A case like `EXAMPLE` with an id of its own."""
    return replace(EXAMPLE, id=f"case-{number:06d}", **changes)  # type: ignore[arg-type]
