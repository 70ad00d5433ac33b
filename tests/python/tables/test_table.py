"""Tables: every source, every cut, every number of threads, the same bits as single calls."""

from __future__ import annotations

import itertools
import json
import math
import os
import signal
import struct
import warnings

import duckdb
import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest
from many import at, columns, single, survey_of

import pinfilm

BITS = struct.Struct("<d")


def same_bits(a: float, b: float) -> bool:
    return BITS.pack(a) == BITS.pack(b) or (math.isnan(a) and math.isnan(b))


@pytest.fixture(scope="module")
def given() -> dict[str, list]:
    return columns(40)


@pytest.fixture(scope="module")
def table(given: dict[str, list]) -> pinfilm.Table:
    return pinfilm.evaluate_table(given, threads=1)


def test_rows_are_bit_identical_to_single_calls(given: dict[str, list], table: pinfilm.Table) -> None:
    found = table.to_dict()
    for row in range(len(table)):
        values = {name: column[row] for name, column in given.items()}
        try:
            result = single(pinfilm.Line.from_dict(survey_of(values)))
        except pinfilm.PinfilmError as error:
            assert (found["status"][row], found["code"][row]) == ("error", error.code)
            continue
        assert found["status"][row] != "error", found["message"][row]
        for path in table.metadata["outputs"]:
            wanted, got = at(result, path), found[path][row]
            assert wanted == got if isinstance(wanted, str) else same_bits(float(got), float(wanted)), (row, path)


def test_a_row_gives_back_its_line(table: pinfilm.Table) -> None:
    line = table.line(3)
    assert single(line).tension.pull_n == table["tension.pull_n"][3]
    with pytest.raises(IndexError, match="40"):
        table.line(40)


@pytest.mark.parametrize("threads", [1, 2, 5, None])
def test_threads_and_cuts_do_not_change_a_bit(
    given: dict[str, list], table: pinfilm.Table, threads: int | None
) -> None:
    whole = pa.table(given)
    wanted = pa.table(table)
    for size in (1, 7, 1000):
        cut = pa.Table.from_batches(whole.to_batches(max_chunksize=size))
        found = pa.table(pinfilm.evaluate_table(cut, threads=threads))
        assert found.combine_chunks().equals(wanted.combine_chunks())
    sliced = pa.table(pinfilm.evaluate_table(whole.slice(11, 13), threads=threads))
    assert sliced.combine_chunks().equals(wanted.slice(11, 13).combine_chunks())


def sources(given: dict[str, list]) -> dict[str, object]:
    whole = pa.table(given)
    frame = pd.DataFrame(given)
    arrays = {
        name: np.array(values) if None not in values else np.array(values, dtype=object)
        for name, values in given.items()
    }
    return {
        "pyarrow": whole,
        "pandas": frame,
        "pandas arrow": frame.convert_dtypes(dtype_backend="pyarrow"),
        "polars": pl.DataFrame(given),
        "duckdb": duckdb.sql("select * from whole"),
        "arrays": arrays,
        "series": {name: frame[name] for name in frame},
        "polars series": {name: pl.Series(name, values) for name, values in given.items()},
    }


@pytest.mark.parametrize(
    "source", ["pyarrow", "pandas", "pandas arrow", "polars", "duckdb", "arrays", "series", "polars series"]
)
def test_every_source_gives_the_same(given: dict[str, list], table: pinfilm.Table, source: str) -> None:
    found = pinfilm.evaluate_table(sources(given)[source])
    for path in (*table.metadata["outputs"], "status", "code"):
        assert list(map(repr, found[path])) == list(map(repr, table[path])), path


def test_out_into_every_library(table: pinfilm.Table) -> None:
    frame = pd.DataFrame.from_arrow(table)
    assert list(frame.columns) == table.column_names
    assert frame["tension.pull_n"].isna().sum() == table.status_counts.get("error", 0)
    assert pl.DataFrame(table).columns == table.column_names
    arrow = pa.table(table)
    assert duckdb.sql("select count(*) from arrow").fetchall() == [(40,)]
    field = arrow.schema.field("tension.pull_n")
    assert field.metadata[b"unit"] == b"N" and field.metadata[b"meaning"] and field.metadata[b"role"] == b"result"
    assert arrow.schema.field("duty.speed_m_per_min").metadata[b"unit"] == b"m/min"
    assert arrow.column("asset").to_pylist()[:2] == ["L00000", "L00001"]


def test_columns_are_accounted_for(table: pinfilm.Table) -> None:
    metadata = table.metadata
    assert metadata["kept"] == ["asset", "hall"]
    assert metadata["defaults"]["friction.wheel_bearing"] == "0.02"
    assert metadata["defaults"]["oil.viscosity_index"] == "95"
    assert "duty.speed_m_per_min" in metadata["read"] and not metadata["misspelt"]
    assert set(metadata["read"]) | set(metadata["kept"]) | set(metadata["outputs"]) < set(table.column_names)


def test_what_is_missing_is_listed_before_any_row(given: dict[str, list]) -> None:
    less = {
        name: values for name, values in given.items() if name not in {"duty.speed_m_per_min", "drive.rated_power_kw"}
    }
    less["duty.speed_m_per_mim"] = given["duty.speed_m_per_min"]
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        with pytest.raises(pinfilm.TableError) as caught:
            pinfilm.evaluate_table(less)
    error = caught.value
    assert error.code == "missing_columns"
    assert error.field == "duty.speed_m_per_min, drive.rated_power_kw"
    assert "duty.speed_m_per_mim" in str(error) and "rated shaft power" in str(error)


def test_a_misspelt_column_is_reported(given: dict[str, list]) -> None:
    with pytest.warns(pinfilm.PinfilmTableWarning, match=r"oil.viscosity_index"):
        found = pinfilm.evaluate_table({**given, "oil.viscosity_indx": 120.0})
    assert found.metadata["misspelt"] == {"oil.viscosity_indx": "oil.viscosity_index"}
    assert "did you mean" in repr(found)


def test_surveys_as_text_structs_and_objects() -> None:
    lines = [pinfilm.examples.load(name) for name in pinfilm.examples.names()]
    wanted = [single(line).drive.current_a for line in lines]
    asked = {"outputs": ["drive.current_a"]}
    for survey in (
        [line.to_json() for line in lines],
        lines,
        [line.to_dict() for line in lines],
        pa.array([line.to_dict() for line in lines]),
        pa.array([line.to_json() for line in lines]).dictionary_encode(),
    ):
        found = pinfilm.evaluate_table({"survey": survey}, **asked)
        assert found.status_counts.get("error") is None, found["message"]
        assert list(found["drive.current_a"]) == wanted
    faster = pinfilm.evaluate_table({"survey": lines, "duty.hours_per_day": 2.0}, ["drive.energy_kwh_per_year"])
    assert faster["drive.energy_kwh_per_year"][0] == pytest.approx(
        single(lines[0].replace({"duty.hours_per_day": 2.0})).drive.energy_kwh_per_year, rel=0, abs=0
    )


def test_a_line_and_values_for_all_rows() -> None:
    oven = pinfilm.examples.load("oven_now")
    speeds = [3.0, 4.0, 5.0]
    found = pinfilm.evaluate_table({"duty.speed_m_per_min": speeds}, ["tension.pull_n"], defaults=oven)
    for speed, pull in zip(speeds, found["tension.pull_n"], strict=True):
        assert single(oven.replace({"duty.speed_m_per_min": speed})).tension.pull_n == pull
    many = columns(5)
    many.pop("duty.ambient_c")
    found = pinfilm.evaluate_table(many, defaults={"duty": {"ambient_c": 20.0}, "oil.viscosity_index": 120})
    assert found.metadata["defaults"]["duty.ambient_c"] == "20 °C"
    assert found.line(0).oil.viscosity_index == 120.0


def test_other_units() -> None:
    many = columns(5)
    wanted = pinfilm.evaluate_table(many)
    fahrenheit = [None if c is None else c * 9 / 5 + 32 for c in many["duty.ambient_c"]]
    units = {"duty.ambient_c": "degF", "chain.pitch_mm": "inch"}
    inches = [pitch / 25.4 for pitch in many["chain.pitch_mm"]]
    found = pinfilm.evaluate_table({**many, "duty.ambient_c": fahrenheit, "chain.pitch_mm": inches}, units=units)
    np.testing.assert_allclose(found["tension.pull_n"], wanted["tension.pull_n"], rtol=1e-9)
    text = ["oops", *map(str, fahrenheit[1:])]
    found = pinfilm.evaluate_table({**many, "duty.ambient_c": text}, units={"duty.ambient_c": "degF"})
    assert found["code"][0] == "wrong_type" and "oops" in found["message"][0]
    for wrong, field in (
        ({"duty.ambient_c": "metre"}, "duty.ambient_c"),
        ({"no": "degF"}, "no"),
        ({"asset": "degF"}, "asset"),
    ):
        with pytest.raises((pinfilm.UnitError, pinfilm.TableError)) as caught:
            pinfilm.evaluate_table(many, units=wrong)
        assert field in str(caught.value)


def test_compare_in_one_table_and_in_two() -> None:
    both = pinfilm.examples.lines(12)
    one = pinfilm.compare_table(both)
    assert "warning" in one.status_counts or "ok" in one.status_counts
    now, proposed = one.line(0), one.line(0, 1)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        wanted = pinfilm.compare(now, proposed)
    assert one["npv"][0] == wanted.npv and one["payback_days"][0] == wanted.payback_days
    assert one["proposed.cost.total_per_year"][0] == wanted.proposed.cost.total_per_year
    assert isinstance(now.lubrication, pinfilm.Manual) and isinstance(proposed.lubrication, pinfilm.Synchronised)

    def side(name: str) -> dict[str, list]:
        other = {"now": "proposed.", "proposed": "now."}[name]
        return {key.removeprefix(f"{name}."): values for key, values in both.items() if not key.startswith(other)}

    two = pinfilm.compare_table(side("now"), pl.DataFrame(side("proposed")))
    for path in (*one.metadata["outputs"], "status", "code"):
        assert list(map(repr, one[path])) == list(map(repr, two[path])), path
    with pytest.raises(pinfilm.TableError, match="12 lines as they are and 3"):
        pinfilm.compare_table(side("now"), pl.DataFrame(side("proposed")).head(3))
    bad = {**both, "proposed.lubrication.shot_ul": [-1.0, *both["proposed.lubrication.shot_ul"][1:]]}
    assert pinfilm.compare_table(bad)["message"][0].startswith("proposed: lubrication.shot_ul = -1")


def test_progress_and_what_stops_a_run(given: dict[str, list]) -> None:
    told = []
    pinfilm.evaluate_table(given, progress=lambda done, all_rows: told.append((done, all_rows)))
    assert told[-1] == (40, 40)

    def stop(done: int, all_rows: int) -> None:
        raise RuntimeError("enough")

    with pytest.raises(RuntimeError, match="enough"):
        pinfilm.evaluate_table(given, progress=stop)
    repeated = pa.concat_tables([pa.table(given)] * 200)
    with pytest.raises(KeyboardInterrupt):
        pinfilm.evaluate_table(repeated, progress=lambda *_: os.kill(os.getpid(), signal.SIGINT))


def test_wrong_calls(given: dict[str, list]) -> None:
    for wrong, code in (
        ({"threads": 0}, "out_of_range"),
        ({"outputs": ["drive.curent_a"]}, "unknown_output"),
        ({"outputs": ["drive.current_a", "drive.current_a"]}, "duplicate_column"),
    ):
        with pytest.raises(pinfilm.PinfilmError) as caught:
            pinfilm.evaluate_table(given, **wrong)
        assert caught.value.code == code
    for table in (7, [1, 2], None, {"a": [1], "b": [1, 2]}, {1: [2]}, {"a": np.zeros((2, 2))}):
        with pytest.raises(pinfilm.TableError) as caught:
            pinfilm.evaluate_table(table)
        assert caught.value.code in {"not_a_table", "missing_columns"}
    twice = pa.table([pa.array([1.0]), pa.array([2.0])], names=["duty.ambient_c", "duty.ambient_c"])
    with pytest.raises(pinfilm.TableError, match="two columns"):
        pinfilm.evaluate_table(twice)


def test_choice_within_a_budget() -> None:
    # source: hand enumeration of 12 lines, kept in the core's tests too
    npv = [51.5, 88.9, 57.3, 165.5, 40.2, 12.1, 9.4, 33, 21.7, 5.2, -3, 28.8]
    cost = [5.2, 6.2, 7.5, 6.8, 3.9, 2.1, 1.2, 9.8, 4.4, 0.7, 3.3, 7.0]
    found = pinfilm.rank({"npv": npv, "invest": cost}, budget=10)
    best = max(
        (sum(npv[i] for i in some), some)
        for size in range(5)
        for some in itertools.combinations(range(12), size)
        if sum(cost[i] for i in some) <= 10
    )
    assert sorted(found.rows) == list(best[1]) == [3, 5, 9]
    assert found.exact and found.value == pytest.approx(182.8) and found.shares is None
    draws = np.array([npv, npv, [0.0] * 12, npv])
    draws[2, 0] = 1.0
    shared = pinfilm.rank({"npv": npv, "invest": cost}, budget=10, draws=draws)
    assert shared.shares[3] == 0.75 and shared.shares[0] == 0.25
    long = {"draw": np.repeat(np.arange(4), 12), "row": np.tile(np.arange(12), 4), "npv": draws.ravel()}
    assert pinfilm.rank({"npv": npv, "invest": cost}, budget=10, draws=long).shares == shared.shares
    gaps = pinfilm.rank(pa.table({"npv": [None, 2.0], "invest": [1.0, 1.0]}), budget=10)
    assert gaps.left_out == [0] and gaps.rows == [1]
    with pytest.raises(pinfilm.TableError, match="invest"):
        pinfilm.rank({"npv": [1.0]}, budget=1)
    with pytest.raises(pinfilm.InputError):
        pinfilm.rank({"npv": [1.0], "invest": [1.0]}, budget=-1)


def test_a_table_shows_itself(table: pinfilm.Table) -> None:
    assert repr(table).startswith("<Table of 40 rows (")
    assert table.units["tension.pull_n"] == "N" and "pull" in table.meanings["tension.pull_n"]
    assert json.dumps(table.metadata)
    with pytest.raises(KeyError):
        table["no such column"]
