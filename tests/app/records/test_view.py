"""The records: real keys, a real book, a real widget."""

import csv
import zipfile
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.theme import Theme
from idkey.app.records.case import KEYS, Deed
from idkey.app.records.dialogs import EraseDialog, SaleDialog
from idkey.app.records.label_dialog import LabelDialog
from idkey.app.records.view import Part, RecordsView
from idkey.engine.sample import SAMPLE_ID, sample_case
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.recorded import judged
from idkey.store.book import Store
from idkey.store.rationales import rationales_of
from idkey.store.record import Sale, VerdictSummary

SUPPLIERS = ("Lantern Street Vivarium", "own breeding")


@pytest.fixture
def view(store: Store, keys: KeyLibrary, key: Key, theme: Theme, qtbot: QtBot) -> Iterator:
    """The records over a book with four judged cases, from two suppliers."""
    made = RecordsView(store, keys, theme)
    for number in range(4):
        case = sample_case(key)
        claim = replace(case.claim, supplier=SUPPLIERS[number % 2], date=f"2026-0{number + 1}-10")
        case = replace(case, id=f"case-{number}", claim=claim)
        store.save(case, VerdictSummary.of(judged(store, key, case)))
    qtbot.addWidget(made)
    made.resize(1200, 800)
    made.show()
    made.refresh()
    settle(made, qtbot)
    yield made
    made.close_work()


def settle(view: RecordsView, qtbot: QtBot) -> None:
    """Wait until nothing is under way."""
    qtbot.waitUntil(lambda: not view.busy, timeout=20_000)


def ids(view: RecordsView) -> list[str]:
    return [row.case_id for row in view.cases.list.cases]


def test_the_case_worked_on_last_is_on_top_and_told(view: RecordsView):
    assert ids(view) == ["case-3", "case-2", "case-1", "case-0"]
    assert view.cases.list.current == "case-3"
    said = view.cases.case.page.toPlainText()
    assert "Label contradicted: Heterometrus" in said
    assert "10 April 2026" in said
    assert "case opened" in said


@pytest.mark.parametrize(
    ("words", "left"),
    [("lantern", ["case-2", "case-0"]), ("emperor case 1", ["case-1"]), ("tarantula", [])],
)
def test_typing_narrows_the_list(view: RecordsView, qtbot: QtBot, words: str, left: list[str]):
    qtbot.keyClicks(view.cases.search.words, words)
    settle(view, qtbot)

    assert ids(view) == left
    assert view.cases.case.buttons[Deed.OPEN].isEnabled() == bool(left)


def test_verdict_and_days_narrow_the_list(view: RecordsView, qtbot: QtBot):
    view.cases.search.since.setText("2026-02-01")
    view.cases.search.until.setText("2026-03-31")
    settle(view, qtbot)
    assert ids(view) == ["case-2", "case-1"]

    view.cases.search.verdict.setCurrentIndex(view.cases.search.verdict.findData("holds"))
    settle(view, qtbot)
    assert ids(view) == []
    assert "Try fewer words" in view.cases.said.text()


def test_a_half_typed_day_is_left_out_and_said(view: RecordsView, qtbot: QtBot):
    view.cases.search.since.setText("2026-02-")
    settle(view, qtbot)

    assert len(ids(view)) == 4
    assert "no day yet" in view.cases.search.said.text()


def test_enter_and_the_button_open_the_case_at_the_bench(view: RecordsView, qtbot: QtBot):
    view.cases.list.look_at("case-1")
    settle(view, qtbot)
    for press in (
        lambda: qtbot.keyClick(view.cases.list, Qt.Key.Key_Return),
        view.cases.case.buttons[Deed.OPEN].click,
    ):
        with qtbot.waitSignal(view.opened) as heard:
            press()
        assert heard.args == ["case-1"]


def test_every_deed_has_a_key_of_its_own_and_a_name(view: RecordsView):
    case = view.cases.case
    ways = case.buttons | case.actions_more

    assert set(ways) == set(Deed)
    assert len(set(KEYS.values())) == len(Deed)
    assert all(one.shortcut().toString() == KEYS[deed] for deed, one in ways.items())
    assert all(one.accessibleName() for one in case.buttons.values())


def test_a_rationale_is_written_again_and_noted(view: RecordsView, store: Store, qtbot: QtBot):
    view.cases.case.buttons[Deed.WRITE].click()
    settle(view, qtbot)

    (paper,) = rationales_of(store, "case-3")
    assert (view.deeds.folder / paper.file).is_file()
    assert paper.file in view.cases.case.page.toPlainText()


def test_a_key_that_moved_on_asks_before_it_judges_anew(
    view: RecordsView, store: Store, qtbot: QtBot
):
    case = replace(store.case("case-0").case, id="older", key_digest="of an older key")
    store.save(case, None)
    view.refresh()
    settle(view, qtbot)
    view.cases.list.look_at("older")
    settle(view, qtbot)

    view.cases.case.buttons[Deed.WRITE].click()
    assert "Press again" in view.cases.case.said.text()
    assert not rationales_of(store, "older")
    view.cases.case.buttons[Deed.WRITE].click()
    settle(view, qtbot)
    assert len(store.revisions("older")) == 2
    assert len(rationales_of(store, "older")) == 1


def test_a_case_whose_key_is_gone_says_what_to_do(view: RecordsView, store: Store, qtbot: QtBot):
    store.save(replace(store.case("case-0").case, id="lost", key="no-such-key"), None)
    view.refresh()
    settle(view, qtbot)
    view.cases.list.look_at("lost")
    settle(view, qtbot)

    view.cases.case.buttons[Deed.WRITE].click()
    settle(view, qtbot)
    assert "no-such-key" in view.cases.case.said.text()
    assert "among the keys" in view.cases.case.said.text()


def test_label_and_archive_are_written_from_the_selection(
    view: RecordsView, tmp_path: Path, qtbot: QtBot
):
    view.cases.case.buttons[Deed.LABEL].click()
    settle(view, qtbot)
    dialog = shown(LabelDialog)
    dialog.stock.choose("A4 3x7")
    view.deeds.write_labels(dialog.labels, dialog.choice, tmp_path / "label.pdf")
    settle(view, qtbot)
    dialog.reject()
    view.cases.list.selectAll()
    view.deeds.export(view.cases.list.selected, tmp_path / "cases.zip")
    settle(view, qtbot)

    assert "Heterometrus" in PdfReader(tmp_path / "label.pdf").pages[0].extract_text()
    with zipfile.ZipFile(tmp_path / "cases.zip") as archive:
        text = archive.read("occurrence.csv").decode("utf-8")
    rows = list(csv.DictReader(text.splitlines()))
    assert {row["occurrenceID"][-6:] for row in rows} == {f"case-{n}" for n in range(4)}
    assert "4 cases are written" in view.cases.case.said.text()


def test_a_folder_that_is_not_there_is_told(view: RecordsView, tmp_path: Path, qtbot: QtBot):
    view.deeds.export(("case-1",), tmp_path / "nowhere" / "cases.zip")
    settle(view, qtbot)

    assert "cannot be written" in view.cases.case.said.text()
    assert view.cases.case.actions_more[Deed.EXPORT].isEnabled()


def test_a_sale_is_attached_and_its_buyer_erased(view: RecordsView, store: Store, qtbot: QtBot):
    view.cases.case.actions_more[Deed.SALE].trigger()
    dialog = shown(SaleDialog)
    assert not dialog.go.isEnabled()
    qtbot.keyClicks(dialog.number, "LSV-9")
    qtbot.keyClicks(dialog.buyer, "B-77")
    dialog.go.click()
    settle(view, qtbot)
    assert [(s.number, s.buyer) for s in store.sales("case-3")] == [("LSV-9", "B-77")]
    assert view.cases.case.said.text() == "Sale LSV-9 is attached."
    assert "buyer noted" in view.cases.case.page.toPlainText()

    view.cases.case.actions_more[Deed.ERASE].trigger()
    dialog = shown(EraseDialog)
    assert dialog.buyer.text() == "B-77"
    dialog.go.click()
    settle(view, qtbot)
    assert [s.buyer for s in store.sales("case-3")] == [""]
    assert store.verify() == ()


def test_a_buyer_nobody_noted_is_told(view: RecordsView, qtbot: QtBot):
    view.deeds.erase("nobody")
    settle(view, qtbot)

    assert "No sale names that buyer" in view.cases.case.said.text()


def test_the_rates_name_labels_suppliers_and_counts(view: RecordsView, qtbot: QtBot):
    with qtbot.waitSignal(view.parts.chosen):
        view.parts._group.button(list(Part).index(Part.RATES)).click()
    settle(view, qtbot)

    assert view.rates.labels.accessibleDescription() == "Emperor scorpion: 4 of 4, 51% – 100%"
    assert "own breeding: 2 of 2" in view.rates.suppliers.accessibleDescription()
    assert view.rates.isVisible()


def test_an_empty_book_says_where_cases_come_from(
    store: Store, keys: KeyLibrary, theme: Theme, qtbot: QtBot
):
    view = RecordsView(store, keys, theme)
    qtbot.addWidget(view)
    view.refresh()
    settle(view, qtbot)

    assert "No case is recorded yet" in view.cases.said.text()
    assert "No case has a verdict" in view.rates.said.text()
    view.close_work()


def test_what_a_label_says_is_never_markup(view: RecordsView, store: Store, qtbot: QtBot):
    case = store.case("case-0").case
    store.save(replace(case, id="odd", claim=replace(case.claim, text="<b>boa</b> & co")), None)
    view.refresh()
    settle(view, qtbot)
    view.cases.list.look_at("odd")
    settle(view, qtbot)

    assert "“<b>boa</b> & co”" in view.cases.case.page.toPlainText()
    index = view.cases.list.model().index(0, 1)
    assert index.data() == "<b>boa</b> & co"
    assert "<b>" not in index.data(Qt.ItemDataRole.ToolTipRole)


@pytest.mark.parametrize(("width", "hidden"), [(700, ""), (500, "S"), (330, "SV")])
def test_label_and_name_keep_their_room_in_a_narrow_list(
    view: RecordsView, width: int, hidden: str
):
    view.cases.list.setFixedWidth(view.cases._theme.px(width))
    QApplication.processEvents()

    gone = "".join(sign for sign, n in (("S", 2), ("V", 3)) if view.cases.list.isColumnHidden(n))
    assert gone == hidden
    assert min(view.cases.list.columnWidth(n) for n in (1, 4)) >= view.cases._theme.px(90)


def test_what_was_sold_elsewhere_meanwhile_is_seen_after_a_refresh(
    view: RecordsView, store: Store, qtbot: QtBot
):
    store.attach_sale("case-0", Sale(number="T-1"))
    view.refresh()
    settle(view, qtbot)

    assert ids(view)[0] == "case-0"


def shown(kind: type) -> object:
    """The dialog of that kind on the screen."""
    return next(w for w in QApplication.topLevelWidgets() if isinstance(w, kind) and w.isVisible())


@pytest.mark.slow
def test_rates_go_out_as_a_table_and_as_plots(view: RecordsView, tmp_path: Path, qtbot: QtBot):
    view.rates.refresh()
    settle(view, qtbot)
    view.rates.write_table(tmp_path / "rates.csv")
    settle(view, qtbot)
    for name in ("rates.pdf", "rates.png"):
        view.rates.write_plots(tmp_path / name)

    rows = list(csv.DictReader((tmp_path / "rates.csv").read_text("utf-8-sig").splitlines()))
    whole = next(r for r in rows if r["name"] == "Emperor scorpion" and r["period"] == "all")
    assert (whole["contradicted"], whole["decided"]) == ("4", "4")
    assert (whole["wilson_95_low"], whole["wilson_95_high"]) == ("0.5101", "1.0000")
    text = " ".join(PdfReader(tmp_path / "rates.pdf").pages[0].extract_text().split())
    assert "own breeding" in text
    assert "2026-01" in text
    picture = QImage(str(tmp_path / "rates.png"))
    assert picture.pixelColor(2, 2).name() == "#ffffff"
    assert {picture.pixelColor(x, y).name() for x in range(0, picture.width(), 9)
            for y in range(0, picture.height(), 9)} > {"#ffffff"}  # fmt: skip


def test_rates_that_cannot_be_written_are_told(view: RecordsView, tmp_path: Path, qtbot: QtBot):
    view.rates.write_table(tmp_path / "nowhere" / "rates.csv")
    settle(view, qtbot)
    assert "cannot be written" in view.rates.done.text()
    with pytest.raises(IdKeyError, match="cannot be written"):
        view.rates.write_plots(tmp_path / "nowhere" / "rates.png")


def test_the_sample_says_that_it_counts_nowhere(view: RecordsView, store: Store, key: Key, qtbot):
    store.save(sample_case(key), None)
    view.refresh()
    settle(view, qtbot)
    view.cases.list.look_at(SAMPLE_ID)
    settle(view, qtbot)

    assert "no rate and no starting rate counts it" in view.cases.case.page.toPlainText()
    assert "The sample case and second opinions are not counted" in view.rates._explanation()


def test_the_verdict_is_copied_as_text_for_the_till(view: RecordsView, qtbot: QtBot):
    view.cases.case.actions_more[Deed.COPY].trigger()
    settle(view, qtbot)

    text = QApplication.clipboard().text()
    assert text.startswith("LABEL CONTRADICTED: Heterometrus")
    assert text.endswith("Case case-3, revision 1")
    assert max(map(len, text.splitlines())) <= 78
    assert "clipboard" in view.cases.case.said.text()


def test_the_months_can_be_those_of_one_supplier(view: RecordsView, qtbot: QtBot):
    view.rates.refresh()
    settle(view, qtbot)
    assert view.rates.months.accessibleDescription().count("1 of 1") == 4

    words = [view.rates.whose.itemText(n) for n in range(view.rates.whose.count())]
    assert words[:2] == ["all cases", "label: Emperor scorpion"]
    view.rates.whose.setCurrentIndex(words.index("supplier: own breeding"))
    said = view.rates.months.accessibleDescription()
    assert ("2026-02" in said, "2026-01" in said) == (True, False)

    view.rates.refresh()
    settle(view, qtbot)
    assert view.rates.whose.currentText() == "supplier: own breeding"
