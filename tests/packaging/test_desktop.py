"""Menu entry, software-centre page, file kind and icon fit together."""

import configparser
import shutil
import subprocess
from pathlib import Path

import defusedxml.ElementTree as SafeTree
import pytest

from idkey import __version__
from idkey.formats.package import ENDING
from idkey.formats.pictures import check_picture
from idkey.places import images_folder

PARTS = Path(__file__).parents[2] / ".packaging"
MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"


@pytest.fixture(scope="module")
def entry() -> configparser.SectionProxy:
    parser = configparser.ConfigParser(interpolation=None)
    parser.optionxform = str
    parser.read(PARTS / "idkey.desktop", "utf-8")
    return parser["Desktop Entry"]


def test_a_package_is_opened_by_the_program(entry: configparser.SectionProxy):
    kind = SafeTree.parse(PARTS / "idkey-package.xml").find(f"{MIME}mime-type")
    page = SafeTree.parse(PARTS / "idkey.metainfo.xml")

    assert kind.find(f"{MIME}glob").get("pattern") == f"*{ENDING}"
    assert entry["MimeType"] == f"{kind.get('type')};"
    assert page.findtext("provides/mediatype") == kind.get("type")
    assert entry["Exec"] == "idkey %f"


def test_the_page_names_the_entry_the_icon_and_this_version(entry: configparser.SectionProxy):
    page = SafeTree.parse(PARTS / "idkey.metainfo.xml")

    assert page.findtext("launchable") == "idkey.desktop"
    assert page.findtext("icon") == entry["Icon"] == "idkey"
    assert page.find("releases/release").get("version") == __version__


def test_the_icon_is_a_drawing_that_only_draws():
    file = images_folder() / "icon" / "idkey.svg"

    check_picture(file.name, file.read_bytes())

    assert SafeTree.parse(file).getroot().get("viewBox") == "0 0 128 128"


@pytest.mark.parametrize(
    "command",
    [
        [
            "appstreamcli",
            "validate",
            "--no-net",
            "--override=cid-desktopapp-is-not-rdns=info",  # the project owns no domain
            "idkey.metainfo.xml",
        ],
        ["desktop-file-validate", "idkey.desktop"],
    ],
    ids=lambda command: command[0],
)
def test_the_desktops_own_checker_has_no_complaint(command: list[str]):
    if shutil.which(command[0]) is None:
        pytest.skip(f"{command[0]} is not on this machine")

    ended = subprocess.run(command, cwd=PARTS, capture_output=True, text=True, check=False)

    assert ended.returncode == 0, ended.stdout
