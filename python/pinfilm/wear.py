"""Archard's law, and the elongation that follows from worn pins and bushes."""

from __future__ import annotations

from ._core import (
    archard_volume_mm3,
    elongation_pct,
    unlubricated_coefficient,
)

__all__ = [
    "archard_volume_mm3",
    "elongation_pct",
    "unlubricated_coefficient",
]
