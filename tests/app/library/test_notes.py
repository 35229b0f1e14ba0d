"""What the formats say is known to the window, so that it can be said in its language."""

from pathlib import Path

import pytest

from idkey import places
from idkey.formats.arrival import Arrival, read_arrival
from idkey.formats.folder import read_key
from idkey.formats.giving import WAYS, Source
from idkey.formats.sheet import parse_sheets
from idkey.formats.sheet_guess import guess
from idkey.report.language import in_language
from idkey.report.told import told

SHEET = "Taxon,Name,Colour,Length (mm),Spots,Index,Same,,Text\n" + "".join(
    f"t{n},Alpha {n},{'red' if n % 2 else 'pale'},{n if n else 'x'},{n},{n}.5,a,b,text {n}\n"
    for n in range(9)
)


def unknown(sentences: list[str]) -> list[str]:
    return [one for one in sentences if told(one, in_language("de")) == one]


@pytest.mark.parametrize(
    "name",
    ["kitchen-leaves", pytest.param("large-dark-scorpions", marks=pytest.mark.slow)],
)
def test_every_sentence_about_a_key_that_goes_out_or_comes_in_is_known(name: str, tmp_path: Path):
    folder = places.keys_folder() / name
    source = Source(key=read_key(folder), folder=folder, images=places.images_folder())
    said: list[str] = []
    for way in WAYS:
        place = tmp_path / (f"k{way.ending}" if way.ending else name)
        said += way.write(source, place)
        found = read_arrival(place) if way.id in ("nexus", "package") else None
        said += found.notes if isinstance(found, Arrival) else ()

    assert unknown(said) == []


def test_every_reason_of_a_guess_is_known():
    (sheet,) = parse_sheets(SHEET.encode(), "x.csv")

    reasons = [column.why for column in guess(sheet)]

    assert len(set(reasons)) == 9
    assert unknown(reasons) == []
