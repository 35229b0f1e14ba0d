"""Writes every drawing: ``python -m idkey.figures.draw images``."""

from pathlib import Path

import click

from idkey.errors import IdKeyError
from idkey.figures.catalogue import plan_files, tile_files
from idkey.places import keys_folder

OURS = ("figures", "plates", "bodyplans")
"""Folders below the image folder that hold drawings made here."""


def drawings(keys: Path) -> dict[str, str]:
    """Every drawing as text, by its path below the image folder.

    Args:
        keys: Folder of the shipped keys.
    """
    return tile_files(keys) | plan_files()


@click.command()
@click.argument("images", type=click.Path(file_okay=False, path_type=Path))
def main(images: Path) -> None:
    """Draw everything into the folder IMAGES; what has not changed is not touched."""
    try:
        files = drawings(keys_folder())
    except IdKeyError as err:
        raise click.ClickException(f"{err.problem}\n{err.remedy}") from err
    changed = sum(_written(images / place, text) for place, text in files.items())
    click.echo(f"{len(files)} drawings, {changed} of them new or changed.")


def _written(file: Path, text: str) -> bool:
    if file.is_file() and file.read_text("utf-8") == text:
        return False
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(text, encoding="utf-8", newline="\n")
    return True


if __name__ == "__main__":
    main()
