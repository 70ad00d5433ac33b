"""The equivalent circuit of a three-phase cage induction motor, and current from a nameplate."""

from __future__ import annotations

from ._core import (
    OperatingPoint,
    current_from_power_a,
    equivalent_circuit,
    power_from_current_kw,
)

__all__ = [
    "OperatingPoint",
    "current_from_power_a",
    "equivalent_circuit",
    "power_from_current_kw",
]
