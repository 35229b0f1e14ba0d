"""What the records do off the UI thread: look up, judge again, write, hand on."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime
from pathlib import Path
from uuid import uuid4

from idkey.app.parts.filing import Filed, Order, file_rationale
from idkey.app.records.label_choice import LabelChoice
from idkey.engine.result import Level
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.model.taxon import Permit
from idkey.places import PICTURES
from idkey.report.label_stock import STOCKS
from idkey.report.language import Language, language_of
from idkey.report.permit_words import permit_needed
from idkey.report.recorded import Recorded, archived, recorded
from idkey.report.shop_label import ShopLabel, shop_label
from idkey.report.text import verdict_text
from idkey.store.book import Store
from idkey.store.difference import Difference, differences
from idkey.store.intake import Intake, intake_of, papers_of
from idkey.store.opinions import (
    Agreement,
    Comparison,
    agreement,
    blind_case,
    comparisons,
    first_of,
    put_opinion,
)
from idkey.store.rationales import Rationale as Issued
from idkey.store.rationales import rationales_of
from idkey.store.record import Papers, Revision, Sale, StoredCase
from idkey.store.reruns import cases_per_key
from idkey.store.tallies import DECIDED

NEWEST = 12
"""Revisions of a case that are told in full."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One revision: when, by whom, what it changed and what was concluded."""

    revision: Revision
    changed: tuple[Difference, ...]
    kind: str
    name: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Opinion:
    """A second, blind determination of an animal, beside the first."""

    second: StoredCase
    comparison: Comparison

    @property
    def finished(self) -> bool:
        """Whether it has come to a verdict of its own, so that it may be shown beside the first."""
        told = self.second.summary
        return told is not None and (told.kind in DECIDED or told.level != Level.OPEN)


@dataclass(frozen=True, slots=True, kw_only=True)
class Detail:
    """Everything the record says about one case.

    Attributes:
        stored: The case.
        steps: Its revisions, newest first.
        more: How many there are before them.
        sales: Its sales.
        intake: How it came in; None when not noted.
        issued: Rationales that were handed out.
        papers: Its permit fields; None when none is noted.
        key: The key in hand; None when it is not at hand.
        permit: What the lists may ask for, by that key.
        listed: Listed taxa that are still possible, in words; empty for none.
        opinions: Second opinions on it.
        first: The case it is itself a second opinion on; empty when it is none.
        agreement: How far second opinions agree over all animals of the key; None where there is
            none here.
    """

    stored: StoredCase
    steps: tuple[Step, ...]
    more: int
    sales: tuple[Sale, ...]
    intake: Intake | None
    issued: tuple[Issued, ...]
    papers: Papers | None
    key: Key | None = None
    permit: Permit = field(default_factory=Permit)
    listed: str = ""
    opinions: tuple[Opinion, ...] = ()
    first: str = ""
    agreement: Agreement | None = None

    @property
    def moved_on(self) -> bool:
        """Whether the key has changed since the case was judged."""
        case = self.stored.case
        return bool(self.key and case.key_digest and self.key.digest != case.key_digest)


def detail(store: Store, case_id: str, key: Key | None = None) -> Detail:
    """Read one case with its history.

    Args:
        store: The book.
        case_id: The case.
        key: Its key, which says how well its numbers can be measured; None when it is gone.

    Raises:
        StoreError: It is not there or cannot be read.
    """
    revisions = store.revisions(case_id)
    stored = store.case(case_id)
    typical = uncertainties(key) if key is not None else {}
    opinions = tuple(
        Opinion(second=store.case(one.second), comparison=one)
        for one in comparisons(store, case_id, typical)
    )
    told = agreement(store, key=stored.case.key, uncertainty=typical) if opinions else None
    return Detail(
        stored=stored,
        steps=tuple(reversed(_steps(store, revisions))),
        more=max(0, len(revisions) - NEWEST),
        sales=store.sales(case_id),
        intake=intake_of(store, case_id),
        issued=rationales_of(store, case_id),
        papers=papers_of(store, case_id),
        opinions=opinions,
        first=first_of(store, case_id),
        agreement=told,
        key=key,
    )


def uncertainties(key: Key) -> dict[str, float]:
    """Standard uncertainty of one measurement per character that the key gives one for."""
    return {c.id: c.uncertainty for c in key.characters if c.uncertainty is not None}


def _steps(store: Store, revisions: tuple[Revision, ...]) -> list[Step]:
    told = revisions[-NEWEST:]
    before = None
    if told and len(told) < len(revisions):
        before = store.case(told[0].case_id, told[0].number - 1).case
    steps = []
    for revision in told:
        saved = store.case(revision.case_id, revision.number)
        changed = differences(before, saved.case) if before is not None else ()
        kind, name = (saved.summary.kind, saved.summary.name) if saved.summary else ("", "")
        steps.append(Step(revision=revision, changed=changed, kind=kind, name=name))
        before = saved.case
    return steps


@dataclass(frozen=True, slots=True)
class Shelf:
    """Where cases and keys come from."""

    store: Store
    keys: Mapping[str, Key]

    def key_of(self, name: str) -> Key:
        """The key in hand with that id.

        Raises:
            IdKeyError: It is not at hand.
        """
        if name not in self.keys:
            raise IdKeyError(
                f"The key {name} of this case is not at hand.",
                "Put its folder among the keys, then try again.",
            )
        return self.keys[name]

    def counted_keys(self) -> tuple[tuple[str, str, int], ...]:
        """(id, title, cases) of each key at hand that has cases, most cases first."""
        counted = cases_per_key(self.store)
        found = [(k, self.keys[k].title, n) for k, n in counted.items() if k in self.keys]
        return tuple(sorted(found, key=lambda one: (-one[2], one[1])))

    def read(self, case_id: str) -> Detail:
        """A case with its history, and what the key in hand says of papers."""
        key = self.keys.get(self.store.case(case_id).case.key)
        found = detail(self.store, case_id, key)
        if key is None:  # said when something is to be written
            return found
        permit, listed = permit_needed(key, self.recorded(case_id).assessment)
        return replace(found, permit=permit, listed=listed)

    def recorded(self, case_id: str) -> Recorded:
        """A case judged with the key in hand."""
        return recorded(self.store, self.key_of, case_id)

    def write_again(self, case_id: str, folder: Path, language: str) -> Filed:
        """Write the rationale of the newest revision again, with its newest sale."""
        one = self.recorded(case_id)
        sales = self.store.sales(case_id)
        return file_rationale(
            self.store,
            Order(
                key=one.key,
                assessment=one.assessment,
                sale=sales[-1] if sales else None,
                folder=folder,
                language=language_of(one.assessment.case, language),
                pictures=folder.parent / PICTURES,
            ),
        )

    def text(self, case_id: str, language: Language) -> str:
        """The verdict as plain text, to be pasted into the notes of a till."""
        one = self.recorded(case_id)
        number = language.say("revision {n}", n=one.stored.revision.number)
        stamp = f"{language.say('Case')} {case_id}, {number}"
        return f"{verdict_text(one.key, one.assessment, language=language)}\n\n{stamp}"

    def begin_opinion(self, case_id: str, initials: str) -> str:
        """Begin a blind determination of the same animal; the id of its case."""
        first = self.store.case(case_id).case
        made = blind_case(first, str(uuid4()), by=initials, created=self.store.now())
        key = self.key_of(first.key)
        made = replace(made, key_version=key.version, key_digest=key.digest)
        self.store.save(made, None, parent=0)
        put_opinion(self.store, case_id, made.id, by=initials)
        return made.id

    def labels(self, case_ids: Sequence[str], language: str) -> tuple[ShopLabel, ...]:
        """The corrected shop labels of cases, each with the price of its newest sale."""
        made = []
        for case_id in case_ids:
            sales = self.store.sales(case_id)
            price = sales[-1].price if sales else ""
            made.append(shop_label(self.recorded(case_id).rationale(language), price=price))
        return tuple(made)

    def write_labels(self, labels: Sequence[ShopLabel], choice: LabelChoice, file: Path) -> None:
        """Write shop labels as PDF."""
        # Fonts and paper take half a second to import.
        from idkey.report.label_pdf import write_labels

        write_labels(file, labels, STOCKS[choice.stock], used=choice.used, cut=choice.cut)

    def export(self, case_ids: Sequence[str], file: Path, owner: str) -> int:
        """Write cases as a Darwin Core Archive; how many there were."""
        from idkey.report.darwincore import Dataset, write_archive

        found = archived(self.store, self.key_of, case_ids)
        day = datetime.now(UTC).date().isoformat()
        title = "Animals from trade, re-identified"
        write_archive(file, found, Dataset(title=title, owner=owner, published=day))
        return len(found)
