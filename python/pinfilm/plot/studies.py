"""Studies: what matters most, and a result over two inputs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from ._style import BLACK, axes, legend, look, quiet

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def tornado(
    names: Sequence[str],
    first: Any,
    total: Any,
    errors: Any | None = None,
    ax: Axes | None = None,
    *,
    most: int = 12,
) -> Axes:
    """Which uncertain inputs make a result uncertain: first-order and total indices, greatest first.

    Parameters
    ----------
    names : sequence of str
        The inputs.
    first, total : array_like
        First-order and total index of each input (Sobol), 0 to 1.
    errors : array_like, optional
        Half width of the confidence interval: one for each total index, or two rows for first and total.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    most : int, optional
        Inputs drawn; the legend counts those left out and names the greatest of their total indices.

    Returns
    -------
    matplotlib.axes.Axes
        Two horizontal bars for each input.
    """
    first, total = np.asarray(first, dtype=float), np.asarray(total, dtype=float)
    if not len(names) == len(first) == len(total):
        raise ValueError(f"names, first and total differ in length: {len(names)}, {len(first)}, {len(total)}")
    order = np.argsort(total)
    left_out, order = order[: max(0, len(order) - most)], order[max(0, len(order) - most) :]
    ax = axes(ax, (6.4, 1.2 + 0.42 * len(order)))
    at = np.arange(len(order))
    both = None if errors is None else np.atleast_2d(np.asarray(errors, dtype=float))
    for number, (values, side, words) in enumerate(
        ((total, -0.2, "with its interactions (total)"), (first, 0.2, "alone (first order)"))
    ):
        how = look(1 - number)
        bars = None
        if both is not None and (number == 0 or len(both) == 2):
            bars = both[-1 if number == 0 else 0][order]
        ax.barh(at + side, values[order], 0.38, xerr=bars, color=how.color, hatch=how.hatch, edgecolor="white",
                error_kw={"ecolor": BLACK, "capsize": 3, "linewidth": 1}, label=words)  # fmt: skip
    if len(left_out):
        ax.plot([], [], " ", label=f"{len(left_out)} more, none above {total[left_out].max():.2g}")
    ax.axvline(0.0, color=BLACK, linewidth=0.8)
    ax.set_yticks(at, [names[index].replace(" + ", "\n+ ") for index in order])
    ax.set_xlim(left=min(0.0, float(np.nanmin([first[order].min(), total[order].min(), 0.0]))))
    ax.set_xlabel("Share of the variance")
    quiet(ax, "x")
    legend(ax, loc="lower right")
    return ax


def sweep_map(
    x: Any,
    y: Any,
    z: Any,
    ax: Axes | None = None,
    *,
    labels: tuple[str, str, str] = ("", "", ""),
    levels: Sequence[float] | int = 6,
) -> Axes:
    """A result over two inputs, as a map with contour lines.

    Parameters
    ----------
    x, y : array_like
        The two inputs, each in one list.
    z : array_like
        The result, ``z[j][i]`` at ``y[j]`` and ``x[i]``; NaN where there is none, drawn crossed out.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.
    labels : tuple of three str, optional
        What to write at the axes and at the scale.
    levels : int or sequence of float, optional
        Contour lines.

    Returns
    -------
    matplotlib.axes.Axes
        A map in shades whose lightness rises with the value (cividis; Nuñez, Anderton and Renslow 2018), so that it
        reads in grey too.
    """
    x, y, z = np.asarray(x, dtype=float), np.asarray(y, dtype=float), np.asarray(z, dtype=float)
    if z.shape != (len(y), len(x)):
        raise ValueError(f"z has the shape {z.shape}, but y and x ask for {(len(y), len(x))}")
    ax = axes(ax)
    if np.isnan(z).any():
        ax.patch.set(hatch="xxx", edgecolor="0.6", facecolor="white")
    shades = ax.pcolormesh(x, y, np.ma.masked_invalid(z), cmap="cividis", shading="nearest")
    scale = ax.figure.colorbar(shades, ax=ax)
    scale.set_label(labels[2])
    if min(z.shape) > 1 and np.nanmin(z) < np.nanmax(z):
        lines = ax.contour(x, y, np.ma.masked_invalid(z), levels=levels, colors="white", linewidths=1.4)
        again = ax.contour(x, y, np.ma.masked_invalid(z), levels=lines.levels, colors="black", linewidths=0.6)
        texts = ax.clabel(again, fontsize="small", colors="black")
        for text in texts:
            text.set_bbox({"facecolor": "white", "edgecolor": "none", "pad": 0.6, "alpha": 0.85})
    ax.set_xlabel(labels[0])
    ax.set_ylabel(labels[1])
    return ax
