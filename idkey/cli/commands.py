"""The command line: `idkey-cli`, and `python3 -m idkey.cli` in a checkout."""

import json
import sys
from dataclasses import replace
from pathlib import Path
from typing import Any

import click

from idkey import __version__
from idkey.cli.case_options import CaseArguments, case_options, described
from idkey.cli.console import Console
from idkey.cli.filing import file_rationale
from idkey.cli.findings import SYNTAX
from idkey.cli.judging import judged
from idkey.cli.keys import KEY_COMMANDS
from idkey.cli.opening import all_opened, folder_of, listed, opened
from idkey.cli.plain import as_plain
from idkey.cli.records import COMMANDS
from idkey.cli.usage import DONE, EXIT_CODES, FAILED, MISTAKES, OPEN, WRONG_USE
from idkey.cli.without_window import walked
from idkey.engine.labels import label_entry, match_labels
from idkey.errors import IdKeyError
from idkey.formats.folder import check_key
from idkey.formats.problem import KeyProblems, Severity
from idkey.report.language import CODES
from idkey.report.text import verdict_text
from idkey.report.words import covers_words, mixup_warning, why_question

EXAMPLE = """\
  idkey-cli identify --key large-dark-scorpions --label "Asian forest scorpion" \\
      --sex male --stage adult telson_colour=dark pectinal_teeth_male=17 \\
      'chela_robustness=!slender' manus_surface=unseen"""


@click.group(epilog=f"\b\n{EXIT_CODES}", context_settings={"max_content_width": 100})
@click.version_option(__version__, message="idkey %(version)s")
def program() -> None:
    """Say what an animal sold under a shop label really is, and how far the evidence goes."""


@program.command(epilog=f"\b\nFor example:\n{EXAMPLE}\n\n\b\nHow findings are written:\n{SYNTAX}")
@case_options
@click.option("--json", "as_json", is_flag=True, help="Print JSON instead of text.")
def identify(as_json: bool, **said: Any) -> int:
    """Weigh findings and print the verdict."""
    key, case = described(CaseArguments(**said))
    judgement = judged(key, case)
    if as_json:
        _print_json(as_plain(key, judgement))
    else:
        click.echo(
            verdict_text(key, judgement.assessment, judgement.questions, leaning=judgement.leaning)
        )
    return DONE if judgement.decided else OPEN


@program.command()
@case_options
@click.option("--all", "everything", is_flag=True, help="Also those that make no sense now.")
def questions(everything: bool, **said: Any) -> int:
    """List what to look at next, the best first, with the states that can be answered."""
    key, case = described(CaseArguments(**said))
    judgement = judged(key, case)
    for question in judgement.questions if everything else judgement.open:
        character = key.character[question.character]
        click.echo(f"{character.id}: {character.question}")
        click.echo(f"    {why_question(key, question)}")
        answers = ", ".join(character.state_ids) or f"a number in {character.unit or 'units'}"
        click.echo(f"    {answers}")
    return DONE


@program.command()
@case_options
@click.option("--out", required=True, type=click.Path(dir_okay=False, path_type=Path),
              metavar="FILE.pdf", help="Where to write; the JSON lands beside it.")  # fmt: skip
@click.option("--language", type=click.Choice(CODES),
              help="Of the document; without it that of the case, or else English.")  # fmt: skip
def rationale(out: Path, language: str | None, **said: Any) -> int:
    """Write the reasons down: FILE.pdf, and the same as JSON in FILE.json."""
    key, case = described(CaseArguments(**said))
    case = replace(case, language=language or case.language)
    for file in file_rationale(key, judged(key, case), out):
        click.echo(f"wrote {file}")
    return DONE


@program.command()
@click.argument("folder")
def check(folder: str) -> int:
    """Check a key folder and name every mistake as file:line:column."""
    place = folder_of(folder)
    key, problems = check_key(place)
    for problem in problems:
        kind = "" if problem.severity is Severity.ERROR else "warning: "
        click.echo(f"{problem.place}: {kind}{problem.problem} {problem.remedy}")
    if key is None:
        return MISTAKES
    click.echo(
        f"{key.title} {key.version}: {len(key.taxa)} taxa, {len(key.characters)} characters, "
        f"{len(key.scores)} scores, no mistakes"
    )
    return DONE


@program.command("list")
def list_() -> int:
    """List the keys that come with the program, and those that were added."""
    for entry in listed():
        yours = "  (added)" if entry.own else ""
        click.echo(f"{entry.id}  {entry.version}  {entry.problem or entry.title}{yours}")
    return DONE


@program.command()
@click.argument("text")
@click.option("--key", "key_name", metavar="KEY", help="Only this key.")
def labels(text: str, key_name: str | None) -> int:
    """Say what a label covers and what else is sold under it."""
    keys = [opened(key_name)] if key_name else all_opened()
    found = [(key, match) for key in keys for match in match_labels(key, text)]
    for key, match in sorted(found, key=lambda pair: (-pair[1].exact, -pair[1].score)):
        if entry := label_entry(key, match.label):
            likeness = "exact" if match.exact else f"like it, {match.score:.0f} of 100"
            click.echo(f"{match.text}  ({likeness}; {key.id})")
            said = f"{covers_words(key, entry)} {mixup_warning(key, entry)}"
            Console().tell(said, indent="    ")
    if not found:
        click.echo(f"No key knows {text!r} or anything like it.")
    return DONE


@program.command()
@click.option("--key", "key_name", metavar="KEY", help="Only this key.")
def walk(key_name: str | None) -> int:
    """Walk a case in text, question by question, and write the rationale at the end."""
    return walked([opened(key_name)] if key_name else all_opened())


for _command in (*KEY_COMMANDS, *COMMANDS):
    program.add_command(_command)


def main(argv: list[str] | None = None) -> int:
    """Run a command; errors a person can act on go to the error stream.

    Args:
        argv: Arguments after the program's name; None takes those of the process.

    Returns:
        Exit code, as `idkey.cli.usage` lists them.
    """
    try:
        code = program.main(argv, prog_name="idkey-cli", standalone_mode=False)
    except click.ClickException as err:
        err.show()
        return WRONG_USE
    except click.Abort:
        return FAILED
    except KeyProblems as err:
        return _told(str(err), MISTAKES)
    except IdKeyError as err:
        code = FAILED if isinstance(err.__cause__, OSError) else WRONG_USE
        return _told("\n".join(filter(None, [err.problem, err.remedy])), code)
    except OSError as err:
        return _told(f"{err.filename or 'A file'}: {err.strerror or err}.", FAILED)
    return int(code or DONE)


def _told(text: str, code: int) -> int:
    click.echo(text, err=True)
    return code


def _print_json(content: dict[str, Any]) -> None:
    click.echo(json.dumps(content, ensure_ascii=False, indent=1))


if __name__ == "__main__":
    sys.exit(main())
