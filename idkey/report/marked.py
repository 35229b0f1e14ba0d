"""The marked pictures of a case, made ready for a document."""

from collections.abc import Mapping
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.model.case import Finding
from idkey.photo.drawn import drawn
from idkey.photo.marks import Marks, marks_of
from idkey.photo.shelf import PictureShelf
from idkey.report.notes import PictureNote

MOST = 6
"""Most pictures in one document; the first findings come first."""


def marked_pictures(
    folder: Path, findings: tuple[Finding, ...], into: Path, *, names: Mapping[str, str]
) -> tuple[tuple[PictureNote, ...], dict[str, Path]]:
    """The pictures behind the findings, with what was drawn on them.

    Args:
        folder: Folder of the kept pictures.
        findings: The findings of the case.
        into: Folder for the copies; it must be there.
        names: What each character is called.

    Returns:
        One note per picture, and the file per id. A picture that is missing or
        damaged is left out: the finding says all the same what was measured.
    """
    shelf = PictureShelf(folder)
    notes: list[PictureNote] = []
    files: dict[str, Path] = {}
    for finding in findings:
        for picture in finding.pictures:
            if picture in files or len(notes) == MOST:
                continue
            try:
                image = drawn(shelf.image(picture), _marks(finding, picture))
            except IdKeyError:
                continue
            files[picture] = into / f"{picture}.png"
            image.save(files[picture])
            notes.append(
                PictureNote(
                    id=picture, caption=names.get(finding.character, picture[:12]), sha256=picture
                )
            )
    return tuple(notes), files


def _marks(finding: Finding, picture: str) -> Marks:
    if finding.marks:
        return marks_of(finding.marks)
    return Marks(picture=picture, character=finding.character)
