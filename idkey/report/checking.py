"""A rationale held against the record book and the key in hand."""

from dataclasses import dataclass, replace
from pathlib import Path

from idkey import __version__
from idkey.engine.assess import assess
from idkey.engine.compile import compiled
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.report.rationale import public_case, rationale, rationale_json
from idkey.report.reasons import Rationale
from idkey.report.recorded import KeyOf
from idkey.report.verify import VerifyResult, held_against, verify
from idkey.store.book import Store
from idkey.store.codec import sha256
from idkey.store.faults import Missing
from idkey.store.intake import papers_ever
from idkey.store.rationales import rationale_with
from idkey.store.record import Papers


@dataclass(frozen=True, slots=True, kw_only=True)
class Checked:
    """What the check found.

    Attributes:
        result: About the document, its record and the key.
        remarks: What else is to be said, one sentence each.
        good: Whether nothing speaks against the document.
    """

    result: VerifyResult
    remarks: tuple[str, ...]
    good: bool


def checked(
    file: Path, store: Store | None, key_of: KeyOf, language: Language = ENGLISH
) -> Checked:
    """Check a rationale, PDF or JSON, by itself, by its key and by the record book.

    Where the key or the program has changed since, its wording cannot be made again; then the
    findings and the revision are held against the record instead.

    Args:
        file: The document.
        store: The record book; None when there is none.
        key_of: Finds a key by its id.
        language: Language of the remarks.

    Raises:
        IdKeyError: The file cannot be read, or holds no rationale.
    """
    alone = verify(file)
    found, remarks = alone.found, []
    key = _key(found.key.id, key_of)
    if key is None:
        remarks.append(
            language.say(
                "Its key {key} is not at hand, so it was not asked again.", key=found.key.id
            )
        )
    record, differs = None, False
    if store is not None:
        record, said, differs = _by_record(store, found, key, language)
        remarks += said
        paper = rationale_with(store, sha256(file.read_bytes()))
        if paper is not None:
            remarks.append(language.say("This very file is noted in the record as handed out."))
    result = held_against(alone, record=record, key=key)
    return Checked(result=result, remarks=tuple(remarks), good=result.good and not differs)


def _key(name: str, key_of: KeyOf) -> Key | None:
    try:
        return key_of(name)
    except IdKeyError:
        return None


def _by_record(
    store: Store, found: Rationale, key: Key | None, language: Language
) -> tuple[str | None, list[str], bool]:
    """The rationale as the record has it, else what can be said of it, and if it differs."""
    if found.revision is None:
        return None, [language.say("It names no revision of a record.")], False
    try:
        stored = store.case(found.case.id, found.revision.number)
    except Missing:
        said = language.say(
            "This record book has no revision {number} of case {case}.",
            number=found.revision.number,
            case=found.case.id,
        )
        return None, [said], False
    if key is not None and key.digest == found.key.digest and found.key.program == __version__:
        return _again(store, found, key), [], False
    same = stored.revision.digest == found.revision.digest and replace(
        public_case(stored.case), key_version="", key_digest=""
    ) == replace(found.case, key_version="", key_digest="")
    if same:
        said = language.say("Label, findings and revision are those of the record.")
    else:
        said = language.say("Label, findings or revision are not those of the record.")
    return None, [said], not same


def _again(store: Store, found: Rationale, key: Key) -> str:
    """The rationale made again from the record, as JSON; starting rates as the document has them.

    The rates of that day cannot be counted again, for the book has grown since. Permit fields are
    those the record had at any time, where one of them is what the document shows.
    """
    number = found.revision.number if found.revision else None
    stored = store.case(found.case.id, number)
    case = replace(stored.case, key_version=key.version, key_digest=key.digest)
    prior = dict(found.prior.shares) or None
    again = assess(compiled(key, case.specimen, case.care), case, prior)
    sold = {sale.number: sale for sale in store.sales(case.id)}
    noted: tuple[Papers | None, ...] = papers_ever(store, case.id) if found.papers else (None,)
    made = [
        rationale(
            key,
            again,
            sale=sold.get(found.sale.number) if found.sale else None,
            revision=stored.revision,
            language=found.language,
            pictures=found.pictures,
            papers=papers,
        )
        for papers in noted or (None,)
    ]
    return rationale_json(next((one for one in made if one.papers == found.papers), made[0]))
