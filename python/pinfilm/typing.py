"""Types of arguments and results, for type checkers."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Protocol, SupportsFloat, SupportsIndex, TypeAlias

if TYPE_CHECKING:
    from numpy.typing import ArrayLike

__all__ = ["Floats", "FloatsOut", "Quantity", "Scalar"]


class Quantity(Protocol):
    """A number with a unit, as units libraries make them; converted to the unit that the name carries."""

    @property
    def magnitude(self) -> Any:
        """The number."""

    def to(self, unit: Any, /) -> Any:
        """Return the same quantity in another unit."""


Scalar: TypeAlias = "SupportsFloat | SupportsIndex | Quantity"

Floats: TypeAlias = "ArrayLike | SupportsFloat | SupportsIndex | Quantity"
"""A number or an array of numbers: list, NumPy array, labelled array, or a quantity of either."""

FloatsOut: TypeAlias = Any
"""A float where all arguments were numbers, a labelled array where one had labels, else a NumPy array."""
