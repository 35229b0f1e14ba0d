"""Programs killed while they write, and programs that write at once: nothing safe is lost."""

from collections.abc import Callable
from pathlib import Path

import pytest

from tests.store.killing import acknowledged, killed, missing, writer

SAVES = 40


@pytest.mark.slow
def test_kill_9_during_200_random_writes_loses_nothing_that_was_acknowledged(tmp_path: Path):
    toll = killed(tmp_path / "idkey.sqlite3", writes=200, kills_wanted=4)

    assert toll.writes >= 200
    assert toll.kills >= 1
    assert toll.lost == ()
    assert toll.faults == 0


@pytest.mark.slow
def test_counters_killed_while_writing_leave_a_shared_book_whole(
    empty_database: Callable[[], str],
):
    toll = killed(empty_database(), writes=20, kills_wanted=2)

    assert toll.lost == ()
    assert toll.faults == 0


@pytest.mark.slow
def test_two_programs_writing_at_once_lose_nothing_and_keep_one_chain(place: Path | str):
    processes = [writer(place, seed, SAVES) for seed in (1, 2)]
    acks = [ack for process in processes for ack in acknowledged(process)]
    ended = [process.returncode for process in processes]
    lost, faults = missing(place, acks)

    assert ended == [0, 0]
    assert len(acks) == 2 * SAVES
    assert lost == ()
    assert faults == 0


def test_the_check_sees_a_write_that_is_not_there(place: Path | str):
    acks = [
        ["save", "case-000001", "1", "ab", "x"],
        ["sale", "case-000001", "7"],
        ["draft", "a", "b"],
    ]
    lost, _ = missing(place, acks)

    assert len(lost) == 3
