"""Cases of the record book judged again: as rationales, labels and archives."""

from dataclasses import dataclass, replace
from pathlib import Path

from idkey.cli.opening import opened
from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.labels import claimed
from idkey.engine.priors import label_prior
from idkey.engine.result import Assessment
from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.places import data_folder
from idkey.report.dwc_rows import ArchivedCase
from idkey.report.rationale import rationale
from idkey.report.reasons import Rationale
from idkey.store.book import Store
from idkey.store.faults import Missing
from idkey.store.intake import intake_of
from idkey.store.rationales import rationales_of
from idkey.store.record import Query, StoredCase

BOOK = "records.sqlite"
"""File of the record book in the data folder, as the window names it."""


@dataclass(frozen=True, slots=True)
class Recorded:
    """A saved case, the key in hand, and what that key says about it."""

    stored: StoredCase
    key: Key
    assessment: Assessment

    @property
    def rationale(self) -> Rationale:
        """The rationale as it would be written now."""
        return rationale(self.key, self.assessment, revision=self.stored.revision)


def book_file(place: str) -> Path:
    """The file of the record book; `place` empty takes the person's own.

    Raises:
        IdKeyError: The book lies on a server, or there is none.
    """
    if "://" in place:
        raise IdKeyError(
            "This record book lies on a server.",
            "Back it up and restore it with the tools of the server.",
        )
    return Path(place) if place else data_folder() / BOOK


def open_book(place: str) -> Store:
    """The record book, which must be there already.

    Raises:
        IdKeyError: There is none, or it cannot be read.
    """
    if "://" in place:
        return Store.open(place)
    file = book_file(place)
    if not file.is_file():
        raise IdKeyError(
            f"There is no record book {file}.",
            "Name the file with --book, or save a case in the window first.",
        )
    return Store.open(file)


def full_id(store: Store, given: str) -> str:
    """The id of the one case whose id begins with `given`.

    Raises:
        Missing: No case does, or several do.
    """
    found = [
        row.case_id
        for row in store.search(Query(text=given, limit=50))
        if row.case_id.startswith(given)
    ]
    if given in found or not found:
        return given
    if len(found) > 1:
        raise Missing(
            f"{len(found)} cases begin with {given}.", "Give more signs of the case's id."
        )
    return found[0]


def recorded(store: Store, given: str, number: int | None = None) -> Recorded:
    """A saved case by its id or the beginning of it, judged with the key in hand.

    Raises:
        IdKeyError: There is no such case, or its key is not at hand.
    """
    stored = store.case(full_id(store, given), number)
    key = opened(stored.case.key)
    return Recorded(stored, key, _judged(store, key, stored.case))


def archived(store: Store, given: str) -> ArchivedCase:
    """A case for an archive: what counts now, and the states that were handed out before.

    Raises:
        IdKeyError: There is no such case, or its key is not at hand.
    """
    one = recorded(store, given)
    newest = one.stored.revision
    issued = {paper.revision for paper in rationales_of(store, newest.case_id)}
    earlier = (recorded(store, newest.case_id, n) for n in sorted(issued - {newest.number}))
    intake = intake_of(store, newest.case_id)
    papers = [sale.papers for sale in store.sales(newest.case_id)]
    return ArchivedCase(
        current=one.rationale,
        earlier=tuple(before.rationale for before in earlier),
        papers=intake.papers if intake else (papers[-1] if papers else None),
    )


def _judged(store: Store, key: Key, case: Case) -> Assessment:
    """What the key in hand says; the case's stamp of the key becomes that key's."""
    case = replace(case, key_version=key.version, key_digest=key.digest)
    label = claimed(key, case)
    prior = None
    if label is not None and case.use_prior:
        outcomes = store.outcomes(label.id, excluding=case.id, key=key.id)
        known = {taxon: n for taxon, n in outcomes.items() if taxon in key.taxon}
        prior = label_prior(key, label, known).shares
    return assess(compile_key(key, case.specimen, case.care), case, prior)
