"""What wheels, turns and slack strands do to the pull."""

from __future__ import annotations

from ._core import (
    capstan_ratio,
    rolling_resistance,
    sag_tension_n,
)

__all__ = [
    "capstan_ratio",
    "rolling_resistance",
    "sag_tension_n",
]
