"""Means over windows are those of polars and pandas: same beginnings, same means, through both changes of the clock."""

from __future__ import annotations

from typing import Any

import numpy as np
import pandas
import polars
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from pinfilm import CurrentLog, InputError, LogRules

#: Zones whose clocks change at two, at midnight (a day without one), by half an hour, by two hours, and never.
ZONES = (
    "Europe/Vienna",
    "America/New_York",
    "America/Santiago",
    "America/St_Johns",
    "Australia/Lord_Howe",
    "Antarctica/Troll",
    "Asia/Kolkata",
    "UTC",
)
#: The week of each change of the clock in these zones, 2025.
WEEKS = ("2025-03-07", "2025-03-28", "2025-04-03", "2025-09-04", "2025-10-02", "2025-10-24", "2025-10-31")
#: The day that begins at one, since its midnight is skipped: polars lets it begin at 23 the day before, pandas at one.
NO_MIDNIGHT = ("America/Santiago", "2025-09-04", 24.0)
PANDAS = {24.0: "D", 1.0: "h", 0.5: "30min"}


def messy(start: str, zone: str, seed: int, days: int = 5) -> tuple[Any, Any, Any]:
    """Stamps (UTC), readings, loads: uneven steps, a gap of hours, rows without a load."""
    chance = np.random.default_rng(seed)
    steps = chance.integers(1, 29, days * 100)
    at = chance.integers(0, steps.size)
    steps[at] += chance.integers(60, 1500)  # nobody logged for a while
    time = np.datetime64(start, "m") + np.cumsum(steps).astype("timedelta64[m]")
    time = time[time < np.datetime64(start, "m") + np.timedelta64(days, "D")]
    reading = np.round(2.5 + 0.3 * chance.standard_normal(time.size), 2)
    load = np.where(chance.random(time.size) < 0.1, np.nan, 80 + 5 * chance.standard_normal(time.size))
    return time, reading, load


def rules(hours: float) -> LogRules:
    """Resampling alone: nothing stands, starts, is a spike or covers too little."""
    return LogRules(window_h=hours, coverage_pct=0, display_step_a=100)


def ours(time: Any, reading: Any, load: Any, zone: str, hours: float) -> dict[str, Any]:
    text = [f"{stamp}Z" for stamp in np.datetime_as_string(time, unit="s")]
    log = CurrentLog(time=text, current_a=reading, load_pct=load, time_zone=zone, rules=rules(hours))
    return log.means()


def frame(time: Any, reading: Any, load: Any, zone: str) -> polars.DataFrame:
    stamps = polars.Series(time.astype("datetime64[us]")).dt.replace_time_zone("UTC").dt.convert_time_zone(zone)
    return polars.DataFrame({"time": stamps, "current_a": reading, "load_pct": polars.Series(load, nan_to_null=True)})


def by_polars(table: polars.DataFrame, every: str) -> polars.DataFrame:
    means = table.group_by_dynamic("time", every=every).agg(
        polars.col("current_a").mean(), polars.col("load_pct").mean(), polars.len().alias("rows")
    )
    return means.filter(polars.col("load_pct").is_not_null())


def same(found: dict[str, Any], times: Any, current: Any, load: Any, rows: Any) -> None:
    assert found["time"].astype("datetime64[s]").tolist() == np.asarray(times, dtype="datetime64[s]").tolist()
    assert found["rows"].tolist() == list(rows)
    np.testing.assert_allclose(found["current_a"], current, rtol=1e-13)
    np.testing.assert_allclose(found["load_pct"], load, rtol=1e-13)


@pytest.mark.parametrize("zone", ZONES)
@pytest.mark.parametrize("start", WEEKS)
@pytest.mark.parametrize("hours", [24.0, 1.0, 0.5])
def test_windows_are_those_of_polars_and_pandas(zone: str, start: str, hours: float) -> None:
    if zone == "Australia/Lord_Howe" and hours == 1.0:
        pytest.skip("after a change by half an hour both count on from the hour before; ours begin at full hours")
    time, reading, load = messy(start, zone, seed=len(zone))
    found = ours(time, reading, load, zone, hours)
    table = frame(time, reading, load, zone)

    if (zone, start, hours) != NO_MIDNIGHT:
        theirs = by_polars(table, {24.0: "1d", 1.0: "1h", 0.5: "30m"}[hours])
        times = theirs["time"].dt.convert_time_zone("UTC").dt.replace_time_zone(None).to_numpy()
        same(found, times, theirs["current_a"], theirs["load_pct"], theirs["rows"])

    index = pandas.DatetimeIndex(time.astype("datetime64[ns]")).tz_localize("UTC").tz_convert(zone)
    series = pandas.DataFrame({"current_a": reading, "load_pct": load}, index=index)
    groups = series.resample(PANDAS[hours])
    means = groups.mean().assign(rows=groups.size()).dropna()
    times = means.index.tz_convert("UTC").tz_localize(None).to_numpy()
    same(found, times, means["current_a"], means["load_pct"], means["rows"])


@given(st.sampled_from(ZONES), st.sampled_from(WEEKS), st.integers(0, 10**6), st.sampled_from([1, 2, 7]))
def test_days_are_those_of_polars_whatever_the_log(zone: str, start: str, seed: int, days: int) -> None:
    assume((zone, start, 24.0) != NO_MIDNIGHT)
    start = str(np.datetime64(start) - 4)
    time, reading, load = messy(start, zone, seed, days=10)
    found = ours(time, reading, load, zone, 24.0 * days)
    theirs = by_polars(frame(time, reading, load, zone), f"{days}d")
    times = theirs["time"].dt.convert_time_zone("UTC").dt.replace_time_zone(None).to_numpy()
    same(found, times, theirs["current_a"], theirs["load_pct"], theirs["rows"])


@given(
    st.sampled_from(ZONES), st.sampled_from(WEEKS), st.integers(0, 10**6), st.sampled_from([2.0, 3.0, 6.0, 8.0, 12.0])
)
def test_parts_of_a_day_begin_with_the_clock_on_the_wall(zone: str, start: str, seed: int, hours: float) -> None:
    time, reading, load = messy(start, zone, seed)
    found = ours(time, reading, np.where(np.isnan(load), 80.0, load), zone, hours)
    index = pandas.DatetimeIndex(found["time"]).tz_localize("UTC").tz_convert(zone)
    every = (index.hour + index.minute / 60) % hours
    put_forward = every != 0  # the full hour does not exist there: the window begins where the clock was put forward
    before = (index - pandas.Timedelta("1ns")).tz_localize(None)
    assert all(index.tz_localize(None)[put_forward] - before[put_forward] > pandas.Timedelta("1ns"))
    assert found["rows"].sum() == time.size
    # each row lies in the last window that had begun
    at = np.searchsorted(found["time"], time.astype("datetime64[ns]"), side="right") - 1
    assert np.bincount(at, minlength=found["rows"].size).tolist() == found["rows"].tolist()


def test_summer_days_begin_at_midnight_of_the_plant() -> None:
    # a line that draws more on odd days of the calendar; a window an hour off would mix the two
    utc = np.datetime64("2025-07-01T00:00") + np.arange(10 * 144) * np.timedelta64(10, "m") - np.timedelta64(120, "m")
    day = (np.arange(1440) // 144) % 2
    log = CurrentLog(time=utc + np.timedelta64(120, "m"), current_a=2.0 + day, time_zone="Europe/Vienna")
    means = log.means()
    assert means["current_a"].tolist() == [2.0, 3.0] * 5
    assert means["time"][0] == np.datetime64("2025-06-30T22:00")


@pytest.mark.parametrize("hours", [5, 7, 36, 1.5, 0.7, 25])
def test_windows_that_do_not_fit_a_clock_are_refused(hours: float) -> None:
    with pytest.raises(InputError, match="take whole days") as raised:
        CurrentLog(time=["2025-01-01"], current_a=[1.0], rules=LogRules(window_h=hours))
    assert (raised.value.code, raised.value.field, raised.value.value) == ("out_of_range", "rules.window_h", hours)


def test_a_settled_change_counts_days_of_the_calendar() -> None:
    time = np.datetime64("2025-03-01") + np.arange(60 * 24) * np.timedelta64(60, "m")
    reading = 2.0 + 0.01 * (np.arange(time.size) * 7 % 11)
    text = [f"{stamp}Z" for stamp in np.datetime_as_string(time - np.timedelta64(60, "m"), unit="s")]
    log = CurrentLog(time=text, current_a=reading, time_zone="Europe/Vienna")
    # the clock is put forward on the 30th: three days settled are three days of the calendar
    found = log.before_after("2025-03-28", settle_days=3)
    assert (found.means_before, found.means_left_out) == (27, 4)
