"""The induction machine against the textbook's equivalent circuit, with SciPy finding the slip."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize_scalar

from pinfilm import motor

MACHINE = st.fixed_dictionaries(
    {
        "stator_resistance_ohm": st.floats(0.1, 2),
        "stator_reactance_ohm": st.floats(0.3, 3),
        "rotor_resistance_ohm": st.floats(0.1, 2),
        "rotor_reactance_ohm": st.floats(0.3, 3),
        "magnetising_reactance_ohm": st.floats(15, 80),
        "voltage_v": st.sampled_from([230.0, 400.0, 460.0]),
        "frequency_hz": st.sampled_from([50.0, 60.0]),
        "poles": st.sampled_from([2, 4, 6]),
    }
)


def textbook(machine: dict[str, Any], windage: float, slip: float) -> dict[str, float]:
    """Return the outputs at a slip: rotor beside the magnetising branch, behind the stator, one phase of a star."""
    v1 = machine["voltage_v"] / math.sqrt(3)
    z1 = complex(machine["stator_resistance_ohm"], machine["stator_reactance_ohm"])
    z2 = complex(machine["rotor_resistance_ohm"] / slip, machine["rotor_reactance_ohm"])
    zm = complex(0, machine["magnetising_reactance_ohm"])
    parallel = z2 * zm / (z2 + zm)
    i1 = v1 / (z1 + parallel)
    i2 = abs(i1 * parallel / z2)
    gap = 3 * i2**2 * machine["rotor_resistance_ohm"] / slip
    synchronous = 4 * math.pi * machine["frequency_hz"] / machine["poles"]
    shaft = (1 - slip) * gap - windage
    power = 3 * (v1 * i1.conjugate()).real
    return {
        "slip": slip,
        "current_a": abs(i1),
        "power_factor": math.cos(math.atan2(-i1.imag, i1.real)),
        "input_power_w": power,
        "air_gap_power_w": gap,
        "shaft_power_w": shaft,
        "efficiency": shaft / power,
        "induced_torque_nm": gap / synchronous,
    }


@settings(max_examples=300)
@given(machine=MACHINE, load=st.floats(0.02, 0.9), windage=st.floats(0, 200))
def test_operating_point_at_a_load(machine: dict[str, Any], load: float, windage: float) -> None:
    def shaft(slip: float) -> float:
        return textbook(machine, windage, slip)["shaft_power_w"]

    top = minimize_scalar(lambda slip: -shaft(slip), bounds=(1e-6, 1), method="bounded", options={"xatol": 1e-9}).x
    wanted = load * shaft(top)
    assume(wanted > 1.0)
    slip = brentq(lambda s: shaft(s) - wanted, 1e-9, top, xtol=1e-15, rtol=1e-14)
    ours = motor.equivalent_circuit(**machine, shaft_power_w=wanted, friction_windage_w=windage)
    for name, value in textbook(machine, windage, slip).items():
        assert getattr(ours, name) == pytest.approx(value, rel=1e-6), name
