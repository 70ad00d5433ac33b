"""Sprockets, chain length and chain speed."""

from __future__ import annotations

from ._core import (
    articulation_angle_deg,
    centre_distance_mm,
    chain_length_pitches,
    chain_speed_m_per_s,
    pitch_diameter_mm,
    roller_chain_power_kw,
    speed_ripple,
)

__all__ = [
    "articulation_angle_deg",
    "centre_distance_mm",
    "chain_length_pitches",
    "chain_speed_m_per_s",
    "pitch_diameter_mm",
    "roller_chain_power_kw",
    "speed_ripple",
]
