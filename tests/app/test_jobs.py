"""Work off the UI thread."""

import threading

from pytestqt.qtbot import QtBot

from idkey.app.parts.jobs import Job, Jobs, Tick


def test_work_leaves_at_its_next_step_when_it_is_stopped(qtbot: QtBot):
    jobs, heard = Jobs(threads=1), threading.Event()

    def work(tick: Tick) -> None:
        while True:
            tick(0, 1)
            heard.wait(0.001)

    job = Job(work)
    stopped: list[bool] = []
    job.stopped.connect(lambda: stopped.append(True))
    jobs.start(job)
    job.stop()
    qtbot.waitUntil(lambda: not jobs.busy)

    assert stopped == [True]


def test_what_is_closed_waits_for_its_work_and_tells_nobody(qtbot: QtBot):
    jobs, go = Jobs(threads=1), threading.Event()
    heard: list[object] = []
    job = Job(lambda _: go.wait(5))
    job.succeeded.connect(heard.append)
    jobs.start(job)
    late = jobs.close(wait_ms=1)
    go.set()

    assert not late
    assert jobs.close()
    assert heard == []
