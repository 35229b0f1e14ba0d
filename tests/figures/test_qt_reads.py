"""What we draw is read by the renderer of the window without a word of complaint."""

import random
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QByteArray, QMessageLogContext, QtMsgType, qInstallMessageHandler
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from idkey.figures.catalogue import CATALOGUE
from idkey.figures.lineup import lineup
from idkey.figures.portrait import portrait, portrait_of_findings
from idkey.formats.folder import read_key
from idkey.model.case import Case, Finding
from idkey.model.key import Key
from idkey.places import keys_folder

KEYS = [key for key in (read_key(keys_folder() / name) for name in CATALOGUE) if key.body_plan]
by_key = pytest.mark.parametrize("key", KEYS, ids=[key.id for key in KEYS])
CASES = 5
"""Random cases per key."""


@pytest.fixture
def said(qapp: object) -> Iterator[list[str]]:
    """What Qt says while a test runs."""
    heard: list[str] = []

    def hear(_kind: QtMsgType, _where: QMessageLogContext, text: str) -> None:
        heard.append(text)

    before = qInstallMessageHandler(hear)
    yield heard
    qInstallMessageHandler(before)


def _paint(drawing: str) -> None:
    renderer = QSvgRenderer(QByteArray(drawing.encode()))
    assert renderer.isValid()
    image = QImage(104, 52, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(0)
    painter = QPainter(image)
    renderer.render(painter)
    painter.end()


def test_a_broken_path_would_be_heard(said: list[str]):
    _paint('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 3"><path d="M0 0c1 q"/></svg>')

    assert any("path" in text.lower() for text in said)


@by_key
@pytest.mark.slow
def test_every_taxon_is_drawn_and_read_in_silence(key: Key, said: list[str]):
    view = lineup(key, [taxon.id for taxon in key.taxa], width=400, height=200).view
    for taxon in key.taxa:
        _paint(portrait(key, taxon.id, view=view))
        assert not said, taxon.id


@by_key
def test_what_was_found_so_far_is_drawn_and_read_in_silence(key: Key, said: list[str]):
    chance = random.Random(5)  # noqa: S311 - a test wants the same cases again
    for _ in range(CASES):
        some = chance.sample(key.characters, chance.randint(1, 8))
        findings = tuple(
            Finding(character=c.id, value=chance.uniform(0.5, 240.0))
            if c.kind.numeric
            else Finding(character=c.id, states=(chance.choice(c.state_ids),))
            for c in some
        )
        _paint(portrait_of_findings(key, Case(id="1", key=key.id, findings=findings)))
        assert not said, findings
