"""Logs for the tests: the synthetic one of the case file, and lines of the demo plant."""

from __future__ import annotations

import statistics
from functools import cache
from typing import Any

import numpy as np

import pinfilm

NORMAL = statistics.NormalDist()


def philox(counter: tuple[int, int, int, int], key: tuple[int, int]) -> int:
    """First word of Philox4x32-10. Source: Salmon, Moraes, Dror and Shaw (2011)."""
    a, b, c, d = map(int, counter)
    k, m = key
    for _ in range(10):
        p, q = 0xD2511F53 * a, 0xCD9E8D57 * c
        a, b, c, d = (q >> 32) ^ b ^ k, q & 0xFFFFFFFF, (p >> 32) ^ d ^ m, p & 0xFFFFFFFF
        k, m = (k + 0x9E3779B9) & 0xFFFFFFFF, (m + 0xBB67AE85) & 0xFFFFFFFF
    return a


def normal(row: int, column: int, seed: int = 7) -> float:
    return NORMAL.inv_cdf((philox((row, column, 0, 0), (seed, 0)) + 0.5) / 2**32)


@cache
def synthetic() -> tuple[Any, Any]:
    """Readings and loads: 120 days, 8 % saved from day 60 on, noise with autocorrelation 0.5."""
    load = np.array([100 + 10 * normal(t, 1) for t in range(120)])
    error = 0.08 * normal(0, 0) / np.sqrt(0.75)
    reading = np.empty(120)
    for t in range(120):
        if t > 0:
            error = 0.5 * error + 0.08 * normal(t, 0)
        reading[t] = (4 + 0.06 * load[t]) * (1 if t < 60 else 0.92) + error
    return reading, load


def days(count: int, start: str = "2025-01-01") -> Any:
    return np.datetime64(start) + np.arange(count) * np.timedelta64(1, "D")


def single() -> pinfilm.LogRules:
    """Rules that keep single readings, for logs that are daily means already."""
    return pinfilm.LogRules(window_h=0)


def daily(readings: Any, load: Any = None, **columns: Any) -> pinfilm.CurrentLog:
    """A log of daily means."""
    if load is not None:
        columns["load_kg_per_m"] = load
    return pinfilm.CurrentLog(time=days(len(readings)), current_a=readings, rules=single(), **columns)
