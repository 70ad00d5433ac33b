"""What Python may give for a value, and that several threads may ask at once."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from decimal import Decimal
from fractions import Fraction
from types import MappingProxyType
from typing import Any

import numpy as np
import pint
import pytest
from conftest import OVEN, SURVEYS, quietly

import pinfilm
from pinfilm import Circuit, InputError, Timer, UnitError

UNITS = pint.UnitRegistry()


@pytest.mark.parametrize(
    "value",
    [3, 3.0, np.float64(3), np.float32(3), np.float16(3), np.int64(3), np.uint8(3), np.array(3.0), np.array(3),
     Decimal(3), Fraction(3)],
    ids=lambda value: type(value).__name__,
)  # fmt: skip
def test_any_number_is_a_number(value: Any) -> None:
    assert Timer(run_min=value).run_min == 3.0
    assert type(Timer(run_min=value).run_min) is float


@pytest.mark.parametrize("value", [2, 2.0, np.int32(2), np.uint64(2), np.float64(2), np.array(2)])
def test_a_whole_number_is_an_integer(line: pinfilm.Line, value: Any) -> None:
    assert type(line.replace({"circuit.strands": value}).circuit.strands) is int
    assert line.replace({"circuit.strands": value}) == line.replace({"circuit.strands": 2})


@pytest.mark.parametrize("value", [True, np.True_, "3", b"3", [3.0], np.array([3.0]), 3j, object()])
def test_what_is_no_number_is_refused(value: Any) -> None:
    with pytest.raises((InputError, TypeError)):
        Timer(run_min=value)


def test_numpy_booleans_are_flags() -> None:
    assert Timer(run_min=3, interlocked=np.False_) == Timer(run_min=3, interlocked=False)
    with pytest.raises(InputError, match="true or false"):
        Timer(run_min=3, interlocked=1)


def blocks(line: pinfilm.Line, value: Any) -> Circuit:
    return line.circuit.replace(attachment_every=4, attachment_blocks=value)


def test_lists_may_be_any_sequence(line: pinfilm.Line) -> None:
    wanted = blocks(line, [0, 2])
    read_only = np.array([0, 2])
    read_only.setflags(write=False)
    strided = np.arange(4)[::2]
    for value in ((0, 2), range(0, 3, 2), np.array([0, 2]), np.array([0.0, 2.0]), read_only, strided,
                  np.array([2, 0])[::-1], np.array([0, 2], dtype=">i4"), [np.int8(0), 2.0]):  # fmt: skip
        assert blocks(line, value) == wanted
    assert wanted.attachment_blocks == (0, 2)
    for value in ([], (), np.array([])):
        assert blocks(line, value).attachment_blocks == ()
    for value in ([[0, 2]], np.zeros((2, 2)), "02", 2, [0.5], [None]):
        with pytest.raises(InputError):
            blocks(line, value)


def test_sections_and_methods_may_be_nouns(line: pinfilm.Line) -> None:
    assert line.circuit.replace(sections=line.circuit.sections) == line.circuit
    assert line.replace(lubrication=line.lubrication) == line
    assert line.replace({"circuit.sections.1": line.circuit.sections[1]}) == line
    assert line.replace(circuit=line.circuit, chain=line.chain, duty=line.duty) == line


def test_any_mapping_is_survey_data() -> None:
    data = SURVEYS[OVEN]
    assert pinfilm.Line.from_dict(MappingProxyType(data)) == pinfilm.Line.from_dict(data)


def test_quantities_are_converted_to_the_unit_of_the_name(line: pinfilm.Line) -> None:
    assert Timer(run_min=UNITS.Quantity(2, "hour")).run_min == pytest.approx(120, rel=1e-12)
    changed = line.replace(
        {
            "chain.pitch_mm": UNITS.Quantity(4, "inch"),
            "duty.ambient_c": UNITS.Quantity(300.15, "kelvin"),
            "circuit.sections.1.length_m": UNITS.Quantity(4000, "cm"),
        }
    )
    assert changed.chain.pitch_mm == pytest.approx(101.6, rel=1e-12)
    assert changed.duty.ambient_c == pytest.approx(27, rel=1e-12)
    assert changed.circuit.sections[1].length_m == pytest.approx(40, rel=1e-12)


def test_a_quantity_of_another_dimension_is_refused(line: pinfilm.Line) -> None:
    with pytest.raises(UnitError, match="cannot be converted to min") as caught:
        Timer(run_min=UNITS.Quantity(2, "metre"))
    assert (caught.value.code, caught.value.field, caught.value.unit) == ("dimension", "timer.run_min", "min")
    with pytest.raises(UnitError, match="this name has none"):
        line.replace({"costs.invest": UNITS.Quantity(2, "metre")})
    with pytest.raises(InputError):
        Timer(run_min=UNITS.Quantity(-2, "hour"))


def test_threads_get_the_same_result(line: pinfilm.Line) -> None:
    wanted = pinfilm.evaluate(line)
    with ThreadPoolExecutor(8) as pool:
        results = list(pool.map(lambda _: pinfilm.evaluate(line), range(64)))
    assert all(result == wanted for result in results)
    assert len({hash(result) for result in [*results, wanted]}) == 1


def test_lines_of_all_kinds_evaluate(each_line: pinfilm.Line) -> None:
    assert quietly(each_line).line == each_line


def test_the_citation_has_the_version_of_the_package() -> None:
    from pathlib import Path

    citation = (Path(__file__).parents[2] / "CITATION.cff").read_text(encoding="utf-8")
    assert f"\nversion: {pinfilm.__version__}\n" in citation
