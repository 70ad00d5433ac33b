"""Quantities with units at the border: accepted wherever a name carries one, refused with both units named."""

from __future__ import annotations

from typing import Any

import pint
import pytest
from conftest import compare_quietly, quietly
from test_nouns import NOUNS, SAMPLES

import pinfilm

UNIT = pint.UnitRegistry()
#: Units of the register in the words of the units library.
SPELLED = {
    "mm": "millimeter", "µm": "micrometer", "m": "meter", "mm²": "millimeter**2", "µL": "microliter", "L": "liter",
    "N": "newton", "kN": "kilonewton", "MPa": "megapascal", "GPa": "gigapascal", "kPa": "kilopascal",
    "1/GPa": "1/gigapascal", "°C": "degree_Celsius", "K": "kelvin", "°": "degree", "s": "second", "min": "minute",
    "h": "hour", "%": "percent", "kg/m": "kilogram/meter", "kg/m²": "kilogram/meter**2", "kg/m³": "kilogram/meter**3",
    "W/(m² K)": "watt/meter**2/kelvin", "m/min": "meter/minute", "mm²/s": "millimeter**2/second",
    "mPa s": "millipascal*second", "Pa s": "pascal*second", "mN/m": "millinewton/meter", "kJ/mol": "kilojoule/mole",
    "mL/min": "milliliter/minute", "1/s": "1/second", "W": "watt", "kW": "kilowatt", "V": "volt", "A": "ampere",
    "Hz": "hertz", "1/min": "revolution/minute", "years": "year", "1/year": "1/year", "h/year": "hour/year",
    "h/day": "hour/day", "d/year": "day/year",
}  # fmt: skip


def leaves(data: Any, path: str = "") -> list[tuple[str, Any]]:
    if isinstance(data, dict):
        return [found for key, value in data.items() for found in leaves(value, f"{path}.{key}" if path else key)]
    if isinstance(data, list):
        return [found for at, value in enumerate(data) for found in leaves(value, f"{path}.{at}")]
    return [(path, data)]


def unit_of(path: str) -> str:
    plain = ".".join(step for step in path.split(".") if not step.isdigit())
    return next((row["unit"] for row in pinfilm.register() if row["path"] == plain), "")


ROWS = {row["path"]: row for row in pinfilm.register()}
LINE = pinfilm.Line.from_dict(SAMPLES["Line"].to_dict())
NUMBERS = [
    (path, value)
    for path, value in leaves(LINE.to_dict())
    if isinstance(value, float)
    and ROWS.get(".".join(step for step in path.split(".") if not step.isdigit()), {}).get("unit") in SPELLED
]


def test_every_number_of_a_survey_takes_a_quantity() -> None:
    assert len(NUMBERS) > 60
    for path, value in NUMBERS:
        quantity = UNIT.Quantity(value, SPELLED[unit_of(path)])
        other = LINE.replace({path: quantity})
        assert other == LINE, path


def test_every_number_of_a_survey_refuses_another_dimension() -> None:
    for path, value in NUMBERS:
        with pytest.raises(pinfilm.UnitError) as caught:
            LINE.replace({path: UNIT.Quantity(value, "candela")})
        message = str(caught.value)
        assert "candela" in message, path
        assert unit_of(path) in message, path
        assert caught.value.field == path


@pytest.mark.parametrize("name", sorted(NOUNS))
def test_nouns_take_quantities_by_keyword(name: str) -> None:
    noun = SAMPLES[name]
    group = {"Straight": "circuit.sections", "Turn": "circuit.sections", "Timer": "lubrication.timer"}
    given = {}
    for key, value in noun.to_dict().items():
        candidates = [row for path, row in ROWS.items() if path.rsplit(".", 1)[-1] == key and row["unit"] in SPELLED]
        if name in group:
            candidates = [row for row in candidates if row["path"].startswith(group[name])]
        units = {row["unit"] for row in candidates}
        if isinstance(value, float) and len(units) == 1:
            given[key] = UNIT.Quantity(value, SPELLED[units.pop()])
    made = type(noun)(**(noun.to_dict() | given)) if name not in ("Line", "Circuit") else noun.replace()
    assert made == noun


def test_inches_pounds_and_fahrenheit_end_to_end() -> None:
    metric = pinfilm.examples.load("floor_now").replace({"circuit.joints": None})
    inch, foot, pound = UNIT.inch, UNIT.foot, UNIT.force_pound
    changes = {
        "chain.pitch_mm": 160.0 / 25.4 * inch,
        "duty.speed_m_per_min": metric.duty.speed_m_per_min / 0.3048 * foot / UNIT.minute,
        "duty.ambient_c": UNIT.Quantity(metric.duty.ambient_c * 9 / 5 + 32, UNIT.degF),
        "circuit.take_up_n": metric.circuit.take_up_n / 4.4482216152605 * pound,
        "drive.rated_power_kw": metric.drive.rated_power_kw / 0.745699872 * UNIT.horsepower,
    }
    same = metric.replace({"chain.pitch_mm": 160.0})
    american = metric.replace(changes)
    assert american.drive.rated_power_kw == pytest.approx(metric.drive.rated_power_kw, rel=1e-6)
    ours, theirs = quietly(same), quietly(american)
    assert theirs.tension.pull_n == pytest.approx(ours.tension.pull_n, rel=1e-6)
    assert (theirs.tension.pull_n * UNIT.newton).to(pound).magnitude == pytest.approx(
        ours.tension.pull_n / 4.4482216152605, rel=1e-6
    )


def test_verbs_take_quantities() -> None:
    result = quietly(LINE)
    curve = result.elongation_curve(UNIT.Quantity(24, "month"))
    assert curve.time_years[-1] == pytest.approx(2.0, rel=1e-3)
    with pytest.raises(pinfilm.UnitError, match="candela"):
        result.elongation_curve(UNIT.Quantity(2, "candela"))
    warm = LINE.oil.viscosity_mpa_s(UNIT.Quantity(104, "degF"))
    assert warm == pytest.approx(LINE.oil.viscosity_mpa_s(40.0))
    with pytest.raises(pinfilm.UnitError, match="inch"):
        LINE.oil.viscosity_mpa_s(3 * UNIT.inch)


def test_numbers_come_out_with_their_unit() -> None:
    result = quietly(LINE)
    pull = result.quantity("tension.pull_n", UNIT)
    assert pull.to("force_pound").magnitude == pytest.approx(result.tension.pull_n / 4.4482216152605)
    assert result.quantity("chain.pitch_mm", UNIT).to("inch").magnitude == pytest.approx(LINE.chain.pitch_mm / 25.4)
    warm = result.quantity("duty.ambient_c", UNIT).to("degF").magnitude
    assert warm == pytest.approx(LINE.duty.ambient_c * 9 / 5 + 32)
    assert result.quantity("fill.mean_fill", UNIT).dimensionless
    assert str(result.quantity("tension.pull_n").units) == "newton"  # of pint's own registry
    change = compare_quietly(LINE, LINE)
    assert change.quantity("now.tension.pull_n", UNIT) == pull
    with pytest.raises(pinfilm.UnitError, match="no unit that a units library knows"):
        change.quantity("saving_per_year", UNIT)
    with pytest.raises(pinfilm.InputError, match=r"did you mean tension\.pull_n"):
        result.quantity("tension.pull_kn", UNIT)


def test_every_number_of_a_result_comes_out_in_the_unit_of_its_row() -> None:
    result = quietly(LINE)
    seen = 0
    for path, value in leaves(result.to_dict()):
        row = ROWS.get(".".join(step for step in path.split(".") if not step.isdigit()))
        if (
            row is None
            or row["unit"] not in SPELLED
            or not isinstance(value, float)
            or path.rsplit(".", 1)[-1].isdigit()
        ):
            continue
        assert result.quantity(path, UNIT) == UNIT.Quantity(value, SPELLED[row["unit"]]), path
        seen += 1
    assert seen > 60
