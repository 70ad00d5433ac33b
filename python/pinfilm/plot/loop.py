"""Round the loop: tension, temperature and fill along the chain."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

import numpy as np

from .._core import Comparison, Evaluation, Straight
from ._style import ACROSS, BLACK, GREY, ORANGE, PALE, axes, each, label, legend, look, quiet

if TYPE_CHECKING:
    from matplotlib.axes import Axes

#: Span of a temperature scale (°C) below which a chain of one temperature would look as if it varied.
LEAST_SPAN = 10.0

Results = Evaluation | Comparison | Mapping[str, Evaluation]


def _sections(ax: Axes, result: Evaluation) -> None:
    """Shade every other section and write their numbers over the picture, straights by what carries them."""
    along = result.round_loop(points=2)
    total = along.position_m[-1]
    last = -total
    for index in range(0, len(along.section), 2):
        start, end, number = along.position_m[index], along.position_m[index + 1], along.section[index]
        if (index // 2) % 2:
            ax.axvspan(start, end, color=PALE, zorder=0, linewidth=0)
        section = result.line.circuit.sections[number]
        wide = end - start > 0.12 * total
        kind = f": {section.support}" if isinstance(section, Straight) else ""
        if (start + end) / 2 - last < 0.025 * total:
            continue
        last = (start + end) / 2
        ax.text(
            last,
            1.01,
            f"{number}{kind if wide else ''}",
            transform=ax.get_xaxis_transform(),
            ha="center",
            va="bottom",
            fontsize="x-small",
            color=GREY,
        )
    ax.annotate("section", (0.0, 1.01), (-4, 0), "axes fraction", "offset points", ha="right", va="bottom",
                fontsize="x-small", color=GREY)  # fmt: skip
    ax.set_xlim(0.0, total)
    ax.set_xlabel(label("round_loop.position_m", widest=ACROSS))


def tension_round_loop(results: Results, ax: Axes | None = None) -> Axes:
    """Effective tension along the chain, from the exit of the drive (slack) round to its entry (tight).

    Parameters
    ----------
    results : Evaluation, Comparison or dict of Evaluation
        What to draw; several lie over each other, with the sections of the first.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.

    Returns
    -------
    matplotlib.axes.Axes
        With one line for each result, and the least tension of the survey where it gives one.
    """
    ax = axes(ax)
    named = each(results)
    _sections(ax, next(iter(named.values())))
    for number, (name, result) in enumerate(named.items()):
        along, how = result.round_loop(), look(number)
        ax.plot(along.position_m, along.tension_n, color=how.color, linestyle=how.line, label=name or None)
    given = next(iter(named.values())).line.circuit.least_tension_n
    if given is not None:
        ax.axhline(given, color=GREY, linestyle=":", label="least tension of the survey")
    ax.axhline(0.0, color=BLACK, linewidth=0.8)
    ax.set_ylabel(label("round_loop.tension_n"))
    quiet(ax, "y")
    legend(ax)
    return ax


def temperature_round_loop(results: Results, ax: Axes | None = None) -> Axes:
    """Chain temperature along the chain, with the place where oil is applied.

    Parameters
    ----------
    results : Evaluation, Comparison or dict of Evaluation
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.

    Returns
    -------
    matplotlib.axes.Axes
        With one line for each result, a marker at its application point, and the flash point of its oil where the
        survey names one.
    """
    ax = axes(ax)
    named = each(results)
    _sections(ax, next(iter(named.values())))
    for number, (name, result) in enumerate(named.items()):
        along, how = result.round_loop(), look(number)
        ax.plot(along.position_m, along.temperature_c, color=how.color, linestyle=how.line, label=name or None)
        flash_point = result.line.oil.flash_point_c
        if flash_point is not None and flash_point < 1.5 * max(along.temperature_c):
            words = " ".join(filter(None, ("flash point of the oil", name)))
            ax.axhline(flash_point, color=how.color, linestyle=how.line, linewidth=0.8, label=words)
    for number, (name, result) in enumerate(named.items()):
        where = result.shot_record(circuits=1).position_m[0]
        words = " ".join(filter(None, ("oil is applied", name)))
        how = look(number)
        size = max(4.0, 9.0 - 3.0 * number)  # where all are applied at one place, each still shows
        ax.plot([where], [result.fill.application_c], how.marker, color=how.color, markeredgecolor=BLACK, label=words,
                markersize=size)  # fmt: skip
    low, high = ax.get_ylim()
    missing = max(0.0, LEAST_SPAN - (high - low)) / 2.0
    ax.set_ylim(low - missing, high + missing)
    ax.set_ylabel(label("round_loop.temperature_c"))
    quiet(ax, "y")
    legend(ax)
    return ax


def fill_round_loop(result: Evaluation, ax: Axes | None = None, *, circuits: int | None = None) -> Axes:
    """Fill of every joint at one moment, where it is on the loop.

    Parameters
    ----------
    result : Evaluation
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    circuits : int, optional
        Circuits that are followed before that moment; twice the longest wait if not given.

    Returns
    -------
    matplotlib.axes.Axes
        One point for each joint, the mean of all joints, the floor of the survey and the application point.
    """
    ax = axes(ax)
    _sections(ax, result)
    record = result.shot_record(circuits)
    order = np.argsort(record.position_m)
    position, fill = np.asarray(record.position_m)[order], np.asarray(record.fill)[order]
    how = look(0)
    empty = fill == 0.0
    ax.plot(position[~empty], fill[~empty], how.marker, color=how.color, markersize=3, label="joint that gets oil")
    if empty.any():
        ax.plot(position[empty], fill[empty], "x", color=BLACK, markersize=4, label="joint that never gets oil")
    mean = result.fill.mean_fill
    words = f"mean over time and all joints, {mean:.2f}"
    ax.axhline(mean, color=ORANGE, linewidth=1.6, zorder=3, label=words)
    floor = result.line.fill.floor
    ax.axhline(floor, color=BLACK, linestyle=":", linewidth=1.6, zorder=3, label=f"least fill to aim at, {floor:.2g}")
    ax.axvline(record.position_m[0], color=BLACK, linestyle="--", linewidth=1, label="oil is applied")
    ax.set_ylim(-0.03, 1.05)
    ax.set_ylabel(label("shot_record.fill"))
    quiet(ax, "y")
    legend(ax, loc="upper center", bbox_to_anchor=(0.5, -0.17), ncols=2)
    return ax
