"""Where closures end: empty and full joints, standstill, thinnest and thickest oil, no wash, no heat, no room."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from conftest import quietly
from hypothesis import given, settings
from hypothesis import strategies as st

import pinfilm
from pinfilm import InputError, fill, film, hydraulics

NAMES = pinfilm.examples.names()


def numbers(value: Any) -> list[float]:
    """Return every number below a result, those that are not given left out."""
    if isinstance(value, dict):
        return [n for item in value.values() for n in numbers(item)]
    if isinstance(value, (list, tuple)):
        return [n for item in value for n in numbers(item)]
    return [value] if isinstance(value, float) else []


def evaluate(name: str, **changes: Any) -> pinfilm.Evaluation:
    line = pinfilm.examples.load(name)
    return quietly(line.replace({path.replace("__", "."): value for path, value in changes.items()}))


def assert_sane(result: pinfilm.Evaluation) -> None:
    kept = result.to_dict()
    del kept["line"], kept["warnings"], kept["cautions"]
    # a life may be endless, and only a life
    assert all(math.isfinite(n) or n == math.inf for n in numbers(kept))
    for event in result.joint.events:
        assert event.film_um >= 0
        assert 0 < event.friction < 2
    assert 0 <= result.fill.mean_fill <= 1
    assert result.tension.pull_n > 0


@pytest.mark.parametrize("name", [name for name in NAMES if name.endswith("_now")])
class TestFill:
    def test_nothing_given_is_dry(self, name: str) -> None:
        line = pinfilm.examples.load(name)
        dry = line.surface.dry_friction
        # the least that a method can give: as good as nothing
        small = {"Manual": "dose_ul", "Drip": "flow_ml_per_min", "Spray": "flow_ml_per_min"}
        path = f"lubrication.{small[type(line.lubrication).__name__]}"
        result = quietly(line.replace({path: 1e-9}))
        assert_sane(result)
        assert result.fill.mean_fill < 1e-4
        for event in result.joint.events:
            assert event.film_um < 1e-4
            # boundary friction of a bare joint, hotter ones being no better
            assert event.friction == pytest.approx(dry, rel=0.01)

    def test_a_full_joint_is_boundary_at_its_best(self, name: str) -> None:
        line = pinfilm.examples.load(name)
        calm = line.replace(
            {"oil.noack_pct": 0.0, "oil.oxidation_half_life_h": 1e7, "fill.articulation_loss": 0.0}
            | {"duty.wash_interval_h": None, "duty.dust_loss_per_s": 0.0}
        )
        plenty = {"Manual": ("dose_ul", 1e6), "Drip": ("flow_ml_per_min", 1e4), "Spray": ("flow_ml_per_min", 1e4)}
        path, much = plenty[type(line.lubrication).__name__]
        result = quietly(calm.replace({f"lubrication.{path}": much}))
        assert_sane(result)
        assert result.fill.fill_after_shot == pytest.approx(1, abs=0.01)
        for event in result.joint.events:
            assert event.lambda_ratio == pytest.approx(event.lambda_fill_1, rel=0.1)
            # where surfaces touch, at best the boundary friction of the oil
            assert event.friction_reached < line.oil.boundary_friction * 1.05


@pytest.mark.parametrize("name", NAMES)
def test_towards_standstill_the_film_goes_and_friction_stays(name: str) -> None:
    slow, slower = (evaluate(name, duty__speed_m_per_min=speed) for speed in (0.01, 0.001))
    for result in (slow, slower):
        assert_sane(result)
    for a, b in zip(slow.joint.events, slower.joint.events, strict=True):
        assert b.lambda_fill_1 <= a.lambda_fill_1 * (1 + 1e-9)
        assert b.lambda_fill_1 < 0.2
        assert b.regime == "boundary"
    assert any("this is boundary lubrication" in warning.message for warning in slower.warnings)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("grade", [2, 3200])
def test_thinnest_and_thickest_grade(name: str, grade: int) -> None:
    liquid = {"oil.iso_vg": grade, "oil.v1_mm2_s": None, "oil.v2_mm2_s": None, "oil.viscosity_index": 95.0}
    line = pinfilm.examples.load(name).replace(liquid)
    try:
        result = quietly(line)
    except InputError as refused:
        # a grade that has no viscosity there, or does not flow through the line: said, with what to change
        assert refused.code in {"beyond_model", "out_of_range", "turbulent", "no_answer"}
        assert len(str(refused)) > 40
        return
    assert_sane(result)


def test_viscosity_to_both_ends_of_the_formulas() -> None:
    thin, thick = 0.01, 1e9
    assert film.line_contact_film_um(thin, 1e-6, 1e3, 1e3, 20) > 0
    assert math.isfinite(film.line_contact_film_um(thick, 1, 1e-3, 1, 20))
    entry = hydraulics.joint_entry_time_s(np.array([thin, thick]), 0.4, 5, 12, 50, 20)
    assert entry[1] / entry[0] == pytest.approx(thick / thin, rel=1e-6)
    rates = fill.loss_rates_per_h(60, np.array([thin, thick]), 30, 4, 1200, 0.9)
    assert rates.articulation_per_h[0] > rates.articulation_per_h[1] > 0


@pytest.mark.parametrize("name", ["floor_now", "packing_now"])
def test_load_up_to_the_bound_of_the_chain(name: str) -> None:
    line = pinfilm.examples.load(name)
    factor, pressures = 1.0, []
    for _ in range(60):
        try:
            result = quietly(line.replace({"circuit.take_up_n": line.circuit.take_up_n * factor}))
        except InputError as refused:
            assert refused.code in {"strength", "beyond_model", "motor.pull_out"}
            assert refused.limit
            break
        assert_sane(result)
        pressures.append(max(event.pressure_mpa for event in result.joint.events))
        factor *= 1.5
    else:
        pytest.fail("no load is too much for this chain")
    assert len(pressures) > 2
    assert pressures == sorted(pressures)


@pytest.mark.parametrize("name", NAMES)
def test_a_wash_that_takes_nothing_is_no_wash(name: str) -> None:
    none = evaluate(name, duty__wash_interval_h=None)
    nothing = evaluate(name, duty__wash_interval_h=24.0, duty__wash_removed_share=0.0)
    assert none.fill.loss_rate_per_h == nothing.fill.loss_rate_per_h
    assert none.fill.mean_fill == nothing.fill.mean_fill
    assert none.fill.loss_parts_per_h.wash == 0


def test_no_difference_of_temperature_leaves_one_temperature() -> None:
    result = evaluate("packing_now")
    ambient = pinfilm.examples.load("packing_now").duty.ambient_c
    assert result.kinematics.mean_c == pytest.approx(ambient, abs=1e-9)
    assert np.ptp(result.kinematics.section_c) == pytest.approx(0, abs=1e-9)
    assert all(event.temperature_c == pytest.approx(ambient, abs=1e-9) for event in result.joint.events)


@settings(max_examples=100)
@given(start=st.floats(0, 1), rate=st.floats(0, 10), hours=st.floats(0, 1e4))
def test_fill_stays_between_nothing_and_full(start: float, rate: float, hours: float) -> None:
    left = fill.fill_between_shots(start, rate, hours)
    assert 0 <= left <= start
    assert fill.fill_between_shots(1.0, 0.0, hours) == 1.0
    assert fill.fill_between_shots(0.0, rate, hours) == 0.0


class TestWords:
    """What decides is said in words."""

    @pytest.mark.parametrize("name", NAMES)
    def test_every_line_says_what_film_theory_says_and_what_current_proves(self, name: str) -> None:
        result = evaluate(name)
        said = {warning.code: warning.message for warning in result.warnings}
        if all(event.lambda_fill_1 < 1 for event in result.joint.events):
            assert "supply and additive decide friction and wear" in said["uncalibrated"]
        elif any(event.lambda_fill_1 < 1 for event in result.joint.events):
            assert "film theory says nothing" in said["partly_boundary"]
        proof = said["what_current_proves"]
        assert "pins are proved by elongation" in proof
        drive = result.drive
        seen = drive.current_drop_joint_a >= drive.pull_detectable_n * drive.current_per_pull_a_per_n
        assert ("pins alone" in proof) and (proof.count("enough to be seen") >= int(seen))
