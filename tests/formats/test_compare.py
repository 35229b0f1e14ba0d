"""Two versions of a key are told apart in words, and two people's edits join."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings

from idkey.formats.compare import Side, Step, changes, merge, next_version, step
from idkey.formats.folder import digest, read_key
from idkey.formats.plain import canonical
from idkey.model.character import Sex, State
from idkey.model.couplet import Couplet, Lead
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Often, Score, Shows, Spans
from idkey.model.source import Source
from idkey.model.taxon import Taxon
from tests.formats.invented import PLAIN_WORDS, keys
from tests.formats.small_key import FILES, laid_out

Edit = Callable[[Key], Key]


@pytest.fixture
def base(tmp_path: Path) -> Key:
    return read_key(laid_out(tmp_path, FILES))


def rescored(taxon: str, character: str, value: object, **more: object) -> Edit:
    def edit(key: Key) -> Key:
        scores = tuple(
            replace(s, value=value, **more) if (s.taxon, s.character) == (taxon, character) else s
            for s in key.scores
        )
        return replace(key, scores=scores)

    return edit


def renamed(taxon: str, name: str) -> Edit:
    return lambda key: replace(
        key, taxa=tuple(replace(t, name=name) if t.id == taxon else t for t in key.taxa)
    )


def without_taxon(taxon: str) -> Edit:
    return lambda key: replace(
        key,
        taxa=tuple(t for t in key.taxa if t.id != taxon),
        scores=tuple(s for s in key.scores if s.taxon != taxon),
    )


def without_character(character: str) -> Edit:
    return lambda key: replace(
        key,
        characters=tuple(c for c in key.characters if c.id != character),
        scores=tuple(s for s in key.scores if s.character != character),
    )


def with_taxon(own: str) -> Edit:
    def edit(key: Key) -> Key:
        score = Score(taxon=own, character="tail", value=Shows({"rope": None}))
        return replace(
            key, taxa=(*key.taxa, Taxon(id=own, name="Nova")), scores=(*key.scores, score)
        )

    return edit


def restated(key: Key) -> Key:
    tail, *rest = key.characters
    new = replace(tail, states=(*tail.states, State(id="club", label="like a club")))
    return replace(key, characters=(new, *rest))


def turned(key: Key) -> Key:
    return replace(key, characters=key.characters[::-1])


def relabelled(key: Key) -> Key:
    return replace(key, labels=(replace(key.labels[0], covers=("alpha", "beta"), sold_as=()),))


def recoupled(key: Key) -> Key:
    leads = (Lead(statement="A", taxa=("alpha",)), Lead(statement="B", taxa=("beta",)))
    return replace(key, couplets=(key.couplets[0], Couplet(id="2", leads=leads)))


def unscored(key: Key) -> Key:
    return replace(key, scores=tuple(s for s in key.scores if s.taxon != "gamma"))


CHANGES = [
    (lambda key: key, []),
    (
        rescored("alpha", "tail", Shows({"rope": None})),
        [
            "The score of Alpha prima for 'Tail' changed from 'like a leaf' [novak2020] "
            "to 'like a rope' [novak2020]."
        ],
    ),
    (
        rescored("alpha", "colour", Shows({"dark": Often.RARELY, "pale": None})),
        [
            "The score of Alpha prima for 'Colour' changed from 'dark' (usually) or "
            "'pale' (0.2) [novak2020] to 'dark' (rarely) or 'pale' [novak2020]."
        ],
    ),
    (
        rescored("beta", "length", Spans(low=55, high=60), note="new"),
        [
            "The score of Beta secunda for 'Length' changed from low 55 [novak2020] "
            "to low 55, high 60 [novak2020] (new)."
        ],
    ),
    (
        rescored("alpha", "length", Inapplicable()),
        [
            "The score of Alpha prima for 'Length' changed from low 40, high 50, mean 44.5, "
            "sd 2, n 12 [novak2020] to inapplicable [novak2020]."
        ],
    ),
    (
        unscored,
        ["Emptied the score of Gamma tertia for 'Tail'; there was inapplicable [novak2020]."],
    ),
    (
        lambda key: replace(
            key,
            scores=(
                *key.scores,
                Score(taxon="gamma", character="colour", value=Shows({"dark": None}), sex=Sex.MALE),
            ),
        ),
        ["Filled in the score of Gamma tertia for 'Colour' (male): 'dark'."],
    ),
    (
        renamed("alpha", "Alpha altera"),
        ["The name of the taxon Alpha altera changed from 'Alpha prima' to 'Alpha altera'."],
    ),
    (with_taxon("nova"), ["The taxon Nova with 1 score was added."]),
    (without_taxon("beta"), ["The taxon Beta secunda with 4 scores was removed."]),
    (without_character("colour"), ["The character 'Colour' with 3 scores was removed."]),
    (
        restated,
        [
            "The kind or states of the character 'Tail' changed from categorical: none, "
            "like a leaf, like a rope to categorical: none, like a leaf, like a rope, like a club."
        ],
    ),
    (turned, ["The order of the characters changed."]),
    (
        relabelled,
        [
            "The covers of the label 'Leafy' changed from alpha to alpha, beta.",
            "Emptied the sold as of the label 'Leafy'; there was beta.",
        ],
    ),
    (
        lambda key: replace(key, version="1.1.0", cautions=("Wash your hands.",)),
        [
            "Filled in the cautions of the key: 'Wash your hands.'.",
            "The version of the key changed from '1.0.0' to '1.1.0'.",
        ],
    ),
    (
        lambda key: replace(key, sources=(*key.sources, Source(id="x2021", citation="X 2021."))),
        ["The source x2021 was added."],
    ),
    (lambda key: replace(key, checks=()), ["The check c1 was removed."]),
]


@pytest.mark.parametrize(
    ("edit", "words"), CHANGES, ids=[" ".join(words) or "nothing" for _, words in CHANGES]
)
def test_a_change_is_told_in_words(base: Key, edit: Edit, words: list[str]):
    assert [str(change) for change in changes(base, edit(base))] == words


def test_a_long_text_is_cut(base: Key):
    (change,) = changes(base, replace(base, scope="x" * 500))

    assert len(change.words) < 250
    assert change.words.endswith("….")


@pytest.mark.parametrize(
    ("edit", "how_much", "version"),
    [
        (lambda key: key, Step.NONE, "1.0.0"),
        (without_taxon("beta"), Step.MAJOR, "2.0.0"),
        (without_character("colour"), Step.MAJOR, "2.0.0"),
        (restated, Step.MAJOR, "2.0.0"),
        (with_taxon("nova"), Step.MINOR, "1.1.0"),
        (rescored("alpha", "tail", Shows({"rope": None})), Step.MINOR, "1.1.0"),
        (lambda key: replace(key, scope="Three."), Step.PATCH, "1.0.1"),
    ],
)
def test_the_version_grows_with_the_weight_of_the_changes(
    base: Key, edit: Edit, how_much: Step, version: str
):
    found = changes(base, edit(base))

    assert step(found) is how_much
    assert next_version("1.0.0", found) == version
    assert next_version("odd", found) == "odd"


@given(old=keys(), new=keys())
@settings(max_examples=5)
def test_two_keys_differ_in_words_when_they_differ_at_all(old: Key, new: Key):
    assert bool(changes(old, new)) == (digest(old) != digest(new))
    assert changes(old, old) == ()


@given(base=keys(PLAIN_WORDS), other=keys(PLAIN_WORDS))
@settings(max_examples=5)
def test_when_only_one_side_changed_anything_its_key_is_the_result(base: Key, other: Key):
    assert merge(base, other, base) == (canonical(other), ())
    assert merge(base, base, other)[0] == canonical(replace(other, digest=""))
    assert merge(base, other, other) == (canonical(other), ())


@given(base=keys(PLAIN_WORDS), mine=keys(PLAIN_WORDS), theirs=keys(PLAIN_WORDS))
@settings(max_examples=5)
def test_any_two_edits_join_and_a_decided_clash_is_none(base: Key, mine: Key, theirs: Key):
    key, clashes = merge(base, mine, theirs)
    again, left = merge(base, mine, theirs, {clash.place: clash.taken for clash in clashes})

    assert left == ()
    assert again == key


EDITS: list[tuple[Edit, Edit]] = [
    (rescored("alpha", "tail", Shows({"rope": None})), rescored("beta", "tail", Inapplicable())),
    (rescored("alpha", "tail", Shows({"rope": None})), rescored("alpha", "length", Spans(low=1))),
    (renamed("alpha", "A"), without_taxon("gamma")),
    (with_taxon("nova"), with_taxon("altera")),
    (relabelled, recoupled),
    (restated, lambda key: replace(key, scope="Three.")),
    (turned, with_taxon("nova")),
    (lambda key: replace(key, checks=()), renamed("beta", "B")),
]


@pytest.mark.parametrize(("mine", "theirs"), EDITS)
def test_edits_of_different_things_join_without_a_clash(base: Key, mine: Edit, theirs: Edit):
    expected = replace(canonical(theirs(mine(base))), digest="")

    assert merge(base, mine(base), theirs(base)) == (expected, ())
    assert merge(base, theirs(base), mine(base)) == (expected, ())


def test_the_same_score_changed_on_both_sides_is_a_clash(base: Key):
    mine = rescored("alpha", "tail", Shows({"rope": None}))(base)
    theirs = rescored("alpha", "tail", Inapplicable())(base)

    key, (clash,) = merge(base, mine, theirs)
    other, left = merge(base, mine, theirs, {clash.place: Side.THEIRS})

    assert clash.words == "The score of Alpha prima for 'Tail' was changed on both sides."
    assert (clash.base, clash.mine, clash.theirs) == (
        "'like a leaf' [novak2020]",
        "'like a rope' [novak2020]",
        "inapplicable [novak2020]",
    )
    assert key == replace(mine, digest="")
    assert (other, left) == (replace(theirs, digest=""), ())


def test_a_taxon_that_one_removed_and_the_other_scored_stays_and_is_a_clash(base: Key):
    scored = rescored("beta", "tail", Shows({"rope": None}))(base)
    removed = without_taxon("beta")(base)

    key, (clash,) = merge(base, removed, scored)
    gone, left = merge(base, removed, scored, {clash.place: Side.MINE})

    assert clash.words == "The taxon Beta secunda was removed on one side and changed on the other."
    assert (clash.mine, clash.theirs, clash.taken) == ("removed", "changed", Side.THEIRS)
    assert key == replace(scored, digest="")
    assert (gone, left) == (replace(removed, digest=""), ())


def test_a_character_that_one_removed_and_the_other_scored_stays_and_is_a_clash(base: Key):
    scored = rescored("beta", "length", Spans(low=1))(base)
    removed = without_character("length")(base)

    key, (clash,) = merge(base, scored, removed)

    assert (clash.mine, clash.theirs, clash.taken) == ("changed", "removed", Side.MINE)
    assert key == replace(scored, digest="")


def test_what_both_added_keeps_its_neighbours(base: Key):
    first, second, third = base.characters
    extra = replace(first, id="extra", name="Extra")
    more = replace(first, id="more", name="More")
    mine = replace(base, characters=(first, extra, second, third))
    theirs = replace(base, characters=(third, more, second, first))

    key, _ = merge(base, mine, theirs)

    assert [c.id for c in key.characters] == ["length", "more", "colour", "tail", "extra"]
