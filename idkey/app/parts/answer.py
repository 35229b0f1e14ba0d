"""An answer while it is being made: what is marked, typed and chosen on the question card."""

import json
from dataclasses import asdict, dataclass, replace

from idkey.model.case import Certainty, Finding
from idkey.model.character import Character, Look


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """What stands on the card before it is confirmed.

    Attributes:
        marked: Ids of the marked states.
        several: Whether more than one may be marked.
        number: Text of the number field.
        spread: Text of the uncertainty field.
        certainty: How sure.
        look: How it was looked at.
        note: Free text.
    """

    marked: tuple[str, ...] = ()
    several: bool = False
    number: str = ""
    spread: str = ""
    certainty: Certainty = Certainty.SURE
    look: Look = Look.TUB
    note: str = ""

    @classmethod
    def of(cls, finding: Finding, look: Look) -> "Answer":
        """The answer that made a finding; `look` where it does not tell one."""
        return cls(
            marked=finding.states,
            several=len(finding.states) > 1,
            number="" if finding.value is None else f"{finding.value:g}",
            spread="" if finding.uncertainty is None else f"{finding.uncertainty:g}",
            certainty=finding.certainty,
            look=finding.look or look,
            note=finding.note,
        )

    @classmethod
    def from_text(cls, text: str, look: Look) -> "Answer":
        """The answer kept as a draft; a fresh one with `look` when the text says nothing."""
        try:
            kept = json.loads(text)
            return cls(
                marked=tuple(map(str, kept["marked"])),
                several=bool(kept["several"]),
                number=str(kept["number"]),
                spread=str(kept["spread"]),
                certainty=Certainty(kept["certainty"]),
                look=Look(kept["look"]),
                note=str(kept["note"]),
            )
        except (ValueError, KeyError, TypeError):
            return cls(look=look)

    def text(self) -> str:
        """The answer as a draft; empty when nothing was touched."""
        untouched = Answer(look=self.look)
        return "" if self == untouched else json.dumps(asdict(self))

    def mark(self, state: str) -> "Answer":
        """The answer with a state marked, or not any more."""
        if state in self.marked:
            return replace(self, marked=tuple(s for s in self.marked if s != state))
        return replace(self, marked=(*self.marked, state) if self.several else (state,))

    def severally(self, several: bool) -> "Answer":
        """The answer with more than one mark allowed, or the first one alone."""
        return replace(self, several=several, marked=self.marked if several else self.marked[:1])

    def finding(self, character: Character, *, negated: bool = False) -> Finding | None:
        """The finding this answer makes; None while it says nothing that can be read.

        Args:
            character: The character on the card.
            negated: "None of these": none of the marked states, or of all when none is marked.
        """
        if character.kind.numeric:
            return None if negated else self._measured(character)
        order = [state for state in character.state_ids if state in self.marked]
        if negated and not order:
            order = list(character.state_ids)
        if not order:
            return None
        return Finding(
            character=character.id,
            states=tuple(order),
            negated=negated,
            certainty=self.certainty,
            look=self.look,
            note=self.note,
        )

    def _measured(self, character: Character) -> Finding | None:
        value, spread = read_number(self.number), read_number(self.spread)
        if value is None or (spread is None and self.spread.strip()):
            return None
        return Finding(
            character=character.id,
            value=value,
            uncertainty=spread,
            certainty=self.certainty,
            look=self.look,
            note=self.note,
        )

    def unseen(self, character: Character) -> Finding:
        """The finding "looked, could not see it"."""
        return Finding(character=character.id, unseen=True, look=self.look, note=self.note)


def read_texts(text: str) -> dict[str, str]:
    """Named texts that were kept as a draft; none when it cannot be read."""
    try:
        kept = json.loads(text)
    except ValueError:
        return {}
    return {str(k): str(v) for k, v in kept.items()} if isinstance(kept, dict) else {}


def read_number(text: str) -> float | None:
    """A number as people type it, with a comma or a point; None when it is none, or negative."""
    try:
        value = float(text.strip().replace(",", ".").replace("\u2212", "-"))
    except ValueError:
        return None
    return value if 0 <= value < float("inf") else None
