"""Corrected shop labels."""

import io
from dataclasses import replace
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image
from pypdf import PdfReader

from idkey.engine.result import Stake
from idkey.errors import IdKeyError
from idkey.model.case import Specimen
from idkey.model.character import Sex, Stage
from idkey.report.label_pdf import label_bytes, write_labels
from idkey.report.label_stock import STOCKS
from idkey.report.rationale import rationale
from idkey.report.shop_label import ShopLabel, shop_label
from tests.report.specimens import KEY, case, judged


def _label(taxon: str, findings: int, language: str = "en") -> ShopLabel:
    one = replace(case(taxon, findings), specimen=Specimen(sex=Sex.FEMALE, stage=Stage.ADULT))
    return shop_label(rationale(KEY, judged(one), language=language), price="65.00 EUR")


def _text(reader: PdfReader, page: int = 0) -> str:
    return " ".join(reader.pages[page].extract_text().split())


@pytest.mark.parametrize(
    ("label", "name", "below", "marks"),
    [
        (_label("lampa_nigra", 11), "Lampa nigra", "", []),
        (
            _label("fenestra_alta", 11),
            "Fenestra alta",
            "",
            [(Stake.HAZARD, "DANGEROUS. Do not handle.")],
        ),
        (
            _label("fenestra_alta", 6),
            "Fenestra cf. alta",
            "not identified to species",
            [
                (Stake.HAZARD, "MOST LIKELY DANGEROUS. Do not handle."),
                (Stake.PERMIT, "MAY BE PERMIT-LISTED. Papers: check locally."),
            ],
        ),
        (
            _label("porta_lata", 11, "de"),
            "Porta lata",
            "",
            [(Stake.PERMIT, "CITES-Anhang II, EU-Anhang B. Papiere: vor Ort klären.")],
        ),
    ],
    ids=["harmless", "dangerous", "open", "listed"],
)
def test_a_label_claims_no_more_than_the_verdict_and_warns_in_words(
    label: ShopLabel, name: str, below: str, marks: list[tuple[Stake, str]]
):
    assert (label.name, label.below) == (name, below)
    assert [(mark.stake, mark.words) for mark in label.marks] == marks


def test_a_painful_sting_of_a_settled_name_is_marked():
    found = replace(
        rationale(KEY, judged(case("lampa_nigra", 11))), hazard="painful (sting)", notices=()
    )

    assert [mark.words for mark in shop_label(found).marks] == ["Danger: painful (sting)"]


@pytest.mark.parametrize("name", STOCKS)
def test_every_label_of_every_stock_lies_on_its_page(name: str):
    stock = STOCKS[name]
    right = max(x for x, _ in stock.places) + stock.label[0]
    bottom = max(y for _, y in stock.places) + stock.label[1]

    assert len(stock.places) == stock.across * stock.down
    assert min(min(place) for place in stock.places) >= 0
    assert right <= stock.page[0] + 1e-9
    assert bottom <= stock.page[1] + 1e-9


def test_a_roll_has_one_label_per_page_of_its_own_size():
    labels = [_label("lampa_nigra", 11), _label("fenestra_alta", 6)]
    reader = PdfReader(io.BytesIO(label_bytes(labels, STOCKS["roll 62x29"])))
    box = reader.pages[0].mediabox

    assert len(reader.pages) == 2
    assert (float(box.width) / 72 * 25.4, float(box.height) / 72 * 25.4) == pytest.approx(
        (62, 29), abs=0.05
    )
    assert "Fenestra cf. alta" in _text(reader, 1)
    assert "MOST LIKELY DANGEROUS. Do not handle." in _text(reader, 1)


def test_used_labels_of_a_sheet_are_left_free():
    label = _label("lampa_nigra", 11)
    full = PdfReader(io.BytesIO(label_bytes([label] * 8, STOCKS["A4 2x4"])))
    used = PdfReader(io.BytesIO(label_bytes([label] * 8, STOCKS["A4 2x4"], used=3, cut=True)))

    assert len(full.pages) == 1
    assert [_text(used, page).count("Lampa nigra") for page in (0, 1)] == [5, 3]


def test_the_square_code_of_a_label_names_the_case():
    label = _label("lampa_nigra", 11)
    reader = PdfReader(io.BytesIO(label_bytes([label], STOCKS["roll 102x59"])))
    with Image.open(io.BytesIO(reader.pages[0].images[0].data)) as image:
        codes = zxingcpp.read_barcodes(image.convert("L"))

    assert codes[0].text == f"case {label.case_id}"


@pytest.mark.parametrize("stock", ["roll 57x32", "A4 2x4"])
def test_the_longest_of_names_is_printed_whole(stock: str):
    name = "Heterometrus spinifer or Heterometrus longimanus or Heterometrus laoticus"
    label = replace(_label("fenestra_alta", 6), name=name, case_id="")
    reader = PdfReader(io.BytesIO(label_bytes([label], STOCKS[stock])))

    assert name in _text(reader)


def test_labels_are_written_to_a_file(tmp_path: Path):
    path = tmp_path / "labels.pdf"
    write_labels(path, [_label("lampa_nigra", 11)], STOCKS["A4 3x7"])

    assert len(PdfReader(path).pages) == 1


def test_no_label_and_no_folder_are_told_apart(tmp_path: Path):
    with pytest.raises(IdKeyError, match="no label to print"):
        write_labels(tmp_path / "a.pdf", [], STOCKS["A4 3x7"])
    with pytest.raises(IdKeyError, match="cannot be written"):
        write_labels(tmp_path / "gone" / "a.pdf", [_label("lampa_nigra", 1)], STOCKS["A4 3x7"])
