"""Everything the person can do, as values: for menus, keys and the palette."""

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QCoreApplication

_tr = QCoreApplication.translate


class Group(StrEnum):
    """Where a command belongs."""

    CASE = "case"
    EDIT = "edit"
    GO = "go"
    VIEW = "view"


@dataclass(frozen=True, slots=True)
class Command:
    """One thing to do.

    Attributes:
        id: Stable name.
        key: Shortcut; empty for none.
        group: Where it belongs.
    """

    id: str
    key: str
    group: Group

    @property
    def title(self) -> str:
        """What it is called in the language of the window."""
        return _titles()[self.id]


COMMANDS = (
    Command("new_case", "Ctrl+N", Group.CASE),
    Command("sample", "F2", Group.CASE),
    Command("next_case", "Ctrl+PgDown", Group.CASE),
    Command("previous_case", "Ctrl+PgUp", Group.CASE),
    Command("copy_claim", "Ctrl+D", Group.CASE),
    Command("leave_case", "Ctrl+W", Group.CASE),
    Command("rationale", "Ctrl+R", Group.CASE),
    Command("quit", "Ctrl+Q", Group.CASE),
    Command("undo", "Ctrl+Z", Group.EDIT),
    Command("redo", "Ctrl+Shift+Z", Group.EDIT),
    Command("label", "Ctrl+L", Group.GO),
    Command("unlabelled", "F3", Group.GO),
    Command("reasons", "F4", Group.GO),
    Command("mixups", "F5", Group.GO),
    Command("next_area", "F6", Group.GO),
    Command("previous_area", "Shift+F6", Group.GO),
    Command("couplets", "F7", Group.GO),
    Command("compare", "F8", Group.GO),
    Command("search", "Ctrl+F", Group.GO),
    Command("palette", "Ctrl+K", Group.GO),
    Command("menu", "F10", Group.GO),
    Command("larger", "Ctrl++", Group.VIEW),
    Command("smaller", "Ctrl+-", Group.VIEW),
    Command("usual_size", "Ctrl+0", Group.VIEW),
    Command("light", "", Group.VIEW),
    Command("dark", "", Group.VIEW),
    Command("system", "", Group.VIEW),
    Command("english", "", Group.VIEW),
    Command("german", "", Group.VIEW),
    Command("full_screen", "F11", Group.VIEW),
)
"""All commands, in the order of the menu."""


def group_title(group: Group) -> str:
    """The title of a group in the language of the window."""
    return {
        Group.CASE: _tr("commands", "Case"),
        Group.EDIT: _tr("commands", "Edit"),
        Group.GO: _tr("commands", "Go"),
        Group.VIEW: _tr("commands", "View"),
    }[group]


def _titles() -> dict[str, str]:
    return {
        "new_case": _tr("commands", "New case"),
        "sample": _tr("commands", "Sample case"),
        "next_case": _tr("commands", "Next case"),
        "previous_case": _tr("commands", "Previous case"),
        "copy_claim": _tr("commands", "More animals with this label"),
        "leave_case": _tr("commands", "Put the case away"),
        "rationale": _tr("commands", "Write the rationale"),
        "menu": _tr("commands", "Menu"),
        "quit": _tr("commands", "Quit"),
        "undo": _tr("commands", "Undo"),
        "redo": _tr("commands", "Redo"),
        "label": _tr("commands", "Write the label"),
        "unlabelled": _tr("commands", "Go to the question"),
        "reasons": _tr("commands", "Reasons behind the verdict"),
        "mixups": _tr("commands", "What is sold under this label"),
        "next_area": _tr("commands", "Next area"),
        "previous_area": _tr("commands", "Previous area"),
        "couplets": _tr("commands", "Change between couplets and free choice"),
        "compare": _tr("commands", "Compare taxa"),
        "search": _tr("commands", "Search the questions"),
        "palette": _tr("commands", "Find anything"),
        "larger": _tr("commands", "Larger text"),
        "smaller": _tr("commands", "Smaller text"),
        "usual_size": _tr("commands", "Usual text size"),
        "light": _tr("commands", "Light colours"),
        "dark": _tr("commands", "Dark colours"),
        "system": _tr("commands", "Colours of the system"),
        "english": _tr("commands", "English"),
        "german": _tr("commands", "Deutsch"),
        "full_screen": _tr("commands", "Full screen"),
    }
