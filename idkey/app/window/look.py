"""What the commands about colours and text size do."""

from collections.abc import Callable

from idkey.app.parts.theme import SCALES, Scheme, Theme


def look_slots(theme: Theme) -> dict[str, Callable[[], object]]:
    """What each command about the look does, by command."""
    return {
        "larger": lambda: _scale(theme, 1),
        "smaller": lambda: _scale(theme, -1),
        "usual_size": lambda: theme.choose(theme.scheme, 100),
        "light": lambda: theme.choose(Scheme.LIGHT, theme.scale),
        "dark": lambda: theme.choose(Scheme.DARK, theme.scale),
        "system": lambda: theme.choose(Scheme.SYSTEM, theme.scale),
    }


def _scale(theme: Theme, step: int) -> None:
    nearest = min(range(len(SCALES)), key=lambda n: abs(SCALES[n] - theme.scale))
    theme.choose(theme.scheme, SCALES[min(max(nearest + step, 0), len(SCALES) - 1)])
