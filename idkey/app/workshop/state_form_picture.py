"""Pictures of states while a key is edited: found, listed, taken in, drawn."""

import shutil
from pathlib import Path

from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QPainter, QPixmap

from idkey.app.parts.rendering import rendered, scaled_bitmap
from idkey.errors import IdKeyError
from idkey.figures.own import IMAGES, own_figure
from idkey.figures.tiles import KINDS, figure_path
from idkey.formats.pictures import LARGEST_PICTURE, check_picture
from idkey.model.key import Key
from idkey.places import images_folder

CREDIT, LICENCE = "Drawings: the idkey project", "CC-BY-4.0"
"""What goes with the drawings of the program when a key names them. Source: images/LICENCE."""


def picture_file(folder: Path, key: Key, character: str, state: str) -> Path | None:
    """The picture of a state: the key's own in its folder, else one of the program's."""
    own = folder / IMAGES
    found = own_figure(own, key, character, state) if own.is_dir() else None
    return found or figure_path(images_folder(), key, character, state)


def named_figure(file: Path) -> str:
    """What a state writes to name a drawing of the program; empty for other files."""
    images = images_folder()
    return file.relative_to(images).as_posix() if file.is_relative_to(images) else ""


def drawings(folder: Path, key: Key) -> tuple[tuple[str, Path], ...]:
    """All drawings a state can name, as (what it writes, file): the key's own ones first."""
    found: list[tuple[str, Path]] = []
    own, images = folder / IMAGES, images_folder()
    for root in (own, images / "figures" / key.id, images / "figures"):
        base = own if root == own else images
        files = sorted(file for file in root.rglob("*") if file.suffix.lower() in KINDS)
        found += [(file.relative_to(base).as_posix(), file) for file in files]
    return tuple(dict(found).items())


def take_in(file: Path, folder: Path, *, character: str, state: str) -> str:
    """Copy a person's picture into the folder of the key; what the state writes to name it.

    Raises:
        IdKeyError: It is no picture, too large, does more than show itself, or cannot be copied.
    """
    if not file.is_file():
        raise IdKeyError(f"{file.name} is no file.", "Choose a picture.")
    if file.stat().st_size > LARGEST_PICTURE:
        raise IdKeyError(f"The picture {file.name} is too large.", "Make it smaller.")
    raw = file.read_bytes()
    check_picture(file.name, raw)
    home = folder / IMAGES / character
    ending, number = file.suffix.lower(), 1
    target = home / f"{state}{ending}"
    while target.exists() and target.read_bytes() != raw:
        number += 1
        target = home / f"{state}-{number}{ending}"
    try:
        home.mkdir(parents=True, exist_ok=True)
        if not target.exists():
            shutil.copyfile(file, target)
    except OSError as err:
        raise IdKeyError(
            f"The picture could not be copied to {home}: {err.strerror or 'unknown reason'}.",
            "Make room or ask for the right to write there.",
        ) from err
    return target.relative_to(folder / IMAGES).as_posix()


def fitted(file: Path, size: QSize, ratio: float) -> QPixmap | None:
    """A picture fitted into `size` (device-independent pixels); None when it cannot be shown."""
    if not _only_shows(file):
        return None
    svg = file.suffix.lower() == ".svg"
    made = rendered(file.read_bytes(), size, ratio) if svg else scaled_bitmap(file, size, ratio)
    return None if made.isNull() else made


def _only_shows(file: Path) -> bool:
    """Whether a picture does no more than show itself; those of the program are known to."""
    if file.is_relative_to(images_folder()):
        return True
    try:
        if file.stat().st_size <= LARGEST_PICTURE:
            check_picture(file.name, file.read_bytes())
            return True
    except (OSError, IdKeyError):
        pass
    return False


def on_plate(file: Path, size: QSize, ratio: float, *, ground: QColor) -> QPixmap | None:
    """A picture on the ground it is drawn for; None when it cannot be shown."""
    drawing = fitted(file, size, ratio)
    if drawing is None:
        return None
    own = drawing.deviceIndependentSize()
    plate = QPixmap(size * ratio)
    plate.setDevicePixelRatio(ratio)
    plate.fill(ground)
    painter = QPainter(plate)
    left = round((size.width() - own.width()) / 2)
    painter.drawPixmap(left, round((size.height() - own.height()) / 2), drawing)
    painter.end()
    return plate
