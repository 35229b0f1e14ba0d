"""What every test gets: no screen, a data folder of its own, no window left behind."""

import gc
import os
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import settings

from idkey import places

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ |= {"LC_ALL": "C.UTF-8", "LANGUAGE": "en"}  # whatever the system of the person speaks

settings.register_profile("desk", deadline=None)
settings.register_profile("ci", deadline=None, derandomize=True)
settings.load_profile("ci" if os.environ.get("CI") else "desk")


@pytest.hookimpl(wrapper=True)
def pytest_runtest_protocol(item: pytest.Item) -> Iterator[None]:
    """Collect garbage between tests once Qt is here; see `idkey.app.parts.collector` why."""
    if "qapp" in getattr(item, "fixturenames", ()):
        gc.disable()
    done = yield
    if "PySide6.QtCore" in sys.modules:
        from idkey.app.parts.collector import collect_if_due

        gc.disable()
        collect_if_due()
    return done


@pytest.fixture(autouse=True)
def _own_data_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep the person's own cases out of reach."""
    monkeypatch.setenv(places.DATA_VARIABLE, str(tmp_path / "idkey-data"))


@pytest.fixture(scope="session")
def qapp(qapp: "QApplication") -> "QApplication":
    """The application, with the shipped font: bare machines have none."""
    from PySide6.QtGui import QFont, QFontDatabase

    for file in places.font_files():
        assert QFontDatabase.addApplicationFont(str(file)) >= 0, f"{file} is no font"
    qapp.setFont(QFont(places.FONT_FAMILY, 10))
    return qapp


@pytest.fixture(autouse=True)
def _no_widget_survives(request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail the test that left a window behind, and only that one.

    What a test puts in qtbot's care is held until Qt has let go of it: a window that only a
    local variable holds may go while Qt still paints it, which takes the whole run down.
    """
    if "qtbot" not in request.fixturenames:  # engine tests never load Qt
        yield
        return
    held: list[object] = []
    qtbot = request.getfixturevalue("qtbot")
    add = qtbot.addWidget

    def added(widget: object, **more: object) -> None:
        held.append(widget)
        add(widget, **more)

    qtbot.addWidget = added
    yield
    names = _windows_left()
    held.clear()
    assert not names, f"windows left open: {names}"


def _windows_left() -> list[str]:
    from PySide6.QtWidgets import QApplication

    _delete_what_was_asked_to_go()
    left = [w for w in QApplication.topLevelWidgets() if not w.inherits("QTipLabel")]
    names = [repr(widget) for widget in left]
    for widget in left:
        widget.deleteLater()
    _delete_what_was_asked_to_go()
    return names


def _delete_what_was_asked_to_go() -> None:
    from PySide6.QtCore import QCoreApplication, QEvent

    QCoreApplication.sendPostedEvents(None, int(QEvent.Type.DeferredDelete.value))
