"""What every view is given: the look, the drawings, the language."""

from dataclasses import dataclass

from idkey.app.parts.pictures import Pictures
from idkey.app.parts.theme import Theme
from idkey.report.language import Language


@dataclass(frozen=True, slots=True)
class Desk:
    """The surroundings of a view.

    Attributes:
        theme: Colours, fonts, sizes.
        pictures: Drawings of states and taxa.
        language: Language of the sentences about a case.
    """

    theme: Theme
    pictures: Pictures
    language: Language
