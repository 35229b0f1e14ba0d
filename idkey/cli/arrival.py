"""The first questions of a walk in text: the label, the aim, the specimen."""

from collections.abc import Sequence
from dataclasses import replace

from idkey.cli.console import Console
from idkey.cli.judging import new_case
from idkey.engine.labels import label_entry, match_labels
from idkey.model.case import Aim, Case, Claim, Specimen
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.report.words import covers_words, mixup_warning

OFFERED = 6
"""Near matches of a label that are shown."""

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

    Raises:
        Stopped: The person stopped.
    """
    text = console.ask("What does the label say? (Enter when there is none)")
    key, label = _labelled(console, keys, text)
    console.tell(f"Key: {key.title}, version {key.version}.")
    if entry := label_entry(key, label):
        console.tell(f"{covers_words(key, entry)} {mixup_warning(key, entry)}", indent="  ")
    elif text:
        console.tell("It has no entry for that label, so the animal is named on its own.")
    aims = list(AIMS) if label else list(AIMS)[1:]
    aim = AIMS[aims[console.choose("What do you need to know?", aims)]]
    claim = Claim(text=text, label=label)
    case = replace(new_case(key), claim=claim, aim=aim, specimen=_specimen(console, key))
    return key, case


def _labelled(console: Console, keys: Sequence[Key], text: str) -> tuple[Key, str]:
    """The key, and the id of its label entry that is meant; empty for none."""
    found = [(key, match) for key in keys for match in match_labels(key, text)]
    exact = [(key, match.label) for key, match in found if match.exact]
    if len({key.id for key, _ in exact}) == 1:
        return exact[0]
    near = sorted(found, key=lambda pair: -pair[1].score)[:OFFERED]
    if near:
        spellings = [f"{match.text}  ({key.title})" for key, match in near]
        chosen = console.choose("Is one of these meant?", [*spellings, "none of these"], None)
        if chosen < len(near):
            return near[chosen][0], near[chosen][1].label
    if len(keys) == 1:
        return keys[0], ""
    titles = [key.title for key in keys]
    return keys[console.choose("Which key covers the animal?", titles, None)], ""


def _specimen(console: Console, key: Key) -> Specimen:
    """Sex and stage, where the key has characters that depend on them."""
    sex = stage = 0
    if any(character.sex for character in key.characters):
        sex = console.choose("Its sex?", ["not known", *(one.value for one in Sex)])
    if any(character.stage for character in key.characters):
        stage = console.choose("Its stage?", ["not known", *(one.value for one in Stage)])
    return Specimen(sex=(None, *Sex)[sex], stage=(None, *Stage)[stage])
