"""Oil: the window of viscosities that get in and stay, and where the joints stand between boundary and full film."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

import numpy as np

from .._core import Comparison, Evaluation, Oil
from ..errors import InputError
from ._style import BLACK, GREY, axes, each, label, legend, look, quiet

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def viscosity_window(
    result: Evaluation,
    oils: Mapping[str, Oil] | Sequence[Oil] = (),
    ax: Axes | None = None,
) -> Axes:
    """Viscosity against temperature, with what gets in where oil is applied and what stays while the chain runs.

    Parameters
    ----------
    result : Evaluation
        The line whose window is drawn; its own oil is the first line.
    oils : dict or sequence of Oil, optional
        Other oils to hold against the window.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.

    Returns
    -------
    matplotlib.axes.Axes
        Temperature to the right, dynamic viscosity upwards (logarithmic). An oil suits if its line passes below the
        upper limit at the application point and above the lower limit at the mean temperature of the chain.
    """
    ax = axes(ax, (6.4, 4.6))
    along, fill = result.round_loop(points=2), result.fill
    cold, hot = min(*along.temperature_c, result.line.duty.ambient_c), max(along.temperature_c)
    margin = max(8.0, 0.08 * (hot - cold))
    temperatures = np.linspace(cold - margin, hot + margin, 121)
    drawn = {result.line.oil.name or f"ISO VG {result.line.oil.iso_vg}": result.line.oil}
    others = oils if isinstance(oils, Mapping) else {oil.name or f"ISO VG {oil.iso_vg}": oil for oil in oils}
    drawn |= {name: oil for name, oil in others.items() if oil != result.line.oil}
    for number, (name, oil) in enumerate(drawn.items()):
        how = look(number)
        viscosity = np.array([_viscosity(oil, float(temperature)) for temperature in temperatures])
        ax.plot(temperatures, viscosity, color=how.color, linestyle=how.line, label=name)
    applied, mean = fill.application_c, result.kinematics.mean_c
    most, least = fill.viscosity_most_mpa_s, fill.viscosity_least_mpa_s
    ax.set_yscale("log")
    low, high = ax.get_ylim()
    low, high = min(low, least / 3.0), max(high, most * 3.0)
    half = 0.04 * (temperatures[-1] - temperatures[0])
    for at, limit, edge, words in (
        (applied, most, high, "too thick to get in where oil is applied"),
        (mean, least, low, "too thin to stay at the mean temperature"),
    ):
        ax.fill_between([at - half, at + half], limit, edge, facecolor="0.9", edgecolor="0.45", linewidth=0.0,
                        hatch="\\\\\\" if edge == high else "///", label=words)  # fmt: skip
        ax.hlines(limit, at - half, at + half, color=BLACK, linewidth=1.6)
        shown = f"{limit:,.0f}" if limit >= 100.0 else f"{limit:.3g}"
        ax.annotate(shown, (at + half, limit), (3, 0), textcoords="offset points", va="center", fontsize="small")
    own = result.line.oil
    ax.plot([applied, mean], [fill.viscosity_application_mpa_s, _viscosity(own, mean)], "o", color=look(0).color,
            markeredgecolor=BLACK, zorder=3)  # fmt: skip
    ax.set_ylim(low, high)
    ax.set_xlim(temperatures[0], temperatures[-1])
    ax.set_xlabel(label("round_loop.temperature_c"))
    ax.set_ylabel(label("friction_curve.viscosity_mpa_s"))
    quiet(ax)
    legend(ax, loc="upper center", bbox_to_anchor=(0.5, -0.17), ncols=2)
    return ax


def _viscosity(oil: Oil, temperature: float) -> float:
    """Viscosity, or nothing to draw where the oil is outside what its line covers."""
    try:
        return float(oil.viscosity_mpa_s(temperature))
    except InputError:
        return float("nan")


def stribeck(results: Evaluation | Comparison | Mapping[str, Evaluation], ax: Axes | None = None) -> Axes:
    """Friction against film: where each articulation stands between boundary, mixed and full film.

    Parameters
    ----------
    results : Evaluation, Comparison or dict of Evaluation
        What to draw.
    ax : matplotlib axes, optional
        Where to draw; new ones if not given.

    Returns
    -------
    matplotlib.axes.Axes
        A marker for each articulation of a joint that gets oil, and for the one with the greatest pressure the curve
        that the same oil, thinned and thickened, would follow.
    """
    ax = axes(ax)
    named = each(results)
    for number, (name, result) in enumerate(named.items()):
        how, events = look(number), result.joint.events
        hardest = max(range(len(events)), key=lambda event: events[event].pressure_mpa)
        curve = result.friction_curve(hardest)
        words = " ".join(filter(None, ("oil thinner and thicker", name)))
        ax.plot(curve.lambda_ratio, curve.friction_reached, color=how.color, linestyle=how.line, label=words)
        ax.plot(
            [event.lambda_ratio for event in events], [event.friction_reached for event in events], how.marker,
            color=how.color, markeredgecolor=BLACK, label=" ".join(filter(None, ("articulations", name))),
        )  # fmt: skip
    ax.set_xscale("log")
    shown = [event.lambda_ratio for result in named.values() for event in result.joint.events if event.lambda_ratio > 0]
    low = min([1e-3, *(0.5 * ratio for ratio in shown)])
    ax.set_xlim(low, 20.0)
    ax.set_ylim(0.0, 1.12 * max(ax.get_ylim()[1], 1e-3))
    for at, words in ((np.sqrt(low), "boundary"), (np.sqrt(3.0), "mixed"), (np.sqrt(60.0), "full film")):
        ax.text(
            at, 1.01, words, transform=ax.get_xaxis_transform(), ha="center", va="bottom", fontsize="small", color=GREY
        )
    for border in (1.0, 3.0):
        ax.axvline(border, color=GREY, linestyle=":", linewidth=1)
    ax.set_xlabel(label("friction_curve.lambda_ratio") + " Λ")
    ax.set_ylabel(label("friction_curve.friction_reached"))
    quiet(ax)
    legend(ax, loc="best")
    return ax
