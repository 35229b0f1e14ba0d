"""The couplets of a key beside those built from its matrix: what they cost, and as printed."""

from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache

from idkey.engine.build import build, shares
from idkey.engine.compile import compile_key
from idkey.engine.couplet_cost import couplet_cost, named_share
from idkey.engine.matrix import Matrix
from idkey.model.couplet import Couplet
from idkey.model.key import Key
from idkey.report.markdown import in_italics, table
from idkey.report.printed_key import printed_text

PAGE = "{key}-couplets"
"""Name of the page with the printed couplets, without its ending."""


@lru_cache(maxsize=8)
def _ways(key: Key) -> tuple[tuple[str, tuple[Couplet, ...]], ...]:
    """Couplets by how they came about; every taxon comes in equally often."""
    matrix = compile_key(key)
    danger = 0 < sum(taxon.dangerous for taxon in key.taxa) < len(key.taxa)
    short = "built: few couplets, danger first" if danger else "built: few couplets"
    ways = {
        "written by hand": key.couplets,
        short: build(matrix, short=True, danger_first=danger).couplets,
        "built: least effort": build(matrix).couplets,
        "built: least effort, two leads each": build(matrix, many_leads=False).couplets,
    }
    found: dict[tuple[Couplet, ...], str] = {}
    for name, couplets in ways.items():
        if couplets:
            found[couplets] = f"{found[couplets]}; {name}" if couplets in found else name
    return tuple((name, couplets) for couplets, name in found.items())


def couplet_section(key: Key) -> Iterator[str]:
    """What the couplets cost, written by hand and built."""
    matrix = compile_key(key)
    yield "## Couplets, written by hand and built from the scores"
    yield ""
    yield "Every taxon comes in equally often and is scored as the key says. A question is a"
    yield "couplet; its effort is that of all its characters, a glance through the tub being 1."
    yield "The bound is the entropy over the logarithm of the most leads of a couplet: no key with"
    yield "so many leads asks fewer questions on average. Named is the share of animals that come"
    yield "out under one name; a taxon that is not scored for a couplet goes down all its leads, so"
    yield "a sparse matrix leaves many together. Built couplets use nothing that shows on one sex"
    yield "only."
    yield ""
    heads = ("couplets", "number", "questions, mean", "at worst", "bound", "effort, mean", "named")
    yield from table(heads, (_row(matrix, name, couplets) for name, couplets in _ways(key)))
    if key.couplets:
        yield f"[Both as printed]({PAGE.format(key=key.id)}.md)."
        yield ""


def _row(matrix: Matrix, name: str, couplets: tuple[Couplet, ...]) -> tuple[str, ...]:
    share = shares(matrix, None)
    cost = couplet_cost(matrix, couplets, share)
    return (
        name,
        str(len(couplets)),
        f"{cost.questions:.1f}",
        str(cost.most_questions),
        f"{cost.bound:.1f}",
        f"{cost.effort:.1f}",
        f"{100 * named_share(matrix, couplets, share):.0f} %",
    )


def couplets_page(key: Key) -> str:
    """The hand-written couplets and the shortest built ones in print, as Markdown."""
    hand, built = _ways(key)[:2]
    lines = [
        f"# {in_italics(key, key.title)}: couplets",
        "",
        f"See the [page on the key]({key.id}.md) for what they cost and what they rest on. A",
        "program wrote this page; change the key, not the page",
        "(`python -m idkey.report.key_page docs/keys`).",
        "",
        "Built couplets know the scores and the trouble of looking, and nothing else: no second",
        "character beside the first, no pitfall, no word of caution. They are a draft for an",
        "author.",
        "",
    ]
    for name, couplets in (hand, built):
        text = printed_text(replace(key, couplets=couplets))
        _, _, text = text.partition("\n\n")
        lines += [f"## {name[0].upper()}{name[1:]}", "", "```text", *text.rstrip().splitlines()]
        lines += ["```", ""]
    return "\n".join(lines).rstrip() + "\n"
