"""By keyboard alone, from the label to a signed rationale in the sale record."""

import json
from io import BytesIO

import pypdf
from PySide6.QtWidgets import QApplication

from idkey.app.parts.page import Page
from idkey.engine.result import Stake
from idkey.store.rationales import rationales_of
from tests.stories.conftest import CTRL, KEY, Keeper


def test_an_asian_forest_scorpion_goes_from_label_to_the_sale_record(keeper: Keeper):
    keeper.types("Asian forest scorpion")
    keeper.presses(KEY.Key_Return)

    assert keeper.session.label is not None
    assert "Pandinus imperator" in keeper.bench.middle.note.text
    cautions = {caution.stake for caution in keeper.session.reasoned.assessment.cautions}
    assert cautions == {Stake.HAZARD, Stake.PERMIT}

    answers = {
        "sternum_shape": "pentagonal",
        "stridulatory_organ": "coxal_rasp_on_leg_I",
        "bothriotaxy": "type_C_ortho",
        "telson_colour": "dark",
        "chela_robustness": "robust",
        "manus_surface": "smooth_carinae_margins",
    }
    for _ in range(24):
        character = keeper.bench.middle.question.character
        if character is None or keeper.session.question is None:
            break
        if character.id in answers:
            number = character.state_ids.index(answers[character.id]) + 1
            keeper.presses(KEY(int(KEY.Key_0) + number))
            keeper.presses(KEY.Key_Return)
        elif character.kind.numeric:
            keeper.presses(KEY.Key_F6)
            break
        else:
            keeper.presses(KEY.Key_X)

    case = keeper.session.case
    assert len(case.findings) >= 3
    keeper.presses(KEY.Key_F4)
    assert keeper.bench.middle.page is Page.REASONS
    keeper.presses(KEY.Key_Escape)
    assert keeper.bench.middle.page is Page.QUESTION

    keeper.presses(KEY.Key_R, CTRL)
    dialog = QApplication.activeModalWidget()
    assert dialog is not None
    keeper.qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.number)
    keeper.types("2026-118")
    for _ in range(4):
        keeper.presses(KEY.Key_Tab)
    assert QApplication.focusWidget() is dialog.initials
    keeper.types("mk")
    keeper.presses(KEY.Key_Return)
    keeper.qtbot.waitUntil(lambda: dialog.show_pdf.isVisible(), timeout=60_000)

    store = keeper.program.keeper.store
    sale = store.sales(case.id)[0]
    noted = rationales_of(store, case.id)[0]
    folder = keeper.program.folders.data / "rationales"
    document = (folder / noted.file).read_bytes()
    attached = pypdf.PdfReader(BytesIO(document)).attachments
    data = json.loads(next(iter(attached.values()))[0])
    assert (sale.number, noted.sale, data["by"]) == ("2026-118", "2026-118", "mk")
    assert data["case"]["claim"]["text"] == "Asian forest scorpion"
    assert json.loads((folder / noted.file).with_suffix(".json").read_text("utf-8")) == data
    dialog.close()
