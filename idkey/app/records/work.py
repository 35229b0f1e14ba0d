"""What the records do off the UI thread: look up, judge again, write, hand on."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from idkey.app.parts.filing import Filed, Order, file_rationale
from idkey.app.parts.reasoner import Reasoner
from idkey.engine.labels import claimed
from idkey.engine.priors import label_prior
from idkey.engine.result import Assessment
from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.report.rationale import rationale
from idkey.report.reasons import Rationale
from idkey.store.book import Store
from idkey.store.difference import changes
from idkey.store.intake import Intake, intake_of
from idkey.store.rationales import Rationale as Issued
from idkey.store.rationales import rationales_of
from idkey.store.record import Revision, Sale, StoredCase

NEWEST = 12
"""Revisions of a case that are told in full."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One revision: when, by whom, what it changed and what was concluded."""

    revision: Revision
    changed: tuple[str, ...]
    kind: str
    name: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Detail:
    """Everything the record says about one case; `steps` newest first, `more` before them."""

    stored: StoredCase
    steps: tuple[Step, ...]
    more: int
    sales: tuple[Sale, ...]
    intake: Intake | None
    issued: tuple[Issued, ...]


def detail(store: Store, case_id: str) -> Detail:
    """Read one case with its history.

    Raises:
        StoreError: It is not there or cannot be read.
    """
    revisions = store.revisions(case_id)
    told = revisions[-NEWEST:]
    before = store.case(case_id, told[0].number - 1).case if len(told) < len(revisions) else None
    steps = []
    for revision in told:
        saved = store.case(case_id, revision.number)
        changed = changes(before, saved.case) if before is not None else ()
        summary = saved.summary
        steps.append(
            Step(
                revision=revision,
                changed=changed,
                kind=summary.kind if summary else "",
                name=summary.name if summary else "",
            )
        )
        before = saved.case
    return Detail(
        stored=store.case(case_id),
        steps=tuple(reversed(steps)),
        more=len(revisions) - len(told),
        sales=store.sales(case_id),
        intake=intake_of(store, case_id),
        issued=rationales_of(store, case_id),
    )


@dataclass(frozen=True, slots=True)
class Shelf:
    """Where cases and keys come from, and what reasons over them."""

    store: Store
    keys: Mapping[str, Key]
    reasoner: Reasoner

    def key_of(self, case: Case) -> Key:
        """The key in hand a case was made with.

        Raises:
            IdKeyError: It is not at hand.
        """
        if case.key not in self.keys:
            raise IdKeyError(
                f"The key {case.key} of this case is not at hand.",
                "Put its folder among the keys, then try again.",
            )
        return self.keys[case.key]

    def judged(self, case: Case) -> Assessment:
        """What the key in hand says; the case's stamp of the key becomes that key's."""
        key = self.key_of(case)
        case = replace(case, key_version=key.version, key_digest=key.digest)
        label, prior = claimed(key, case), None
        if label is not None and case.use_prior:
            outcomes = self.store.outcomes(label.id, excluding=case.id, key=key.id)
            known = {taxon: n for taxon, n in outcomes.items() if taxon in key.taxon}
            prior = label_prior(key, label, known).shares
        return self.reasoner.reasoned(key, case, prior).assessment

    def moved_on(self, case: Case) -> bool:
        """Whether the key has changed since the case was judged."""
        return bool(case.key_digest) and self.key_of(case).digest != case.key_digest

    def read(self, case_id: str) -> tuple[Detail, bool]:
        """A case with its history, and whether its key has changed since; False for a lost key."""
        found = detail(self.store, case_id)
        try:
            return found, self.moved_on(found.stored.case)
        except IdKeyError:  # its key is gone; said when something is to be written
            return found, False

    def write_again(self, case_id: str, folder: Path, language: str) -> Filed:
        """Write the rationale of the newest revision again, with its newest sale."""
        case = self.store.case(case_id).case
        sales = self.store.sales(case_id)
        return file_rationale(
            self.store,
            Order(
                key=self.key_of(case),
                assessment=self.judged(case),
                sale=sales[-1] if sales else None,
                folder=folder,
                language=language,
            ),
        )

    def write_label(self, case_id: str, file: Path, stock: str, language: str) -> Path:
        """Write the corrected shop label on one of the stocks of `label_pdf`."""
        # Fonts and paper take half a second to import.
        from idkey.report.label_pdf import STOCKS, write_labels
        from idkey.report.shop_label import shop_label

        sales = self.store.sales(case_id)
        price = sales[-1].price if sales else ""
        label = shop_label(self._rationale(case_id, None, language), price=price)
        write_labels(file, [label], STOCKS[stock])
        return file

    def export(self, case_ids: Sequence[str], file: Path, owner: str) -> int:
        """Write cases as a Darwin Core Archive; how many there were."""
        from idkey.report.darwincore import Dataset, write_archive
        from idkey.report.dwc_rows import ArchivedCase

        found = []
        for case_id in case_ids:
            newest = self.store.revisions(case_id)[-1].number
            issued = {paper.revision for paper in rationales_of(self.store, case_id)}
            intake, sales = intake_of(self.store, case_id), self.store.sales(case_id)
            papers = intake.papers if intake else (sales[-1].papers if sales else None)
            earlier = (self._rationale(case_id, n, "en") for n in sorted(issued - {newest}))
            current = self._rationale(case_id, None, "en")
            found.append(ArchivedCase(current=current, earlier=tuple(earlier), papers=papers))
        day = datetime.now(UTC).date().isoformat()
        title = "Animals from trade, re-identified"
        write_archive(file, found, Dataset(title=title, owner=owner, published=day))
        return len(found)

    def _rationale(self, case_id: str, number: int | None, language: str) -> Rationale:
        stored = self.store.case(case_id, number)
        key = self.key_of(stored.case)
        judged = self.judged(stored.case)
        return rationale(key, judged, revision=stored.revision, language=language)
