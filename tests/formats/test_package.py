"""A package comes back as it was packed, and a hostile one ends in a refusal."""

import io
import json
import os
import stat
import zipfile
from contextlib import suppress
from dataclasses import replace
from hashlib import sha256
from pathlib import Path

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats import archive
from idkey.formats.folder import digest, read_key
from idkey.formats.key_shelf import put_in
from idkey.formats.package import MANIFEST, read_package, write_package
from idkey.formats.plain import canonical
from idkey.formats.problem import KeyProblems
from idkey.model.key import Key
from idkey.places import images_folder, keys_folder
from tests.formats.invented import keys
from tests.formats.small_key import FILES, laid_out

SVG = b'<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0"/></svg>'


def unpacked(file: Path, library: Path) -> Path:
    """The folder of a package's key among those of a library."""
    package = read_package(file)
    return put_in(package.key, library, files=package.files)


def packed(file: Path, contents: dict[str, bytes | str], *, manifest: object = None) -> Path:
    """A package of the given files, with a manifest that fits them unless one is given."""
    raw = {n: c.encode() if isinstance(c, str) else c for n, c in contents.items()}
    about = {
        "format": 1,
        "key": "small",
        "version": "1.0.0",
        "files": {n: sha256(c).hexdigest() for n, c in raw.items()},
    }
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as out:
        out.writestr(MANIFEST, json.dumps(about if manifest is None else manifest))
        for name, content in raw.items():
            out.writestr(name, content)
    return file


def refusal(file: Path) -> str:
    """Why the package is refused; every refusal says what to do."""
    with pytest.raises(IdKeyError) as caught:
        read_package(file)
    assert caught.value.remedy
    return caught.value.problem


@given(key=keys())
@settings(max_examples=8)
def test_every_key_comes_back_as_it_was_packed(key: Key, tmp_path_factory: pytest.TempPathFactory):
    file = tmp_path_factory.mktemp("pack") / "made_up.idkey"
    left = write_package(key, file)

    found = read_package(file).key
    assert replace(found, digest="") == canonical(key)
    assert found.digest == digest(key)
    assert bool(left) == any(s.figure for c in key.characters for s in c.states)


def test_the_same_key_gives_the_same_bytes(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))
    write_package(key, tmp_path / "a.idkey")
    write_package(key, tmp_path / "b.idkey")

    assert (tmp_path / "a.idkey").read_bytes() == (tmp_path / "b.idkey").read_bytes()


def test_comments_and_pictures_go_along(tmp_path: Path):
    text = FILES["characters.yaml"].replace(
        "{id: leaf, label: like a leaf}", "{id: leaf, label: like a leaf, figure: tail/leaf.svg}"
    )
    folder = laid_out(tmp_path, {**FILES, "characters.yaml": "# by hand\n" + text})
    (tmp_path / "images" / "tail").mkdir(parents=True)
    (tmp_path / "images" / "tail" / "leaf.svg").write_bytes(SVG)
    file = tmp_path / "small.idkey"

    left = write_package(read_key(folder), file, folder=folder, images=tmp_path / "images")
    target = unpacked(file, tmp_path / "library")

    assert left == ()
    assert (target / "characters.yaml").read_text("utf-8").startswith("# by hand\n")
    assert (target / "images" / "tail" / "leaf.svg").read_bytes() == SVG
    assert read_package(file).pictures == {"tail/leaf.svg": SVG}
    assert read_key(target) == read_key(folder)
    assert [entry.name for entry in (tmp_path / "library").iterdir()] == ["small"]


@pytest.mark.parametrize("name", ["kitchen-leaves", "large-dark-scorpions"])
def test_a_shipped_key_is_packed_and_installed(name: str, tmp_path: Path):
    folder = keys_folder() / name
    key = read_key(folder)
    write_package(key, tmp_path / "k.idkey", folder=folder, images=images_folder())

    assert read_key(unpacked(tmp_path / "k.idkey", tmp_path / "library")) == key


def test_a_picture_that_is_not_there_is_reported(tmp_path: Path):
    text = FILES["characters.yaml"].replace("id: pale,", "id: pale, figure: pale.svg,")
    key = read_key(laid_out(tmp_path, {**FILES, "characters.yaml": text}))

    assert write_package(key, tmp_path / "a.idkey", images=tmp_path) == (
        "The picture pale.svg is not in the package, because it was not found.",
    )


def test_a_hostile_picture_is_not_packed(tmp_path: Path):
    text = FILES["characters.yaml"].replace("id: pale,", "id: pale, figure: pale.svg,")
    key = read_key(laid_out(tmp_path, {**FILES, "characters.yaml": text}))
    (tmp_path / "pale.svg").write_bytes(b"<svg><script/></svg>")

    with pytest.raises(IdKeyError, match=r"The drawing pale\.svg holds <script>"):
        write_package(key, tmp_path / "a.idkey", images=tmp_path)


def test_a_folder_that_has_changed_meanwhile_is_not_packed(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    key = read_key(folder)
    text = FILES["key.yaml"].replace("1.0.0", "1.0.1")
    (folder / "key.yaml").write_text(text, "utf-8")

    with pytest.raises(IdKeyError, match="no longer holds the key as it was opened"):
        write_package(key, tmp_path / "a.idkey", folder=folder)


def test_a_disk_that_cannot_be_written_is_told(tmp_path: Path):
    key = read_key(laid_out(tmp_path, FILES))

    with pytest.raises(IdKeyError, match=r"a\.idkey could not be written"):
        write_package(key, tmp_path / "no such folder" / "a.idkey")


def test_a_library_that_cannot_be_written_is_told(tmp_path: Path):
    file = packed(tmp_path / "a.idkey", FILES)
    (tmp_path / "library").write_text("in the way", "utf-8")

    with pytest.raises(IdKeyError, match="could not be put here"):
        unpacked(file, tmp_path / "library")


def test_mistakes_in_a_package_are_told_with_their_places(tmp_path: Path):
    changed = {**FILES, "taxa/alpha.yaml": FILES["taxa/alpha.yaml"].replace("[leaf]", "[dark]")}
    file = packed(tmp_path / "a.idkey", changed)

    with pytest.raises(KeyProblems) as caught:
        read_package(file)

    assert str(caught.value.problems[0].place) == f"{Path('a.idkey/taxa/alpha.yaml')}:5:18"


@pytest.mark.parametrize(
    "name",
    [
        "../evil.yaml",
        "/etc/evil.yaml",
        "taxa/../../evil.yaml",
        "taxa\\..\\evil.yaml",
        "C:/evil.yaml",
        "taxa/.evil.yaml",
        "images/../evil.svg",
        "images/a.exe",
        "evil.sh",
        "taxa/a.yaml/b.yaml",
        "images/" + "a" * 300 + ".svg",
    ],
)
def test_a_name_that_is_no_file_of_a_key_is_refused(tmp_path: Path, name: str):
    file = packed(tmp_path / "a.idkey", {**FILES, name: b"id: a"})

    with pytest.raises(IdKeyError):
        unpacked(file, tmp_path / "library")

    assert sorted(p.name for p in tmp_path.iterdir()) == ["a.idkey"]


def test_a_symbolic_link_is_refused(tmp_path: Path):
    file = packed(tmp_path / "a.idkey", FILES)
    entry = zipfile.ZipInfo("taxa/link.yaml")
    entry.external_attr = (stat.S_IFLNK | 0o777) << 16
    with zipfile.ZipFile(file, "a") as out:
        out.writestr(entry, "/etc/passwd")

    assert refusal(file) == "a.idkey holds 'taxa/link.yaml', which is not a plain file."


def test_two_files_of_one_name_are_refused(tmp_path: Path):
    file = packed(tmp_path / "a.idkey", {**FILES, "taxa/ALPHA.yaml": "id: ALPHA"})

    assert refusal(file) == "a.idkey holds 'taxa/ALPHA.yaml' twice."


def test_a_zip_bomb_is_stopped_while_it_unpacks(tmp_path: Path):
    file = packed(tmp_path / "a.idkey", {**FILES, "taxa/bomb.yaml": bytes(12 * 2**20)})

    assert refusal(file) == "'taxa/bomb.yaml' in a.idkey unpacks to more than any key needs."


@pytest.mark.slow
def test_many_large_files_are_stopped_by_their_sum(tmp_path: Path):
    noise = {f"taxa/t{n}.yaml": os.urandom(2**18) + bytes(3 * 2**20) for n in range(31)}
    file = packed(tmp_path / "a.idkey", noise)

    assert refusal(file) == "a.idkey unpacks to more than any key needs."


def test_an_entry_that_lies_about_its_size_is_refused(tmp_path: Path):
    file = packed(tmp_path / "a.idkey", {"taxa/a.yaml": b"x" * 5000})
    raw = file.read_bytes().replace((5000).to_bytes(4, "little"), (10).to_bytes(4, "little"))
    file.write_bytes(raw)

    assert refusal(file) == "a.idkey is damaged, or no package at all."


def test_a_file_beyond_any_sense_is_not_opened(tmp_path: Path):
    with (tmp_path / "a.idkey").open("wb") as stream:
        stream.truncate(archive.LARGEST_ARCHIVE + 1)

    assert refusal(tmp_path / "a.idkey") == "a.idkey is larger than any key needs."


@pytest.mark.slow
def test_more_files_than_any_key_has_are_refused(tmp_path: Path):
    names = {f"taxa/t{n}.yaml": b"" for n in range(archive.MOST_ENTRIES + 1)}
    file = packed(tmp_path / "a.idkey", names)

    assert refusal(file) == "a.idkey holds more than 30000 files."


def test_a_locked_package_is_refused(tmp_path: Path):
    raw = bytearray(packed(tmp_path / "a.idkey", FILES).read_bytes())
    at = raw.find(b"PK\x01\x02")
    raw[at + 8] |= 1
    (tmp_path / "a.idkey").write_bytes(raw)

    assert refusal(tmp_path / "a.idkey") == "a.idkey is locked with a password."


@pytest.mark.parametrize(
    ("manifest", "message"),
    [
        ("nothing", "a.idkey has no list of its files."),
        ([], "a.idkey has no list of its files."),
        ({"format": 1}, "a.idkey has no list of its files."),
        ({"format": 1, "files": 3}, "a.idkey has no list of its files."),
        ({"format": 2, "files": {}}, "a.idkey is written in package format 2; "),
        ({"format": 1, "files": {}}, "'characters.yaml' in a.idkey is not as it was packed."),
        ({"format": 1, "files": {"a.yaml": "0"}}, "'a.yaml' is missing in a.idkey."),
    ],
)
def test_a_list_of_files_that_does_not_fit_is_refused(
    tmp_path: Path, manifest: object, message: str
):
    file = packed(tmp_path / "a.idkey", FILES, manifest=manifest)

    assert refusal(file).startswith(message)


def test_a_changed_file_is_noticed(tmp_path: Path):
    file = packed(tmp_path / "a.idkey", FILES)
    with zipfile.ZipFile(file) as old:
        contents = {name: old.read(name) for name in old.namelist()}
    contents["taxa/alpha.yaml"] = contents["taxa/alpha.yaml"].replace(b"prima", b"altera")
    with zipfile.ZipFile(file, "w") as new:
        for name, raw in contents.items():
            new.writestr(name, raw)

    assert refusal(file) == "'taxa/alpha.yaml' in a.idkey is not as it was packed."


def test_a_package_that_is_not_there_is_told(tmp_path: Path):
    assert refusal(tmp_path / "a.idkey").startswith("a.idkey cannot be read: ")


def _whole() -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive_:
        archive_.writestr(MANIFEST, "{}")
        archive_.writestr("key.yaml", FILES["key.yaml"])
    return out.getvalue()


WHOLE = _whole()


@given(place=st.integers(0, len(WHOLE)), new=st.binary(max_size=8), taken=st.integers(0, 40))
@example(place=0, new=b"", taken=len(WHOLE))
@settings(max_examples=60)
def test_no_damage_does_more_than_be_refused(
    place: int, new: bytes, taken: int, tmp_path_factory: pytest.TempPathFactory
):
    file = tmp_path_factory.getbasetemp() / "damaged.idkey"
    file.write_bytes(WHOLE[:place] + new + WHOLE[place + taken :])

    with suppress(IdKeyError):
        read_package(file)


CORPUS = sorted((Path(__file__).parent / "corpus" / "packages").iterdir())


@pytest.mark.parametrize("file", CORPUS, ids=lambda file: file.name)
def test_the_hostile_packages_of_the_corpus_are_refused(file: Path):
    assert refusal(file)
