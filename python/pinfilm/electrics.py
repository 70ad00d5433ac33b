"""The 24 V cable to the injectors."""

from __future__ import annotations

from ._core import (
    conductor_resistance_ohm_per_km,
    load_voltage_v,
    voltage_drop_v,
)

__all__ = [
    "conductor_resistance_ohm_per_km",
    "load_voltage_v",
    "voltage_drop_v",
]
