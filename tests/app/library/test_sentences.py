"""What the formats say is known to the window, so that it can be said in its language."""

from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator

from idkey import places
from idkey.app.library.sentences import _patterns, worded
from idkey.formats.arrival import Arrival, read_arrival
from idkey.formats.folder import read_key
from idkey.formats.giving import WAYS, Source
from idkey.formats.sheet import parse_sheets
from idkey.formats.sheet_guess import guess

SHEET = "Taxon,Name,Colour,Length (mm),Spots,Index,Same,,Text\n" + "".join(
    f"t{n},Alpha {n},{'red' if n % 2 else 'pale'},{n if n else 'x'},{n},{n}.5,a,b,text {n}\n"
    for n in range(9)
)


def known(sentence: str) -> bool:
    return any(pattern.fullmatch(sentence) for _, pattern in _patterns())


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

    unknown = [sentence for sentence in said if not known(sentence)]
    assert [s for s in unknown if not s.startswith("The character '")] == []


def test_every_reason_of_a_guess_is_known():
    (sheet,) = parse_sheets(SHEET.encode(), "x.csv")

    reasons = [column.why for column in guess(sheet)]

    assert len(set(reasons)) == 9
    assert [why for why in reasons if not known(why)] == []


def test_a_sentence_is_said_in_the_language_of_the_window(qapp: QCoreApplication):
    class German(QTranslator):
        def translate(self, context: str, text: str, *_: object) -> str:
            return "{n} Wörter" if (context, text) == ("library", "{n} different words.") else ""

    translator = German()
    qapp.installTranslator(translator)
    try:
        assert worded("7 different words.") == "7 Wörter"
        assert worded("Something else.") == "Something else."
    finally:
        qapp.removeTranslator(translator)
