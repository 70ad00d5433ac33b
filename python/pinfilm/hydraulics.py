"""Oil in the line, and on its way into the joint."""

from __future__ import annotations

from ._core import (
    ViscosityWindow,
    joint_entry_time_s,
    penetration_time_s,
    pressure_drop_kpa,
    vent_time_s,
    viscosity_window_mpa_s,
)

__all__ = [
    "ViscosityWindow",
    "joint_entry_time_s",
    "penetration_time_s",
    "pressure_drop_kpa",
    "vent_time_s",
    "viscosity_window_mpa_s",
]
