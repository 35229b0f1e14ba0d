"""A page to read in the middle of the bench, with a way back."""

from PySide6.QtCore import Qt, QUrl, Signal, Slot
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QFrame, QLabel, QTextBrowser, QVBoxLayout, QWidget

from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import beside
from idkey.app.parts.theme import Theme

_STYLE = """
body {{ color: {ink}; }}
.head {{ font-size: {h2}px; font-weight: 600; margin-top: {gap}px; margin-bottom: 4px; }}
p {{ margin-top: 2px; margin-bottom: 6px; }}
li {{ margin-bottom: 3px; }}
a {{ color: {accent}; text-decoration: underline; }}
.soft {{ color: {soft}; }}
.hazard {{ color: {hazard}; font-weight: 600; }}
.permit {{ color: {permit}; font-weight: 600; }}
.doubt {{ color: {doubt}; }}
.accent {{ color: {accent}; }}
td {{ padding: 3px 16px 3px 0; vertical-align: top; }}
"""


def page_style(theme: Theme) -> str:
    """The style sheet of a page of text."""
    colours = {name: getattr(theme.colours, name) for name in theme.colours.__slots__}
    return _STYLE.format(**colours, h2=theme.px(15), gap=theme.px(14))


def prose_page(name: str, theme: Theme) -> QTextBrowser:
    """A page of text without a frame, for pieces of `idkey.app.parts.prose`.

    Args:
        name: What it is, for readers that speak.
        theme: The look.
    """
    made = QTextBrowser()
    made.setOpenLinks(False)
    made.setFrameShape(QFrame.Shape.NoFrame)
    made.setAccessibleName(name)
    made.document().setDefaultStyleSheet(page_style(theme))
    made.document().setIndentWidth(theme.px(16))
    return made


class Sheet(QFrame):
    """A heading, a text with links, and a way back.

    Args:
        desk: Look, drawings, language.

    Signals:
        left(): Back to the question.
        linked(kind: str, name: str): A link was followed, such as ("character", id).
    """

    left = Signal()
    linked = Signal(str, str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self.desk = desk
        self._back = KeyButton(self.tr("Back"), "Esc", desk.theme, "quiet")
        self.title = caption(rank="title")
        self.title.setTextFormat(Qt.TextFormat.RichText)
        self.picture = QLabel()
        self.picture.setProperty("pane", "plate")
        self.picture.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.picture.hide()
        self.text = prose_page(self.tr("Text"), desk.theme)
        self.heading = beside(desk.theme)
        self.heading.setSpacing(12)
        self.heading.addWidget(self.title, 1)
        self.heading.addWidget(self._back, 0, Qt.AlignmentFlag.AlignTop)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(20, 14, 12, 12)
        self.column.setSpacing(8)
        self.column.addLayout(self.heading)
        self.column.addWidget(self.picture)
        self.column.addWidget(self.text, 1)
        self._back.clicked.connect(self._on_back_clicked)
        self.text.anchorClicked.connect(self._on_text_anchor_clicked)

    def add_action(self, widget: QWidget) -> None:
        """Put a button beside the way back."""
        self.heading.insertWidget(self.heading.count() - 1, widget, 0, Qt.AlignmentFlag.AlignTop)
        self.setTabOrder(self._back, widget)  # what is last in the order cannot go before
        self.setTabOrder(widget, self._back)
        self.setTabOrder(self._back, self.text)

    def show_html(self, html: str) -> None:
        """Show a text; the place where one reads is kept when it is the same page."""
        place = self.text.verticalScrollBar().value()
        self.text.setHtml(f"<body>{html}</body>")
        self.text.verticalScrollBar().setValue(place)

    def show_picture(self, picture: QPixmap | None) -> None:
        """Show a picture above the text; None for none."""
        self.picture.setVisible(picture is not None)
        if picture is not None:
            self.picture.setPixmap(picture)
            room = 2 * self.desk.theme.px(8)
            self.picture.setFixedHeight(round(picture.deviceIndependentSize().height()) + room)

    @Slot()
    def _on_back_clicked(self) -> None:
        self.left.emit()

    @Slot(QUrl)
    def _on_text_anchor_clicked(self, url: QUrl) -> None:
        kind, _, name = url.toString().partition(":")
        self.linked.emit(kind, name)
