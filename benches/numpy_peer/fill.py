"""Fill: how full joints are once the line has settled, by the age of their oil.

Joints that every shot fills, or that know one wait only, have a closed form; the others are walked, see `walk`.
"""

from __future__ import annotations

import math
from types import SimpleNamespace as Rows
from typing import Any

import numpy as np
from scipy.special import exp1


def mean_kept(decay: Any) -> Any:
    return -np.expm1(-decay) / decay


def periodic(t: Rows, circuit: np.ndarray, dose: np.ndarray, capacity: np.ndarray, rate: np.ndarray) -> Rows:
    """Mean and lowest fill of the joints reached in closed form, and the rows that must be walked."""
    worst = rate * t.worst * circuit
    lost = -np.expm1(-worst)
    full = dose >= capacity * lost
    after = np.minimum(dose / (lost * capacity), 1.0)
    mean = np.where(dose > 0.0, after * (t.weight * mean_kept(rate * t.circuits * circuit)).sum(axis=0), 0.0)
    lowest = np.where(dose > 0.0, after * np.exp(-worst), 0.0)
    rows = np.flatnonzero(~(full | t.single) & (dose > 0.0) & np.isfinite(lost))
    ticks = np.stack([t.n1[rows], t.d1[rows], t.n2[rows], t.d2[rows], t.run[rows], t.cell[rows], t.period[rows]])
    numbers = np.stack([circuit[rows], dose[rows], capacity[rows], rate[rows], t.mean_wait[rows]])
    return Rows(mean=mean, lowest=lowest, rows=rows, ticks=ticks, numbers=numbers)


ENTIRE = [(-1.0) ** (n + 1) / (n * math.factorial(n)) for n in range(1, 19)]
SLOW = 0.1
NODES = (0.5 - 0.5 * 0.6**0.5, 0.5, 0.5 + 0.5 * 0.6**0.5)
WEIGHTS = (5.0 / 18.0, 8.0 / 18.0, 5.0 / 18.0)


def entire_part(x: np.ndarray) -> np.ndarray:
    """∫ (1 − e^−t)/t dt from 0 to x, for x up to 1."""
    total = np.full_like(x, ENTIRE[-1])
    for coefficient in reversed(ENTIRE[:-1]):
        total *= x
        total += coefficient
    return total * x


def age_law(
    mean: np.ndarray, rate: np.ndarray, wait: np.ndarray, weight: np.ndarray, boundary_fill: Any
) -> tuple[Any, Any]:
    """Fill right after a visit, and the fill that has the mean boundary friction."""
    a = rate * wait
    start = np.minimum(mean / (weight * mean_kept(a)).sum(axis=0), 1.0)
    x = start / boundary_fill
    thin = x <= 1.0
    part: Any = 0.0
    for node, share in zip(NODES, WEIGHTS, strict=True):
        y = x * np.exp(-a * node)
        np.negative(y, out=y)
        part = part + share * np.where(thin, -np.expm1(y), np.exp(y))
    fast = (a * (1.0 + x) >= SLOW) & (weight > 0.0)
    for choose, few in ((fast & ~thin, False), (fast & thin, True)):
        which, rows = np.nonzero(choose)
        if rows.size:
            x_here, a_here = x[rows], a[which, rows]
            if few:
                difference = entire_part(x_here) - entire_part(x_here * np.exp(-a_here))
            else:
                # E1 of a vanishing argument is −γ − ln x, which stays exact
                low = x_here * np.exp(-a_here)
                tiny = low < 1e-300
                first = np.where(tiny, -np.euler_gamma - np.log(x_here) + a_here, exp1(np.maximum(low, 1e-300)))
                difference = first - exp1(x_here)
            part[which, rows] = difference / a_here
    total = (weight * part).sum(axis=0)
    effective = -boundary_fill * np.where(thin, np.log1p(-total), np.log(total))
    return start, np.where(start > 0.0, effective, 0.0)
