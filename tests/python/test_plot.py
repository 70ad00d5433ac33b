"""Pictures by their structure: what is drawn, which labels and limits, never pixels."""

from __future__ import annotations

import itertools
from collections.abc import Callable
from typing import Any

import matplotlib as mpl
import numpy as np
import pytest
from conftest import compare_quietly
from matplotlib import pyplot
from matplotlib.axes import Axes
from matplotlib.colors import to_rgb

import pinfilm
from pinfilm import plot
from pinfilm.plot import _style

mpl.use("Agg")

pytestmark = pytest.mark.timeout(300)  # drawing takes its time on a loaded machine

DEMOS = sorted({name.rsplit("_", 1)[0] for name in pinfilm.examples.names()})


@pytest.fixture(scope="module", params=DEMOS)
def change(request: pytest.FixtureRequest) -> pinfilm.Comparison:
    """Each line of the invented plant, with its proposal."""
    return compare_quietly(*pinfilm.examples.pair(request.param))


@pytest.fixture(scope="module")
def oven() -> pinfilm.Comparison:
    return compare_quietly(*pinfilm.examples.pair("oven"))


@pytest.fixture
def ax() -> Any:
    figure, axes = pyplot.subplots()
    yield axes
    pyplot.close(figure)


OF_RESULTS: list[Callable[..., Axes]] = [
    plot.tension_round_loop,
    plot.temperature_round_loop,
    plot.stribeck,
    plot.pull_shares,
    plot.elongation,
]
OF_ONE: list[Callable[..., Axes]] = [
    plot.fill_round_loop,
    plot.joints_reached,
    plot.waiting_times,
    lambda result, ax: plot.viscosity_window(result, ax=ax),
]


def words(ax: Axes) -> str:
    legend = ax.get_legend()
    return " | ".join(text.get_text() for text in legend.get_texts()) if legend else ""


def test_every_picture_of_every_line_is_drawn_on_the_given_axes(change: pinfilm.Comparison, ax: Axes) -> None:
    for draw in OF_RESULTS:
        for what in (change, change.now, {"one": change.now, "two": change.proposed}):
            ax.clear()
            assert draw(what, ax) is ax
            assert ax.get_xlabel()
            ax.figure.canvas.draw()
    for draw in OF_ONE:
        for result in (change.now, change.proposed):
            ax.clear()
            assert draw(result, ax=ax) is ax
            assert ax.get_xlabel()
            assert ax.get_ylabel()
            ax.figure.canvas.draw()
    for draw in (plot.savings, plot.cash_flow):
        ax.clear()
        assert draw(change, ax) is ax
        assert change.now.line.costs.currency in ax.get_xlabel() + ax.get_ylabel()
        ax.figure.canvas.draw()


def test_axes_are_made_where_none_are_given(oven: pinfilm.Comparison) -> None:
    made = plot.tension_round_loop(oven)
    assert isinstance(made, Axes)
    pyplot.close(made.figure)


def test_tension_is_that_of_the_result(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.tension_round_loop(oven, ax)
    assert ax.get_ylabel() == "Effective tension of all strands (N)"
    assert ax.get_xlim() == pytest.approx((0.0, oven.now.kinematics.length_m))
    drawn = ax.lines[0].get_ydata()
    ends = np.ravel(oven.now.tension.profile_n)
    assert np.max(drawn) == pytest.approx(max(ends))
    assert np.min(drawn) == pytest.approx(min(ends))
    assert words(ax).startswith("as it is | as proposed")


def test_temperature_shows_where_oil_is_applied(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.temperature_round_loop(oven.now, ax)
    assert "oil is applied" in words(ax)
    (mark,) = [line for line in ax.lines if line.get_marker() == "o"]
    assert mark.get_ydata()[0] == pytest.approx(oven.now.fill.application_c)


def test_joints_without_oil_are_hatched(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.joints_reached(oven.now, ax)
    assert "never reached: 60% of the joints" in words(ax)
    shot = ax.collections[0].get_offsets()[:, 1]
    never = 1.0 - len(np.unique(shot)) / oven.now.kinematics.joints
    assert never == pytest.approx(oven.now.fill.never_reached, abs=2.0 / oven.now.kinematics.joints)
    assert any(patch.get_hatch() for patch in ax.patches)
    ax.clear()
    plot.joints_reached(oven.proposed, ax)
    assert "never" not in words(ax)


def test_bars_of_waits_add_up_to_all_joints(change: pinfilm.Comparison, ax: Axes) -> None:
    for result in (change.now, change.proposed):
        ax.clear()
        plot.waiting_times(result, ax)
        assert sum(bar.get_height() for bar in ax.patches) == pytest.approx(1.0)
        names = [text.get_text() for text in ax.get_xticklabels()]
        assert ("never" in names) == (result.fill.never_reached > 0)


def test_the_window_has_both_limits_and_every_oil(oven: pinfilm.Comparison, ax: Axes) -> None:
    result = oven.proposed
    plot.viscosity_window(result, {"other": oven.now.line.oil}, ax)
    assert ax.get_yscale() == "log"
    assert {"chain oil, ester", "other"} <= set(words(ax).split(" | "))
    low, high = ax.get_ylim()
    assert low < result.fill.viscosity_least_mpa_s < result.fill.viscosity_most_mpa_s < high


def test_events_lie_on_the_friction_axis(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.stribeck(oven.now, ax)
    (marks,) = [line for line in ax.lines if line.get_marker() == "o"]
    assert list(marks.get_ydata()) == [event.friction_reached for event in oven.now.joint.events]
    assert ax.get_xscale() == "log"


def test_shares_of_the_pull(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.pull_shares(oven.now, ax, least=0.0)
    assert sum(bar.get_width() for bar in ax.patches) == pytest.approx(1.0)
    assert "bush in roller" in [text.get_text() for text in ax.get_yticklabels()]


def test_elongation_has_limit_life_and_band(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.elongation(oven.now, ax, until_years=9.0, spread=([0, 9], [0, 1], [0, 3]))
    assert ax.get_xlim() == (0.0, 9.0)
    text = words(ax)
    assert f"limit {oven.now.wear.limit_pct:.3g} %" in text
    assert "spread" in text
    assert f"ends after {oven.now.wear.life_years:.3g} years" in text


def test_cash_flow_crosses_zero_at_payback(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.cash_flow(oven, ax)
    plain, discounted = (next(line for line in ax.lines if line.get_marker() == marker) for marker in "os")
    assert plain.get_ydata()[-1] == pytest.approx(sum(oven.cash_flow))
    assert discounted.get_ydata()[-1] == pytest.approx(oven.npv)
    (star,) = [line for line in ax.lines if line.get_marker() == "*"]
    assert star.get_xdata()[0] == pytest.approx(oven.payback_days / oven.proposed.line.costs.year_days)


def test_saving_items_add_up(oven: pinfilm.Comparison, ax: Axes) -> None:
    plot.savings(oven, ax)
    assert sum(bar.get_width() for bar in ax.patches) == pytest.approx(oven.saving_per_year)


def test_paybacks_that_never_come_are_counted(ax: Axes) -> None:
    plot.payback_distribution([100.0, 200.0, 300.0, np.inf, np.nan], ax, limit_days=200.0)
    text = words(ax)
    assert "40.0% never pay back" in text
    assert "40% within 200 days" in text
    assert "50% within 300 days" in text
    ax.clear()
    plot.payback_distribution([np.inf, np.inf], ax)
    assert "100.0% never pay back" in words(ax)


def test_tornado_is_sorted_and_has_errors(ax: Axes) -> None:
    plot.tornado(["a", "b", "c"], [0.1, 0.5, 0.2], [0.2, 0.6, 0.3], [0.01, 0.02, 0.03], ax)
    assert [text.get_text() for text in ax.get_yticklabels()] == ["a", "c", "b"]
    assert len(ax.patches) == 6
    assert len(ax.containers) == 3  # two sets of bars, one of errors
    ax.clear()
    plot.tornado(["a", "b", "c"], [0.1, 0.5, 0.2], [0.2, 0.6, 0.3], ax=ax, most=2)
    assert [text.get_text() for text in ax.get_yticklabels()] == ["c", "b"]
    assert "1 more, none above 0.2" in words(ax)
    with pytest.raises(ValueError, match="differ in length"):
        plot.tornado(["a"], [0.1, 0.2], [0.2], ax=ax)


def test_map_takes_gaps_and_says_what_it_shows(ax: Axes) -> None:
    z = np.add.outer(np.arange(3.0), np.arange(4.0))
    z[0, 0] = np.nan
    plot.sweep_map([1, 2, 3, 4], [10, 20, 30], z, ax, labels=("x", "y", "z"))
    assert (ax.get_xlabel(), ax.get_ylabel()) == ("x", "y")
    assert np.ma.count_masked(ax.collections[0].get_array()) == 1
    assert [other.get_ylabel() for other in ax.figure.axes if other is not ax] == ["z"]
    with pytest.raises(ValueError, match="shape"):
        plot.sweep_map([1, 2], [1, 2, 3], z, ax)


def test_log_has_medians_between_changes(ax: Axes) -> None:
    times = np.arange(100.0)
    values = np.where(times < 60, 3.0, 2.0)
    plot.log_with_changes(times, values, [60.0], [(58.0, 63.0)], ax)
    means = [segment[0, 1] for line in ax.collections for segment in line.get_segments()]
    assert means == [3.0, 2.0]
    assert {"change", "interval of the change", "median between changes"} <= set(words(ax).split(" | "))
    with pytest.raises(ValueError, match="shape"):
        plot.log_with_changes(times, values[1:], ax=ax)


def test_starts_do_not_flatten_a_log(ax: Axes) -> None:
    values = 0.8 + 0.01 * (np.arange(200.0) % 10)
    values[::40] = 3.0
    plot.log_with_changes(np.arange(200.0), values, ax=ax)
    assert "readings (5 lie outside the picture)" in words(ax)
    assert ax.get_ylim()[1] < 1.0
    assert len(ax.lines[0].get_ydata()) == 200  # all are in the picture's data


def test_a_log_may_have_dates(ax: Axes) -> None:
    times = np.datetime64("2024-01-01", "h") + np.arange(48)
    plot.log_with_changes(times, np.ones(48), [times[20]], [(times[18], times[22])], ax)
    ax.clear()
    plot.watch_chart(times, np.linspace(0, 5, 48), 4.0, [times[40]], ax)
    ax.figure.canvas.draw()


def test_watch_has_limit_and_alarms(ax: Axes) -> None:
    plot.watch_chart(np.arange(10.0), np.arange(10.0), 6.0, [7.0, 8.0], ax)
    (alarms,) = [line for line in ax.lines if line.get_marker() == "v"]
    assert list(alarms.get_ydata()) == [7.0, 8.0]
    assert ax.get_ylim()[1] > 9.0
    ax.clear()
    plot.watch_chart(np.arange(100.0), np.arange(100.0), 6.0, [7.0], ax)
    assert ax.get_ylim()[1] == 24.0
    assert "statistic (goes on to 99, outside the picture)" in words(ax)


def luminance(colour: str) -> float:
    """Relative luminance (ITU-R BT.709)."""
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in to_rgb(colour)]
    return float(np.dot([0.2126, 0.7152, 0.0722], linear))


def test_looks_differ_without_colour() -> None:
    for one, other in itertools.combinations(_style.LOOKS, 2):
        assert str(one.line) != str(other.line)
        assert one.marker != other.marker
        assert one.hatch != other.hatch
    # the two that stand side by side most often also differ in grey by more than three to one in contrast terms
    first, second = sorted(luminance(look.color) for look in _style.LOOKS[:2])
    assert (second + 0.05) / (first + 0.05) > 2.0


def test_plot_is_imported_only_where_it_is_asked_for() -> None:
    import subprocess
    import sys

    code = "import sys, pinfilm; print('matplotlib' in sys.modules, 'jinja2' in sys.modules); pinfilm.plot.savings"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["False", "False"]
