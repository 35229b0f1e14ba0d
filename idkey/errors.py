"""The error a person can act on, and the stop request."""


class IdKeyError(Exception):
    """Something a person can mend.

    Attributes:
        problem: What is wrong, as one sentence that names the place.
        remedy: What to do about it, as one sentence.
    """

    def __init__(self, problem: str, remedy: str = "") -> None:
        super().__init__(f"{problem} {remedy}".strip())
        self.problem = problem
        self.remedy = remedy


class Stopped(Exception):  # noqa: N818 - a wish of the user, not an error
    """The person asked the running work to stop."""
