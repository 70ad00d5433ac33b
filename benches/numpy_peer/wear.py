"""Wear: the coefficient of joints over the age of their oil, in exponential integrals."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np
from scipy.special import exp1, expi

from .columns import Columns, at, full

GREATEST, BOUNDARY_UP_TO, FULL_FROM, TRANSITION_WIDTH = 5e-3, 0.4, 3.0, 15.0
LITTLE, TOO_SHORT, DRY_FILL = 0.5, 1e-6, 1e-5
NODES, WEIGHTS = np.polynomial.legendre.leggauss(8)


class Law:
    """ln K = dry − relief × effect(fill) at one kind of place, at most the greatest coefficient."""

    def __init__(self, dry: Any, relief: Any, half_square: Any, dry_coefficient: Any) -> None:
        self.dry, self.relief, self.half_square, self.dry_coefficient = dry, relief, half_square, dry_coefficient

    def of(self, rows: np.ndarray) -> Law:
        return Law(*(at(one, rows) for one in (self.dry, self.relief, self.half_square, self.dry_coefficient)))

    def coefficient(self, fill: Any) -> Any:
        square = fill * fill
        effect = (1.0 + self.half_square) * square / (square + self.half_square)
        return np.minimum(np.exp(self.dry - self.relief * effect), GREATEST)

    def capped(self, fill: Any) -> Any:
        square = fill * fill
        effect = (1.0 + self.half_square) * square / (square + self.half_square)
        return self.dry - self.relief * effect >= np.log(GREATEST)

    def share(self, fill: Any) -> Any:
        return fill * fill / (fill * fill + self.half_square)


def between(fall: Any, high: Any, low: Any) -> Any:
    """∫ e^(−B s)/(s (1 − s)) ds from low to high share in exponential integrals; B > 0."""
    over = expi(fall * (1.0 - low)) - expi(fall * (1.0 - high))
    return exp1(fall * low) - exp1(fall * high) + np.exp(-fall) * over


def integral(law: Law, first: np.ndarray, last: np.ndarray, length: np.ndarray) -> np.ndarray:
    """∫ K dx for a fill that falls as e^(−x); the cap of the coefficient cuts off the empty end."""
    fuller, emptier = law.share(first), law.share(last)
    dry, fall = np.exp(law.dry), law.relief * (1.0 + law.half_square)
    cap = np.log(dry / GREATEST) / fall
    cut = (cap > 0.0) & (cap < 1.0) & (cap > emptier) & (cap < fuller)
    low = np.where(cut, cap, emptier)
    free = 0.5 * dry * between(fall, fuller, low)
    if np.any(cut):
        capped = 0.5 * np.log(cap / emptier * ((1.0 - emptier) / (1.0 - cap)))
        free = np.where(cut, GREATEST * capped + free, free)
    always = ~cut & (law.coefficient(0.5 * (first + last)) >= GREATEST)
    return np.where(always, GREATEST * length, free)


def mean_over_waits(law: Law, fill: np.ndarray, rate: np.ndarray, wait: np.ndarray, weight: np.ndarray) -> np.ndarray:
    """Mean wear coefficient over the age of the oil; waits begin alike, so that each stretch is integrated once."""
    until_dry = np.maximum(np.log(np.maximum(fill, 1e-300) / DRY_FILL), 0.0)
    x = rate * wait
    per_x = weight / x
    mean = (per_x * np.maximum(x - until_dry, 0.0)).sum(axis=0) * law.dry_coefficient
    ends = np.minimum(x, until_dry)
    order = np.argsort(ends, axis=0)
    ends, per_x = np.take_along_axis(ends, order, axis=0), np.take_along_axis(per_x, order, axis=0)
    start: Any = np.zeros(ends.shape[1])
    for place in range(len(ends)):
        end, factor = ends[place], per_x[place:].sum(axis=0)
        length = end - start
        first = fill * np.exp(-start)
        kinked = law.capped(first) != law.capped(first * np.exp(-length))
        closed = (length > LITTLE) | (kinked & (length > TOO_SHORT))
        short = np.flatnonzero((length > 0.0) & ~closed & (factor > 0.0))
        if short.size:
            here = law.of(short)
            half = 0.5 * length[short]
            ages = half * (NODES[:, None] + 1.0)
            values = here.coefficient(first[short] * np.exp(-ages))
            mean[short] += half * factor[short] * (WEIGHTS @ values)
        long = np.flatnonzero(closed & (factor > 0.0))
        if long.size:
            here = law.of(long)
            last = first[long] * np.exp(-length[long])
            mean[long] += factor[long] * integral(here, first[long], last, length[long])
        start = np.maximum(end, start)
    return mean


def coefficients(c: Columns, temperatures: tuple[Any, ...], ratio: np.ndarray, reach: Rows) -> tuple[np.ndarray, Any]:
    """Wear coefficient of the joints reached at each articulation, and that of the dry ones."""
    dry, boundary = c.si("wear.wear_coefficient_dry", 1.0, 5e-4), c.si("wear.wear_coefficient_boundary", 1.0, 5e-6)
    mixed = c.si("wear.wear_coefficient_mixed") if c.has("wear.wear_coefficient_mixed") else 0.2 * boundary
    thick = c.si("wear.wear_coefficient_full", 1.0, 3e-8)
    half = c.si("wear.fill_half", 1.0, 0.25)
    worse = c.si("duty.dust_factor", 1.0, 1.0) * c.si("duty.water_factor", 1.0, 1.0)
    transition = c.si("oil.boundary_transition_c", 1.0, 150.0)
    around = np.log(worse)
    ln_dry, ln_boundary, ln_mixed, ln_full = (np.log(one) + around for one in (dry, boundary, mixed, thick))
    dry_coefficient = np.minimum(dry * worse, GREATEST)

    def law(temperature: Any, ratio: np.ndarray) -> Law:
        effective = np.clip(ratio, BOUNDARY_UP_TO, FULL_FROM)
        oiled: Any = ln_boundary
        if (effective > BOUNDARY_UP_TO).any():
            ln = np.log(effective)
            oiled = np.where(
                effective < 1.0,
                ln_mixed + (ln_boundary - ln_mixed) * ln / np.log(BOUNDARY_UP_TO),
                ln_mixed + (ln_full - ln_mixed) * ln / np.log(FULL_FROM),
            )
        survival = 1.0 / (1.0 + np.exp((temperature - transition) / TRANSITION_WIDTH))
        return Law(ln_dry, full(survival * (ln_dry - oiled), c.count), half * half, dry_coefficient)

    out = np.empty((4, c.count))
    laws = [law(temperatures[event % len(temperatures)], ratio[event]) for event in range(4)]
    for event, one in enumerate(laws):
        # temperature and film ratio alone tell the articulations apart: what is alike is averaged once
        todo = np.ones(c.count, bool)
        for earlier in range(event):
            alike = todo & (laws[earlier].relief == one.relief)
            out[event, alike] = out[earlier, alike]
            todo &= ~alike
        rows = np.flatnonzero(todo)
        if rows.size:
            args = (reach.start, reach.rate, reach.wait, reach.weight)
            out[event, rows] = mean_over_waits(one.of(rows), *(at(arg, rows) for arg in args))
    return out, dry_coefficient
