"""What the README says about the command line is so."""

import re
import shlex
from pathlib import Path

import pytest

from idkey.cli.__main__ import USAGE
from idkey.cli.commands import main, program
from idkey.cli.usage import EXIT_CODES

README = (Path(__file__).parents[2] / "README.md").read_text("utf-8")
BLOCKS = re.findall(r"```sh\n(.*?)```", README, re.DOTALL)
LINES = [shlex.split(line) for block in BLOCKS for line in block.replace("\\\n", "").splitlines()]
COMMANDS = [line[3:] for line in LINES if line[:3] == ["python3", "-m", "idkey.cli"]]
ALONE = [command for command in COMMANDS if command != ["walk"]]


def test_every_command_is_shown_or_named():
    named = {name for name in program.commands if f"`{name}`" in README}

    assert {command[0] for command in COMMANDS} | named == set(program.commands)


def test_the_help_that_needs_no_set_up_names_every_command():
    (line,) = (line for line in USAGE.splitlines() if line.startswith("Commands: "))

    assert set(line.removeprefix("Commands: ").rstrip(".").split(", ")) == set(program.commands)


@pytest.mark.parametrize("command", ALONE, ids=lambda command: command[0])
def test_a_shown_command_runs(
    command: list[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
):
    if "keys/" in command[-1]:
        command = [*command[:-1], str(Path(__file__).parents[2] / command[-1])]
    monkeypatch.chdir(tmp_path)

    assert main(command) in (0, 1)
    assert capsys.readouterr().err == ""


def test_the_exit_codes_are_those_of_the_help():
    shown = re.findall(r"^\| (\d) \| (.+) \|$", README, re.MULTILINE)
    helped = re.findall(r"^  (\d)  (.+)$", EXIT_CODES, re.MULTILINE)

    assert [(n, text.replace("`", "")) for n, text in shown] == helped
