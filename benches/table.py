"""Tables: rows a second and peak memory, beside a vectorised NumPy script of the same models and pandas ``apply``.

Run in an environment with a release build of pinfilm, NumPy, SciPy, pandas and pyarrow, on a machine that does nothing
else: ``python benches/table.py [ROWS]`` (100,000 without it). Fails where the two sides disagree by more than 1e-9.
``python benches/table.py ROWS FILE.json`` writes the columns instead, for counts of instructions by
``benches/count_table.rs``.
"""

from __future__ import annotations

import json
import resource
import sys
import time
import warnings
from pathlib import Path

import numpy as np
import numpy_peer
import pandas as pd
import pyarrow as pa
from numpy_peer import agreement, draws

import pinfilm

AGREED = 1e-9
ROWS_COMPARED = 3_000  # of each method, with and without an oven
REPEATS = 3


def proposed(rows: int) -> pa.Table:
    """Return shorthand rows of the chain-driven method, all columns numbers and words."""
    kept = {
        name.removeprefix("proposed."): values
        for name, values in pinfilm.examples.lines(min(rows, 2_000)).items()
        if not name.startswith("now.")
    }
    base = pa.table(kept)
    return pa.concat_tables([base] * -(-rows // base.num_rows)).slice(0, rows).combine_chunks()


def seconds(call, repeats: int = 1) -> tuple[float, float, object]:
    """Least time and least processor time of some runs, and what the last gave."""
    least, busy = float("inf"), float("inf")
    for _ in range(repeats):
        start, used = time.perf_counter(), time.process_time()
        found = call()
        least, busy = min(least, time.perf_counter() - start), min(busy, time.process_time() - used)
    return least, busy, found


def peak_mb() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def both(title: str, table: pa.Table, columns: dict) -> dict[str, dict[int, float]]:
    """Time both sides on the same rows by one thread and by two."""
    rows, times = table.num_rows, {"pinfilm": {}, "NumPy": {}}
    print(f"\n{title}: {rows:,} rows")
    for threads in (1, 2):
        ours, our_work, _ = seconds(lambda threads=threads: pinfilm.evaluate_table(table, threads=threads), REPEATS)
        theirs, their_work, _ = seconds(lambda threads=threads: numpy_peer.evaluate(columns, threads=threads), REPEATS)
        times["pinfilm"][threads], times["NumPy"][threads] = ours, theirs
        print(
            f"  {threads} thread{'s' if threads > 1 else ' '}: pinfilm {rows / ours:>9,.0f} rows/s, "
            f"NumPy {rows / theirs:>9,.0f} rows/s, ratio {theirs / ours:.2f}; processor time "
            f"{our_work / rows * 1e6:.1f} and {their_work / rows * 1e6:.1f} us a row, ratio {their_work / our_work:.2f}"
        )
    for side, by in times.items():
        print(f"  1 to 2 threads, {side}: {by[1] / by[2]:.2f} times")
    print(f"  pinfilm with 2 threads over NumPy with 1: {times['NumPy'][1] / times['pinfilm'][2]:.2f} times (goal 10)")
    return times


def agree() -> float:
    """Compare both sides on random rows of every method; the greatest relative difference."""
    worst, named, rows, refused = 0.0, "", 0, 0
    for seed, method in enumerate(draws.METHODS):
        for oven in (True, False):
            columns = draws.lines(ROWS_COMPARED, method, seed, oven)
            found = pa.table(pinfilm.evaluate_table(agreement.as_arrow(columns), outputs=list(agreement.COMPARED)))
            by, fine, errors, elsewhere = agreement.compared(found, numpy_peer.evaluate(columns, on_the_way=True))
            if elsewhere:
                raise SystemExit(f"{elsewhere} rows of {method} are oiled at another place")
            rows, refused = rows + fine, refused + errors
            name = max(by, key=by.get)
            if by[name] >= worst:
                worst, named = by[name], f"{name} ({method})"
    outputs = len(numpy_peer.OUTPUTS) + len(numpy_peer.ON_THE_WAY)
    print(
        f"\nagreement: {rows:,} random rows of {len(draws.METHODS)} methods ({refused} more that pinfilm refuses), "
        f"{outputs} columns: greatest relative difference {worst:.1e}, in {named}"
    )
    return worst


def main() -> None:
    rows = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
    warnings.simplefilter("ignore")
    print(f"pinfilm {pinfilm.__version__}, NumPy {np.__version__}, pandas {pd.__version__}, pyarrow {pa.__version__}")
    table = proposed(rows)
    if len(sys.argv) > 2:
        Path(sys.argv[2]).write_text(json.dumps(table.to_pydict()), encoding="utf-8")
        return
    before = peak_mb()
    found = pinfilm.evaluate_table(table, threads=2)
    out = pa.table(found)
    print(f"columns in and out {out.nbytes / 2**20:.0f} MB, peak above the table alone {peak_mb() - before:.0f} MB")
    print("rows:", dict(found.status_counts))
    worst = agree()

    times = both("lines of the invented plant", table, agreement.as_numpy(table, ("asset", "hall")))["pinfilm"]
    columns, mixed = agreement.mixture(rows, 1)
    both("usual ranges, four methods", mixed, columns)

    few = min(rows, 500)
    frame = pd.DataFrame({"row": range(few)})
    lines = [found.line(row) if found["status"][row] != "error" else None for row in range(few)]
    single, _, _ = seconds(
        lambda: frame.apply(
            lambda r: None if lines[r["row"]] is None else pinfilm.evaluate(lines[r["row"]]).to_dict(), axis=1
        )
    )
    building, _, _ = seconds(lambda: [found.line(row) for row in range(few) if lines[row] is not None])
    print(
        f"\npandas apply of evaluate and to_dict: {single / few * 1e6:.0f} us a row, "
        f"{building / few * 1e6:.0f} us to build its line"
    )
    for what, row in (("lines built already", single / few), ("lines built from the row", (single + building) / few)):
        print(f"  against it, {what}: {row / (times[2] / rows):.1f} times with 2 threads (goal 100)")
    if worst > AGREED:
        raise SystemExit(f"the two sides disagree by {worst:.1e}, more than {AGREED:.0e}")


if __name__ == "__main__":
    main()
