"""The manual, read inside the program and without a network."""

from pathlib import Path
from typing import Any

from PySide6.QtCore import QByteArray, Qt, QUrl, Slot
from PySide6.QtGui import QDesktopServices, QImage, QTextCursor, QTextDocument
from PySide6.QtWidgets import QDialog, QHBoxLayout, QTextBrowser, QVBoxLayout, QWidget

from idkey.app.parts.captions import button
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import fit

FIRST = "index.md"
"""Page the manual opens with."""


class ManualPage(QTextBrowser):
    """A page whose pictures are as wide as fits.

    Args:
        room: Most a picture may be wide, in pixels.
    """

    def __init__(self, room: int) -> None:
        super().__init__()
        self._room = room

    def loadResource(self, kind: int, name: QUrl | str) -> Any:
        """What a page names, with pictures made smaller."""
        found = super().loadResource(kind, name)
        image = QImage.fromData(found) if isinstance(found, QByteArray) else QImage()
        if kind != QTextDocument.ResourceType.ImageResource or image.width() <= self._room:
            return found
        return image.scaledToWidth(self._room, Qt.TransformationMode.SmoothTransformation)


class HelpView(QDialog):
    """The pages of the manual, with a way back.

    Args:
        folder: Folder of the manual.
        desk: Look, drawings, language.
        parent: Owner.
    """

    def __init__(self, folder: Path, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._folder = folder.resolve()
        self.setWindowTitle(self.tr("Manual"))
        fit(self, (desk.theme.px(820), desk.theme.px(680)), parent)
        self.text = ManualPage(desk.theme.px(720))
        self.text.setOpenLinks(False)
        self.text.setAccessibleName(self.tr("Manual"))
        self.text.document().setDocumentMargin(desk.theme.px(18))
        self.contents = button(self.tr("Contents"), "quiet")
        self.back = button(self.tr("Back"), "quiet")
        row = QHBoxLayout()
        row.addWidget(self.contents)
        row.addWidget(self.back)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.addLayout(row)
        column.addWidget(self.text, 1)
        self.contents.clicked.connect(self._on_contents_clicked)
        self.back.clicked.connect(self._on_back_clicked)
        self.back.setEnabled(False)
        self.text.backwardAvailable.connect(self.back.setEnabled)
        self.text.anchorClicked.connect(self._on_text_anchor_clicked)
        self.show_page(FIRST)

    @property
    def page(self) -> str:
        """The page on the screen, as its path below the folder of the manual."""
        shown = Path(self.text.source().toLocalFile())
        return shown.relative_to(self._folder).as_posix()

    def show_page(self, page: str) -> None:
        """Show a page.

        Args:
            page: Path below the folder of the manual, such as ``"tutorial.md"``.
        """
        self._show(QUrl.fromLocalFile(str(self._folder / page)))

    def _show(self, url: QUrl) -> None:
        self.text.setSource(url, QTextDocument.ResourceType.MarkdownResource)
        self._give_air()

    def _give_air(self) -> None:
        """Set headings and paragraphs apart: Markdown comes without margins."""
        block = self.text.document().begin()
        while block.isValid():
            level = block.blockFormat().headingLevel()
            if level or not (block.textList() or QTextCursor(block).currentTable()):
                spaced = block.blockFormat()
                spaced.setTopMargin(18 if level > 1 else 4)
                spaced.setBottomMargin(6)
                QTextCursor(block).setBlockFormat(spaced)
            block = block.next()

    @Slot()
    def _on_contents_clicked(self) -> None:
        self.show_page(FIRST)

    @Slot()
    def _on_back_clicked(self) -> None:
        self.text.backward()
        self._give_air()

    @Slot(QUrl)
    def _on_text_anchor_clicked(self, url: QUrl) -> None:
        if url.scheme() in {"http", "https"}:
            QDesktopServices.openUrl(url)  # the person's own browser goes there
            return
        target = self.text.source().resolved(url)
        file = Path(target.toLocalFile()).resolve()
        if file.suffix == ".md" and file.is_relative_to(self._folder) and file.is_file():
            self._show(QUrl.fromLocalFile(str(file)))
