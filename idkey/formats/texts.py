"""The files of a key, read but not yet understood."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from idkey.formats.problem import Problem, Severity, hint
from idkey.formats.yaml_text import YamlText, parse_bytes, read_yaml

FILES = ("key", "characters", "labels", "couplets", "sources", "checks")
"""The files of a key folder, in the order they are written and complained about."""

MOST_TAXA = 20_000
"""A folder with more files in taxa/ is refused."""


@dataclass(slots=True)
class Texts:
    """The files of one key.

    Attributes:
        found: Whether there is a key at all.
        names: Names of the files there are, such as ``"taxa/pandinus_imperator.yaml"``.
        files: The readable ones by name.
        problems: Mistakes that keep files from being read.
    """

    found: bool = True
    names: set[str] = field(default_factory=set)
    files: dict[str, YamlText] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)


def read_texts(folder: Path) -> Texts:
    """The files of the key in `folder`."""
    texts = Texts()
    if not folder.is_dir():
        texts.found = False
        texts.problems.append(
            start_of(folder, f"There is no key folder '{folder.name}'.", "Check the path.")
        )
        return texts
    taxa = sorted((folder / "taxa").glob("*.yaml"))
    if len(taxa) > MOST_TAXA:
        problem = f"The folder taxa/ holds more than {MOST_TAXA} files."
        texts.problems.append(start_of(folder / "taxa", problem, "Split the key."))
        taxa = []
    named = {f"{name}.yaml": folder / f"{name}.yaml" for name in FILES}
    named |= {f"taxa/{file.name}": file for file in taxa}
    for name, file in named.items():
        if file.exists():
            texts.names.add(name)
            yaml, problems = read_yaml(file)
            texts.problems += problems
            if yaml is not None:
                texts.files[name] = yaml
    texts.problems += _stray(folder)
    return texts


def parsed_texts(folder: Path, contents: Mapping[str, bytes]) -> Texts:
    """The files of a key that is not on disk.

    Args:
        folder: Where mistakes say that the key is.
        contents: Bytes per file name, such as ``"taxa/pandinus_imperator.yaml"``.
    """
    texts = Texts(names=set(contents))
    for name, raw in contents.items():
        yaml, problems = parse_bytes(folder / name, raw)
        texts.problems += problems
        if yaml is not None:
            texts.files[name] = yaml
    return texts


def start_of(file: Path, problem: str, remedy: str) -> Problem:
    """A mistake of a file as a whole."""
    return Problem(file=file, line=1, column=1, problem=problem, remedy=remedy)


def _stray(folder: Path) -> Iterator[Problem]:
    known = [f"{name}.yaml" for name in FILES]
    for file in sorted(folder.glob("*.y*ml")):
        if file.name not in known:
            yield Problem(
                file=file,
                line=1,
                column=1,
                problem=f"{file.name} is no file of a key, so it is not read.",
                remedy=hint(file.name, known, "Rename or remove it."),
                severity=Severity.WARNING,
            )
