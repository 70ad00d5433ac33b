"""Types of arguments and results, for type checkers."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, Protocol, SupportsFloat, SupportsIndex, TypeAlias

from numpy.typing import NDArray

from ._core import Distribution, Line

__all__ = [
    "Array",
    "ArrowStream",
    "Column",
    "Columns",
    "Correlations",
    "Defaults",
    "Doubts",
    "DoubtsOut",
    "Draws",
    "Floats",
    "FloatsOut",
    "Grid",
    "Lines",
    "Progress",
    "Quantity",
    "Scalar",
]


class Quantity(Protocol):
    """A number with a unit, as units libraries make them; converted to the unit that the name carries."""

    @property
    def magnitude(self) -> Any:
        """The number."""

    def to(self, unit: Any, /) -> Any:
        """Return the same quantity in another unit."""


class Array(Protocol):
    """What NumPy takes for an array: its own, labelled ones, those of other libraries."""

    def __array__(self) -> Any:
        """Return a NumPy array."""


class ArrowStream(Protocol):
    """What hands over its columns by the Arrow C stream interface: pandas, polars, pyarrow, duckdb, our own tables."""

    def __arrow_c_stream__(self, requested_schema: Any = None) -> Any:
        """Return a capsule with the stream."""


Columns: TypeAlias = ArrowStream | Mapping[str, Any]
"""A table, or columns by name."""

Defaults: TypeAlias = Line | Mapping[str, Any]
"""What holds where no cell of a table says otherwise: a line, or values by path."""

Scalar: TypeAlias = SupportsFloat | SupportsIndex | Quantity
"""A number, with or without a unit."""

Floats: TypeAlias = SupportsFloat | SupportsIndex | Quantity | Array | Sequence[Any]
"""A number or an array of numbers: list, NumPy array, labelled array, or a quantity of either."""

Draws: TypeAlias = Array | Sequence[Sequence[float]] | ArrowStream | Mapping[str, Any]
"""Values by draw and row: an array of two axes, or a table with the columns ``draw``, ``row`` and the value."""

FloatsOut: TypeAlias = Any
"""A float where all arguments were numbers, a labelled array where one had labels, else a NumPy array."""

Progress: TypeAlias = Callable[[int, int], object]
"""Called with how many of how many are done."""

Lines: TypeAlias = Line | tuple[Line, Line]
"""A line, or a pair (now, proposed)."""

Doubts: TypeAlias = Mapping[str, Distribution | tuple[Distribution, Distribution] | None]
"""What is thought of uncertain inputs, by dotted path; a pair is (now, proposed), None what the register thinks."""

DoubtsOut: TypeAlias = dict[str, Distribution | tuple[Distribution, Distribution] | None]
"""The same as it is given back."""

Correlations: TypeAlias = Mapping[tuple[str, str], float] | Sequence[Sequence[float]] | Array
"""Correlations by pairs of paths, or as a matrix in the order of the uncertain inputs."""

Grid: TypeAlias = Mapping[str, Sequence[Any] | Array]
"""Values by dotted path."""

Column: TypeAlias = NDArray[Any]
"""A column of numbers or words."""
