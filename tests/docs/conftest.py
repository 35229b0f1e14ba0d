"""A desk, as the windows have it."""

from tests.app.conftest import desk, pictures, theme

__all__ = ["desk", "pictures", "theme"]
