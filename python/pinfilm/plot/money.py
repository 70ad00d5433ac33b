"""Money: savings item by item, the flows of a change, and how sure its payback is."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np
from matplotlib.ticker import MaxNLocator

from .._core import Comparison, npv, payback_years
from ._style import ACROSS, BLACK, axes, label, legend, look, money, quiet, row

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def savings(comparison: Comparison, ax: Axes | None = None) -> Axes:
    """Saving of a year, item by item; to the left where the proposal costs more.

    Parameters
    ----------
    comparison : Comparison
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.

    Returns
    -------
    matplotlib.axes.Axes
        Horizontal bars; what the proposal costs more is hatched.
    """
    ax = axes(ax)
    items = comparison.saving_items.to_dict()
    items = {name: value for name, value in items.items() if name != "currency" and value}
    names = sorted(items, key=lambda name: items[name])
    values = [items[name] for name in names]
    gain, loss = look(0), look(1)
    for at, value in enumerate(values):
        how = gain if value > 0 else loss
        ax.barh(at, value, 0.7, color=how.color, hatch=how.hatch, edgecolor="white")
        side = 1 if value > 0 else -1
        ax.annotate(f"{value:,.0f}".replace("-", "−"), (value, at), (3 * side, 0), textcoords="offset points",
                    va="center", ha="left" if side > 0 else "right", fontsize="small")  # fmt: skip
    if values and values[0] < 0:
        ax.barh([0], [0.0], color=loss.color, hatch=loss.hatch, edgecolor="white", label="costs more as proposed")
    ax.axvline(0.0, color=BLACK, linewidth=0.8)
    ax.set_yticks(range(len(names)), [row(f"saving_items.{name}")["means"] for name in names])
    ax.margins(x=0.15)
    ax.set_xlabel(money("saving_per_year", comparison))
    quiet(ax, "x")
    legend(ax, loc="lower right")
    return ax


def cash_flow(comparison: Comparison, ax: Axes | None = None) -> Axes:
    """Capital and savings year by year, what they add up to, and when that has paid back.

    Parameters
    ----------
    comparison : Comparison
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.

    Returns
    -------
    matplotlib.axes.Axes
        Bars for the flows, lines for their sum and their discounted sum, and a mark where the sum crosses zero.
    """
    ax = axes(ax)
    flows = list(comparison.cash_flow)
    years = np.arange(len(flows))
    ax.bar(years, flows, 0.55, color="0.8", edgecolor="0.45", label="capital and savings of the year")
    plain, discounted = look(0), look(1)
    rate = comparison.discount_rate
    for how, at_rate, words in (
        (plain, 0.0, "sum"),
        (discounted, rate, f"sum discounted at {100.0 * rate:.3g} % a year"),
    ):
        sums = [npv(at_rate, flows[: year + 1]) for year in years]
        ax.plot(years, sums, how.marker, color=how.color, linestyle=how.line, label=words)
    if comparison.payback_status == "pays_back":
        paid = payback_years(flows)
        ax.plot(
            [paid],
            [0.0],
            "*",
            color=BLACK,
            markersize=13,
            zorder=4,
            label=f"paid back, {comparison.payback_days:.0f} days",
        )
    ax.axhline(0.0, color=BLACK, linewidth=0.8)
    ax.set_xlabel("Year")
    ax.set_ylabel(money("cash_flow", comparison))
    ax.xaxis.set_major_locator(MaxNLocator(integer=True))
    ax.yaxis.set_major_formatter(lambda value, _: f"{value:,.0f}")
    quiet(ax, "y")
    legend(ax, loc="best")
    return ax


def payback_distribution(samples: Any, ax: Axes | None = None, *, limit_days: float | None = None) -> Axes:
    """How payback spreads over a sample of what is uncertain.

    Parameters
    ----------
    samples : array_like
        Payback of each draw in days; infinite or NaN where it never pays back.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    limit_days : float, optional
        A limit that somebody asks for; the share of draws within it is written in the legend.

    Returns
    -------
    matplotlib.axes.Axes
        A histogram of the draws that pay back, with the days within which 5, 50 and 95 % of all draws do.
    """
    ax = axes(ax)
    values = np.where(np.isnan(np.asarray(samples, dtype=float)), np.inf, np.asarray(samples, dtype=float))
    finite = values[np.isfinite(values)]
    never = 1.0 - len(finite) / max(len(values), 1)
    if len(finite):
        edge = np.quantile(finite, 0.995)
        ax.hist(
            finite, bins=40, range=(min(0.0, finite.min()), edge), color=look(0).color, alpha=0.75, edgecolor="white"
        )
        for share, line in ((0.05, ":"), (0.50, "-"), (0.95, "--")):
            at = float(np.quantile(values, share, method="higher"))
            if np.isfinite(at):
                ax.axvline(at, color=BLACK, linestyle=line, linewidth=1.3, label=f"{share:.0%} within {at:.0f} days")
    if limit_days is not None:
        within = float(np.mean(values <= limit_days))
        ax.axvline(limit_days, color=look(1).color, linewidth=2.2, label=f"{within:.0%} within {limit_days:.0f} days")
    if never > 0.0:
        ax.plot([], [], " ", label=f"{never:.1%} never pay back")
    ax.set_xlabel(label("payback_days", widest=ACROSS))
    ax.set_ylabel(f"Draws of {len(values)}")
    ax.yaxis.set_major_locator(MaxNLocator(integer=True))
    quiet(ax, "y")
    legend(ax, loc="best")
    return ax
