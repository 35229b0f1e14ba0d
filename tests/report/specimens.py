"""A small key of our own making and cases on it. All biology here is invented."""

from dataclasses import replace

from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.result import Assessment
from idkey.model.case import Case, Certainty, Claim, Finding
from idkey.model.character import Character, Kind, Look, Sex, Stage, State
from idkey.model.key import Key
from idkey.model.label import Label, Rates
from idkey.model.score import Inapplicable, Often, Score, Shows, Spans
from idkey.model.source import Basis, Source
from idkey.model.taxon import Climate, Danger, Hazard, Permit, Taxon

STATES = ("smooth", "ridged")
PLAIN = 12
"""How many two-state characters the key has."""

TAXA = (
    Taxon(
        id="lampa_nigra",
        name="Lampa nigra",
        authority="Inventor, 1901",
        family="Lampidae",
        climate=Climate.MOIST_FOREST,
    ),
    Taxon(id="lampa_rubra", name="Lampa rubra", family="Lampidae", climate=Climate.MOIST_FOREST),
    Taxon(
        id="fenestra_alta",
        name="Fenestra alta",
        family="Fenestridae",
        climate=Climate.ARID,
        hazard=Hazard(level=Danger.SIGNIFICANT, means=("sting",)),
    ),
    Taxon(
        id="porta_lata",
        name="Porta lata",
        family="Portidae",
        climate=Climate.SAVANNA,
        permit=Permit(cites="II", eu="B", as_of="2024", from_memory=True),
    ),
)


def _character(number: int) -> Character:
    return Character(
        id=f"ridge_{number}",
        name=f"Ridge {number}",
        question=f"Is ridge {number} smooth?",
        kind=Kind.CATEGORICAL,
        looks=(Look.LENS,) if number == 11 else (Look.TUB, Look.LENS),
        states=tuple(State(id=state, label=state) for state in STATES),
    )


LENGTH = Character(
    id="length",
    name="Length",
    question="How long is it?",
    kind=Kind.MEASUREMENT,
    unit="mm",
    looks=(Look.ABOVE,),
    uncertainty=2.0,
)
_MIX = ("lampa_nigra", "porta_lata", "lampa_rubra", "fenestra_alta")
_PATTERN = {"lampa_nigra": 0, "lampa_rubra": 1, "fenestra_alta": 2, "porta_lata": 3}


def _state(taxon: str, number: int) -> str:
    """Each taxon differs from every other on at least four ridges."""
    code = _PATTERN[taxon]
    return STATES[(code >> (number % 2)) & 1]


def _scores() -> tuple[Score, ...]:
    found = [
        Score(
            taxon=taxon,
            character=f"ridge_{number}",
            value=Shows({_state(taxon, number): None}),
            sources=("invented1901",),
        )
        for taxon in _PATTERN
        for number in range(PLAIN)
    ]
    sizes = {"lampa_nigra": (120, 160), "lampa_rubra": (90, 150), "fenestra_alta": (60, 90)}
    found += [
        Score(taxon=t, character="length", value=Spans(low=a, high=b), sources=("invented1901",))
        for t, (a, b) in sizes.items()
    ]
    found.append(
        Score(taxon="porta_lata", character="length", value=Inapplicable(), basis=Basis.MEMORY)
    )
    return tuple(found)


LABEL = Label(
    id="black_lamp",
    text="Black lamp scorpion",
    variants=("Schwarze Lampe",),
    covers=("lampa_nigra",),
    sold_as=("lampa_rubra", "fenestra_alta"),
    sold_outside=("brass lamps",),
    why="Both are dark when young.",
    deciding=("ridge_0", "length"),
    evidence="common_practice",
    safety="One of them stings badly",
    rates=Rates(shares={"lampa_nigra": 0.6, "lampa_rubra": 0.3}, sources=("invented1901",)),
    sources=("invented1901",),
)
BROAD = Label(id="lamp", text="Lamp scorpion", covers=("lampa_nigra", "lampa_rubra"))

KEY = Key(
    id="lamps",
    title="Lamps and doors",
    version="1.2.0",
    scope="Invented animals.",
    cautions=("Never handle an animal to see a character better.",),
    taxa=TAXA,
    characters=(*(_character(n) for n in range(PLAIN)), LENGTH),
    scores=_scores(),
    labels=(LABEL, BROAD),
    sources=(
        Source(
            id="invented1901", citation="Inventor A. 1901. Of lamps. Nowhere 1: 1-9.", seen=True
        ),
        Source(id="unused1902", citation="Inventor B. 1902. Of nothing. Nowhere 2: 1-9."),
    ),
    digest="5f" * 32,
)

CLAIM = Claim(
    text="Black Lamp Scorpion, CB",
    label="black_lamp",
    supplier="Lantern Street Vivarium",
    date="2025-11-03",
)


def case(taxon: str, findings: int, *, claim: Claim = CLAIM) -> Case:
    """A case whose first `findings` ridges are seen as they are on `taxon`."""
    seen = tuple(
        Finding(
            character=f"ridge_{n}",
            states=(_state(taxon, n),),
            look=Look.TUB,
            certainty=Certainty.SURE,
        )
        for n in range(findings)
    )
    return Case(
        id="7d6b0f5e-0002-4c1e-9a53-2f6f5f6f0002",
        key=KEY.id,
        key_version=KEY.version,
        key_digest=KEY.digest,
        claim=claim,
        findings=seen,
        by="RB",
        created="2025-11-04T08:30:00Z",
    )


def chimera() -> Case:
    """A case that no taxon of the key explains: three ridges of each."""
    parts = [case(taxon, PLAIN).findings[3 * n : 3 * n + 3] for n, taxon in enumerate(_MIX)]
    return replace(case("lampa_nigra", 0), findings=tuple(f for part in parts for f in part))


def judged(one: Case, *, prior: dict[str, float] | None = None) -> Assessment:
    """The case as the engine judges it."""
    used = replace(one, use_prior=True) if prior else one
    return assess(compile_key(KEY, used.specimen, used.care), used, prior)


USUALLY = Score(
    taxon="lampa_nigra",
    character="ridge_0",
    value=Shows({"smooth": Often.USUALLY, "ridged": Often.RARELY}),
    sex=Sex.MALE,
    stage=Stage.ADULT,
    basis=Basis.MEMORY,
    sources=("invented1901",),
)
