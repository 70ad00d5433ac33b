"""Statistics of logs: change points, errors that allow for autocorrelation, goodness of fit, charts."""

from __future__ import annotations

from ._core import (
    change_points,
    cusum,
    cv_rmse_pct,
    effective_sample_size,
    newey_west_se,
    nmbe_pct,
    savings_uncertainty,
)

__all__ = [
    "change_points",
    "cusum",
    "cv_rmse_pct",
    "effective_sample_size",
    "newey_west_se",
    "nmbe_pct",
    "savings_uncertainty",
]
