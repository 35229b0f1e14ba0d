"""A grown tree as couplets, and couplets as printed lines."""

from collections.abc import Iterator

from idkey.engine.splits import Splits
from idkey.engine.tree import Leaf, Node, Tree
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key


def couplets_of(tree: Tree, ways: Splits, key: Key) -> tuple[Couplet, ...]:
    """The tree as numbered couplets, in the order of a walk that takes the first lead first.

    Args:
        tree: The tree.
        ways: The divisions its numbers stand for.
        key: The key, for words.
    """
    if isinstance(tree, Leaf):
        return ()
    numbers = {id(node): str(place) for place, node in enumerate(_nodes(tree), start=1)}
    return tuple(_couplet(node, numbers, ways, key) for node in _nodes(tree))


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
    remark = "not told apart by the characters of this key" if len(taxa) > 1 else ""
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
