"""Memory of tables: ``evaluate_table`` against its columns in and out, ``evaluate_file`` by the rows of its file.

Run in an environment with a release build of pinfilm and pyarrow, on Linux: ``python benches/table_memory.py
[ROWS] [FILE_ROWS ...]`` (200,000 rows in memory; files of 500,000 and 2,000,000 rows without it). Each is measured in a
process of its own. A run over a file that was stopped goes on when the same is called again with the same ``--folder``.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import tempfile
import time
import warnings
from pathlib import Path

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq

import pinfilm

MB = 2**20
GROUP = 1 << 20
"""Rows of a row group of the source: what pyarrow writes without being asked."""
VARIED = (
    "duty.speed_m_per_min",
    "circuit.centre_distance_m",
    "circuit.carried_kg_per_m",
    "duty.ambient_c",
    "oil.price_per_l",
)


def rows_of(count: int, seed: int) -> pa.Table:
    """Return shorthand rows of the chain-driven method; five columns differ in every row."""
    lines = pinfilm.examples.lines(2_000).items()
    base = pa.table({name.removeprefix("proposed."): column for name, column in lines if not name.startswith("now.")})
    table = pa.concat_tables([base] * -(-count // base.num_rows)).slice(0, count).combine_chunks()
    draw = np.random.default_rng(seed)
    for name in VARIED:
        at, column = table.schema.get_field_index(name), table.column(name)
        table = table.set_column(at, name, pa.compute.multiply(column, pa.array(draw.uniform(0.98, 1.02, count))))
    return table


def memory(name: str) -> float:
    """Return ``VmRSS`` (what is resident now) or ``VmHWM`` (the most that was) of this process in MB."""
    for line in Path("/proc/self/status").read_text(encoding="ascii").splitlines():
        if line.startswith(name + ":"):
            return int(line.split()[1]) / 1024
    raise SystemExit(f"no {name} in /proc/self/status: this needs Linux")


def in_memory(rows: int) -> None:
    pinfilm.evaluate_table(rows_of(2_000, 0))  # what is loaded once is not the table's
    bare = memory("VmRSS")
    table = rows_of(rows, 1)
    with_table = memory("VmRSS")
    Path("/proc/self/clear_refs").write_text("5", encoding="ascii")  # begins the highest mark anew
    found = pa.table(pinfilm.evaluate_table(table))
    peak, both = memory("VmHWM"), found.nbytes / MB
    print(f"evaluate_table, {rows:,} rows: columns in {table.nbytes / MB:.0f} MB, in and out {both:.0f} MB")
    print(
        f"  peak above the bare process {peak - bare:.0f} MB = {(peak - bare) / both:.2f} times in and out; "
        f"above the process that holds the table {peak - with_table:.0f} MB = "
        f"{(peak - with_table) / (both - table.nbytes / MB):.2f} times out"
    )


def write_source(path: Path, rows: int) -> None:
    if path.exists():
        return
    beside = path.with_suffix(".tmp")
    first = rows_of(1, 0).schema
    with pq.ParquetWriter(beside, first) as writer:
        for start in range(0, rows, GROUP):
            writer.write_table(rows_of(min(GROUP, rows - start), start), row_group_size=GROUP)
    beside.replace(path)


def over_file(rows: int, folder: Path) -> None:
    source, target = folder / f"lines-{rows}.parquet", folder / f"results-{rows}.parquet"
    start = time.perf_counter()
    done = pinfilm.evaluate_file(source, target)
    seconds, computed = time.perf_counter() - start, done.rows - done.taken_up
    sizes = f"{source.stat().st_size / MB:.0f} MB in, {target.stat().st_size / MB:.0f} MB out"
    print(
        f"evaluate_file, {rows:,} rows, {sizes}: "
        f"most resident {memory('VmHWM'):.0f} MB; {computed:,} rows in {seconds:.0f} s; {dict(done.status_counts)}"
    )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("rows", nargs="?", type=int, default=200_000)
    parser.add_argument("file_rows", nargs="*", type=int, default=[500_000, 2_000_000])
    parser.add_argument("--folder", type=Path, help="where files are written and kept; else a temporary folder")
    parser.add_argument("--alone", choices=["table", "source", "file"], help=argparse.SUPPRESS)
    asked = parser.parse_args()
    warnings.simplefilter("ignore")
    if asked.alone == "table":
        in_memory(asked.rows)
    elif asked.alone == "source":
        write_source(asked.folder / f"lines-{asked.rows}.parquet", asked.rows)
    elif asked.alone == "file":
        over_file(asked.rows, asked.folder)
    else:
        with tempfile.TemporaryDirectory() as temporary:
            folder = asked.folder or Path(temporary)
            folder.mkdir(parents=True, exist_ok=True)
            for what, rows in [("table", asked.rows)] + [(w, n) for n in asked.file_rows for w in ("source", "file")]:
                alone = [sys.executable, __file__, str(rows), "--alone", what, "--folder", str(folder)]
                if subprocess.run(alone, check=False).returncode:
                    raise SystemExit("stopped; what is finished is kept where --folder was given")


if __name__ == "__main__":
    main()
