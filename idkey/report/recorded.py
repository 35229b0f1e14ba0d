"""Cases of the record book judged again with the keys in hand."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from pathlib import Path
from tempfile import TemporaryDirectory

from idkey.engine.assess import assess
from idkey.engine.compile import compiled
from idkey.engine.labels import claimed
from idkey.engine.priors import label_prior
from idkey.engine.result import Assessment
from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.report.dwc_rows import ArchivedCase
from idkey.report.language import language_of
from idkey.report.notes import PictureNote
from idkey.report.rationale import rationale
from idkey.report.reasons import Rationale
from idkey.store.book import Store
from idkey.store.intake import papers_of
from idkey.store.rationales import rationales_of
from idkey.store.record import Papers, Sale, StoredCase, VerdictSummary
from idkey.store.watching import Writer

KeyOf = Callable[[str], Key]
"""Finds a key by its id; raises IdKeyError when it is not at hand."""


@dataclass(frozen=True, slots=True)
class Recorded:
    """A saved case, the key in hand, what that key says about it, and its permit fields."""

    stored: StoredCase
    key: Key
    assessment: Assessment
    papers: Papers | None = None

    def rationale(self, language: str = "en") -> Rationale:
        """The rationale as it would be written now."""
        return rationale(
            self.key,
            self.assessment,
            revision=self.stored.revision,
            language=language,
            papers=self.papers,
        )

    @property
    def summary(self) -> VerdictSummary:
        """The verdict in short, with the stamp of the key in hand."""
        return VerdictSummary.of(self.assessment)


def judged(store: Store, key: Key, case: Case) -> Assessment:
    """What the key in hand says; the case's stamp of the key becomes that key's.

    Where the case wants a prior, the shop's other decided cases count, this one never.
    """
    case = replace(case, key_version=key.version, key_digest=key.digest)
    label, prior = claimed(key, case), None
    if label is not None and case.use_prior:
        outcomes = store.outcomes(label.id, excluding=case.id, key=key.id)
        known = {taxon: n for taxon, n in outcomes.items() if taxon in key.taxon}
        prior = label_prior(key, label, known).shares
    return assess(compiled(key, case.specimen, case.care), case, prior)


def recorded(store: Store, key_of: KeyOf, case_id: str, number: int | None = None) -> Recorded:
    """A saved case, or one of its revisions, judged with the key in hand.

    Raises:
        IdKeyError: There is no such case, or its key is not at hand.
    """
    stored = store.case(case_id, number)
    key = key_of(stored.case.key)
    return Recorded(stored, key, judged(store, key, stored.case), papers_of(store, case_id))


def sale_writer(store: Store, key_of: KeyOf, *, language: str, pictures: Path) -> Writer:
    """Makes the rationale that goes with a sale, for `idkey.store.watching`.

    It states a revision as that was judged: where the key has moved on since, issuing anew is a
    deliberate step, and the writer refuses.

    Args:
        store: The book.
        key_of: Finds a key by its id.
        language: Code of the language to write in where a case was signed in none.
        pictures: Folder of the kept pictures; it need not be there.
    """
    # Fonts, paper and drawing take half a second to import.
    from idkey.report.marked import marked_pictures
    from idkey.report.pdf import pdf_bytes

    def write(stored: StoredCase, sale: Sale) -> bytes:
        case, key = stored.case, key_of(stored.case.key)
        if case.key_digest != key.digest:
            raise IdKeyError(
                f"The key has changed since case {case.id[:8]} was judged.",
                "Issue the case anew in the records; then the rationale goes with its sale.",
            )
        names = {character.id: character.name for character in key.characters}
        with TemporaryDirectory(prefix="idkey-") as copies:
            notes, files = marked_pictures(pictures, case.findings, Path(copies), names=names)
            found = rationale(
                key,
                judged(store, key, case),
                sale=sale,
                revision=stored.revision,
                language=language_of(case, language),
                pictures=notes,
                papers=papers_of(store, case.id),
            )
            return pdf_bytes(found, pictures=files)

    return write


def archived(store: Store, key_of: KeyOf, case_ids: Iterable[str]) -> list[ArchivedCase]:
    """Cases for an archive: what counts now, and the states that were handed out before.

    Raises:
        IdKeyError: A case is not there, or its key is not at hand.
    """
    return [_archived(store, key_of, case_id) for case_id in case_ids]


def _archived(store: Store, key_of: KeyOf, case_id: str) -> ArchivedCase:
    one = recorded(store, key_of, case_id)
    newest = one.stored.revision.number
    issued = {paper.revision for paper in rationales_of(store, case_id)}
    earlier = (recorded(store, key_of, case_id, n) for n in sorted(issued - {newest}))
    return ArchivedCase(
        current=_pictured(one),
        earlier=tuple(before.rationale() for before in earlier),
        papers=one.papers,
    )


def _pictured(one: Recorded) -> Rationale:
    """The rationale with every picture behind its findings, by digest alone."""
    named = {
        picture: one.key.character[finding.character].name
        for finding in one.stored.case.findings
        for picture in finding.pictures
        if finding.character in one.key.character
    }
    notes = (PictureNote(id=name, caption=words, sha256=name) for name, words in named.items())
    return replace(one.rationale(), pictures=tuple(notes))
