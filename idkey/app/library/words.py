"""Keys, forms and changes in the words of the window."""

from PySide6.QtCore import QCoreApplication

from idkey.app.library.account import Account
from idkey.formats.arrival import Form
from idkey.formats.compare import Step
from idkey.formats.pieces import Part
from idkey.model.key import Key

translate = QCoreApplication.translate


def from_words(one: Account) -> str:
    """Where a key is from, or that it cannot be used."""
    if one.broken:
        return translate("library", "cannot be used as it stands")
    if one.entry.own:
        return translate("library", "yours")
    return translate("library", "came with the program")


def size_words(one: Account) -> str:
    """How large a key is; empty for a broken one."""
    if one.key is None:
        return "" if one.broken else translate("library", "being read …")
    return key_size_words(one.key)


def key_size_words(key: Key) -> str:
    """How many taxa and characters a key has."""
    taxa, characters = len(key.taxa), len(key.characters)
    one_taxon = translate("library", "one taxon")
    one_character = translate("library", "one character")
    several_taxa = translate("library", "{n} taxa").format(n=taxa)
    several_characters = translate("library", "{n} characters").format(n=characters)
    first = one_taxon if taxa == 1 else several_taxa
    return f"{first}, {one_character if characters == 1 else several_characters}"


def form_words(form: Form) -> str:
    """What a key came as."""
    return {
        Form.FOLDER: translate("library", "a key folder"),
        Form.PACKAGE: translate("library", "a key package"),
        Form.JSON: translate("library", "a key as JSON"),
        Form.SDD: translate("library", "a key as SDD"),
        Form.NEXUS: translate("library", "a NEXUS matrix"),
        Form.SHEET: translate("library", "a key as a spreadsheet"),
    }[form]


def way_words(way: str) -> str:
    """A form in which a key goes out."""
    return {
        "package": translate("library", "Key package, everything in one file"),
        "xlsx": translate("library", "Spreadsheet, XLSX"),
        "ods": translate("library", "Spreadsheet, ODS"),
        "csv": translate("library", "Matrix alone, CSV"),
        "json": translate("library", "JSON"),
        "sdd": translate("library", "SDD 1.1"),
        "nexus": translate("library", "NEXUS matrix"),
        "folder": translate("library", "Key folder, plain text"),
    }[way]


def step_words(step: Step) -> str:
    """What a step of the version means."""
    return {
        Step.MAJOR: translate("library", "something that older cases may point to is gone"),
        Step.MINOR: translate("library", "a verdict may change"),
        Step.PATCH: translate("library", "words and references only"),
        Step.NONE: translate("library", "nothing differs"),
    }[step]


def part_words(part: Part) -> str:
    """The pieces of a key of one kind."""
    return {
        Part.KEY: translate("library", "The key itself"),
        Part.TAXON: translate("library", "Taxa"),
        Part.CHARACTER: translate("library", "Characters"),
        Part.SCORE: translate("library", "Scores"),
        Part.LABEL: translate("library", "Labels"),
        Part.COUPLET: translate("library", "Couplets"),
        Part.SOURCE: translate("library", "Sources"),
        Part.CHECK: translate("library", "Published statements"),
    }[part]
