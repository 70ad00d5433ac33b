"""Present value, rate of return, payback."""

from __future__ import annotations

from ._core import (
    discounted_payback_years,
    irr,
    irr_roots,
    irr_status,
    npv,
    payback_days,
    payback_status,
    payback_years,
    single_present_value_factor,
    uniform_present_value_factor,
)

__all__ = [
    "discounted_payback_years",
    "irr",
    "irr_roots",
    "irr_status",
    "npv",
    "payback_days",
    "payback_status",
    "payback_years",
    "single_present_value_factor",
    "uniform_present_value_factor",
]
