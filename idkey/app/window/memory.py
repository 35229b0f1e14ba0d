"""What the window remembers of itself: size, colours, text size, language."""

import contextlib
import json
from dataclasses import asdict, dataclass
from pathlib import Path

from idkey.places import keep_private

FILE = "window.json"


@dataclass(frozen=True, slots=True, kw_only=True)
class WindowMemory:
    """How the window was left.

    Attributes:
        geometry: Size and place as Qt saves them, in base64; empty the first time.
        scheme: ``"system"``, ``"light"`` or ``"dark"``.
        scale: Text size in per cent.
        language: Code of the language; empty takes that of the system.
    """

    geometry: str = ""
    scheme: str = "system"
    scale: int = 100
    language: str = ""


def remembered(folder: Path) -> WindowMemory:
    """What was kept in `folder`; the defaults when nothing there can be read."""
    try:
        kept = json.loads((folder / FILE).read_text("utf-8"))
        return WindowMemory(
            geometry=str(kept["geometry"]),
            scheme=str(kept["scheme"]),
            scale=int(kept["scale"]),
            language=str(kept["language"]),
        )
    except (OSError, ValueError, KeyError, TypeError):
        return WindowMemory()


def remember(folder: Path, memory: WindowMemory) -> None:
    """Keep `memory` in `folder`; a window that cannot be remembered is no reason to stop."""
    with contextlib.suppress(OSError):
        keep_private(folder / FILE, json.dumps(asdict(memory)).encode())
