"""Colour as a number: sRGB and CIELAB (D65), the CIEDE2000 difference, a neutral reference.

Colours are arrays whose last axis holds three channels; all other axes are free, so one call
does one colour or a whole picture. sRGB runs from 0 to 1.

Source:
    sRGB curve and primaries: IEC 61966-2-1:1999. CIELAB: CIE 15:2004, 8.2.1, 2° observer.
    Difference: Sharma G., Wu W. & Dalal E.N. 2005, Color Res. Appl. 30(1): 21-30, eqs 2-22.
    Adaptation: the linear Bradford transform, Lam K.M. 1985, as in ICC.1:2022, annex E.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]

_TO_XYZ = np.array(
    [
        [0.4124564, 0.3575761, 0.1804375],
        [0.2126729, 0.7151522, 0.0721750],
        [0.0193339, 0.1191920, 0.9503041],
    ]
)
_FROM_XYZ = np.linalg.inv(_TO_XYZ)
_BRADFORD = np.array(
    [[0.8951, 0.2664, -0.1614], [-0.7502, 1.7135, 0.0367], [0.0389, -0.0685, 1.0296]]
)
WHITE_D65: Array = _TO_XYZ.sum(axis=1)
"""XYZ of the reference white: what the matrix makes of white, so greys come out without chroma."""

_KNEE = (6 / 29) ** 3
_25_TO_7 = 25.0**7


def rgb_of_hex(text: str) -> Array:
    """Channels of ``#rrggbb``, from 0 to 1.

    Raises:
        ValueError: `text` is not six hexadecimal digits after ``#``.
    """
    if len(text) != 7 or text[0] != "#":
        raise ValueError(f"{text!r} is not a colour; write it as #rrggbb")
    try:
        return np.frombuffer(bytes.fromhex(text[1:]), dtype=np.uint8) / 255.0
    except ValueError as err:
        raise ValueError(f"{text!r} is not a colour; write it as #rrggbb") from err


def hex_of_rgb(rgb: ArrayLike) -> str:
    """``#rrggbb`` of one colour; channels outside 0 to 1 are cut off."""
    red, green, blue = np.rint(np.clip(np.asarray(rgb, dtype=float), 0, 1) * 255).astype(int)
    return f"#{red:02x}{green:02x}{blue:02x}"


def linear_of_rgb(rgb: ArrayLike) -> Array:
    """Light that sRGB values stand for; 0 to 1."""
    value = np.asarray(rgb, dtype=float)
    low = value <= 0.04045
    return np.where(low, value / 12.92, ((np.where(low, 1.0, value) + 0.055) / 1.055) ** 2.4)


def rgb_of_linear(linear: ArrayLike) -> Array:
    """Values in sRGB of light; what lies outside 0 to 1 is cut off."""
    value = np.clip(np.asarray(linear, dtype=float), 0, 1)
    bent = 1.055 * value ** (1 / 2.4) - 0.055
    return np.asarray(np.where(value <= 0.0031308, value * 12.92, bent))


def lab_of_linear(linear: ArrayLike) -> Array:
    """CIELAB (D65) of linear light in sRGB primaries."""
    xyz = np.asarray(linear, dtype=float) @ _TO_XYZ.T / WHITE_D65
    bent = np.where(xyz > _KNEE, np.cbrt(xyz), xyz * (29 / 6) ** 2 / 3 + 4 / 29)
    x, y, z = bent[..., 0], bent[..., 1], bent[..., 2]
    return np.stack((116 * y - 16, 500 * (x - y), 200 * (y - z)), axis=-1)


def linear_of_lab(lab: ArrayLike) -> Array:
    """Linear light in sRGB primaries of CIELAB (D65); may leave 0 to 1 outside the gamut."""
    value = np.asarray(lab, dtype=float)
    y = (value[..., 0] + 16) / 116
    bent = np.stack((y + value[..., 1] / 500, y, y - value[..., 2] / 200), axis=-1)
    xyz = np.where(bent > 6 / 29, bent**3, 3 * (6 / 29) ** 2 * (bent - 4 / 29)) * WHITE_D65
    return np.asarray(xyz @ _FROM_XYZ.T)


def lab_of_rgb(rgb: ArrayLike) -> Array:
    """CIELAB (D65) of sRGB from 0 to 1."""
    return lab_of_linear(linear_of_rgb(rgb))


def rgb_of_lab(lab: ArrayLike) -> Array:
    """Colours in sRGB of CIELAB (D65); those outside the gamut are cut off per channel."""
    return rgb_of_linear(linear_of_lab(lab))


def lab_of_hex(text: str) -> Array:
    """CIELAB (D65) of ``#rrggbb``."""
    return lab_of_rgb(rgb_of_hex(text))


def neutralised(linear: ArrayLike, reference: ArrayLike, reflectance: float | None = None) -> Array:
    """Linear light as it would look with `reference` neutral under D65.

    Args:
        linear: Light to correct, in sRGB primaries.
        reference: Light of a grey or white thing in the same picture; no channel may be zero.
        reflectance: Reflectance of that thing (0.18 for a grey card); it then also sets the
            exposure. None leaves the luminance of the reference as it is.

    Returns:
        Linear light in sRGB primaries; a Bradford adaptation from the reference to D65.

    Raises:
        ValueError: The reference is too dark in some channel to correct by.
    """
    cone = _BRADFORD @ _TO_XYZ @ np.asarray(reference, dtype=float)
    if np.any(cone <= 1e-6):
        raise ValueError("the neutral reference is black or out of gamut; choose a lighter one")
    luminance = float(_TO_XYZ[1] @ np.asarray(reference, dtype=float)) / WHITE_D65[1]
    wanted = (_BRADFORD @ WHITE_D65) * (luminance if reflectance is None else reflectance)
    turn = _FROM_XYZ @ np.linalg.inv(_BRADFORD) @ np.diag(wanted / cone) @ _BRADFORD @ _TO_XYZ
    return np.asarray(np.asarray(linear, dtype=float) @ turn.T)


def ciede2000(first: ArrayLike, second: ArrayLike) -> Array:
    """CIEDE2000 difference of CIELAB colours, with kL = kC = kH = 1; shapes broadcast."""
    one, two = np.broadcast_arrays(np.asarray(first, float), np.asarray(second, float))
    mean_chroma = (np.hypot(one[..., 1], one[..., 2]) + np.hypot(two[..., 1], two[..., 2])) / 2
    stretch = 1 + 0.5 * (1 - np.sqrt(_share_of_25(mean_chroma)))
    chroma_1, hue_1 = _polar(one[..., 1] * stretch, one[..., 2])
    chroma_2, hue_2 = _polar(two[..., 1] * stretch, two[..., 2])
    grey = chroma_1 * chroma_2 == 0
    turn = np.where(grey, 0.0, _turn(hue_1, hue_2))
    hue = np.where(grey, hue_1 + hue_2, _mean_hue(hue_1, hue_2))
    chroma = (chroma_1 + chroma_2) / 2
    light = (one[..., 0] + two[..., 0]) / 2
    d_light = (two[..., 0] - one[..., 0]) / _weight_of_light(light)
    d_chroma = (chroma_2 - chroma_1) / (1 + 0.045 * chroma)
    d_hue = 2 * np.sqrt(chroma_1 * chroma_2) * _sin(turn / 2) / (1 + 0.015 * chroma * _hue(hue))
    cross = -_sin(60 * np.exp(-(((hue - 275) / 25) ** 2))) * 2 * np.sqrt(_share_of_25(chroma))
    total = d_light**2 + d_chroma**2 + d_hue**2 + cross * d_chroma * d_hue
    return np.asarray(np.sqrt(np.maximum(total, 0)))


def _share_of_25(chroma: Array) -> Array:
    return np.asarray(chroma**7 / (chroma**7 + _25_TO_7))


def _polar(a: Array, b: Array) -> tuple[Array, Array]:
    return np.hypot(a, b), np.degrees(np.arctan2(b, a)) % 360


def _turn(hue_1: Array, hue_2: Array) -> Array:
    step = hue_2 - hue_1
    return np.where(step > 180, step - 360, np.where(step < -180, step + 360, step))


def _mean_hue(hue_1: Array, hue_2: Array) -> Array:
    total = hue_1 + hue_2
    across = np.where(total < 360, (total + 360) / 2, (total - 360) / 2)
    return np.where(np.abs(hue_1 - hue_2) <= 180, total / 2, across)


def _weight_of_light(light: Array) -> Array:
    return np.asarray(1 + 0.015 * (light - 50) ** 2 / np.sqrt(20 + (light - 50) ** 2))


def _hue(hue: Array) -> Array:
    return np.asarray(
        1
        - 0.17 * _cos(hue - 30)
        + 0.24 * _cos(2 * hue)
        + 0.32 * _cos(3 * hue + 6)
        - 0.20 * _cos(4 * hue - 63)
    )


def _sin(degrees: Array) -> Array:
    return np.asarray(np.sin(np.radians(degrees)))


def _cos(degrees: Array) -> Array:
    return np.asarray(np.cos(np.radians(degrees)))
