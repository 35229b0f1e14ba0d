"""How the matrix is shown, and what is looked for in it."""

from collections.abc import Iterable

from PySide6.QtWidgets import QCheckBox, QLineEdit, QSizePolicy

from idkey.app.parts.choice import Choice
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.segments import Segments
from idkey.app.parts.theme import Theme
from idkey.app.workshop.matrix_search import Sought


class MatrixTools(FlowRow):
    """Words or shapes, which cells, in which order, and a field to find words.

    Args:
        theme: The look.

    Attributes:
        words: Whether cells show words; else only shapes.
        which: Which cells to look for.
        regions: Whether characters of one body region stand side by side.
        finder: Where one types what to find.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__(gap=8)
        name = self.tr("How cells are shown")
        self.words = Segments(name, (True, False), self._mode_title)
        self.which = Choice(self.tr("Which cells to look for"), theme)
        self._offer(one for one in Sought if one is not Sought.PAIR)
        self.regions = QCheckBox(self.tr("By region"))
        self.regions.setToolTip(self.tr("Characters of one body region stand side by side"))
        self.finder = QLineEdit()
        self.finder.setAccessibleName(self.tr("Find a word in the matrix"))
        self.finder.setPlaceholderText(self.tr("Find (Ctrl+F)"))
        self.finder.setClearButtonEnabled(True)
        self.finder.setFixedWidth(theme.px(170))
        policy = self.sizePolicy()
        policy.setVerticalPolicy(QSizePolicy.Policy.Minimum)  # rows come and go with the width
        self.setSizePolicy(policy)
        for tool in (self.words, self.which, self.regions, self.finder):
            self.add(tool)

    def show_pair(self) -> None:
        """Offer to see two taxa only, and choose that."""
        self._offer(Sought)
        self.which.choose(Sought.PAIR)

    def _offer(self, sought: Iterable[Sought]) -> None:
        self.which.offer((self.title(one), one) for one in sought)

    @property
    def sought(self) -> Sought:
        """Which cells to look for."""
        found: Sought = self.which.chosen
        return found

    def title(self, sought: Sought) -> str:
        """Which cells these are, in words."""
        return {
            Sought.ALL: self.tr("All cells"),
            Sought.EMPTY: self.tr("Empty"),
            Sought.MEMORY: self.tr("From memory"),
            Sought.UNSOURCED: self.tr("Without a source"),
            Sought.WRONG: self.tr("With a mistake"),
            Sought.PAIR: self.tr("Two alike"),
        }[sought]

    def _mode_title(self, words: bool) -> str:
        return self.tr("Words") if words else self.tr("Overview")
