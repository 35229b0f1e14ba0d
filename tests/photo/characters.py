"""Characters for tests of pictures; invented, apart from the colours of shipped keys."""

from idkey.formats.folder import read_key
from idkey.model.character import Character, Kind, Look, State
from idkey.places import keys_folder

LENGTH = Character(
    id="total_length",
    name="Total length",
    question="How long is it?",
    kind=Kind.MEASUREMENT,
    unit="mm",
    looks=(Look.ABOVE, Look.MOULT),
    uncertainty=2.0,
)
SLIMNESS = Character(
    id="claw_slimness",
    name="Claw length to width",
    question="How many times longer than wide is the claw?",
    kind=Kind.RATIO,
    unit="length / width",
    looks=(Look.TUB, Look.ABOVE),
)
EYES = Character(
    id="eye_position",
    name="Eye position",
    question="How far back are the eyes?",
    kind=Kind.RATIO,
    unit="%",
    looks=(Look.BELOW,),
)
TEETH = Character(
    id="teeth",
    name="Pectinal teeth",
    question="How many teeth?",
    kind=Kind.COUNT,
    unit="teeth per comb",
    looks=(Look.MOULT,),
)
TELSON = Character(
    id="telson",
    name="Telson colour",
    question="What colour is the telson?",
    kind=Kind.CATEGORICAL,
    looks=(Look.TUB, Look.ABOVE),
    states=(
        State(id="dark", label="dark", colours=("#1e1b1b", "#33302f")),
        State(id="reddish", label="reddish", colours=("#7a3220", "#8e4630")),
        State(id="yellow", label="yellow", colours=("#d0ae5c", "#e0cd96")),
        State(id="unknown", label="cannot be named"),
    ),
)
SURFACE = Character(
    id="manus_surface",
    name="Surface of the hand",
    question="What is the surface like?",
    kind=Kind.CATEGORICAL,
    looks=(Look.ABOVE, Look.LENS),
    states=(
        State(id="smooth", label="smooth"),
        State(id="rounded_granules", label="rounded granules"),
    ),
)


def with_colours() -> tuple[Character, ...]:
    """Every character of the shipped keys that has reference colours."""
    keys = [read_key(folder) for folder in sorted(keys_folder().iterdir()) if folder.is_dir()]
    return tuple(
        character
        for key in keys
        for character in key.characters
        if any(state.colours for state in character.states)
    )
