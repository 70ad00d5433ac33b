"""Friction: arc of contact, load shared by asperities and film, mixed friction at a fill."""

from __future__ import annotations

from typing import Any

import numpy as np
from scipy.special import erfc

NORMAL = 1.0 / np.sqrt(2.0 * np.pi)
AT_ZERO, LOG_AT_ZERO = 0.6166342189968439, -0.4834792688051993
TAIL_START = 0.2820350691424015
LEAST_FRICTION = 0.002

# own fits of the core to ln F_5/2 of Greenwood and Tripp: H = 0 to 6, and beyond
SERIES = np.polynomial.chebyshev.cheb2poly([
    -10.51307257768847, -11.78226607037335, -1.8293763116813, -0.0668237471601808, 0.009096582501271648,
    -0.0008314051130435976, -1.565182627069436e-5, 2.618323954679162e-5, -5.894913003966666e-6, 5.784646095299146e-7,
    7.200393985324176e-8, -4.277529007482627e-8, 8.791075800116881e-9, -6.126532618086223e-10, -2.168972353037591e-10,
    9.016631007684216e-11, -1.612320023539211e-11,
])  # fmt: skip
TAIL = np.polynomial.chebyshev.cheb2poly([
    -0.0998446707727, -0.0969356286363, 0.00276321952359, -0.000136296721169, 8.79081154903e-6, -6.71180938862e-7,
    5.78086619365e-8, -5.4647453912e-9, 5.57242982459e-10, -6.05768872261e-11, 6.9613255009e-12,
])  # fmt: skip


def tangent_squared(stiffness: Any) -> Any:
    """tan² of a quarter of the arc of contact: Newton from above, two or three rounds for all rows."""
    k = np.pi * stiffness
    x = 4.0 / (1.0 + k + np.sqrt((1.0 + k) * (1.0 + k) + 8.0 * (1.5 + k)))
    for _ in range(30):
        value = 2.0 - np.log1p(x) - 2.0 * x * x - k * x * (1.0 + x)
        slope = -1.0 / (1.0 + x) - 4.0 * x - k * (1.0 + 2.0 * x)
        step = value / slope
        x = x - step
        if not (np.abs(step) >= 1e-6 * x).any():
            break
    return x


def boundary_friction(fill: Any, dry: Any, boundary: Any, boundary_fill: Any) -> Any:
    return dry + (boundary - dry) * np.expm1(-fill / boundary_fill) / np.expm1(-1.0 / boundary_fill)


def value_and_slope(powers: np.ndarray, t: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    value, slope = np.full_like(t, powers[-1]), np.zeros_like(t)
    for coefficient in powers[-2::-1]:
        slope *= t
        slope += value
        value *= t
        value += coefficient
    return value, slope


def log_asperity_integral(height: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    value, slope = value_and_slope(SERIES, (np.minimum(height, 6.0) - 3.0) / 3.0)
    slope /= 3.0
    far = height > 6.0
    if far.any():
        h = height[far]
        z = 36.0 / (h * h)
        tail, tail_slope = value_and_slope(TAIL, 2.0 * z - 1.0)
        value[far] = TAIL_START - 0.5 * h * h - 3.5 * np.log(h) + tail
        slope[far] = -h - 3.5 / h - 4.0 * z / h * tail_slope
    return value, slope


def mean_gap(height: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    below = 1.0 - 0.5 * erfc(height * np.sqrt(0.5))
    return height * below + NORMAL * np.exp(-0.5 * height * height), below


def height_apart(film: np.ndarray, pressure: np.ndarray, known: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Height of surfaces held apart and what asperities carry there; Newton on the logarithm of what both carry.

    It starts from the height that was found for about the same contact before, where there is one.
    """
    s = np.sqrt(np.maximum(LOG_AT_ZERO - np.log(pressure), 0.0))
    by_asperities = s * (s * (0.659197 + s * (-0.126893 + s * 0.00901986)) - 0.00853673) - 0.00149474
    by_film = np.where(film > NORMAL, film - NORMAL * NORMAL / film, 0.0)
    height = np.where(np.isnan(known), np.maximum(np.maximum(by_film, by_asperities), 0.0), known)
    heights, shares, rows = height.copy(), np.zeros_like(height), np.arange(len(height))
    low, high = np.zeros_like(height), 2.0 * film + 40.0
    for _ in range(100):
        ln, ln_slope = log_asperity_integral(height)
        gap, gap_slope = mean_gap(height)
        pressed = np.exp(ln) / pressure
        filled = (film / gap) ** 2
        carried = pressed + filled
        low, high = np.where(carried > 1.0, height, low), np.where(carried > 1.0, high, height)
        step = -np.log(carried) * carried / (pressed * ln_slope - 2.0 * filled * gap_slope / gap)
        inside = (height + step >= low) & (height + step <= high)
        height = np.where(inside, height + step, 0.5 * (low + high))
        settled = (inside & (np.abs(step) < 3e-6)) | np.isnan(step)
        heights[rows], shares[rows] = height, np.where(settled, pressed * np.exp(ln_slope * step), pressed)
        if settled.all():
            break
        left = ~settled
        rows, height, low, high, film, pressure = (
            rows[left], height[left], low[left], high[left], film[left], pressure[left],
        )  # fmt: skip
    return heights, shares


def share_load(film: np.ndarray, pressure: np.ndarray, heights: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Share on asperities and mean gap over roughness, from film over roughness and pressure over stiffness."""
    filled = (film / NORMAL) ** 2
    share, gap = 1.0 - filled, np.full(film.shape, NORMAL)
    apart = np.nonzero(~(pressure * share >= AT_ZERO))
    if apart[0].size:
        height, pressed = height_apart(film[apart], pressure[apart], heights[apart])
        heights[apart] = height
        gap[apart] = mean_gap(height)[0]
        by_film = (film[apart] / gap[apart]) ** 2
        share[apart] = np.where(by_film < 0.5, 1.0 - by_film, np.minimum(pressed, 1.0))
    return share, gap


def mixed(
    film: Any, pressure: Any, surface: Any, mix: Any, strip: Any, ring: Any, clearance: Any, heights: np.ndarray
) -> np.ndarray:
    """Coefficient of friction of a loaded contact: asperities with their layer, sheared oil in strip and ring.

    `heights` of the surfaces, where known, are taken as starts and replaced by what is found.
    """
    share, gap = share_load(film, pressure / surface.stiffness, heights)
    gap *= surface.roughness
    drag = 2.0 * np.pi / np.sqrt(gap * (2.0 * clearance - np.minimum(gap, clearance)))
    viscous = np.minimum(mix.fill * (strip / gap + ring * drag), mix.limiting)
    computed = share * mix.boundary + (1.0 - share) * viscous
    return np.clip(computed, LEAST_FRICTION, np.maximum(surface.dry, LEAST_FRICTION))
