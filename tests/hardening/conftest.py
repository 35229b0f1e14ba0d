"""The whole program, as the stories open it."""

from tests.stories.conftest import opens

__all__ = ["opens"]
