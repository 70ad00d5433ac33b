"""Columns of invented lines, the same for the same seed."""

from __future__ import annotations

import random
from typing import Any

#: Chains of the invented lines: pitch, pin, bush bore, bush, length, roller, its bore, inner
#: width, plate depth, mass, price of a metre.
_CHAINS = (
    (63.0, 10.0, 10.15, 15.0, 33.0, 36.0, 15.3, 24.0, 31.0, 3.9, 61.0),
    (100.0, 12.0, 12.2, 18.0, 37.0, 50.0, 18.4, 28.0, 36.0, 6.3, 78.0),
    (125.0, 15.0, 15.2, 21.0, 45.0, 60.0, 21.4, 34.0, 41.0, 9.1, 104.0),
    (160.0, 18.0, 18.25, 25.0, 52.0, 70.0, 25.5, 40.0, 51.0, 13.4, 139.0),
)
_CHAIN_NAMES = (
    "pitch_mm", "pin_diameter_mm", "bush_bore_mm", "bush_diameter_mm", "joint_length_mm", "roller_diameter_mm",
    "roller_bore_mm", "inner_width_mm", "plate_depth_mm", "mass_kg_per_m",
)  # fmt: skip
_MOTORS = (
    (0.55, 1.36, 1410.0, 0.79, 0.74),
    (1.1, 2.4, 1435.0, 0.841, 0.79),
    (2.2, 4.55, 1440.0, 0.867, 0.81),
    (4.0, 8.05, 1450.0, 0.886, 0.81),
    (7.5, 14.6, 1460.0, 0.904, 0.82),
)
_MOTOR_NAMES = ("rated_power_kw", "rated_current_a", "rated_speed_rpm", "rated_efficiency", "rated_power_factor")


def invented(count: int, seed: int) -> dict[str, list[Any]]:
    """Return columns of invented lines by name."""
    draw = random.Random(seed)
    columns: dict[str, list[Any]] = {}
    for number in range(count):
        for name, value in _line(draw, number).items():
            columns.setdefault(name, []).append(value)
    return columns


def _line(draw: random.Random, number: int) -> dict[str, Any]:
    chain = draw.choice(_CHAINS)
    centre, strands = round(draw.uniform(6.0, 45.0), 2), draw.choice((1, 2, 2))
    carried = round(draw.uniform(8.0, 60.0), 1)
    speed = round(draw.uniform(2.0, 18.0), 2)
    # a motor with some reserve over a quarter of the weight as pull
    need = 9.81 * (carried + strands * chain[9]) * centre * 0.25 * speed / 60.0 / 1000.0
    motor = next((motor for motor in _MOTORS if motor[0] > 1.5 * need + 0.3), _MOTORS[-1])
    joints = 2 * round(2.0 * centre * 1000.0 / chain[0] / 2.0 + 6)
    labour, price = round(draw.uniform(38.0, 55.0), 0), round(draw.uniform(9.0, 16.0), 1)
    wet = draw.random() < 0.25
    row: dict[str, Any] = {
        "asset": f"L{number:05d}",
        "hall": f"hall {draw.randrange(1, 9)}",
        **{f"chain.{name}": value for name, value in zip(_CHAIN_NAMES, chain, strict=False)},
        "chain.plate_gap_mm": round(draw.uniform(0.2, 0.6), 2),
        "circuit.centre_distance_m": centre,
        "circuit.teeth_drive": 12,
        "circuit.teeth_tail": 12,
        "circuit.lift_m": round(draw.choice((0.0, 0.0, 0.0, draw.uniform(0.0, 1.5))), 2),
        "circuit.carried_kg_per_m": carried,
        "circuit.returning_kg_per_m": round(carried * 0.3, 1),
        "circuit.strands": strands,
        "circuit.take_up_n": float(strands * round(draw.uniform(300.0, 900.0), -1)),
        "duty.speed_m_per_min": speed,
        "duty.hours_per_day": draw.choice((8.0, 16.0, 24.0)),
        "duty.days_per_year": draw.choice((220.0, 250.0, 300.0)),
        "duty.ambient_c": round(draw.uniform(12.0, 35.0), 0),
        "duty.surroundings": "wash_down" if wet else draw.choice(("dry", "dusty")),
        "duty.dust_factor": draw.choice((1.0, 2.0, 5.0)),
        "duty.water_factor": 3.0 if wet else 1.0,
        "oil.iso_vg": draw.choice((100, 150, 220)),
        "oil.price_per_l": price,
        "now.lubrication.method": "manual",
        "now.lubrication.interval_h": float(draw.choice((84, 168, 336, 720))),
        "now.lubrication.dose_ul": float(draw.choice((100, 160, 250))),
        "proposed.lubrication.method": "synchronised",
        "proposed.lubrication.shot_ul": float(draw.choice((5, 8, 12))),
        "proposed.lubrication.every_nth": next(n for n in (7, 11, 13, 17) if joints % n),
        "proposed.lubrication.timer.run_min": round(14.0 * 2.1 * centre / speed, 0),
        "proposed.lubrication.timer.dwell_min": float(draw.choice((240, 480))),
        **{f"drive.{name}": value for name, value in zip(_MOTOR_NAMES, motor, strict=True)},
        "drive.rated_voltage_v": 400.0,
        "drive.gear_efficiency": draw.choice((0.76, 0.88, 0.94)),
        "costs.energy_price_per_kwh": 0.18,
        "costs.labour_rate_per_h": labour,
        "costs.downtime_cost_per_h": round(draw.choice((60.0, 150.0, 400.0)), 0),
        "costs.chain_price_per_m": chain[10],
        "costs.fit_h": round(4.0 + 0.3 * centre, 1),
        "costs.fit_downtime_h": round(3.0 + 0.15 * centre, 1),
        "now.costs.hours_per_application": round(0.2 + 0.02 * centre, 2),
        "now.costs.breakdowns_per_year": round(draw.uniform(0.2, 1.6), 1),
        "proposed.costs.hours_per_application": 0.2,
        "proposed.costs.applications_per_year": 12.0,
        "proposed.costs.breakdowns_per_year": round(draw.uniform(0.1, 0.4), 1),
        "costs.breakdown_h": 2.0,
        "proposed.costs.upkeep_per_year": 90.0,
        "proposed.costs.invest": round(draw.uniform(2800.0, 5200.0) + 400.0 * (strands - 1), -1),
    }
    if draw.random() < 0.005:
        name, value = draw.choice(
            (
                ("duty.speed_m_per_min", None),
                ("duty.ambient_c", 310.0),
                ("oil.iso_vg", 200),
                ("circuit.take_up_n", None),
            )
        )
        row[name] = value
    return row
