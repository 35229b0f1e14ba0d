"""The walk by couplets in words: steps, ends, and where it goes against the support."""

from collections.abc import Mapping
from functools import lru_cache
from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.app.bench.session import Session
from idkey.engine import walk
from idkey.model.case import Step
from idkey.model.couplet import Couplet
from idkey.report.language import Language
from idkey.report.words import name_of, rich

translate = QCoreApplication.translate

CLEAR = 0.5
"""Support from which a walk that excludes the leader is called a conflict."""


def step_words(step: Step) -> str:
    """A step of a walk, such as ``"3a"``; several leads as ``"3a+b"``."""
    letters = "+".join(chr(ord("a") + number) for number in step.leads)
    return f"{step.couplet}{letters}"


def end_html(session: Session) -> str:
    """Where the walk ended: taxa with links, and what cannot be told apart there."""
    lines = []
    for end in walk.ends(session.key, session.case):
        names = ", ".join(
            f'<a href="taxon:{escape(taxon)}"><i>{escape(name_of(session.key, taxon))}</i></a>'
            for taxon in end.taxa
        )
        remark = f" – {rich(session.key, end.remark)}" if end.remark else ""
        lines.append(f"<li>{names}{remark}</li>")
    if not lines:
        return escape(translate("walk", "This key has no couplets."))
    head = translate("walk", "The way leads to:")
    more = translate("walk", "Go on in free choice to make sure: a walk alone proves little.")
    return f"{escape(head)}<ul>{''.join(lines)}</ul>{escape(more)}"


def conflict_with_support(session: Session, language: Language) -> str:
    """Where the walk and the findings disagree, as a sentence; empty when they do not."""
    key, case = session.key, session.case
    for step in case.walk:
        couplet = key.couplet.get(step.couplet)
        if couplet is not None:
            allowed = walk.decided(case, couplet)
            if len(allowed) < len(couplet.leads) and not set(step.leads) & set(allowed):
                text = translate(
                    "walk", "Your findings now speak against the lead taken at {step}."
                )
                return text.format(step=step_words(step))
    standing = session.reasoned.assessment.standing
    if not case.walk or not standing or standing[0].support < CLEAR:
        return ""
    leader = standing[0]
    if leader.taxon in _ahead(session):
        return ""
    text = translate(
        "walk",
        "The findings support {name} most ({share}), but this way no longer leads there. "
        "Go back, or follow both leads where you were in doubt.",
    )
    return text.format(name=name_of(key, leader.taxon), share=language.share(leader.support))


def _ahead(session: Session) -> frozenset[str]:
    """Taxa the walk has reached or can still reach."""
    key, case = session.key, session.case
    reachable = _reachable(key.couplets)
    found = {taxon for end in walk.ends(key, case) for taxon in end.taxa}
    for couplet in walk.here(key, case):
        found |= reachable.get(couplet.id, frozenset())
    return frozenset(found)


@lru_cache(maxsize=4)
def _reachable(couplets: tuple[Couplet, ...]) -> Mapping[str, frozenset[str]]:
    return walk.reachable(couplets)
