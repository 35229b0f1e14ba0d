"""Work off the UI thread, and what must not happen there."""

import gc
import threading

from pytestqt.qtbot import QtBot

from idkey.app.parts.jobs import Job, Jobs, Tick


def test_the_collector_rests_while_anything_runs_off_the_ui_thread(qtbot: QtBot):
    jobs, go = Jobs(threads=2), threading.Event()
    made = [Job(lambda _: go.wait(5)) for _ in range(2)]
    for job in made:
        jobs.start(job)
    assert not gc.isenabled()

    go.set()
    qtbot.waitUntil(lambda: not jobs.busy)

    assert gc.isenabled()


def test_the_collector_is_back_after_work_that_was_stopped(qtbot: QtBot):
    jobs, heard = Jobs(threads=1), threading.Event()

    def work(tick: Tick) -> None:
        while True:
            tick(0, 1)
            heard.wait(0.001)

    jobs.start(Job(work))

    assert jobs.close()

    assert gc.isenabled()


def test_a_job_whose_owner_is_gone_does_not_keep_the_collector_off(qtbot: QtBot):
    go, owner = threading.Event(), Jobs(threads=1)
    lost = Job(lambda _: go.wait(5))
    owner.start(lost)
    go.set()
    owner.wait()  # its end is never delivered: nobody turns the loop
    jobs = Jobs(threads=1)
    jobs.start(Job(lambda _: None))

    assert jobs.close()
    assert gc.isenabled()
    qtbot.waitUntil(lambda: not owner.busy)
