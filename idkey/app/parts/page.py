"""What can stand in the middle of the bench."""

from enum import StrEnum


class Page(StrEnum):
    """What stands in the middle; the later ones lie over the question until one goes back."""

    START = "start"
    QUESTION = "question"
    WALK = "walk"
    QUESTIONS = "questions"
    REASONS = "reasons"
    TAXON = "taxon"
    COMPARISON = "comparison"
