"""Errors as words on the screen; the only place that makes them."""

import logging
import os
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from idkey.errors import IdKeyError

log = logging.getLogger(__name__)

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True)
class Message:
    """What is wrong and what to do."""

    problem: str
    remedy: str

    @property
    def text(self) -> str:
        """Both, one after the other."""
        return f"{self.problem} {self.remedy}".strip()


def message_for(error: BaseException) -> Message:
    """The message for `error`; an unexpected one is logged whole under a short code."""
    if isinstance(error, IdKeyError):
        # The catalogues of sentences are read by a library the first picture does without.
        from idkey.app.parts.worded import worded

        return Message(worded(error.problem), worded(error.remedy))
    code = os.urandom(3).hex().upper()
    log.error("unexpected error %s", code, exc_info=error)
    return Message(
        translate("messages", "The program made a mistake and could not finish this step."),
        translate("messages", "Please try again; if it comes back, report code {code}.").format(
            code=code
        ),
    )


def careful_start() -> Message:
    """The message of a start that opened nothing again."""
    return Message(
        translate("messages", "The last starts of the program ended early."),
        translate(
            "messages",
            "It opened without the cases that were on the bench. They are kept in the records: "
            "open them again one after another.",
        ),
    )
