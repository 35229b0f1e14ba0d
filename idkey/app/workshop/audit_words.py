"""How many mistakes and weaknesses a key has, in words."""

from PySide6.QtCore import QCoreApplication

from idkey.app.workshop.editing import Editing
from idkey.formats.problem import Severity

translate = QCoreApplication.translate


def audit_counts(editing: Editing) -> str:
    """Errors, warnings and weaknesses counted; says so when they are still being looked for."""
    if editing.checking and not editing.problems and not editing.remarks:
        return translate("audit", "Looking for mistakes …")
    errors = sum(problem.severity is Severity.ERROR for problem in editing.problems)
    warnings = len(editing.problems) - errors
    parts = [
        _many(errors, translate("audit", "1 error"), translate("audit", "{n} errors")),
        _many(warnings, translate("audit", "1 warning"), translate("audit", "{n} warnings")),
        _weaknesses(editing, errors),
    ]
    text = " · ".join(part for part in parts if part)
    if not text:
        text = translate("audit", "No mistakes, no weakness known")
    return f"{text} …" if editing.checking else text


def _weaknesses(editing: Editing, errors: int) -> str:
    if errors:
        return ""
    one, many = translate("audit", "1 weakness"), translate("audit", "{n} weaknesses")
    return _many(len(editing.remarks), one, many)


def _many(number: int, one: str, many: str) -> str:
    if not number:
        return ""
    return one if number == 1 else many.format(n=number)
