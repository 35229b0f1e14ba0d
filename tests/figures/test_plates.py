"""Orientation plates: parts, names in both languages, and where a click lands."""

import re
from pathlib import Path

import pytest

from idkey.errors import IdKeyError
from idkey.figures.catalogue import CATALOGUE, PLATES
from idkey.figures.plates import Plate, plate_text, read_plates
from idkey.formats.folder import read_key
from idkey.places import images_folder, keys_folder

IMAGES = images_folder()
SHEETS = [plate for plan in PLATES for plate in read_plates(IMAGES, plan)]
by_sheet = pytest.mark.parametrize("plate", SHEETS, ids=[Path(s.file).stem for s in SHEETS])


def test_each_body_plan_has_a_plate_from_above_and_one_from_below():
    for plan in PLATES:
        assert [plate.id for plate in read_plates(IMAGES, plan)] == ["above", "below"]


def test_every_part_that_a_character_names_is_on_a_plate():
    for name in CATALOGUE:
        key = read_key(keys_folder() / name)
        if not key.body_plan:
            continue
        shown = {part.id for plate in read_plates(IMAGES, key.body_plan) for part in plate.parts}

        assert {c.part for c in key.characters if c.part} <= shown


@by_sheet
def test_every_part_is_labelled_in_the_drawing_and_named_in_both_languages(plate: Plate):
    text = (IMAGES / plate.file).read_text("utf-8")

    for part in plate.parts:
        assert f'id="label_{part.id}"' in text
        assert f">{part.names['en']}</text>" in text
        assert part.names["de"]
        assert part.areas


@by_sheet
def test_a_click_on_a_label_finds_its_part(plate: Plate):
    text = (IMAGES / plate.file).read_text("utf-8")
    for part in plate.parts:
        found = re.search(rf'id="label_{part.id}" x="([\d.]+)" y="([\d.]+)"', text)
        assert found

        hit = plate.part_at(float(found[1]), float(found[2]) - 4)

        assert hit is part


@by_sheet
def test_each_area_is_on_the_paper_and_beside_it_is_nothing(plate: Plate):
    for part in plate.parts:
        for ring in part.areas:
            assert all(0 <= p.real <= plate.width for p in ring)
            assert all(0 <= p.imag <= plate.height for p in ring)
    assert plate.part_at(1, plate.height - 1) is None


def test_a_click_on_the_animal_finds_the_part_that_lies_on_top():
    above, below = read_plates(IMAGES, "scorpion")

    def ids(plate: Plate, *points: tuple[float, float]) -> list[str]:
        return [part.id for part in (plate.part_at(*p) for p in points) if part]

    assert ids(above, (330, 235), (330, 330), (330, 480), (330, 562)) == [
        "carapace",
        "tergites",
        "metasoma",
        "telson",
    ]
    assert ids(below, (330, 256), (330, 360)) == ["sternum", "body"]


@by_sheet
def test_a_plate_speaks_german_and_takes_the_colours_of_the_theme(plate: Plate):
    text = plate_text(IMAGES, plate, language="de", ink="#123456", lines="#654321")

    for part in plate.parts:
        assert f">{part.names['de']}</text>" in text
    assert text.count('fill="#123456"') == len(plate.parts)
    assert text.count('stroke="#654321"') == len(plate.parts)


@by_sheet
def test_a_language_that_nobody_wrote_falls_back_to_english(plate: Plate):
    assert plate_text(IMAGES, plate, language="fi") == plate_text(IMAGES, plate)


def test_a_body_plan_without_plates_has_none():
    assert read_plates(IMAGES, "jellyfish") == ()


@pytest.mark.parametrize(
    "content", ["plates: [", "parts: {}", "parts: {}\nplates: [{id: x}]", "3"], ids=str
)
def test_a_damaged_list_is_told_with_what_to_do(tmp_path: Path, content: str):
    (tmp_path / "plates").mkdir()
    (tmp_path / "plates" / "scorpion.yaml").write_text(content, "utf-8")

    with pytest.raises(IdKeyError, match=r"scorpion.yaml is damaged. Install idkey again"):
        read_plates(tmp_path, "scorpion")
