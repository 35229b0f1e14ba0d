"""The normal distribution on arrays."""

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

_A = (0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429)
_P = 0.3275911
_ROOT_TAU = 2.5066282746310002


def below(z: Array) -> Array:
    """P(Z <= z) of a standard normal, absolute error under 1e-7.

    Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, formula 7.1.26.
    """
    x = np.abs(z) / np.sqrt(2.0)
    t = 1.0 / (1.0 + _P * x)
    poly = t * (_A[0] + t * (_A[1] + t * (_A[2] + t * (_A[3] + t * _A[4]))))
    tail = 0.5 * poly * np.exp(-x * x)
    return np.asarray(np.where(z > 0, 1.0 - tail, tail))


def density(z: Array) -> Array:
    """Density of a standard normal at `z`."""
    return np.asarray(np.exp(-0.5 * z * z) / _ROOT_TAU)
