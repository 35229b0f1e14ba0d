"""Diagnoses and descriptions follow the scores under the pen, and go out whole."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

from idkey.app.parts.desk import Desk
from idkey.app.workshop.diagnosis_page import DiagnosisPage
from tests.app.workshop.table import Table


@pytest.fixture
def table(qtbot, tmp_path: Path) -> Iterator[Table]:
    made = Table(qtbot, tmp_path, "kitchen-leaves")
    yield made
    made.state.close()


@pytest.fixture
def page(qtbot, table: Table, desk: Desk) -> DiagnosisPage:
    made = DiagnosisPage(table.state, desk)
    qtbot.addWidget(made)
    made.show()
    settled(qtbot, made)
    return made


def settled(qtbot, page: DiagnosisPage) -> None:
    qtbot.waitUntil(lambda: not page.busy, timeout=20_000)


def test_a_diagnosis_follows_the_scores_and_is_copied(qtbot, table: Table, page: DiagnosisPage):
    key = table.editing.key
    first = key.taxa[0]
    before = page.text.toPlainText()
    left = tuple(score for score in key.scores if score.taxon != first.id)
    table.state.change(replace(key, scores=left), "Scores of a taxon gone")
    table.checked()
    settled(qtbot, page)
    qtbot.mouseClick(page.copy, Qt.MouseButton.LeftButton)

    assert f"{first.name}: told apart within this key by" in before
    assert "no character of this key tells it surely apart" in QGuiApplication.clipboard().text()


def test_all_taxa_go_out_as_text_and_as_a_page(
    qtbot, table: Table, page: DiagnosisPage, tmp_path: Path
):
    key = table.editing.key
    odd = replace(key.taxa[0], range="<script>alert(1)</script>")
    table.state.change(replace(key, taxa=(odd, *key.taxa[1:])), "A range")
    table.checked()
    settled(qtbot, page)
    for form in page.saves:
        page.write(form, tmp_path / f"taxa{form.ending}")
        settled(qtbot, page)
    text = (tmp_path / "taxa.txt").read_text("utf-8")
    html = (tmp_path / "taxa.html").read_text("utf-8")

    assert all(taxon.name in text and taxon.name in html for taxon in key.taxa)
    assert html.count("<section>") == len(key.taxa)
    assert "<script" not in html
    assert "Form of the teeth or lobes: the part is lacking" in " ".join(text.split())


def test_the_search_leaves_the_taxa_one_means(page: DiagnosisPage, table: Table):
    name = table.editing.key.taxa[3].name
    page.words.setText(name.upper())

    assert [row.name for row in page.rows.rows] == [name]
