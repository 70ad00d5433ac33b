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
    n = 1 << 14
    one = {"wear.wear_coefficient_dry": None}
    for name in pinfilm.examples.names():
        line = pinfilm.examples.load(name)
        alone = best(lambda line=line: [pinfilm.evaluate(line) for _ in range(1000)]) / 1000
        outputs = ["wear.life_years"]
        small = best(lambda line=line: pinfilm.sample(line, one, n=n, outputs=outputs, threads=1)) / n
        usual = best(lambda line=line: pinfilm.sample(line, n=n, threads=1)) / n
        both = best(lambda line=line: pinfilm.sample(line, n=n, threads=2)) / n
        grid = {"oil.noack_pct": range(1, 65), "costs.labour_rate_per_h": range(256)}
        swept = best(lambda line=line, grid=grid: pinfilm.sweep(line, grid, outputs=outputs, threads=2)) / n
        print(
            f"{name:18} evaluate from Python {1e6 * alone:6.1f} µs; draw, one thread: {1e6 * small:6.1f} µs (one input, one "
            f"output), {1e6 * usual:6.1f} µs (usual inputs, all outputs); two threads: {1 / both:8.0f} lines/s drawn, "
            f"{1 / swept:8.0f} lines/s swept"
        )


if __name__ == "__main__":
    main()
