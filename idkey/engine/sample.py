"""The sample case: what a machine without a screen shows, and what the program offers to open."""

from dataclasses import replace

from idkey.engine.labels import match_labels
from idkey.model.case import Aim, Case, Certainty, Claim, Finding, Specimen
from idkey.model.character import Look, Sex, Stage
from idkey.model.key import Key

SAMPLE_ID = "00000000-0000-4000-8000-000000000001"
"""Id of the sample case; it is about no animal of the shop, so no rate counts it."""

SAMPLE_KEY = "large-dark-scorpions"
"""Id of the shipped key the sample case belongs to."""


def sample_case(key: Key) -> Case:
    """An animal that Lantern Street Vivarium, an invented shop, bought as an emperor scorpion.

    Args:
        key: The shipped key with the id `SAMPLE_KEY`.
    """
    text = "Emperor scorpion"
    matches = match_labels(key, text)
    return Case(
        id=SAMPLE_ID,
        key=key.id,
        key_version=key.version,
        key_digest=key.digest,
        claim=Claim(
            text=text,
            label=matches[0].label if matches and matches[0].exact else "",
            supplier="Lantern Street Vivarium (invented)",
            date="2026-03-12",
            sex="male",
            size="12 cm",
            price="65",
        ),
        specimen=Specimen(sex=Sex.MALE, stage=Stage.ADULT),
        findings=_findings(),
        aim=Aim.LABEL,
        by="sample",
        created="2026-03-14T10:20:00Z",
    )


def _findings() -> tuple[Finding, ...]:
    """What was seen; the animal was not held, and its own moult showed the small things."""

    def seen(character: str, state: str, look: Look, sure: Certainty = Certainty.SURE) -> Finding:
        return Finding(character=character, states=(state,), look=look, certainty=sure)

    def counted(character: str, number: float, look: Look) -> Finding:
        return Finding(character=character, value=number, look=look)

    return (
        seen("telson_colour", "dark", Look.TUB),
        seen("chela_robustness", "robust", Look.TUB),
        seen("sternum_shape", "pentagonal", Look.BELOW),
        counted("pectinal_teeth_male", 17, Look.BELOW),
        replace(counted("total_length", 112, Look.ABOVE), uncertainty=3),
        seen("manus_shape", "rounded_bulged", Look.ABOVE),
        seen("manus_surface", "smooth_carinae_margins", Look.ABOVE, Certainty.LIKELY),
        seen("carapace_surface", "granular", Look.ABOVE, Certainty.LIKELY),
        Finding(character="vesicle_aculeus", unseen=True, look=Look.ABOVE),
        seen("stridulatory_organ", "coxal_rasp_on_leg_I", Look.MOULT),
        counted("chela_i_trichobothria", 2, Look.MOULT),
    )
