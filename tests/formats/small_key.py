"""A small invented key as text, to plant mistakes in."""

from pathlib import Path

FILES = {
    "key.yaml": """\
format: 1
id: small
title: Small invented key
version: 1.0.0
""",
    "characters.yaml": """\
characters:
  - id: tail
    name: Tail
    question: Which shape has the tail?
    kind: categorical
    looks: [tub]
    states:
      - {id: none, label: none}
      - {id: leaf, label: like a leaf}
      - {id: rope, label: like a rope}
    sources: [novak2020]
  - id: colour
    name: Colour
    question: Which colour has the back?
    kind: categorical
    looks: [tub, photo_above]
    states:
      - {id: dark, label: dark, colours: ["#202020"]}
      - {id: pale, label: pale}
  - id: length
    name: Length
    question: How long is it from snout to vent?
    kind: measurement
    unit: mm
    looks: [photo_above]
""",
    "labels.yaml": """\
labels:
  - id: leafy
    text: Leafy
    covers: [alpha]
    sold_as: [beta]
    deciding: [tail]
    sources: [novak2020]
""",
    "couplets.yaml": """\
couplets:
  - id: "1"
    leads:
      - {statement: Tail like a leaf., sees: {tail: [leaf]}, to: "2"}
      - {statement: Tail otherwise., sees: {tail: [none, rope]}, taxa: [gamma]}
  - id: "2"
    leads:
      - {statement: Short., sees: {length: {high: 50}}, taxa: [alpha]}
      - {statement: Long., sees: {length: {low: 50}}, taxa: [beta]}
""",
    "sources.yaml": """\
sources:
  novak2020:
    citation: Novak 2020, an invented book, page 3.
    seen: true
""",
    "checks.yaml": """\
checks:
  - id: c1
    kind: matrix
    statement: A leaf leaves alpha and beta.
    sees: {tail: [leaf]}
    remain: [alpha, beta]
    exclude: [gamma]
    sources: [novak2020]
""",
    "taxa/alpha.yaml": """\
id: alpha
name: Alpha prima
size_mm: [40, 50]
scores:
  tail: {shows: [leaf], sources: [novak2020]}
  colour: {shows: {dark: usually, pale: 0.2}, sources: [novak2020]}
  length: {low: 40, high: 50, mean: 44.5, sd: 2, n: 12, sources: [novak2020]}
""",
    "taxa/beta.yaml": """\
id: beta
name: Beta secunda
scores:
  tail: {shows: [leaf], sources: [novak2020]}
  colour:
    - {sex: male, shows: [dark], sources: [novak2020]}
    - {sex: female, shows: [pale], sources: [novak2020]}
  length: {low: 55, sources: [novak2020]}
""",
    "taxa/gamma.yaml": """\
id: gamma
name: Gamma tertia
scores:
  tail: {inapplicable: true, sources: [novak2020]}
""",
}
"""Text per file name; the key has no mistakes."""


def laid_out(folder: Path, files: dict[str, str | bytes]) -> Path:
    """The key folder `small` below `folder`, holding `files`."""
    key = folder / "small"
    (key / "taxa").mkdir(parents=True)
    for name, text in files.items():
        (key / name).write_bytes(text if isinstance(text, bytes) else text.encode())
    return key


def with_change(folder: Path, name: str, old: str, new: str) -> Path:
    """The key folder with one text changed; the text must be there, and once."""
    assert FILES[name].count(old) == 1, f"{old!r} is {FILES[name].count(old)} times in {name}"
    return laid_out(folder, {**FILES, name: FILES[name].replace(old, new)})
