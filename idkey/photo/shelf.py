"""Where pictures are kept: files named after what is in them, beside the record book."""

import contextlib
import hashlib
import io
import json
import re
from dataclasses import asdict
from enum import StrEnum
from pathlib import Path

from PIL import Image

from idkey.photo.faults import Gone, PictureError
from idkey.photo.intake import LIMITS, Incoming, Limits, Picture, read_bytes, read_file
from idkey.places import keep_private

THUMBNAIL = 256
"""Longest side of a thumbnail, in pixels."""

_ID = re.compile(r"[0-9a-f]{64}")
_ENDING = {"image/jpeg": ".jpg", "image/png": ".png"}


class Condition(StrEnum):
    """How a picture that somebody refers to is found."""

    WHOLE = "whole"
    MISSING = "missing"
    DAMAGED = "damaged"


class PictureShelf:
    """A folder of pictures; each is written once, under the SHA-256 of its bytes.

    Args:
        folder: Where they lie, such as ``pictures`` beside the record book; made when needed.
        limits: How large a picture may be.
    """

    def __init__(self, folder: Path, limits: Limits = LIMITS) -> None:
        self.folder = folder
        self._limits = limits

    def add_file(self, path: Path) -> Picture:
        """Keep a copy of a picture file, without its metadata.

        Raises:
            Refused: It is no picture that can be used.
            PictureError: It cannot be written.
        """
        return self.put(read_file(path, self._limits))

    def add_bytes(self, source: bytes, name: str = "The picture") -> Picture:
        """Keep a picture that came as bytes, such as from the clipboard.

        Raises:
            Refused: It is no picture that can be used.
            PictureError: It cannot be written.
        """
        return self.put(read_bytes(source, name, self._limits))

    def put(self, incoming: Incoming) -> Picture:
        """Keep a picture that was taken in; the same one again changes nothing.

        Raises:
            PictureError: It cannot be written.
        """
        picture = incoming.picture
        note = json.dumps(asdict(picture), sort_keys=True)
        try:
            keep_private(self._thumbnail_file(picture.id), _thumbnail(incoming.image), durable=True)
            if self.condition(picture.id) is not Condition.WHOLE:
                keep_private(self._file(picture), incoming.content, durable=True)
                keep_private(self._note_file(picture.id), note.encode("utf-8"), durable=True)
        except OSError as err:
            raise self._unwritable(err) from err
        return picture

    def ids(self) -> tuple[str, ...]:
        """Ids of all pictures there are, in order."""
        notes = self.folder.glob("[0-9a-f][0-9a-f]/*.json")
        return tuple(sorted(file.stem for file in notes if _ID.fullmatch(file.stem)))

    def picture(self, picture_id: str) -> Picture | None:
        """What is known of a picture; None when nothing is."""
        with contextlib.suppress(OSError, ValueError, TypeError, Gone):
            known = Picture(**json.loads(self._note_file(picture_id).read_text("utf-8")))
            if known.id == picture_id and known.media_type in _ENDING:
                return known
        return None

    def condition(self, picture_id: str) -> Condition:
        """Whether a picture is there and is what it was when it was added."""
        try:
            self.content(picture_id)
        except Gone:
            known = self.picture(picture_id)
            there = known is not None and self._file(known).is_file()
            return Condition.DAMAGED if there else Condition.MISSING
        return Condition.WHOLE

    def content(self, picture_id: str) -> bytes:
        """The kept bytes; they hold no metadata and may be passed on.

        Raises:
            Gone: The file is missing or is not what was kept.
        """
        known = self.picture(picture_id)
        try:
            content = self._file(known).read_bytes() if known is not None else None
        except OSError:
            content = None
        if content is None:
            raise Gone(
                f"The picture {picture_id[:12]}… is no longer in {self.folder}.",
                "Put it back from a backup; the finding and its number stand without it.",
            )
        if hashlib.sha256(content).hexdigest() != picture_id:
            raise Gone(
                f"The picture {picture_id[:12]}… is damaged: its file is not what was kept.",
                "Put it back from a backup; the finding and its number stand without it.",
            )
        return content

    def image(self, picture_id: str) -> Image.Image:
        """The picture itself, mode RGB.

        Raises:
            Gone: The file is missing or is not what was kept.
        """
        with Image.open(io.BytesIO(self.content(picture_id)), formats=("JPEG", "PNG")) as opened:
            return opened.convert("RGB")

    def thumbnail(self, picture_id: str) -> bytes | None:
        """A small JPEG of the picture, made again where it is lost; None without a picture."""
        with contextlib.suppress(OSError, Gone):
            return self._thumbnail_file(picture_id).read_bytes()
        try:
            made = _thumbnail(self.image(picture_id))
        except Gone:
            return None
        with contextlib.suppress(OSError):
            keep_private(self._thumbnail_file(picture_id), made, durable=True)
        return made

    def draft(self, picture_id: str, character: str) -> str:
        """Marks that were drawn for a character and not noted yet; empty when there are none."""
        with contextlib.suppress(OSError, ValueError, Gone):
            return self._draft_file(picture_id, character).read_text("utf-8")
        return ""

    def put_draft(self, picture_id: str, character: str, text: str) -> None:
        """Keep marks that are not noted yet; empty text removes them.

        Raises:
            PictureError: They cannot be written.
        """
        file = self._draft_file(picture_id, character)
        try:
            if text:
                keep_private(file, text.encode("utf-8"))
            else:
                file.unlink(missing_ok=True)
        except OSError as err:
            raise self._unwritable(err) from err

    def _file(self, picture: Picture) -> Path:
        return self._note_file(picture.id).with_suffix(_ENDING[picture.media_type])

    def _note_file(self, picture_id: str) -> Path:
        return self._place(picture_id) / f"{picture_id}.json"

    def _thumbnail_file(self, picture_id: str) -> Path:
        return self._place(picture_id) / f"{picture_id}.small.jpg"

    def _draft_file(self, picture_id: str, character: str) -> Path:
        name = hashlib.sha256(character.encode("utf-8")).hexdigest()[:16]
        return self._place(picture_id) / f"{picture_id}.{name}.draft"

    def _unwritable(self, err: OSError) -> PictureError:
        return PictureError(
            f"The picture cannot be kept in {self.folder}: {err.strerror}.",
            "Make that folder writable for you, or free some space.",
        )

    def _place(self, picture_id: str) -> Path:
        if not _ID.fullmatch(picture_id):  # an id from a record is not trusted to be a name
            raise Gone(f"{picture_id[:20]!r} does not name a picture.", "Add the picture again.")
        return self.folder / picture_id[:2]


def _thumbnail(image: Image.Image) -> bytes:
    small = image.copy()
    small.thumbnail((THUMBNAIL, THUMBNAIL))
    stream = io.BytesIO()
    small.save(stream, "JPEG", quality=85)
    return stream.getvalue()
