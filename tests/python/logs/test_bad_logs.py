"""What people bring by mistake: each is refused or mended in words that say what to do."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import Any

import numpy as np
import pytest
from cleaning_steps import LEFT_OUT

import pinfilm
from pinfilm import CurrentLog, LogRules

Columns = dict[str, Any]


@cache
def oven() -> Any:
    """An invented log of the oven line, 200 days by half-hours."""
    return pinfilm.examples.current_log("oven", days=200, changed_after=100, step_min=30)


def spoilt(change: Callable[[Columns], Columns], rules: LogRules | None = None) -> CurrentLog:
    columns = {name: column.copy() for name, column in oven().columns.items()}
    return CurrentLog.read(columns | change(columns), time_zone="Europe/Vienna", rules=rules)


def shuffled(columns: Columns) -> Columns:
    order = np.random.default_rng(1).permutation(columns["time"].size)
    return {name: column[order] for name, column in columns.items()}


def twice(columns: Columns) -> Columns:
    return {name: np.repeat(column, 2) for name, column in columns.items()}


def disagreeing(columns: Columns) -> Columns:
    found = twice(columns)
    found["current_a"][1::2] *= 1.01
    return found


def times(factor: float) -> Callable[[Columns], Columns]:
    return lambda columns: {"current_a": factor * columns["current_a"]}


MENDED = {
    "no order": (shuffled, "unsorted", "they were sorted"),
    "newest first": (lambda c: {name: column[::-1] for name, column in c.items()}, "reversed", "turned round"),
    "everything twice": (twice, None, "stamp of another"),
    "two readings at one stamp": (disagreeing, "duplicates_differ", "check the stamps"),
    "a seventh below zero": (
        lambda c: {"current_a": np.where(np.arange(c["time"].size) % 7 == 0, -1, 1) * c["current_a"]},
        None,
        "below zero",
    ),
    "a stuck clamp": (lambda c: {"current_a": np.full(c["time"].size, 0.8)}, "constant", "check the clamp"),
    "a clock that stays on winter time": (
        lambda c: {"time": np.datetime64("2025-01-01") + np.arange(c["time"].size) * np.timedelta64(30, "m")},
        "clock_not_put_forward",
        "stays on winter time",
    ),
    "kiloamperes": (times(0.001), "nothing_left", "at the unit of the readings"),
}


@pytest.mark.parametrize("what", MENDED)
def test_what_is_mended_is_told_and_counted(what: str) -> None:
    change, caution, words = MENDED[what]
    found = spoilt(change).cleaning(line=oven().line)
    assert caution is None or caution in found.cautions
    assert words in found.sentence
    left_out = sum(getattr(found, step) for step in LEFT_OUT)
    assert found.rows_read == left_out + found.kept


REFUSED = {
    "milliamperes": (times(1000), "dimension", "current_a", "look like milliamperes: give amperes"),
    "per cent of rated": (times(100 / 1.03), "dimension", "current_a", "may be in per cent of rated"),
    "the clamp the wrong way round": (times(-1), "out_of_range", "log", "turn the clamp round"),
    "a stuck clamp": (lambda c: {"current_a": np.full(c["time"].size, 0.8)}, "inconsistent", "log", "check the clamp"),
    "nothing but stops": (times(0.001), "missing", "log", "cleaning left nothing of this log"),
    "no number": (lambda c: {"current_a": np.full(c["time"].size, np.nan)}, "missing", "log", "holds no reading"),
    "a load that is the speed": (
        lambda c: {"speed_m_per_min": 0.1 * c["load_pct"]},
        "inconsistent",
        "covariates",
        "speed_m_per_min runs with load_pct, temperature_c",
    ),
}


@pytest.mark.parametrize("what", REFUSED)
def test_what_is_refused_says_what_to_do(what: str) -> None:
    change, code, field, words = REFUSED[what]
    log = spoilt(change)
    with pytest.raises(pinfilm.PinfilmError, match=words) as raised:
        log.before_after(oven().changed, line=oven().line)
    assert (raised.value.code, raised.value.field) == (code, field)


def test_a_unit_is_mistaken_even_where_nothing_tells_of_stops() -> None:
    log = spoilt(times(1000), LogRules(rated_current_a=1.03))
    with pytest.raises(pinfilm.UnitError, match="milliamperes") as raised:
        log.cleaning()
    assert raised.value.unit == "A" and raised.value.limit == "0.01 to 3 times 1.03 A"
    power = CurrentLog(time=["2025-01-01", "2025-01-02"], power_kw=[410.0, 420.0], rules=LogRules(rated_power_kw=0.5))
    with pytest.raises(pinfilm.UnitError, match=r"415 kW, 830 times the rated 0.5 kW.*like watts: give kilowatts"):
        power.cleaning()


@pytest.mark.parametrize("verb", ["before_after", "savings", "watch"])
@pytest.mark.parametrize("day", ["2031-01-01", "2020-01-01"])
def test_a_day_outside_the_log_is_refused_with_its_first_and_last(verb: str, day: str) -> None:
    log = CurrentLog.read(oven().columns, time_zone="Europe/Vienna")
    with pytest.raises(pinfilm.InputError, match=r"from 2025-01-0\d to 2025-07-\d\d: choose a date inside") as raised:
        getattr(log, verb)(day, line=oven().line)
    assert raised.value.field in ("changed", "quiet_until") and raised.value.value == day


def few(count: int, **beside: Any) -> CurrentLog:
    days = np.datetime64("2025-01-01") + np.arange(count)
    reading = 3.0 + 0.1 * np.sin(np.arange(count) ** 2)
    return CurrentLog(time=days, current_a=reading, rules=LogRules(window_h=0), **beside)


def test_fewer_readings_than_the_model_needs() -> None:
    beside = {name: 20 + np.cos(np.arange(6.0) * k) for k, name in enumerate(("load_pct", "speed_m_per_min"), start=2)}
    # a level, two covariates, a change: four parameters, and two readings more for an error
    assert few(6, **beside).before_after("2025-01-03T12:00").degrees >= 2
    with pytest.raises(pinfilm.InputError, match="5 readings settle 4 parameters") as raised:
        few(5, **{name: column[:5] for name, column in beside.items()}).before_after("2025-01-03T12:00")
    assert (raised.value.field, raised.value.limit) == ("readings", "6 or more")
    with pytest.raises(pinfilm.InputError, match="too few for two segments of 10"):
        few(6).change_points()
    with pytest.raises(pinfilm.InputError, match="30 daily means or more"):
        few(6).watch("2025-01-04")


def test_a_covariate_that_changed_with_the_oil() -> None:
    moved = np.where(np.arange(40) < 20, 60.0, 80.0)
    with pytest.raises(pinfilm.InputError, match="load_pct changed on the day of the change and never else"):
        few(40, load_pct=moved).before_after("2025-01-20T12:00")


def test_weekly_readings_by_hand() -> None:
    weeks = np.datetime64("2025-01-13T10:00") + np.arange(24) * np.timedelta64(7, "D")
    reading = np.where(np.arange(24) < 12, 2.86, 2.75) + 0.08 * np.sin(np.arange(24) ** 2)
    log = CurrentLog(time=weeks, current_a=reading, rules=LogRules(window_h=0))
    line = pinfilm.examples.load("floor_now")
    found = log.before_after("2025-04-02", line=line)
    assert "24 (100 %) were kept as they are" in found.cleaning.sentence
    # of means a week apart, seven days each
    assert found.needed_days is not None and found.needed_days % 7 == 0
    assert "temperature_not_logged" in [note.code for note in found.notes]
    saved = log.savings("2025-04-02", line=line)
    running = pinfilm.evaluate(line).kinematics.running_h_per_year
    assert saved.running_h == pytest.approx(12 * 7 * running / 365.25)
    assert "read_by_hand" in [note.code for note in saved.notes]
