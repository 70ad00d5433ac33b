"""`pinfilm.statistics`: outside numbers, labels, and what is refused."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

import numpy as np
import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

from pinfilm import InputError, statistics

DATA = Path(__file__).parents[2] / "data"
PUBLISHED = json.loads((DATA.parent / "published" / "checks.json").read_text(encoding="utf-8"))
READINGS = st.lists(st.floats(-1e3, 1e3), min_size=4, max_size=60)


def published(identity: str) -> dict[str, Any]:
    return next(check for check in PUBLISHED if check["id"] == identity)


@pytest.fixture(scope="module")
def nile() -> pd.Series:
    """Yearly flow of the Nile at Aswan (Cobb 1978)."""
    lines = (DATA / "nile.csv").read_text(encoding="utf-8").splitlines()
    rows = [row for row in csv.reader(lines) if row[0].isdigit()]
    return pd.Series([float(row[1]) for row in rows], index=[int(row[0]) for row in rows])


class TestPublished:
    def test_nile_changes_once_after_1898(self, nile: pd.Series) -> None:
        found = statistics.change_points(nile)
        expected = published("STA-006")["expected"]
        assert found.points == (expected["n_before"],) == (28,)
        assert nile.index[found.points[0] - 1] == expected["last_year_before"]
        assert found.levels == pytest.approx((expected["mean_before"], expected["mean_after"]), rel=1e-6)
        assert statistics.change_points(nile, cost="mean_variance").points == (28,)

    def test_nile_standard_errors(self, nile: pd.Series) -> None:
        check = published("STA-008")
        lags = check["inputs"]["maxlags"]
        assert statistics.newey_west_se(nile, lags) == pytest.approx(check["expected"]["hac_no_correction"], rel=1e-5)
        corrected = statistics.newey_west_se(nile, lags, correction="small_sample")
        assert corrected == pytest.approx(check["expected"]["hac_small_sample"], rel=1e-5)

    def test_goodness(self) -> None:
        check = published("STA-013")
        y, f = check["inputs"]["actual"], check["inputs"]["predicted"]
        for k, p in enumerate(check["inputs"]["p"]):
            assert statistics.cv_rmse_pct(y, f, p) == pytest.approx(check["expected"]["CVRMSE"][k], rel=1e-5)
            assert statistics.nmbe_pct(y, f, p) == pytest.approx(check["expected"]["NMBE"][k], rel=1e-5)

    def test_savings_uncertainty(self) -> None:
        check = published("STA-015")
        i = check["inputs"]
        ours = statistics.savings_uncertainty(i["t"], 100 * i["CV"], i["F"], i["n"], i["m"], i["rho"])
        assert ours == pytest.approx(check["expected"]["FSU"], rel=1e-5)


class TestIdentities:
    @given(values=READINGS, target=st.floats(-10, 10), k=st.floats(0, 5), h=st.floats(0.1, 50))
    def test_cusum_as_the_textbook_writes_it(self, values: list[float], target: float, k: float, h: float) -> None:
        path = statistics.cusum(values, target, k, h)
        up = down = 0.0
        for row, x in enumerate(values):
            up, down = max(0.0, up + (x - target) - k), max(0.0, down - (x - target) - k)
            assert (path.up[row], path.down[row]) == (pytest.approx(up, abs=1e-9), pytest.approx(down, abs=1e-9))
            if abs(up - h) > 1e-6 and abs(down - h) > 1e-6:
                assert (row in path.alarms) == (up > h or down > h)

    @given(values=READINGS)
    def test_lag1_and_error_without_lags_by_numpy(self, values: list[float]) -> None:
        x = np.array(values)
        d = x - x.mean()
        if (d @ d) < 1e-6:
            return
        assert statistics.lag1(values) == pytest.approx(d[:-1] @ d[1:] / (d @ d), abs=1e-9)
        usual = x.std(ddof=1) / np.sqrt(len(x))
        assert statistics.newey_west_se(x, 0, correction="small_sample") == pytest.approx(usual, rel=1e-9)

    @given(split=st.integers(10, 50), seed=st.integers(0, 1000))
    def test_a_plain_step_is_found(self, split: int, seed: int) -> None:
        noise = np.random.default_rng(seed).normal(0, 0.05, 60)
        assert split in statistics.change_points(noise + (np.arange(60) >= split)).points

    def test_effective_sample_size_broadcasts(self) -> None:
        sizes = statistics.effective_sample_size(np.array([[100.0], [1000.0]]), [0.0, 0.5, 0.9])
        assert sizes.shape == (2, 3)
        assert sizes[0, 1] == pytest.approx(100 / 3)


def test_sums_keep_the_labels_of_the_readings() -> None:
    days = pd.date_range("2024-01-01", periods=3)
    path = statistics.cusum(pd.Series([0.0, 3.0, 3.0], index=days), 0.0, 0.5, 4.0)
    assert isinstance(path.up, pd.Series)
    assert path.up.index.equals(days)
    assert path.alarms == (2,)
    assert isinstance(statistics.cusum([1.0], 0.0, 0.5, 4.0).up, np.ndarray)


@pytest.mark.parametrize(
    ("call", "field", "code"),
    [
        (lambda: statistics.lag1(5.0), "values", "wrong_type"),
        (lambda: statistics.lag1([[1.0, 2.0], [3.0, 4.0]]), "values", "wrong_type"),
        (lambda: statistics.lag1([1.0]), "values", "missing"),
        (lambda: statistics.lag1([1.0, float("nan"), 2.0]), "values", "not_finite"),
        (lambda: statistics.lag1([1.0, float("inf"), 2.0]), "values", "not_finite"),
        (lambda: statistics.newey_west_se([1.0, 2.0, 3.0], 3), "lags", "out_of_range"),
        (lambda: statistics.newey_west_se([1.0, 2.0, 3.0], 0.5), "lags", "wrong_type"),
        (lambda: statistics.newey_west_se([1.0, 2.0], 0, correction="big"), "correction", "unknown_choice"),
        (lambda: statistics.cv_rmse_pct([1.0, 2.0], [1.0], 0), "modelled", "inconsistent"),
        (lambda: statistics.cv_rmse_pct([1.0, 2.0], [1.0, 2.0], 2), "measured", "missing"),
        (lambda: statistics.nmbe_pct([1.0, -1.0], [1.0, 2.0], 0), "measured", "no_answer"),
        (lambda: statistics.change_points([1.0, 2.0, 3.0]), "readings", "inconsistent"),
        (lambda: statistics.change_points([5.0] * 60), "readings", "inconsistent"),
        (lambda: statistics.cusum([1.0], 0.0, -1.0, 4.0), "k", "out_of_range"),
        (lambda: statistics.cusum([1.0], 0.0, [1.0], 4.0), "k", "wrong_type"),
        (lambda: statistics.savings_uncertainty(1, 8, 0.1, 90, 90, 0.5, savings_factor="daily"), "months", "missing"),
        (lambda: statistics.effective_sample_size(10, 1.0), "lag1", "out_of_range"),
    ],
)
def test_refusals_name_the_field(call: Any, field: str, code: str) -> None:
    with pytest.raises(InputError) as refused:
        call()
    assert (refused.value.field, refused.value.code) == (field, code)


def test_factors_of_later_work_lie_around_the_original() -> None:
    plain = statistics.savings_uncertainty(1.645, 8, 0.1, 365, 365, 0.6)
    daily = statistics.savings_uncertainty(1.645, 8, 0.1, 365, 365, 0.6, months=12, savings_factor="daily")
    assert daily / plain == pytest.approx(1.3925 / 1.26, rel=1e-4)
