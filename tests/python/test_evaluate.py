"""Evaluate and compare, as a practitioner would ask them."""

from __future__ import annotations

import warnings

import pytest
from conftest import SURVEYS, compare_quietly, quietly

import pinfilm


def test_twice_is_the_same(each_line: pinfilm.Line) -> None:
    assert quietly(each_line) == quietly(each_line)
    assert quietly(each_line).to_json() == quietly(each_line.replace()).to_json()


def test_an_unusual_value_is_a_python_warning_and_listed(line: pinfilm.Line) -> None:
    changed = line.replace({"oil.surface_tension_mn_per_m": 60})
    with pytest.warns(pinfilm.PinfilmRangeWarning, match="surface_tension_mn_per_m = 60"):
        result = pinfilm.evaluate(changed)
    listed = [warning for warning in result.warnings if warning.code == "unusual"]
    assert [warning.field for warning in listed] == ["oil.surface_tension_mn_per_m"]
    assert (listed[0].value, listed[0].unit) == (60.0, "mN/m")
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        pinfilm.evaluate(line)


def test_a_caution_comes_when_the_line_calls_for_it() -> None:
    def codes(name: str, **changes: object) -> set[str]:
        changed = {path.replace("__", "."): value for path, value in changes.items()}
        return {caution.code for caution in quietly(pinfilm.Line.from_dict(SURVEYS[name]).replace(changed)).cautions}

    assert {"moving_chain", "electricity", "slippery_floor"} <= codes("E-packing-present")
    assert {"oven", "hot_surface", "oiling_by_hand"} <= codes("E-oven-present")
    assert "oven" not in codes("E-packing-present")
    assert "oil_mist" in codes("E-slat-present")
    assert "pressurised_oil" in codes("E-oven-proposed")
    assert "wash_down" in codes("E-packing-present", duty__surroundings="wash_down")
    assert "food_contact" not in codes("E-packing-present", duty__food_contact=False)
    assert "food_contact" in codes("E-packing-present", duty__food_contact=True)


def test_changing_the_timer_starves_joints() -> None:
    line = pinfilm.Line.from_dict(SURVEYS["E-slat-present"])
    assert quietly(line).fill.never_reached == 0
    period = quietly(line).kinematics.circuit_time_s / 60
    locked = quietly(
        line.replace({"lubrication.timer.run_min": period / 4, "lubrication.timer.dwell_min": period * 0.75})
    )
    assert locked.fill.never_reached == pytest.approx(0.75, abs=0.02)
    assert "joints_never_reached" in {warning.code for warning in locked.warnings}


@pytest.mark.parametrize(
    ("extra", "invest", "status"),
    [
        (-1000.0, 5000.0, "pays_back"),
        (0.0, 5000.0, "never"),
        (1000.0, 5000.0, "never"),
        (-1000.0, 0.0, "immediate"),
        (-1000.0, -100.0, "immediate"),
        (1000.0, -100.0, "loses_after"),
    ],
)
def test_payback_has_a_status_for_every_outcome(line: pinfilm.Line, extra: float, invest: float, status: str) -> None:
    now = line.replace({"costs.upkeep_per_year": 2000.0, "costs.invest": 0.0})
    change = compare_quietly(now, now.replace({"costs.upkeep_per_year": 2000.0 + extra, "costs.invest": invest}))
    assert change.saving_per_year == pytest.approx(-extra, abs=1e-6)
    assert change.payback_status == status
    if status == "pays_back":
        assert change.payback_days == pytest.approx(invest / -extra * 365)
    if status == "never":
        assert change.payback_days is None
        assert change.irr is None or change.irr < 0


def test_lines_of_two_currencies_cannot_be_compared(line: pinfilm.Line) -> None:
    with pytest.raises(pinfilm.InputError, match="currenc"):
        compare_quietly(line, line.replace({"costs.currency": "USD"}))


def test_what_is_true_of_every_line_is_said_once(each_line: pinfilm.Line) -> None:
    warnings = quietly(each_line).warnings
    codes = [warning.code for warning in warnings]
    assert "boundary_lubrication" not in codes
    assert codes.count("uncalibrated") == 1
    assert codes.count("curve_weight") <= 1
    assert sum("boundary lubrication" in warning.message for warning in warnings) == 1


def test_curves_are_named_together() -> None:
    found = [w for w in quietly(pinfilm.examples.load("paint_now")).warnings if w.code == "curve_weight"]
    assert len(found) == 1
    assert "sections 4, " in found[0].message or "sections " in found[0].message


def test_a_lock_is_said_to_rest_on_the_surveyed_speed() -> None:
    result = quietly(pinfilm.examples.load("oven_now"))
    assert result.fill.lock_risk is not None
    assert 0 < result.fill.lock_risk < 1
    said = next(w.message for w in result.warnings if w.code == "joints_never_reached")
    assert f"only {100 * result.fill.lock_risk:.3g} % of the possible errors" in said
    assert "life and cost" in said
