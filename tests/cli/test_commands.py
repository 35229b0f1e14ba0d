"""The commands, their words and their exit codes."""

import json
import shutil
from pathlib import Path

import pytest
from pypdf import PdfReader

from idkey import __version__
from idkey.cli.commands import main
from idkey.places import keys_folder

SCORPIONS = ["--key", "large-dark-scorpions"]
HETEROMETRUS = [
    "telson_colour=dark",
    "chela_robustness=robust",
    "sternum_shape=pentagonal",
    "pectinal_teeth_male=17",
    "total_length=112±3",
    "manus_shape=rounded_bulged",
    "manus_surface=smooth_carinae_margins",
    "stridulatory_organ=coxal_rasp_on_leg_I",
    "chela_i_trichobothria=2",
]


def test_an_emperor_label_on_a_forest_scorpion_is_contradicted(capsys: pytest.CaptureFixture[str]):
    asked = ["identify", *SCORPIONS, "--label", "Emperor scorpion", "--sex", "male", *HETEROMETRUS]

    code = main([*asked, "--json"])
    told = json.loads(capsys.readouterr().out)

    assert code == 0
    assert told["verdict"]["kind"] == "contradicted"
    assert told["verdict"]["name"].startswith("Heterometrus")
    assert told["lineup"][0]["taxon"] == "heterometrus_silenus"
    emperor = next(one for one in told["lineup"] if one["taxon"] == "pandinus_imperator")
    assert emperor["ruled_out"]
    assert emperor["conflicts"]


def test_one_colour_decides_nothing_and_the_exit_code_says_so(capsys: pytest.CaptureFixture[str]):
    code = main(["identify", *SCORPIONS, "--label", "black scorpion", "telson_colour=dark"])

    assert code == 1
    said = capsys.readouterr().out
    assert said.startswith("OPEN")
    assert "do not handle the animal" in " ".join(said.split())


def test_without_a_label_the_code_says_whether_there_is_a_name(capsys: pytest.CaptureFixture[str]):
    assert main(["identify", *SCORPIONS, "telson_colour=dark"]) == 1
    assert "No label was given" in capsys.readouterr().out


def test_a_case_file_goes_on_where_it_was_left(tmp_path: Path, capsys: pytest.CaptureFixture[str]):
    main(["identify", *SCORPIONS, "--label", "Emperor scorpion", *HETEROMETRUS[:4], "--json"])
    file = tmp_path / "case.json"
    file.write_text(capsys.readouterr().out, "utf-8")

    main(["identify", "--case", str(file), *HETEROMETRUS[4:], "--sex", "male", "--json"])

    told = json.loads(capsys.readouterr().out)
    assert [one["character"] for one in told["case"]["findings"]] == [
        text.split("=")[0] for text in HETEROMETRUS
    ]
    assert told["verdict"]["kind"] == "contradicted"


def test_questions_come_best_first_with_their_answers(capsys: pytest.CaptureFixture[str]):
    assert main(["questions", *SCORPIONS, "telson_colour=dark"]) == 0

    said = capsys.readouterr().out
    assert "\ntelson_colour:" not in f"\n{said}"
    assert "body_compression: " in said
    assert "none, moderate, extreme" in said
    assert "stridulatory_organ" in said


def test_all_questions_tell_why_some_make_no_sense_now(capsys: pytest.CaptureFixture[str]):
    main(["questions", *SCORPIONS, "telson_colour=dark", "--all"])

    assert "\ntelson_colour:" in capsys.readouterr().out


def test_the_list_names_every_shipped_key(capsys: pytest.CaptureFixture[str]):
    assert main(["list"]) == 0

    named = {line.split()[0] for line in capsys.readouterr().out.splitlines()}
    assert named == {file.parent.name for file in keys_folder().glob("*/key.yaml")}


def test_a_label_tells_what_else_is_sold_under_it(capsys: pytest.CaptureFixture[str]):
    assert main(["labels", "Kaiserskorpion"]) == 0

    said = " ".join(capsys.readouterr().out.split())
    assert "(exact; large-dark-scorpions)" in said
    assert "Heterometrus" in said


def test_a_label_nobody_knows_is_no_error(capsys: pytest.CaptureFixture[str]):
    assert main(["labels", "zzzz qqqq"]) == 0
    assert "No key knows 'zzzz qqqq'" in capsys.readouterr().out


@pytest.mark.parametrize("key", sorted(f.parent.name for f in keys_folder().glob("*/key.yaml")))
def test_a_shipped_key_has_no_mistakes(key: str, capsys: pytest.CaptureFixture[str]):
    assert main(["check", key]) == 0
    assert "no mistakes" in capsys.readouterr().out


def test_a_broken_key_is_named_line_by_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]):
    folder = tmp_path / "broken"
    shutil.copytree(keys_folder() / "kitchen-leaves", folder)
    text = (folder / "labels.yaml").read_text("utf-8")
    (folder / "labels.yaml").write_text(text + "\nnonsense: 1\n", "utf-8")

    code = main(["check", str(folder)])

    assert code == 3
    assert "labels.yaml:" in capsys.readouterr().out
    assert main(["identify", "--key", str(folder)]) == 3
    assert "labels.yaml:" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("argv", "code", "words"),
    [
        pytest.param(["nonsense"], 2, "No such command", id="a command that does not exist"),
        pytest.param(["identify"], 2, "No key is named", id="no key"),
        pytest.param(["identify", "--key", "scorpions"], 2, "There is no key", id="an unknown key"),
        pytest.param(["check", "no/such"], 2, "no/such is no folder", id="an unknown folder"),
        pytest.param(
            ["identify", *SCORPIONS, "leg_color=dark"], 2, "leg_colour", id="a near character"
        ),
        pytest.param(["identify", *SCORPIONS, "--sex", "both"], 2, "--sex", id="a wrong choice"),
        pytest.param(
            ["rationale", *SCORPIONS, "telson_colour=dark", "--out", "no/such/folder.pdf"],
            4,
            "no/such",
            id="a place that cannot be written",
        ),
    ],
)
def test_wrong_use(argv: list[str], code: int, words: str, capsys: pytest.CaptureFixture[str]):
    assert main(argv) == code

    told = capsys.readouterr()
    assert words in told.err
    assert "Traceback" not in told.err
    assert not told.out


def test_a_rationale_is_written_twice_and_can_be_taken_up_again(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
):
    out = tmp_path / "reasons.pdf"
    said = [*SCORPIONS, "--label", "Emperor scorpion", *HETEROMETRUS[:4]]

    assert main(["rationale", "--out", str(out), *said]) == 0
    assert capsys.readouterr().out == f"wrote {out}\nwrote {out.with_suffix('.json')}\n"
    (attached,) = PdfReader(out).attachments["rationale.json"]
    assert attached == out.with_suffix(".json").read_bytes()

    main(["identify", "--case", str(out.with_suffix(".json")), *HETEROMETRUS[4:], "--json"])
    told = json.loads(capsys.readouterr().out)
    assert len(told["case"]["findings"]) == len(HETEROMETRUS)


def test_a_rationale_is_written_in_another_language_and_goes_on_in_it(tmp_path: Path):
    first, second = tmp_path / "first.pdf", tmp_path / "second.pdf"
    said = [*SCORPIONS, "--label", "Emperor scorpion", *HETEROMETRUS]

    assert main(["rationale", "--out", str(first), "--language", "de", *said]) == 0
    data = str(first.with_suffix(".json"))
    assert main(["rationale", "--out", str(second), "--case", data]) == 0

    for file in (first, second):
        assert "Etikett widerlegt" in PdfReader(file).pages[0].extract_text()
        assert json.loads(file.with_suffix(".json").read_text("utf-8"))["case"]["language"] == "de"


def test_a_case_that_is_no_json_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]):
    file = tmp_path / "case.json"
    file.write_text("{", "utf-8")

    assert main(["identify", "--case", str(file)]) == 2
    assert "is not JSON" in capsys.readouterr().err


def test_the_version_is_printed(capsys: pytest.CaptureFixture[str]):
    assert main(["--version"]) == 0
    assert capsys.readouterr().out == f"idkey {__version__}\n"
