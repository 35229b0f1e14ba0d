"""What of a typed label is its name: without size, sex, trade signs and authorities."""

import re
import unicodedata

_SIZE = re.compile(r"\b[0-9]+(?:[.,/][0-9]+)*(?:\s*(?:cm|mm|inch|zoll)\b|\s*\")?")
_SIGNS = re.compile(
    r"\b(?:cb|wc|wf|ltc|nz|dnz|wfnz|adult|subadult|juv|juvenile|juvenil|sling|slings|spiderling|"
    r"spiderlings|scorpling|scorplings|unsexed|male|female|sp|spec|spp|pet)\b\.?"
)
_AUTHORITY = re.compile(
    r"\s*(?:\([A-Z][^()]*[0-9]{4}\)|,?\s[A-Z][\w.\-]*(?:[ ,&]+[A-Z][\w.\-]*)*,\s*[0-9]{4}|"
    r"\s\(?L\.\)?)\s*$"
)
_PLURAL = re.compile(r"(?<=skorpion)en?\b|(?<=spinne)n\b|(?<=[a-z]{3})(?<!s)s\b")
_BINOMIAL = re.compile(r"([A-Z])[a-z]+ ([a-z][a-z-]{2,})")


def normalised(text: str) -> str:
    """The label without accents, case, punctuation and double blanks."""
    plain = unicodedata.normalize("NFKD", text.casefold())
    plain = "".join(c for c in plain if not unicodedata.combining(c))
    return re.sub(r"[\W_]+", " ", plain).strip()


def singular(text: str) -> str:
    """Like `normalised`, and English plurals, scorpions and spiders in German are one."""
    return _PLURAL.sub("", normalised(text))


def bare(text: str) -> str:
    """Like `singular`, and size, sex, origin, stage, "sp." and an authority are dropped."""
    named = _AUTHORITY.sub("", text)
    return singular(_SIGNS.sub(" ", _SIZE.sub(" ", named.casefold())))


def name_only(synonym: str) -> str:
    """The name in a synonym entry, without authority: leading genus and epithets.

    Example: ``"Buthus (Heterometrus) spinifer Ehrenberg, 1828"`` gives
    ``"Buthus (Heterometrus) spinifer"``.
    """
    found = re.match(r"[A-Z][a-z]+(?: \([A-Z][a-z]+\))?(?: [a-z][a-z-]+){0,2}", synonym)
    return found.group(0) if found else synonym


def abbreviated(name: str) -> str:
    """A name of two words with its genus cut to a letter, normalised; empty for other texts."""
    found = _BINOMIAL.fullmatch(name)
    return singular(f"{found[1]}. {found[2]}") if found else ""
