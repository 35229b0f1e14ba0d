"""Everything the person can do, as values: for menus, keys and the palette."""

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication


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
        english: Its title in English; `title` says it in the language of the window.
        key: Shortcut; empty for none.
        group: Where it belongs.
    """

    id: str
    english: str
    key: str
    group: Group

    @property
    def title(self) -> str:
        """The title in the language of the window."""
        return QCoreApplication.translate("commands", self.english)


_N = QT_TRANSLATE_NOOP

COMMANDS = (
    Command("new_case", _N("commands", "New case"), "Ctrl+N", Group.CASE),
    Command("sample", _N("commands", "Sample case"), "F2", Group.CASE),
    Command("next_case", _N("commands", "Next case"), "Ctrl+PgDown", Group.CASE),
    Command("previous_case", _N("commands", "Previous case"), "Ctrl+PgUp", Group.CASE),
    Command("copy_claim", _N("commands", "More animals with this label"), "Ctrl+D", Group.CASE),
    Command("leave_case", _N("commands", "Put the case away"), "Ctrl+W", Group.CASE),
    Command("rationale", _N("commands", "Write the rationale"), "Ctrl+R", Group.CASE),
    Command("quit", _N("commands", "Quit"), "Ctrl+Q", Group.CASE),
    Command("undo", _N("commands", "Undo"), "Ctrl+Z", Group.EDIT),
    Command("redo", _N("commands", "Redo"), "Ctrl+Shift+Z", Group.EDIT),
    Command("label", _N("commands", "Write the label"), "Ctrl+L", Group.GO),
    Command("unlabelled", _N("commands", "Go to the question"), "F3", Group.GO),
    Command("reasons", _N("commands", "Reasons behind the verdict"), "F4", Group.GO),
    Command("mixups", _N("commands", "What is sold under this label"), "F5", Group.GO),
    Command("next_area", _N("commands", "Next area"), "F6", Group.GO),
    Command("previous_area", _N("commands", "Previous area"), "Shift+F6", Group.GO),
    Command("couplets", _N("commands", "Change between couplets and free choice"), "F7", Group.GO),
    Command("compare", _N("commands", "Compare taxa"), "F8", Group.GO),
    Command("search", _N("commands", "Search the questions"), "Ctrl+F", Group.GO),
    Command("palette", _N("commands", "Find anything"), "Ctrl+K", Group.GO),
    Command("larger", _N("commands", "Larger text"), "Ctrl++", Group.VIEW),
    Command("smaller", _N("commands", "Smaller text"), "Ctrl+-", Group.VIEW),
    Command("usual_size", _N("commands", "Usual text size"), "Ctrl+0", Group.VIEW),
    Command("light", _N("commands", "Light colours"), "", Group.VIEW),
    Command("dark", _N("commands", "Dark colours"), "", Group.VIEW),
    Command("system", _N("commands", "Colours of the system"), "", Group.VIEW),
    Command("english", _N("commands", "English"), "", Group.VIEW),
    Command("german", _N("commands", "Deutsch"), "", Group.VIEW),
    Command("full_screen", _N("commands", "Full screen"), "F11", Group.VIEW),
)

_GROUPS = {
    Group.CASE: _N("commands", "Case"),
    Group.EDIT: _N("commands", "Edit"),
    Group.GO: _N("commands", "Go"),
    Group.VIEW: _N("commands", "View"),
}


def group_title(group: Group) -> str:
    """The title of a group in the language of the window."""
    return QCoreApplication.translate("commands", _GROUPS[group])
