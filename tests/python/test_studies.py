"""Grids, draws, what matters, calibration: what comes out, and what is refused with which words."""

from __future__ import annotations

import datetime
import math
import pickle
from typing import Any

import numpy as np
import pytest

import pinfilm
from pinfilm import Distribution, InputError, Reading

pytestmark = pytest.mark.filterwarnings("ignore::pinfilm.PinfilmRangeWarning")


@pytest.fixture(scope="module")
def oven() -> pinfilm.Line:
    return pinfilm.examples.load("oven_now")


@pytest.fixture(scope="module")
def pair() -> tuple[pinfilm.Line, pinfilm.Line]:
    return pinfilm.examples.pair("oven")


def refused(call: Any, *args: Any, **keywords: Any) -> InputError:
    with pytest.raises(InputError) as caught:
        call(*args, **keywords)
    return caught.value


# --- distributions -------------------------------------------------------------------------------------------------

MADE = [
    Distribution.constant(2.0),
    Distribution.normal(1.0, 0.1),
    Distribution.normal_90(1.0, 2.0),
    Distribution.truncated_normal(0.2, 0.05, 0.08, 0.4),
    Distribution.lognormal(1e-3, 0.5),
    Distribution.lognormal_90(1e-4, 3e-3),
    Distribution.lognormal_factor(2.0, 3.0, 0.95),
    Distribution.uniform(0.0, 1.0),
    Distribution.loguniform(0.1, 1.0),
    Distribution.triangular(0.05, 0.19, 0.30),
    Distribution.pert(0.1, 0.25, 0.4),
    Distribution.beta(0.0, 1.0, 2.0, 3.0),
    Distribution.beta_90(0.1, 0.4),
]


@pytest.mark.parametrize("made", MADE, ids=lambda made: made.kind)
def test_a_distribution_is_its_repr_and_its_pickle(made: Distribution) -> None:
    assert eval(repr(made), {"Distribution": Distribution}) == made
    assert pickle.loads(pickle.dumps(made)) == made
    assert len({made, pickle.loads(pickle.dumps(made))}) == 1
    assert made.quantile(0.1) <= made.quantile(0.9)


def test_what_is_no_distribution_says_what_to_change() -> None:
    assert "exchange the two" in str(refused(Distribution.uniform, 2.0, 1.0))
    assert "constant" in str(refused(Distribution.normal, 1.0, 0.0))
    assert refused(Distribution.triangular, 0.0, 3.0, 2.0).code == "inconsistent"
    assert refused(Distribution.normal, math.nan, 1.0).code == "not_finite"
    assert refused(Distribution.uniform(0.0, 1.0).quantile, 1.0).field == "u"


def test_quantiles_of_published_examples() -> None:
    # closed forms of the triangular distribution
    assert Distribution.triangular(0.05, 0.19, 0.30).quantile(0.05) == pytest.approx(0.09183300133, rel=1e-9)
    assert Distribution.lognormal_90(1e-4, 3e-3).quantile(0.5) == pytest.approx(math.sqrt(3e-7), rel=1e-9)


# --- what is uncertain by default ------------------------------------------------------------------------------------


def test_the_default_comes_from_the_register_and_from_what_enters(oven: pinfilm.Line) -> None:
    usual = pinfilm.default_uncertainty(oven)
    rows = {row["path"]: row for row in pinfilm.register()}
    for path in usual:
        known = ".".join(step for step in path.split(".") if not step.isdigit())
        assert rows[known]["spread"], path
    assert usual["wear.wear_coefficient_dry"] == Distribution.lognormal_90(1e-4, 3e-3)
    assert "duty.wash_removed_share" not in usual  # nobody washes this line
    assert "drive.converter_efficiency" not in usual  # and no converter feeds it


def test_a_named_value_moves_the_spread_along(oven: pinfilm.Line) -> None:
    usual = pinfilm.default_uncertainty(oven.replace({"wear.wear_coefficient_dry": 2e-3}))
    dry = usual["wear.wear_coefficient_dry"]
    assert isinstance(dry, Distribution)
    assert dry.quantile(0.5) == pytest.approx(2e-3)
    assert dry.quantile(0.95) / dry.quantile(0.05) == pytest.approx(30.0)


# --- sweep -----------------------------------------------------------------------------------------------------------


def test_sweep_rows_are_evaluations(oven: pinfilm.Line) -> None:
    grid = {"oil.iso_vg": [100, 220], "lubrication.timer.dwell_min": np.array([40.0, 52.0, 60.0])}
    table = pinfilm.sweep(oven, grid)
    assert table.rows == 6
    assert table["oil.iso_vg"].tolist() == [100, 100, 100, 220, 220, 220]
    for i in range(6):
        changes = {"oil.iso_vg": int(table["oil.iso_vg"][i])}
        changes["lubrication.timer.dwell_min"] = float(table["lubrication.timer.dwell_min"][i])
        assert table["fill.mean_fill"][i] == pinfilm.evaluate(oven.replace(changes)).fill.mean_fill
    assert table.units["tension.pull_n"] == "N"
    assert "pull" in table.meanings["tension.pull_n"]
    assert set(table["status"]) == {"ok"}


def test_sweep_over_whole_groups_and_words(oven: pinfilm.Line) -> None:
    oils = [oven.oil, oven.oil.replace(iso_vg=460)]
    clocks = ["wall", "machine"]
    grid = {"oil": oils, "lubrication.timer.clock": clocks}
    table = pinfilm.sweep(oven, grid, outputs=["wear.governs", "fill.viscosity_application_mpa_s"])
    assert table["oil"].tolist() == [oils[0], oils[0], oils[1], oils[1]]
    assert table["lubrication.timer.clock"].tolist() == clocks * 2
    assert set(table["wear.governs"]) <= {"mean", "local", "pin", "bush"}
    viscosity = table["fill.viscosity_application_mpa_s"]
    assert viscosity[2] > viscosity[0]


def test_a_bad_point_is_told_in_its_row(oven: pinfilm.Line) -> None:
    table = pinfilm.sweep(oven, {"chain.pin_diameter_mm": [11.9, 13.0, 12.0]}, outputs=["wear.life_years"])
    assert table["status"].tolist() == ["ok", "error", "ok"]
    assert table["code"].tolist() == ["", "clearance", ""]
    assert "clearance in its bush" in table["message"][1]
    assert np.isnan(table["wear.life_years"]).tolist() == [False, True, False]


def test_bad_grids(oven: pinfilm.Line) -> None:
    assert "viscosity_index" in str(refused(pinfilm.sweep, oven, {"oil.viscosty_index": [95]}))
    assert refused(pinfilm.sweep, oven, {"oil.viscosity_index": ["thick"]}).code == "wrong_type"
    assert refused(pinfilm.sweep, oven, {"oil.viscosity_index": []}).code == "missing"
    assert refused(pinfilm.sweep, oven, {}).code == "missing"
    huge = {"oil.viscosity_index": range(10_000), "duty.ambient_c": range(10_000)}
    error = refused(pinfilm.sweep, oven, huge)
    assert "10000 × 10000 = 100000000 rows" in str(error)
    wide = {"oil.viscosity_index": range(2000), "duty.ambient_c": range(2000)}
    assert "GB" in str(refused(pinfilm.sweep, oven, wide))
    assert refused(pinfilm.sweep, oven, {"duty.ambient_c": [20.0]}, outputs=["wear.lif_years"]).limit == (
        "did you mean wear.life_years?"
    )


def test_columns_read_like_a_dict(oven: pinfilm.Line) -> None:
    table = pinfilm.sweep(oven, {"duty.ambient_c": [20.0, 30.0]}, outputs=["tension.pull_n"])
    assert list(table) == ["duty.ambient_c", "tension.pull_n", "status", "code", "message"]
    assert list(dict(table)) == list(table.to_dict()) == list(table)
    assert "tension.pull_n" in table
    assert len(table) == 5
    with pytest.raises(KeyError, match="did you mean"):
        table["tension.pul_n"]
    assert "2 rows" in repr(table)
    assert "<td" in table._repr_html_()


def test_columns_go_into_pandas(oven: pinfilm.Line) -> None:
    pytest.importorskip("pandas")
    frame = pinfilm.sweep(oven, {"duty.ambient_c": [20.0, 30.0]}, outputs=["tension.pull_n"]).to_pandas()
    assert frame["duty.ambient_c"].tolist() == [20.0, 30.0]
    assert frame.attrs["units"]["tension.pull_n"] == "N"


# --- sample ----------------------------------------------------------------------------------------------------------


def test_a_product_has_its_known_percentiles(oven: pinfilm.Line) -> None:
    base = pinfilm.evaluate(oven).cost.energy / oven.costs.energy_price_per_kwh
    price = {"costs.energy_price_per_kwh": Distribution.uniform(0.1, 0.3)}
    found = pinfilm.sample(oven, price, n=1024, outputs=["cost.energy"])
    for p in (0.05, 0.5, 0.95):
        estimate = found.percentile("cost.energy", p)
        assert estimate.error is not None
        assert estimate.value == pytest.approx(base * (0.1 + 0.2 * p), rel=0.01)
    limit = base * 0.16
    assert found.probability("cost.energy", at_most=limit).value == pytest.approx(0.3, abs=5e-3)
    drawn = found["costs.energy_price_per_kwh"]
    assert np.allclose(found["cost.energy"], base * drawn, rtol=1e-12)


@pytest.mark.parametrize("generator", ["sobol", "random"])
def test_threads_change_no_bit(pair: tuple[pinfilm.Line, pinfilm.Line], generator: str) -> None:
    found = [pinfilm.sample(pair, n=64, generator=generator, threads=threads) for threads in (1, 2, 3, None)]
    for path in found[0].outputs:
        for other in found[1:]:
            assert found[0][path].tobytes() == other[path].tobytes(), path
    assert found[0]["payback_days"].tobytes() != pinfilm.sample(pair, n=64, seed=2)["payback_days"].tobytes()


def test_a_pair_shares_its_draws(pair: tuple[pinfilm.Line, pinfilm.Line]) -> None:
    now = pair[0]
    same = pinfilm.sample((now, now), n=64, outputs=["saving_per_year", "now.wear.life_years"])
    saving = same["saving_per_year"][~np.isnan(same["saving_per_year"])]
    assert len(saving) > 32
    assert np.all(saving == 0.0)
    assert np.nanstd(same["now.wear.life_years"]) > 0.0


def test_a_pair_can_differ_by_side(pair: tuple[pinfilm.Line, pinfilm.Line]) -> None:
    two = Distribution.uniform(0.1, 0.2), Distribution.uniform(0.5, 0.6)
    path = "costs.breakdowns_per_year"
    outputs = ["now.line." + path, "proposed.line." + path]
    found = pinfilm.sample(pair, {path: two}, n=64, outputs=outputs)
    now, proposed = (found[name] for name in outputs)
    assert np.allclose(proposed - now, 0.4)
    apart = pinfilm.sample(pair, {"now." + path: two[0], "proposed." + path: two[1]}, n=64, outputs=outputs)
    assert np.std(apart[outputs[1]] - apart[outputs[0]]) > 0.01
    error = refused(pinfilm.sample, pair, {path: two[0]}, n=64)
    assert f"now.{path}" in str(error)
    assert error.code == "inconsistent"


def test_a_payback_that_never_comes_sorts_last(pair: tuple[pinfilm.Line, pinfilm.Line]) -> None:
    dear = {"proposed.costs.upkeep_per_year": Distribution.uniform(0.0, 20_000.0)}
    found = pinfilm.sample(pair, dear, n=256, outputs=["payback_days"])
    assert math.isinf(found.percentile("payback_days", 0.95).value)
    assert repr(found.percentile("payback_days", 0.95)) == "never"
    finite = np.isfinite(found["payback_days"]).mean()
    assert 0.1 < finite < 0.9
    assert found.probability("payback_days", at_most=1e9).value == pytest.approx(finite)


def test_draws_that_cannot_be_computed_are_told(oven: pinfilm.Line) -> None:
    bore = oven.chain.bush_bore_mm
    found = pinfilm.sample(oven, {"chain.pin_diameter_mm": Distribution.uniform(bore - 0.1, bore + 0.1)}, n=64)
    assert found.share_failed == pytest.approx(0.5, abs=0.05)
    (why,) = found.failures
    assert why["code"] == "clearance"
    assert why["count"] == 64 * found.share_failed
    assert "could not be computed" in repr(found)
    assert found.percentile("wear.life_years", 0.5).value > 0


def test_the_summary_has_every_output(oven: pinfilm.Line) -> None:
    found = pinfilm.sample(oven, n=64)
    summary = found.summary()
    assert summary["output"].tolist() == found.outputs
    assert len(found.outputs) > 80
    assert np.all(summary["p5"] <= summary["p95"]) or np.isnan(summary["p5"]).any()
    assert set(found.uncertain["input"]) == set(pinfilm.default_uncertainty(oven))
    assert found.inputs.rows == found.columns.rows == found.n == 64


def test_correlated_draws(oven: pinfilm.Line) -> None:
    a, b = "surface.dry_friction", "wear.wear_coefficient_dry"
    uncertain = {a: Distribution.normal(0.3, 0.03), b: Distribution.lognormal(5e-4, 0.5)}
    for given in ({(a, b): 0.8}, [[1.0, 0.8], [0.8, 1.0]], np.array([[1.0, 0.8], [0.8, 1.0]])):
        found = pinfilm.sample(oven, uncertain, correlation=given, n=1024, outputs=["tension.pull_n"])
        r = np.corrcoef(found[a], np.log(found[b]))[0, 1]
        assert r == pytest.approx(0.8, abs=0.02)


def test_what_cannot_be_sampled(oven: pinfilm.Line) -> None:
    ok = Distribution.uniform(0.2, 0.4)
    path = "surface.dry_friction"

    def error(uncertain: Any, **keywords: Any) -> InputError:
        return refused(pinfilm.sample, oven, uncertain, **keywords)

    outside = error({path: Distribution.normal(0.3, 1.0)})
    assert outside.code == "out_of_range"
    assert outside.field == path
    assert "narrow it" in str(outside)
    assert "surface.dry_friction" in str(error({"surface.dry_fricton": ok}))
    assert "pinfilm.Distribution" in str(error({path: 0.3}))
    assert error({}).code == "missing"
    assert error({path: ok}, n=1000).field == "n"
    assert "1024" in str(error({path: ok}, n=1000))
    assert "GB" in str(error({path: ok}, n=1 << 30))
    assert error({path: ok}, threads=0).field == "threads"
    assert error({path: ok}, generator="dice").code == "unknown_choice"
    assert error({path: ok}, outputs=["wear.governs"], n=64).code == "wrong_type"
    assert error({path: ok}, outputs=["wear"], n=64).code in {"unknown_key", "wrong_type"}
    assert error({"costs.invest": None}, n=64).code == "missing"
    two = {path: ok, "oil.boundary_friction": Distribution.uniform(0.1, 0.15)}
    assert "not among the uncertain inputs" in str(error(two, correlation={(path, "oil.noack_pct"): 0.5}))
    assert error(two, correlation={(path, "oil.boundary_friction"): 1.5}).code == "out_of_range"
    assert error(two, correlation=[[1.0, 0.2], [0.3, 1.0]]).code == "inconsistent"
    three = two | {"oil.limiting_friction": Distribution.uniform(0.04, 0.08)}
    none = [[1.0, 0.9, -0.9], [0.9, 1.0, 0.9], [-0.9, 0.9, 1.0]]
    assert "multiply all of them" in str(error(three, correlation=none))
    with pytest.raises(TypeError, match="Line"):
        pinfilm.sample("oven")  # type: ignore[arg-type]


# --- sensitivity -----------------------------------------------------------------------------------------------------


def test_indices_of_a_product(oven: pinfilm.Line) -> None:
    uncertain = {
        "costs.energy_price_per_kwh": Distribution.uniform(0.1, 0.3),
        "costs.labour_rate_per_h": Distribution.uniform(20.0, 80.0),
        "duty.days_per_year": Distribution.uniform(150.0, 250.0),
    }
    found = pinfilm.sensitivity(oven, uncertain, output="cost.energy", n=1024)
    table = found.table()
    price, days = 1 / 12, (100 / 200) ** 2 / 12  # variances over squared means
    whole = price + days + price * days
    exact = {"costs.energy_price_per_kwh": price, "duty.days_per_year": days, "costs.labour_rate_per_h": 0.0}
    assert table["input"].tolist() == list(exact) or table["input"][0] == "costs.energy_price_per_kwh"
    for name, first, half in zip(table["input"], table["first"], table["first_confidence"], strict=True):
        assert abs(first - exact[name] / whole) <= 2 * half + 1e-12
        assert half < 0.05
    swings = found.swings()
    assert swings["input"][0] == "costs.energy_price_per_kwh"
    assert swings["high"][0] / swings["low"][0] == pytest.approx(0.29 / 0.11)
    alone = [pinfilm.sensitivity(oven, uncertain, output="cost.energy", n=64, threads=t).table() for t in (1, 2, 3)]
    assert alone[0]["total"].tobytes() == alone[1]["total"].tobytes() == alone[2]["total"].tobytes()


def test_correlated_inputs_have_one_index(oven: pinfilm.Line) -> None:
    uncertain = {"surface.dry_friction": None, "wear.wear_coefficient_dry": None, "duty.dust_factor": None}
    pair = ("surface.dry_friction", "wear.wear_coefficient_dry")
    found = pinfilm.sensitivity(oven, uncertain, output="wear.life_years", log=True, n=64, correlation={pair: 0.5})
    assert set(found.table()["input"]) == {" + ".join(pair), "duty.dust_factor"}


def test_a_payback_with_gaps_is_refused(pair: tuple[pinfilm.Line, pinfilm.Line]) -> None:
    dear = {"proposed.costs.upkeep_per_year": Distribution.uniform(0.0, 20_000.0)}
    error = refused(pinfilm.sensitivity, pair, dear, output="payback_days", n=64)
    assert "study the saving" in str(error)
    found = pinfilm.sensitivity(pair, dear, n=64)
    assert found.output == "saving_per_year"
    assert found.table()["total"][0] == pytest.approx(1.0, abs=0.05)


# --- calibrate -------------------------------------------------------------------------------------------------------


def test_three_elongations_narrow_the_life(oven: pinfilm.Line) -> None:
    truth = oven.replace({"wear.wear_coefficient_dry": 4e-4})
    year = pinfilm.evaluate(truth).wear.elongation_1_year_pct
    hours = oven.duty.hours_per_day * oven.duty.days_per_year
    readings = [Reading.elongation(year, running_h=hours, error_pct=0.01)] * 3
    found = pinfilm.calibrate(oven, readings, zero_error_pct=0.005, n=256)
    guesses = found.guesses()
    at = guesses["input"].tolist().index("wear.wear_coefficient_dry")
    assert guesses["after_p5"][at] < 4e-4 < guesses["after_p95"][at]
    assert any("learnt" in sentence for sentence in found.learnt)
    lives = found.predictions()
    at = lives["output"].tolist().index("wear.life_years")
    before = lives["before_p95"][at] / lives["before_p5"][at]
    assert lives["after_p95"][at] / lives["after_p5"][at] < before / 2
    fitted = found.readings()
    assert np.allclose(fitted["fitted"], year, atol=0.05)
    same = [pinfilm.calibrate(oven, readings, n=64, threads=threads).draws for threads in (1, 2, 3)]
    for path in same[0]:
        assert same[0][path].tobytes() == same[1][path].tobytes() == same[2][path].tobytes()


def test_dates_run_as_the_duty_says(oven: pinfilm.Line) -> None:
    new, read = datetime.date(2024, 1, 1), datetime.date(2024, 12, 31)
    hours = 365 * oven.duty.hours_per_day * oven.duty.days_per_year / 365
    by_date = Reading.elongation(0.4, new_on=new, read_on=read)
    by_hours = Reading.elongation(0.4, running_h=hours)
    uncertain = {"wear.wear_coefficient_dry": None}
    a, b = (pinfilm.calibrate(oven, [reading], uncertain, n=64) for reading in (by_date, by_hours))
    assert a.readings()["fitted"][0] == pytest.approx(b.readings()["fitted"][0], rel=1e-12)


def test_current_before_and_after_teaches_friction(pair: tuple[pinfilm.Line, pinfilm.Line]) -> None:
    now, proposed = (pinfilm.evaluate(line).drive.current_a for line in pair)
    readings = [Reading.current(now, error_a=0.002), Reading.current(proposed, error_a=0.002, proposed=True)]
    found = pinfilm.calibrate(pair, readings, n=64)
    assert found.readings()["reading"].tolist() == ["now.drive.current_a", "proposed.drive.current_a"]
    assert min(found.spread_left) < 0.9
    assert found.zero_pct is None


def test_a_change_in_a_log_is_a_reading(pair: tuple[pinfilm.Line, pinfilm.Line]) -> None:
    demo = pinfilm.examples.current_log("oven")
    logged = demo.log().before_after(demo.changed, line=demo.line)
    reading = Reading.saving(logged)
    guesses = {"surface.dry_friction": None, "friction.track_factor": None}
    found = pinfilm.calibrate(pair, [reading], guesses, n=256)
    row = found.readings()
    assert row["reading"].tolist() == ["fall of drive.current_a"]
    assert (row["value"][0], row["error"][0]) == (logged.saving_pct, logged.error_pct)
    assert abs(row["fitted"][0] - row["value"][0]) < abs(row["guessed"][0] - row["value"][0])
    assert min(found.spread_left) < 0.5
    with pytest.raises(pinfilm.InputError, match="needs both lines"):
        pinfilm.calibrate(pair[0], [reading], guesses, n=64)


def test_what_cannot_be_calibrated(oven: pinfilm.Line) -> None:
    one = [Reading.elongation(0.4, running_h=1000)]
    assert refused(pinfilm.calibrate, oven, []).code == "missing"
    assert refused(Reading.elongation, 0.4).field == "running_h"
    wrong = [Reading.elongation(0.4, running_h=1000, error_pct=0.0)]
    assert "above 0" in str(refused(pinfilm.calibrate, oven, wrong))
    later = [Reading.elongation(0.4, running_h=1000, changed_running_h=500)]
    assert "(now, proposed)" in str(refused(pinfilm.calibrate, oven, later))
    nearly = [Reading.number("drive.curent_a", 1.0, error=0.1)]
    assert "drive.current_a" in str(refused(pinfilm.calibrate, oven, nearly))
    assert refused(pinfilm.calibrate, oven, one, n=100).field == "n"
    assert refused(pinfilm.calibrate, oven, one, zero_error_pct=-1.0).field == "zero_error_pct"


def test_arviz_has_the_draws(oven: pinfilm.Line) -> None:
    pytest.importorskip("arviz")
    found = pinfilm.calibrate(oven, [Reading.elongation(0.4, running_h=1000)], n=64)
    data = found.to_arviz()
    assert data.posterior["wear.wear_coefficient_dry"].shape == (1, 64)
