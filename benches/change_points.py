"""Change points beside `ruptures`: same log, same cost (sum of squares), same penalty, same least segment, in one run.

    python benches/change_points.py [SAMPLES ...]        # 100000 and 1000000 if not given

Wants `ruptures` and an idle machine, and a release build (`maturin develop --release`).
Points must be the same; the ratio is that of processor times, the shortest of three runs.
`KernelCPD` with the linear kernel is the compiled search of `ruptures`.
"""

import sys
import time

import numpy as np
import ruptures

import pinfilm


def log(samples):
    """A log of 200 levels, some nearly alike, with noise."""
    chance = np.random.Generator(np.random.Philox(3))
    levels = np.repeat(chance.normal(10, 0.5, 200), -(-samples // 200))[:samples]
    return levels + chance.normal(0, 0.1, samples)


def shortest(run, times=3):
    found, best = None, float("inf")
    for _ in range(times):
        start = time.process_time()
        found = run()
        best = min(best, time.process_time() - start)
    return found, best


def race(samples, least=10):
    readings = log(samples)
    stamps = np.datetime64("2025-01-01") + np.arange(samples) * np.timedelta64(1, "m")
    whole = pinfilm.CurrentLog(time=stamps, current_a=readings, rules=pinfilm.LogRules(window_h=0))
    kept = whole.means()["current_a"]  # spikes are left out, so the other gets what is left
    _, verb = shortest(lambda: whole.change_points(least_segment=least))
    found, alone = shortest(lambda: pinfilm.statistics.change_points(kept, least_segment=least))
    ours, penalty = list(found.points), found.penalty  # the other gets our price of a change

    def other():
        return ruptures.KernelCPD(kernel="linear", min_size=least).fit(kept).predict(pen=penalty)[:-1]

    theirs, compiled = shortest(other, 3 if samples < 300_000 else 1)
    same = ours == theirs
    print(f"{samples} samples, {len(ours)} changes, penalty {penalty:.4g}; same points: {same}")
    print(f"  pinfilm: search with its penalty {alone:.3f} s; the verb with cleaning {verb:.3f} s")
    print(f"  ruptures, KernelCPD linear: {compiled:.3f} s; ratio {compiled / alone:.2f}")
    return same


if __name__ == "__main__":
    if not all([race(int(text)) for text in sys.argv[1:] or ("100000", "1000000")]):
        sys.exit("the points differ")
