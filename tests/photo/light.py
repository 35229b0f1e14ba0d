"""Patches under lights of the CIE, from spectra: what a camera set to daylight makes of them."""

from functools import lru_cache
from pathlib import Path

import numpy as np
from PIL import Image

from idkey.engine.colour import lab_of_linear, lab_of_rgb, rgb_of_hex, rgb_of_linear

TABLE = np.loadtxt(Path(__file__).with_name("cie_tables.csv"), delimiter=",", comments="#")
NM, OBSERVER = TABLE[:, 0], TABLE[:, 1:4]
LIGHTS = {"A": TABLE[:, 4], "D65": TABLE[:, 5], "F2": TABLE[:, 6]}

_TO_RGB = np.linalg.inv(
    [
        [0.4124564, 0.3575761, 0.1804375],
        [0.2126729, 0.7151522, 0.0721750],
        [0.0193339, 0.1191920, 0.9503041],
    ]
)
"""IEC 61966-2-1:1999, sRGB primaries."""

_SENSORS = np.stack(
    [np.exp(-0.5 * ((NM - peak) / wide) ** 2) for peak, wide in ((600, 38), (540, 40), (460, 30))],
    axis=1,
)
"""A camera that does not see as people do: three bells, made up."""


def white(light: str) -> tuple[float, float]:
    """Chromaticity of a light."""
    xyz = LIGHTS[light] @ OBSERVER
    return float(xyz[0] / xyz.sum()), float(xyz[1] / xyz.sum())


@lru_cache
def reflectance(colour: str) -> np.ndarray:
    """A smooth reflectance that looks like `colour` in daylight.

    Source: Jakob & Hanika 2019, Comput. Graph. Forum 38(2): 147-155, the model (from memory).
    """
    goal, x = lab_of_rgb(rgb_of_hex(colour)), (NM - 580.0) / 200.0
    basis = np.stack([x**2, x, np.ones_like(x)], axis=1)
    guess = np.array([0.0, 0.0, -2.0])
    for _ in range(60):
        off = lab_of_linear(_seen(_curve(basis @ guess), "D65")) - goal
        slope = np.empty((3, 3))
        for axis in range(3):
            step = guess.copy()
            step[axis] += 1e-4
            moved = lab_of_linear(_seen(_curve(basis @ step), "D65")) - goal
            slope[:, axis] = (moved - off) / 1e-4
        change = np.linalg.lstsq(slope, -off, rcond=None)[0]
        guess += change * min(1.0, 2.0 / max(float(np.abs(change).max()), 1e-9))
    return _curve(basis @ guess)


def grey(share: float) -> np.ndarray:
    """A reflectance that is the same everywhere."""
    return np.full(len(NM), share)


def photographed(
    patch: np.ndarray,
    neutral: np.ndarray,
    light: str,
    *,
    people: bool = True,
    exposure: float = 0.55,
) -> Image.Image:
    """A picture with the patch on the left and the neutral thing on the right.

    Args:
        patch: Reflectance of the patch.
        neutral: Reflectance of the neutral thing.
        light: Name of the light.
        people: Whether the camera sees as people do, or as the made-up one.
        exposure: Share of full light; at 0.55 white paper under a light bulb is not blown out.
    """
    camera = _seen if people else _sensed
    picture = np.empty((96, 192, 3))
    picture[:, :96] = rgb_of_linear(exposure * camera(patch, light)) * 255
    picture[:, 96:] = rgb_of_linear(exposure * camera(neutral, light)) * 255
    picture += np.random.default_rng(7).normal(0, 2.0, picture.shape)
    return Image.fromarray(picture.clip(0, 255).round().astype(np.uint8))


def _curve(x: np.ndarray) -> np.ndarray:
    return 0.5 + x / (2 * np.sqrt(1 + x**2))


def _seen(shown: np.ndarray, light: str) -> np.ndarray:
    power = LIGHTS[light] / (LIGHTS[light] @ OBSERVER[:, 1])
    return (power * shown) @ OBSERVER @ _TO_RGB.T


def _sensed(shown: np.ndarray, light: str) -> np.ndarray:
    """Through the made-up sensors, set to daylight by three grey-neutral gains and a matrix."""
    power = LIGHTS[light] / (LIGHTS[light] @ OBSERVER[:, 1])
    return (power * shown) @ _SENSORS @ _daylight_matrix()


@lru_cache
def _daylight_matrix() -> np.ndarray:
    """What turns the sensors' answers into sRGB best, for smooth reflectances in daylight."""
    power = LIGHTS["D65"] / (LIGHTS["D65"] @ OBSERVER[:, 1])
    some = np.array(
        [
            _curve(a * np.cos((NM - 380) / 400 * np.pi * k + p) + c)
            for a in (0.5, 1.5)
            for k in (0.5, 1.0, 1.5)
            for p in (0.0, 1.6, 3.1, 4.7)
            for c in (-1.0, 0.0, 1.0)
        ]
    )
    sensed, wanted = (power * some) @ _SENSORS, (power * some) @ OBSERVER @ _TO_RGB.T
    return np.linalg.lstsq(sensed, wanted, rcond=None)[0]
