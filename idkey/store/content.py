"""What an entry of the chain holds, as canonical JSON text and back."""

import json

from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.store.codec import Form, UnreadableRecord, canonical, case_from, plain
from idkey.store.record import VerdictSummary

_SUMMARIES = Form(VerdictSummary)


def sealed(case: Case, summary: VerdictSummary | None) -> str:
    """The text saved for one revision of a case; equal cases and summaries, equal texts."""
    told = None if summary is None else _SUMMARIES.plain(summary)
    return canonical({"case": plain(case), "summary": told})


def opened(text: str) -> tuple[Case, VerdictSummary | None]:
    """The case and the summary in a text made by `sealed`.

    Raises:
        UnreadableRecord: A newer program wrote it, or it is not what was saved.
    """
    try:
        record = json.loads(text)
        told = record["summary"]
        return case_from(record["case"]), None if told is None else _SUMMARIES.value_from(told)
    except IdKeyError:
        raise
    except (ValueError, KeyError, TypeError, AttributeError) as err:
        raise UnreadableRecord(
            "A saved revision is not what was written.", "Check the book and restore a backup."
        ) from err
