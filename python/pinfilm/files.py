"""Tables in files, larger than memory: Parquet or CSV in, Parquet out, taken up again where a run was cut off.

pyarrow reads and stores; the core computes. A run writes its finished parts beside the target, each under its final
name only once it is whole on the disk, and joins them at the end. Whatever ends a run (a kill, a full disk, a power
cut), the same call takes it up after the last finished part, and the file comes out with the same bytes.
"""

from __future__ import annotations

import errno
import json
import os
import shutil
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from . import _bar
from ._alone import alone
from ._core import Line, compare_table, evaluate_table, version
from .errors import TableError

if TYPE_CHECKING:
    import pyarrow as _pa

__all__ = ["FileRun", "evaluate_file"]

PART_ROWS = 100_000
"""Rows of a part: some tens of MB with their results."""


@dataclass(frozen=True, kw_only=True)
class FileRun:
    """What a run over a file did."""

    target: Path
    """The file that was written."""
    rows: int
    """Its rows."""
    taken_up: int
    """Rows that an earlier run had finished already."""
    status_counts: Mapping[str, int]
    """Rows that are ``ok``, ``warning`` and ``error``."""
    metadata: Mapping[str, Any]
    """What became of the columns, as in `Table.metadata`."""


def evaluate_file(
    source: str | os.PathLike[str],
    target: str | os.PathLike[str],
    *,
    outputs: Sequence[str] | None = None,
    compare: bool = False,
    threads: int | None = None,
    progress: Callable[[int, int], object] | bool | None = None,
    defaults: Line | Mapping[str, Any] | None = None,
    units: Mapping[str, str] | None = None,
    part_rows: int = PART_ROWS,
    resume: bool = True,
) -> FileRun:
    r"""Evaluate the lines of a file, part by part, into a Parquet file.

    Parameters
    ----------
    source, target : path
        A Parquet file (``.parquet``) or a CSV file (``.csv``, UTF-8, comma, with a heading); the Parquet file to write.
    compare : bool
        Compare the two lines of each row, as `compare_table` does with one table.
    outputs, threads, defaults, units
        As in `evaluate_table`.
    progress : callable or bool, optional
        Called with rows done and rows in all (0 where unknown); without it a bar where somebody watches; False: none.
    part_rows : int
        Rows of a part and of a row group of the target; what memory a run needs grows with it.
    resume : bool
        Take up what an earlier run of the same call left; False throws it away.

    Returns
    -------
    FileRun
        Rows, how many of them are ok, warning and error, and what became of the columns.

    Raises
    ------
    TableError
        If the source cannot be read as a table, is no table of lines, or changed since the run that is to be taken up;
        if the target cannot be written, or another run is writing it. Finished parts are kept.

    Notes
    -----
    CSV says nothing of types: its columns stay the text that they are, and numbers are read from it.

    Examples
    --------
    >>> import csv, pathlib, tempfile, pinfilm
    >>> folder = pathlib.Path(tempfile.mkdtemp())
    >>> _ = (folder / "lines.csv").write_text("asset,duty.speed_m_per_min\nA1,3.0\nA2,fast\n")
    >>> oven = pinfilm.examples.load("oven_now")
    >>> run = pinfilm.evaluate_file(folder / "lines.csv", folder / "results.parquet", defaults=oven)
    >>> run.rows, run.status_counts["error"]
    (2, 1)
    """
    source, target = Path(source), Path(target)
    if part_rows < 1:
        raise TableError(f"part_rows = {part_rows}: give 1 or more", "file", "part_rows", float(part_rows))
    if not (progress is None or isinstance(progress, bool) or callable(progress)):
        raise TypeError("progress is called with the rows done and all rows: give a function of two, True or False")
    drawn = progress is True or (progress is None and _bar.watched())
    wanted = None if outputs is None else list(outputs)
    verb = partial(
        compare_table if compare else evaluate_table,
        outputs=wanted,
        threads=threads,
        defaults=defaults,
        units=units,
    )
    with _clear_errors(source, target), ExitStack() as ends:
        rows, batches = _open(source)
        ends.enter_context(alone(target))
        parts = _Parts(target, _fingerprint(source, wanted, compare, defaults, units, part_rows), resume)
        finished = parts.finished()
        done = taken_up = sum(parts.rows(number) for number in range(finished))
        bar = ends.enter_context(_bar.Bar(target.name, taken_up)) if drawn else None
        report: _bar.Report | None = bar or (progress if callable(progress) else None)
        metadata: Mapping[str, Any] = {}
        for number, part in enumerate(_regrouped(batches(taken_up), part_rows), start=finished):
            if part.num_rows == 0 and number > 0:
                break
            told = None if report is None else _shifted(report, done, rows)
            table = verb(part, progress=told)
            metadata = table.metadata
            parts.store(number, table)
            done += part.num_rows
            if report is not None:
                report(done, rows or 0)
        if not metadata:  # every part was finished: ask what the columns are without computing a row
            metadata = verb(next(iter(_regrouped(batches(0), 1))).slice(0, 0)).metadata
        counts = parts.join()
    return FileRun(target=target, rows=done, taken_up=taken_up, status_counts=counts, metadata=metadata)


def _shifted(report: _bar.Report, done: int, rows: int | None) -> _bar.Report:
    return lambda inside, _: report(done + inside, rows or 0)


@contextmanager
def _clear_errors(source: Path, target: Path) -> Iterator[None]:
    """Say of a file what is wrong with it and what to do."""
    import pyarrow as pa

    kept = f"Finished parts are kept in {target}.parts: the same call takes the run up there"
    try:
        yield
    except OSError as error:
        if error.errno == errno.ENOSPC:
            text = f"the disk is full while {target} is written: make room. {kept}"
            raise TableError(text, "file", "target", text=str(target)) from error
        name = error.filename if isinstance(error.filename, str) else str(source)
        text = f"{name} cannot be read or written: {error.strerror or error}. {kept}"
        raise TableError(text, "file", "source" if name == str(source) else "target", text=name) from error
    except pa.ArrowException as error:
        text = f"{source} cannot be read as a table: {error}. It may be cut off, or hold something else. {kept}"
        raise TableError(text, "file", "source", text=str(source)) from error


def _open(source: Path) -> tuple[int | None, Callable[[int], Iterator[_pa.RecordBatch]]]:
    """Return the rows of a file, where it says, and a function that gives its batches from some row on."""
    if source.suffix.lower() in {".parquet", ".pq"}:
        return _open_parquet(source)
    if source.suffix.lower() == ".csv":
        return None, lambda skip: _dropped(_csv(source), skip)
    text = f"{source} is neither .parquet nor .csv: name it after what it holds, or convert it"
    raise TableError(text, "file", "source", text=source.suffix, limit=".parquet or .csv")


def _open_parquet(source: Path) -> tuple[int, Callable[[int], Iterator[_pa.RecordBatch]]]:
    import pyarrow as pa
    import pyarrow.parquet as pq

    def batches(skip: int) -> Iterator[_pa.RecordBatch]:
        # without a buffer each column of a row group is read whole, and a row group may be the whole file
        with pq.ParquetFile(source, buffer_size=1 << 18, pre_buffer=False) as file:
            group = 0
            while group < file.num_row_groups and file.metadata.row_group(group).num_rows <= skip:
                skip -= file.metadata.row_group(group).num_rows
                group += 1
            yield pa.RecordBatch.from_pylist([], schema=file.schema_arrow)  # tells the columns where there are no rows
            rest = range(group, file.num_row_groups)
            yield from _dropped(file.iter_batches(1 << 15, row_groups=rest, use_threads=False), skip)

    with pq.ParquetFile(source) as file:
        return file.metadata.num_rows, batches


def _csv(source: Path) -> Iterator[_pa.RecordBatch]:
    import pyarrow as pa
    from pyarrow import csv

    with csv.open_csv(source) as first:
        names = first.schema.names
    text = csv.ConvertOptions(
        column_types=dict.fromkeys(names, pa.string()), null_values=[""], strings_can_be_null=True
    )
    with csv.open_csv(source, convert_options=text) as file:
        yield pa.RecordBatch.from_pylist([], schema=file.schema)
        yield from file


def _dropped(batches: Iterator[_pa.RecordBatch], skip: int) -> Iterator[_pa.RecordBatch]:
    for batch in batches:
        if skip and batch.num_rows and skip >= batch.num_rows:
            skip -= batch.num_rows
            continue
        yield batch.slice(skip) if skip and batch.num_rows else batch
        skip = 0 if batch.num_rows else skip


def _regrouped(batches: Iterator[_pa.RecordBatch], rows: int) -> Iterator[_pa.Table]:
    """Give tables of exactly so many rows, the last one shorter; an empty one where there are none."""
    import pyarrow as pa

    waiting: list[_pa.RecordBatch] = []
    count, given = 0, False
    schema = None
    for batch in batches:
        schema = batch.schema
        while batch.num_rows and count + batch.num_rows >= rows:
            need = rows - count
            yield pa.Table.from_batches([*waiting, batch.slice(0, need)], schema)
            waiting, count, given, batch = [], 0, True, batch.slice(need)
        if batch.num_rows:
            waiting.append(batch)
            count += batch.num_rows
    if schema is not None and (waiting or not given):
        yield pa.Table.from_batches(waiting, schema)


def _fingerprint(source: Path, *asked: object) -> dict[str, str]:
    """Return what must be the same for a run to be taken up."""
    import hashlib

    state = source.stat()
    with source.open("rb") as file:
        digest = hashlib.sha256(file.read(1 << 16))
        file.seek(max(0, state.st_size - (1 << 16)))
        digest.update(file.read())
    return {
        "source": f"{state.st_size} bytes, {digest.hexdigest()}",
        "asked": repr(asked),
        "version": version(),
    }


class _Parts:
    """Finished parts of a run, each whole under its name or not there."""

    def __init__(self, target: Path, asked: dict[str, str], resume: bool) -> None:
        self.target, self.folder = target, target.with_name(target.name + ".parts")
        plan = self.folder / "run.json"
        if not resume:
            shutil.rmtree(self.folder, ignore_errors=True)
        self.folder.mkdir(exist_ok=True)
        if plan.exists() and self.path(0).exists():
            before = json.loads(plan.read_text(encoding="utf-8"))
            differs = ", ".join(key for key in asked if before.get(key) != asked[key])
            if differs:
                text = (
                    f"{self.folder} holds the parts of another run ({differs} differs): finish that one with the call "
                    "that began it, or throw it away with resume=False"
                )
                raise TableError(text, "file", "target", text=str(self.folder))
        else:
            _whole(plan, lambda path: path.write_text(json.dumps(asked, indent=1), encoding="utf-8"))
        for left in self.folder.glob("*.tmp"):
            left.unlink()

    def path(self, number: int) -> Path:
        return self.folder / f"{number:06d}.parquet"

    def finished(self) -> int:
        number = 0
        while self.path(number).exists():
            number += 1
        return number

    def rows(self, number: int) -> int:
        import pyarrow.parquet as pq

        return int(pq.read_metadata(self.path(number)).num_rows)

    def store(self, number: int, table: Any) -> None:
        import pyarrow as pa
        import pyarrow.parquet as pq

        _whole(self.path(number), lambda path: pq.write_table(pa.table(table), path, row_group_size=1 << 30))

    def join(self) -> dict[str, int]:
        """Write the target from all parts, and count its rows by status."""
        import pyarrow.compute as pc
        import pyarrow.parquet as pq

        counts: dict[str, int] = {}

        def write(path: Path) -> None:
            with pq.ParquetFile(self.path(0)) as first:
                schema = first.schema_arrow
            with pq.ParquetWriter(path, schema) as writer:
                for number in range(self.finished()):
                    part = pq.read_table(self.path(number))
                    writer.write_table(part, row_group_size=max(1, part.num_rows))
                    for entry in pc.value_counts(part.column("status").combine_chunks()).to_pylist():
                        counts[entry["values"]] = counts.get(entry["values"], 0) + entry["counts"]

        _whole(self.target, write)
        shutil.rmtree(self.folder)
        return counts


def _whole(path: Path, write: Callable[[Path], object]) -> None:
    """Write a file that is there whole under its name, or not at all."""
    beside = path.with_name(path.name + ".tmp")
    try:
        write(beside)
        with beside.open("rb+") as file:
            os.fsync(file.fileno())
        beside.replace(path)
    except BaseException:
        beside.unlink(missing_ok=True)
        raise
    if hasattr(os, "O_DIRECTORY"):
        folder = os.open(path.parent, os.O_RDONLY)
        try:
            os.fsync(folder)
        finally:
            os.close(folder)
