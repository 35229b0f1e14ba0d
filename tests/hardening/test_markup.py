"""What a label says is text, wherever it appears."""

import io
from dataclasses import replace

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import Qt as GuiQt
from PySide6.QtWidgets import QLabel, QTextBrowser, QWidget

from idkey import places
from idkey.app.parts.messages import Message
from idkey.app.parts.notice import Notice
from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.formats.folder import read_key
from idkey.model.case import Claim
from idkey.model.key import Key
from idkey.report.pdf import pdf_bytes
from idkey.report.rationale import rationale
from idkey.report.words import rich, verdict_sentence

LABEL = '<b>x</b><img src="http://x.example/a.png"><script>alert(1)</script>'
NOTE = "</p><h1>Sold as safe</h1>& <a href='http://x.example'>more</a>"


@pytest.fixture(scope="module")
def key() -> Key:
    return read_key(places.keys_folder() / SAMPLE_KEY)


@pytest.fixture(scope="module")
def assessment(key: Key):
    case = sample_case(key)
    first, *others = case.findings
    claim = Claim(text=LABEL, supplier=LABEL, origin=LABEL)
    case = replace(case, claim=claim, note=NOTE, findings=(replace(first, note=NOTE), *others))
    return assess(compile_key(key, case.specimen, case.care), case)


def shown(widget: QWidget) -> list[str]:
    """Every text below a widget as a person reads it, without markup."""
    texts = []
    for label in widget.findChildren(QLabel):
        rich_text = label.textFormat() == Qt.TextFormat.RichText or (
            label.textFormat() == Qt.TextFormat.AutoText and GuiQt.mightBeRichText(label.text())
        )
        texts.append(_read(label.text()) if rich_text else label.text())
    return texts + [page.toPlainText() for page in widget.findChildren(QTextBrowser)]


def _read(html: str) -> str:
    page = QTextBrowser()
    page.setHtml(html)
    return page.toPlainText()


@pytest.mark.usefixtures("qapp")
def test_a_verdict_about_a_label_with_markup_shows_the_markup(key: Key, assessment):
    sentence = verdict_sentence(key, assessment)

    assert LABEL in sentence
    assert _read(rich(key, sentence)) == sentence


def test_no_text_of_the_window_runs_the_markup_of_a_label(opens):
    keeper = opens()
    keeper.program.state.claim(Claim(text=LABEL, supplier=LABEL))
    keeper.settles()

    read = [text for text in shown(keeper.program.window) if "x.example" in text]
    raw = [
        label.text()
        for label in keeper.program.window.findChildren(QLabel)
        if "<img" in label.text() and label.textFormat() != Qt.TextFormat.PlainText
    ]

    assert keeper.bench.claim.label.text() == LABEL
    assert all("<img" in text for text in read)
    assert raw == []


def test_a_message_about_a_file_with_markup_in_its_name_shows_the_name(qtbot):
    notice = Notice()
    qtbot.addWidget(notice)

    notice.say(Message("The file <b>a</b>.idkey is damaged.", "Ask for it again."))

    assert shown(notice)[0] == "The file <b>a</b>.idkey is damaged. Ask for it again."


def test_the_paper_prints_markup_as_it_was_written(key: Key, assessment):
    raw = pdf_bytes(rationale(key, assessment))

    text = _without_breaks(_text_of(raw))
    assert _without_breaks(LABEL) in text
    assert _without_breaks(NOTE) in text
    assert b"/URI (http://x.example" not in raw
    assert b"/JavaScript" not in raw


def _text_of(raw: bytes) -> str:
    return "\n".join(page.extract_text() for page in PdfReader(io.BytesIO(raw)).pages)


def _without_breaks(text: str) -> str:
    return "".join(text.split())
