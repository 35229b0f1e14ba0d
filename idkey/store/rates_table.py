"""How often labels and suppliers are wrong, as a table for a spreadsheet."""

import csv
import io
from collections.abc import Iterator, Mapping

from idkey.store.book import Store
from idkey.store.cells import harmless
from idkey.store.tallies import DECIDED, Period, Subject, Tally, tallies

COLUMNS = (
    "counted_by",
    "name",
    "period",
    "cases",
    "decided",
    *DECIDED,
    "share_contradicted",
    "wilson_95_low",
    "wilson_95_high",
)
"""Names of the columns; shares are of the decided cases, from 0 to 1, empty without any."""

_WORDS = {Subject.LABEL: "label", Subject.SUPPLIER: "supplier"}


def rates_table(
    store: Store, names: Mapping[str, str], period: Period = Period.MONTH
) -> tuple[str, int]:
    """The rates per label and per supplier, for all time and per period, as CSV.

    Second opinions and the sample case are not counted. Cells that a spreadsheet would compute
    are made harmless.

    Args:
        store: The book.
        names: What each label entry is called; others go by their id.
        period: How long a stretch of time is.

    Returns:
        The text, and the number of its lines without the heading.
    """
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    lines = 0
    for subject in Subject:
        called = names if subject is Subject.LABEL else {}
        for stretch in (Period.ALL, period):
            for one in tallies(store, subject, period=stretch):
                cells = _cells(one, _WORDS[subject], called.get(one.subject, one.subject))
                writer.writerow(map(harmless, cells))
                lines += 1
    return text.getvalue(), lines


def _cells(one: Tally, counted_by: str, name: str) -> Iterator[str]:
    yield counted_by
    yield name
    yield one.period or "all"
    yield str(sum(one.kinds.values()))
    yield str(one.decided)
    for kind in DECIDED:
        yield str(one.kinds.get(kind, 0))
    if not one.decided:
        yield from ("", "", "")
        return
    wrong = one.wrong
    for share in (wrong.share, wrong.low, wrong.high):
        yield f"{share:.4f}"
