"""Time and memory of tables: rows a second by threads, peak memory, against a row-wise pandas ``apply``.

Run in an environment with a release build of pinfilm, pandas and pyarrow, on a machine that does nothing else:
``python benches/table.py [ROWS]`` (100,000 without it). ``python benches/table.py ROWS FILE.json`` writes the columns
instead, for counts of instructions by ``benches/count_table.rs``.
"""

from __future__ import annotations

import json
import resource
import sys
import time
import warnings
from pathlib import Path

import pandas as pd
import pyarrow as pa

import pinfilm


def proposed(rows: int) -> pa.Table:
    """Return shorthand rows of the chain-driven method, all columns numbers and words."""
    kept = {
        name.removeprefix("proposed."): values
        for name, values in pinfilm.examples.lines(min(rows, 2_000)).items()
        if not name.startswith("now.")
    }
    base = pa.table(kept)
    return pa.concat_tables([base] * -(-rows // base.num_rows)).slice(0, rows).combine_chunks()


def seconds(call) -> tuple[float, object]:
    start = time.perf_counter()
    found = call()
    return time.perf_counter() - start, found


def peak_mb() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def main() -> None:
    rows = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
    warnings.simplefilter("ignore")
    table = proposed(rows)
    if len(sys.argv) > 2:
        Path(sys.argv[2]).write_text(json.dumps(table.to_pydict()), encoding="utf-8")
        return
    before, times = peak_mb(), {}
    for threads in (1, 2):
        times[threads], found = seconds(lambda threads=threads: pinfilm.evaluate_table(table, threads=threads))
        print(f"{rows:,} rows, {threads} threads: {times[threads]:.2f} s, {rows / times[threads]:,.0f} rows/s")
    out = pa.table(found)
    both = out.nbytes / 2**20
    print(f"1 to 2 threads: {times[1] / times[2]:.2f} times")
    print(f"columns in and out {both:.0f} MB, peak above that of the table alone {peak_mb() - before:.0f} MB")
    print("rows:", dict(found.status_counts))

    few = min(rows, 500)
    frame = pd.DataFrame({"row": range(few)})
    lines = [found.line(row) if found["status"][row] != "error" else None for row in range(few)]
    single, _ = seconds(
        lambda: frame.apply(
            lambda r: None if lines[r["row"]] is None else pinfilm.evaluate(lines[r["row"]]).to_dict(), axis=1
        )
    )
    building, _ = seconds(lambda: [found.line(row) for row in range(few) if lines[row] is not None])
    print(
        f"pandas apply of evaluate and to_dict: {single / few * 1e6:.0f} us a row, "
        f"{building / few * 1e6:.0f} us to build its line"
    )
    print(f"against it, lines built already: {single / few / (times[2] / rows):.0f} times faster with 2 threads")


if __name__ == "__main__":
    main()
