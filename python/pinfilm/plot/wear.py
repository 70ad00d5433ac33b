"""Pull by cause, and growth of the chain over the years."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

import numpy as np

from .._core import Comparison, Evaluation
from ._style import ACROSS, BLACK, GREY, axes, each, label, legend, look, quiet

if TYPE_CHECKING:
    from matplotlib.axes import Axes

Results = Evaluation | Comparison | Mapping[str, Evaluation]

#: The causes of pull as people call them.
CAUSES = {
    "joint": "pin in bush",
    "bush_roller": "bush in roller",
    "rolling_arm": "roller on track",
    "plate_track": "plates on track",
    "trolley": "trolleys",
    "idler": "idlers",
    "turn_roller": "rollers of turns",
    "bed": "load on its bed",
    "wheel_bearing": "bearings of wheels",
    "rise": "rise",
    "accel": "bringing load to speed",
    "extra": "brushes, scrapers, seals",
    "floor": "floor of corners",
}
#: What ends a wear life.
ENDS = {
    "mean": "mean elongation",
    "local": "elongation of its worst stretch",
    "pin": "wear of its worst pins",
    "bush": "wear of its worst bushes",
}


def pull_shares(results: Results, ax: Axes | None = None, *, least: float = 0.002) -> Axes:
    """Share of the pull by cause, greatest first.

    Parameters
    ----------
    results : Evaluation, Comparison or dict of Evaluation
        What to draw; several stand side by side.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    least : float, optional
        Causes that stay below this share in all results are left out.

    Returns
    -------
    matplotlib.axes.Axes
        Horizontal bars.
    """
    ax = axes(ax)
    named = each(results)
    first = next(iter(named.values())).tension.shares
    shares = {name: result.tension.shares for name, result in named.items()}
    causes = [cause for cause in first if any(abs(of.get(cause, 0.0)) >= least for of in shares.values())]
    causes.sort(key=lambda cause: first[cause])
    height = 0.8 / len(named)
    for number, (name, of) in enumerate(shares.items()):
        how = look(number)
        at = np.arange(len(causes)) + 0.4 - height * (number + 0.5)
        values = [of.get(cause, 0.0) for cause in causes]
        pull = named[name].tension.pull_n
        words = f"{name}, {pull:.4g} N" if name else None
        ax.barh(at, values, height, color=how.color, hatch=how.hatch, edgecolor="white", label=words)
        for y, value in zip(at, values, strict=True):
            ax.annotate(
                f"{value:.0%}",
                (max(value, 0.0), y),
                (3, 0),
                textcoords="offset points",
                va="center",
                fontsize="x-small",
            )
    ax.axvline(0.0, color=BLACK, linewidth=0.8)
    ax.set_yticks(range(len(causes)), [CAUSES.get(cause, cause) for cause in causes])
    ax.margins(x=0.1)
    ax.set_xlabel(label("tension.shares"))
    ax.xaxis.set_major_formatter(lambda share, _: f"{share:.0%}")
    quiet(ax, "x")
    legend(ax, loc="lower right")
    return ax


def elongation(
    results: Results,
    ax: Axes | None = None,
    *,
    until_years: float | None = None,
    spread: tuple[Any, Any, Any] | None = None,
) -> Axes:
    """Growth of the chain over calendar time, with its limit.

    Parameters
    ----------
    results : Evaluation, Comparison or dict of Evaluation
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    until_years : float, optional
        Where to stop; if not given, a quarter beyond the shortest wear life drawn, at most 50 years.
    spread : tuple of three arrays, optional
        Times (years), low and high elongation (%), drawn as a band around the first result.

    Returns
    -------
    matplotlib.axes.Axes
        A line for each result and for each limit of elongation, and where wear ends the chain within the time drawn: a
        stretch that never gets oil, a pin or a bush may end it before the mean reaches its limit.
    """
    ax = axes(ax)
    named = each(results)
    if until_years is None:
        until_years = min(result.elongation_curve(points=2).time_years[-1] for result in named.values())
    limits: dict[float, str] = {}
    for number, (name, result) in enumerate(named.items()):
        curve, how = result.elongation_curve(until_years), look(number)
        ax.plot(curve.time_years, curve.elongation_pct, color=how.color, linestyle=how.line, label=name or None)
        limits.setdefault(curve.limit_pct, name)
        wear = result.wear
        if wear.life_years < until_years:
            words = f"{name + ' ' if name else ''}ends after {wear.life_years:.3g} years: {ENDS[wear.governs]}"
            ax.axvline(wear.life_years, color=how.color, linestyle=how.line, linewidth=0.9, label=words)
    if spread is not None:
        times, low, high = (np.asarray(values, dtype=float) for values in spread)
        how = look(0)
        ax.fill_between(
            times, low, high, facecolor=how.color, alpha=0.18, edgecolor=how.color, linewidth=0.8, label="spread"
        )
    for limit in limits:
        ax.axhline(limit, color=GREY, linestyle=":", label=f"limit {limit:.3g} %")
    ax.set_xlim(0.0, until_years)
    ax.set_ylim(0.0, 1.25 * max(limits))
    ax.set_xlabel(label("elongation_curve.time_years", widest=ACROSS))
    ax.set_ylabel(label("elongation_curve.elongation_pct"))
    quiet(ax)
    legend(ax, loc="best")
    return ax
