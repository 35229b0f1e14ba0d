"""A grown tree as couplets, and couplets as printed lines."""

from collections.abc import Collection, Iterator

from idkey.engine.splits import Splits
from idkey.engine.tree import Leaf, Node, Tree
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key

_Shape = tuple[object, ...]

TOGETHER = "not told apart by the characters of this key"
"""Remark of an end with more than one taxon."""


def couplets_of(
    tree: Tree, ways: Splits, key: Key, *, taken: Collection[str] = ()
) -> tuple[Couplet, ...]:
    """The tree as numbered couplets, in the order of a walk that takes the first lead first.

    Args:
        tree: The tree.
        ways: The divisions its numbers stand for.
        key: The key, for words.
        taken: Numbers that others have already; counting goes on behind the largest.
    """
    if isinstance(tree, Leaf):
        return ()
    start = 1 + max((int(name) for name in taken if name.isdecimal()), default=0)
    shapes = {id(node): _shape(node) for node in _nodes(tree)}
    alike: dict[_Shape, Node] = {}
    for node in _nodes(tree):
        alike.setdefault(shapes[id(node)], node)
    places = {shape: str(place) for place, shape in enumerate(alike, start=start)}
    numbers = {name: places[shape] for name, shape in shapes.items()}
    return tuple(_couplet(node, numbers, ways, key) for node in alike.values())


def couplet_count(tree: Tree) -> int:
    """How many couplets `couplets_of` makes of the tree."""
    return len({_shape(node) for node in _nodes(tree)})


def _shape(tree: Tree) -> _Shape:
    """What a part of the tree asks and ends in; parts that are alike share their couplets."""
    here = _settled(tree)
    if isinstance(here, Leaf):
        return here.rows
    return (here.division, tuple((branch, _shape(below)) for branch, below in here.branches))


def _nodes(tree: Tree) -> Iterator[Node]:
    """Divisions with at least two branches taken, depth first."""
    todo: list[Tree] = [tree]
    while todo:
        here = todo.pop()
        if isinstance(here, Leaf):
            continue
        if len(here.branches) > 1:
            yield here
        todo += [below for _, below in reversed(here.branches)]


def _couplet(node: Node, numbers: dict[int, str], ways: Splits, key: Key) -> Couplet:
    leads = tuple(
        _lead(ways.sees[branch], _settled(below), numbers, key) for branch, below in node.branches
    )
    return Couplet(id=numbers[id(node)], leads=leads)


def _settled(tree: Tree) -> Tree:
    """Past divisions with a single branch, which ask nothing."""
    while isinstance(tree, Node) and len(tree.branches) == 1:
        tree = tree.branches[0][1]
    return tree


def _lead(sees: Sees, below: Tree, numbers: dict[int, str], key: Key) -> Lead:
    statement = words_of(key, sees)
    if isinstance(below, Node):
        return Lead(statement=statement, sees=(sees,), to=numbers[id(below)])
    taxa = tuple(key.taxa[row].id for row in below.rows)
    remark = TOGETHER if len(taxa) > 1 else ""
    return Lead(statement=statement, sees=(sees,), taxa=taxa, remark=remark)


def words_of(key: Key, sees: Sees) -> str:
    """What a lead stands for, in words: ``"Telson colour: dark, or reddish"``."""
    character = key.character[sees.character]
    if sees.states:
        shown = ", or ".join(character.state(state).label for state in sees.states)
        return f"{character.name}: {shown}"
    unit = f" {character.unit}" if character.unit else ""
    if sees.low is not None and sees.high is not None:
        return f"{character.name}: {sees.low:g} to {sees.high:g}{unit}"
    if sees.high is not None:
        return f"{character.name}: up to {sees.high:g}{unit}"
    return f"{character.name}: over {sees.low:g}{unit}"
