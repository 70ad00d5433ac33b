"""Columns as an analyst has them: what is given as an array, what is not as one number for all rows."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

GRAVITY = 9.80665
ICE_POINT = 273.15
YEAR = 8760.0 * 3600.0

# public unit -> SI, by the ending of the name
MM, UM, UL, LITRE, MINUTE, HOUR = 1e-3, 1e-6, 1e-9, 1e-3, 60.0, 3600.0
ML_PER_MIN, M_PER_MIN, PCT, MPA, KW, RPM = 1e-6 / 60.0, 1.0 / 60.0, 1e-2, 1e6, 1e3, 1.0 / 60.0
PER_YEAR, DEG = 1.0 / YEAR, np.pi / 180.0


class Columns:
    """Some rows of the columns; a column that is missing is a scalar, so that NumPy broadcasts it."""

    def __init__(self, given: Mapping[str, Any], rows: slice | np.ndarray, count: int) -> None:
        self.given, self.rows, self.count = given, rows, count

    def has(self, name: str) -> bool:
        return name in self.given

    def raw(self, name: str, default: Any = None) -> Any:
        """Return a column as it is, or the default."""
        value = self.given.get(name)
        if value is not None:
            return value[self.rows] if np.ndim(value) else value
        if default is None:
            raise KeyError(f"{name} is missing")
        return default

    def si(self, name: str, factor: float = 1.0, default: Any = None) -> Any:
        """Return a column in SI, or its default (given in the unit of the name)."""
        value = self.raw(name, default)
        return value if factor == 1.0 else value * factor

    def is_word(self, name: str, word: str, default: str) -> Any:
        """Return where a column of words has this word: one flag where it is the same in all rows."""
        value = self.raw(name, default)
        return value == word


def at(value: Any, rows: np.ndarray) -> Any:
    """Return the chosen rows (flags or places) of an array; a scalar stays one. Indexing would not be contiguous."""
    if not np.ndim(value):
        return value
    return value.compress(rows, axis=-1) if rows.dtype == bool else value.take(rows, axis=-1)


def full(value: Any, count: int) -> np.ndarray:
    """Return an array of `count` rows of whatever it was."""
    return np.ascontiguousarray(np.broadcast_to(np.asarray(value, dtype=float), (count,)))
