"""What can be wrong with a picture, in words a person can act on."""

from idkey.errors import IdKeyError


class PictureError(IdKeyError):
    """A picture cannot be used; nothing was kept or changed."""


class Refused(PictureError):  # noqa: N818 - reads as what happened to the file
    """A file was not taken in."""


class Gone(PictureError):  # noqa: N818 - reads as what happened to the picture
    """A picture that was kept is missing or damaged now."""
