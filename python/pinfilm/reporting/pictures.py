"""Pictures of a report, as data inside the page."""

from __future__ import annotations

import base64
import io
from collections.abc import Callable
from typing import Any, NamedTuple

import matplotlib as mpl
from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure

from .. import plot
from .._core import Comparison


class Picture(NamedTuple):
    """One picture: what it shows, in words too, for people who cannot see it."""

    title: str
    words: str
    source: str


def drawn(draw: Callable[[Axes], Any], height: float = 3.4) -> str:
    """Return what `draw` draws on axes as the address of a picture that holds it."""
    settings: Any = {"svg.fonttype": "path", "svg.hashsalt": "pinfilm", "font.family": "DejaVu Sans", "font.size": 9.5}
    with mpl.rc_context(settings):
        figure = Figure(figsize=(6.4, height), layout="constrained")
        FigureCanvasAgg(figure)
        draw(figure.subplots())
        file = io.BytesIO()
        figure.savefig(file, format="svg", metadata={"Date": None}, dpi=150)
    return "data:image/svg+xml;base64," + base64.b64encode(file.getvalue()).decode("ascii")


def all_of(comparison: Comparison, paybacks: Any | None) -> dict[str, Picture]:
    """Return every picture of the report by its name."""
    now, proposed = comparison.now, comparison.proposed
    pictures: dict[str, tuple[str, str, Callable[[Axes], Any], float]] = {
        "tension": (
            "Tension round the loop",
            "Numbers over the picture are sections of the survey; the drive's exit is on the left, its entry on "
            "the right.",
            lambda ax: plot.tension_round_loop(comparison, ax),
            3.2,
        ),
        "temperature": (
            "Chain temperature round the loop",
            "With the place where oil is applied.",
            lambda ax: plot.temperature_round_loop(comparison, ax),
            3.2,
        ),
        "shares": (
            "What takes the pull",
            "Share of the pull by cause.",
            lambda ax: plot.pull_shares(comparison, ax),
            3.2,
        ),
        "reached_now": (
            "Which joint gets oil when, as it is",
            "The loop unrolled over time; one mark for each shot. Hatched joints never get oil.",
            lambda ax: plot.joints_reached(now, ax),
            3.6,
        ),
        "reached_proposed": (
            "Which joint gets oil when, as proposed",
            "The same, over two of its longest waits.",
            lambda ax: plot.joints_reached(proposed, ax),
            3.6,
        ),
        "window": (
            "Viscosity window of the proposal",
            "The oil must pass below the upper limit where it is applied and above the lower limit at the mean "
            "temperature.",
            lambda ax: plot.viscosity_window(proposed, [now.line.oil], ax),
            3.6,
        ),
        "elongation": (
            "Growth of a new chain",
            "Computed; one reading of the real chain is worth more.",
            lambda ax: plot.elongation(comparison, ax),
            3.2,
        ),
        "savings": ("Saving of a year, item by item", "", lambda ax: plot.savings(comparison, ax), 3.0),
        "cash_flow": ("Capital, savings and their sum", "", lambda ax: plot.cash_flow(comparison, ax), 3.2),
    }
    if paybacks is not None:
        pictures["paybacks"] = (
            "How sure the payback is",
            "Payback over the draws of a sample of what is uncertain.",
            lambda ax: plot.payback_distribution(paybacks, ax),
            3.0,
        )
    return {name: Picture(title, words, drawn(draw, height)) for name, (title, words, draw, height) in pictures.items()}
