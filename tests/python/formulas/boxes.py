"""Inputs for every formula, drawn from the ranges of the register where nothing narrower is needed."""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

# Low and high of what is drawn for each argument: inside the allowed range, and where the formula has an answer.
Box = dict[str, tuple[float, float]]


@dataclass(frozen=True)
class Case:
    """A formula with one number for each element: name, box of its arguments, further fixed arguments."""

    path: str
    box: Box
    fixed: dict[str, Any] = field(default_factory=dict)
    attribute: str = ""

    def call(self, **arguments: Any) -> Any:
        module, name = self.path.split(".")
        function: Callable[..., Any] = getattr(importlib.import_module(f"pinfilm.{module}"), name)
        result = function(**arguments, **self.fixed)
        return getattr(result, self.attribute) if self.attribute else result


PLATE = {
    "rated_power_kw": 4.0,
    "rated_voltage_v": 400.0,
    "rated_current_a": 8.05,
    "rated_speed_rpm": 1450.0,
    "rated_efficiency": 0.886,
    "rated_power_factor": 0.81,
}
CIRCUIT = {
    "stator_resistance_ohm": 0.641,
    "stator_reactance_ohm": 1.106,
    "rotor_resistance_ohm": 0.332,
    "rotor_reactance_ohm": 0.464,
    "magnetising_reactance_ohm": 26.3,
    "voltage_v": 460.0,
    "frequency_hz": 60.0,
    "poles": 4,
}
JOINT: Box = {
    "plate_gap_mm": (0.2, 1.0),
    "plate_path_mm": (2.0, 20.0),
    "pin_diameter_mm": (4.0, 30.0),
    "joint_clearance_um": (20.0, 400.0),
    "joint_depth_mm": (5.0, 40.0),
}

CASES = [
    Case("kinematics.pitch_diameter_mm", {"pitch_mm": (4, 1000), "teeth": (3, 200)}),
    Case("kinematics.articulation_angle_deg", {"teeth": (3, 200)}),
    Case("kinematics.speed_ripple", {"teeth": (3, 200)}),
    Case("kinematics.chain_speed_m_per_s", {"pitch_mm": (4, 1000), "teeth": (3, 200), "speed_rpm": (0, 1e4)}),
    Case("kinematics.roller_chain_power_kw", {"pitch_mm": (6.35, 76.2), "teeth": (11, 40), "speed_rpm": (1, 2000)}),
    Case(
        "kinematics.chain_length_pitches",
        {"centre_mm": (10, 1e5), "pitch_mm": (4, 1000), "teeth_1": (3, 200), "teeth_2": (3, 200)},
    ),
    Case(
        "kinematics.centre_distance_mm",
        {"length_pitches": (400, 1e5), "pitch_mm": (4, 1000), "teeth_1": (3, 100), "teeth_2": (3, 100)},
    ),
    Case(
        "tension.rolling_resistance",
        {
            "friction": (0, 1),
            "axle_diameter_mm": (0, 100),
            "wheel_diameter_mm": (1, 500),
            "rolling_arm_mm": (0, 5),
        },
    ),
    Case("tension.capstan_ratio", {"friction": (0, 1), "wrap_deg": (0, 720)}),
    Case("tension.sag_tension_n", {"mass_kg_per_m": (1, 100), "span_m": (0.1, 50), "sag_m": (0.001, 1)}),
    Case("oil.viscosity_index", {"v40_mm2_s": (150, 400), "v100_mm2_s": (12, 30)}),
    Case("oil.v100_mm2_s", {"v40_mm2_s": (20, 1000), "viscosity_index": (0, 200)}),
    Case(
        "oil.kinematic_viscosity_mm2_s",
        {
            "temperature_c": (0, 150),
            "t1_c": (35, 45),
            "v1_mm2_s": (50, 500),
            "t2_c": (95, 105),
            "v2_mm2_s": (5, 30),
        },
    ),
    Case("oil.blend_viscosity_mm2_s", {"v_a_mm2_s": (0.3, 1e4), "v_b_mm2_s": (0.3, 1e4), "fraction_a": (0, 1)}),
    Case("oil.dynamic_viscosity_mpa_s", {"kinematic_viscosity_mm2_s": (1, 1e4), "density_kg_per_m3": (700, 1200)}),
    Case("oil.density_kg_per_m3", {"density_15_kg_per_m3": (700, 1200), "temperature_c": (-40, 250)}),
    Case("oil.handbook_grade", {"ambient_c": (-4.9, 70)}),
    Case("oil.handbook_sae_grade", {"ambient_c": (-6.6, 59.9)}),
    Case("film.pressure_mpa", {"load_n": (1, 1e5), "pin_diameter_mm": (1, 100), "joint_length_mm": (1, 200)}),
    Case("film.sommerfeld_short", {"eccentricity_ratio": (0.001, 0.9999), "length_to_diameter": (0.2, 5)}),
    Case("film.eccentricity_short", {"sommerfeld": (1e-6, 1e4), "length_to_diameter": (0.2, 5)}),
    Case(
        "film.squeeze_time_short_s",
        {
            "viscosity_mpa_s": (1, 1e4),
            "radius_mm": (1, 50),
            "length_mm": (1, 100),
            "load_n": (1, 1e5),
            "clearance_um": (5, 500),
            "e1": (0, 0.5),
            "e2": (0.5, 0.9999),
        },
    ),
    Case(
        "film.squeeze_time_short_s",
        {"e1": (0, 0.5), "e2": (0.5, 0.99)},
        {
            "viscosity_mpa_s": 100.0,
            "radius_mm": 7.5,
            "length_mm": 30.0,
            "load_n": 5e3,
            "clearance_um": 50.0,
            "film": "full",
        },
    ),
    Case(
        "film.line_contact_film_um",
        {
            "viscosity_mpa_s": (1, 1e4),
            "speed_m_per_s": (0.001, 10),
            "load_n_per_mm": (0.1, 1000),
            "radius_mm": (1, 1e4),
            "pressure_viscosity_per_gpa": (5, 40),
            "modulus_gpa": (1, 300),
        },
        {"formula": "central"},
    ),
    Case("film.asperity_integral", {"height_ratio": (-3, 8), "order": (0, 5)}),
    Case("film.reynolds_bearing", {"eccentricity_ratio": (0.1, 0.99)}, {"length_to_diameter": 1.5}, "friction"),
    Case(
        "coverage.lock_risk",
        {
            "circuit_time_s": (100, 5000),
            "run_s": (60, 600),
            "dwell_s": (0, 5000),
            "speed_tolerance_pct": (0.1, 5),
            "longest_wait_h": (1, 1000),
        },
    ),
    Case(
        "coverage.lock_time_s",
        {"ratio_error": (1e-4, 0.1), "correlation_h": (0.5, 24)},
        {"circuit_time_s": 1200, "run_s": 600, "dwell_s": 3000},
        "random_s",
    ),
    Case(
        "coverage.manual_interval",
        {"interval_h": (1, 1000), "interval_cv": (0.1, 1), "miss_share": (0, 0.4)},
        attribute="p95_h",
    ),
    Case(
        "hydraulics.pressure_drop_kpa",
        {
            "flow_ml_per_min": (0, 100),
            "viscosity_mpa_s": (10, 1e4),
            "bore_mm": (2, 20),
            "length_m": (0, 100),
            "density_kg_per_m3": (700, 1000),
        },
    ),
    Case(
        "hydraulics.penetration_time_s",
        {
            "depth_mm": (0, 20),
            "gap_um": (10, 1000),
            "viscosity_mpa_s": (1, 1e4),
            "surface_tension_mn_per_m": (20, 40),
            "contact_angle_deg": (0, 60),
            "angle_to_vertical_deg": (0, 90),
        },
    ),
    Case("hydraulics.joint_entry_time_s", {"viscosity_mpa_s": (1, 1e4), **JOINT}),
    Case(
        "hydraulics.viscosity_window_mpa_s",
        {
            "time_available_s": (1, 1e4),
            "articulations": (10, 1e5),
            "angle_deg": (5, 90),
            "film_time_h": (1, 200),
            **JOINT,
        },
        attribute="most_mpa_s",
    ),
    Case(
        "hydraulics.vent_time_s",
        {
            "length_m": (1, 100),
            "bore_mm": (2, 20),
            "viscosity_mpa_s": (10, 1e4),
            "pressure_kpa": (3000, 9000),
            "reset_pressure_kpa": (500, 1000),
        },
    ),
    Case(
        "fill.loss_rates_per_h",
        {
            "temperature_c": (20, 200),
            "viscosity_mpa_s": (1, 1e3),
            "angle_deg": (5, 90),
            "articulations_per_circuit": (2, 20),
            "circuit_time_s": (10, 5000),
            "mass_per_area_kg_per_m2": (0.1, 10),
            "wash_interval_h": (8, 168),
            "wash_removed_share": (0, 0.9),
        },
        attribute="total_per_h",
    ),
    Case("fill.fill_between_shots", {"fill_start": (0, 1), "loss_rate_per_h": (0, 1), "time_h": (0, 1e4)}),
    Case(
        "fill.periodic_fill",
        {"dose_ul": (1, 100), "capacity_ul": (50, 200), "loss_rate_per_h": (1e-4, 0.1)},
        {"circuit_time_s": 1440, "run_s": 300, "dwell_s": 6900},
        "mean_fill",
    ),
    Case(
        "fill.smallest_shot_ul",
        {"capacity_ul": (10, 200), "loss_rate_per_h": (1e-4, 0.01), "floor": (0.1, 0.5)},
        {"circuit_time_s": 1237, "run_s": 300, "dwell_s": 3300},
    ),
    Case(
        "fill.demand_ul_per_joint_h",
        {"loss_rate_per_h": (0, 1), "capacity_ul": (1, 1000), "target_fill": (0, 1)},
    ),
    Case(
        "electrics.voltage_drop_v",
        {"current_a": (0, 20), "length_m": (0, 200), "temperature_c": (-20, 80)},
        {"area_mm2": 1.5, "conductor_class": 5},
    ),
    Case(
        "electrics.load_voltage_v",
        {"power_w": (1, 40), "length_m": (1, 50), "temperature_c": (-20, 80), "supply_voltage_v": (22, 30)},
        {"area_mm2": 1.5, "conductor_class": 5},
    ),
    Case("motor.equivalent_circuit", {"slip": (0.001, 1)}, CIRCUIT, "current_a"),
    Case("motor.equivalent_circuit", {"shaft_power_w": (0, 2e4)}, CIRCUIT, "shaft_torque_nm"),
    Case("motor.current_from_power_a", {"shaft_power_kw": (0.1, 6)}, PLATE),
    Case("motor.power_from_current_kw", {"current_a": (4.5, 12)}, PLATE),
    Case(
        "wear.archard_volume_mm3",
        {"coefficient": (0, 1e-2), "load_n": (1, 1e5), "distance_m": (0, 1e6), "hardness_mpa": (100, 1e4)},
    ),
    Case("wear.elongation_pct", {"pin_wear_um": (0, 1e4), "bush_wear_um": (0, 1e4), "pitch_mm": (4, 1000)}),
    Case("economics.single_present_value_factor", {"rate": (-0.5, 1), "years": (0, 60)}),
    Case("economics.uniform_present_value_factor", {"rate": (-0.5, 1), "years": (0, 60)}),
    Case("statistics.effective_sample_size", {"count": (1, 1e6), "lag1": (-0.99, 0.99)}),
    Case(
        "statistics.savings_uncertainty",
        {
            "quantile": (0.5, 3),
            "cv_rmse_pct": (1, 50),
            "saved_share": (0.01, 1),
            "count_before": (30, 1e5),
            "count_after": (30, 1e5),
            "lag1": (-0.9, 0.99),
        },
    ),
    Case("economics.payback_days", {"invest": (1, 1e6), "saving_per_year": (1, 1e6), "year_days": (200, 366)}),
]
