"""Whether the two sides agree: both on the same columns, the worst column named."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import numpy as np
import pyarrow as pa

from .chain import ON_THE_WAY, OUTPUTS
from .draws import METHODS, lines

PLACE = ("fill.application_section", "fill.application_position")
LIVES = ("wear.life_mean_years", "wear.life_local_years", "wear.life_pin_years", "wear.life_bush_years")
#: What the table is asked for when the sides are compared.
COMPARED = (*OUTPUTS, *ON_THE_WAY, *LIVES)


def as_arrow(columns: dict[str, Any]) -> pa.Table:
    """Columns as a table; what is not a number in a column of numbers is an empty cell."""
    count = max(len(one) for one in columns.values() if np.ndim(one))
    return pa.table({
        name: pa.array(one if np.ndim(one) else np.full(count, one), from_pandas=True) for name, one in columns.items()
    })  # fmt: skip


def as_numpy(table: pa.Table, own: Iterable[str] = ()) -> dict[str, Any]:
    """The columns of a table but for those of the caller's own."""

    def column(array: pa.ChunkedArray) -> np.ndarray:
        if pa.types.is_string(array.type) or pa.types.is_large_string(array.type):
            return np.array(array.to_pylist())
        return array.to_numpy()

    return {name: column(table[name]) for name in table.column_names if name not in own}


def mixture(count: int, seed: int) -> tuple[dict[str, Any], pa.Table]:
    """Lines of all methods in equal parts, as columns and as a table."""
    each = [lines(count // len(METHODS), method, seed + place, True) for place, method in enumerate(METHODS)]
    tables = [as_arrow(one) for one in each]
    table = pa.concat_tables(tables, promote_options="permissive").combine_chunks()
    columns: dict[str, Any] = {}
    for name in table.column_names:
        # an empty cell of a column of flags or words is never read by the method that leaves it empty
        kind = next(np.asarray(one[name]).dtype.kind for one in each if name in one)
        filler: Any = {"b": True, "U": ""}.get(kind, np.nan)
        parts = [one.get(name, filler) for one in each]
        columns[name] = np.concatenate([np.broadcast_to(part, count // len(METHODS)) for part in parts])
    return columns, table


def compared(found: pa.Table, mine: dict[str, np.ndarray]) -> tuple[dict[str, float], int, int, int]:
    """Greatest relative difference by column; rows compared, rows that the core refuses, rows at another place.

    Where a loop has one temperature all round, rounding may tell the core that another place is cooler: it is another
    line then. Of two lives that are the same to 1e-9 either may govern.
    """
    fine = np.array([status != "error" for status in found["status"].to_pylist()])
    same = fine.copy()
    for name in PLACE:
        same &= found[name].to_numpy() == mine[name]
    worst = {}
    for name in (*OUTPUTS, *ON_THE_WAY):
        ours, theirs = found[name].to_numpy()[same], mine[name][same]
        if name == "wear.governs":
            lives = np.stack([found[life].to_numpy()[same] for life in LIVES])
            order = np.array(["mean", "local", "pin", "bush"])
            first = (ours[:, None] == order).argmax(axis=1), (theirs[:, None] == order).argmax(axis=1)
            place = np.arange(lives.shape[1])
            apart = np.abs(lives[first[0], place] / lives[first[1], place] - 1.0)
            worst[name] = float(np.where(ours == theirs, 0.0, apart).max(initial=0.0))
            continue
        ours = ours.astype(float)
        with np.errstate(divide="ignore", invalid="ignore"):
            apart = np.abs(theirs - ours) / np.abs(ours)
        apart = np.where((theirs == ours) | (np.isnan(theirs) & np.isnan(ours)), 0.0, apart)
        worst[name] = float(np.nan_to_num(apart, nan=np.inf).max(initial=0.0))
    return worst, int(same.sum()), int((~fine).sum()), int((fine & ~same).sum())
