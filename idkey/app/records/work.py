"""What the records do off the UI thread: look up, judge again, write, hand on."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from idkey.app.parts.filing import Filed, Order, file_rationale
from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.report.recorded import Recorded, archived, recorded
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

    def moved_on(self, case: Case) -> bool:
        """Whether the key has changed since the case was judged."""
        return bool(case.key_digest) and self.key_of(case.key).digest != case.key_digest

    def read(self, case_id: str) -> tuple[Detail, bool]:
        """A case with its history, and whether its key has changed since; False for a lost key."""
        found = detail(self.store, case_id)
        try:
            return found, self.moved_on(found.stored.case)
        except IdKeyError:  # its key is gone; said when something is to be written
            return found, False

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
        label = shop_label(self.recorded(case_id).rationale(language), price=price)
        write_labels(file, [label], STOCKS[stock])
        return file

    def export(self, case_ids: Sequence[str], file: Path, owner: str) -> int:
        """Write cases as a Darwin Core Archive; how many there were."""
        from idkey.report.darwincore import Dataset, write_archive

        found = archived(self.store, self.key_of, case_ids)
        day = datetime.now(UTC).date().isoformat()
        title = "Animals from trade, re-identified"
        write_archive(file, found, Dataset(title=title, owner=owner, published=day))
        return len(found)
