"""What a key holds and how far it can be trusted, as a page for docs/keys.

Run ``python -m idkey.report.key_page docs/keys`` after every change of a shipped key.
"""

import sys
from collections.abc import Iterable, Iterator
from pathlib import Path

from idkey.engine.audit import Remark, Weakness, audit
from idkey.engine.checks import run_checks
from idkey.engine.labels import name_only
from idkey.formats.folder import list_keys, read_key
from idkey.model.character import Character
from idkey.model.check import Check, CheckKind
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.source import Basis, Source
from idkey.model.taxon import Taxon
from idkey.places import keys_folder
from idkey.report.key_couplets import PAGE, couplet_section, couplets_page
from idkey.report.key_doubts import (
    RECALLED,
    apart_section,
    conflicts_section,
    memory_section,
    thumbs_section,
)
from idkey.report.markdown import (
    amount,
    character_names,
    escaped,
    in_italics,
    table,
    taxon_names,
)
from idkey.report.terms import basis_words, danger_words, look_words

RETOLD = frozenset(("encyclopedia", "popular", "hobby_web", "news", "educational"))
"""Kinds of source that retell what others found."""

NO_WORK = frozenset(("memory", "common_practice"))
"""Kinds of source that stand for no work at all."""


def key_page(key: Key, found: tuple[Remark, ...] | None = None) -> str:
    """The page on `key`, as Markdown that ends with a line break.

    Args:
        key: The key.
        found: Its weaknesses; None looks for them.
    """
    weak = audit(key) if found is None else found
    parts = (
        _head(key),
        _taxa(key),
        _evidence(key),
        _characters(key),
        apart_section(key),
        couplet_section(key),
        conflicts_section(key),
        _checks(key),
        memory_section(key),
        thumbs_section(key),
        _idle(key, weak),
        _sources(key),
    )
    return "\n".join(line for part in parts for line in part).rstrip() + "\n"


def write_pages(folder: Path) -> tuple[Path, ...]:
    """Write the pages of every shipped key to `folder`; the files written, by title of the key."""
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for entry in list_keys(keys_folder()):
        for name, text in pages(read_key(entry.folder)).items():
            file = folder / f"{name}.md"
            file.write_text(text, encoding="utf-8", newline="\n")
            written.append(file)
    return tuple(written)


def pages(key: Key) -> dict[str, str]:
    """The pages on a key by name: what it holds, and its couplets in print where it has any."""
    found = {key.id: key_page(key)}
    if key.couplets:
        found[PAGE.format(key=key.id)] = couplets_page(key)
    return found


def _head(key: Key) -> Iterator[str]:
    yield f"# {in_italics(key, key.title)}"
    yield ""
    yield f"Key `{key.id}`, version {key.version}, licence {key.licence or 'not given'}."
    yield "A program wrote this page from the files of the key; change those, not the page"
    yield "(`python -m idkey.report.key_page docs/keys`)."
    yield ""
    yield "## What it covers, and what it does not"
    yield ""
    yield in_italics(key, key.scope)
    yield ""
    yield "Said with every verdict:"
    yield ""
    yield from (f"- {in_italics(key, caution)}" for caution in key.cautions)
    yield ""


def _taxa(key: Key) -> Iterator[str]:
    yield f"## Taxa ({len(key.taxa)})"
    yield ""
    heads = ("name", "authority", "everyday names", "older names", "danger", "permit", "scored")
    yield from table(heads, (_taxon_row(key, taxon) for taxon in key.taxa))


def _taxon_row(key: Key, taxon: Taxon) -> tuple[str, ...]:
    permit = taxon.permit
    listed = [f"CITES {permit.cites}"] * bool(permit.cites) + [f"EU {permit.eu}"] * bool(permit.eu)
    scored = sum((taxon.id, character.id) in key.cells for character in key.characters)
    return (
        taxon_names(key, [taxon.id]),
        escaped(taxon.authority),
        escaped("; ".join(taxon.vernacular)),
        "; ".join(map(_older, taxon.synonyms)),
        danger_words(taxon.hazard.level),
        ", ".join(listed) + " (from memory)" * bool(listed and permit.from_memory),
        f"{scored} of {len(key.characters)}",
    )


def _older(synonym: str) -> str:
    name = name_only(synonym)
    return f"*{escaped(name)}* {escaped(synonym.removeprefix(name))}".rstrip()


def _weakest(scores: Iterable[Score]) -> Basis:
    return max((score.basis for score in scores), key=list(Basis).index)


def _evidence(key: Key) -> Iterator[str]:
    cells = len(key.taxa) * len(key.characters)
    classes = [_weakest(scores) for scores in key.cells.values()]
    filled = len(classes)
    yield "## How much is known, and on what evidence"
    yield ""
    yield f"The matrix has {amount(cells, 'cell', 'cells')}, of which {filled} are filled"
    yield f"({_percent(filled, cells)}). An empty cell is unknown: it never rules a taxon out."
    yield ""
    rows = [(basis_words(basis), sum(one is basis for one in classes)) for basis in Basis]
    yield from table(
        ("evidence", "cells", "share of filled ones"),
        ((words, n, _percent(n, filled)) for words, n in rows if n),
    )
    retold = sum(_only_retold(key, scores) for scores in key.cells.values())
    unread = sum(_only_unread(key, scores) for scores in key.cells.values())
    yield "Cells that rest only on texts that retell others (encyclopaedias, popular and hobby"
    yield f"texts): {retold or 'none'}. Only on works that nobody read for this key:"
    yield f"{unread or 'none'}."
    yield ""


def _percent(part: int, whole: int) -> str:
    return f"{100 * part / whole:.0f} %" if whole else "–"


def _works(key: Key, scores: Iterable[Score]) -> list[Source]:
    cited = [key.source[s] for score in scores for s in score.sources if s in key.source]
    return [source for source in cited if source.kind not in NO_WORK]


def _only_retold(key: Key, scores: Iterable[Score]) -> bool:
    works = _works(key, scores)
    return bool(works) and all(source.kind in RETOLD for source in works)


def _only_unread(key: Key, scores: Iterable[Score]) -> bool:
    works = _works(key, scores)
    return bool(works) and not any(source.seen for source in works)


def _characters(key: Key) -> Iterator[str]:
    yield f"## Characters ({len(key.characters)})"
    yield ""
    heads = ("character", "kind", "seen", "limits", "reliability", "scored taxa", "from memory")
    yield from table(heads, (_character_row(key, one) for one in key.characters))


def _character_row(key: Key, character: Character) -> tuple[str, ...]:
    held = [cell for (_, one), cell in key.cells.items() if one == character.id]
    limits = [str(limit) for limit in (character.stage, character.sex) if limit]
    return (
        escaped(character.name),
        str(character.kind),
        ", ".join(look_words(look) for look in character.looks),
        " ".join(limits),
        str(character.reliability),
        f"{len(held)} of {len(key.taxa)}",
        str(sum(_weakest(cell) in RECALLED for cell in held)),
    )


def _checks(key: Key) -> Iterator[str]:
    passed = {result.check.id: result.passed for result in run_checks(key)}
    good = sum(passed.values())
    yield "## Published statements, run against the scores"
    yield ""
    yield f"{good} of {amount(len(passed), 'statement', 'statements')} that can be computed agree"
    yield "with the scores. That shows that the key applies its sources rightly, not that the"
    yield "sources are right."
    yield ""
    heads = ("statement", "result", "sources")
    yield from table(heads, (_check_row(key, check, passed) for check in key.checks))


def _check_row(key: Key, check: Check, passed: dict[str, bool]) -> tuple[str, ...]:
    computed = check.kind in (CheckKind.MATRIX, CheckKind.NAME)
    result = ("agrees" if passed[check.id] else "DISAGREES") if computed else "not computed"
    sources = ", ".join(f"`{source}`" for source in check.sources)
    return f"{escaped(check.id)}: {in_italics(key, check.statement)}", result, sources


def _idle(key: Key, weak: tuple[Remark, ...]) -> Iterator[str]:
    idle = [r.about[0] for r in weak if r.weakness is Weakness.IDLE_CHARACTER]
    states = [r.about for r in weak if r.weakness is Weakness.IDLE_STATE]
    labels = (f"{character_names(key, [c])}: {_state(key, c, s)}" for c, s in states)
    yield "## What decides nothing"
    yield ""
    yield f"Characters that tell no two taxa apart: {character_names(key, idle) or 'none'}."
    yield ""
    yield f"States that no taxon shows: {'; '.join(labels) or 'none'}."
    yield ""


def _state(key: Key, character: str, state: str) -> str:
    return escaped(key.character[character].state(state).label)


def _sources(key: Key) -> Iterator[str]:
    works = [source for source in key.sources if source.kind not in NO_WORK]
    whole = sum(source.seen and not source.scope for source in works)
    part = sum(source.seen and bool(source.scope) for source in works)
    yield "## Sources"
    yield ""
    if not works:
        yield "No work is cited."
        return
    yield f"Cited: {amount(len(works), 'work', 'works')}; read whole: {whole or 'none'}, in part:"
    yield f"{part or 'none'}, not at all: {len(works) - whole - part or 'none'}."
    yield ""
    yield from table(("id", "work", "read"), (_source_row(source) for source in works))


def _source_row(source: Source) -> tuple[str, ...]:
    read = "no" if not source.seen else "in part" if source.scope else "yes"
    scope = escaped(source.scope.rstrip("."))
    return f"`{source.id}`", escaped(source.citation), f"{read}: {scope}" if scope else read


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("Say where to: python -m idkey.report.key_page docs/keys")
    write_pages(Path(sys.argv[1]))
