"""Viscosity against temperature, viscosity index, density, blends, grades."""

from __future__ import annotations

from ._core import (
    blend_viscosity_mm2_s,
    density_kg_per_m3,
    dynamic_viscosity_mpa_s,
    grade_limits_mm2_s,
    handbook_grade,
    handbook_sae_grade,
    kinematic_viscosity_mm2_s,
    v100_mm2_s,
    viscosity_index,
)

__all__ = [
    "blend_viscosity_mm2_s",
    "density_kg_per_m3",
    "dynamic_viscosity_mpa_s",
    "grade_limits_mm2_s",
    "handbook_grade",
    "handbook_sae_grade",
    "kinematic_viscosity_mm2_s",
    "v100_mm2_s",
    "viscosity_index",
]
