"""Pressure and oil film between pin and bush: textbook formulas and the reference solution."""

from __future__ import annotations

from ._core import (
    ReynoldsBearing,
    asperity_integral,
    eccentricity_short,
    line_contact_film_um,
    pressure_mpa,
    reynolds_bearing,
    sommerfeld_short,
    squeeze_time_short_s,
)

__all__ = [
    "ReynoldsBearing",
    "asperity_integral",
    "eccentricity_short",
    "line_contact_film_um",
    "pressure_mpa",
    "reynolds_bearing",
    "sommerfeld_short",
    "squeeze_time_short_s",
]
