"""What can be practised: a state, a pair of taxa by one character, a whole case."""

from dataclasses import dataclass

from idkey.store.drill_log import Exercise

_FIELDS = {
    Exercise.STATE: ("character", "state"),
    Exercise.PAIR: ("one", "other", "character"),
    Exercise.CASE: ("label", "one"),
}
_NOTHING = "-"


@dataclass(frozen=True, slots=True, kw_only=True)
class Item:
    """One thing to practise; its name stays the same over versions of a key.

    Attributes:
        exercise: How it is practised.
        character: Character id; empty for a case.
        state: State id; empty for a number, a pair and a case.
        taxa: Both taxa of a pair in the order of their ids, or the one of a case.
        label: Label id of a case.
    """

    exercise: Exercise
    character: str = ""
    state: str = ""
    taxa: tuple[str, ...] = ()
    label: str = ""

    def __post_init__(self) -> None:
        wanted = {Exercise.STATE: 0, Exercise.PAIR: 2, Exercise.CASE: 1}[self.exercise]
        if len(self.taxa) != wanted or (wanted == 2 and self.taxa[0] >= self.taxa[1]):
            raise ValueError(f"a {self.exercise} item names {wanted} taxa, in order")
        if bool(self.character) == (self.exercise is Exercise.CASE):
            raise ValueError("a state or a pair names a character, a case does not")

    @property
    def name(self) -> str:
        """The name under which answers are kept, such as ``"pair/a/b/telson_colour"``."""
        parts = {
            Exercise.STATE: (self.character, self.state),
            Exercise.PAIR: (*self.taxa, self.character),
            Exercise.CASE: (self.label, *self.taxa),
        }[self.exercise]
        return "/".join((self.exercise.value, *(part or _NOTHING for part in parts)))


def pair_item(one: str, other: str, character: str) -> Item:
    """The item of two taxa, given in any order, and the character that tells them apart."""
    first, second = sorted((one, other))
    return Item(exercise=Exercise.PAIR, taxa=(first, second), character=character)


def state_item(character: str, state: str = "") -> Item:
    """The item of a state; without a state that of reading a number."""
    return Item(exercise=Exercise.STATE, character=character, state=state)


def case_item(label: str, taxon: str) -> Item:
    """The item of a whole case."""
    return Item(exercise=Exercise.CASE, label=label, taxa=(taxon,))


def item_named(name: str) -> Item:
    """The item with that name.

    Raises:
        ValueError: It is no name of an item.
    """
    kind, *parts = name.split("/")
    if kind not in tuple(Exercise) or len(parts) != len(_FIELDS[Exercise(kind)]):
        raise ValueError(f"{name!r} is no item of a drill")
    found = dict(zip(_FIELDS[Exercise(kind)], parts, strict=True))
    if kind == Exercise.PAIR:
        return pair_item(found["one"], found["other"], found["character"])
    if kind == Exercise.CASE:
        return case_item(found["label"], found["one"])
    return state_item(found["character"], found["state"].replace(_NOTHING, ""))
