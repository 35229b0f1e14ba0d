"""Every text of the window is there in German, complete, and fits."""

import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from xml.etree.ElementTree import Element

import PySide6
import pytest
from defusedxml.ElementTree import parse
from PySide6.QtWidgets import QApplication

import idkey.app
from idkey import places
from idkey.app.window.commands import COMMANDS
from idkey.app.window.translation import CODES, FOLDER, Translation, system_language
from idkey.report.language import in_language

APP = Path(idkey.app.__file__).parent
GLOSSARY = places.docs_folder() / "glossary.md"
HOLDER = re.compile(r"\{(?!number)\w*\}")
UNMISTAKABLE = {"couplet", "finding", "hazard", "look-alike", "rationale", "revision", "verdict"}
SOURCES = sorted(APP.rglob("*.py"))


def messages(ts: Path) -> Iterator[tuple[str, str, Element]]:
    for context in parse(ts).getroot().iter("context"):
        for message in context.iter("message"):
            yield context.findtext("name", ""), message.findtext("source", ""), message


def forms(message: Element) -> list[str]:
    translation = message.find("translation")
    assert translation is not None
    plural = [form.text or "" for form in translation.iter("numerusform")]
    return plural or [translation.text or ""]


def fresh(tmp_path: Path, code: str) -> set[tuple[str, str]]:
    """What the sources say now, as lupdate reads it."""
    tool = Path(PySide6.__file__).parent / ("lupdate.exe" if sys.platform == "win32" else "lupdate")
    ts = tmp_path / f"idkey_{code}.ts"
    files = [str(file) for file in SOURCES]
    subprocess.run([str(tool), *files, "-ts", str(ts)], check=True, capture_output=True)
    return {(context, source) for context, source, _ in messages(ts)}


@pytest.mark.slow
def test_every_text_of_the_sources_is_in_the_german_catalogue(tmp_path: Path):
    there = {(context, source) for context, source, _ in messages(FOLDER / "idkey_de.ts")}
    missing = sorted(fresh(tmp_path, "de") - there)

    assert not missing, (
        "pyside6-lupdate over all of idkey/app -ts idkey/app/translations/idkey_de.ts "
        "-locations none, "
        "translate what is unfinished there, then pyside6-lrelease it to idkey_de.qm"
    )


def test_no_german_text_is_unfinished():
    unfinished = [
        source
        for _, source, message in messages(FOLDER / "idkey_de.ts")
        if message.find("translation").get("type") or not all(forms(message))
    ]

    assert not unfinished


def test_placeholders_are_the_same_in_both_languages():
    def holders(text: str) -> list[str]:
        return sorted(re.findall(r"\{\w*\}|%n", text))

    wrong = [
        (source, form)
        for _, source, message in messages(FOLDER / "idkey_de.ts")
        for form in forms(message)
        if holders(source) != holders(form)
    ]

    assert not wrong


@pytest.mark.parametrize("code", CODES)
def test_the_compiled_catalogue_is_not_older_than_its_source(code: str, tmp_path: Path):
    tool = Path(PySide6.__file__).parent / (
        "lrelease.exe" if sys.platform == "win32" else "lrelease"
    )
    made = tmp_path / "made.qm"
    subprocess.run(
        [str(tool), str(FOLDER / f"idkey_{code}.ts"), "-qm", str(made)],
        check=True,
        capture_output=True,
    )

    assert made.read_bytes() == (FOLDER / f"idkey_{code}.qm").read_bytes()


def test_strings_that_people_read_go_through_translation():
    """Literals given straight to a widget are either no words, or marked."""
    call = re.compile(
        r"\b(?:setText|setToolTip|setPlaceholderText|setAccessibleName|setWindowTitle|caption|"
        r'button|KeyButton)\(\s*f?"([^"]*)"'
    )
    found = [
        (file.name, text)
        for file in SOURCES
        for text in call.findall(file.read_text("utf-8"))
        if re.search(r"[A-Za-z]{3}", re.sub(r"\{[^}]*\}|<[^>]*>|idkey", "", text))
    ]

    assert not found


@pytest.fixture
def german(qapp: QApplication) -> Iterator[Translation]:
    translation = Translation(qapp)
    translation.speak("de")
    yield translation
    translation.speak("en")


def test_the_window_speaks_german(german: Translation):
    assert german.code == "de"
    assert next(c.title for c in COMMANDS if c.id == "new_case") == "Neuer Fall"


def test_a_language_that_is_not_there_is_english(qapp: QApplication):
    translation = Translation(qapp)
    translation.speak("xx")

    assert translation.code == "en"
    assert system_language() in CODES


def test_one_word_stands_for_one_thing_as_the_glossary_has_it():
    """Words of the trade that are nothing else in English have one German word everywhere."""
    table = re.findall(r"^\| ([\w-]+) \| (\w+) \|", GLOSSARY.read_text("utf-8"), re.MULTILINE)
    words = {english: german for english, german in table if english in UNMISTAKABLE}
    said = [(s, form) for _, s, m in messages(FOLDER / "idkey_de.ts") for form in forms(m)]
    said += in_language("de").phrases.items()
    wrong = [
        (english, source, german)
        for source, german in said
        for english, word in words.items()
        if re.search(rf"\b{english}s?\b(?! {{number}}$)", HOLDER.sub("", source), re.IGNORECASE)
        and word[1:].casefold() not in german.casefold()
    ]

    assert set(words) == UNMISTAKABLE
    assert not wrong
