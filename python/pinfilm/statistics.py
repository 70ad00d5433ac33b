"""What a log of readings is worth, when its level changed, what a saving is sure of."""

from __future__ import annotations

from ._core import (
    CusumPath,
    LevelChanges,
    change_points,
    cusum,
    cv_rmse_pct,
    effective_sample_size,
    lag1,
    newey_west_se,
    nmbe_pct,
    savings_uncertainty,
)

__all__ = [
    "CusumPath",
    "LevelChanges",
    "change_points",
    "cusum",
    "cv_rmse_pct",
    "effective_sample_size",
    "lag1",
    "newey_west_se",
    "nmbe_pct",
    "savings_uncertainty",
]
