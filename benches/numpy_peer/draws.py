"""Random lines over usual ranges, to compare the two sides on: the same seed gives the same columns."""

from __future__ import annotations

from typing import Any

import numpy as np

METHODS = ("timed_spray", "synchronised", "drip", "manual")
GRADES = (32, 46, 68, 100, 150, 220, 320, 460, 680)


def lines(count: int, method: str, seed: int, oven: bool) -> dict[str, Any]:
    """Columns of lines oiled by one method; with `oven` both strands have a temperature of their own.

    Without it the place of oiling is given: at one temperature all round nothing but rounding tells places apart.
    """
    draw = np.random.default_rng(seed)

    def between(low: float, high: float) -> np.ndarray:
        return draw.uniform(low, high, count)

    def spread(low: float, high: float) -> np.ndarray:
        return np.exp(draw.uniform(np.log(low), np.log(high), count))

    def words(*choices: str) -> np.ndarray:
        return np.array(choices)[draw.integers(0, len(choices), count)]

    pitch = np.round(spread(30.0, 200.0), 2)
    pin = pitch * between(0.10, 0.16)
    bore = pin * between(1.005, 1.025)
    bush = bore * between(1.35, 1.5)
    roller_bore, roller = bush * between(1.01, 1.03), bush * between(1.8, 2.6)
    mass, centre, strands = (pitch / 100.0) ** 1.3 * between(4.0, 9.0), spread(2.0, 60.0), draw.integers(1, 4, count)
    carried, speed = spread(5.0, 120.0), spread(1.0, 40.0)
    power = 9.81 * (carried + strands * mass) * centre * speed / 60.0 / 1e3 * between(0.25, 0.9) + between(0.3, 1.0)
    efficiency, cosine = between(0.74, 0.92), between(0.70, 0.86)
    slip = (1.0 / efficiency - 1.0) * between(0.15, 0.3)
    columns: dict[str, Any] = {
        "chain.pitch_mm": pitch, "chain.pin_diameter_mm": pin, "chain.bush_bore_mm": bore,
        "chain.bush_diameter_mm": bush, "chain.joint_length_mm": pin * between(2.0, 4.0),
        "chain.roller_bore_mm": roller_bore, "chain.roller_diameter_mm": roller,
        "chain.inner_width_mm": pin * between(1.5, 2.5),
        "chain.plate_gap_mm": spread(0.1, 1.0), "chain.plate_depth_mm": bush * between(1.6, 2.2),
        "chain.mass_kg_per_m": mass,
        "chain.case_depth_mm": np.where(draw.random(count) < 0.1, 0.0, pin * between(0.03, 0.1)),
        "circuit.centre_distance_m": centre, "circuit.teeth_drive": draw.integers(7, 25, count),
        "circuit.teeth_tail": draw.integers(7, 25, count),
        "circuit.lift_m": centre * draw.choice((0.0, 0.03, 0.2), count),
        "circuit.support": words("rollers", "rollers", "slide", "trolleys", "free"),
        "circuit.return_support": words("rollers", "slide", "free"), "circuit.carried_kg_per_m": carried,
        "circuit.returning_kg_per_m": carried * between(0.0, 0.5), "circuit.strands": strands,
        "circuit.take_up_n": strands * spread(200.0, 5000.0), "circuit.extra_pull_n": between(0.0, 200.0),
        "duty.speed_m_per_min": speed, "duty.hours_per_day": between(4.0, 24.0),
        "duty.days_per_year": between(100.0, 365.0), "duty.ambient_c": between(5.0, 40.0),
        "duty.dust_factor": spread(1.0, 8.0), "duty.water_factor": spread(1.0, 3.0),
        "duty.wash_interval_h": np.where(draw.random(count) < 0.7, np.nan, spread(24.0, 700.0)),
        "oil.iso_vg": draw.choice(GRADES, count), "oil.viscosity_index": between(70.0, 180.0),
        "oil.density_15_kg_per_m3": between(850.0, 960.0), "oil.noack_pct": between(2.0, 15.0),
        "oil.boundary_friction": between(0.06, 0.16), "oil.price_per_l": between(5.0, 30.0),
        "surface.roughness_um": spread(0.1, 1.5), "surface.conformity": spread(1.0, 8.0),
        "surface.boundary_fill": spread(0.03, 0.3), "surface.starvation_exponent": between(0.5, 2.0),
        "surface.film_factor": spread(0.5, 2.0), "fill.articulation_loss": spread(5e-5, 5e-3),
        "wear.wear_coefficient_dry": spread(1e-4, 3e-3), "wear.fill_half": between(0.1, 0.5),
        "drive.rated_power_kw": power, "drive.rated_voltage_v": 400.0,
        "drive.rated_current_a": power * 1e3 / (3.0**0.5 * 400.0 * efficiency * cosine) * between(0.98, 1.02),
        "drive.rated_speed_rpm": 1500.0 * (1.0 - slip), "drive.rated_efficiency": efficiency,
        "drive.rated_power_factor": cosine, "drive.gear_efficiency": between(0.6, 0.96),
        "drive.converter": draw.random(count) < 0.3, "drive.current_measured_at": words("motor", "before_converter"),
        "costs.energy_price_per_kwh": between(0.1, 0.3), "costs.labour_rate_per_h": between(30.0, 60.0),
        "costs.downtime_cost_per_h": between(0.0, 500.0), "costs.chain_price_per_m": between(30.0, 200.0),
        "costs.fit_h": between(4.0, 20.0), "costs.fit_downtime_h": between(2.0, 12.0),
        "costs.breakdowns_per_year": between(0.0, 2.0), "costs.breakdown_h": between(0.5, 4.0),
        "costs.cleanings_per_year": between(0.0, 12.0), "costs.cleaning_h": between(0.0, 4.0),
        "costs.hours_per_application": between(0.1, 1.0), "costs.sprocket_set_price": between(200.0, 2000.0),
        "costs.waste_price_per_l": between(0.0, 2.0), "costs.upkeep_per_year": between(0.0, 300.0),
        "lubrication.method": method, "lubrication.points": draw.integers(1, 3, count),
    }  # fmt: skip
    columns["drive.frequency_hz"] = np.where(columns["drive.converter"], between(30.0, 55.0), 50.0)
    circuit_min = 2.1 * centre / speed
    if method == "timed_spray":
        columns["lubrication.flow_ml_per_min"] = spread(0.1, 20.0)
        columns["lubrication.zone_length_mm"] = between(0.0, 200.0)
    if method == "synchronised":
        columns["lubrication.shot_ul"] = spread(0.2, 30.0)
        columns["lubrication.every_nth"] = draw.choice((1, 3, 5, 7, 11, 13), count)
    if method in ("timed_spray", "synchronised"):
        columns["lubrication.timer.run_min"] = np.round(circuit_min * spread(0.1, 15.0), 1) + 0.5
        columns["lubrication.timer.dwell_min"] = np.round(spread(5.0, 600.0) * (draw.random(count) > 0.05), 0)
        columns["lubrication.timer.clock"] = words("machine", "wall")
        columns["lubrication.timer.interlocked"] = draw.random(count) < 0.5
    if method == "drip":
        columns["lubrication.flow_ml_per_min"] = spread(0.02, 5.0)
    if method == "manual":
        columns["lubrication.interval_h"], columns["lubrication.dose_ul"] = spread(24.0, 2000.0), spread(5.0, 500.0)
        columns["lubrication.unreached_share"] = between(0.0, 0.3) * (draw.random(count) < 0.3)
        columns["lubrication.interval_cv"], columns["lubrication.miss_share"] = between(0.15, 0.9), between(0.0, 0.35)
    if oven:
        columns["circuit.carry_temperature_c"] = columns["duty.ambient_c"] + spread(5.0, 180.0)
        columns["circuit.return_temperature_c"] = columns["duty.ambient_c"] + spread(1.0, 60.0)
    else:
        columns["lubrication.application_section"] = draw.choice((0, 2), count)
        columns["lubrication.application_position"] = between(0.0, 1.0)
    return columns
