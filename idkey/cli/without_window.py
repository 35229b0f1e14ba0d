"""The main job without a window: a walk at the terminal, else the sample case."""

from collections.abc import Sequence
from pathlib import Path

import click

from idkey.cli.arrival import arrived
from idkey.cli.console import Console
from idkey.cli.filing import file_rationale
from idkey.cli.judging import judged
from idkey.cli.opening import all_opened, opened
from idkey.cli.usage import DONE, WRONG_USE
from idkey.cli.walk import Walk
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.errors import IdKeyError, Stopped
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.places import data_folder
from idkey.report.text import verdict_text


def run(*, walk: bool) -> int:
    """Walk a case when somebody is there to answer, else judge the sample case.

    Returns:
        Exit code.
    """
    try:
        if walk:
            return walked(all_opened())
        return sampled()
    except IdKeyError as err:
        click.echo(f"{err.problem}\n{err.remedy}", err=True)
        return WRONG_USE


def walked(keys: Sequence[Key], console: Console | None = None) -> int:
    """Ask for label, aim and specimen, then question by question; ends with the rationale."""
    console = console or Console()
    console.tell(
        "idkey in text. Never handle an animal to see it better; 'stop' or Ctrl-D ends the walk.\n"
    )
    try:
        key, case = arrived(console, keys)
    except Stopped:
        return DONE
    _conclude(key, Walk(console, key, case).to_the_end(), console)
    return DONE


def sampled() -> int:
    """Judge the sample case and write its rationale."""
    key = opened(SAMPLE_KEY)
    click.echo("No window can be shown and nobody is at a terminal, so this is the sample case.\n")
    _conclude(key, sample_case(key), Console())
    return DONE


def _conclude(key: Key, case: Case, console: Console) -> None:
    """The verdict in words, then the rationale as files."""
    judgement = judged(key, case)
    text = verdict_text(key, judgement.assessment, judgement.questions, leaning=judgement.leaning)
    console.shown(f"\n{text}\n")
    for file in file_rationale(key, judgement, _place(case)):
        console.shown(f"wrote {file}")


def _place(case: Case) -> Path:
    folder = data_folder() / "rationales"
    folder.mkdir(mode=0o700, exist_ok=True)
    return folder / f"rationale-{case.id}.pdf"
