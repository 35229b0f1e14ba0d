"""The style sheet of the window, made from a colour scheme and a text size."""

from collections.abc import Callable
from string import Template

from idkey.app.parts.colours import Colours

_SHEET = Template("""
* { outline: none; }
QToolTip { background: $raised; color: $ink; border: 1px solid $outline; padding: ${p4}px; }
QLabel { background: transparent; }
QLabel[rank="title"] { font-size: ${f22}px; font-weight: 600; }
QLabel[rank="question"] { font-size: ${f21}px; font-weight: 600; }
QLabel[rank="lead"] { font-size: ${f17}px; font-weight: 600; }
QLabel[rank="strong"] { font-weight: 600; }
QLabel[rank="soft"] { color: $soft; }
QLabel[rank="small"] { color: $soft; font-size: ${f12}px; }
QLabel[rank="overline"] { color: $soft; font-size: ${f12}px; font-weight: 600; }
QLabel[tone="hazard"] { color: $hazard; }
QLabel[tone="permit"] { color: $permit; }
QLabel[tone="doubt"] { color: $doubt; }
QLabel[tone="accent"] { color: $accent; }

QWidget[pane="ground"] { background: $ground; }
QWidget[pane="surface"] { background: $surface; }
QFrame[pane="card"] { background: $raised; border: 1px solid $line; border-radius: 10px; }
QLabel[pane="plate"] { background: $plate; border-radius: 8px; padding: ${p8}px; }
QFrame[pane="quiet"] { background: $surface; border: 1px solid $line; border-radius: 8px; }
QFrame[pane="hazard"] { background: $hazard_soft; border: 1px solid $hazard;
    border-radius: 8px; }
QFrame[pane="permit"] { background: $permit_soft; border: 1px solid $permit;
    border-radius: 8px; }
QFrame[pane="doubt"] { background: $doubt_soft; border: 1px solid $doubt; border-radius: 8px; }

QScrollArea, QScrollArea > QWidget > QWidget[pane="clear"] { background: transparent;
    border: none; }
QStackedWidget, QSplitter { background: transparent; }
QSplitter::handle { background: transparent; }

QPushButton { background: $raised; color: $ink; border: 1px solid $outline;
    border-radius: 7px; padding: ${p5}px ${p12}px; min-height: ${p22}px; }
QPushButton:hover { background: $accent_soft; }
QPushButton:pressed, QPushButton:checked { background: $accent_soft; border-color: $accent; }
QPushButton:disabled { color: $soft; border-color: $line; background: transparent; }
QPushButton:focus { border: 2px solid $accent; padding: ${p4}px ${p11}px; }
QPushButton[role="main"] { background: $accent; color: $on_accent; border-color: $accent;
    font-weight: 600; }
QPushButton[role="main"]:hover { background: $ink; color: $raised; border-color: $ink; }
QPushButton[role="main"]:disabled { background: $line; color: $soft; border-color: $line; }
QPushButton[role="main"]:focus { border: 2px solid $ink; }
QPushButton[role="quiet"], QToolButton { background: transparent; border: 1px solid transparent;
    border-radius: 7px; color: $ink; padding: ${p4}px ${p8}px; }
QPushButton[role="quiet"]:hover, QToolButton:hover { background: $accent_soft; }
QPushButton[role="quiet"]:checked, QToolButton:checked { background: $accent_soft;
    border-color: $accent; }
QPushButton[role="quiet"]:focus, QToolButton:focus { border: 2px solid $accent;
    padding: ${p3}px ${p7}px; }
QPushButton[role="link"] { background: transparent; border: 1px solid transparent;
    border-radius: 5px; color: $accent; padding: 1px ${p4}px; min-height: 0; text-align: left;
    text-decoration: underline; }
QPushButton[role="link"]:hover { background: $accent_soft; }
QPushButton[role="link"]:focus { border: 2px solid $accent; padding: 0px ${p3}px; }
QPushButton[role="segment"] { border-radius: 0; border-color: $outline; margin: 0 0 0 -1px;
    padding: ${p4}px ${p10}px; min-height: ${p18}px; }
QPushButton[role="segment"]:checked { background: $accent; color: $on_accent;
    border-color: $accent; }
QPushButton[role="segment"]:focus { border: 2px solid $accent; padding: ${p3}px ${p9}px; }
QPushButton[role="segment"]:checked:focus { border: 2px solid $ink; }
QPushButton[role="segment"][edge="first"] { border-top-left-radius: 7px;
    border-bottom-left-radius: 7px; margin: 0; }
QPushButton[role="segment"][edge="last"] { border-top-right-radius: 7px;
    border-bottom-right-radius: 7px; }
QToolButton::menu-indicator, QPushButton::menu-indicator { image: none; }

QLineEdit, QPlainTextEdit, QTextEdit, QDateEdit, QComboBox { background: $raised; color: $ink;
    border: 1px solid $outline; border-radius: 7px; padding: ${p4}px ${p8}px;
    selection-background-color: $accent; selection-color: $on_accent; }
QLineEdit { min-height: ${p20}px; }
QTextBrowser { background: transparent; border: 2px solid transparent; padding: ${p4}px; }
QTextBrowser:focus { border: 2px solid $accent; padding: ${p4}px; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QDateEdit:focus, QComboBox:focus {
    border: 2px solid $accent; padding: ${p3}px ${p7}px; }
QLineEdit[role="tag"] { background: transparent; color: $paper_ink; border: 1px solid transparent;
    border-bottom: 1px solid $paper_soft; border-radius: 0; font-size: ${f21}px;
    font-weight: 600; min-height: 0; padding: ${p2}px ${p2}px;
    placeholder-text-color: $paper_soft; }
QLineEdit[role="tagsmall"] { background: transparent; color: $paper_ink;
    border: 1px solid transparent; border-radius: 4px; font-size: ${f13}px; min-height: 0;
    padding: 1px ${p2}px; placeholder-text-color: $paper_soft; }
QLineEdit[role="tagsmall"]:hover { border-bottom: 1px solid $paper_soft; }
QLineEdit[role="tag"]:focus, QLineEdit[role="tagsmall"]:focus { border: 2px solid $paper_ink;
    border-radius: 4px; padding: ${p1}px ${p1}px; }

QCheckBox { spacing: ${p6}px; padding: 2px; border: 2px solid transparent; border-radius: 5px; }
QCheckBox:focus { border-color: $accent; }
QComboBox::drop-down { border: none; width: ${p20}px; }
QComboBox::down-arrow { image: none; }
QComboBox QAbstractItemView { background: $raised; color: $ink; border: 1px solid $outline;
    selection-background-color: $accent_soft; selection-color: $ink; }

QListView, QTreeView, QTableView { background: transparent; border: none; color: $ink; }
QListView:focus, QTreeView:focus { border: none; }
QHeaderView::section { background: $surface; color: $soft; border: none;
    border-bottom: 1px solid $line; padding: ${p4}px ${p8}px; font-weight: 600; }
QMenu { background: $raised; color: $ink; border: 1px solid $outline; padding: ${p4}px; }
QMenu::item { padding: ${p6}px ${p24}px ${p6}px ${p12}px; border-radius: 5px; }
QMenu::item:selected { background: $accent_soft; color: $ink; }
QMenu::item:disabled { color: $soft; }
QMenu::separator { height: 1px; background: $line; margin: ${p4}px ${p8}px; }

QScrollBar:vertical { background: transparent; width: 12px; margin: 2px; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 2px; }
QScrollBar::handle { background: $outline; border-radius: 4px; min-height: 32px;
    min-width: 32px; }
QScrollBar::handle:hover { background: $soft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
""")

_LENGTHS = (1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 18, 20, 22, 24)
_FONTS = (12, 13, 17, 21, 22)


def stylesheet(colours: Colours, px: Callable[[float], int]) -> str:
    """The style sheet of the whole application.

    Args:
        colours: The scheme.
        px: Scales a length given for 100 % text.
    """
    named = {name: getattr(colours, name) for name in colours.__slots__}
    named |= {f"p{length}": str(px(length)) for length in _LENGTHS}
    named |= {f"f{height}": str(px(height)) for height in _FONTS}
    return _SHEET.substitute(named)
