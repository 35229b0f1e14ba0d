"""The key under edit: steps, saving without surprises, unsaved work that comes back."""

import os
import shutil
import subprocess
from dataclasses import replace
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.workshop.saving import ChangedMeanwhile, NotWritable
from idkey.app.workshop.shelf import Shelf
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.trouble_dialog import both, told_changes
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key, write_key
from idkey.model.key import Key
from idkey.model.score import Shows
from tests.app.workshop.conftest import delete


def settle(workshop: WorkshopState, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not workshop.busy, timeout=10_000)


def noted(key: Key, note: str) -> Key:
    """The key with another note on its first score."""
    return replace(key, scores=(replace(key.scores[0], note=note), *key.scores[1:]))


def broken(key: Key) -> Key:
    """The key with a score that names a state that is not there."""
    first = replace(key.scores[0], value=Shows({"nothing-like-it": None}))
    return replace(key, scores=(first, *key.scores[1:]))


def test_a_copy_keeps_every_comment_and_brings_its_drawings(own: Path):
    shipped = places.keys_folder() / "kitchen-leaves"
    old, new = ((f / "key.yaml").read_text("utf-8").splitlines() for f in (shipped, own))

    changed = [(a, b) for a, b in zip(old, new, strict=True) if a != b]
    assert changed == [("id: kitchen-leaves", "id: my-leaves")]
    assert sorted(f.name for f in (own / "taxa").iterdir()) == sorted(
        f.name for f in (shipped / "taxa").iterdir()
    )
    assert any((own / "images").rglob("*.svg"))
    assert read_key(own).id == "my-leaves"


@pytest.mark.parametrize("key_id", ["", "two words", "../up", "my-leaves", "kitchen-leaves"])
def test_an_id_that_cannot_be_had_is_told(shelf: Shelf, own: Path, key_id: str):
    assert own.is_dir()
    wrong = shelf.complaint(key_id)

    assert wrong is not None
    assert wrong.remedy
    with pytest.raises(IdKeyError):
        shelf.copy(places.keys_folder() / "kitchen-leaves", key_id)


def test_steps_are_taken_back_and_done_again(workshop: WorkshopState, own: Path):
    workshop.open(own)
    before = workshop.editing.key
    workshop.change(noted(before, "looked again"), "Note")
    assert workshop.editing.dirty

    workshop.undo()
    assert workshop.editing.key is before
    assert not workshop.editing.dirty
    workshop.redo()
    assert workshop.editing.key.scores[0].note == "looked again"
    assert workshop.editing.past[-1].words == "Note"


def test_one_score_saved_is_one_line_changed_and_comments_stay(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    git = ("git", "-C", str(own), "-c", "user.name=a", "-c", "user.email=a@example.invalid")
    for words in (("init", "-q"), ("add", "."), ("commit", "-qm", "as copied")):
        subprocess.run([*git, *words], check=True)
    workshop.open(own)
    workshop.change(noted(workshop.editing.key, "looked again"), "Note")
    with qtbot.waitSignal(workshop.saved) as heard:
        workshop.save()

    told = subprocess.run(
        [*git, "diff", "--numstat"], check=True, capture_output=True, text=True
    ).stdout.split()
    assert told[:2] == ["1", "1"]
    assert len(told) == 3
    assert heard.args == [own]
    assert not workshop.editing.dirty


def test_mistakes_are_found_and_keep_the_key_from_being_saved(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    before = {f: f.read_bytes() for f in own.rglob("*.yaml")}
    workshop.open(own)
    workshop.change(broken(workshop.editing.key), "A state that is not there")
    settle(workshop, qtbot)
    assert any("nothing-like-it" in p.problem for p in workshop.editing.problems)
    assert not workshop.editing.sound

    with qtbot.waitSignal(workshop.refused):
        workshop.save()
    assert {f: f.read_bytes() for f in own.rglob("*.yaml")} == before


def test_only_the_newest_of_many_quick_changes_is_looked_at(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    workshop.open(own)
    key = workshop.editing.key
    for number in range(30):
        workshop.change(noted(key, f"note {number}"), "Note")
    workshop.change(broken(key), "A state that is not there")
    settle(workshop, qtbot)

    assert not workshop.editing.checking
    assert len(workshop.editing.past) == 31
    assert any("nothing-like-it" in p.problem for p in workshop.editing.problems)


def test_work_with_a_mistake_in_it_comes_back_with_its_way_back(
    workshop: WorkshopState, own: Path, tmp_path: Path, shelf: Shelf, qtbot: QtBot
):
    workshop.open(own)
    first = workshop.editing.key
    workshop.change(noted(first, "looked again"), "Note")
    workshop.change(broken(workshop.editing.key), "A state that is not there")
    settle(workshop, qtbot)

    again = WorkshopState(tmp_path / "drafts", shelf=shelf)
    again.resume()

    assert again.editing.folder == own
    assert again.editing.key == workshop.editing.key
    assert [step.words for step in again.editing.past] == ["Note", "A state that is not there"]
    again.undo()
    again.undo()
    assert not again.editing.dirty
    again.close()
    delete(again)


def test_saving_and_throwing_away_forget_the_unsaved_work(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    workshop.open(own)
    workshop.change(noted(workshop.editing.key, "one"), "Note")
    assert workshop.drafts.folders() == (own,)
    with qtbot.waitSignal(workshop.saved):
        workshop.save()
    assert workshop.drafts.folders() == ()

    workshop.change(noted(workshop.editing.key, "two"), "Note")
    workshop.throw_away()
    assert workshop.drafts.folders() == ()
    workshop.open(own)
    assert workshop.editing.key.scores[0].note == "one"


def test_a_folder_changed_by_somebody_else_is_not_overwritten(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    workshop.open(own)
    there = replace(read_key(own), title="Leaves of the kitchen")
    write_key(there, own)
    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    with qtbot.waitSignal(workshop.refused) as heard:
        workshop.save()

    (error,) = heard.args
    assert isinstance(error, ChangedMeanwhile)
    assert read_key(own).title == "Leaves of the kitchen"
    assert len(told_changes(error.base, error.theirs)) == 1
    merged = both(error)
    workshop.take_in(merged, error.theirs, "Took it in")
    with qtbot.waitSignal(workshop.saved):
        workshop.save()
    saved = read_key(own)
    assert (saved.title, saved.scores[0].note) == ("Leaves of the kitchen", "mine")


def test_both_sides_at_one_place_are_not_joined_but_can_be_overwritten(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    workshop.open(own)
    write_key(noted(read_key(own), "theirs"), own)
    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    with qtbot.waitSignal(workshop.refused) as heard:
        workshop.save()
    assert both(heard.args[0]) is None

    with qtbot.waitSignal(workshop.saved):
        workshop.overwrite()
    assert read_key(own).scores[0].note == "mine"


def test_a_shipped_key_is_never_written_but_saved_as_a_copy(
    workshop: WorkshopState, shelf: Shelf, qtbot: QtBot
):
    shipped = places.keys_folder() / "kitchen-leaves"
    before = {f: f.read_bytes() for f in shipped.rglob("*.yaml")}
    workshop.open(shipped)
    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    with qtbot.waitSignal(workshop.refused) as heard:
        workshop.save()
    assert isinstance(heard.args[0], NotWritable)

    with qtbot.waitSignal(workshop.saved):
        workshop.save_as("leaves-of-mine")
    assert {f: f.read_bytes() for f in shipped.rglob("*.yaml")} == before
    assert workshop.editing.folder == shelf.own / "leaves-of-mine"
    assert read_key(shelf.own / "leaves-of-mine").scores[0].note == "mine"
    assert not workshop.editing.dirty


def test_a_key_whose_parts_do_not_fit_is_opened_mended_and_keeps_its_comments(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    first = read_key(own).scores[0]
    file = own / "taxa" / f"{first.taxon}.yaml"
    text = file.read_text("utf-8")
    broken_text = f"# looked at again\n{text}".replace(
        next(iter(first.value.states)), "nothing-like-it", 1
    )
    assert "nothing-like-it" in broken_text
    file.write_text(broken_text, "utf-8")
    workshop.open(own)
    settle(workshop, qtbot)
    assert any("nothing-like-it" in p.problem for p in workshop.editing.problems)

    key = workshop.editing.key
    wrong = next(s for s in key.scores if "nothing-like-it" in getattr(s.value, "states", {}))
    mended = tuple(replace(s, value=first.value) if s is wrong else s for s in key.scores)
    workshop.change(replace(key, scores=mended), "Mended")
    with qtbot.waitSignal(workshop.saved):
        workshop.save()
    assert file.read_text("utf-8") == f"# looked at again\n{text}"


def test_a_damaged_draft_is_put_aside_and_the_key_opened_as_its_folder_says_it(
    workshop: WorkshopState, own: Path, tmp_path: Path, qtbot: QtBot
):
    workshop.open(own)
    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    settle(workshop, qtbot)
    (draft,) = (tmp_path / "drafts").glob("*.json")
    draft.write_text("{", "utf-8")
    with qtbot.waitSignal(workshop.failed) as heard:
        workshop.open(own)

    assert "damaged" in heard.args[0].problem
    assert not workshop.editing.dirty
    assert draft.with_suffix(".damaged").read_text("utf-8") == "{"


def test_a_key_that_cannot_be_understood_is_refused(workshop: WorkshopState, own: Path):
    (own / "characters.yaml").write_text("characters: [", "utf-8")

    with pytest.raises(IdKeyError, match=r"characters\.yaml"):
        workshop.open(own)
    assert workshop.editing is None


@pytest.mark.skipif(os.geteuid() == 0, reason="root may write everywhere")
def test_a_folder_that_may_not_be_written_is_told(workshop: WorkshopState, own: Path, qtbot: QtBot):
    workshop.open(own)
    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    own.chmod(0o500)
    try:
        with qtbot.waitSignal(workshop.refused) as heard:
            workshop.save()
    finally:
        own.chmod(0o700)
    assert isinstance(heard.args[0], NotWritable)


def test_unsaved_work_on_a_key_that_was_taken_away_stays_and_can_be_saved_as_a_copy(
    workshop: WorkshopState, shelf: Shelf, own: Path, tmp_path: Path, qtbot: QtBot
):
    workshop.open(own)
    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    settle(workshop, qtbot)
    shutil.rmtree(own)
    workshop.look_again("")
    assert workshop.editing.dirty
    again = WorkshopState(tmp_path / "drafts", shelf=shelf)
    again.resume()
    assert again.editing.key.scores[0].note == "mine"
    again.close()

    with qtbot.waitSignal(workshop.refused):
        workshop.save()
    with qtbot.waitSignal(workshop.saved):
        workshop.save_as("leaves-again")
    assert read_key(shelf.own / "leaves-again").scores[0].note == "mine"


def test_a_key_without_unsaved_work_follows_its_folder(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    workshop.open(own)
    settle(workshop, qtbot)
    write_key(noted(read_key(own), "theirs"), own)
    with qtbot.waitSignal(workshop.changed):
        workshop.look_again(own.name)
    assert workshop.editing.key.scores[0].note == "theirs"
    settle(workshop, qtbot)

    shutil.rmtree(own)
    workshop.look_again("")
    assert workshop.editing is None


def test_a_key_asked_for_twice_does_not_lose_what_is_done_between(
    workshop: WorkshopState, own: Path, qtbot: QtBot
):
    workshop.open_soon(own)
    workshop.open(own)
    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    settle(workshop, qtbot)
    qtbot.wait(50)  # for the answer to the first question

    assert workshop.editing.key.scores[0].note == "mine"


def test_what_was_worked_out_of_the_scores_is_carried_on_while_they_stay(
    workshop: WorkshopState, own: Path
):
    workshop.open(own)
    cells = workshop.editing.key.cells
    workshop.change(replace(workshop.editing.key, title="Another"), "Title")
    assert workshop.editing.key.cells is cells

    workshop.change(noted(workshop.editing.key, "mine"), "Note")
    assert workshop.editing.key.cells is not cells
