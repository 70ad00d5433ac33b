"""Types of arguments and results, for type checkers."""

from __future__ import annotations

from typing import Any, Protocol, SupportsFloat, SupportsIndex, TypeAlias

__all__ = ["Quantity", "Scalar"]


class Quantity(Protocol):
    """A number with a unit, as units libraries make them; converted to the unit that the name carries."""

    @property
    def magnitude(self) -> Any:
        """The number."""

    def to(self, unit: Any, /) -> Any:
        """Return the same quantity in another unit."""


Scalar: TypeAlias = SupportsFloat | SupportsIndex | Quantity
