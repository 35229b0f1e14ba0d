"""Keys come in and go out on the command line."""

from pathlib import Path

import click

from idkey.cli.opening import folder_of, listed, opened
from idkey.cli.usage import DONE
from idkey.errors import IdKeyError
from idkey.formats.arrival import Arrival, read_arrival
from idkey.formats.compare import changes
from idkey.formats.giving import WAYS, Source
from idkey.formats.key_shelf import OWN, REMOVED, put_in
from idkey.places import data_folder, images_folder

FORMS = {way.id: way for way in WAYS}


@click.command()
@click.argument("file", type=click.Path(exists=True, path_type=Path))
@click.option("--replace", is_flag=True, help="Put it in the place of an added key of its name.")
def add(file: Path, replace: bool) -> int:
    """Add a key: a package, folder, JSON, SDD, NEXUS or whole spreadsheet."""
    came = read_arrival(file)
    if not isinstance(came, Arrival):
        raise IdKeyError(
            f"{file.name} is a spreadsheet whose columns have to be explained.",
            "Do that in the library of the window.",
        )
    for note in came.notes:
        click.echo(f"  {note}")
    here = next((entry for entry in listed() if entry.id == came.key.id), None)
    if here is not None and not here.problem and _told(came, here.id):
        return DONE
    if here is not None and not (replace and here.own):
        why = "It came with the program." if not here.own else "Say --replace to do so."
        raise IdKeyError(f"A key named '{here.id}' is here and was not replaced.", why)
    data = data_folder()
    removed = data / REMOVED if replace else None
    click.echo(f"added {put_in(came.key, data / OWN, files=came.files, removed=removed)}")
    return DONE


def _told(came: Arrival, name: str) -> bool:
    """Tell what differs from the key that is here; whether nothing does."""
    found = changes(opened(name), came.key)
    for change in found:
        click.echo(f"  {change.words}")
    if not found:
        click.echo(f"{name} is here already, word for word.")
    return not found


@click.command()
@click.argument("key")
@click.argument("file", type=click.Path(path_type=Path))
@click.option("--form", type=click.Choice(list(FORMS)), help="Else by the ending of FILE.")
def export(key: str, file: Path, form: str | None) -> int:
    """Write a key to FILE, and say what its form cannot hold."""
    endings = {way.ending: way for way in WAYS if way.ending}
    way = FORMS[form] if form else endings.get(file.suffix.lower())
    if way is None:
        known = ", ".join(endings)
        raise IdKeyError(f"'{file.name}' does not say which form.", f"End it in {known}.")
    source = Source(key=opened(key), folder=folder_of(key), images=images_folder())
    left = way.write(source, file)
    click.echo(f"wrote {file}")
    for line in left:
        click.echo(f"  {line}")
    return DONE


KEY_COMMANDS = (add, export)
