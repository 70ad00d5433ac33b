"""Verdicts against outside computations, and the words that go with them."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import statsmodels.api as sm
from invented_days import daily, days, single, synthetic

import pinfilm
from pinfilm import CurrentLog, InputError, LogRules, UnitError, examples

DATA = Path(__file__).parents[2] / "data"
CHECKS = {check["id"]: check for check in json.loads((DATA.parent / "published" / "checks.json").read_text("utf-8"))}


def flow() -> Any:
    return np.genfromtxt(DATA / "nile.csv", delimiter=",", skip_header=3)[:, 1]


def test_synthetic_log_of_the_case_file() -> None:
    reading, load = synthetic()
    assert reading[0] == pytest.approx(9.613132649) and reading.sum() == pytest.approx(1160.379922)
    # a time at the border of two days leaves no day out
    found = daily(reading, load).before_after("2025-03-02T00:00")
    assert (found.means_before, found.means_after, found.means_left_out) == (60, 60, 0)
    assert found.saving_pct == pytest.approx(7.380846, abs=2e-6)
    assert found.error_hac_pct == pytest.approx(0.246626, abs=2e-6)
    assert found.error_ar1_pct == found.error_pct == pytest.approx(0.298038, abs=2e-6)
    assert found.degrees == pytest.approx(40.584548, abs=2e-6)
    assert (found.saving_low_pct, found.saving_high_pct) == pytest.approx((6.778759, 7.982934), abs=3e-6)
    assert found.lag1 == pytest.approx(0.443998, abs=2e-6) and found.lags == 7
    assert (found.placebo_splits, found.placebo_rank) == (31, 0.03125)
    assert found.placebo_largest_t == pytest.approx(1.266092, abs=2e-6)
    assert found.verdict == "saving" and found.placebo_agrees is True
    changes = daily(reading, load).change_points()
    assert [change.index for change in changes.changes] == [60] and changes.changes[0].day == "2025-03-02"
    assert changes.penalty == pytest.approx(1.261323972)


def test_against_statsmodels() -> None:
    reading, load = synthetic()
    after = np.arange(120) >= 60
    columns = sm.add_constant(np.column_stack([load - load[60:].mean(), after]))
    fit = sm.OLS(reading, columns).fit(cov_type="HAC", cov_kwds={"maxlags": 7, "use_correction": True})
    found = daily(reading, load).before_after("2025-03-02T00:00")
    assert found.level_before_a == pytest.approx(fit.params[0], rel=1e-12)
    assert found.difference_a == pytest.approx(fit.params[2], rel=1e-11)
    assert found.effects["load_kg_per_m"] == pytest.approx(fit.params[1], rel=1e-11)
    gradient = np.array([fit.params[2] / fit.params[0] ** 2, 0, -1 / fit.params[0]])
    assert found.error_hac_pct == pytest.approx(100 * np.sqrt(gradient @ fit.cov_params() @ gradient), rel=1e-9)


def test_nile() -> None:
    river = flow()
    assert river.size == 100
    fit = sm.OLS(river, np.ones(100)).fit(cov_type="HAC", cov_kwds={"maxlags": 4, "use_correction": True})
    assert pinfilm.statistics.newey_west_se(river, 4, correction="small_sample") == pytest.approx(fit.bse[0], rel=1e-12)
    assert pinfilm.statistics.change_points(river).points == (28,)
    assert pinfilm.statistics.change_points(river, cost="mean_variance").points == (28,)
    # the same river as a log by the day
    assert [change.index for change in daily(river).change_points().changes] == [28]


def test_statistics_refuse_what_they_cannot_do() -> None:
    for call in (
        lambda: pinfilm.statistics.change_points([1.0] * 3),
        lambda: pinfilm.statistics.change_points([1.0, np.nan] * 30),
        lambda: pinfilm.statistics.cv_rmse_pct([1.0, 2.0, 3.0], [1.0, 2.0], 1),
        lambda: pinfilm.statistics.effective_sample_size(10, 1.0),
        lambda: pinfilm.statistics.savings_uncertainty(1.645, 10, -0.1, 100, 50, 0.1),
        lambda: pinfilm.statistics.cusum([1.0], 0.0, 0.5, 0.0),
    ):
        with pytest.raises(InputError):
            call()


def building() -> tuple[CurrentLog, float]:
    """A building's meter by day; load is what the weather asks for. Source, licence: tests/data/building_meter.txt."""
    rows = np.genfromtxt(DATA / "building_meter.csv", delimiter=",", skip_header=1, dtype=None, encoding="utf-8")
    time = [row[0] for row in rows]
    energy, warmth = (np.array([row[k] for row in rows]) for k in (1, 2))
    heating, cooling = np.maximum(60 - warmth, 0), np.maximum(warmth - 65, 0)
    # half of the weather's part of a year is heating, half cooling, as the source says
    load = heating / heating[:365].sum() + cooling / cooling[:365].sum()
    rules = LogRules(window_h=0)
    log = CurrentLog(time=time, power_kw=energy / 24, load_pct=1e4 * load, time_zone="America/Chicago", rules=rules)
    return log, 10.0


def test_a_building_whose_saving_is_known() -> None:
    log, truth = building()
    found = log.before_after("2016-12-26", settle_days=9)
    assert found.verdict == "saving" and found.means_before >= 395 and found.means_after >= 395
    assert found.saving_low_pct < truth < found.saving_high_pct
    assert found.pull is None and "current_is_not_pull" not in codes(found)
    avoided = log.savings("2016-12-26", settle_days=9)
    # avoided by ordinary least squares of statsmodels
    means = log.means()
    before = means["time"] < np.datetime64("2016-12-26T06:00")
    after = means["time"] >= np.datetime64("2017-01-05T06:00")
    columns = sm.add_constant(means["load_pct"])
    fit = sm.OLS(means["power_kw"][before], columns[before]).fit()
    predicted = fit.predict(columns[after])
    share = 100 * (predicted.sum() - means["power_kw"][after].sum()) / predicted.sum()
    assert avoided.avoided_pct == pytest.approx(share, rel=1e-9)
    assert avoided.cv_rmse_pct == pytest.approx(
        100 * np.sqrt(fit.mse_resid) / means["power_kw"][before].mean(), rel=1e-9
    )
    assert avoided.money is None and avoided.avoided_kwh_per_year is None


def codes(found: Any) -> set[str]:
    return {note.code for note in found.notes}


def test_a_demo_line_by_current_and_by_power() -> None:
    demo = examples.current_log("oven", seed=1)
    found = demo.log().before_after(demo.changed, line=demo.line)
    assert found.verdict == "saving" and found.pull is not None
    assert found.pull.pull_saving_low_pct < demo.pull_saving_pct < found.pull.pull_saving_high_pct
    assert {"no_load_current_unknown", "pins_not_seen"} <= codes(found)
    assert found.sentence.startswith("2025-01-01 to 2025-12-31, changed 2025-05-31: the drive drew")
    power = examples.current_log("oven", seed=1, power=True)
    by_power = power.log().before_after(power.changed, line=power.line)
    assert by_power.pull is not None and by_power.verdict == "saving"
    assert by_power.pull.error_motor_pct < found.pull.error_motor_pct
    assert by_power.pull.pull_saving_low_pct < demo.pull_saving_pct < by_power.pull.pull_saving_high_pct
    # a measured no-load current is worth more than the nameplate
    measured = demo.line.replace(
        {"drive.no_load_current_a": round(pinfilm.evaluate(demo.line).drive.no_load_current_a, 3)}
    )
    known = demo.log().before_after(demo.changed, line=measured)
    assert known.pull is not None and known.pull.error_motor_pct < found.pull.error_motor_pct
    assert "no_load_current_unknown" not in codes(known)


def test_what_cannot_be_told_is_said() -> None:
    demo = examples.current_log("packing", seed=1)
    found = demo.log().before_after(demo.changed, line=demo.line)
    assert found.verdict == "cannot_be_told" and found.sentence.endswith("measure power.")
    assert "weak_witness" in codes(found)


def test_without_a_line_current_stays_current() -> None:
    demo = examples.current_log("oven", seed=2, days=200, changed_after=100)
    rules = LogRules(no_load_current_a=pinfilm.evaluate(demo.line).drive.no_load_current_a)
    found = demo.log(rules=rules).before_after(demo.changed)
    assert found.pull is None and "current_is_not_pull" in codes(found)
    assert found.active_saving_pct is not None and found.active_saving_pct > found.saving_pct
    with pytest.raises(InputError, match="current is not energy"):
        demo.log(rules=rules).savings(demo.changed)


def test_quick_form_of_the_active_current() -> None:
    reading = np.where(np.arange(80) < 40, 3.0, 2.8) + 1e-4 * (np.arange(80) * 7 % 10 - 4.5)
    rules = LogRules(window_h=0, no_load_current_a=1.8)
    found = CurrentLog(time=days(80), current_a=reading, rules=rules).before_after("2025-02-10T00:00")
    assert found.saving_pct == pytest.approx(6.6667, abs=0.01)
    assert found.active_saving_pct == pytest.approx(10.634956, abs=0.02)


def test_nothing_done_is_seldom_seen() -> None:
    seen = [
        examples.current_log("oven", seed=seed, days=150, changed_after=75, nothing_done=True, step_min=30)
        for seed in range(8)
    ]
    verdicts = [demo.log().before_after(demo.changed, line=demo.line).verdict for demo in seen]
    assert verdicts.count("saving") + verdicts.count("more_use") <= 1


def test_missing_load_and_what_it_takes() -> None:
    reading, load = synthetic()
    found = daily(reading).before_after("2025-03-02T00:00", expected_saving_pct=3)
    assert "load_not_logged" in codes(found) and "if the load was the same" in found.sentence
    better = daily(reading, load).before_after("2025-03-02T00:00", expected_saving_pct=3)
    assert found.needed_days is not None and better.needed_days is not None
    assert better.needed_days < found.needed_days
    assert better.detectable_pct < found.detectable_pct


def test_covariates_that_never_move_are_left_out() -> None:
    reading, load = synthetic()
    found = daily(reading, load, speed_m_per_min=np.full(120, 3.5)).before_after("2025-03-02T00:00")
    assert found.covariates == ("load_kg_per_m",) and "covariate_constant" in codes(found)


@pytest.mark.parametrize(
    ("columns", "field"),
    [
        ({"current_a": np.full(60, 2.0)}, "log"),
        ({"current_a": -np.arange(60.0) - 1}, "log"),
        ({"current_a": np.full(60, np.nan)}, "log"),
        ({"current_a": [], "time": []}, "log"),
    ],
)
def test_hopeless_logs(columns: dict[str, Any], field: str) -> None:
    log = CurrentLog(**({"time": days(60), "rules": single()} | columns))
    with pytest.raises(InputError) as raised:
        log.before_after("2025-02-01")
    assert raised.value.field == field


def test_dates_outside_and_too_few_readings() -> None:
    reading, load = synthetic()
    for date in ("2024-12-01", "2026-01-01", "2025-01-01", "2025-04-30"):
        with pytest.raises(InputError, match="choose a date inside the log") as raised:
            daily(reading, load).before_after(date)
        assert raised.value.field == "changed" and "2025-01-01 to 2025-04-30" in raised.value.limit
    with pytest.raises(InputError, match="settle"):
        daily(reading[:4], load[:4], temperature_c=[20, 23, 21, 25]).before_after("2025-01-03T00:00")
    with pytest.raises(InputError, match="not a date"):
        daily(reading).before_after("first of March")
    with pytest.raises(InputError) as raised:
        daily(reading).before_after("2025-03-02", confidense_pct=90)
    assert raised.value.limit == "did you mean confidence_pct?"


@pytest.mark.parametrize(
    ("factor", "words"), [(1000, "milliamperes"), (100 / 1.03, "per cent"), (1e-3, "thousands of")]
)
def test_wrong_units_are_found(factor: float, words: str) -> None:
    demo = examples.current_log("oven", days=60, changed_after=30)
    columns = {**demo.columns, "current_a": demo.columns["current_a"] * factor}
    rules = LogRules(no_load_current_a=0.001)
    with pytest.raises(UnitError, match=words) as raised:
        CurrentLog.read(columns, rules=rules).before_after(demo.changed, line=demo.line)
    assert raised.value.code == "dimension"


def test_a_clock_that_was_set_is_refused() -> None:
    time = np.concatenate([days(40), days(40, "2025-01-20")])
    hourly = np.repeat(time, 24) + np.tile(np.arange(24) * np.timedelta64(1, "h"), 80)
    reading = 2 + 0.01 * (np.arange(hourly.size) * 7 % 10)
    log = CurrentLog(time=hourly, current_a=reading)
    assert log.cleaning().pieces == 2 and "clock_split" in log.cleaning().cautions
    with pytest.raises(InputError, match="2 pieces"):
        log.before_after("2025-02-01")


def test_savings_in_money() -> None:
    demo = examples.current_log("oven", seed=3)
    found = demo.log().savings(demo.changed, line=demo.line)
    price = demo.line.costs.energy_price_per_kwh
    assert found.money == pytest.approx(found.avoided_kwh * price)
    assert found.avoided_low_kwh < found.avoided_kwh < found.avoided_high_kwh
    assert found.good_fit and found.may_be_claimed and found.currency == "EUR"
    assert found.motor_spread_pct > 1 and "power_from_current" in codes(found)
    dearer = demo.log().savings(demo.changed, line=demo.line, energy_price_per_kwh=2 * price)
    assert dearer.money == pytest.approx(2 * found.money)
    # the truth, by the hours of the log and the evaluated lines
    now, proposed = (pinfilm.evaluate(line).drive.energy_kwh_per_year for line in examples.pair("oven"))
    assert found.avoided_kwh_per_year == pytest.approx(now - proposed, rel=0.5)


def test_oil_use() -> None:
    for used, verdict in [(2.0, "consistent"), (3.1, "high"), (0.4, "low")]:
        assert pinfilm.oil_use(used_l=used, shots=120_000, shot_ul=18).verdict == verdict
    with pytest.raises(InputError):
        pinfilm.oil_use(used_l=-1, shots=1, shot_ul=1)


def test_weekly_hand_readings() -> None:
    # half a year of readings by hand: only a large change shows, and it says what it would take
    time = np.datetime64("2025-01-06T10:00") + np.arange(26) * np.timedelta64(7, "D")
    rough = 0.1 * (np.arange(26) * 7 % 5 - 2) / 2
    small = CurrentLog(time=time, current_a=np.where(np.arange(26) < 13, 3.0, 2.95) + rough, rules=single())
    large = CurrentLog(time=time, current_a=np.where(np.arange(26) < 13, 3.0, 2.6) + rough, rules=single())
    day = "2025-04-05"
    assert (
        small.before_after(day).verdict == "nothing_seen"
        and "on each side would show" in small.before_after(day).sentence
    )
    found = large.before_after(day)
    assert found.verdict == "saving" and found.placebo_agrees is None
    assert "too short to try the same" in found.sentence
