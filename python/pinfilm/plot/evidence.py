"""Evidence from a log of the drive current: where it changed, and a watch over it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
from matplotlib.dates import AutoDateLocator, ConciseDateFormatter

from ._style import BLACK, VERMILLION, axes, legend, look, quiet

if TYPE_CHECKING:
    from matplotlib.axes import Axes


#: Limits of a watch that are drawn, one above the other; a statistic that nobody sets back grows without end.
HEIGHT = 4.0
#: Quartile ranges beyond the quartiles up to which readings are drawn.
REACH = 4.0


def _where_most_are(values: np.ndarray) -> tuple[float, float]:
    """Range that holds all but the readings far from the rest, which would flatten the picture."""
    known = values[np.isfinite(values)]
    if not len(known):
        return -np.inf, np.inf
    first, last = np.quantile(known, [0.25, 0.75])
    if first == last:
        return -np.inf, np.inf
    near = known[(known >= first - REACH * (last - first)) & (known <= last + REACH * (last - first))]
    margin = 0.06 * (near.max() - near.min())
    return float(near.min() - margin), float(near.max() + margin)


def _name(ax: Axes, times: np.ndarray, labels: tuple[str, str]) -> None:
    """Write at the axes, and dates so that they do not run into each other."""
    ax.set_xlabel(labels[0])
    ax.set_ylabel(labels[1])
    if times.dtype.kind in "MO":
        locator = AutoDateLocator(maxticks=8)  # type: ignore[no-untyped-call]
        ax.xaxis.set_major_locator(locator)
        ax.xaxis.set_major_formatter(ConciseDateFormatter(locator))  # type: ignore[no-untyped-call]


def log_with_changes(
    times: Any,
    values: Any,
    points: Sequence[Any] = (),
    intervals: Sequence[tuple[Any, Any]] = (),
    ax: Axes | None = None,
    *,
    labels: tuple[str, str] = ("Time", "Current (A)"),
) -> Axes:
    """A log with the moments at which it changed, and how sure these are.

    Parameters
    ----------
    times, values : array_like
        The log; times are numbers or dates, in order.
    points : sequence
        Times of the changes.
    intervals : sequence of pairs, optional
        Confidence interval of each change.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    labels : tuple of two str, optional
        What to write at the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The readings as dots, their median between changes as a line, a vertical line at each change over its interval.
        Starts and spikes far from the rest stay outside the picture, which says how many.
    """
    times, values = np.asarray(times), np.asarray(values, dtype=float)
    if times.shape != values.shape:
        raise ValueError(f"times and values differ in shape: {times.shape}, {values.shape}")
    ax = axes(ax, (7.2, 3.4))
    dense = len(values) > 5000
    low, high = _where_most_are(values)
    outside = int(np.sum((values < low) | (values > high)))
    words = f"readings ({outside:,} lie outside the picture)" if outside else "readings"
    ax.plot(times, values, ".", color="0.6", markersize=2, rasterized=dense, label=words)
    how = look(0)
    for number, (first, last) in enumerate(intervals):
        ax.axvspan(first, last, facecolor="0.85", edgecolor="0.45", hatch="///", linewidth=0.0, zorder=0,
                   label=None if number else "interval of the change")  # fmt: skip
    borders = np.searchsorted(times, np.asarray(points, dtype=times.dtype)) if len(points) else np.array([], dtype=int)
    for number, (start, end) in enumerate(zip(np.r_[0, borders], np.r_[borders, len(values)], strict=True)):
        if end > start and np.isfinite(values[start:end]).any():
            ax.hlines(np.nanmedian(values[start:end]), times[start], times[end - 1], color=how.color, linewidth=2.2,
                      label="" if number else "median between changes", zorder=3)  # fmt: skip
    for number, point in enumerate(points):
        ax.axvline(point, color=BLACK, linestyle="--", linewidth=1.2, label=None if number else "change")
    if outside:
        ax.set_ylim(low, high)
    _name(ax, times, labels)
    quiet(ax, "y")
    legend(ax, loc="best")
    return ax


def watch_chart(
    times: Any,
    statistic: Any,
    limit: float,
    alarms: Sequence[Any] = (),
    ax: Axes | None = None,
    *,
    labels: tuple[str, str] = ("Time", "Statistic of the watch"),
) -> Axes:
    """A watch over a running line: its statistic, the limit, and where it raised an alarm.

    Parameters
    ----------
    times, statistic : array_like
        Times and the statistic at each.
    limit : float
        Above this the watch raises an alarm.
    alarms : sequence, optional
        Times of the alarms.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    labels : tuple of two str, optional
        What to write at the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The statistic as a line, the limit, and a triangle at each alarm. A statistic that runs away after an alarm
        leaves the picture at four times the limit, and the legend says how far it goes.
    """
    times, statistic = np.asarray(times), np.asarray(statistic, dtype=float)
    if times.shape != statistic.shape:
        raise ValueError(f"times and statistic differ in shape: {times.shape}, {statistic.shape}")
    ax = axes(ax, (7.2, 3.2))
    how = look(0)
    greatest, top = float(np.nanmax(statistic)), HEIGHT * limit
    words = f"statistic (goes on to {greatest:.3g}, outside the picture)" if greatest > top > 0 else "statistic"
    ax.plot(times, statistic, color=how.color, linestyle=how.line, linewidth=1.3, label=words)
    ax.axhline(limit, color=BLACK, linestyle="--", linewidth=1.2, label=f"limit {limit:.3g}")
    if len(alarms):
        at = np.clip(np.searchsorted(times, np.asarray(alarms, dtype=times.dtype)), 0, len(times) - 1)
        ax.plot(
            alarms, statistic[at], "v", color=VERMILLION, markeredgecolor=BLACK, markersize=8, label="alarm", zorder=3
        )
    ax.set_ylim(min(0.0, float(np.nanmin(statistic))), top if greatest > top > 0 else 1.15 * max(limit, greatest))
    _name(ax, times, labels)
    quiet(ax, "y")
    legend(ax, loc="upper left")
    return ax
