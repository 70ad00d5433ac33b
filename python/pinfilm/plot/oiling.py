"""Which joints are reached, when, and how long they wait."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from .._core import Evaluation
from ._style import BLACK, GREY, axes, label, legend, look, quiet

if TYPE_CHECKING:
    from matplotlib.axes import Axes

#: Stretches of joints without oil that are hatched one by one; more stand singly and are marked at the edge.
MOST_STRETCHES = 12


def _stretches(joints: np.ndarray) -> list[tuple[int, int]]:
    """First and last of each run of neighbours."""
    if len(joints) == 0:
        return []
    cuts = np.flatnonzero(np.diff(joints) > 1)
    firsts, lasts = np.r_[joints[0], joints[cuts + 1]], np.r_[joints[cuts], joints[-1]]
    return list(zip(firsts.tolist(), lasts.tolist(), strict=True))


def joints_reached(result: Evaluation, ax: Axes | None = None, *, circuits: int | None = None) -> Axes:
    """Which joint gets oil when: the loop unrolled over time, one mark for each shot.

    Parameters
    ----------
    result : Evaluation
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    circuits : int, optional
        Circuits that are followed; twice the longest wait if not given.

    Returns
    -------
    matplotlib.axes.Axes
        Joints upwards, running time to the right; joints without oil are hatched.

    Notes
    -----
    A timer that is in step with the chain draws the same stripes for ever, and the joints between them stay empty.
    """
    ax = axes(ax, (6.4, 4.2))
    record = result.shot_record(circuits)
    how = look(0)
    size = float(np.clip(3000.0 / max(len(record.time_h), 1), 1.6, 14.0))
    dense = len(record.time_h) > 3000
    ax.scatter(
        record.time_h, record.joint, s=size, color=how.color, marker="o", linewidths=0, rasterized=dense, label="shot"
    )
    without = np.flatnonzero(np.asarray(record.fill) == 0.0)
    stretches = _stretches(without)
    share = result.fill.never_reached
    words = f"never reached: {share:.0%} of the joints"
    if share > 0.0 and stretches and len(stretches) <= MOST_STRETCHES:
        for number, (first, last) in enumerate(stretches):
            ax.axhspan(
                first - 0.5, last + 0.5, facecolor="0.93", edgecolor="0.45", hatch="///", linewidth=0.0,
                label=None if number else words, zorder=0,
            )  # fmt: skip
    elif share > 0.0 and stretches:
        ax.plot(np.full(len(without), record.horizon_h), without, "_", color=BLACK, clip_on=False, label=words)
    ax.set_xlim(0.0, record.horizon_h)
    ax.set_ylim(-0.5, record.joints - 0.5)
    ax.set_xlabel(label("shot_record.time_h"))
    ax.set_ylabel("Joint, counted against the travel")
    if record.by_chance:
        ax.set_title("one possible course: chance decides", fontsize="small", color=GREY)
    quiet(ax, "x")
    legend(ax, loc="upper right", markerscale=float(np.clip(4.0 / size**0.5, 1.0, 6.0)))
    return ax


def waiting_times(result: Evaluation, ax: Axes | None = None) -> Axes:
    """How long joints wait between two shots, and which share of them waits so long.

    Parameters
    ----------
    result : Evaluation
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.

    Returns
    -------
    matplotlib.axes.Axes
        One bar for each wait, and one for the joints that never get oil. Waits by chance are drawn by three that stand
        for thirds of their distribution.
    """
    ax = axes(ax)
    fill = result.fill
    reached = 1.0 - fill.never_reached
    shares = fill.share_of_joints if fill.share_of_joints is not None else [w * reached for w in fill.wait_weight]
    if fill.wait_circuits is not None:
        turn = result.kinematics.circuit_time_s
        names = [f"{wait:,}\n{wait * turn / 3600.0:.3g} h" for wait in fill.wait_circuits]
        what = f"Wait between shots at one joint (circuits of {turn:.4g} s, and running time)"
    else:
        names = [f"{wait:.3g}" for wait in fill.wait_h or ()]
        what = "Wait between shots at one joint (running h)"
    how = look(0)
    bars = [*shares]
    names = [*names]
    ax.bar(range(len(bars)), bars, color=how.color, width=0.6)
    if fill.never_reached > 0.0:
        ax.bar([len(bars)], [fill.never_reached], color="white", edgecolor=BLACK, hatch="///", width=0.6)
        bars.append(fill.never_reached)
        names.append("never")
    for at, share in enumerate(bars):
        ax.annotate(f"{share:.1%}", (at, share), (0, 2), textcoords="offset points", ha="center", fontsize="small")
    ax.set_xticks(range(len(bars)), names)
    ax.set_xlim(-0.7, len(bars) - 0.3)
    ax.set_ylim(0.0, 1.12 * max(bars))
    ax.set_xlabel(what)
    ax.set_ylabel(label("fill.share_of_joints"))
    ax.yaxis.set_major_formatter(lambda share, _: f"{share:.0%}")
    quiet(ax, "y")
    return ax
