"""Lines a second of `sample` and `sweep`, with the cost of a draw beside that of `evaluate`. Wants an idle machine.

Needs a release build (``maturin develop --release``).
"""

from __future__ import annotations

import time
import warnings
from collections.abc import Callable
from typing import Any

import pinfilm


def best(call: Callable[[], Any], times: int = 3) -> float:
    """Seconds of the fastest of a few calls."""
    found = []
    for _ in range(times):
        begin = time.perf_counter()
        call()
        found.append(time.perf_counter() - begin)
    return min(found)


def main() -> None:
    """Print microseconds and lines a second for each line of the demo plant."""
    warnings.simplefilter("ignore")
    for name in pinfilm.examples.names():
        time_line(name, pinfilm.examples.load(name))


def time_line(name: str, line: pinfilm.Line, n: int = 1 << 14) -> None:
    """Print the times of one line."""
    one, outputs = {"wear.wear_coefficient_dry": None}, ["wear.life_years"]
    grid = {"oil.noack_pct": range(1, 65), "costs.labour_rate_per_h": range(n // 64)}
    alone = best(lambda: [pinfilm.evaluate(line) for _ in range(1000)]) / 1000
    small = best(lambda: pinfilm.sample(line, one, n=n, outputs=outputs, threads=1)) / n
    usual = best(lambda: pinfilm.sample(line, n=n, threads=1)) / n
    both = best(lambda: pinfilm.sample(line, n=n, threads=2)) / n
    swept = best(lambda: pinfilm.sweep(line, grid, outputs=outputs, threads=2)) / n
    print(f"{name}: evaluate from Python {1e6 * alone:.1f} µs")
    print(f"  draw, one thread, one input and output: {1e6 * small:.1f} µs; usual, all: {1e6 * usual:.1f} µs")
    print(f"  two threads: {1 / both:.0f} lines/s drawn (usual, all outputs), {1 / swept:.0f} lines/s swept")


if __name__ == "__main__":
    main()
