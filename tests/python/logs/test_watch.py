"""A watch calls when something happens, seldom when nothing does, and goes on where it was."""

from __future__ import annotations

import pickle
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from invented_days import days, normal, single

import pinfilm
from pinfilm import CurrentLog, InputError, LogWatch, WatchReport, watch_many

QUIET = "2025-04-01"


def year(seed: int, story: str = "quiet", load: bool = True) -> CurrentLog:
    """200 days, the first 90 of them quiet."""
    t = np.arange(200)
    weight = np.array([100 + 10 * normal(row, 1, seed) for row in t])
    noise = np.array([0.012 * normal(row, 0, seed) for row in t])
    late = np.maximum(t - 120, 0)
    reading = (4 + 0.06 * weight) * (1 + noise)
    if story == "dry":
        reading *= 1 + 0.0025 * late
    elif story == "drag":
        reading += 0.5 * (late > 0)
    elif story == "heavy":
        weight = weight + 40 * (late > 0)
        reading = (4 + 0.06 * weight) * (1 + noise)
    elif story == "light":
        reading *= 1 - 0.05 * (late > 0)
    columns = {"load_kg_per_m": weight} if load else {}
    return CurrentLog(time=days(200), current_a=reading, rules=single(), name=story, **columns)


def test_a_quiet_line_seldom_alarms() -> None:
    reports = [year(seed).watch(QUIET) for seed in range(40)]
    alarmed = sum(bool(report.alarms) for report in reports)
    # 24 % of learnt baselines within 100 readings, here 109; band of three standard errors
    assert alarmed <= 18
    assert all(report.readings_quiet == 90 and report.readings_watched == 109 for report in reports)


@pytest.mark.parametrize(("story", "cause"), [("dry", "running_dry"), ("drag", "idle_drag")])
def test_stories_are_told(story: str, cause: str) -> None:
    report = year(3, story).watch(QUIET)
    last = report.alarms[-1]
    assert last.too_much and last.first > "2025-04-30" and last.rise_pct > 1
    causes = {step.cause for step in report.steps if step.alarm}
    assert cause in causes, causes
    assert "the line drew" in report.sentence


def test_a_heavier_load_is_no_alarm() -> None:
    report = year(3, "heavy").watch(QUIET)
    assert report.load_change_readings > 40
    assert not any(alarm.readings > 30 for alarm in report.alarms)


def test_without_a_load_every_cause_is_ambiguous() -> None:
    for story in ("dry", "drag", "heavy"):
        report = year(3, story, load=False).watch(QUIET)
        assert report.alarms and {alarm.cause for alarm in report.alarms} == {"ambiguous"}
        assert "load_not_logged" in {note.code for note in report.notes}


def test_temperature_alone_is_no_load() -> None:
    log = year(3, "dry", load=False)
    warm = CurrentLog(
        time=days(200), current_a=log.means()["current_a"], temperature_c=20 + np.arange(200) % 9, rules=single()
    )
    assert {alarm.cause for alarm in warm.watch(QUIET).alarms} == {"ambiguous"}


def test_too_little_is_an_alarm_too() -> None:
    alarm = year(3, "light").watch(QUIET).alarms[-1]
    assert not alarm.too_much and alarm.rise_pct < 0


@given(stop=st.integers(90, 198), story=st.sampled_from(["quiet", "dry", "light"]))
def test_one_at_a_time_saved_and_resumed_is_the_batch(stop: int, story: str) -> None:
    log = year(5, story)
    means = log.means()
    report = log.watch(QUIET)
    quiet = CurrentLog(
        time=days(90), current_a=means["current_a"][:90], load_kg_per_m=means["load_kg_per_m"][:90], rules=single()
    )
    watch = LogWatch.learn(quiet)
    assert watch.threshold == report.threshold
    steps = []
    for row in range(91, 200):  # the day itself is left out
        if row == stop:
            again = LogWatch.from_json(watch.to_json())
            assert again == watch == pickle.loads(pickle.dumps(watch))
            watch = again
        beside = {"current_a": means["current_a"][row], "load_kg_per_m": means["load_kg_per_m"][row]}
        steps.append(watch.take(means["time"][row], **beside))
    assert [step.to_dict() for step in steps] == [step.to_dict() for step in report.steps]


def test_refused_readings_leave_the_watch_as_it_was() -> None:
    watch = LogWatch.learn(year(1))
    good: dict[str, Any] = {"current_a": 10.0, "load_kg_per_m": 100.0}
    watch.take("2025-08-01", **good)
    before = watch.to_json()
    for time, row in [
        ("2025-08-01", good),
        ("2025-07-01", good),
        ("2025-08-02", {"current_a": 10.0}),
        ("2025-08-02", {"load_kg_per_m": 100.0}),
        ("2025-08-02", good | {"current_a": float("nan")}),
        ("2025-08-02", good | {"load_kg_per_m": float("inf")}),
        ("2025-08-02", good | {"voltage": 3}),
        ("soon", good),
    ]:
        with pytest.raises(InputError):
            watch.take(time, **row)
    assert watch.to_json() == before
    watch.reset()
    assert watch.to_json() != before


@given(st.text(max_size=40))
def test_what_is_no_saved_watch_is_refused(text: str) -> None:
    with pytest.raises(InputError):
        LogWatch.from_json(text)


def test_a_damaged_watch_is_refused() -> None:
    saved = LogWatch.learn(year(1)).to_json()
    for old, new in [('"current_a"', '"voltage"'), ('["load_kg_per_m"]', "[]"), ("null", '"Europe/Atlantis"')]:
        assert old in saved
        with pytest.raises(InputError):
            LogWatch.from_json(saved.replace(old, new, 1))


def test_many_at_once_whatever_the_threads() -> None:
    logs = [year(seed, story) for seed in range(4) for story in ("quiet", "dry", "drag")]
    logs.insert(5, CurrentLog(time=days(10), current_a=np.arange(10.0) + 1, rules=single()))
    told: list[tuple[int, int]] = []
    one = watch_many(logs, QUIET, threads=1, progress=lambda done, of: told.append((done, of)))
    three = watch_many(logs, QUIET, threads=3)
    assert told[-1] == (13, 13) and len(told) > 1
    assert [str(report) for report in one] == [str(report) for report in three]
    assert isinstance(one[5], InputError) and sum(isinstance(report, WatchReport) for report in one) == 12
    assert one[0] == logs[0].watch(QUIET)
    with pytest.raises(InputError):
        watch_many(logs, QUIET, lines=[None])
    with pytest.raises(KeyboardInterrupt):
        watch_many(logs, QUIET, threads=1, progress=_stopped)


def _stopped(done: int, of: int) -> None:
    raise KeyboardInterrupt


def test_a_short_quiet_period_is_refused() -> None:
    with pytest.raises(InputError, match="30 daily means or more"):
        year(1).watch("2025-01-20")
    with pytest.raises(InputError) as raised:
        year(1).watch("2026-01-20")
    assert raised.value.field == "quiet_until"


def test_a_report_says_what_it_can_see() -> None:
    report = year(1).watch(QUIET)
    assert report.run_length > 365 and 0 < report.shift_found_after < 40
    assert pinfilm.WatchReport.from_dict(report.to_dict()) == report
    assert len(report.steps) == report.readings_watched and "steps" not in str(report)
