"""The reasons behind the verdict, and what would change it."""

from collections.abc import Iterable
from html import escape

from PySide6.QtCore import Signal, Slot

from idkey.app.bench.session import Session
from idkey.app.parts.captions import KeyButton
from idkey.app.parts.desk import Desk
from idkey.app.parts.prose import bullets, head, link, paragraph, rich_head, toned
from idkey.app.parts.sheet import Sheet
from idkey.engine.result import Candidate, Conflict
from idkey.engine.whatif import Turn
from idkey.model.key import Key
from idkey.report.words import (
    caution_sentence,
    conflict_words,
    finding_words,
    level_words,
    prior_words,
    rich,
    stakes_words,
    thumb_words,
    unmet_words,
    verdict_sentence,
    verdict_title,
)

RIVALS = 6
"""How many rivals are held against the leader."""


class ReasonsView(Sheet):
    """What speaks for and against, what is missing, what would change the verdict.

    Args:
        desk: Look, drawings, language.

    Signals:
        prior_wanted(count: bool): Whether the label is to count as evidence.
    """

    prior_wanted = Signal(bool)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.title.setText(self.tr("Reasons"))
        self._prior = KeyButton(self.tr("Count what the label usually is"), "P", desk.theme)
        self._prior.setCheckable(True)
        self.add_action(self._prior)
        self._prior.clicked.connect(self._on_prior_clicked)
        self._prior.setShortcut("P")

    def show_session(self, session: Session, turns: Iterable[Turn] = ()) -> None:
        """Show the reasons of a session.

        Args:
            session: The session.
            turns: Findings that would change its verdict.
        """
        self._prior.setChecked(session.case.use_prior)
        self._prior.setEnabled(session.prior is not None)
        parts = [
            self._verdict(session),
            self._cautions(session),
            self._thumbs(session),
            self._missing(session),
            self._leader(session),
            self._rivals(session),
            self._turns(session, tuple(turns)),
        ]
        self.show_html("".join(part for part in parts if part))

    def _verdict(self, session: Session) -> str:
        key, assessment, language = session.key, session.reasoned.assessment, self.desk.language
        sentence = rich(key, verdict_sentence(key, assessment, language))
        stakes = stakes_words(key, session.case.claim, assessment.verdict, language)
        prior = prior_words(key, assessment, language)
        return (
            paragraph(sentence)
            + bullets(rich(key, s) for s in stakes)
            + paragraph(rich(key, prior), "soft")
        )

    def _cautions(self, session: Session) -> str:
        key, language = session.key, self.desk.language
        cautions = session.reasoned.assessment.cautions
        lines = [
            toned(caution.stake.value, rich(key, caution_sentence(key, caution, language)))
            for caution in cautions
        ]
        return head(self.tr("Cautions")) + bullets(lines) if lines else ""

    def _thumbs(self, session: Session) -> str:
        """What rests on rules of thumb, each rule and what to look at instead as a link."""
        key, leaning = session.key, session.reasoned.leaning
        if leaning is None:
            return ""
        named = (*(failure.character for failure in leaning.failures), *leaning.instead)
        lines = []
        verdict = session.reasoned.assessment.verdict
        for sentence in thumb_words(key, leaning, verdict, self.desk.language):
            lines.append(self._linked(key, rich(key, sentence), named))
        return head(self.tr("Rules of thumb")) + bullets(lines)

    def _linked(self, key: Key, html: str, characters: Iterable[str]) -> str:
        """The text with the first mention of each character as a link to its question."""
        for character in characters:
            name = escape(key.character[character].name)
            html = html.replace(name, link("character", character, name), 1)
        return html

    def _missing(self, session: Session) -> str:
        key, verdict = session.key, session.reasoned.assessment.verdict
        lines = []
        for unmet in verdict.unmet:
            text = rich(key, unmet_words(key, unmet, self.desk.language))
            lines.append(self._linked(key, text, unmet.characters))
        level = level_words(verdict.level, self.desk.language)
        title = self.tr("What is missing for a name ({level})").format(level=level)
        return head(title) + bullets(lines) if lines else ""

    def _leader(self, session: Session) -> str:
        key, assessment = session.key, session.reasoned.assessment
        if not session.case.findings or not assessment.standing:
            return ""
        leader = assessment.standing[0]
        against = {conflict.finding.character for conflict in leader.conflicts}
        lines = []
        for finding in session.case.findings:
            text = rich(key, finding_words(key, finding, self.desk.language))
            text = link("character", finding.character, text)
            if finding.character in against:
                text += " " + toned("doubt", escape(self.tr("does not fit")))
            elif finding.character in leader.unscored:
                text += " " + toned("soft", escape(self.tr("not scored for it")))
            lines.append(text)
        name = f"<i>{escape(key.taxon[leader.taxon].name)}</i>"
        title = self.tr("The findings, held against {name}").format(name=name)
        return rich_head(title) + bullets(lines)

    def _rivals(self, session: Session) -> str:
        assessment = session.reasoned.assessment
        rivals = [*assessment.standing[1:], *assessment.ruled_out][:RIVALS]
        if not session.case.findings:
            return ""
        lines = [self._rival(session, rival) for rival in rivals]
        return head(self.tr("The closest rivals")) + bullets(lines)

    def _rival(self, session: Session, rival: Candidate) -> str:
        key, language = session.key, self.desk.language
        name = link("taxon", rival.taxon, f"<i>{escape(key.taxon[rival.taxon].name)}</i>")
        said = f"{name} · {language.share(rival.support)}"
        inner = []
        if rival.separators:
            names = ", ".join(key.character[c].name for c in rival.separators)
            inner.append(escape(self.tr("set apart by: {names}").format(names=names)))
        else:
            inner.append(escape(self.tr("nothing sets it apart yet")))
        inner += [self._conflict(session, conflict) for conflict in rival.conflicts]
        return said + bullets(inner)

    def _conflict(self, session: Session, conflict: Conflict) -> str:
        return rich(session.key, conflict_words(session.key, conflict, self.desk.language))

    def _turns(self, session: Session, turns: tuple[Turn, ...]) -> str:
        key, language, lines = session.key, self.desk.language, []
        for turn in turns:
            seen = "; ".join(
                link("character", f.character, escape(finding_words(key, f, language)))
                for f in turn.findings
            )
            verdict = turn.verdict
            becomes = self.tr("“{verdict}”, {level}").format(
                verdict=verdict_title(verdict.kind, language),
                level=level_words(verdict.level, language),
            )
            lines.append(f"{seen} → {escape(becomes)} ({language.share(turn.chance)})")
        return head(self.tr("What would change the verdict")) + bullets(lines) if lines else ""

    @Slot()
    def _on_prior_clicked(self) -> None:
        self.prior_wanted.emit(self._prior.isChecked())
