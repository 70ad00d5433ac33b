"""Time of calls across the border: import, a scalar evaluate with its whole result, a scalar formula.

Run in an environment with a release build of pinfilm: ``python benches/boundary.py``.
"""

from __future__ import annotations

import json
import statistics
import subprocess
import sys
import time
import warnings
from pathlib import Path


def best_us(call, seconds: float = 0.5) -> tuple[float, float]:
    """Least and median time of one call in microseconds."""
    times = []
    end = time.perf_counter() + seconds
    while time.perf_counter() < end:
        start = time.perf_counter()
        for _ in range(20):
            call()
        times.append((time.perf_counter() - start) / 20 * 1e6)
    return min(times), statistics.median(times)


def import_ms(module: str) -> float:
    """Median wall time of importing a module in a fresh interpreter, less that of an empty one."""

    def once(code: str) -> float:
        start = time.perf_counter()
        subprocess.run([sys.executable, "-c", code], check=True)
        return (time.perf_counter() - start) * 1e3

    empty = statistics.median(once("pass") for _ in range(7))
    return statistics.median(once(f"import {module}") for _ in range(7)) - empty


def main() -> None:
    import pinfilm

    warnings.simplefilter("ignore")
    cases = json.loads((Path(__file__).parents[1] / "tests/data/cases-line.json").read_text())
    for case in cases:
        if case["quantity"] == "evaluate":
            line = pinfilm.Line.from_dict(case["inputs"])
            low, middle = best_us(lambda line=line: pinfilm.evaluate(line))
            full_low, full = best_us(lambda line=line: pinfilm.evaluate(line).to_dict())
            print(
                f"{case['id']:<22} evaluate {low:7.1f} us least {middle:7.1f} median; "
                f"with to_dict() {full_low:7.1f} least {full:7.1f} median"
            )
    numpy_ms, ours_ms = import_ms("numpy"), import_ms("pinfilm")
    print(f"import numpy {numpy_ms:.0f} ms, import pinfilm {ours_ms:.0f} ms, beyond numpy {ours_ms - numpy_ms:.0f} ms")


if __name__ == "__main__":
    main()
