"""What a column of a spreadsheet is taken for, in words."""

from PySide6.QtCore import QCoreApplication

from idkey.formats.sheet_guess import Column, Role
from idkey.model.character import Kind

translate = QCoreApplication.translate


def role_words(role: Role) -> str:
    """What a column holds."""
    return {
        Role.TAXON: translate("library", "Names of the taxa"),
        Role.GENUS: translate("library", "Genera, put before the names"),
        Role.AUTHORITY: translate("library", "Authorities"),
        Role.FAMILY: translate("library", "Families"),
        Role.CHARACTER: translate("library", "A character"),
        Role.SKIP: translate("library", "Left out"),
    }[role]


def kind_words(kind: Kind) -> str:
    """What a character takes."""
    return {
        Kind.CATEGORICAL: translate("library", "States without an order"),
        Kind.ORDINAL: translate("library", "States in an order"),
        Kind.COUNT: translate("library", "Whole numbers"),
        Kind.MEASUREMENT: translate("library", "Measurements with a unit"),
        Kind.RATIO: translate("library", "One length divided by another"),
    }[kind]


def column_words(column: Column) -> str:
    """What a column is taken for, in a few words."""
    if column.role is not Role.CHARACTER:
        return role_words(column.role)
    if column.kind is Kind.MEASUREMENT:
        text = translate("library", "Measurement in {unit}")
        return text.format(unit=column.unit or "?")
    if column.kind is Kind.COUNT:
        return translate("library", "Count")
    if column.kind is Kind.RATIO:
        return translate("library", "Ratio")
    if column.kind is Kind.ORDINAL:
        text = translate("library", "{n} states in order")
    else:
        text = translate("library", "{n} states")
    return text.format(n=len(column.states))
