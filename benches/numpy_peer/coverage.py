"""Coverage: a timer against the circuit in whole milliseconds; every n-th joint; waits and who is never reached."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

TICKS_PER_SECOND = 1e3


def ticks(seconds: Any) -> np.ndarray:
    return np.rint(np.asarray(seconds) * TICKS_PER_SECOND).astype(np.int64)


def first_returns(step: np.ndarray, run: np.ndarray, period: np.ndarray) -> tuple[np.ndarray, ...]:
    """Slater's two shortest returns (n1, d1 forward; n2, d2 back), and whether the timer is locked to the chain."""
    count = len(step)
    out = np.zeros((4, count), np.int64)
    rows = np.arange(count)
    n1, d1, n2, d2 = np.ones(count, np.int64), step.copy(), np.zeros(count, np.int64), period.copy()
    while rows.size:
        done = ((d1 < run) & (d2 < run)) | (d1 == 0) | (d2 == 0)
        if done.any():
            out[:, rows[done]] = n1[done], d1[done], n2[done], d2[done]
            left = ~done
            rows, n1, d1, n2, d2, run = rows[left], n1[left], d1[left], n2[left], d2[left], run[left]
            if not rows.size:
                break
        back = d2 >= d1
        big, small = np.where(back, d2, d1), np.where(back, d1, d2)
        of_big, of_small = np.where(back, n2, n1), np.where(back, n1, n2)
        times = big // small
        times = np.where(big >= run, np.minimum(times, (big - run) // small + 1), times)
        big -= times * small
        of_big += times * of_small
        d1, d2 = np.where(back, d1, big), np.where(back, big, d2)
        n1, n2 = np.where(back, n1, of_big), np.where(back, of_big, n2)
    return out[0], out[1], out[2], out[3]


def against_timer(circuit: np.ndarray, run: np.ndarray, period: np.ndarray) -> Rows:
    """Waits (circuits, with the ticks of the run that lead to each) and the share never reached."""
    cell = np.gcd(circuit, period)
    continuous = run == period
    # a run that never stops has no returns: any short run does for it
    asked = np.where(continuous, 1, run)
    n1, d1, n2, d2 = first_returns(np.where(continuous, 0, circuit % period), asked, period)
    single = continuous | (run <= cell)
    repeat = period // cell
    circuits = np.stack([np.where(single, np.where(continuous, 1, repeat), n1), n2, n1 + n2])
    length = np.stack([np.where(single, run, run - d1), run - d2, d1 + d2 - run])
    length[1:, single] = 0
    circuits[1:, single] = 1
    locked = single & ~continuous
    never = np.where(locked, (cell - run) / cell, 0.0)
    reached = 1.0 - never
    share = circuits * length / period
    occurs = length > 0
    return Rows(
        cell=cell, run=run, period=period, n1=n1, d1=d1, n2=n2, d2=d2, single=single, never=never, occurs=occurs,
        circuits=circuits, length=length, share=share, weight=np.where(occurs, share / reached, 0.0),
        worst=np.where(occurs, circuits, 0).max(axis=0), mean_wait=np.where(single, circuits[0], period / run),
    )  # fmt: skip
