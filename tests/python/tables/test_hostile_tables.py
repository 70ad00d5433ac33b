"""Tables that nobody should send: an error of the table or of the row, nothing lost, no panic."""

from __future__ import annotations

import math
import os
import warnings

import numpy as np
import polars as pl
import pyarrow as pa
import pytest
from hypothesis import given
from hypothesis import strategies as st
from many import columns

import pinfilm

GOOD = columns(4)
NUMBERS = [name for name, values in GOOD.items() if isinstance(values[1], float)]


def tried(table: object, **asked: object) -> pinfilm.Table | pinfilm.PinfilmError:
    """Return the table that came out, or the typed error."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmTableWarning)
        try:
            return pinfilm.evaluate_table(table, **asked)
        except pinfilm.PinfilmError as error:
            return error


def whole(found: pinfilm.Table, rows: int) -> None:
    """Check that no row is lost, and that every row says what became of it."""
    assert len(found) == rows
    states = found.to_dict()
    for row in range(rows):
        if states["status"][row] == "error":
            assert states["code"][row] and states["message"][row]
            assert math.isnan(states["tension.pull_n"][row])
        else:
            assert states["status"][row] in {"ok", "warning"} and math.isfinite(states["tension.pull_n"][row])


ANY = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(-(2**70), 2**70),
    st.floats(),
    st.floats(allow_nan=False, allow_infinity=False),
    st.sampled_from(
        [0.0, -0.0, 5e-324, -5e-324, 1.7e308, "12.5", " 3 ", "1e5", "n/a", "", "nan", "∞", "\x00", "x" * 5000]
    ),
    st.text(max_size=20),
    st.binary(max_size=5),
    st.dictionaries(st.text(max_size=3), st.integers(), max_size=2),
)


@given(st.sampled_from(list(GOOD)), st.lists(ANY, min_size=4, max_size=4))
def test_anything_in_one_column(name: str, cells: list[object]) -> None:
    found = tried({**GOOD, name: cells})
    if isinstance(found, pinfilm.Table):
        whole(found, 4)


@given(st.dictionaries(st.sampled_from(NUMBERS), st.floats(), max_size=6), st.booleans())
def test_any_numbers_in_several_columns(values: dict[str, float], single: bool) -> None:
    # single precision is another type, and may overflow
    with np.errstate(over="ignore"):
        arrays = {name: np.full(4, value, dtype=np.float32 if single else np.float64) for name, value in values.items()}
    found = tried({**GOOD, **arrays})
    assert isinstance(found, pinfilm.Table)
    whole(found, 4)


TYPES = [
    pa.int8(),
    pa.uint64(),
    pa.float16(),
    pa.float32(),
    pa.decimal128(20, 5),
    pa.decimal256(40, 2),
    pa.bool_(),
    pa.string(),
    pa.large_string(),
    pa.string_view(),
    pa.binary(),
    pa.date32(),
    pa.timestamp("ns"),
    pa.duration("s"),
    pa.time64("us"),
    pa.null(),
    pa.list_(pa.float64()),
    pa.struct([("a", pa.int8())]),
    pa.dictionary(pa.int8(), pa.string()),
    pa.dictionary(pa.int32(), pa.float64()),
    pa.map_(pa.string(), pa.int8()),
    pa.run_end_encoded(pa.int32(), pa.float64()),
]


@pytest.mark.parametrize("kind", TYPES, ids=str)
@pytest.mark.parametrize(
    "name", ["duty.speed_m_per_min", "circuit.teeth_drive", "oil.food_grade", "duty.surroundings", "asset"]
)
def test_every_type_in_every_kind_of_column(kind: pa.DataType, name: str) -> None:
    if pa.types.is_run_end_encoded(kind):
        column = pa.RunEndEncodedArray.from_arrays([4], pa.array([5.0]))
    elif pa.types.is_dictionary(kind):
        column = (
            pa.array(["5", "5", "5", "5"]).dictionary_encode()
            if pa.types.is_string(kind.value_type)
            else pa.array([5.0] * 4).dictionary_encode()
        )
    else:
        column = pa.nulls(4, kind)
    table = pa.table({**GOOD, name: column})
    found = tried(table)
    if isinstance(found, pinfilm.Table):
        whole(found, 4)
        assert pa.table(found).column(name).type == column.type
    else:
        assert found.code in {"column_type", "missing_columns"} and name in str(found)


def test_shapes_of_tables() -> None:
    table = pa.table(GOOD)
    for rows in (0, 1):
        found = tried(table.slice(0, rows))
        assert isinstance(found, pinfilm.Table) and len(found) == rows
        assert pa.table(found).num_rows == rows
    assert isinstance(tried({}), pinfilm.TableError)
    assert isinstance(tried(pa.table({})), pinfilm.TableError)
    wide = {**GOOD, **{f"own {number}": [number] * 4 for number in range(10_000)}}
    found = tried(wide)
    assert isinstance(found, pinfilm.Table) and len(found.metadata["kept"]) == 10_002
    huge = tried({**GOOD, "note": ["x" * 5_000_000] * 4, "y" * 1_000_000: [1] * 4})
    assert isinstance(huge, pinfilm.Table)
    whole(huge, 4)


def test_layouts_of_arrays() -> None:
    wanted = tried(GOOD)
    speeds = np.array(GOOD["duty.speed_m_per_min"])
    frozen = speeds.copy()
    frozen.flags.writeable = False
    layouts = {
        "big-endian": speeds.astype(">f8"),
        "strided": np.repeat(speeds, 2)[::2],
        "read-only": frozen,
        "reversed": speeds[::-1].copy()[::-1],
        "masked": np.ma.masked_array(speeds, mask=[False] * 4),
        "objects": speeds.astype(object),
        "categories": pl.Series([str(speed) for speed in speeds], dtype=pl.Categorical),
        "text": [repr(float(speed)) for speed in speeds],
    }
    for layout, array in layouts.items():
        found = tried({**GOOD, "duty.speed_m_per_min": array})
        assert isinstance(found, pinfilm.Table), (layout, found)
        assert repr(list(found["tension.pull_n"])) == repr(list(wanted["tension.pull_n"])), layout
    masked = tried({**GOOD, "duty.speed_m_per_min": np.ma.masked_array(speeds, mask=[True, False, False, False])})
    assert masked["code"][0] == "missing"


def test_payloads_of_nan_are_not_missing_values() -> None:
    payload = np.array(
        [0x7FF80000626C6E6B, 0x7FF8000000000001, 0xFFF8000000000000, 0x7FF0000000000001], dtype=np.uint64
    )
    found = tried({**GOOD, "duty.speed_m_per_min": payload.view(np.float64)})
    assert set(found["code"]) == {"not_finite"}


def test_a_line_that_all_but_stands_and_a_dose_of_all_but_nothing() -> None:
    """The smallest number is no speed any more in m/s: an error in its row, and the rows beside it are computed."""
    table = columns(3)
    for name in ("duty.speed_m_per_min", "lubrication.dose_ul"):
        table[name] = [table[name][0], 5e-324, table[name][2]]
    found = pinfilm.evaluate_table(table)
    assert found["status"][1] == "error" and found["message"][1]
    assert "error" not in (found["status"][0], found["status"][2])


@pytest.mark.skipif(os.environ.get("PINFILM_TESTS") != "slow", reason="a million rows: the slow session")
@pytest.mark.timeout(3600)
def test_a_million_hostile_rows() -> None:
    rows, draw = 1_000_000, np.random.default_rng(5)
    base = pa.table(columns(1000))
    table = pa.concat_tables([base] * (rows // 1000)).combine_chunks()
    for name in NUMBERS:
        values = table.column(name).to_numpy().copy()
        bad = draw.random(rows) < 0.03
        values[bad] = draw.choice([np.nan, np.inf, -np.inf, 0.0, -0.0, 5e-324, 1e308, -1.0], bad.sum())
        table = table.set_column(
            table.schema.get_field_index(name), name, pa.array(values, mask=draw.random(rows) < 0.01)
        )
    found = pinfilm.evaluate_table(table)
    counts = found.status_counts
    assert sum(counts.values()) == rows and counts["error"] > rows // 2
    out = pa.table(found)
    lost = out.filter(pa.compute.and_(pa.compute.equal(out["status"], "error"), pa.compute.is_null(out["message"])))
    assert lost.num_rows == 0
