"""The sections of a rationale below its front."""

from collections.abc import Iterable

from idkey.engine.result import Level
from idkey.report.language import Language, phrase
from idkey.report.notes import Reference
from idkey.report.paper.prose import Piece, Type, broken, paragraph, pieces, set_block
from idkey.report.paper.sheet import ACCENT, SOFT, Sheet
from idkey.report.paper.table import Column, Row, beginning, table
from idkey.report.reasons import LookAlike, Rationale, SeenFinding, Shown, Tie, Unseen

_TIES = {
    Tie.COVERED: phrase("what the label covers"),
    Tie.SOLD_AS: phrase("sold under this label"),
    Tie.DANGER: phrase("keeps the caution up"),
    Tie.RIVAL: phrase("next best supported"),
}
_UNSEEN = {
    Unseen.LOOKED: phrase("Looked at, but could not be seen"),
    Unseen.NOT_ASKED: phrase("Not looked at"),
    Unseen.HANDLING: phrase("Not looked at, because it would mean handling"),
    Unseen.DEAD: phrase("Not looked at, because it needs a dead animal"),
}


def body(sheet: Sheet) -> Type:
    """Type of running text."""
    return Type(size=7.4, leading=1.28) if sheet.dense else Type(size=8)


def notes(sheet: Sheet) -> Type:
    """Type of sources."""
    return Type(size=6.2, leading=1.26) if sheet.dense else Type(size=7.2, leading=1.3)


def section(sheet: Sheet, title: str, keep: float = 12.0) -> None:
    """A heading with a bookmark, kept with `keep` mm of what follows."""
    sheet.room(10 + keep)
    y = sheet.get_y() + (1.6 if sheet.dense else 2.6)
    sheet.set_y(y)
    with sheet.tagged("/Artifact"):
        sheet.start_section(title)
    block = broken(
        sheet, ((title, "B"),), sheet.width, Type(size=9.5 if sheet.dense else 10.5, colour=ACCENT)
    )
    sheet.set_y(set_block(sheet, block, sheet.margins.left, y, "/H2") + 0.8)


def seen_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """The findings, each beside what the leading taxon shows."""
    title = language.say("What was seen")
    if not found.findings:
        section(sheet, title)
        paragraph(sheet, ((language.say("Nothing yet."), ""),), body(sheet))
        return
    columns = (
        Column(head=language.say("Character"), share=0.24),
        Column(head=language.say("Seen"), share=0.24),
        Column(head=language.say("How, and how sure"), share=0.21),
        Column(head=_leader_head(found, language), share=0.31),
    )
    rows = [_finding_row(found, one) for one in found.findings]
    section(sheet, title, beginning(sheet, columns, rows))
    table(sheet, columns, rows)


def _leader_head(found: Rationale, language: Language) -> str:
    if found.level is Level.ESTABLISHED:
        return language.say("What this taxon shows")
    return language.say("What the leading taxon shows")


def _finding_row(found: Rationale, one: SeenFinding) -> Row:
    how = ", ".join(part for part in (one.means, one.certainty, one.by) if part)
    seen: list[Piece] = [(one.seen, "B")]
    if one.note:
        seen.append((f" ({one.note})", ""))
    sign = {True: "✓ ", False: "✗ ", None: ""}[one.fits]
    shown = _shown(found, one.leader)
    return (((one.name, ""),), seen, ((how, ""),), ((sign, "B"), *shown))


def _shown(found: Rationale, shown: Iterable[Shown]) -> tuple[Piece, ...]:
    """What a taxon shows, with the numbers of its sources."""
    parts = []
    for one in shown:
        cited = found.cited(one.sources).replace(" ", "\u00a0")
        parts.append(f"{one.text} {cited}".rstrip())
    return pieces(found.italic, "; ".join(parts) or "–")


def look_alike_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """Each look-alike with what separates it."""
    if not found.look_alikes:
        return
    columns = (
        Column(head=language.say("Taxon"), share=0.25),
        Column(head=language.say("Support"), share=0.15),
        Column(head=language.say("What separates the animal from it"), share=0.6),
    )
    rows = [_alike_row(found, one, language) for one in found.look_alikes]
    title = language.say("Look-alikes, and what separates them")
    section(sheet, title, beginning(sheet, columns, rows))
    table(sheet, columns, rows)
    if found.others > 0:
        text = language.count(
            found.others,
            "One more taxon of this key was compared.",
            "{n} more taxa of this key were compared.",
        )
        sheet.set_y(sheet.get_y() + 0.8)
        paragraph(sheet, ((text, ""),), Type(size=7.2, colour=SOFT))


def _alike_row(found: Rationale, one: LookAlike, language: Language) -> Row:
    danger = language.say("danger: {level}", level=one.hazard) if one.hazard else ""
    facts = [language.say(_TIES[one.tie]), danger, one.permit]
    name = (*pieces(found.italic, one.name), (f"\n{'; '.join(f for f in facts if f)}", ""))
    support = language.share(one.support)
    if one.ruled_out:
        support = f"{support}\n{language.say('ruled out')}"
    return (name, ((support, ""),), _apart(found, one, language))


def _apart(found: Rationale, one: LookAlike, language: Language) -> list[Piece]:
    if not one.apart:
        text = language.say("Nothing that was seen separates them.")
        if one.help:
            helpful = "; ".join(one.help)
            text = f"{text} {language.say('This would help: {characters}.', characters=helpful)}"
        return [(text, "")]
    content: list[Piece] = []
    for number, apart in enumerate(one.apart):
        if number:
            content.append(("\n", ""))
        sentence = phrase("{name}: {seen}; it shows ")
        content.append((language.say(sentence, name=apart.name, seen=apart.seen), ""))
        content.extend(_shown(found, apart.shows))
    return content


def label_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """What the label covers, what hides under it, what an error costs."""
    sentences = (*found.claim.stakes, found.claim.covers, found.claim.warning)
    text = " ".join(sentence for sentence in sentences if sentence)
    if not text:
        return
    section(sheet, language.say("The label"))
    text = f"{text} {found.cited(found.claim.sources)}".rstrip()
    paragraph(sheet, pieces(found.italic, text), body(sheet))


def unseen_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """What carries no weight, by reason; the deciding characters are marked."""
    section(sheet, language.say("What was not looked at"))
    if not found.unseen:
        text = language.say("Everything this key asks of such an animal was looked at.")
        paragraph(sheet, ((text, ""),), body(sheet))
        return
    starred = False
    for reason in Unseen:
        names = [
            f"{one.name}{' *' if one.deciding else ''}"
            for one in found.unseen
            if one.reason is reason
        ]
        starred = starred or any(name.endswith("*") for name in names)
        if names:
            head = f"{language.say(_UNSEEN[reason])}: "
            paragraph(sheet, ((head, "B"), ("; ".join(names) + ".", "")), body(sheet))
    if starred:
        text = language.say("* decides this label, says the key")
        paragraph(sheet, ((text, ""),), Type(size=7.2, colour=SOFT))


def reach_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """How far the evidence goes, what is missing, what comes next."""
    section(sheet, language.say("How far this goes"))
    figures = language.count(
        found.answers,
        "One finding counts; support {support}",
        "{n} findings count; support {support}",
        support=language.share(found.support),
    )
    if found.fit is not None:
        fit = language.number(float(f"{found.fit:.2g}"))
        figures = language.say("{figures}; fit p = {fit}", figures=figures, fit=fit)
    apart = language.say("nothing firm yet against the closest rival.")
    if found.separated:
        apart = language.count(
            found.separated,
            "at least one independent finding against every other taxon.",
            "at least {n} independent findings against every other taxon.",
        )
    said = (*found.thumbs[1:], *found.unmet, found.next_step, found.prior.sentence)
    text = " ".join((f"{figures}; {apart}", *said))
    paragraph(sheet, pieces(found.italic, text), body(sheet))


def caution_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """What the key and the program want said with every verdict."""
    section(sheet, language.say("Please note"))
    own = language.say(
        "A name is an opinion on evidence, and a determination is no safety clearance. Venom and "
        "hair reactions differ between people. Permit law differs by country and changes: check "
        "it locally, with the authority or a licensed adviser."
    )
    paragraph(sheet, pieces(found.italic, " ".join((*found.key_cautions, own))), body(sheet))


def source_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """The works cited, and the key."""
    section(sheet, language.say("Key and sources"))
    key = found.key
    text = language.say(
        "{title}, version {version}, {n} taxa; idkey {program}; SHA-256 of the key {digest}.",
        title=key.title,
        version=key.version,
        n=key.taxa,
        program=key.program,
        digest=key.digest or "–",
    )
    paragraph(sheet, pieces(found.italic, text), notes(sheet))
    lines = [_source_line(one, language) for one in found.references]
    for line in [" ".join(lines)] if sheet.dense else lines:
        paragraph(sheet, pieces(found.italic, line), notes(sheet))


def _source_line(one: Reference, language: Language) -> str:
    sign = "" if one.seen else f" ({language.say('not seen by the author of the key')})"
    scope = f" ({one.scope})" if one.scope else ""
    return f"[{one.number}]\u00a0{one.citation}{scope}{sign}"
