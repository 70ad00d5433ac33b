"""Candidates a second of `recommend`, and closed form against simulator.

Run in an environment with a release build, on a quiet machine: ``python benches/recommend.py``.
"""

from __future__ import annotations

import time
import warnings
from collections.abc import Callable
from typing import Any

import pinfilm

warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)


def seconds(call: Callable[[], Any], rounds: int) -> float:
    """Best time of some rounds."""
    best = float("inf")
    for _ in range(rounds):
        start = time.perf_counter()
        call()
        best = min(best, time.perf_counter() - start)
    return best


def main() -> None:
    """Print what was measured."""
    shots = [0.5 * 1.25**i for i in range(24)]
    runs, dwells = [5, 10, 20, 30, 60, 120, 180, 240], [0, *range(30, 3000, 90)]
    print(f"{'line':10}{'candidates':>12}{'evaluated':>11}{'per second':>12}")
    for name in ("oven", "slat", "paint", "floor", "packing"):
        line = pinfilm.examples.load(f"{name}_proposed")
        offers = {"shots_ul": shots, "run_min": runs, "dwell_min": dwells, "every_nth": [1, 7, 11, 13, 17]}
        found = pinfilm.recommend(line, threads=2, **offers)
        took = seconds(lambda line=line, offers=offers: pinfilm.recommend(line, threads=2, **offers), 3)
        print(f"{name:10}{found.candidates:>12}{found.feasible_candidates:>11}{found.candidates / took:>12.0f}")
    oven = pinfilm.examples.load("oven_proposed")
    offers = {"shots_ul": [8 + i / 1e3 for i in range(20_000)], "run_min": [180], "dwell_min": [1620], "every_nth": [9]}
    count = pinfilm.recommend(oven, threads=2, **offers).candidates
    took = seconds(lambda: pinfilm.recommend(oven, threads=2, **offers), 3)
    print(f"oven, nearly every candidate evaluated: {count / took:.0f} a second")
    week = [pinfilm.Shift(start_h=0, length_h=168)]
    walk = seconds(lambda: pinfilm.simulate(oven, weeks=52, shifts=week), 3)
    timer = oven.lubrication.timer
    closed = seconds(lambda: pinfilm.coverage.timer_coverage(9 * 1200, timer.run_min * 60, timer.dwell_min * 60), 20)
    print(f"oven, a year: simulator {walk * 1e3:.1f} ms, closed form {closed * 1e6:.1f} µs, ratio {walk / closed:.0f}")


if __name__ == "__main__":
    main()
