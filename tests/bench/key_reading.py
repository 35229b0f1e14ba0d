"""Speed bench: reading a key folder, against plain YAML loading of the same bytes.

Run: ``python -m tests.bench.key_reading``. The made-up key has 1,000 taxa and 100 characters.
"""

import tempfile
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
import yaml

from idkey.formats.folder import read_key, write_key
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.score import Score, Shows, Spans
from idkey.model.source import Source
from idkey.model.taxon import Taxon
from idkey.places import keys_folder

TAXA, CHARACTERS, STATES, SOURCES = 1_000, 100, 4, 30


def _characters() -> tuple[Character, ...]:
    return tuple(
        Character(
            id=f"character_{n}",
            name=f"Character {n}",
            question="?",
            kind=Kind.CATEGORICAL if n % 4 else Kind.MEASUREMENT,
            unit="" if n % 4 else "mm",
            looks=(Look.TUB,),
            states=tuple(State(id=f"s{n}_{i}", label="x") for i in range(STATES if n % 4 else 0)),
        )
        for n in range(CHARACTERS)
    )


def synthetic(seed: int = 1) -> Key:
    """A made-up key with every cell scored, a third of them with a remark."""
    chance = np.random.default_rng(seed)
    characters = _characters()
    taxa = tuple(Taxon(id=f"taxon_{n:04}", name=f"Genus species{n}") for n in range(TAXA))
    scores = []
    for taxon in taxa:
        for character in characters:
            ids = character.state_ids
            low = int(chance.integers(10, 50))
            shown = Shows({ids[chance.integers(STATES)]: None}) if ids else None
            scores.append(
                Score(
                    taxon=taxon.id,
                    character=character.id,
                    value=shown or Spans(low=low, high=low + 9.5),
                    sources=(f"source{chance.integers(SOURCES)}",),
                    note=f"page {chance.integers(400)}" if chance.random() < 1 / 3 else "",
                )
            )
    sources = tuple(Source(id=f"source{n}", citation="Made up.") for n in range(SOURCES))
    return Key(
        id="bench",
        title="Bench",
        version="1.0.0",
        taxa=taxa,
        characters=characters,
        scores=tuple(scores),
        sources=sources,
    )


def _seconds(work: Callable[[], object]) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def _plain(folder: Path) -> None:
    for file in folder.rglob("*.yaml"):
        yaml.load(file.read_bytes(), Loader=yaml.CSafeLoader)


def report(name: str, folder: Path, cache: Path) -> None:
    """Print one line of figures."""
    plain = _seconds(lambda: _plain(folder))
    cold = _seconds(lambda: read_key(folder))
    first = _seconds(lambda: read_key(folder, cache))
    warm = min(_seconds(lambda: read_key(folder, cache)) for _ in range(3))
    print(
        f"{name}: plain YAML {plain:.3f} s; read and checked {cold:.3f} s ({cold / plain:.2f} of "
        f"plain); read and remembered {first:.3f} s; from memory {warm:.3f} s "
        f"({warm / plain:.3f} of plain)"
    )


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as place:
        big = Path(place) / "bench"
        write_key(synthetic(), big)
        report("1,000 x 100", big, Path(place) / "cache")
        shipped = keys_folder() / "large-dark-scorpions"
        report("large-dark-scorpions", shipped, Path(place) / "cache")
