"""Logs as bad as they come: a typed error or a report whose counts add up, never a crash."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from cleaning_steps import LEFT_OUT
from hypothesis import given
from hypothesis import strategies as st

from pinfilm import CurrentLog, LogRules, PinfilmError

MINUTE = np.timedelta64(1, "m")

rows = st.lists(
    st.tuples(
        st.one_of(st.just(10), st.just(10), st.integers(-3000, 3000), st.sampled_from([0, -60, 60, 10**9])),
        st.one_of(
            st.floats(1, 4), st.floats(1, 4), st.sampled_from([0.0, -1.0, float("nan"), float("inf"), 1e300, 5e-324])
        ),
        st.one_of(st.floats(0, 120), st.sampled_from([float("nan"), float("-inf"), 100.0])),
    ),
    max_size=300,
)
rules = st.builds(
    LogRules,
    window_h=st.sampled_from([0.0, 0.5, 2.0, 24.0]),
    no_load_current_a=st.sampled_from([None, 1.8]),
    gaps_are_stops=st.booleans(),
    may_be_negative=st.booleans(),
    coverage_pct=st.sampled_from([0.0, 70.0, 100.0]),
)


def log_of(table: list[tuple[int, float, float]], rules: LogRules, zone: str | None) -> CurrentLog:
    steps = np.cumsum([0, *(row[0] for row in table)])[:-1] if table else np.zeros(0, dtype=int)
    time = np.datetime64("2025-03-28T20:00") + steps * MINUTE
    columns: dict[str, Any] = {"current_a": [row[1] for row in table], "load_pct": [row[2] for row in table]}
    return CurrentLog(time=time, time_zone=zone, rules=rules, **columns)


@given(rows, rules, st.sampled_from([None, "Europe/Vienna", "America/St_Johns", "UTC"]))
def test_counts_add_up_or_the_log_is_refused(table: Any, rules: LogRules, zone: str | None) -> None:
    log = log_of(table, rules, zone)
    try:
        found = log.cleaning()
    except PinfilmError as error:
        assert error.code and error.field
        return
    assert found.rows_read == len(table) == found.kept + sum(getattr(found, step) for step in LEFT_OUT)
    means = log.means()
    assert found.means == means["current_a"].size and means["rows"].sum() == found.kept
    assert np.isfinite(means["current_a"]).all()


@given(rows, rules, st.integers(-3, 6))
def test_verdicts_are_finite_or_refused(table: Any, rules: LogRules, day: int) -> None:
    log = log_of(table, rules, None)
    changed = np.datetime64("2025-03-28") + day
    for verb in (
        lambda: log.before_after(changed),
        lambda: log.change_points(least_segment=3),
        lambda: log.watch(changed),
    ):
        try:
            found = verb()
        except PinfilmError as error:
            assert error.code and error.field
            continue
        assert found.sentence and "NaN" not in found.sentence
        assert type(found).from_dict(found.to_dict()) == found


@given(st.lists(st.text(max_size=12), min_size=1, max_size=5))
def test_stamps_that_are_no_dates(stamps: list[str]) -> None:
    try:
        log = CurrentLog(time=stamps, current_a=[1.0] * len(stamps))
    except PinfilmError as error:
        assert error.field == "time"
        return
    assert len(log) == len(stamps)


@given(rows)
def test_order_does_not_matter_to_a_zone_without_changes(table: Any) -> None:
    rules = LogRules(window_h=0, display_step_a=0.01)
    steps = [(abs(row[0]) + 1, row[1], row[2]) for row in table]
    log = log_of(steps, rules, "UTC")
    back = {name: np.asarray(column)[::-1] for name, column in _columns(steps).items()}
    reverse = CurrentLog(**back, time_zone="UTC", rules=rules)
    try:
        found = log.means()
    except PinfilmError:
        with pytest.raises(PinfilmError):
            reverse.means()
        return
    assert {k: v.tolist() for k, v in found.items()} == {k: v.tolist() for k, v in reverse.means().items()}


def _columns(table: list[tuple[int, float, float]]) -> dict[str, Any]:
    steps = np.cumsum([0, *(row[0] for row in table)])[:-1]
    time = np.datetime64("2025-03-28T20:00") + steps * MINUTE
    return {"time": time, "current_a": [row[1] for row in table], "load_pct": [row[2] for row in table]}
