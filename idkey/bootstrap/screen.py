"""Whether a window can be shown, and whether somebody sits at a terminal."""

import ctypes
import os
import sys
from pathlib import Path


def has_display() -> bool:
    """Whether a display answers; a name alone is not enough, for Qt aborts without one."""
    if not sys.platform.startswith("linux"):
        return True
    return _wayland_answers() or _x11_answers()


def has_terminal() -> bool:
    """Whether questions reach a person and answers come back."""
    return all(stream is not None and stream.isatty() for stream in (sys.stdin, sys.stdout))


def _wayland_answers() -> bool:
    name = os.environ.get("WAYLAND_DISPLAY", "")
    return bool(name) and (Path(os.environ.get("XDG_RUNTIME_DIR", "/")) / name).exists()


def _x11_answers() -> bool:
    if not os.environ.get("DISPLAY"):
        return False
    try:
        x11 = ctypes.CDLL("libX11.so.6")
    except OSError:
        return True  # the check of system libraries will say so in words
    x11.XOpenDisplay.restype = ctypes.c_void_p
    opened = x11.XOpenDisplay(None)
    if opened:
        x11.XCloseDisplay(ctypes.c_void_p(opened))
    return bool(opened)
