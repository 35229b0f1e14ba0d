"""The arguments that describe a case, the same for every command that needs one."""

import json
from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path
from typing import Any, TypeVar

import click

from idkey.cli.findings import finding
from idkey.cli.judging import new_case, now
from idkey.cli.opening import opened
from idkey.engine.labels import label_entry, match_labels
from idkey.errors import IdKeyError
from idkey.model.case import Aim, Care, Case, Claim, Specimen
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.report.rationale import DIGEST, rationale_from
from idkey.store.codec import case_from

Command = TypeVar("Command", bound=Callable[..., Any])


def _one_of(words: type[StrEnum]) -> click.Choice[str]:
    return click.Choice([word.value for word in words], case_sensitive=False)


_OPTIONS = (
    click.argument("findings", nargs=-1, metavar="[CHARACTER=STATE]..."),
    click.option("--key", "key_name", metavar="KEY", help="Name of a key, or its folder."),
    click.option("--case", "file", type=click.Path(exists=True, dir_okay=False, path_type=Path),
                 help="A case or a rationale as JSON; findings given here are added to it."),
    click.option("--label", help="What the label says, verbatim."),
    click.option("--sex", type=_one_of(Sex)),
    click.option("--stage", type=_one_of(Stage)),
    click.option("--aim", type=_one_of(Aim), help="What you need to know."),
    click.option("--care", type=_one_of(Care), help="How the looking was done."),
    click.option("--tolerance", type=click.IntRange(0), metavar="N",
                 help="Conflicts a taxon may have and still stand."),
    click.option("--prior/--no-prior", default=None,
                 help="Whether what the label usually turns out to be counts."),
    click.option("--by", help="Who looked, as initials or alias."),
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseArguments:
    """What was said about a case; None and empty keep what the case file says."""

    findings: tuple[str, ...] = ()
    key_name: str | None = None
    file: Path | None = None
    label: str | None = None
    sex: str | None = None
    stage: str | None = None
    aim: str | None = None
    care: str | None = None
    tolerance: int | None = None
    prior: bool | None = None
    by: str | None = None


def case_options(command: Command) -> Command:
    """Give a command the arguments of `CaseArguments`."""
    for option in reversed(_OPTIONS):
        command = option(command)
    return command


def described(said: CaseArguments) -> tuple[Key, Case]:
    """The key and the case that the arguments describe.

    Raises:
        IdKeyError: No key is named, or a name is unknown.
    """
    given = _from_file(said.file) if said.file else None
    name = said.key_name or (given.key if given else "")
    if not name:
        raise IdKeyError("No key is named.", "Add --key; `idkey-cli list` names the keys.")
    key = opened(name)
    case = given or new_case(key)
    case = replace(
        case,
        claim=_claim(key, case.claim, said.label),
        specimen=_specimen(case.specimen, said),
        aim=Aim(said.aim) if said.aim else case.aim,
        care=Care(said.care) if said.care else case.care,
        tolerance=case.tolerance if said.tolerance is None else said.tolerance,
        use_prior=case.use_prior if said.prior is None else said.prior,
        by=said.by or case.by,
    )
    for text in said.findings:
        case = case.observe(replace(finding(key, text), at=now(), by=case.by))
    return key, case


def _claim(key: Key, claim: Claim, text: str | None) -> Claim:
    """The claim with the label's entry, where the text is one without doubt."""
    if text is not None:
        claim = replace(claim, text=text, label="")
    if claim.label and label_entry(key, claim.label):
        return claim
    matches = match_labels(key, claim.text)
    return replace(claim, label=matches[0].label if matches and matches[0].exact else "")


def _specimen(specimen: Specimen, said: CaseArguments) -> Specimen:
    return Specimen(
        sex=Sex(said.sex) if said.sex else specimen.sex,
        stage=Stage(said.stage) if said.stage else specimen.stage,
    )


def _from_file(file: Path) -> Case:
    """The case in a file that `identify --json` or `rationale` wrote, or a case alone."""
    try:
        text = file.read_text("utf-8")
        record = json.loads(text)
    except ValueError as err:
        raise IdKeyError(f"{file} is not JSON.", "Give a case as this program writes it.") from err
    if not isinstance(record, dict):
        raise IdKeyError(f"{file} holds no case.", "Give a case as this program writes it.")
    if DIGEST in record:
        return rationale_from(text)[0].case
    return case_from(record.get("case", record))
