"""Many lines on many machines: one stateless function from Arrow to Arrow, and what Dask needs to run it.

`evaluate_arrow` keeps nothing between calls and gives the same rows however a table is cut, so any engine that maps
over Arrow data can run it, and may run a piece again where a worker was lost:

- Spark: ``frame.mapInArrow(functools.partial(pinfilm.scale.evaluate_batches, dot=":"), schema)``; it takes a dot in a
  name for a struct, so columns come as ``duty:speed_m_per_min``
- Ray Data: ``data.map_batches(pinfilm.scale.evaluate_arrow, batch_format="pyarrow")``
- Dask: `evaluate_dask`.

Workers compute with one thread each unless told otherwise: the engine already uses all processors.
"""

from __future__ import annotations

import warnings
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, Any

from ._core import Line, compare_table, evaluate_table
from .errors import PinfilmTableWarning

if TYPE_CHECKING:
    import pyarrow as _pa

__all__ = ["evaluate_arrow", "evaluate_batches", "evaluate_dask", "result_schema"]


def evaluate_arrow(
    table: _pa.Table,
    *,
    outputs: Sequence[str] | None = None,
    compare: bool = False,
    defaults: Line | Mapping[str, Any] | None = None,
    units: Mapping[str, str] | None = None,
    threads: int | None = 1,
    dot: str = ".",
) -> _pa.Table:
    """Evaluate one piece of a table.

    Parameters
    ----------
    table : pyarrow.Table
        Rows, as `evaluate_table` takes them.
    compare : bool
        Compare the two lines of each row, as `compare_table` does with one table.
    outputs, defaults, units, threads
        As in `evaluate_table`.
    dot : str
        What stands for the dot in names of columns, in and out, where an engine cannot have dots.

    Returns
    -------
    pyarrow.Table
        The columns that came in, results, and the state of each row.

    Raises
    ------
    TableError
        As `evaluate_table`.

    Examples
    --------
    >>> import pyarrow, pinfilm
    >>> oven = pinfilm.examples.load("oven_now")
    >>> piece = pyarrow.table({"asset": ["A1"], "duty.speed_m_per_min": [3.0]})
    >>> evaluate_arrow(piece, outputs=["drive.current_a"], defaults=oven).column_names
    ['asset', 'duty.speed_m_per_min', 'drive.current_a', 'status', 'code', 'message']
    """
    import pyarrow as pa

    verb = compare_table if compare else evaluate_table
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", PinfilmTableWarning)  # once a piece is too often; ask `result_schema` first
        found = verb(
            table.rename_columns([name.replace(dot, ".") for name in table.column_names]),
            outputs=None if outputs is None else list(outputs),
            defaults=defaults,
            units=units,
            threads=threads,
        )
    result = pa.table(found)
    return result.rename_columns([name.replace(".", dot) for name in result.column_names])


def evaluate_batches(batches: Iterable[_pa.RecordBatch], **asked: Any) -> Iterator[_pa.RecordBatch]:
    """Evaluate batches as they come; the function that engines map over an iterator of Arrow batches.

    Parameters
    ----------
    batches : iterable of pyarrow.RecordBatch
        Rows, as `evaluate_table` takes them.
    **asked
        As in `evaluate_arrow`.

    Yields
    ------
    pyarrow.RecordBatch
        As `evaluate_arrow` gives them.

    Examples
    --------
    >>> import pyarrow, pinfilm
    >>> oven = pinfilm.examples.load("oven_now")
    >>> pieces = pyarrow.table({"duty.speed_m_per_min": [3.0, 4.0]}).to_batches(max_chunksize=1)
    >>> sum(batch.num_rows for batch in evaluate_batches(pieces, defaults=oven))
    2
    """
    import pyarrow as pa

    for batch in batches:
        yield from evaluate_arrow(pa.Table.from_batches([batch]), **asked).to_batches()


def result_schema(schema: _pa.Schema, **asked: Any) -> _pa.Schema:
    """Return the schema of the results, for engines that must know it beforehand; says what is wrong with the columns.

    Parameters
    ----------
    schema : pyarrow.Schema
        Of the rows.
    **asked
        As in `evaluate_arrow`.

    Warns
    -----
    PinfilmTableWarning
        For a column that looks misspelt.

    Examples
    --------
    >>> import pyarrow, pinfilm
    >>> oven = pinfilm.examples.load("oven_now")
    >>> result_schema(pyarrow.schema({"duty.speed_m_per_min": "double"}), defaults=oven).names[-1]
    'message'
    """
    asked = dict(asked)
    dot = asked.get("dot", ".")
    names = [name.replace(dot, ".") for name in schema.names]
    verb = compare_table if asked.get("compare", False) else evaluate_table
    plan = {key: value for key, value in asked.items() if key not in {"compare", "dot"}}
    verb(schema.empty_table().rename_columns(names), **plan)  # for its warnings
    return evaluate_arrow(schema.empty_table(), **asked).schema


def evaluate_dask(lines: Any, **asked: Any) -> Any:
    """Evaluate a Dask dataframe, or a Dask bag of Arrow tables, piece by piece.

    Parameters
    ----------
    lines : dask.dataframe.DataFrame or dask.bag.Bag
        Rows, as `evaluate_table` takes them; in a bag each item is a ``pyarrow.Table``.
    **asked
        As in `evaluate_arrow`.

    Returns
    -------
    dask.dataframe.DataFrame or dask.bag.Bag
        Lazy: computed by whatever scheduler runs it. A piece that is lost with its worker is computed again.

    Examples
    --------
    >>> import dask.bag, pyarrow, pinfilm
    >>> oven = pinfilm.examples.load("oven_now")
    >>> pieces = [pyarrow.table({"duty.speed_m_per_min": [speed]}) for speed in (3.0, 4.0)]
    >>> found = evaluate_dask(dask.bag.from_sequence(pieces), defaults=oven)
    >>> [piece.num_rows for piece in found.compute(scheduler="sync")]
    [1, 1]
    """
    if hasattr(lines, "map_partitions") and hasattr(lines, "_meta"):
        return lines.map_partitions(_of_frame, meta=_of_frame(lines._meta, **asked), **asked)
    return lines.map(evaluate_arrow, **asked)


def _of_frame(frame: Any, **asked: Any) -> Any:
    """Evaluate one pandas frame; its index stays."""
    import pandas as pd
    import pyarrow as pa

    found = evaluate_arrow(pa.Table.from_pandas(frame, preserve_index=False), **asked)
    result = found.to_pandas(types_mapper=pd.ArrowDtype)
    result.index = frame.index
    return result
