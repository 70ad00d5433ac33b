"""Sobol indices of a line beside SALib in one run: same inputs, same n, same indices; how much faster.

Needs SALib and a release build (``maturin develop --release``); wants an idle machine. SALib drives the scalar call, as
a Python user without this library's own studies would. The split of both times is printed; what a row here spends
inside and outside `evaluate` is counted by the example `count_draws` (DEVELOPERS.md).
"""

from __future__ import annotations

import argparse
import time
import warnings

import numpy as np
from SALib.analyze import sobol as analyze
from SALib.sample import sobol as draws

import pinfilm

OUTPUT = "wear.life_years"
INPUTS = {
    "wear.wear_coefficient_dry": pinfilm.Distribution.lognormal_90(1e-4, 6e-4),
    "wear.wear_coefficient_boundary": pinfilm.Distribution.lognormal_90(5e-7, 3e-5),
    "lubrication.capture": pinfilm.Distribution.uniform(0.1, 0.4),
    "duty.dust_factor": pinfilm.Distribution.uniform(1.0, 4.0),
    "surface.dry_friction": pinfilm.Distribution.triangular(0.2, 0.3, 0.5),
    "fill.air_factor": pinfilm.Distribution.uniform(0.5, 1.5),
}


def main() -> None:
    """Print both sets of indices, the largest difference in confidence intervals, and the ratio of times."""
    options = argparse.ArgumentParser()
    options.add_argument("--n", type=int, default=1024, help="base rows, a power of two")
    n = options.parse_args().n
    warnings.simplefilter("ignore")
    line = pinfilm.examples.load("oven_now")

    # the least study has 64 rows: what is left of its time is set-up and swings
    few_time, few = min((timed(line, 8) for _ in range(5)), key=lambda pair: pair[0])
    our_time, ours = timed(line, n)
    row_time = (our_time - few_time) / (ours.rows - few.rows)
    one_time, _ = timed(line, n, threads=1)

    problem = {"num_vars": len(INPUTS), "names": list(INPUTS), "bounds": [[0.0, 1.0]] * len(INPUTS)}
    begin = time.perf_counter()
    units = draws.sample(problem, n, calc_second_order=False, seed=1)
    units = np.clip(units, 1e-9, 1 - 1e-9)
    drawn_time = time.perf_counter() - begin
    outcomes = np.empty(len(units))
    for row, values in enumerate(units):
        drawn = {path: d.quantile(u) for (path, d), u in zip(INPUTS.items(), values, strict=True)}
        outcomes[row] = np.log(pinfilm.evaluate(line.replace(drawn)).wear.life_years)
    driven_time = time.perf_counter() - begin - drawn_time
    theirs = analyze.analyze(problem, outcomes, calc_second_order=False, seed=1)
    their_time = time.perf_counter() - begin
    begin = time.perf_counter()
    for _ in range(1000):
        pinfilm.evaluate(line)
    call_time = (time.perf_counter() - begin) / 1000

    table = ours.table()
    worst = 0.0
    print(f"{'input':34} {'first':>16} {'SALib':>16} {'total':>16} {'SALib':>16}")
    for row, name in enumerate(table["input"]):
        at = list(INPUTS).index(name)
        cells = []
        for mine, key in (("first", "S1"), ("total", "ST")):
            value, half = table[mine][row], table[f"{mine}_confidence"][row]
            other, other_half = theirs[key][at], theirs[f"{key}_conf"][at]
            worst = max(worst, abs(value - other) / max(float(np.hypot(half, other_half)), 1e-12))
            cells += [f"{value:7.3f} ± {half:.3f}", f"{other:7.3f} ± {other_half:.3f}"]
        print(f"{name:34} " + " ".join(f"{cell:>16}" for cell in cells))
    print(f"largest difference: {worst:.2f} of the joint 95 % intervals")
    print(f"{ours.rows} draws here in {our_time:.3f} s, {len(units)} draws by SALib in {their_time:.3f} s")
    print(f"ratio {their_time / our_time:.0f}; {their_time / one_time:.0f} by one thread here")
    setup = few_time - few.rows * row_time
    print(f"ours: {1e3 * setup:.1f} ms set-up and swings, then {1e6 * row_time:.1f} µs a row by all threads")
    rest = their_time - drawn_time - driven_time
    print(
        f"theirs: {1e3 * drawn_time:.1f} ms draws, {1e6 * driven_time / len(units):.1f} µs a row of which "
        f"{1e6 * call_time:.1f} µs are `evaluate` called from Python, {1e3 * rest:.1f} ms analysis"
    )


def timed(line: pinfilm.Line, n: int, threads: int | None = None) -> tuple[float, pinfilm.Sensitivity]:
    """Seconds of a study here, and what it gave."""
    begin = time.perf_counter()
    found = pinfilm.sensitivity(line, INPUTS, output=OUTPUT, log=True, n=n, threads=threads)
    return time.perf_counter() - begin, found


if __name__ == "__main__":
    main()
