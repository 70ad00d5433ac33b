"""No formula stands twice: the border computes nothing; `evaluate` gives what formulas give, to the last bit."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from conftest import compare_quietly, quietly

import pinfilm
from pinfilm import coverage, economics, film, kinematics, motor, oil

BORDER = Path(__file__).parents[2] / "src" / "py"

# What the border may do with numbers: places in arrays, logs to read at once, and naming the period of a timer and a
# remainder of a count.
PLACES = re.compile(
    r"at \* self\.length|\(at \+ 1\) \* self\.length|rest % length\.max\(1\)|rest /= length\.max\(1\)|step \* stride"
    r"|steps \* stride|AT_ONCE \* pool|stride \*= (own_)?length"
)
PLAIN = {"run + dwell", "joints - reached"}
LEVELS = {"0.05", "0.5", "0.95"}  # of p5, p50 and p95, which carry them in their names

FUNCTIONS = "powi|powf|exp|exp_m1|ln|ln_1p|log10|log2|sqrt|cbrt|hypot|sin|cos|tan"
FUNCTIONS += "|asin|acos|atan|atan2|to_radians|to_degrees|recip|mul_add"
OPERATORS = re.compile(r"[\w)\]] [*/%] [\w(&]|[*/%]= |\.(?:" + FUNCTIONS + r")\(")
SUMS = re.compile(r"\b[a-z_]+ [+-] [a-z_]+\b(?!\()")
FLOATS = re.compile(r"(?<![\w.])\d+\.\d+(?:e-?\d+)?|(?<![\w.])\d+e-?\d+")


def code(path: Path) -> list[tuple[int, str]]:
    """Return lines without comments, strings and trait bounds."""
    lines = []
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        bare = re.sub(r'"(?:\\.|[^"\\])*"', '""', line)
        bare = re.sub(r"//.*", "", bare)
        if not re.search(r"\bimpl\b|\bdyn\b|\bwhere\b", bare):
            lines.append((number, bare))
    return lines


def formulas_in(path: Path) -> list[str]:
    found = []
    for number, line in code(path):
        rest = PLACES.sub("", line)
        arithmetic = OPERATORS.search(rest) and "variance().sqrt()" not in rest
        sums = path.parent.name == "formulas" and [
            s for s in SUMS.findall(rest) if s not in PLAIN and not re.search(r"shape|len|start|length", s)
        ]
        constants = [f for f in FLOATS.findall(rest) if f not in LEVELS | {"0.0", "1.0"}]
        if arithmetic or sums or constants:
            found.append(f"{path.relative_to(BORDER)}:{number}: {line.strip()}")
    return found


def test_the_border_computes_nothing() -> None:
    files = sorted(BORDER.rglob("*.rs"))
    assert len(files) > 15
    assert [line for path in files for line in formulas_in(path)] == []


@pytest.mark.parametrize(
    "line",
    [
        "let pressure = load / (diameter * length);",
        "    x * y",
        "Ok(area.sqrt())",
        "let limit = 273.15;",
        "        |load, area| load / area;",
        "total += 1e-3;",
        "heat + work",
    ],
)
def test_a_formula_would_be_seen(tmp_path: Path, line: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(globals(), "BORDER", tmp_path)
    folder = tmp_path / "formulas"
    folder.mkdir()
    (folder / "any.rs").write_text(f"fn f() {{\n{line}\n}}\n", encoding="utf-8")
    assert formulas_in(folder / "any.rs")


@pytest.fixture(scope="module", params=pinfilm.examples.names())
def demo(request: pytest.FixtureRequest) -> tuple[pinfilm.Line, pinfilm.Evaluation]:
    line = pinfilm.examples.load(request.param)
    return line, quietly(line)


class TestEvaluateCallsTheseFormulas:
    """Equal, not nearly: another implementation would differ in the last bit."""

    def test_pressure_viscosity_and_angle_of_every_event(self, demo: tuple[pinfilm.Line, pinfilm.Evaluation]) -> None:
        line, result = demo
        chain, liquid = line.chain, line.oil
        if liquid.iso_vg is not None:
            v40 = float(liquid.iso_vg)
            points = (40.0, v40, 100.0, oil.v100_mm2_s(v40, liquid.viscosity_index))
        else:
            points = (liquid.t1_c, liquid.v1_mm2_s, liquid.t2_c, liquid.v2_mm2_s)
        for event in result.joint.events:
            pressure = film.pressure_mpa(event.tension_n, chain.pin_diameter_mm, chain.joint_length_mm)
            assert event.pressure_mpa == pressure
            kinematic = oil.kinematic_viscosity_mm2_s(event.temperature_c, *points)
            density = oil.density_kg_per_m3(liquid.density_15_kg_per_m3, event.temperature_c)
            assert event.viscosity_mpa_s == oil.dynamic_viscosity_mpa_s(kinematic, density)
            teeth = getattr(line.circuit.sections[event.section], "teeth", None)
            if teeth is not None:
                assert event.angle_deg == kinematics.articulation_angle_deg(teeth)

    def test_current(self, demo: tuple[pinfilm.Line, pinfilm.Evaluation]) -> None:
        line, result = demo
        drive = line.drive
        if drive.converter or result.drive.shaft_power_w is None:
            return
        names = ["rated_power_kw", "rated_voltage_v", "rated_current_a", "rated_speed_rpm", "rated_efficiency"]
        names += ["rated_power_factor", "rated_frequency_hz", "no_load_current_a", "supply_voltage_v"]
        plate = {name: getattr(drive, name) for name in names if getattr(drive, name) is not None}
        assert motor.current_from_power_a(result.drive.shaft_power_w / 1000, **plate) == result.drive.current_a

    def test_coverage(self, demo: tuple[pinfilm.Line, pinfilm.Evaluation]) -> None:
        line, result = demo
        method = line.lubrication
        if not isinstance(method, pinfilm.Spray):
            return
        passage = method.zone_length_mm / 1000 / (line.duty.speed_m_per_min / 60)
        run, dwell = method.timer.run_min * 60, method.timer.dwell_min * 60
        circuit = result.kinematics.circuit_time_s
        found = coverage.timer_coverage(circuit, run + passage, dwell - passage)
        assert result.fill.never_reached == found.never_reached


@pytest.mark.parametrize("name", ["oven", "slat", "paint", "floor", "packing"])
def test_money(name: str) -> None:
    now, proposed = (pinfilm.examples.load(f"{name}_{which}") for which in ("now", "proposed"))
    change = compare_quietly(now, proposed)
    assert change.npv == economics.npv(change.discount_rate, change.cash_flow)
    assert change.irr == economics.irr(change.cash_flow)
    assert change.irr_roots == economics.irr_roots(change.cash_flow)
    years = economics.discounted_payback_years(change.discount_rate, change.cash_flow)
    assert change.discounted_payback_years == years
    days = economics.payback_days(change.invest, change.saving_per_year, proposed.costs.year_days)
    assert change.payback_days == days
