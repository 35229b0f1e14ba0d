"""Pictures with their marks go into the document."""

from pathlib import Path

import pypdf
from PIL import Image

from idkey.app.parts.filing import Order, file_rationale
from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.sample import sample_case
from idkey.model.case import Finding
from idkey.model.key import Key
from idkey.photo.marks import Marks, text_of
from idkey.photo.shelf import PictureShelf
from idkey.store.book import Store


def test_a_measured_picture_stands_in_the_rationale_with_its_line(
    key: Key, store: Store, tmp_path: Path
):
    source = tmp_path / "tub.png"
    Image.effect_noise((640, 480), 60).convert("RGB").save(source)
    kept = PictureShelf(tmp_path / "pictures").add_file(source).id
    marks = Marks(picture=kept, character="total_length", lines=(((60.0, 80.0), (520.0, 90.0)),))
    finding = Finding(
        character="total_length",
        value=118.0,
        uncertainty=2.0,
        pictures=(kept, "0" * 64),
        marks=text_of(marks),
    )
    case = sample_case(key).observe(finding)
    seen = assess(compile_key(key, case.specimen, case.care), case)

    def pictures_of(shelf: Path | None) -> int:
        order = Order(
            key=key,
            assessment=seen,
            sale=None,
            folder=tmp_path / "out",
            language="en",
            pictures=shelf,
        )
        pages = pypdf.PdfReader(file_rationale(store, order).pdf).pages
        return sum(len(page.images) for page in pages)

    assert pictures_of(tmp_path / "pictures") == pictures_of(None) + 1
