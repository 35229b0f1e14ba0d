"""The first questions of a walk in text: the label, the aim, the specimen."""

from collections.abc import Sequence
from dataclasses import replace

from idkey.cli.console import Console
from idkey.cli.judging import new_case
from idkey.engine.labels import label_entry, match_labels
from idkey.engine.result import LabelMatch
from idkey.model.case import Aim, Case, Claim, Specimen
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.report.words import covers_words, mixup_warning

AIMS = {
    "Is the label right?": Aim.LABEL,
    "What is it?": Aim.TAXON,
    "Can it hurt?": Aim.HAZARD,
    "Does it need papers?": Aim.PERMIT,
}


def arrived(console: Console, keys: Sequence[Key]) -> tuple[Key, Case]:
    """Ask what the label says and what is known of the animal.

    Args:
        console: The conversation.
        keys: Keys to choose from; at least one.
    """
    text = console.ask("What does the label say? (Enter when there is none)")
    key, matches = _key_for(console, keys, text)
    label = _confirmed(console, key, matches) if text else ""
    if entry := label_entry(key, label):
        console.tell(f"{covers_words(key, entry)} {mixup_warning(key, entry)}", indent="  ")
    elif text:
        console.tell("The key has no entry for that label; the animal is named on its own.")
    aims = list(AIMS) if label else list(AIMS)[1:]
    aim = AIMS[aims[console.choose("What do you need to know?", aims)]]
    specimen = Specimen(
        sex=(None, *Sex)[console.choose("Its sex?", ("not known", *Sex))],
        stage=(None, *Stage)[console.choose("Its stage?", ("not known", *Stage))],
    )
    claim = Claim(text=text, label=label)
    return key, replace(new_case(key), claim=claim, aim=aim, specimen=specimen)


def _key_for(
    console: Console, keys: Sequence[Key], text: str
) -> tuple[Key, tuple[LabelMatch, ...]]:
    """The key that knows the label, else the one chosen."""
    found = [(key, match_labels(key, text)) for key in keys]
    knowing = [(key, matches) for key, matches in found if matches and matches[0].exact]
    if len(knowing) == 1 or len(keys) == 1:
        key, matches = (knowing or found)[0]
        console.tell(f"Key: {key.title}, version {key.version}.")
        return key, matches
    titles = [key.title for key, _ in found]
    return found[console.choose("Which key covers the animal?", titles)]


def _confirmed(console: Console, key: Key, matches: Sequence[LabelMatch]) -> str:
    """The id of the label entry that is meant; empty for none."""
    if not matches:
        return ""
    if matches[0].exact:
        return matches[0].label
    entries = [label_entry(key, match.label) for match in matches]
    offered = [f"{match.text} ({e.text})" for match, e in zip(matches, entries, strict=True) if e]
    chosen = console.choose("Is one of these meant?", [*offered, "none of these"], len(offered))
    return matches[chosen].label if chosen < len(matches) else ""
