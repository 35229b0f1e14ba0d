"""Everything the person can do, as values: for menus, keys and the palette."""

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QCoreApplication

translate = QCoreApplication.translate


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
    Command("plates", "Ctrl+B", Group.GO),
    Command("search", "Ctrl+F", Group.GO),
    Command("palette", "Ctrl+K", Group.GO),
    Command("photo", "Ctrl+M", Group.GO),
    Command("bench", "Ctrl+1", Group.GO),
    Command("records", "Ctrl+2", Group.GO),
    Command("drill", "Ctrl+3", Group.GO),
    Command("workshop", "Ctrl+4", Group.GO),
    Command("library", "Ctrl+5", Group.GO),
    Command("manual", "F1", Group.GO),
    Command("about", "", Group.GO),
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
        Group.CASE: translate("commands", "Case"),
        Group.EDIT: translate("commands", "Edit"),
        Group.GO: translate("commands", "Go"),
        Group.VIEW: translate("commands", "View"),
    }[group]


def _titles() -> dict[str, str]:
    return {
        "new_case": translate("commands", "New case"),
        "sample": translate("commands", "Sample case"),
        "next_case": translate("commands", "Next case"),
        "previous_case": translate("commands", "Previous case"),
        "copy_claim": translate("commands", "More animals with this label"),
        "leave_case": translate("commands", "Put the case away"),
        "rationale": translate("commands", "Write the rationale"),
        "menu": translate("commands", "Menu"),
        "quit": translate("commands", "Quit"),
        "undo": translate("commands", "Undo"),
        "redo": translate("commands", "Redo"),
        "label": translate("commands", "Write the label"),
        "unlabelled": translate("commands", "Go to the question"),
        "reasons": translate("commands", "Reasons behind the verdict"),
        "mixups": translate("commands", "What is sold under this label"),
        "next_area": translate("commands", "Next area"),
        "previous_area": translate("commands", "Previous area"),
        "couplets": translate("commands", "Change between couplets and free choice"),
        "compare": translate("commands", "Compare taxa"),
        "plates": translate("commands", "Parts of the animal"),
        "search": translate("commands", "Search the questions"),
        "palette": translate("commands", "Find anything"),
        "photo": translate("commands", "Measure or look on a photo"),
        "manual": translate("commands", "Manual"),
        "about": translate("commands", "About idkey"),
        "larger": translate("commands", "Larger text"),
        "smaller": translate("commands", "Smaller text"),
        "usual_size": translate("commands", "Usual text size"),
        "light": translate("commands", "Light colours"),
        "dark": translate("commands", "Dark colours"),
        "system": translate("commands", "Colours of the system"),
        "english": translate("commands", "English"),
        "german": translate("commands", "Deutsch"),
        "full_screen": translate("commands", "Full screen"),
        **_places(),
    }


def _places() -> dict[str, str]:
    return {
        "bench": translate("commands", "Bench"),
        "records": translate("commands", "Records"),
        "drill": translate("commands", "Drill"),
        "workshop": translate("commands", "Workshop"),
        "library": translate("commands", "Library"),
    }
