"""Every mistake in a key file is told at its place, in words, with its mend."""

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.formats.draft import drafted
from idkey.formats.folder import check_key, checked, read_key
from idkey.formats.problem import KeyProblems, Severity
from idkey.formats.texts import parsed_texts
from tests.formats.small_key import FILES, laid_out, with_change


def said(folder: Path) -> list[str]:
    """What is said about the key, warnings marked, without the folder."""
    _, problems = check_key(folder)
    return [
        f"{'warning ' if p.severity is Severity.WARNING else ''}{p}".replace(f"{folder}/", "")
        for p in problems
    ]


def _mistakes() -> list[tuple[str, str, str, list[str]]]:
    """The rows of mistakes.txt: file, old text, new text, messages."""
    rows: list[tuple[str, str, str, list[str]]] = []
    for block in Path(__file__).with_name("mistakes.txt").read_text("utf-8").split("\n\n= ")[1:]:
        file, old, new, *messages = block.rstrip("\n").split("\n")
        texts = (t[2:].replace("\\n", "\n").replace("\\t", "\t") for t in (old, new))
        rows.append((file, *texts, [message[2:] for message in messages]))  # type: ignore[arg-type]
    return rows


MISTAKES = _mistakes()


@pytest.mark.parametrize(
    ("file", "old", "new", "messages"),
    MISTAKES,
    ids=[f"{file}: {' | '.join(messages)}" for file, _, _, messages in MISTAKES],
)
def test_a_mistake_is_told_with_place_and_mend(
    tmp_path: Path, file: str, old: str, new: str, messages: list[str]
):
    folder = with_change(tmp_path, file, old, new)

    assert said(folder) == messages


def test_a_key_without_mistakes_is_read_without_remarks(tmp_path: Path):
    assert said(laid_out(tmp_path, FILES)) == []


def test_mistakes_of_all_files_are_told_at_once(tmp_path: Path):
    changed = {
        **FILES,
        "key.yaml": FILES["key.yaml"].replace("1.0.0", "one"),
        "characters.yaml": FILES["characters.yaml"].replace("unit: mm", "unit:"),
        "labels.yaml": FILES["labels.yaml"].replace("[alpha]", "[alfa]"),
        "couplets.yaml": FILES["couplets.yaml"].replace('to: "2"', 'to: "3"'),
        "taxa/alpha.yaml": FILES["taxa/alpha.yaml"].replace("[leaf]", "[dark]"),
        "taxa/beta.yaml": FILES["taxa/beta.yaml"].replace("low: 55", "low: 55, high: 54"),
    }

    with pytest.raises(KeyProblems) as caught:
        read_key(laid_out(tmp_path, changed))

    places = [p.place.rpartition("small/")[2] for p in caught.value.problems]
    assert places == [
        "key.yaml:4:10",
        "characters.yaml:20:5",
        "labels.yaml:4:14",
        "couplets.yaml:4:66",
        "couplets.yaml:6:9",
        "taxa/alpha.yaml:5:18",
        "taxa/beta.yaml:8:17",
    ]
    assert caught.value.problem.startswith("The key small has 6 mistakes:\n")
    assert "key.yaml:4:10: 'one' is not a semantic version." in caught.value.problem
    assert caught.value.remedy == "Mend the lines named above and open the key again."


def test_only_the_first_twenty_mistakes_are_spelled_out(tmp_path: Path):
    lines = "".join(f"  c{n}: {{shows: [leaf], sources: [novak2020]}}\n" for n in range(25))
    changed = {**FILES, "taxa/gamma.yaml": f"id: gamma\nname: Gamma\nscores:\n{lines}"}

    with pytest.raises(KeyProblems) as caught:
        read_key(laid_out(tmp_path, changed))

    assert caught.value.problem.startswith("The key small has 25 mistakes:\n")
    assert caught.value.problem.endswith("\n… and 5 more.")
    assert len(caught.value.problems) == 25


@pytest.mark.parametrize(
    ("files", "messages"),
    [
        pytest.param(
            {"key.yaml": "format: 1\nid: small\ntitle: Small\nversion: 1.0.0\n"},
            [
                "characters.yaml:1:1: The key has no characters.yaml. Add it.",
                "taxa:1:1: The key has no taxa. Add a file for each.",
            ],
            id="a key of nothing but a title",
        ),
        pytest.param(
            {"label.yaml": "labels: []\n", **FILES},
            [
                "warning label.yaml:1:1: label.yaml is no file of a key, so it is not read. "
                "Did you mean 'labels.yaml'?"
            ],
            id="a file with a misspelt name",
        ),
        pytest.param(
            {**FILES, "labels.yaml": ""}, [], id="an empty labels.yaml is a key without labels"
        ),
        pytest.param(
            {**FILES, "labels.yaml": "- id: leafy\n"},
            ["labels.yaml:1:1: The file does not start with 'labels:'. Write 'labels:' above."],
            id="the list without its name",
        ),
        pytest.param(
            {**FILES, "labels.yaml": "labels: leafy\n"},
            ["labels.yaml:1:9: 'labels' needs a list. Start each entry with a dash."],
            id="a word where the list of labels should stand",
        ),
        pytest.param(
            {**FILES, "sources.yaml": "sources: [novak2020]\n"},
            [
                "sources.yaml:1:10: 'sources' needs named entries. "
                "Write 'id:' and below it the fields."
            ],
            id="a list where named sources should stand",
        ),
        pytest.param(
            {**FILES, "labels.yaml": "lables: []\n"},
            ["labels.yaml:1:1: Unknown field 'lables'. Did you mean 'labels'?"],
            id="a misspelt top name",
        ),
        pytest.param(
            {**FILES, "labels.yaml": "labels: []\n".encode("utf-16")},
            [
                "labels.yaml:1:1: The file is not UTF-8 text (byte 0xff). "
                "Save it again with the encoding UTF-8."
            ],
            id="UTF-16",
        ),
        pytest.param(
            {**FILES, "labels.yaml": FILES["labels.yaml"].encode().replace(b"Leafy", b"Gr\xfcn")},
            [
                "labels.yaml:3:13: The file is not UTF-8 text (byte 0xfc). "
                "Save it again with the encoding UTF-8."
            ],
            id="an umlaut in Windows-1252",
        ),
        pytest.param(
            {**FILES, "labels.yaml": b"\xef\xbb\xbf" + FILES["labels.yaml"].encode()},
            [],
            id="a byte order mark is no mistake",
        ),
        pytest.param(
            {**FILES, "labels.yaml": FILES["labels.yaml"].replace("\n", "\r\n")},
            [],
            id="line ends of Windows are no mistake",
        ),
        pytest.param(
            {**FILES, "taxa/Alpha.yaml": "id: Alpha\nname: Alpha again\n"},
            [
                "taxa/Alpha.yaml:1:5: No couplet ends in 'Alpha'. "
                "Add it to the taxa of a lead in couplets.yaml.",
                "taxa/alpha.yaml:1:5: 'alpha' differs from 'Alpha' in capitals only. "
                "Give it another id.",
            ],
            id="two files that a Mac cannot keep apart",
            marks=pytest.mark.skipif(
                Path(__file__.upper()).exists(), reason="this file system cannot keep them apart"
            ),
        ),
    ],
)
def test_a_folder_that_is_not_as_it_should_be(
    tmp_path: Path, files: dict[str, str | bytes], messages: list[str]
):
    folder = laid_out(tmp_path, files)

    found = [message.removeprefix("warning ") for message in said(folder)]
    assert found == [message.removeprefix("warning ") for message in messages]


def test_a_folder_that_is_not_there_is_named(tmp_path: Path):
    key, problems = check_key(tmp_path / "nowhere")

    assert key is None
    assert [str(p) for p in problems] == [
        f"{tmp_path / 'nowhere'}:1:1: There is no key folder 'nowhere'. Check the path."
    ]


BROKEN_YAML = [
    ("a: b: c", "1:5: A colon followed by a space stands inside a text."),
    ('a: "b', "1:6: A quote or bracket that was opened is never closed."),
    ("a: [b, c", "1:4: A list in square brackets is not closed, or a comma is missing."),
    (
        "a:\n  b: {c: d\ne: f",
        "2:6: A mapping in curly brackets is not closed, or a comma is missing.",
    ),
    ("a:\n\tb: c\n\td: e", "2:1: The line is indented with a tab."),
    ("a: @b", "1:4: A text starts with a sign that has a meaning of its own here."),
    ("a: `b`", "1:4: A text starts with a sign that has a meaning of its own here."),
    ("a: - b", "1:4: A dash stands where no list can start."),
    (
        "a:\n  - b\n c: d",
        "3:2: The indentation does not fit the lines above, or a colon is missing.",
    ),
    ('a: "\\q"', "1:5: A backslash inside double quotes is not followed by a known sign."),
    ("a: x\n\x07", "2:1: The file holds an invisible control character."),
    ("a: \x00", "1:4: The file holds an invisible control character."),
    ("[" * 5000, "1:1001: The values are nested deeper than any key needs."),
    ("- " * 5000, "1:1: The values are nested deeper than any key needs."),
    ("[" * 41 + "]" * 41, "1:1: The values are nested deeper than any key needs."),
    ("a: !!python/object:os.system b", "1:4: The file uses a tag"),
    ("a: &b c", "1:4: The file uses an anchor (&b)."),
    ("a: *b", "1:4: The file uses an alias (*b)."),
    ("a: b\n---\nc: d", "2:1: A second document starts here ('---')."),
    ("[a]: b", "1:1: A name is missing before the colon."),
]


@pytest.mark.parametrize(("text", "message"), BROKEN_YAML, ids=[m for _, m in BROKEN_YAML])
def test_text_that_is_no_plain_yaml_is_explained(tmp_path: Path, text: str, message: str):
    folder = laid_out(tmp_path, {**FILES, "checks.yaml": text})

    assert f"checks.yaml:{message}" in said(folder)[0]


def test_a_billion_laughs_end_in_a_refusal(tmp_path: Path):
    laughs = ["a0: &a0 [lol, lol]"]
    laughs += [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 30)]
    folder = laid_out(tmp_path, {**FILES, "checks.yaml": "\n".join(laughs)})

    with pytest.raises(KeyProblems, match=r"checks\.yaml:1:5: The file uses an anchor"):
        read_key(folder)


def test_a_file_beyond_any_sense_is_not_read(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    with (folder / "checks.yaml").open("wb") as stream:
        stream.truncate(200 * 2**20)

    assert said(folder) == ["checks.yaml:1:1: The file is larger than 4 MB. Split or shorten it."]


TOKENS = [
    "&a ",
    "*a",
    "!x ",
    "- ",
    ": ",
    "{",
    "}",
    "[",
    "]",
    '"',
    "'",
    "#",
    "|\n",
    ">\n",
    "\t",
    "\n",
]
TOKENS += [
    "~",
    "null",
    "no",
    "1e999",
    "nan",
    "é",
    "\x85",
    "\x00",
    "id: ",
    "alpha",
    "tail",
    "leaf",
    '"2"',
    "",
]


@given(
    file=st.sampled_from(sorted(FILES)),
    edits=st.lists(
        st.tuples(st.floats(0, 1), st.integers(0, 25), st.sampled_from(TOKENS)),
        min_size=1,
        max_size=3,
    ),
)
@settings(max_examples=100)
def test_no_damage_to_a_file_does_more_than_be_told(file: str, edits: list[tuple[float, int, str]]):
    text = FILES[file]
    for where, taken, new in edits:
        place = round(where * len(text))
        text = text[:place] + new + text[place + taken :]
    contents = {name: (text if name == file else FILES[name]).encode() for name in FILES}

    key, problems = checked(drafted(Path("small"), parsed_texts(Path("small"), contents)))

    assert all(p.problem and p.line >= 1 and p.column >= 1 for p in problems)
    assert (key is None) == any(p.severity is Severity.ERROR for p in problems)


@given(raw=st.binary(max_size=80) | st.text(max_size=80).map(str.encode))
@settings(max_examples=60)
def test_no_bytes_at_all_do_more_than_be_told(raw: bytes):
    contents = {**{name: text.encode() for name, text in FILES.items()}, "labels.yaml": raw}

    checked(drafted(Path("small"), parsed_texts(Path("small"), contents)))


CORPUS = sorted((Path(__file__).parent / "corpus" / "yaml").iterdir())


@pytest.mark.parametrize("file", CORPUS, ids=lambda file: file.name)
def test_the_bad_files_of_the_corpus_are_told(tmp_path: Path, file: Path):
    folder = laid_out(tmp_path, {**FILES, "checks.yaml": file.read_bytes()})
    key, problems = check_key(folder)

    assert key is None
    assert problems[0].file.name == "checks.yaml"
