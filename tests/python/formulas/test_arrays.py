"""Every formula over numbers, arrays, labelled arrays: the same numbers, and the same refusals."""

from __future__ import annotations

import importlib
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
from boxes import CASES, Case
from hypothesis import given, settings
from hypothesis import strategies as st

from pinfilm import InputError, UnitError, _core, kinematics

FEW = settings(max_examples=25, deadline=None)


def identity(case: Case) -> str:
    return f"{case.path}{'.' if case.attribute else ''}{case.attribute}"


def drawn(case: Case, shares: np.ndarray) -> dict[str, np.ndarray]:
    """Columns of arguments: a row of shares (0 to 1) each, stretched over the box of its argument."""
    return {
        name: low + (high - low) * share for (name, (low, high)), share in zip(case.box.items(), shares, strict=True)
    }


def shares(case: Case, count: int, seed: int) -> np.ndarray:
    return np.random.default_rng(seed).random((len(case.box), count))


over_all = pytest.mark.parametrize("case", CASES, ids=identity)


def test_all_formulas_of_numbers_are_covered() -> None:
    by_hand = {
        "coverage.three_gaps", "coverage.timer_coverage", "coverage.points_coverage", "coverage.reached_joints",
        "coverage.every_nth", "oil.grade_limits_mm2_s", "electrics.conductor_resistance_ohm_per_km", "economics.npv",
        "economics.irr", "economics.irr_roots", "economics.irr_status", "economics.payback_years",
        "economics.discounted_payback_years", "economics.payback_status", "coverage.handbook_methods",
        "wear.unlubricated_coefficient", "statistics.change_points", "statistics.cusum", "statistics.cv_rmse_pct",
        "statistics.lag1", "statistics.newey_west_se", "statistics.nmbe_pct",
    }  # fmt: skip
    every = {f"{formula['module']}.{formula['name']}" for formula in _core.formulas()}
    assert {case.path for case in CASES} == every - by_hand


@over_all
@FEW
@given(seed=st.integers(0, 2**32 - 1))
def test_an_array_holds_what_numbers_give(case: Case, seed: int) -> None:
    columns = drawn(case, shares(case, 4, seed))
    array = case.call(**columns)
    one_by_one = [case.call(**{name: float(column[i]) for name, column in columns.items()}) for i in range(4)]
    assert all(isinstance(value, float) for value in one_by_one)
    assert isinstance(array, np.ndarray)
    assert array.dtype == np.float64
    np.testing.assert_array_equal(array, one_by_one)
    assert np.isfinite(array).all()


@over_all
def test_every_form_of_array_gives_the_same(case: Case) -> None:
    columns = drawn(case, shares(case, 6, 1))
    expected = case.call(**columns)

    def same(form: Callable[[np.ndarray], Any]) -> None:
        np.testing.assert_array_equal(case.call(**{name: form(column) for name, column in columns.items()}), expected)

    def read_only(column: np.ndarray) -> np.ndarray:
        copy = column.copy()
        copy.flags.writeable = False
        return copy

    same(list)
    same(tuple)
    same(read_only)
    same(lambda column: np.repeat(column, 3)[::3])
    same(lambda column: column[::-1].copy()[::-1])
    same(lambda column: column.astype(">f8"))
    same(lambda column: column.astype(object))

    table = {name: np.asfortranarray(column.reshape(2, 3)) for name, column in columns.items()}
    np.testing.assert_array_equal(case.call(**table), expected.reshape(2, 3))
    single = case.call(**{name: column.astype(np.float32) for name, column in columns.items()})
    assert single.dtype == np.float64
    np.testing.assert_array_equal(
        single, case.call(**{name: column.astype(np.float32).astype(float) for name, column in columns.items()})
    )


@over_all
def test_shapes_follow_numpy(case: Case) -> None:
    columns = drawn(case, shares(case, 1, 2))
    number = case.call(**{name: float(column[0]) for name, column in columns.items()})
    first, *rest = columns

    def with_first(value: Any) -> Any:
        return case.call(**{first: value}, **{name: float(columns[name][0]) for name in rest})

    flat = with_first(np.array(columns[first][0]))
    assert isinstance(flat, np.ndarray)
    assert flat.shape == ()
    assert flat == number
    assert with_first(np.empty(0)).shape == (0,)
    assert with_first([]).shape == (0,)
    assert with_first(np.empty((2, 0))).shape == (2, 0)
    assert isinstance(with_first(np.float64(columns[first][0])), float)
    np.testing.assert_array_equal(with_first(np.full((2, 1, 3), columns[first][0])), np.full((2, 1, 3), number))
    if rest:
        wide = {first: np.full((4, 1), columns[first][0])} | {name: np.full(3, columns[name][0]) for name in rest}
        assert case.call(**wide).shape == (4, 3)
        with pytest.raises(InputError) as refused:
            case.call(**wide | {rest[-1]: np.full(5, columns[rest[-1]][0])} | {first: np.full(4, columns[first][0])})
        assert refused.value.code == "inconsistent"


@over_all
def test_nan_goes_through_arrays_and_is_refused_alone(case: Case) -> None:
    columns = drawn(case, shares(case, 3, 3))
    for name in columns:
        holed = columns[name].copy()
        holed[1] = np.nan
        result = case.call(**columns | {name: holed})
        np.testing.assert_array_equal(np.isnan(result), [False, True, False])
        with pytest.raises(InputError) as refused:
            case.call(**{other: float(column[0]) for other, column in columns.items()} | {name: float("nan")})
        assert refused.value.code == "not_finite"
        assert refused.value.field == name


@over_all
def test_the_first_number_outside_is_named(case: Case) -> None:
    columns = drawn(case, shares(case, 3, 4))
    module, function = case.path.split(".")
    rows = {
        row["name"]: row
        for formula in _core.formulas()
        if (formula["module"], formula["name"]) == (module, function)
        for row in formula["arguments"]
    }
    for name in columns:
        for wrong, code in [(np.inf, "not_finite"), (-1e300, "out_of_range")]:
            if code == "out_of_range" and rows[name]["allowed"].startswith("any"):
                continue
            holed = columns[name].copy()
            holed[1] = wrong
            for value, place in [(wrong, name), (holed, f"{name}[1]"), (holed[:, None], f"{name}[1, 0]")]:
                with pytest.raises(InputError) as refused:
                    case.call(**{n: float(column[0]) for n, column in columns.items()} | {name: value})
                error = refused.value
                assert (error.code, error.field, error.value) == (code, name, wrong)
                assert error.unit == rows[name]["unit"]
                assert error.limit == rows[name]["allowed"]
                assert str(error).startswith(f"{place} = ")


@over_all
def test_a_series_keeps_its_labels(case: Case) -> None:
    pandas = pytest.importorskip("pandas")
    columns = drawn(case, shares(case, 3, 5))
    labels = pandas.Index(["a", "b", "c"], name="line")
    result = case.call(**{name: pandas.Series(column, index=labels) for name, column in columns.items()})
    assert isinstance(result, pandas.Series)
    pandas.testing.assert_index_equal(result.index, labels)
    np.testing.assert_array_equal(result.to_numpy(), case.call(**columns))
    first = next(iter(columns))
    mixed = case.call(**columns | {first: pandas.Series(columns[first], index=labels)})
    assert list(mixed.index) == ["a", "b", "c"]


def test_labels_must_agree() -> None:
    pandas = pytest.importorskip("pandas")
    with pytest.raises(InputError, match="other labels"):
        kinematics.pitch_diameter_mm(
            pandas.Series([10.0, 20.0], index=["a", "b"]), pandas.Series([9, 10], index=["b", "a"])
        )


def test_tables_and_missing_values_of_pandas() -> None:
    pandas = pytest.importorskip("pandas")
    table = pandas.DataFrame({"old": [10.0, 20.0], "new": [30.0, 40.0]}, index=["a", "b"])
    result = kinematics.pitch_diameter_mm(table, 17)
    assert list(result.columns) == ["old", "new"]
    assert list(result.index) == ["a", "b"]
    holed = kinematics.pitch_diameter_mm(pandas.Series([10.0, None], dtype="Float64"), 17)
    assert np.isnan(holed.to_numpy()).tolist() == [False, True]
    assert kinematics.pitch_diameter_mm(pandas.Series([10, 20], dtype="Int64"), 17).iloc[0] > 10


def test_a_masked_value_is_not_known() -> None:
    masked = np.ma.masked_array([10.0, 1e9], mask=[False, True])
    assert np.isnan(kinematics.pitch_diameter_mm(masked, 17)).tolist() == [False, True]


@pytest.mark.parametrize(
    "value",
    [
        "25.4",
        ["25.4"],
        True,
        [True],
        None,
        {},
        {"a": 1},
        object(),
        1j,
        [1j],
        b"1",
        [[1.0], [2.0, 3.0]],
        [None],
        10**400,
    ],
    ids=repr,
)
def test_what_is_no_number_is_refused(value: Any) -> None:
    with pytest.raises(InputError) as refused:
        kinematics.pitch_diameter_mm(value, 17)
    assert refused.value.code == "wrong_type"
    assert refused.value.field == "pitch_mm"


@pytest.mark.parametrize("kind", ["float16", "float32", "float64", "longdouble", "int8", "uint64", "int64"])
def test_numbers_and_arrays_of_every_kind(kind: str) -> None:
    expected = kinematics.pitch_diameter_mm(10.0, 17.0)
    number = np.dtype(kind).type(10)
    assert kinematics.pitch_diameter_mm(number, 17) == expected
    assert isinstance(kinematics.pitch_diameter_mm(number, 17), float)
    np.testing.assert_array_equal(kinematics.pitch_diameter_mm(np.array([10], dtype=kind), 17), [expected])


@over_all
def test_quantities_are_converted_to_the_unit_of_the_name(case: Case) -> None:
    pint = pytest.importorskip("pint")
    units = pint.UnitRegistry()
    spelled = {"mm": "inch", "µm": "inch", "m": "foot", "N": "kilonewton", "mPa s": "pascal*second", "°C": "kelvin",
               "s": "minute", "h": "day", "°": "radian", "%": "dimensionless", "kW": "watt"}  # fmt: skip
    module, function = case.path.split(".")
    rows = next(f["arguments"] for f in _core.formulas() if (f["module"], f["name"]) == (module, function))
    labels = {row["name"]: row["unit"] for row in rows}
    columns = drawn(case, shares(case, 3, 6))
    expected = case.call(**columns)
    own = {"mm": "millimeter", "µm": "micrometer", "mPa s": "millipascal*second", "°C": "degree_Celsius",
           "°": "degree", "%": "percent"}  # fmt: skip
    for name, column in columns.items():
        label = labels[name]
        if label not in spelled:
            continue
        quantity = units.Quantity(column, own.get(label, label)).to(spelled[label])
        for form in (quantity, list(quantity)):
            np.testing.assert_allclose(case.call(**columns | {name: form}), expected, rtol=1e-6)
        with pytest.raises(UnitError) as refused:
            case.call(**columns | {name: units.Quantity(column, "candela")})
        assert refused.value.field == name
        assert refused.value.code == "dimension"


def test_long_runs_can_be_interrupted_and_leave_python_to_others() -> None:
    import _thread
    import threading
    import time

    film = importlib.import_module("pinfilm.film")
    ticks = []

    def interrupt() -> None:
        for _ in range(5):
            time.sleep(0.05)
            ticks.append(time.perf_counter())
        _thread.interrupt_main()

    thread = threading.Thread(target=interrupt)
    thread.start()
    start = time.perf_counter()
    with pytest.raises(KeyboardInterrupt):
        film.reynolds_bearing(np.linspace(0.1, 0.99, 100_000), 1.5)
    thread.join()
    assert time.perf_counter() - start < 30
    assert len(ticks) == 5
