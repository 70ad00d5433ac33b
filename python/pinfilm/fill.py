"""How fast a joint loses its oil, and how full it stays from shot to shot."""

from __future__ import annotations

from ._core import (
    LossRates,
    PeriodicFill,
    demand_ul_per_joint_h,
    fill_between_shots,
    loss_rates_per_h,
    periodic_fill,
    smallest_shot_ul,
)

__all__ = [
    "LossRates",
    "PeriodicFill",
    "demand_ul_per_joint_h",
    "fill_between_shots",
    "loss_rates_per_h",
    "periodic_fill",
    "smallest_shot_ul",
]
